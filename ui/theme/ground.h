// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QWidget>

namespace grainwise::ui {

/// A widget's ground, out to its very edge: at 150 % that may lie within a pixel of the screen, and what stood
/// there before would shine through the half of it. What is too much is cut off.
inline void paintGround(QPainter& p, const QWidget* widget, const QColor& colour) {
  p.fillRect(widget->rect().adjusted(-1, -1, 1, 1), colour);
}

}  // namespace grainwise::ui
