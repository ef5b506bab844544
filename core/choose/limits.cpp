// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/limits.h"

namespace grainwise {

std::vector<LimitLine> limitLines(const ChoiceLimits& limits) {
  constexpr auto kOurs = LimitOrigin::ours;
  constexpr auto kTrade = LimitOrigin::commonPractice;
  const Conditions& b = limits.bench;
  return {
      {"a joint may step up to this ratio (means of 3 ft)", b.junctions.hinge, "", kTrade},
      {"from this ratio on a joint steps up and has to be forced", b.junctions.stepUp, "", kTrade},
      {"a joint may drop to this ratio", b.junctions.collapse, "", kTrade},
      {"a drop to this ratio has the full grade", limits.dropFull, "", kOurs},
      {"tip share at most, of the head", b.grip.heavy, "", kTrade},
      {"tip share that is right, to", b.grip.right, "", kTrade},
      {"tip share that is right on a fine taper or long belly, to", b.grip.longHeadMost, "", kTrade},
      {"tip share that is right, from", b.grip.light, "", kTrade},
      {"tip share at least", b.grip.noGrip, "", kTrade},
      {"tip share with the full grade", limits.shareBest, "", kOurs},
      {"line between head and fly at least, in rods", b.grip.anchorLeast, "", kTrade},
      {"line between head and fly with the full grade, in rods", limits.anchorFull, "", kOurs},
      {"line between head and fly that is good, to, in rods", b.grip.anchorMost, "", kTrade},
      {"tip against fly at least", b.grip.flyHeavy, "", kTrade},
      {"tip against fly that carries it", b.grip.flyCarries, "", kTrade},
      {"drive at least", b.turnover.limits.doesNotCarry, "", kOurs},
      {"drive that carries", b.turnover.limits.carries, "", kOurs},
      {"reserve at least", b.turnover.limits.probablyNot, "", kOurs},
      {"reserve with speed to spare", b.turnover.limits.toSpare, "", kOurs},
      {"wanted this near the bottom, lying on it is what is wanted", limits.bottomTouch.value(), "ft",
       kOurs},
      {"same stroke within, of working length", b.stroke.sameLength.value(), "ft", kTrade},
      {"same stroke within, of mass", b.stroke.sameMass, "", kTrade},
      {"a different cast from, of working length", b.stroke.adjustLength.value(), "ft", kTrade},
      {"a different cast from, of mass", b.stroke.adjustMass, "", kTrade},
  };
}

}  // namespace grainwise
