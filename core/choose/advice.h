// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/choose/choose.h"

namespace grainwise {

/// What is changed on the water before a tip is.
enum class WaterHandle { angle, mend, lineOut };

/// The depth of a rig with one of the three changed.
struct WaterChange {
  WaterHandle handle = WaterHandle::angle;
  double from = 0.0;  ///< degrees, seconds or feet, as the handle has it
  double to = 0.0;
  Feet depth;              ///< middle of the band with it
  bool onBottom = false;
  double share = 0.0;      ///< of the band in the wanted water
  bool inside = false;     ///< its middle lies there
};

/// What angle, mend and line out can do for a rig in its water: for each, the smallest change tried
/// that brings the middle of the depth into the wanted water, or else the one that comes nearest,
/// where that is a third of the way at least. From real swings (core/water/swing.h): the live depth times the ratio
/// of the swing depths. Empty where nothing is wanted, the depth is inside already, or there is none.
/// Not tried: casts flatter than 25 or steeper than 65 degrees, more than 9 s of slack.
/// Cost: up to 10 quick swings on two threads, about 0.15 s.
std::vector<WaterChange> waterAdvice(const Rig& rigInWater, const WantedWater& wanted,
                                     const CurrentProfile& current = {},
                                     const std::stop_token& stop = {},
                                     const std::function<void(double)>& progress = {});

/// The same for a choice: only where the rig as it stands is refused or to be watched for its depth
/// and refused for nothing else. A tip is not changed for depth alone before these are tried (common
/// practice, no source).
std::vector<WaterChange> adviceBeforeTip(const TipQuestion& question, const Choice& choice,
                                         const std::stop_token& stop = {},
                                         const std::function<void(double)>& progress = {});

/// The rig with that change.
Rig withWaterChange(const Rig& rig, const WaterChange& change);

}  // namespace grainwise
