// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QPointer>
#include <QWidget>

#include "ui/theme/look.h"

namespace grainwise::ui {

/// Draws a ring around the list, table or text that has the keyboard, which Qt's style marks by no more than
/// its cursor. One that paints a mark of its own has the property `kOwnMark`.
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
