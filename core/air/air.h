// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/units/trade.h"

namespace grainwise {

/// The air and its drag on a line, with how far each figure may be off.
/// Across: Fn = 1/2 rho Cn d |u_n| u_n a metre; along: Ft = 1/2 rho pi d Ct |u_t| u_t a metre.
/// Cn: cylinders at Re 200-3000, about 1.0-1.2 (Wieselsberger 1922, NACA TN-84, Re:Cd 196:1.27,
/// 892:0.964). Ct: common practice, 0.005-0.015, the least certain figure here.
struct AirSettings {
  double density_kg_per_m3 = 1.2;
  double acrossDrag = 1.1;      ///< Cn
  double alongDrag = 0.010;     ///< Ct
  double alongDragLow = 0.005;  ///< for the range of the readings
  double alongDragHigh = 0.015;
  double flyDragFactor = 1.5;    ///< a fly's drag area is known to times or divided by this
  double lineSpeedShare = 0.15;  ///< a caster's line speed is known to this much up or down
  bool operator==(const AirSettings&) const = default;
};

/// Density of the standard atmosphere at an altitude (geopotential), kg/m3:
/// 1.225 (1 - h / 44330.8 m)^4.25588. Source: ISO 2533:1975, troposphere (15 C and 1013.25 hPa at
/// sea level, 6.5 K/km). Valid -2000 to 11000 m; outside, the value at the nearer end.
double standardAirDensity_kg_per_m3(Feet altitude);

/// Where the air is the usual one, 1.2 kg/m3, to a tenth of a per cent.
inline constexpr Feet kUsualAirAltitude{700.0};

/// The air at an altitude; none: the usual air.
AirSettings airAt(const std::optional<Feet>& altitude);

}  // namespace grainwise
