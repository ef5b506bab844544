// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/model/rig.h"

namespace grainwise {

/// How a line is cast: everything of a `Cast` that was left open is filled in.
struct CastSetup {
  FeetPerSecond lineSpeed;    ///< of the leg with the fly on it, as the loop forms
  FeetPerSecond rodLegSpeed;  ///< of the other leg, forward: 0, it is held
  Feet loop;                  ///< height of the loop, leg to leg
  Degrees launch;             ///< above level
  Feet rodTip;                ///< height of the rod tip above the water
  Feet overhang;              ///< running line outside the rod tip
  std::optional<Feet> airAltitude;  ///< above the sea; none: the usual air
  bool operator==(const CastSetup&) const = default;
};

/// A usual cast for a style of head (common practice, no source): short 55 ft/s, loop 5 ft, 6 deg;
/// fine taper 65, 3.5, 6; long belly 80, 4, 10; rod tip 13 ft; single hand 50, 2.5, 6, rod tip
/// 11 ft; overhang 3 ft. Any other style: as for a short head.
CastSetup usualCast(Style headStyle);

/// The rig's own `cast` over the usual one for its head (for a one-hand rod: single hand). A
/// learner has 20 % less line speed than that.
CastSetup castSetup(const Rig& rig, bool learner);

}  // namespace grainwise
