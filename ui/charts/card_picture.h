// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <filesystem>
#include <optional>
#include <vector>

#include "core/model/deck.h"
#include "ui/charts/card_runs.h"
#include "ui/charts/card_tables.h"
#include "ui/charts/picture.h"

namespace grainwise::ui {

/// A card ready to be shown: its rigs read and analysed, and what of it is missing.
struct ShownCard {
  Card card;
  std::vector<PictureRig> rigs;
  std::shared_ptr<const CardRuns> runs;  ///< what moves on it, once it was run
  std::vector<Part> flies;               ///< of a card of flies
  std::vector<DepthRow> pools;           ///< of a card of pools
  std::shared_ptr<const TipTable> tips;  ///< of a card of tips
  QStringList missing;  ///< "the rig 02-slot.rig.json: no such file"; empty when all is there
};
ShownCard shownCard(const Card& card, const std::filesystem::path& folder,
                    const Conditions& conditions = {});

/// The card's diagram in `box`: for one or two rigs, by what the card shows; in the place of a rig that is
/// missing, the words that say so. `full` adds feet and grains to the captions of a line; what moves is
/// shown at `time_s`, at its end for a time under 0.
void paintCardPicture(QPainter& p, const QRectF& box, const ShownCard& shown, const PictureStyle& style,
                      bool full, double time_s = -1);

}  // namespace grainwise::ui
