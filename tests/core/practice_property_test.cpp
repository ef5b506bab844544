// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/analysis/analysis.h"
#include "core/material/section_properties.h"
#include "tests/support/air_cases.h"
#include "tests/support/random_rig.h"
#include "tests/support/rig_parts.h"

/// What people who fish take for granted, held over random rigs; and the waters in which no line fishes
/// as usual. Common practice, no source, but for the densities of salt water (EOS-80).
using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;

namespace {

constexpr int kTries = 1000;

bool lacks(const Analysis& analysis, Missing what) {
  return std::find(analysis.missing.begin(), analysis.missing.end(), what) != analysis.missing.end();
}

/// Sinks in fresh water and rises in the sea: between 1000 and 1027 kg/m3.
Rig barelySinking() {
  Section line = sinking(15, 8, 1);
  line.sinkRate.reset();
  line.density = GramsPerCubicCentimetre(1.013);
  Rig rig = plainWinter();
  rig.parts[2] = tip({line});
  rig.parts.back() = fly(4);
  rig.parts.back().fly->density = GramsPerCubicCentimetre(1.5);
  return rig;
}

}  // namespace

TEST_CASE("A step up hinges the more the higher it is, whatever the rig, and a fly never mends it") {
  Random random(61);
  for (int i = 0; i < kTries; ++i) {
    const double front = random.between(3, 25);
    const auto verdict = [&](double times, double flyGr) {
      const Rig rig = rigOf({head({floating(random.between(6, 40), front)}),
                             tip({sinking(random.between(4, 15), front * times, 6)}), fly(flyGr)});
      return analyse(rig).junctions.at(0).verdict;
    };
    CAPTURE(i, front);
    CHECK(verdict(random.between(2.01, 4), random.between(1, 80)) == JunctionVerdict::hinges);
    CHECK(verdict(random.between(1.56, 1.99), random.between(1, 80)) == JunctionVerdict::hingesUnlessSlow);
    CHECK(verdict(random.between(1.11, 1.54), random.between(1, 80)) == JunctionVerdict::stepsUp);
    CHECK(verdict(random.between(0.36, 0.89), random.between(1, 80)) == JunctionVerdict::smoothDrop);
  }
}

TEST_CASE("A light fly on a heavy tip kicks, a weighted fly on a coated leader is not carried, whatever they are") {
  Random random(62);
  for (int i = 0; i < kTries; ++i) {
    CAPTURE(i);
    const auto light = turnoverOf(castRig({airShort525(), airTip(random.between(19, 24)), airTippet33(),
                                           airFly(random.between(1, 5), random.between(0.3, 1))}));
    CHECK(light->paceVerdict == PaceVerdict::kicks);
    const auto weighted = turnoverOf(castRig({airShort525(), airCoated(), airTippet28(),
                                              airFly(random.between(25, 80), random.between(3, 10))}));
    CHECK(weighted->driveVerdict == DriveVerdict::doesNotCarry);
    CHECK(weighted->drivePart == 1);
  }
}

TEST_CASE("No speed, no way and no mass give a reason, a fly of 500 gr and a line of 60 gr/ft figures") {
  Rig rig = castRig({airShort525(), airTip(11), airTippet33(), airFly(20, 2)});
  rig.cast->lineSpeed = FeetPerSecond(0);
  CHECK(lacks(analyse(rig), Missing::lineSpeed));
  rig.cast->lineSpeed = FeetPerSecond(200);
  CHECK(std::isfinite(analyse(rig).turnover->pace));
  rig.parts[0].sections = {floating(30, 60)};
  rig.parts.back() = airFly(500, 100);
  rig.cast->lineSpeed = FeetPerSecond(60);
  CHECK(std::isfinite(analyse(rig).turnover->reserve));
  rig.parts.back() = airFly(0, 2);
  CHECK(lacks(analyse(rig), Missing::flyMass));
  rig.parts.pop_back();
  CHECK(lacks(analyse(rig), Missing::fly));
  CHECK(lacks(analyse(rigOf({tip({sinking(10, 8, 6)}), fly(20)})), Missing::head));
}

TEST_CASE("Salt lifts what barely sinks: the line rises, the rig fishes shallower, a light fly floats and says so") {
  Rig river = barelySinking();
  Rig sea = river;
  sea.water->salinity = GramsPerKilogram(35);
  const SectionProperties line = sectionProperties(river.parts[2].sections[0], PartKind::tip, 1.0);
  CHECK(sinkRates(line, waterState(river)).rodEnd > InchesPerSecond(0));
  CHECK(sinkRates(line, waterState(sea)).rodEnd < InchesPerSecond(0));
  const Analysis inRiver = analyse(river), inSea = analyse(sea);
  REQUIRE(hasDepth(inRiver.hang->state));
  REQUIRE(hasDepth(inSea.hang->state));
  CHECK(inSea.hang->fly < inRiver.hang->fly);
  for (Rig* each : {&river, &sea}) each->parts.back().fly->density = GramsPerCubicCentimetre(1.013);
  CHECK(hasDepth(analyse(river).hang->state));
  CHECK(lacks(analyse(sea), Missing::flyFloats));
  CHECK_FALSE(analyse(sea).depthBand);
}

TEST_CASE("In any water a rig may stand in, each of many has a range of depth inside it or a reason for none") {
  RandomRigOptions options;
  options.complete = true;
  Random random(63);
  const auto extreme = [&](Water& water, int which) {
    if (which == 0) water.surfaceSpeed = FeetPerSecond(0);
    if (which == 1) water.surfaceSpeed = FeetPerSecond(15);
    if (which == 2) water.depth = Feet(0.2);  // shallower than any tip is long
    if (which == 3) water.salinity = GramsPerKilogram(45);
    if (which == 4) water.bed = Bed::boulders;
  };
  int reasons = 0, depths = 0;
  for (int i = 0; i < kTries; ++i) {
    Rig rig = randomRig(random, options);
    rig.water = randomWater(random);
    extreme(*rig.water, i % 5);
    if (i % 7 == 0) rig.parts.back().fly->density = GramsPerCubicCentimetre(0.4);
    if (i % 11 == 0) {
      for (Part& part : rig.parts) {
        if (part.kind != PartKind::fly) part.sections = {floating(8, 6)};
      }
      rig.parts.back() = fly(0.001);
    }
    const Analysis analysis = analyse(rig);
    CAPTURE(i);
    const bool reason = lacks(analysis, Missing::flyMass) || lacks(analysis, Missing::stillWater) ||
                        lacks(analysis, Missing::nothingSinks) || lacks(analysis, Missing::flyFloats);
    REQUIRE(analysis.depthBand.has_value() != reason);
    reasons += reason ? 1 : 0;
    if (!analysis.depthBand) continue;
    ++depths;
    REQUIRE(analysis.depthBand->low >= Feet(0));
    REQUIRE(analysis.depthBand->low <= analysis.depthBand->middle);
    REQUIRE(analysis.depthBand->middle <= analysis.depthBand->high);
    REQUIRE(analysis.depthBand->high <= *rig.water->depth);
  }
  CHECK(reasons > kTries / 5);  // still water alone
  CHECK(depths > kTries / 2);
}
