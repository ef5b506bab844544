// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/analysis/analysis.h"
#include "core/analysis/heavy_runs.h"

namespace grainwise {

/// The analysis for a person to read: plain aligned text, numbers rounded to what is known, verdicts
/// in words, what was scaled, warnings and cautions. Ends with one newline. Stable and locale-free.
/// Line breaks and control characters in names come out as blanks.
std::string reportText(const Rig& rig, const Analysis& analysis, const HeavyRuns& heavy = {});

}  // namespace grainwise
