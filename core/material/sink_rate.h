// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/material/fluid.h"
#include "core/units/trade.h"

namespace grainwise {

/// Terminal velocity of a long level line lying across its fall: (m - rho A) g = 1/2 rho Cd(Re) d w^2.
/// Positive sinks, negative rises; 0 for a neutral line. m mass per length, A = pi d^2/4, w the rate.
/// Cd: Cheng (2013), core/material/drag.h. Method: Newton in ln Re to 1e-13, under 1 us.
InchesPerSecond sinkRate(GrainsPerFoot mass, Inches diameter, const WaterState& water);

/// How fast both ends of a section sink. Mass and diameter of each end as core/material knows them.
struct SinkEnds {
  InchesPerSecond rodEnd;
  InchesPerSecond flyEnd;
};

/// The one diameter in (0, sqrt(4 m / (pi rho))) at which `mass` sinks at `rate` in `water`;
/// `rate` > 0. The left side of the law falls with d and the right side rises, so there is exactly
/// one. Nothing when it lies outside the range of the drag law (Re < 2e5). 1e-12 relative, under 1 us.
std::optional<Inches> diameterFromSinkRate(GrainsPerFoot mass, InchesPerSecond rate,
                                           const WaterState& water);
/// The one diameter at which a line of `density` sinks at `rate` (both sides of neutral: a negative
/// rate rises). Nothing when density and rate disagree in sign or it lies outside Re < 2e5.
std::optional<Inches> diameterFromDensity(GramsPerCubicCentimetre density, InchesPerSecond rate,
                                          const WaterState& water);

}  // namespace grainwise
