// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/river.h"

#include "core/units/si.h"

namespace grainwise {

River riverOf(FeetPerSecond surface, Feet depth, const WaterState& water,
              const CurrentProfile& profile) {
  return {si::m_per_s(surface), si::m(depth), waterAt(water), profile, 1.0};
}

}  // namespace grainwise
