// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "ui/charts/card_picture.h"

namespace grainwise::ui {

/// How much of a card stands on the screen just now.
struct CardState {
  int index = 0;
  int count = 1;
  bool answered = false;
  bool numbers = true;  ///< false: hidden until the class has guessed
  double time_s = -1;   ///< of what moves; under 0: its end
  bool operator==(const CardState&) const = default;
};

/// Shares of the screen's height: words, numbers, axes; and the strokes of 4 px in 720.
inline constexpr double kBodyShare = 1.0 / 20;
inline constexpr double kNumberShare = 1.0 / 10;
inline constexpr double kAxisShare = 1.0 / 28;
inline constexpr double kStrokeShare = 4.0 / 720;

/// A card as the class sees it: title, one diagram as large as it can be, at most two texts - the line and
/// the question, then the question and the answer with its figures. Everything grows with the screen.
void paintCardPage(QPainter& p, QSizeF screen, const ShownCard& shown, const CardState& state,
                   const Colours& colours, DisplayUnits units);

}  // namespace grainwise::ui
