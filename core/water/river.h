// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>

#include "core/material/fluid.h"
#include "core/model/bed.h"
#include "core/units/trade.h"

namespace grainwise {

/// How the current falls from the surface to the bed.
struct CurrentProfile {
  enum class Law {
    power,        ///< u = U_s (1 + z/H)^exponent
    logarithmic,  ///< u = U_s ln((z + H)/z0)/ln(H/z0), z0 = H e^-7: the same mean, 6/7 of U_s
  };
  Law law = Law::power;
  double exponent = 1.0 / 6.0;
  bool operator==(const CurrentProfile&) const = default;
};

/// The current over a bed: the power law with one seventh over sand, one sixth over gravel (the usual),
/// one fifth over cobbles, one quarter over boulders. Common practice, no source.
CurrentProfile profileOver(Bed bed);

/// How far the exponent over a bed may be off: from a bed smoother by two steps (1/8 for the usual
/// one) to one rougher by a step (1/5). Ours (estimate).
struct ProfileRange {
  double full;
  double steep;
};
ProfileRange profileRangeOver(Bed bed);

/// A straight, even stretch of river in plain SI for the solvers: x downstream, z up, surface 0, bed
/// -depth. Law: power of one sixth, mean/surface 6/7 = 0.857. Source: 0.86 in natural channels, Rantz
/// and others (1982), USGS WSP 2175, p. 170; range 0.84-0.90, Turnipseed and Sauer (2010), TM 3-A8.
struct River {
  double surface_m_per_s = 0.0;
  double depth_m = 0.0;
  Fluid fluid;
  CurrentProfile profile;
  double acrossDragFactor = 1.0;  ///< on Cd of the line, for its uncertainty

  /// Speed in m/s at `z_m`; the surface's above it, 0 at and below the bed.
  [[nodiscard]] double current_m_per_s(double z_m) const {
    if (z_m >= 0.0) return surface_m_per_s;
    const double share = 1.0 + z_m / depth_m;
    if (share <= 0.0) return 0.0;
    if (profile.law == CurrentProfile::Law::logarithmic) {
      return surface_m_per_s * std::max(0.0, 1.0 + std::log(share) / 7.0);
    }
    if (profile.exponent == 1.0 / 6.0) return surface_m_per_s * std::cbrt(std::sqrt(share));
    return surface_m_per_s * std::pow(share, profile.exponent);
  }
};

River riverOf(FeetPerSecond surface, Feet depth, const WaterState& water,
              const CurrentProfile& profile = {});

}  // namespace grainwise
