// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QString>

namespace grainwise::ui {

/// Names and notes come from files of others. Qt guesses whether a text is HTML and would then obey
/// it: load a picture, follow a link, hide words. With this in place no label and no tooltip
/// guesses.
class PlainWords : public QObject {
  Q_OBJECT
 public:
  /// Once for the whole application; further calls do nothing.
  static void keep();

  /// A text that shows as it stands wherever Qt would take it for HTML if it looked like it.
  static QString shown(const QString& text);
  /// A text that shows as it stands in a menu or on a button, where & marks a key.
  static QString inMenu(const QString& text);

 protected:
  bool eventFilter(QObject* object, QEvent* event) override;

 private:
  using QObject::QObject;
};

}  // namespace grainwise::ui
