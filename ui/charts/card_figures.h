// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "ui/charts/card_picture.h"

namespace grainwise::ui {

/// What one rig of a card comes to: a number with the words around it.
struct Figure {
  Setup setup = Setup::alone;
  QString number;  ///< "7 to 14", "2.7–4.4 ft"
  QString words;   ///< "gr/ft: hinges"
};

/// The figures that answer the card, one a rig: those that it asks for, else the reading in which its rigs
/// differ, or their depths on a card of the river. None for cards of words, flies, pools and tips, nor
/// where a rig has no such reading, or its run is still to come.
std::vector<Figure> figuresOf(const ShownCard& shown, DisplayUnits units);
/// Whether there are figures, or will be once what moves was run: their room is kept from the start.
bool hasFigures(const ShownCard& shown, DisplayUnits units);
/// "A  2.7–4.4 ft down": the figure in a line of text.
QString figureLine(const Figure& figure);

}  // namespace grainwise::ui
