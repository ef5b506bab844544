// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/bench/trim.h"
#include "core/model/part.h"

namespace grainwise {

/// The part with `feet` cut off one end (core/bench/trim.h), its loops made again with the mass that
/// they had. Nothing when less than half a foot would be left.
std::optional<Part> cutShorter(const Part& part, Feet feet, PartEnd end);

/// A leader tied longer or shorter by `feet` (negative: shorter), each of its pieces in proportion;
/// masses per foot stay, a label or weighed mass follows the length. Nothing when less than half a
/// foot would be left, or more than may be typed.
std::optional<Part> tiedLonger(const Part& part, Feet feet);

}  // namespace grainwise
