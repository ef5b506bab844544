// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/model/pool.h"

namespace grainwise {

/// How deep a rig swings in one pool at one speed of the water; no state where nothing can be said
/// (no fly of known mass).
struct DepthCell {
  FeetPerSecond surface;
  std::optional<DepthState> state;
  std::optional<DepthBand> band;  ///< the live estimate, where there is a depth
};

/// A pool with the water a step slower than stated, as stated, and a step faster.
struct DepthRow {
  Pool pool;
  std::array<DepthCell, 3> cells;
};

/// The rig in its own water as a pool, when that has a speed and a depth.
std::optional<Pool> poolOf(const Rig& rig);
/// The rig with the water of a pool, and its angle and mend where the pool has them.
Rig inPool(const Rig& rig, const Pool& pool);

/// One row a pool, in order. Each cell is `analyse` of the rig in that water, about 0.1 ms; a slower
/// speed is never under a tenth of a foot a second.
std::vector<DepthRow> depthTable(const Rig& rig, const std::vector<Pool>& pools,
                                 const Conditions& conditions = {},
                                 FeetPerSecond step = FeetPerSecond(0.5));

}  // namespace grainwise
