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
WhyWords whyWords(Reading reading, const Rig& rig, const Analysis& analysis,
                  const Conditions& conditions, DisplayUnits units);

}  // namespace grainwise::ui
