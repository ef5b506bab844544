// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/material/fluid.h"

#include <cmath>

namespace grainwise {

double waterDensity_kg_per_m3(Celsius temperature, GramsPerKilogram salinity) {
  const double t = temperature.value();
  const double s = salinity.value();
  const double fresh =
      999.842594 +
      t * (6.793952e-2 +
           t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
  const double a =
      8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
  const double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
  return fresh + s * (a + b * std::sqrt(s) + 4.8314e-4 * s);
}

double waterViscosity_pa_s(Celsius temperature, GramsPerKilogram salinity) {
  const double t = temperature.value();
  const double s = salinity.value() / 1000.0;
  const double warmer = t + 64.993;
  const double fresh = 4.2844e-5 + 1.0 / (0.157 * warmer * warmer - 91.296);
  const double a = 1.541 + 1.998e-2 * t - 9.52e-5 * t * t;
  const double b = 7.974 - 7.561e-2 * t + 4.724e-4 * t * t;
  return fresh * (1.0 + a * s + b * s * s);
}

Fluid waterAt(const WaterState& water) {
  return {waterDensity_kg_per_m3(water.temperature, water.salinity),
          waterViscosity_pa_s(water.temperature, water.salinity)};
}

}  // namespace grainwise
