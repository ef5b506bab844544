// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>

#include "core/analysis/heavy_runs.h"
#include "core/analysis/readings.h"
#include "tests/support/random_rig.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;

namespace {

Approx exactly(double value) { return Approx(value).margin(1e-9).epsilon(1e-12); }

bool lacks(const Rig& rig, Missing what) {
  const auto missing = analyse(rig).missing;
  return std::find(missing.begin(), missing.end(), what) != missing.end();
}

}  // namespace

TEST_CASE("Totals run from the rear of the head to the fly, loops and wet fly included") {
  Rig rig = plainWinter();
  rig.parts[2] = withLoops(rig.parts[2], 2, 3);
  rig.parts.back().fly->wet = Grains(40);
  const Totals totals = analyse(rig).totals;
  // 2383.442 x (1.14 x 0.017^2 x 1.5 + 1.78 x 0.013^2 x 2.5).
  constexpr double kLeader = 2383.442 * (1.14 * 0.017 * 0.017 * 1.5 + 1.78 * 0.013 * 0.013 * 2.5);
  CHECK(totals.length.value() == exactly(37));
  CHECK(totals.mass.value() == Approx(525 + 115 + kLeader + 40).epsilon(1e-8));
  CHECK(totals.head.value() == exactly(525));
  CHECK(totals.headAndTip.value() == exactly(640));
}

TEST_CASE("A coated leader counts with head and tip, a plain one does not") {
  const Rig rig = rigOf({fine480(), leader({sinking(9, 4, 3)}, Style::coated),
                         leader({nylon(4, 0.013)})});
  CHECK(analyse(rig).totals.headAndTip.value() == Approx(480 + 36).epsilon(1e-4));
}

TEST_CASE("The first thirty feet are those of head nearest the fly") {
  const Rig rig = rigOf({head({floating(5, 20)}, Style::extension), head({floating(27, 10)}),
                         tip({sinking(10, 8, 6)})});
  CHECK(analyse(rig).totals.first30ft->value() == exactly(27 * 10 + 3 * 20));
  CHECK_FALSE(analyse(plainWinter()).totals.first30ft);
}

TEST_CASE("A head of three times ten feet in tenths has its thirty feet") {
  const Rig rig = rigOf({head({floating(9.9, 5), floating(10.2, 5), floating(9.9, 5)})});
  REQUIRE(analyse(rig).totals.first30ft);
  CHECK(analyse(rig).totals.first30ft->value() == exactly(150));
}

TEST_CASE("Totals are there without a head, counted from behind the running line") {
  const Totals totals = analyse(rigOf({runningLine(100), tip({sinking(10, 8, 6)}), fly(20)})).totals;
  CHECK(totals.length.value() == exactly(10));
  CHECK(totals.mass.value() == exactly(100));
  CHECK(totals.head.value() == 0.0);
  CHECK(totals.headAndTip.value() == exactly(80));
}

TEST_CASE("A whole rig misses nothing and each thing left away is named") {
  CHECK(analyse(plainWinter()).missing.empty());
  Rig rig = plainWinter();
  rig.rod.reset();
  CHECK(lacks(rig, Missing::rod));
  rig = plainWinter();
  rig.rod->length.reset();
  CHECK(lacks(rig, Missing::rodLength));
  rig = plainWinter();
  rig.rod->lineNumber.reset();
  CHECK(lacks(rig, Missing::window));
  rig = plainWinter();
  rig.parts.pop_back();
  CHECK(lacks(rig, Missing::fly));
  rig.parts.push_back(fly(0));
  CHECK(lacks(rig, Missing::flyMass));
  CHECK_FALSE(lacks(rig, Missing::fly));
  rig.parts[1].style.reset();
  CHECK(lacks(rig, Missing::headStyle));
  rig.parts.erase(rig.parts.begin() + 2);
  CHECK(lacks(rig, Missing::tip));
  rig.parts.erase(rig.parts.begin() + 1);
  CHECK(lacks(rig, Missing::head));
}

TEST_CASE("A rig without any part, or a head without sections, is analysed all the same") {
  const Analysis nothing = analyse(Rig{});
  CHECK(nothing.totals.mass == Grains(0));
  CHECK(nothing.rows.empty());
  CHECK(nothing.junctions.empty());
  const Analysis bare = analyse(onRod(rigOf({head({}), tip({sinking(10, 8, 6)}), fly(9)}), 13, 8));
  CHECK_FALSE(bare.grip.tipShare);
  CHECK(bare.totals.headAndTip.value() == exactly(80));
}

TEST_CASE("A rig in water has a depth and its range, or a plain reason why not") {
  Rig rig = plainWinter();
  const Analysis analysis = analyse(rig);
  REQUIRE(analysis.hang);
  CHECK(analysis.hang->state == DepthState::hangs);
  REQUIRE(analysis.depthBand);
  CHECK(analysis.depthBand->low < analysis.hang->fly);
  CHECK(analysis.depthBand->high > analysis.hang->fly);
  CHECK_FALSE(analysis.depthBand->fromRuns);
  rig.water->surfaceSpeed = FeetPerSecond(0);
  CHECK(lacks(rig, Missing::stillWater));
  CHECK_FALSE(analyse(rig).depthBand);
  rig = plainWinter();
  rig.parts.back().fly->density = GramsPerCubicCentimetre(0.7);
  CHECK(lacks(rig, Missing::flyFloats));
  rig.parts.back().fly->density = GramsPerCubicCentimetre(1.5);
  rig.water->depth.reset();
  CHECK(lacks(rig, Missing::water));
  CHECK_FALSE(analyse(rig).hang);
}

TEST_CASE("The heavy runs swing the rig in its own water and narrow the range") {
  double last = 0.0;
  const HeavyRuns runs = swingRuns(plainWinter(), {}, {}, [&](double share) { last = share; });
  CHECK(last == 1.0);
  REQUIRE(runs.swing);
  CHECK(runs.swing->end == SwingEnd::hangs);
  REQUIRE(runs.band);
  REQUIRE(runs.band->band);
  CHECK(runs.band->band->fromRuns);
  Rig dry = plainWinter();
  dry.water.reset();
  CHECK_FALSE(swingRuns(dry).swing);
}

TEST_CASE("The single-hand row is that of the line number on a one-handed rod") {
  Rig rig = onRod(rigOf({head({floating(30, 4.8)}, Style::singleHand), fly(1)}), 9, 5, 1);
  REQUIRE(analyse(rig).singleHandRow);
  CHECK(analyse(rig).singleHandRow->target == Grains(140));
  rig.rod->hands = 2;
  CHECK_FALSE(analyse(rig).singleHandRow);
  rig.rod->hands = 1;
  rig.rod->lineNumber = 5.5;
  CHECK_FALSE(analyse(rig).singleHandRow);
}

TEST_CASE("A stroke is compared only when there is something to compare it with") {
  const Rig rig = plainWinter();
  CHECK_FALSE(analyse(rig).stroke);
  Conditions conditions;
  conditions.strokeReference = strokeBasis(rig, massProfile(rig));
  CHECK(analyse(rig, conditions).stroke->verdict == StrokeVerdict::same);
}

TEST_CASE("The limits of the conditions reach every reading") {
  Conditions strict;
  strict.rules.junctions.drop = 0.5;
  strict.rules.rod.inside = Grains(-10);
  strict.rules.grip.flyCarries = 9;
  strict.rules.grip.flyHeavy = 8;
  const Analysis analysis = analyse(plainWinter(), strict);
  CHECK(analysis.junctions[0].verdict == JunctionVerdict::level);
  CHECK(analysis.rod.headVerdict == HeadVerdict::touchLight);
  CHECK(analysis.fly.tipToFlyVerdict == FlyVerdict::tooHeavy);
}

TEST_CASE("Graded readings are those with a verdict and faults are the wrong ones among them") {
  const auto readings = gradedReadings(analyse(plainWinter()));
  REQUIRE(readings.size() == 9);
  CHECK(readings[0] == GradedReading{Reading::junction, 0, Grade::fits});
  CHECK(readings[2] == GradedReading{Reading::headOnRod, std::nullopt, Grade::fits});
  CHECK(faults(analyse(plainWinter())).empty());
  Rig heavy = plainWinter();
  heavy.parts.back() = fly(60);
  heavy.rod->lineNumber = 5;
  CHECK(faults(analyse(heavy)) ==
        std::vector<GradedReading>{{Reading::headOnRod, std::nullopt, Grade::wrong},
                                   {Reading::flyAgainstTip, std::nullopt, Grade::wrong}});
  CHECK(gradedReadings(analyse(rigOf({fly(10)}))).empty());
}

TEST_CASE("The turnover sentence speaks of the worst, then of how the fly arrives") {
  Analysis analysis = analyse(plainWinter());
  REQUIRE(analysis.turnover);
  const auto is = [&](TurnoverConcern what, Grade grade) {
    return turnoverConcern(analysis) == what && turnoverGrade(analysis) == grade;
  };
  CHECK_FALSE(turnoverConcern(analysis));
  CHECK(turnoverGrade(analysis) == Grade::fits);
  analysis.turnover->reserveVerdict = ReserveVerdict::marginal;
  CHECK(is(TurnoverConcern::reserve, Grade::watch));
  analysis.fly.tipToFlyVerdict = FlyVerdict::heavySlow;
  CHECK(is(TurnoverConcern::flyAgainstTip, Grade::watch));
  analysis.turnover->driveVerdict = DriveVerdict::marginal;
  CHECK(is(TurnoverConcern::drive, Grade::watch));
  analysis.turnover->paceVerdict = PaceVerdict::kicks;
  CHECK(is(TurnoverConcern::flyKicks, Grade::wrong));
  analysis.turnover->nylonVerdict = NylonVerdict::flyTooBulky;
  CHECK(is(TurnoverConcern::flyTooBulky, Grade::wrong));
  analysis.turnover->paceVerdict = PaceVerdict::dies;
  CHECK(is(TurnoverConcern::flyDies, Grade::wrong));
  analysis.turnover->reserveVerdict = ReserveVerdict::heap;
  CHECK(is(TurnoverConcern::reserve, Grade::wrong));
  analysis.turnover.reset();
  CHECK_FALSE(turnoverConcern(analysis));
  CHECK_FALSE(turnoverGrade(analysis));
}

TEST_CASE("Turnover is there with head and fly, and its absence is among what is missing") {
  CHECK(analyse(plainWinter()).turnover);
  Conditions learner;
  learner.learner = true;
  CHECK(analyse(plainWinter(), learner).turnover->reserve < analyse(plainWinter()).turnover->reserve);
  Rig rig = plainWinter();
  rig.cast = Cast{};
  rig.cast->lineSpeed = FeetPerSecond(5);
  CHECK(analyse(rig).noTurnover == NoTurnover::tooSlow);
  CHECK(lacks(rig, Missing::lineSpeed));
  CHECK(lacks(rigOf({head({floating(2, 20)}), fly(10)}), Missing::line));
  CHECK(lacks(rigOf({head({floating(300, 20), floating(9, 20)}), fly(10)}), Missing::castable));
}

TEST_CASE("A part with a density that no line has is warned of, every odd section of it") {
  Section thin = floating(3, 20);
  thin.floats.reset();
  thin.diameter = Along<Inches>(Inches(0.01));
  const Rig rig = rigOf({short525(), tip({thin, sinking(4, 8, 6), thin})});
  const auto warnings = analyse(rig).warnings;
  REQUIRE(warnings.size() == 2);
  CHECK(warnings[0].part == 1);
  CHECK(warnings[0].what.text().rfind("section 1: ", 0) == 0);
  CHECK(warnings[1].what.text().rfind("section 3: ", 0) == 0);
  CHECK(analyse(plainWinter()).warnings.empty());
}
