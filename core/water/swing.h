// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/water/water_line.h"

namespace grainwise {

/// How a swing ended.
enum class SwingEnd {
  hangs,         ///< straight below the rod and at rest, or nearly
  rests,         ///< at rest before it was straight below: something lies on the bed
  stillGoing,    ///< the longest run was over before
  stopped,       ///< asked to stop; what was reached is there
  stillWater,    ///< nothing was run: under 0.1 ft/s there is no swing
  notConverged,  ///< a step could not be solved; what was reached is there
};

/// A point of the line: downstream of the rod tip, across the river from it, below the surface.
struct SwingPoint {
  Feet downstream, across, depth;
};
struct SwingFrame {
  Seconds time;  ///< from the landing
  std::vector<SwingPoint> line;  ///< from the rod tip (once tied) to the fly
};

struct SwingResult {
  SwingEnd end = SwingEnd::stillWater;
  Feet afterMend;                     ///< depth of the fly when the line comes tight
  Feet deepest;
  std::optional<Feet> swing;          ///< mean over the middle 60 % of the lateral travel
  Feet hangDown;                      ///< the last depth of the run
  std::optional<Seconds> timeTo10deg; ///< from landing until within 10 deg of straight below
  double bottomShare = 0.0;           ///< of the lateral travel, fly within 6 cm of the bed
  Feet travel;                        ///< lateral, from moving home at 0.1 m/s to 10 deg
  std::vector<SwingFrame> track;
  double stretch = 0.0;               ///< most that any element was longer than it is
  int rejectedSteps = 0;              ///< thrown away and halved
  [[nodiscard]] bool ran() const { return end != SwingEnd::stillWater; }
  /// So much of the travel lies on the bed that a depth would say the wrong thing.
  [[nodiscard]] bool onBottom() const { return bottomShare >= 0.5; }
};

struct SwingOptions {
  Seconds frameEvery{0.1};  ///< of the track; 0: no track
  bool settle = true;       ///< run on to the hang-down; false: stop at 10 deg
  bool coarse = false;      ///< twice the elements and steps, for the many runs of the band
};

/// One swing from landing to hang-down. Law and method: line_dynamics.h. The cast lands straight on
/// the surface, `angle` below straight across, and drifts freely for `mend` with its upper end loose;
/// then it is tied, just tight, to a still rod tip 0.6 m up. Steps of 20 ms, halved where Newton does
/// not converge in 8 iterations. Validity: straight even stretch; no rod movement, second mends, wind,
/// boils or bending stiffness. Against independent solutions within 3 % or 0.05 ft.
/// Cost: 30-50 ms for a swing of 75 ft. `progress` is called with 0 to 1 from time to time.
SwingResult swing(const WaterLine& line, const River& river, const SwingSetup& setup,
                  const SwingOptions& options = {}, std::stop_token stop = {},
                  const std::function<void(double)>& progress = {});

}  // namespace grainwise
