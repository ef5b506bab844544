// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/units/trade.h"

namespace grainwise {

/// Water that a line sinks in.
struct WaterState {
  Celsius temperature{10.0};
  GramsPerKilogram salinity{0.0};
  bool operator==(const WaterState&) const = default;
};
/// Rated sink rates are for fresh water at 15 C.
inline constexpr WaterState kRatingWater{Celsius(15.0), GramsPerKilogram(0.0)};

/// Terminal velocity of a long level line lying across its fall: (m - rho A) g = 1/2 rho Cd(Re) d w^2.
/// Positive sinks, negative rises; 0 for a neutral line. Cd: Cheng (2013).
InchesPerSecond sinkRate(GrainsPerFoot mass, Inches diameter, const WaterState& water);

/// The one diameter in (0, sqrt(4 m / (pi rho))) at which `mass` sinks at `rate` in `water`;
/// `rate` > 0. Nothing when none exists in the range of the drag law (Re < 2e5).
std::optional<Inches> diameterFromSinkRate(GrainsPerFoot mass, InchesPerSecond rate,
                                           const WaterState& water);
/// The one diameter at which a line of `density` sinks at `rate`.
std::optional<Inches> diameterFromDensity(GramsPerCubicCentimetre density, InchesPerSecond rate,
                                          const WaterState& water);

}  // namespace grainwise
