// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/analysis/conditions.h"

namespace grainwise {

/// Every limit that choosing, packing and mending go by. The bench's own limits (joints, grip, rod,
/// stroke, turnover) decide what is fit, to be watched or refused; the others only shape the grades
/// in between, linear from knot to knot. Bench limits: common practice, no source, or ours, as their
/// own headers say; all others are ours.
struct ChoiceLimits {
  Conditions bench;

  double dropFull = 0.45;   ///< a drop to this share of the line behind still has the full grade
  double stepGrade = 0.8;   ///< grade where a joint starts to step up
  double shareBest = 0.21;  ///< of the head: the middle of what is right for a short head
  double shareEdge = 0.8;   ///< grade where right turns into light or heavy
  double anchorFull = 1.0;  ///< rods of line between head and fly with the full grade
  double anchorEdge = 0.8;  ///< grade where good turns short
  Feet bottomTouch{0.1};    ///< wanted this near the bottom: lying on it is what is wanted
  double strokeAdjust = 0.4;  ///< grade where a stroke starts to be a different cast
  double strokeLeast = 0.2;   ///< grade of the most different cast
};

/// Where a limit comes from.
enum class LimitOrigin { ours, commonPractice };

/// One limit in words, for the help and the settings.
struct LimitLine {
  std::string what;
  double value;
  std::string unit;  ///< "" for a bare ratio
  LimitOrigin origin;
};
std::vector<LimitLine> limitLines(const ChoiceLimits& limits);

}  // namespace grainwise
