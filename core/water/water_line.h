// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/mass/profile.h"
#include "core/model/rig.h"
#include "core/water/river.h"

namespace grainwise {

/// A stretch of line in plain SI, from its fly end to its rod end.
struct WaterPiece {
  double length_m = 0.0;
  double massFlyEnd_kg_per_m = 0.0, massRodEnd_kg_per_m = 0.0;
  double diameterFlyEnd_m = 0.0, diameterRodEnd_m = 0.0;
  MassLaw massLaw = MassLaw::linear;
  SectionProperties::DiameterLaw diameterLaw = SectionProperties::DiameterLaw::linear;
  double loopsFlyEnd_kg = 0.0;  ///< loops at its fly end, both parts' together
  enum class Fineness { tip, head, running } fineness = Fineness::tip;

  /// `share` 0 at the fly end, 1 at the rod end.
  [[nodiscard]] double mass_kg_per_m(double share) const;
  [[nodiscard]] double diameter_m(double share) const;
};

struct WaterFly {
  double mass_kg = 0.0;
  double volume_m3 = 0.0;
  double dragArea_m2 = 0.0;   ///< drag coefficient times area, from any side
  double broadside = 3.0;     ///< factor on it when sinking flat: 3, or 1.3 head first
};

/// Everything in the water from the fly up to the rod tip. Pieces stand in order from the fly.
struct WaterLine {
  WaterFly fly;
  std::vector<WaterPiece> pieces;
  [[nodiscard]] double length_m() const;
};

/// Line out, angle and mend; absent members of a rig's `swing` take these.
struct SwingSetup {
  Feet lineOut{75.0};     ///< from rod tip to fly
  Degrees angle{45.0};    ///< of the landed line below straight across
  Seconds mend{3.0};      ///< free drift before the line comes tight
  bool operator==(const SwingSetup&) const = default;
};
SwingSetup swingSetup(const Rig& rig);

/// The current over the bed that a rig states, else `otherwise`.
CurrentProfile profileOf(const Rig& rig, const CurrentProfile& otherwise = {});

/// The water of a rig, 10 C and fresh where it says nothing, its current over its own bed, else as
/// `profile` has it; nothing without speed and depth.
std::optional<River> riverOf(const Rig& rig, const CurrentProfile& profile = {});
WaterState waterState(const Rig& rig);

/// The running line where a rig has none: 0.032 in, 0.90 g/cm3 (estimate).
inline constexpr Inches kRunningLineDiameter{0.032};

/// The rig as it lies in the water, cut to `lineOut` (running line added where it is short of it).
/// Nothing without a fly of known mass. Fly volume from its wet mass and density.
std::optional<WaterLine> waterLine(const Rig& rig, const MassProfile& profile, Feet lineOut);

/// All that a depth or a swing is computed from, by value, so that a worker can take it along.
struct RigInWater {
  WaterLine line;
  River river;
  SwingSetup setup;
};
/// Nothing without a fly of known mass or without speed and depth of the water.
std::optional<RigInWater> rigInWater(const Rig& rig, const MassProfile& profile,
                                     const CurrentProfile& current = {});

}  // namespace grainwise
