// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/analysis/analysis.h"

namespace grainwise {

/// Everything that is read about a rig. All are judged but the depth, which is only told.
enum class Reading {
  junction,
  headOnRod,
  workingLength,
  tipShare,
  anchor,
  flyAgainstTip,
  flyAgainstLeader,
  drive,
  reserve,
  depth,
};

struct GradedReading {
  Reading reading = Reading::junction;
  std::optional<std::size_t> junction;  ///< which one, of a joint
  Grade grade = Grade::fits;
  bool operator==(const GradedReading&) const = default;
};

/// All readings of an analysis that have a verdict, joints first from rod to fly. What repairs a rig
/// is measured by those that are wrong in it.
std::vector<GradedReading> gradedReadings(const Analysis& analysis);
/// Those graded wrong.
std::vector<GradedReading> faults(const Analysis& analysis);

/// What the one sentence about turnover speaks of.
enum class TurnoverConcern { drive, flyAgainstTip, reserve, flyDies, flyTooBulky, flyKicks };

/// The worst of drive, fly against tip and reserve, then of how the fly arrives: without life, held up
/// in thin nylon, or kicking. The earlier of two that are equally bad; nothing when all fit (or there
/// is no turnover).
std::optional<TurnoverConcern> turnoverConcern(const Analysis& analysis);
/// The grade of that concern; nothing without a turnover.
std::optional<Grade> turnoverGrade(const Analysis& analysis);

}  // namespace grainwise
