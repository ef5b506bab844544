// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/cast_setup.h"

#include "core/mass/rod_fit.h"

namespace grainwise {
namespace {

constexpr double kLearnerShare = 0.8;

CastSetup setupOf(double lineSpeed, double loop, double launch, double rodTip) {
  CastSetup setup;
  setup.lineSpeed = FeetPerSecond(lineSpeed);
  setup.loop = Feet(loop);
  setup.launch = Degrees(launch);
  setup.rodTip = Feet(rodTip);
  setup.overhang = Feet(3.0);
  return setup;
}

}  // namespace

CastSetup usualCast(Style headStyle) {
  switch (headStyle) {
    case Style::fine:
      return setupOf(65, 3.5, 6, 13);
    case Style::longBelly:
      return setupOf(80, 4, 10, 13);
    case Style::singleHand:
      return setupOf(50, 2.5, 6, 11);
    default:
      return setupOf(55, 5, 6, 13);
  }
}

CastSetup castSetup(const Rig& rig, bool learner) {
  const bool oneHand = rig.rod && rig.rod->hands.value_or(2) == 1;
  CastSetup setup =
      usualCast(oneHand ? Style::singleHand : headStyle(rig).value_or(Style::shortHead));
  if (rig.cast) {
    setup.lineSpeed = rig.cast->lineSpeed.value_or(setup.lineSpeed);
    setup.loop = rig.cast->loop.value_or(setup.loop);
    setup.launch = rig.cast->launch.value_or(setup.launch);
    setup.rodTip = rig.cast->rodTip.value_or(setup.rodTip);
    setup.overhang = rig.cast->overhang.value_or(setup.overhang);
    setup.airAltitude = rig.cast->airAltitude;
  }
  if (learner) setup.lineSpeed = setup.lineSpeed * kLearnerShare;
  return setup;
}

}  // namespace grainwise
