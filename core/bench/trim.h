// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <tl/expected.hpp>

#include "core/model/part.h"
#include "core/model/problem.h"

namespace grainwise {

enum class PartEnd { rod, fly };

/// A part some feet shorter, before any knife.
struct Trimmed {
  Part part;
  Grains before;          ///< of the line, without loops
  Grains after;
  GrainsPerFoot newEnd;   ///< where it was cut
  bool loopLost = false;  ///< the end had a loop, which goes with it
};

/// `feet` taken off one end. The line that stays weighs per foot exactly what it did: where the part
/// was scaled to its label or weighing, the label becomes what is left of it, and the weighing, which
/// no longer holds, is dropped. Refused when nothing would be left.
tl::expected<Trimmed, Problem> trimmed(const Part& part, PartEnd end, Feet feet);

}  // namespace grainwise
