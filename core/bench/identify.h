// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <tl/expected.hpp>
#include <vector>

#include "core/material/fluid.h"
#include "core/model/problem.h"
#include "core/model/shelf.h"

namespace grainwise {

/// What can be found out about a tip without a label.
struct TipMeasures {
  std::optional<Grains> mass;  ///< without loops
  std::optional<Feet> length;
  std::optional<Inches> diameter;
  std::optional<InchesPerSecond> sink;  ///< timed, in `water`
  WaterState water = kRatingWater;
};

/// A shelf tip by how far it is from what was measured; only what is known of both is told.
struct NearTip {
  std::size_t part = 0;  ///< index into the shelf
  std::optional<GrainsPerFoot> perFootOff;  ///< the shelf's less the tip's
  std::optional<InchesPerSecond> rateOff;
  std::optional<Feet> lengthOff;
  double distance = 0;   ///< 1 is 5 % of gr/ft, 1 in/s or 1 ft; the root of the sum of squares
};

/// A tip found out. The rate is the rated one: fresh water at 15 C.
struct FoundTip {
  std::optional<GrainsPerFoot> perFoot;
  std::optional<Inches> diameter;
  std::optional<GramsPerCubicCentimetre> density;
  std::optional<InchesPerSecond> rate;
  bool rateAssumed = false;  ///< the trade's class, since neither diameter nor sink is known
  std::optional<GrainsPerFoot> tradeClass;  ///< 5, 7, 8, 10, 11, 14, 17 or 20 when within 5 %
  std::vector<NearTip> nearest;             ///< up to five, the nearest first
};

/// From any two of mass, length, diameter and timed sink:
/// gr/ft = mass / length; else from diameter and sink, m = rho A + mu G(Re) w / (2 g), which is the
/// law of core/material/sink_rate.h solved for m. Density = gr/ft over pi/4 d^2. The rate from gr/ft
/// and diameter (or timed, brought to 15 C). Where only one of gr/ft's two ways is half open (a length
/// and a sink, say) the nearest shelf tips are still given by what is known.
/// Refused: fewer than two measures, one that is not over 0, a sink that no line of that gr/ft has.
tl::expected<FoundTip, Problem> findTip(const TipMeasures& measures, const Shelf& shelf);

}  // namespace grainwise
