// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QAction;
class QWidget;

namespace grainwise::ui {

class Actions;

/// *What is this?* for every control of the program, also of pages that are made later: the words come from
/// ui/text/control_help.h by the control's name when they are asked for. A control or action that cannot be used
/// says why in its tooltip.
class WhatsThis : public QObject {
  Q_OBJECT
 public:
  WhatsThis(Actions* actions, QWidget* window);

  /// What a control is for, or the page that it stands on, and why it cannot be used if it cannot.
  static QString wordsFor(const QWidget* widget);
  /// Why a control cannot be used now; empty for one that can, and where nothing is known.
  static QString reasonFor(const QWidget* widget);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void explain(QAction* action);
  void tellOfFocus();

  QWidget* m_window;
};

}  // namespace grainwise::ui
