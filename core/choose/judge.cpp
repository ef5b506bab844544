// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/judge.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace grainwise {
namespace {

struct Knot {
  double at;
  double grade;
};

/// Linear from knot to knot, level beyond the ends. Knots stand in rising order; two at one place are
/// a step.
double graded(double figure, std::initializer_list<Knot> knots) {
  const Knot* before = knots.begin();
  if (figure <= before->at) return before->grade;
  for (const Knot& knot : knots) {
    if (figure <= knot.at) {
      const double width = knot.at - before->at;
      if (width <= 0.0) return knot.grade;
      return before->grade + (knot.grade - before->grade) * (figure - before->at) / width;
    }
    before = &knot;
  }
  return before->grade;
}

double jointGrade(const Junction& j, const Rules& rules) {
  const JunctionLimits& bench = rules.junctions;
  if (j.toNylon) {
    if (!(j.nylonLength > bench.nylonFree)) return 1.0;
    return graded(j.ratio3ft, {{bench.nylonThin, 0.0}, {bench.nylonFine, 1.0}});
  }
  return graded(j.ratio3ft, {{bench.collapse, 0.0},
                             {rules.choice.dropFull, 1.0},
                             {1.0, 1.0},
                             {bench.stepUp, rules.choice.stepGrade},
                             {bench.hinge, 0.0}});
}

double shareGrade(double share, bool shortHead, const Rules& rules) {
  const GripLimits& bench = rules.grip;
  if (!shortHead) return graded(share, {{bench.longHeadMost, 1.0}, {bench.heavy, 0.0}});
  return graded(share, {{bench.noGrip, 0.0},
                        {bench.light, rules.choice.shareEdge},
                        {rules.choice.shareBest, 1.0},
                        {bench.right, rules.choice.shareEdge},
                        {bench.heavy, 0.0}});
}

double anchorGrade(double rods, const Rules& rules) {
  const GripLimits& bench = rules.grip;
  return graded(rods, {{bench.anchorLeast, 0.0},
                       {bench.anchorGood, rules.choice.anchorEdge},
                       {rules.choice.anchorFull, 1.0},
                       {bench.anchorMost, 1.0},
                       {bench.anchorMost + 1.0, 0.5}});
}

double lengthGrade(LengthVerdict verdict) {
  const Grade zone = grade(verdict);
  return zone == Grade::fits ? 1.0 : zone == Grade::watch ? 0.5 : 0.0;
}

double strokeGrade(const Stroke& stroke, const Rules& rules) {
  const StrokeLimits& bench = rules.stroke;
  const auto part = [&](double change, double same, double adjust) {
    return graded(std::abs(change), {{same, 1.0},
                                     {adjust, rules.choice.strokeAdjust},
                                     {2.0 * adjust, rules.choice.strokeLeast}});
  };
  return std::min(part(stroke.lengthChange.value(), bench.sameLength.value(),
                       bench.adjustLength.value()),
                  part(stroke.massChange, bench.sameMass, bench.adjustMass));
}

Grade strokeZone(const Stroke& stroke) {
  return stroke.verdict == StrokeVerdict::same ? Grade::fits : Grade::watch;
}

Grade depthZone(const DepthFit& depth) {
  if (*depth.share <= 0.0) return Grade::wrong;
  return depth.way == DepthWay::inside ? Grade::fits : Grade::watch;
}

/// The joint with the worst zone, and of these the one furthest from level.
std::optional<Junction> worstJoint(const std::vector<Junction>& joints) {
  const auto worst = worstJunction(joints);
  return worst ? std::optional(joints[*worst]) : std::nullopt;
}

double weightOf(Criterion criterion, const ChoiceWeights& weights) {
  switch (criterion) {
    case Criterion::junction:
      return weights.junction;
    case Criterion::tipShare:
      return weights.tipShare;
    case Criterion::anchor:
      return weights.anchor;
    case Criterion::workingLength:
      return weights.workingLength;
    case Criterion::flyAgainstTip:
      return weights.flyAgainstTip;
    case Criterion::drive:
      return weights.drive;
    case Criterion::reserve:
      return weights.reserve;
    case Criterion::depth:
      return weights.depth;
    case Criterion::stroke:
      break;
  }
  return weights.stroke;
}

}  // namespace

TipFigures figuresOf(const Analysis& analysis) {
  TipFigures f;
  f.joint = worstJoint(analysis.junctions);
  f.grip = analysis.grip;
  f.fly = analysis.fly;
  f.lengthRatio = analysis.rod.lengthRatio;
  f.lengthVerdict = analysis.rod.lengthVerdict;
  f.stroke = analysis.stroke;
  if (analysis.turnover) {
    f.drive = analysis.turnover->drive;
    f.driveVerdict = analysis.turnover->driveVerdict;
    f.reserve = analysis.turnover->reserve;
    f.reserveVerdict = analysis.turnover->reserveVerdict;
  }
  return f;
}

std::vector<Judged> judge(const TipFigures& f, std::optional<Style> style,
                          const Rules& rules) {
  std::vector<Judged> list;
  list.reserve(9);
  const auto add = [&](Criterion criterion, double figure, double grade, Grade zone) {
    list.push_back({criterion, figure, zone == Grade::wrong ? 0.0 : grade, zone});
  };
  const TurnoverLimits& air = rules.turnover;
  if (f.joint) {
    add(Criterion::junction, f.joint->ratio3ft, jointGrade(*f.joint, rules),
        grade(f.joint->verdict));
  }
  if (f.grip.tipShareVerdict) {
    add(Criterion::tipShare, *f.grip.tipShare,
        shareGrade(*f.grip.tipShare, style == Style::shortHead, rules),
        grade(*f.grip.tipShareVerdict));
  }
  if (f.grip.anchorVerdict) {
    add(Criterion::anchor, *f.grip.anchorRatio, anchorGrade(*f.grip.anchorRatio, rules),
        grade(*f.grip.anchorVerdict));
  }
  if (f.lengthVerdict) {
    add(Criterion::workingLength, *f.lengthRatio, lengthGrade(*f.lengthVerdict),
        grade(*f.lengthVerdict));
  }
  if (f.fly.tipToFlyVerdict) {
    const GripLimits& bench = rules.grip;
    add(Criterion::flyAgainstTip, *f.fly.tipToFly,
        graded(*f.fly.tipToFly, {{bench.flyHeavy, 0.0}, {bench.flyCarries, 1.0}}),
        grade(*f.fly.tipToFlyVerdict));
  }
  if (f.driveVerdict) {
    add(Criterion::drive, *f.drive,
        graded(*f.drive, {{air.doesNotCarry, 0.0}, {air.carries, 1.0}}), grade(*f.driveVerdict));
  }
  if (f.reserveVerdict) {
    add(Criterion::reserve, *f.reserve,
        graded(*f.reserve, {{air.probablyNot, 0.0}, {air.toSpare, 1.0}}),
        grade(*f.reserveVerdict));
  }
  if (f.depth && f.depth->share) {
    add(Criterion::depth, *f.depth->share, *f.depth->share, depthZone(*f.depth));
  }
  if (f.stroke) {
    add(Criterion::stroke, f.stroke->lengthChange.value(), strokeGrade(*f.stroke, rules),
        strokeZone(*f.stroke));
  }
  return list;
}

double geometricMean(const std::vector<Judged>& judged, const ChoiceWeights& weights) {
  double logs = 0.0, sum = 0.0;
  for (const Judged& j : judged) {
    const double weight = weightOf(j.criterion, weights);
    if (weight <= 0.0) continue;
    if (j.grade <= 0.0) return 0.0;
    logs += weight * std::log(j.grade);
    sum += weight;
  }
  return sum > 0.0 ? std::exp(logs / sum) : 1.0;
}

}  // namespace grainwise
