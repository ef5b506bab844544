// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/turnover.h"
#include "core/mass/grip.h"
#include "core/mass/junctions.h"
#include "core/mass/rod_fit.h"
#include "core/mass/stroke.h"
#include "core/water/band.h"

namespace grainwise {

/// Everything `analyse` depends on besides the rig: preferences are arguments, never globals.
struct Conditions {
  JunctionLimits junctions;
  RodLimits rod;
  GripLimits grip;
  StrokeLimits stroke;
  TurnoverConditions turnover;  ///< air, limits and the learner switch
  std::optional<StrokeBasis> strokeReference;  ///< of the rig to compare the stroke with
  CurrentProfile current;
  WaterUncertainty waterUncertainty;  ///< narrower where a river has been measured
};

}  // namespace grainwise
