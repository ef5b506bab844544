// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/material/sink_rate.h"
#include "core/model/rig.h"

namespace grainwise {

/// The rig's own water; 10 C and fresh where it states none.
inline WaterState waterOf(const Rig& rig) {
  WaterState water;
  if (!rig.water) return water;
  water.temperature = rig.water->temperature.value_or(water.temperature);
  water.salinity = rig.water->salinity.value_or(water.salinity);
  return water;
}

}  // namespace grainwise
