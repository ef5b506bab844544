// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/water/water_line.h"

namespace grainwise {

/// What the steady depth is, or why there is none.
enum class DepthState {
  hangs,             ///< a depth
  nearBottom,        ///< a depth, but within half a foot of the bed or ready to settle there
  onBottom,          ///< the fly lies on the bed
  lineOnBottom,      ///< and some of the line with it
  stillWater,        ///< no depth: under 0.1 ft/s there is no swing
  everythingFloats,  ///< no depth: nothing sinks
  flyFloats,         ///< no depth: the fly is lighter than water
};
/// Whether a state comes with a depth of its own (on the bottom it is the bottom's).
constexpr bool hasDepth(DepthState state) { return state <= DepthState::lineOnBottom; }
constexpr bool isOnBottom(DepthState state) {
  return state == DepthState::onBottom || state == DepthState::lineOnBottom;
}

/// A point of the hanging line.
struct HangPoint {
  Feet fromFly;   ///< along the line
  Feet depth;     ///< below the surface
  Feet upstream;  ///< of the fly
};

/// The line hanging straight below a still rod, long after the swing.
struct HangDown {
  DepthState state = DepthState::hangs;
  Feet fly;                             ///< depth; on the bottom: of the bed less 3 cm
  std::optional<Feet> junction;         ///< depth of the fly end of the last floating line
  std::optional<Feet> surfacesFromFly;  ///< feet of line from the fly to the surface
  bool heldByRod = false;  ///< no floating line takes up the pull: the line runs down from the rod
  std::vector<HangPoint> shape;  ///< from the fly to the surface (or, held, to the rod tip)
};

/// Simpler drags than the real ones, for which closed forms and published tables exist.
struct HangForces {
  std::optional<double> acrossCd;       ///< one drag coefficient at every speed
  std::optional<double> along_n_per_m;  ///< one drag along the line, whatever its angle (Pode)
};

/// Law: with a the line's angle from level and T its tension, marching upstream from the fly,
///   dTx/ds = -(Kn u sin^2 a + Kt u cos^2 a), dTz/ds = w' - (Kn - Kt) u sin a cos a,
///   w' = (m - rho A) g, Kn = 1/2 mu G(Re_n), Kt = max(2.7 mu sqrt(Re_n), 1/2 rho pi d Cf u cos a),
/// from Tx = -1/2 rho CdA u^2 and Tz = the fly's wet weight. The one unknown is the fly's depth: the
/// floating line must reach the surface level (Tz falls to 0 there). Cross-flow principle with the
/// drag of core/material/drag.h; Cf = 0.010 (G. I. Taylor 1952, coefficient from memory).
/// Validity: straight even stretch, still rod, no bending stiffness. Checked against closed forms,
/// Pode (1951) and independent SciPy solutions.
/// Method: RK4 in steps of up to 0.16 m (0.2 m in the head), finer where the pull is small; secant
/// from the surface down, which takes the upper of two roots near the bed. To 1e-5 m; about 30 us.
HangDown hangDown(const WaterLine& line, const River& river, const HangForces& forces = {});

}  // namespace grainwise
