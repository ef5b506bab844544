// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

#include "ui/theme/look.h"

namespace grainwise::ui {

/// Draws a ring around what has the keyboard, which Qt's style marks by its cursor or a change of tint alone
/// (WCAG 2.2, 2.4.7 and 1.4.11: a mark of 3 to 1). One that paints a mark of its own has the property `kOwnMark`.
/// A button or field that was just clicked has none: the hand is there already.
class FocusRing : public QObject {
  Q_OBJECT
 public:
  static constexpr auto kOwnMark = "grainwise_own_focus_mark";

  FocusRing(const Look* look, QObject* parent);

 private:
  void follow(QWidget* now);

  const Look* m_look;
  QPointer<QWidget> m_ring;
};

}  // namespace grainwise::ui
