// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/choose/candidate.h"
#include "core/analysis/rules.h"

namespace grainwise {

/// What a tip is chosen by.
enum class Criterion {
  junction,       ///< the worst joint up to the nylon, by the means of 3 ft
  tipShare,
  anchor,
  workingLength,
  flyAgainstTip,
  drive,
  reserve,
  depth,
  stroke,
};

struct Judged {
  Criterion criterion = Criterion::junction;
  double figure = 0.0;         ///< ratio, share, rods, ...; of a stroke the change in feet
  double grade = 0.0;          ///< 0 to 1
  Grade zone = Grade::fits;    ///< watch: usable with care; wrong: a reason to refuse it
  bool operator==(const Judged&) const = default;
};

/// What a rig was judged by, small enough to keep hundreds of.
struct TipFigures {
  std::optional<Junction> joint;  ///< the worst
  Grip grip;
  FlyFit fly;
  std::optional<double> lengthRatio;
  std::optional<LengthVerdict> lengthVerdict;
  std::optional<double> drive;
  std::optional<DriveVerdict> driveVerdict;
  std::optional<double> reserve;
  std::optional<ReserveVerdict> reserveVerdict;
  std::optional<Stroke> stroke;
  std::optional<DepthFit> depth;
};

TipFigures figuresOf(const Analysis& analysis);

/// Every criterion that has a figure, with its grade (linear between the limits) and its zone, which
/// follows the bench's own verdicts. Refused (zone wrong): r3 over 2.0 or a front that collapses, tip
/// share over 33 % or without grip, too little between head and fly, a working length out of all use,
/// fly against tip under 2, drive under 0.7, reserve under 1, and nothing of the depth band in the
/// wanted water. A depth fits when its middle lies there. A stroke is never refused.
std::vector<Judged> judge(const TipFigures& figures, std::optional<Style> style,
                          const Rules& rules);

/// Geometric mean of the grades, each by its weight; 1 for none, and where none counts. A grade of 0
/// that counts makes it 0.
double geometricMean(const std::vector<Judged>& judged, const ChoiceWeights& weights = {});

}  // namespace grainwise
