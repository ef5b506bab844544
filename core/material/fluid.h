// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/units/trade.h"

namespace grainwise {

/// Water that a line sinks in.
struct WaterState {
  Celsius temperature{10.0};
  GramsPerKilogram salinity{0.0};
  bool operator==(const WaterState&) const = default;
};
/// Rated sink rates are for fresh water at 15 C.
inline constexpr WaterState kRatingWater{Celsius(15.0), GramsPerKilogram(0.0)};

/// Density and viscosity of water at one atmosphere, plain SI for the solvers.
struct Fluid {
  double rho_kg_per_m3 = 0.0;
  double mu_pa_s = 0.0;
  [[nodiscard]] double nu_m2_per_s() const { return mu_pa_s / rho_kg_per_m3; }
  bool operator==(const Fluid&) const = default;
};

/// Density of water in kg/m3 at one atmosphere; T in C, S in g/kg.
/// Law: the polynomial of EOS-80 (UNESCO Technical Papers in Marine Science 44, 1983), 0-40 C,
/// 0-42 g/kg; agrees with IAPWS-95 and TEOS-10 within 1e-4. Outside the range the polynomial runs on.
double waterDensity_kg_per_m3(Celsius temperature, GramsPerKilogram salinity);

/// Viscosity of water in Pa s at one atmosphere; T in C, S in g/kg.
/// Law: Sharqawy, Lienhard and Zubair (2010), Desalination and Water Treatment 16, 354-380, eq. 22-23:
/// mu_w = 4.2844e-5 + 1/(0.157 (T + 64.993)^2 - 91.296), times 1 + A s + B s^2 with s = S/1000.
/// 0-180 C, 0-150 g/kg, within 1.5 %; agrees with IAPWS 2008 within 5e-3 in fresh water.
double waterViscosity_pa_s(Celsius temperature, GramsPerKilogram salinity);

Fluid waterAt(const WaterState& water);

}  // namespace grainwise
