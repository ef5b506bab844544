// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/analysis/analysis.h"
#include "core/analysis/heavy_runs.h"

namespace grainwise {

/// The analysis in the format `grainwise-report`, version 1: finite numbers in full precision; what
/// could not be computed is left out, with a line in `missing`. Ends with one newline. A key a block:
/// another block is one more function in the list of json.cpp.
std::string reportJson(const Rig& rig, const Analysis& analysis, const HeavyRuns& heavy = {});

}  // namespace grainwise
