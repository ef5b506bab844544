// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <filesystem>
#include <optional>
#include <vector>

#include "core/model/deck.h"
#include "ui/charts/card_runs.h"
#include "ui/charts/picture.h"

namespace grainwise::ui {

/// A card ready to be shown: its rigs read and analysed, and what of it is missing.
struct ShownCard {
  Card card;
  std::vector<PictureRig> rigs;
  std::shared_ptr<const CardRuns> runs;  ///< what moves on it, once it was run
  QStringList missing;  ///< "the rig 02-slot.rig.json: no such file"; empty when all is there
};
ShownCard shownCard(const Card& card, const std::filesystem::path& folder,
                    const Conditions& conditions = {});

/// What one rig of a card comes to: a number with the words around it.
struct Figure {
  Setup setup = Setup::alone;
  QString number;  ///< "7 to 14", "2.7–4.4 ft"
  QString words;   ///< "gr/ft: hinges"
};
/// "A  2.7–4.4 ft down": the figure in a line of text.
QString figureLine(const Figure& figure);
/// The reading in which the card's rigs differ, one figure a rig; for a river card their depths. None
/// for a card of text.
std::vector<Figure> figuresOf(const ShownCard& shown, DisplayUnits units);

/// The card's diagram in `box`: for one or two rigs, by what the card shows; in the place of a rig that is
/// missing, the words that say so. `full` adds feet and grains to the captions of a line; what moves is
/// shown at `time_s`, at its end for a time under 0.
void paintCardPicture(QPainter& p, const QRectF& box, const ShownCard& shown, const PictureStyle& style,
                      bool full, double time_s = -1);

}  // namespace grainwise::ui
