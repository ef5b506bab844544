// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

#include "ui/text/words.h"

namespace grainwise::ui {

/// Why a reading says what it says, in three short lists: the figures it came from, how they are put
/// together, and the limits with whose they are.
struct WhyWords {
  QStringList figures;
  QStringList formula;
  QStringList limits;
};
/// Of the readings that have a tile; the two that share one (tip share and anchor, fly against tip
/// and against leader, head on rod and working length) share one *why*.
WhyWords whyWords(Reading reading, const Rig& rig, const Analysis& analysis,
                  const Conditions& conditions, DisplayUnits units);

/// The parts of it that rest on a model of the loop and of the hanging line.
WhyWords whyTurnover(const Rig& rig, const Analysis& analysis, const Conditions& conditions,
                     DisplayUnits units);
WhyWords whyDepth(const Rig& rig, const Analysis& analysis, const Conditions& conditions,
                  DisplayUnits units);

}  // namespace grainwise::ui
