// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/water/hang.h"
#include "core/water/swing.h"

namespace grainwise {

/// A range of depth that holds four swings out of five, and its middle.
struct DepthBand {
  Feet low;
  Feet middle;
  Feet high;
  bool fromRuns = false;  ///< real runs; false: the live estimate
  // Of the run of the rig as stated; the live estimate says nothing of them.
  double bottomShare = 0.0;           ///< of the way across, on the bed
  std::optional<Seconds> roundAfter;  ///< until nearly straight below
  /// So much of the way lies on the bed that a depth would say the wrong thing.
  [[nodiscard]] bool onBottom() const { return fromRuns && bottomShare >= 0.5; }
  bool operator==(const DepthBand&) const = default;
};

/// The live estimate: about 1.12 times the hang-down, -20 % and +30 %, at least 0.3 ft either way but
/// never shallower than two thirds of the middle, never deeper than the water. The factor holds while
/// a slider moves: over the reference rigs the swing depth is 1.05 to 1.17 times the hang-down. Ours
/// (estimate). Of its width, what a speed uncertain by 12 % does is known apart: the depth goes with
/// about its -1.3rd power (the sample rigs), so that a better known speed narrows the range by
/// the root of the difference of squares. Nothing where there is no depth.
std::optional<DepthBand> liveBand(const HangDown& hang, Feet waterDepth,
                                  double currentShare = 0.12);

/// How far the surface speed of a rig's water may be off, as a share: `usual`, or less where a measured
/// depth has fixed it (and the speed still is the one that was found), at least 2 %.
double currentShareOf(const Rig& rig, double usual = 0.12);

/// How far from its stated value each thing may be, four times out of five. Ours (estimate).
struct WaterUncertainty {
  double current = 0.12;                      ///< relative
  InchesPerSecond rating{0.5};                ///< of every rated section together
  double drag = 0.10;                         ///< relative, on Cd of the line
  double flyDrag = 1.5;                       ///< factor
  Seconds mend{0.7};
  Degrees angle{5.0};
  GramsPerCubicCentimetre headLight{0.82};    ///< of floating heads without stated density
  GramsPerCubicCentimetre headHeavy{0.90};
  double profileFull = 1.0 / 8.0;             ///< exponents of the current, where the bed is not stated
  double profileSteep = 1.0 / 5.0;
  bool operator==(const WaterUncertainty&) const = default;
};

/// What a part of the uncertainty does to the swing depth.
enum class BandSource { current, rating, drag, flyDrag, mend, angle, headDensity, profile };
struct BandShare {
  BandSource source;
  Feet shallower;  ///< how much shallower its worse end makes it, 0 or more
  Feet deeper;
};

/// The depth with one source at its two ends by itself, the same end first for every rig: two rigs in
/// the same water are compared end by end. None: no depth there.
struct BandEnds {
  BandSource source;
  std::optional<Feet> one, other;
};

struct SwingBand {
  SwingEnd end = SwingEnd::stillWater;  ///< of the middle run, or `stopped`
  std::optional<DepthBand> band;
  std::vector<BandShare> shares;        ///< the greatest first
  std::optional<Feet> middle;           ///< swing depth of the rig as stated, in the runs of the band
  std::vector<BandEnds> ends;           ///< in the order of BandSource
  int runs = 0;
};

/// The band from real swings: the rig as stated, and each source at its two ends by itself; changes to
/// one side add up as the root of the sum of their squares (the sources are independent and act
/// nearly linearly). At least 0.3 ft either way, as for the live estimate, and never deeper than the
/// bed. Up to 17 quick runs, about 0.3 s; no random number. `progress` is called with 0 to 1.
SwingBand swingBand(const Rig& rig, const CurrentProfile& current = {},
                    const WaterUncertainty& uncertainty = {}, std::stop_token stop = {},
                    const std::function<void(double)>& progress = {});

/// The live estimate of the swing depth (1.12 times the hang-down) at the ends of those sources that
/// act on a hanging line, mend and angle among them not. Nothing where there is no depth. Cost: a
/// hang-down of about 30 us an end.
struct LiveEnds {
  Feet middle;
  bool onBottom = false;
  std::vector<BandEnds> ends;
};
std::optional<LiveEnds> liveEnds(const Rig& rig, const CurrentProfile& current = {},
                                 const WaterUncertainty& uncertainty = {});

}  // namespace grainwise
