// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/air.h"

#include <algorithm>
#include <cmath>

#include "core/units/si.h"

namespace grainwise {

double standardAirDensity_kg_per_m3(Feet altitude) {
  constexpr double kSeaLevel_kg_per_m3 = 1.225;
  constexpr double kSeaLevel_K = 288.15;
  constexpr double kLapse_K_per_m = 0.0065;
  constexpr double kGasConstant_J_per_kg_K = 287.05287;
  const double altitude_m = std::clamp(si::m(altitude), -2000.0, 11000.0);
  const double exponent = si::kGravity_m_per_s2 / (kLapse_K_per_m * kGasConstant_J_per_kg_K) - 1.0;
  return kSeaLevel_kg_per_m3 * std::pow(1.0 - kLapse_K_per_m * altitude_m / kSeaLevel_K, exponent);
}

AirSettings airAt(const std::optional<Feet>& altitude) {
  AirSettings air;
  if (altitude) air.density_kg_per_m3 = standardAirDensity_kg_per_m3(*altitude);
  return air;
}

}  // namespace grainwise
