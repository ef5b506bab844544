// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/depth_table.h"

#include "core/choose/candidate.h"
#include "core/water/water_line.h"

namespace grainwise {
namespace {

DepthRow::Depth depthIn(const Rig& rig, const Pool& pool, const Conditions& conditions) {
  DepthRow::Depth depth;
  const Rig there = rigInPool(rig, pool);
  const auto water = rigInWater(there, massProfile(there), conditions.current);
  if (!water) return depth;
  depth.hang = hangDown(water->line, water->river);
  depth.band = liveBand(*depth.hang, pool.depth);
  return depth;
}

}  // namespace

std::vector<DepthRow> depthTable(const Rig& rig, const Pools& pools, const Conditions& conditions,
                                 const CurrentShares& shares) {
  std::vector<DepthRow> rows;
  for (const Pool& pool : pools.pools) {
    DepthRow row{pool.name, pool.depth, {}};
    std::size_t at = 0;
    for (const double share : {shares.low, shares.normal, shares.high}) {
      Pool then = pool;
      then.surfaceSpeed = share * pool.surfaceSpeed;
      row.at[at++] = depthIn(rig, then, conditions);
    }
    rows.push_back(row);
  }
  return rows;
}

}  // namespace grainwise
