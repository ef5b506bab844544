// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/air/rolling_loop.h"

namespace grainwise {

/// The slowest fly-leg speed at which the loop arrives with its fly above the water (h >= 0), to
/// 1e-6 of itself; nothing when none up to 1000 m/s does (a rod tip at the water and a cast aimed
/// down, say). `guess` may be any speed over the rod leg's.
/// Method: the fall z goes nearly with a power of the speed, so secants of ln z over ln u (3-5
/// runs), kept in a bracket that is halved where the leg stops on the way.
std::optional<double> leastSpeed_m_per_s(const RollingLoop& loop, double rodLeg_m_per_s,
                                         const LoopDrag& drag, double guess_m_per_s);

}  // namespace grainwise
