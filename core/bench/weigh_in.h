// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/bench/loops.h"
#include "core/model/problem.h"

namespace grainwise {

enum class WeighVerdict { fits, light, heavy };

/// A measured mass that is off by about the number of grains in a gram: one taken for the other.
enum class UnitSlip { gramsTakenForGrains, grainsTakenForGrams };

struct WeighRules {
  double share = 0.03;     ///< of the nominal mass
  Grains scaleStep{0.1};   ///< the smallest step that the scale shows; a kitchen scale's 1 g is 15 gr
  BenchRules bench;        ///< how loops and splices are made
  bool operator==(const WeighRules&) const = default;
};

/// What the scale says against what was meant. Nominal is the mass by the label or the typed line, with
/// its loops and the overlaps of its splices (of a fly: its dry mass), as the label on the cut sheet
/// has it once the loops are stated. The verdict is fits within max(3 % of the nominal mass, half
/// the scale's smallest step). Ours; common practice, no source.
struct WeighIn {
  Grains nominal;
  Grains measured;
  Grains difference;  ///< measured less nominal
  double share = 0;   ///< difference / nominal, 0 where nothing is nominal
  std::optional<GrainsPerFoot> implied;  ///< measured less loops and splices, over the length
  Grains tolerance;
  WeighVerdict verdict = WeighVerdict::fits;
  std::optional<UnitSlip> slip;
  bool fitsWithLoops = false;  ///< heavy by no more than the loops that the part does not state
};

/// What the loops would weigh that this bench puts on `part` and that it does not state; 0 when it
/// states all of its loops, or is none that gets them.
Grains unstatedLoops(const Part& part, const BenchRules& rules = {});

/// `length` is the measured one, if it was measured. Refused: a mass outside its limits, or not over
/// that of the loops.
tl::expected<WeighIn, Problem> weighIn(const Part& part, Grains measured,
                                       std::optional<Feet> length = {},
                                       const WeighRules& rules = {});

/// The nominal mass, never that of an earlier weighing.
Grains nominalMass(const Part& part, const BenchRules& rules = {});

/// `part` with what the scale said, dated; a fly takes it as its dry mass and keeps the water that it
/// holds. Loops are never changed. The scale's word stays in the part, the label and the typed
/// figures stay below it.
Part weighedIn(const Part& part, Grains measured, const std::optional<std::string>& on = {});
/// The part as it was before it was weighed; of a fly, nothing changes.
Part withoutWeighing(const Part& part);

/// The part at its measured length, every section longer or shorter in proportion.
Part withMeasuredLength(const Part& part, Feet length);

}  // namespace grainwise
