// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <numbers>

#include "core/units/trade.h"

/// The only place with conversion factors. All are exact by definition.
/// Source: International yard and pound agreement 1959 (1 lb = 0.45359237 kg = 7000 gr,
/// 1 ft = 0.3048 m); NIST SP 811 Appendix B; standard gravity, 3rd CGPM 1901.
namespace grainwise::si {

inline constexpr double kKilogramsPerGrain = 64.79891e-6;
inline constexpr double kMetresPerFoot = 0.3048;
inline constexpr double kMetresPerInch = 0.0254;
inline constexpr double kInchesPerFoot = 12.0;
inline constexpr double kGravity_m_per_s2 = 9.80665;
inline constexpr double kKelvinAtZeroCelsius = 273.15;
inline constexpr double kFahrenheitPerCelsius = 1.8;
inline constexpr double kFahrenheitAtZeroCelsius = 32.0;

constexpr double kg(Grains m) { return m.value() * kKilogramsPerGrain; }
constexpr double m(Feet l) { return l.value() * kMetresPerFoot; }
constexpr double m(Inches l) { return l.value() * kMetresPerInch; }
constexpr double kg_per_m(GrainsPerFoot mu) {
  return mu.value() * (kKilogramsPerGrain / kMetresPerFoot);
}
constexpr double m_per_s(InchesPerSecond v) { return v.value() * kMetresPerInch; }
constexpr double m_per_s(FeetPerSecond v) { return v.value() * kMetresPerFoot; }
constexpr double m2(SquareCentimetres a) { return a.value() * 1e-4; }
constexpr double kg_per_m3(GramsPerCubicCentimetre rho) { return rho.value() * 1e3; }
constexpr double rad(Degrees a) { return a.value() * (std::numbers::pi / 180.0); }

constexpr Grains toGrains(double mass_kg) { return Grains(mass_kg / kKilogramsPerGrain); }
constexpr Feet toFeet(double length_m) { return Feet(length_m / kMetresPerFoot); }
constexpr Inches toInches(double length_m) { return Inches(length_m / kMetresPerInch); }
constexpr GrainsPerFoot toGrainsPerFoot(double mu_kg_per_m) {
  return GrainsPerFoot(mu_kg_per_m / (kKilogramsPerGrain / kMetresPerFoot));
}
constexpr InchesPerSecond toInchesPerSecond(double v_m_per_s) {
  return InchesPerSecond(v_m_per_s / kMetresPerInch);
}
constexpr FeetPerSecond toFeetPerSecond(double v_m_per_s) {
  return FeetPerSecond(v_m_per_s / kMetresPerFoot);
}
constexpr SquareCentimetres toSquareCentimetres(double area_m2) {
  return SquareCentimetres(area_m2 * 1e4);
}
constexpr GramsPerCubicCentimetre toGramsPerCubicCentimetre(double rho_kg_per_m3) {
  return GramsPerCubicCentimetre(rho_kg_per_m3 * 1e-3);
}
constexpr Degrees toDegrees(double angle_rad) {
  return Degrees(angle_rad * (180.0 / std::numbers::pi));
}

}  // namespace grainwise::si
