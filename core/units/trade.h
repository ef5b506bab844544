// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/quantity.h"

/// The units of the trade, as typed and as stored. Solvers use plain SI doubles (si.h).
namespace grainwise {

using Feet = Quantity<struct FeetTag>;
using Inches = Quantity<struct InchesTag>;
using Grains = Quantity<struct GrainsTag>;
using GrainsPerFoot = Quantity<struct GrainsPerFootTag>;
using InchesPerSecond = Quantity<struct InchesPerSecondTag>;
using FeetPerSecond = Quantity<struct FeetPerSecondTag>;
using SquareCentimetres = Quantity<struct SquareCentimetresTag>;
using GramsPerCubicCentimetre = Quantity<struct GramsPerCubicCentimetreTag>;
using Celsius = Quantity<struct CelsiusTag>;
using GramsPerKilogram = Quantity<struct GramsPerKilogramTag>;
using Degrees = Quantity<struct DegreesTag>;
using Seconds = Quantity<struct SecondsTag>;

constexpr Grains operator*(GrainsPerFoot density, Feet length) {
  return Grains(density.value() * length.value());
}
constexpr Grains operator*(Feet length, GrainsPerFoot density) { return density * length; }
constexpr GrainsPerFoot operator/(Grains mass, Feet length) {
  return GrainsPerFoot(mass.value() / length.value());
}
constexpr Feet operator/(Grains mass, GrainsPerFoot density) {
  return Feet(mass.value() / density.value());
}

}  // namespace grainwise
