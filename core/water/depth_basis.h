// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/mass/profile.h"
#include "core/model/rig.h"
#include "core/water/band.h"

namespace grainwise {

/// What a depth rests on besides the weights, the sink rates and the stated water.
struct DepthBasis {
  /// Of the head's sections, the least and the greatest; nothing without a head.
  std::optional<GramsPerCubicCentimetre> headLight, headHeavy;
  bool headAssumed = false;  ///< at least one of them floats and states no density: it has our usual one
  double halfWay = 0.0;      ///< current half way down to the bed, as a share of the surface's
  double halfWaySlow = 0.0;  ///< the least that the range of the depth covers
  double halfWayFast = 0.0;  ///< the most
};

/// Density by `sectionProperties` and `floatingDensity`, current by `profileOf` and `River` (sources there).
/// `profile` is the rig's own mass profile. A rig without water is taken over the bed of `current`. Where the
/// current follows another law than a power the range has no width. Cost: one pass over the profile.
DepthBasis depthBasis(const Rig& rig, const MassProfile& profile, const CurrentProfile& current = {},
                      const WaterUncertainty& uncertainty = {});

/// Whether a section floats by its word alone: with a mass, and neither diameter nor density.
bool floatsByDefault(const Section& section);

/// How far the exponent of the current may be off: over the rig's bed, else as `uncertainty` has it.
ProfileRange profileRangeOf(const Rig& rig, const WaterUncertainty& uncertainty);

}  // namespace grainwise
