// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/analysis/conditions.h"
#include "core/material/fluid.h"
#include "core/model/pool.h"
#include "core/model/problem.h"
#include "core/model/rig.h"

namespace grainwise {

/// A level piece let sink in a tub: how far it falls, and how long each fall took. Uncertainties hold
/// four times out of five: half an inch at start and end together, a fifth of a second by hand.
struct TubTiming {
  Inches fall;
  std::vector<Seconds> times;
  WaterState water = kRatingWater;
  Inches fallError{0.5};
  Seconds timeError{0.2};
};

/// What a tub says of a line.
struct TubRate {
  InchesPerSecond inTub;      ///< fall over the mean time
  InchesPerSecond rated;      ///< the same line in fresh water at 15 C, as rates are stated
  InchesPerSecond plusMinus;  ///< of `rated`, four times out of five
  bool shortFall = false;     ///< under 2 s or under 12 in: the hand's error rules
};

/// Rate = D / t, t the mean of the times. With relative uncertainties added as squares,
/// (dw/w)^2 = (dD/D)^2 + (dt/t)^2, dt the larger of timeError / sqrt(n) and, from three times up,
/// 1.28 s / sqrt(n) with s their standard deviation (1.28 s holds four times out of five of a normal
/// error). Brought to 15 C by the diameter that explains the rate in the tub's water
/// (core/material/sink_rate.h). Ours; common practice, no source.
/// Refused: no time, one that is not over 0, a fall not over 0 or over 300 in, a rate over 20 in/s,
/// or one that no line of that mass per foot has.
tl::expected<TubRate, Problem> tubRate(const TubTiming& timing, GrainsPerFoot mass);

/// `part` with the timed rate on section `index`, dated. What the maker rated is kept beside it. Only
/// for sections that go by a sink rate; refused for others.
tl::expected<Part, Problem> withTimedRate(const Part& part, std::size_t index, const TubRate& rate,
                                          const std::optional<std::string>& on = {});
/// The section with its maker's rate again; unchanged when it was never timed.
Part withRatedAgain(const Part& part, std::size_t index);

/// How a depth was found on the water.
enum class DepthFound { hangingDown, swinging };

/// A measured depth of the fly in known water.
struct RiverMeasure {
  Feet flyDepth;
  Feet plusMinus{0.25};
  DepthFound found = DepthFound::hangingDown;
};

/// The surface speed that explains a measured depth, and how far it may be off (four times out of
/// five).
struct RiverFit {
  FeetPerSecond speed;
  FeetPerSecond plusMinus;
  FeetPerSecond stated;  ///< before
};

/// Solves depth(U) = measured for the surface speed U between 0.2 and 15 ft/s, with the rig's own line,
/// fly and water (core/water/hang.h; on the swing the live estimate's middle). The depth falls with U,
/// so there is one speed at most. The uncertainty is half of what measured + and - plusMinus make of
/// it. Brent to 1e-4 ft/s; about 10 depths each. The speed is an effective one: it takes up what else
/// is off in the model. Refused: no water or fly, a depth not over 0 or not above the bed, a depth
/// that no speed explains.
tl::expected<RiverFit, Problem> riverFit(const Rig& rig, const RiverMeasure& measure,
                                         const Conditions& conditions = {});

/// The rig's water with the speed that was found, dated, what was stated kept beside it.
Rig withFittedCurrent(const Rig& rig, const RiverFit& fit, const RiverMeasure& measure,
                      const std::optional<std::string>& on = {});
/// The same for a pool.
Pool withFittedCurrent(const Pool& pool, const RiverFit& fit, const RiverMeasure& measure,
                       const std::optional<std::string>& on = {});
/// The speed that was stated again.
Rig withStatedCurrent(const Rig& rig);
Pool withStatedCurrent(const Pool& pool);

}  // namespace grainwise
