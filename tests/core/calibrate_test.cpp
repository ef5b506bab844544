// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/analysis/analysis.h"
#include "core/calibrate/calibrate.h"
#include "core/io/pools_file.h"
#include "core/io/rig_file.h"
#include "core/material/sink_rate.h"
#include "core/model/check.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx toRounding(double value) { return Approx(value).margin(1e-9); }

TubTiming falls(double inches, std::initializer_list<double> seconds) {
  TubTiming timing;
  timing.fall = Inches(inches);
  for (const double s : seconds) timing.times.emplace_back(s);
  return timing;
}

}  // namespace

TEST_CASE("Tub: 24 in in 3.2 s are 7.5 in/s, within what a hand can time, by hand") {
  const auto rate = tubRate(falls(24, {3.2}), GrainsPerFoot(11));
  REQUIRE(rate);
  CHECK(rate->inTub.value() == toRounding(7.5));
  CHECK(rate->rated.value() == Approx(7.5).margin(1e-6));
  // (0.5/24)^2 + (0.2/3.2)^2 = 0.000434 + 0.003906, root 0.06588
  CHECK(rate->plusMinus.value() == Approx(7.5 * 0.06588).margin(1e-3));
  CHECK_FALSE(rate->shortFall);
}

TEST_CASE("Tub: four falls halve the hand's error, and falls that differ widen it") {
  const auto one = tubRate(falls(1000.0 / 5, {26}), GrainsPerFoot(11));
  const auto four = tubRate(falls(1000.0 / 5, {26, 26, 26, 26}), GrainsPerFoot(11));
  const double fallShare = 0.5 / 200;
  const auto timeShare = [&](const TubRate& rate) {
    const double whole = rate.plusMinus / rate.rated;
    return std::sqrt(whole * whole - fallShare * fallShare);
  };
  CHECK(timeShare(*four) == Approx(0.5 * timeShare(*one)).epsilon(1e-6));
  const auto spread = tubRate(falls(1000.0 / 5, {24, 26, 28}), GrainsPerFoot(11));
  // standard deviation 2 s: 1.2816 x 2 / sqrt 3 over 26 s
  CHECK(timeShare(*spread) == Approx(1.2816 * 2 / std::sqrt(3.0) / 26).epsilon(1e-4));
}

TEST_CASE("Tub: cold water slows a line, and its rating is faster than what was timed") {
  TubTiming cold = falls(24, {3.4});
  cold.water = {Celsius(4), GramsPerKilogram(0)};
  const auto rate = tubRate(cold, GrainsPerFoot(11));
  CHECK(rate->rated > rate->inTub);
  const auto diameter = diameterFromSinkRate(GrainsPerFoot(11), rate->rated, kRatingWater);
  CHECK(sinkRate(GrainsPerFoot(11), *diameter, cold.water).value() ==
        Approx(rate->inTub.value()).epsilon(1e-6));
}

TEST_CASE("Tub: a short fall is told as one, and what cannot be is refused") {
  CHECK(tubRate(falls(10, {1.4}), GrainsPerFoot(11))->shortFall);
  CHECK_FALSE(tubRate(falls(24, {}), GrainsPerFoot(11)));
  CHECK_FALSE(tubRate(falls(24, {0}), GrainsPerFoot(11)));
  CHECK_FALSE(tubRate(falls(24, {-2}), GrainsPerFoot(11)));
  CHECK_FALSE(tubRate(falls(-24, {2}), GrainsPerFoot(11)));
  CHECK_FALSE(tubRate(falls(301, {20}), GrainsPerFoot(11)));
  CHECK_FALSE(tubRate(falls(60, {1}), GrainsPerFoot(11)));
}

TEST_CASE("Tub: the maker's rate is kept through one timing and the next, and comes back") {
  const Part rated = tip({floating(2.5, 11), sinking(7.5, 11, 7.5)});
  const auto first = tubRate(falls(24, {3.4}), GrainsPerFoot(11));
  const auto once = withTimedRate(rated, 1, *first, "2026-03-02");
  REQUIRE(once);
  CHECK(once->sections[1].sinkRate->rodEnd.value() == Approx(7.06));
  CHECK(once->sections[1].timed->rated == rated.sections[1].sinkRate);
  CHECK(once->sections[1].timed->on == "2026-03-02");
  CHECK(check(*once).empty());
  const auto twice = withTimedRate(*once, 1, *tubRate(falls(24, {3.3}), GrainsPerFoot(11)));
  CHECK(twice->sections[1].timed->rated == rated.sections[1].sinkRate);
  CHECK(withRatedAgain(*twice, 1) == rated);
  CHECK(withRatedAgain(rated, 1) == rated);
  CHECK_FALSE(withTimedRate(rated, 0, *first));
  CHECK_FALSE(withTimedRate(rated, 9, *first));
}

TEST_CASE("Tub: the timed rate is what the depth is reckoned with, in a file and after") {
  Rig rig = plainWinter();
  const double before = analyse(rig).depthBand->middle.value();
  rig.parts[2] = *withTimedRate(rig.parts[2], 0, *tubRate(falls(24, {4}), GrainsPerFoot(11)));
  const double after = analyse(rig).depthBand->middle.value();
  CHECK(after < before);
  CHECK(readRig(writeRig(rig)).value() == rig);
}

TEST_CASE("River: the speed that is found puts the fly where it was measured") {
  const Rig rig = plainWinter();
  for (const double depth : {1.0, 2.0, 3.5}) {
    for (const DepthFound found : {DepthFound::hangingDown, DepthFound::swinging}) {
      RiverMeasure measure;
      measure.flyDepth = Feet(depth);
      measure.found = found;
      const auto fit = riverFit(rig, measure);
      REQUIRE(fit);
      const Rig fitted = withFittedCurrent(rig, *fit, measure, "2026-03-02");
      const Analysis analysis = analyse(fitted);
      const double reads = found == DepthFound::hangingDown
                               ? analysis.hang->fly.value()
                               : analysis.depthBand->middle.value();
      CHECK(reads == Approx(depth).margin(0.02));  // the speed is kept to a hundredth
      CHECK(fit->stated == FeetPerSecond(3));
      CHECK(fit->plusMinus > FeetPerSecond(0));
    }
  }
}

TEST_CASE("River: what was stated is kept, and comes back") {
  const Rig rig = plainWinter();
  RiverMeasure measure;
  measure.flyDepth = Feet(2);
  const Rig fitted = withFittedCurrent(rig, *riverFit(rig, measure), measure, "2026-03-02");
  CHECK(fitted.water->measured->stated == FeetPerSecond(3));
  CHECK(fitted.water->surfaceSpeed != rig.water->surfaceSpeed);
  CHECK(check(fitted).empty());
  CHECK(readRig(writeRig(fitted)).value() == fitted);
  CHECK(withStatedCurrent(fitted) == rig);
  const Rig again = withFittedCurrent(fitted, *riverFit(fitted, measure), measure);
  CHECK(again.water->measured->stated == FeetPerSecond(3));
  CHECK(withStatedCurrent(rig) == rig);
}

TEST_CASE("River: a pool keeps its measured current in its file") {
  Pool pool;
  pool.name = "Mill Run";
  pool.surfaceSpeed = FeetPerSecond(3);
  pool.depth = Feet(5);
  RiverMeasure measure;
  measure.flyDepth = Feet(2);
  const auto fit = riverFit(plainWinter(), measure);
  Pools pools;
  pools.pools = {withFittedCurrent(pool, *fit, measure, "2026-03-02")};
  CHECK(readPools(writePools(pools)).value() == pools);
  CHECK(withStatedCurrent(pools.pools[0]) == pool);
}

TEST_CASE("River: a measured current narrows the live range, and a typed one widens it again") {
  Rig rig = plainWinter();
  RiverMeasure measure;
  measure.flyDepth = Feet(2.5);
  measure.plusMinus = Feet(0.1);
  const Rig fitted = withFittedCurrent(rig, *riverFit(rig, measure), measure);
  Rig typed = fitted;
  typed.water->measured.reset();
  const auto width = [](const Rig& r) {
    const auto band = *analyse(r).depthBand;
    return (band.high - band.low).value();
  };
  CHECK(width(fitted) < 0.95 * width(typed));
  Rig over = fitted;
  over.water->surfaceSpeed = *over.water->surfaceSpeed + FeetPerSecond(1e-6);
  CHECK(width(over) == Approx(width(typed)).epsilon(1e-3));
}

TEST_CASE("River: what no current explains is refused in plain words") {
  const Rig rig = plainWinter();
  RiverMeasure measure;
  measure.flyDepth = Feet(5);
  CHECK(riverFit(rig, measure).error().what.text().find("5 ft of water") != std::string::npos);
  measure.flyDepth = Feet(0);
  CHECK_FALSE(riverFit(rig, measure));
  measure.flyDepth = Feet(0.01);
  CHECK_FALSE(riverFit(rig, measure));
  measure.flyDepth = Feet(2);
  Rig dry = rig;
  dry.water.reset();
  CHECK_FALSE(riverFit(dry, measure));
  Rig noFly = rig;
  noFly.parts.pop_back();
  CHECK_FALSE(riverFit(noFly, measure));
}
