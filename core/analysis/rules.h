// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/air/turnover.h"
#include "core/bench/weigh_in.h"
#include "core/mass/grip.h"
#include "core/mass/junctions.h"
#include "core/mass/rod_fit.h"
#include "core/mass/stroke.h"

namespace grainwise {

/// How much each criterion of the tip chooser counts in the mean of the grades; 0: not at all (it
/// still refuses). All ours.
struct ChoiceWeights {
  double junction = 1.0, tipShare = 1.0, anchor = 1.0, workingLength = 1.0, flyAgainstTip = 1.0;
  double drive = 1.0, reserve = 1.0, depth = 1.0, stroke = 1.0;
  bool operator==(const ChoiceWeights&) const = default;
};

/// What shapes the grades of the tip chooser between the limits of the verdicts, linear from knot
/// to knot (core/choose/judge.h). All ours.
struct ChoiceGrades {
  double dropFull = 0.45;     ///< a drop to this share of the line behind still has the full grade
  double stepGrade = 0.8;     ///< grade where a joint starts to step up
  double shareBest = 0.21;    ///< of the head: the middle of what is right for a short head
  double shareEdge = 0.8;     ///< grade where right turns into light or heavy
  double anchorFull = 1.0;    ///< rods of line between head and fly with the full grade
  double anchorEdge = 0.8;    ///< grade where good turns short
  Feet bottomTouch{0.1};      ///< wanted this near the bottom: lying on it is what is wanted
  double strokeAdjust = 0.4;  ///< grade where a stroke starts to be a different cast
  double strokeLeast = 0.2;   ///< grade of the most different cast
  bool operator==(const ChoiceGrades&) const = default;
};

/// Every limit and weight that a verdict, the tip chooser, the wallet and the fixes go by, as one
/// value: core/analysis/rule_table.h names each, with whose it is and what it may be.
struct Rules {
  JunctionLimits junctions;
  RodLimits rod;
  GripLimits grip;
  StrokeLimits stroke;
  TurnoverLimits turnover;
  double weighShare = WeighRules{}.share;  ///< a weighed part is as meant within this
  ChoiceGrades choice;
  ChoiceWeights weights;
  bool operator==(const Rules&) const = default;
};

}  // namespace grainwise
