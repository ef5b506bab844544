// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/analysis/conditions.h"
#include "core/model/pool.h"
#include "core/model/rig.h"

namespace grainwise {

/// How fast a pool runs against its usual surface speed. Ours: a river's level moves far more.
struct CurrentShares {
  double low = 0.7;
  double normal = 1.0;
  double high = 1.3;
};

/// One rig in one pool at low, normal and high current.
struct DepthRow {
  struct Depth {
    std::optional<HangDown> hang;   ///< nothing without a fly of known mass
    std::optional<DepthBand> band;  ///< the live estimate, where there is a depth
  };
  std::string pool;
  Feet water;
  std::array<Depth, 3> at;  ///< low, normal, high
};

/// How deep a rig fishes in every pool, each at its own angle and mend where it states them. Law:
/// hangDown and liveBand (core/water); nothing is scaled from one depth to another.
/// Cost: three hang-downs a pool, about 0.1 ms.
std::vector<DepthRow> depthTable(const Rig& rig, const Pools& pools, const Conditions& conditions = {},
                                 const CurrentShares& shares = {});

}  // namespace grainwise
