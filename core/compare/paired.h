// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/heavy_runs.h"

namespace grainwise {

/// A figure of B less that of A, and between which values it lies four times out of five.
struct PairedDifference {
  double middle = 0.0;
  double low = 0.0;
  double high = 0.0;
  /// Whether the sign is certain: otherwise the difference is within the uncertainty.
  [[nodiscard]] bool sure() const { return low > 0.0 || high < 0.0; }
  bool operator==(const PairedDifference&) const = default;
};

/// What two rigs share, so that an error in it moves both of them alike.
struct Shared {
  bool water = false;  ///< the same place: current, its profile
  bool fly = false;
  bool lines = false;  ///< the same rated sections: their ratings
  bool head = false;
  bool cast = false;
  bool swing = false;  ///< angle and mend
};

/// What one source of error does to a figure of A and of B; `common`: to both at once, else each to
/// its own. `one` and `other` are its two ends; absent where that end gives no figure.
struct SourceEnds {
  bool common = true;
  std::optional<double> oneA, otherA, oneB, otherB;
};

/// Law: an error shared by both rigs moves the difference by (B' - B) - (A' - A), one that is not by
/// B' - B and A' - A separately; changes to either side add up as the root of the sum of their squares
/// (independent sources, as for the band of one depth: core/water/band.h). Ours (estimate). So two
/// depths in the same water differ by less than each of them is known.
PairedDifference pairedDifference(double a, double b, const std::vector<SourceEnds>& sources);

/// Of the swing depth in feet, positive: B fishes deeper. From the runs of both bands where they are
/// there, else from the live estimate. Nothing where either has no depth.
struct DepthDifference {
  Feet a, b;
  PairedDifference feet;
  bool onBottomA = false, onBottomB = false;
  bool fromRuns = false;
};
std::optional<DepthDifference> depthDifference(const std::optional<LiveEnds>& a,
                                               const std::optional<LiveEnds>& b,
                                               const Shared& shared);
std::optional<DepthDifference> depthDifference(const HeavyRuns& a, const HeavyRuns& b,
                                               const Shared& shared);

/// Of reserve, drive and pace.
struct TurnoverDifference {
  PairedDifference reserve, pace;
  std::optional<PairedDifference> drive;
};
TurnoverDifference turnoverDifference(const Turnover& a, const Turnover& b, const Shared& shared);

}  // namespace grainwise
