// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>

#include "core/air/cast.h"
#include "core/analysis/conditions.h"
#include "core/water/swing.h"

namespace grainwise {

/// The readings that take longer than a frame: run in a worker, or when a command asks for them.
struct HeavyRuns {
  std::optional<SwingResult> swing;  ///< with water and a fly of known mass
  std::optional<SwingBand> band;     ///< the depth band from real swings
  std::optional<CastResult> cast;    ///< the unrolling loop, however it ended
  std::optional<NoTurnover> noCast;  ///< why there is none
};

/// The swing of a rig in its own water and the band around it, about 0.4 s. `progress` gets 0 to 1.
/// When stopped, what is there is incomplete and says so.
HeavyRuns swingRuns(const Rig& rig, const Conditions& conditions = {}, std::stop_token stop = {},
                    const std::function<void(double)>& progress = {});

/// The rig's unrolling loop, without pictures, 15-40 ms; replaces what `runs` had of it.
void addCast(HeavyRuns& runs, const Rig& rig, const Conditions& conditions = {},
             std::stop_token stop = {}, const std::function<void(double)>& progress = {});

}  // namespace grainwise
