// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/mass/grip.h"
#include "core/mass/stroke.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx exactly(double value) { return Approx(value).margin(1e-9).epsilon(1e-12); }

Grip gripOf(const Rig& rig) { return grip(rig, massProfile(rig)); }
FlyFit flyOf(const Rig& rig) { return flyFit(rig, massProfile(rig)); }

std::optional<TipShareVerdict> shareVerdict(Style style, double tip_gr) {
  return gripOf(rigOf({head({floating(20, 25)}, style), tip({sinking(10, tip_gr / 10, 7)})}))
      .tipShareVerdict;
}

std::optional<AnchorVerdict> anchorVerdict(double tip_ft, int hands = 2) {
  return gripOf(onRod(rigOf({short525(), tip({sinking(tip_ft, 8, 6)})}), 10, 8, hands))
      .anchorVerdict;
}

FlyVerdict flyVerdict(double fly_gr) {
  return *flyOf(rigOf({short525(), tip({sinking(10, 10, 7)}), fly(fly_gr)})).tipToFlyVerdict;
}

Stroke strokeOf(double length, double mass, double sinking_gr) {
  const StrokeBasis reference{Feet(33), Grains(600), Grains(100)};
  return stroke(reference,
                {Feet(33 + length), Grains(600 * (1 + mass)), Grains(100 + sinking_gr)});
}

}  // namespace

TEST_CASE("Tip share counts tips and coated leaders with their loops, not plain leaders") {
  const Part coated = leader({floating(9, 4)}, Style::coated);
  const Rig rig = rigOf({head({floating(20, 25)}), withLoops(tip({sinking(10, 8, 6)}), 2, 3),
                         coated, leader({nylon(4, 0.017)})});
  CHECK(gripOf(rig).tip.value() == exactly(85 + 36));
  CHECK(*gripOf(rig).tipShare == exactly(121 / 500.0));
}

TEST_CASE("Tip share on a short head has five steps") {
  using V = TipShareVerdict;
  CHECK(shareVerdict(Style::shortHead, 49) == V::noGrip);
  CHECK(shareVerdict(Style::shortHead, 50) == V::light);
  CHECK(shareVerdict(Style::shortHead, 74) == V::light);
  CHECK(shareVerdict(Style::shortHead, 75) == V::right);
  CHECK(shareVerdict(Style::shortHead, 135) == V::right);
  CHECK(shareVerdict(Style::shortHead, 136) == V::heavy);
  CHECK(shareVerdict(Style::shortHead, 165) == V::heavy);
  CHECK(shareVerdict(Style::shortHead, 166) == V::tooMuch);
}

TEST_CASE("Tip share on a fine taper or long belly has no lower limit") {
  using V = TipShareVerdict;
  for (const Style style : {Style::fine, Style::longBelly}) {
    CHECK(shareVerdict(style, 5) == V::right);
    CHECK(shareVerdict(style, 125) == V::right);
    CHECK(shareVerdict(style, 126) == V::heavy);
    CHECK(shareVerdict(style, 166) == V::tooMuch);
  }
  CHECK_FALSE(shareVerdict(Style::singleHand, 60));
}

TEST_CASE("Without a tip there is no share, without a head neither share nor anchor") {
  CHECK_FALSE(gripOf(rigOf({short525(), leader({nylon(9, 0.017)})})).tipShare);
  const Grip noHead = gripOf(onRod(rigOf({tip({sinking(10, 8, 6)})}), 13, 8));
  CHECK_FALSE(noHead.tipShare);
  CHECK_FALSE(noHead.anchorRatio);
  CHECK(noHead.sinking.value() == exactly(80));
}

TEST_CASE("The anchor is everything between head and fly against the rod") {
  const Grip grip = gripOf(plainWinter());
  CHECK(grip.anchor.value() == exactly(14));
  CHECK(*grip.anchorRatio == exactly(14.0 / 13.0));
  CHECK(anchorVerdict(7.9) == AnchorVerdict::tooLittle);
  CHECK(anchorVerdict(8.0) == AnchorVerdict::shortish);
  CHECK(anchorVerdict(8.5) == AnchorVerdict::good);
  CHECK(anchorVerdict(15) == AnchorVerdict::good);
  CHECK(anchorVerdict(15.1) == AnchorVerdict::longish);
  CHECK_FALSE(anchorVerdict(5, 1));
}

TEST_CASE("Lift counts the sinking line of heads, tips and coated leaders without loops") {
  const Part half = tip({floating(5, 11), sinking(5, 11, 7.5)});
  const Part body = head({floating(10, 20), sinking(10, 20, 2)});
  const Rig rig = rigOf({runningLine(100), body, withLoops(half, 3, 3),
                         leader({sinking(9, 3, 3)}, Style::coated), leader({nylon(4, 0.02)})});
  CHECK(gripOf(rig).sinking.value() == exactly(200 + 55 + 27));
}

TEST_CASE("The trade's table speaks of short heads only") {
  CHECK(gripOf(plainWinter()).table == GrainsPerFoot(11));
  CHECK_FALSE(gripOf(rigOf({fine480(), tip({sinking(10, 8, 6)})})).table);
}

TEST_CASE("The fly stands against the last ten feet of line that is not nylon") {
  const FlyFit fit = flyOf(plainWinter());
  CHECK(fit.tipWindow.value() == exactly(110));
  CHECK(*fit.tipToFly == exactly(110 / 33.0));
  CHECK(fit.feetOfTip->value() == exactly(3));
  CHECK_FALSE(fit.leaderToFly);
}

TEST_CASE("Ten feet of line reach across joints and are fewer where there are fewer") {
  const Rig crossing = rigOf({head({floating(20, 25)}), withLoops(tip({sinking(4, 8, 6)}), 9, 9),
                              leader({nylon(4, 0.017)}), fly(10)});
  CHECK(flyOf(crossing).tipWindow.value() == exactly(4 * 8 + 6 * 25));
  const FlyFit less = flyOf(rigOf({runningLine(50), tip({sinking(4, 8, 6)}), fly(10)}));
  CHECK(less.tipWindowLength.value() == exactly(4));
  CHECK(*less.tipToFly == exactly(3.2));
  CHECK(less.feetOfTip->value() == exactly(1.25));
}

TEST_CASE("Fly against tip has three steps") {
  CHECK(flyVerdict(40) == FlyVerdict::carries);
  CHECK(flyVerdict(41) == FlyVerdict::heavySlow);
  CHECK(flyVerdict(50) == FlyVerdict::heavySlow);
  CHECK(flyVerdict(51) == FlyVerdict::tooHeavy);
}

TEST_CASE("Fly against leader is asked only beyond six feet of nylon") {
  const auto against = [](double nylon_ft, double fly_gr) {
    // 2383.442 x 1.14 x 0.02^2 = 1.08685 gr/ft.
    return flyOf(rigOf({short525(), leader({nylon(nylon_ft, 0.02)}), fly(fly_gr)}));
  };
  CHECK_FALSE(against(6, 40).leaderToFly);
  CHECK(*against(10, 10).leaderToFly == Approx(1.08685).epsilon(1e-5));
  CHECK(against(10, 10).leaderToFlyVerdict == LeaderVerdict::fine);
  CHECK(against(10, 20).leaderToFlyVerdict == LeaderVerdict::watch);
  CHECK(against(10, 30).leaderToFlyVerdict == LeaderVerdict::tooHeavy);
}

TEST_CASE("What is a fault of grip or fly is graded wrong and what wants care is watched") {
  CHECK(grade(TipShareVerdict::noGrip) == Grade::wrong);
  CHECK(grade(TipShareVerdict::light) == Grade::watch);
  CHECK(grade(TipShareVerdict::right) == Grade::fits);
  CHECK(grade(TipShareVerdict::heavy) == Grade::watch);
  CHECK(grade(TipShareVerdict::tooMuch) == Grade::wrong);
  CHECK(grade(AnchorVerdict::tooLittle) == Grade::wrong);
  CHECK(grade(AnchorVerdict::shortish) == Grade::watch);
  CHECK(grade(AnchorVerdict::good) == Grade::fits);
  CHECK(grade(AnchorVerdict::longish) == Grade::watch);
  CHECK(grade(FlyVerdict::carries) == Grade::fits);
  CHECK(grade(FlyVerdict::heavySlow) == Grade::watch);
  CHECK(grade(FlyVerdict::tooHeavy) == Grade::wrong);
  CHECK(grade(LeaderVerdict::fine) == Grade::fits);
  CHECK(grade(LeaderVerdict::watch) == Grade::watch);
  CHECK(grade(LeaderVerdict::tooHeavy) == Grade::wrong);
}

TEST_CASE("A fly's wet mass counts and a fly of no known mass is not judged") {
  Rig rig = plainWinter();
  rig.parts.back().fly->dry = Grains(26);
  rig.parts.back().fly->wet = Grains(44);
  CHECK(*flyOf(rig).tipToFly == exactly(2.5));
  rig.parts.back() = fly(0);
  CHECK_FALSE(flyOf(rig).tipToFly);
  CHECK_FALSE(flyOf(rigOf({fly(12)})).tipToFly);
}

TEST_CASE("The same length and mass is the same stroke, a little off wants another sweep") {
  using V = StrokeVerdict;
  CHECK(strokeOf(0, 0, 0).verdict == V::same);
  CHECK(strokeOf(1, 0.07, 0).verdict == V::same);
  CHECK(strokeOf(1.1, 0, 0).verdict == V::adjustLonger);
  CHECK(strokeOf(-1.1, 0, 0).verdict == V::adjustShorter);
  CHECK(strokeOf(0, 0.09, 0).verdict == V::adjustLonger);
  CHECK(strokeOf(0, -0.09, 0).verdict == V::adjustShorter);
  CHECK(strokeOf(2, -0.1, 0).verdict == V::adjustLonger);
  CHECK(strokeOf(3.1, 0, 0).verdict == V::different);
  CHECK(strokeOf(0, -0.16, 0).verdict == V::different);
}

TEST_CASE("More than 50 gr of change in sinking mass slows or quickens the lift") {
  CHECK_FALSE(strokeOf(0, 0, 50).slowerLift);
  CHECK(strokeOf(0, 0, 51).slowerLift);
  CHECK_FALSE(strokeOf(0, 0, 51).quickerLift);
  CHECK(strokeOf(0, 0, -51).quickerLift);
}

TEST_CASE("A reference without mass gives a finite change and a different cast") {
  const Stroke s = stroke({}, {Feet(0), Grains(500), Grains(0)});
  CHECK(s.massChange == 1.0);
  CHECK(s.verdict == StrokeVerdict::different);
  CHECK(stroke({}, {}).verdict == StrokeVerdict::same);
}

TEST_CASE("What the stroke depends on is head and tips in length, with coated leaders in mass") {
  const Rig rig = rigOf({fine480(), tip({sinking(10, 8, 6)}),
                         leader({sinking(9, 3, 3)}, Style::coated), leader({nylon(4, 0.02)})});
  const StrokeBasis basis = strokeBasis(rig, massProfile(rig));
  CHECK(basis.workingLength.value() == exactly(46));
  CHECK(basis.mass.value() == exactly(480 + 80 + 27));
  CHECK(basis.sinking.value() == exactly(107));
}
