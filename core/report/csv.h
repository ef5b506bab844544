// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/analysis/analysis.h"

namespace grainwise {

/// A block of totals (name, value, unit), an empty line, then the profile
/// (at_ft, gr_per_ft, cumulative_gr). RFC 4180: commas, CRLF line ends, decimal points.
std::string reportCsv(const Rig& rig, const Analysis& analysis);

}  // namespace grainwise
