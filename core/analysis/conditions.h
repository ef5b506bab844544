// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/turnover.h"
#include "core/analysis/rules.h"
#include "core/mass/stroke.h"
#include "core/water/band.h"

namespace grainwise {

/// Everything `analyse` depends on besides the rig: preferences are arguments, never globals.
struct Conditions {
  Rules rules;  ///< every limit that a verdict goes by
  bool learner = false;                        ///< 20 % less line speed
  std::optional<StrokeBasis> strokeReference;  ///< of the rig to compare the stroke with
  CurrentProfile current;
  WaterUncertainty waterUncertainty;  ///< narrower where a river has been measured
  bool operator==(const Conditions&) const = default;

  /// What turnover depends on of all this.
  [[nodiscard]] TurnoverConditions turnover() const { return {rules.turnover, learner}; }
};

}  // namespace grainwise
