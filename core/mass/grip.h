// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/mass/junctions.h"
#include "core/mass/profile.h"

namespace grainwise {

enum class TipShareVerdict { noGrip, light, right, heavy, tooMuch };
enum class AnchorVerdict { tooLittle, shortish, good, longish };
enum class FlyVerdict { carries, heavySlow, tooHeavy };
enum class LeaderVerdict { fine, watch, tooHeavy };

struct GripLimits {
  double noGrip = 0.10, light = 0.15, right = 0.27, heavy = 0.33;  ///< short heads
  double longHeadMost = 0.25;                                      ///< fine taper and long belly
  double anchorLeast = 0.80, anchorGood = 0.85, anchorMost = 1.5;
  double flyCarries = 2.5, flyHeavy = 2.0;
  double leaderFine = 1.0, leaderWatch = 0.5;
  Feet nylonFree{6.0};
  Feet tipWindow{10.0};
  bool operator==(const GripLimits&) const = default;
};

/// Grip and lift: what the water holds and what the head can pick up. Tip grains are tips and coated
/// leaders with their loops. Common practice, no source; the limits are ours.
struct Grip {
  Grains tip;
  Grains head;
  std::optional<double> tipShare;  ///< tip / head
  std::optional<TipShareVerdict> tipShareVerdict;  ///< only for a style with a rule, and a tip
  std::optional<double> anchorRatio;  ///< everything between head and fly / rod length
  Feet anchor;
  std::optional<AnchorVerdict> anchorVerdict;  ///< two-handed casts only
  Grains sinking;  ///< sinking sections of heads, tips and coated leaders, without loops
  std::optional<GrainsPerFoot> table;  ///< the trade's table, short heads only
};

/// Fly against tip: the last 10 ft of line that is not bare nylon (without loops) against the wet fly.
struct FlyFit {
  Grains tipWindow;      ///< grains of those feet
  Feet tipWindowLength;  ///< 10 ft, or what there is
  Grains fly;            ///< wet
  std::optional<double> tipToFly;
  std::optional<FlyVerdict> tipToFlyVerdict;
  Grains nylon;          ///< grains of the bare nylon
  Feet nylonLength;
  std::optional<double> leaderToFly;  ///< only with more than 6 ft of nylon
  std::optional<LeaderVerdict> leaderToFlyVerdict;
  std::optional<Feet> feetOfTip;      ///< the fly's grains as feet of that line
};

Grip grip(const Rig& rig, const MassProfile& profile, const GripLimits& limits = {});
FlyFit flyFit(const Rig& rig, const MassProfile& profile, const GripLimits& limits = {});

/// No grip, too much tip, too little in the water and a fly too heavy for tip or leader are wrong.
Grade grade(TipShareVerdict verdict);
Grade grade(AnchorVerdict verdict);
Grade grade(FlyVerdict verdict);
Grade grade(LeaderVerdict verdict);

}  // namespace grainwise
