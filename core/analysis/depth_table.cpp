// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/depth_table.h"

#include <algorithm>

namespace grainwise {
namespace {

constexpr double kSlowest_ft_per_s = 0.1;
/// Limits of the file format: water beyond them is none that a rig may stand in.
constexpr double kFastest_ft_per_s = 15.0;

DepthCell cellOf(Rig rig, FeetPerSecond surface, const Conditions& conditions) {
  rig.water->surfaceSpeed = surface;
  const Analysis analysis = analyse(rig, conditions);
  DepthCell cell{surface, std::nullopt, analysis.depthBand};
  if (analysis.hang) cell.state = analysis.hang->state;
  return cell;
}

}  // namespace

std::optional<Pool> poolOf(const Rig& rig) {
  if (!rig.water || !rig.water->surfaceSpeed || !rig.water->depth) return std::nullopt;
  Pool pool;
  pool.name = rig.water->name.value_or("");
  pool.surfaceSpeed = *rig.water->surfaceSpeed;
  pool.depth = *rig.water->depth;
  pool.temperature = rig.water->temperature;
  pool.salinity = rig.water->salinity;
  pool.bed = rig.water->bed;
  pool.measured = rig.water->measured;
  return pool;
}

Rig inPool(const Rig& rig, const Pool& pool) {
  Rig there = rig;
  Water water;
  water.name = pool.name;
  water.surfaceSpeed = pool.surfaceSpeed;
  water.depth = pool.depth;
  water.temperature = pool.temperature;
  water.salinity = pool.salinity;
  water.bed = pool.bed;
  water.measured = pool.measured;
  there.water = water;
  if (pool.angle || pool.mend) {
    if (!there.swing) there.swing = Swing{};
    if (pool.angle) there.swing->angle = pool.angle;
    if (pool.mend) there.swing->mend = pool.mend;
  }
  return there;
}

std::vector<DepthRow> depthTable(const Rig& rig, const std::vector<Pool>& pools,
                                 const Conditions& conditions, FeetPerSecond step) {
  std::vector<DepthRow> rows;
  for (const Pool& pool : pools) {
    const Rig there = inPool(rig, pool);
    const double stated = pool.surfaceSpeed.value();
    const auto cell = [&](double speed) {
      return cellOf(there, FeetPerSecond(std::clamp(speed, kSlowest_ft_per_s, kFastest_ft_per_s)),
                    conditions);
    };
    rows.push_back({pool, {cell(stated - step.value()), cell(stated), cell(stated + step.value())}});
  }
  return rows;
}

}  // namespace grainwise
