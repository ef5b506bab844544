// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "core/compare/align.h"
#include "core/compare/paired.h"

namespace grainwise {

/// What a difference can change.
enum class Effect {
  junction,
  headOnRod,
  workingLength,
  tipShare,
  anchor,
  flyAgainstTip,
  flyAgainstLeader,
  drive,
  reserve,
  pace,
  depth,
  swingTime,
  stroke,
};

using AnyVerdict =
    std::variant<std::monostate, JunctionVerdict, HeadVerdict, LengthVerdict, TipShareVerdict,
                 AnchorVerdict, FlyVerdict, LeaderVerdict, DriveVerdict, ReserveVerdict, PaceVerdict,
                 DepthState>;

/// A reading of one rig: joints by the ratio of their 3-ft means; head on rod, gr; working length and
/// anchor, rod lengths; tip share; fly against tip or leader; drive; reserve; pace; depth, ft, middle
/// of the range; swing time, s.
struct Figure {
  double value = 0.0;
  AnyVerdict verdict;
  std::optional<Grade> grade;
};

/// What the difference between two rigs does to one reading.
struct Consequence {
  Effect effect = Effect::junction;
  std::optional<Figure> a, b;  ///< absent: the rig has no such reading
  std::optional<PairedDifference> difference;  ///< of drive, reserve, pace and depth
  /// No more than what is known: the sign of a paired difference is open, or masses differ by under
  /// 3 % (the tolerance of the bench scale), lengths by under a quarter of a foot. Ours.
  bool within = false;
  std::optional<Junction> joint, jointB;  ///< of a junction; part indices in its own rig
  std::optional<Stroke> stroke;           ///< of the stroke: B against A
  bool fromRuns = false;                  ///< of the depth: from real swings

  /// How much it matters: a step of grade first, then by how much it changes; last what is within.
  /// The order is ours.
  [[nodiscard]] double weight() const;
};

/// A rig with everything that is known of it, by reference.
struct ComparedRig {
  const Rig& rig;
  const Analysis& analysis;
  const HeavyRuns* heavy = nullptr;  ///< absent: live estimates, and no time of the swing
  const std::optional<LiveEnds>* live = nullptr;  ///< absent: computed when needed
};

/// All readings that differ (those that would read the same are left out), what matters most first.
std::vector<Consequence> consequences(const ComparedRig& a, const ComparedRig& b,
                                      const std::vector<PartPair>& pairs,
                                      const Conditions& conditions);

}  // namespace grainwise
