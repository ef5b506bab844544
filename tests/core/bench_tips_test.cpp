// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/bench/identify.h"
#include "core/bench/trim.h"
#include "core/mass/profile.h"
#include "core/material/sink_rate.h"
#include "core/model/check.h"
#include "tests/support/random_rig.h"
#include "tests/support/rig_parts.h"
#include "tests/support/shipped_files.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx toRounding(double value) { return Approx(value).margin(1e-6); }

Grains lineMass(const Part& part) {
  Rig rig;
  rig.parts = {part};
  return massProfile(rig).places.front().line;
}

}  // namespace

TEST_CASE("Unlabelled tip: mass and length give gr/ft, the trade's class and the shelf's tip") {
  TipMeasures m;
  m.mass = Grains(112);
  m.length = Feet(10.1);
  const auto found = findTip(m, test::genericShelf());
  REQUIRE(found);
  CHECK(found->perFoot->value() == toRounding(112 / 10.1));
  CHECK(found->tradeClass == GrainsPerFoot(11));
  CHECK(found->rateAssumed);
  CHECK_FALSE(found->density);
  REQUIRE_FALSE(found->nearest.empty());
  const Part& near = test::genericShelf().parts[found->nearest.front().part];
  CHECK(near.length() == Feet(10));
  CHECK(lineMass(near).value() == Approx(110).margin(0.5));
  CHECK(found->nearest.front().perFootOff->value() == Approx(11 - 112 / 10.1));
}

TEST_CASE("Unlabelled tip: a pinched diameter gives density and rate") {
  TipMeasures m;
  m.mass = Grains(110);
  m.length = Feet(10);
  m.diameter = Inches(0.05);
  const auto found = findTip(m, test::genericShelf());
  // 11 gr/ft over pi/4 0.05^2 in2: 2383.442 SG d^2 = 11
  CHECK(found->density->value() == Approx(11.0 / (2.383442 * 2.5)).epsilon(1e-4));
  CHECK(found->rate->value() ==
        toRounding(sinkRate(GrainsPerFoot(11), Inches(0.05), kRatingWater).value()));
  CHECK_FALSE(found->rateAssumed);
}

TEST_CASE("Unlabelled tip: diameter and timed sink find the mass per foot again") {
  const WaterState cold{Celsius(8), GramsPerKilogram(0)};
  TipMeasures m;
  m.diameter = Inches(0.048);
  m.sink = sinkRate(GrainsPerFoot(13), Inches(0.048), cold);
  m.water = cold;
  const auto found = findTip(m, test::genericShelf());
  REQUIRE(found);
  CHECK(found->perFoot->value() == toRounding(13));
  CHECK(found->rate->value() > m.sink->value());  // thinner water at 15 C
}

TEST_CASE("Unlabelled tip: mass, length and timed sink find the diameter") {
  TipMeasures m;
  m.mass = Grains(110);
  m.length = Feet(10);
  m.sink = InchesPerSecond(7.5);
  const auto found = findTip(m, test::genericShelf());
  REQUIRE(found);
  CHECK(sinkRate(GrainsPerFoot(11), *found->diameter, kRatingWater).value() == toRounding(7.5));
}

TEST_CASE("Unlabelled tip: a length and a sink name no gr/ft, but the nearest tips all the same") {
  TipMeasures m;
  m.length = Feet(10);
  m.sink = InchesPerSecond(7.5);
  const auto found = findTip(m, test::genericShelf());
  REQUIRE(found);
  CHECK_FALSE(found->perFoot);
  CHECK(found->nearest.front().distance < 0.2);
}

TEST_CASE("Unlabelled tip: too little, or what cannot be, is refused") {
  TipMeasures m;
  CHECK_FALSE(findTip(m, test::genericShelf()));
  m.mass = Grains(110);
  CHECK(findTip(m, test::genericShelf()).error().fix.text().find("two of") != std::string::npos);
  m.length = Feet(-2);
  CHECK_FALSE(findTip(m, test::genericShelf()));
  m.length = Feet(0.5);
  m.mass = Grains(5000);
  CHECK(findTip(m, test::genericShelf()).error().what.text().find("grains per foot 10000") != std::string::npos);
  m.mass = Grains(5);
  m.sink = InchesPerSecond(-1);
  CHECK_FALSE(findTip(m, test::genericShelf()));
}

TEST_CASE("Trim: 3 ft off the front of the short 525 by hand") {
  Part head = short525();
  head.label = Grains(525);
  const auto cut = trimmed(head, PartEnd::fly, Feet(3));
  REQUIRE(cut);
  // the front taper falls from 24 to 14.125 over 4 ft: at 1 ft it is 21.53125
  CHECK(cut->newEnd.value() == toRounding(21.53125));
  CHECK((cut->before - cut->after).value() == toRounding(3 * (21.53125 + 14.125) / 2));
  CHECK(cut->part.length().value() == toRounding(20));
  CHECK(lineMass(cut->part).value() == toRounding(cut->after.value()));
  CHECK(head.label == Grains(525));
}

TEST_CASE("Trim: a whole section and a half off the rear") {
  const auto cut = trimmed(short525(), PartEnd::rod, Feet(10.5));
  REQUIRE(cut);
  CHECK(cut->part.sections.size() == 2);
  CHECK(cut->newEnd.value() == toRounding(24.25));
  CHECK(check(cut->part).empty());
}

TEST_CASE("Trim: a loop goes with its end, the other one stays") {
  const Part head = withLoops(short525(), 3, 3);
  const auto front = trimmed(head, PartEnd::fly, Feet(1));
  CHECK(front->loopLost);
  CHECK_FALSE(front->part.loops->flyEnd);
  CHECK(front->part.loops->rodEnd == Grains(3));
  CHECK_FALSE(trimmed(short525(), PartEnd::fly, Feet(1))->loopLost);
}

TEST_CASE("Trim: what stays and what goes are the whole, whatever the part and its label") {
  test::Random random(3);
  for (int round = 0; round < 400; ++round) {
    const Part part = test::randomPart(random, PartKind::head);
    const Feet off = part.length() * (0.05 + 0.9 * static_cast<double>(round) / 400.0);
    if (off > part.length() - Feet(0.2)) continue;
    const auto front = trimmed(part, PartEnd::fly, off);
    const auto rear = trimmed(part, PartEnd::rod, part.length() - off);
    REQUIRE(front);
    if (!rear) continue;
    const double whole = front->before.value();
    REQUIRE(front->after.value() + rear->after.value() == Approx(whole).epsilon(1e-9));
    REQUIRE(lineMass(front->part).value() == Approx(front->after.value()).epsilon(1e-9));
  }
}

TEST_CASE("Trim: whole sections whose feet do not add up to the last digit") {
  // 0.6 + 0.2 is more than 0.8 by rounding, 0.7 + 0.1 less: nothing is cut of what stays, or next to nothing.
  for (int a = 1; a <= 30; ++a) {
    for (int b = 1; b <= 30; ++b) {
      const Part part = tip({sinking(10, 11, 7.5), sinking(a / 10.0, 11, 7.5), sinking(b / 10.0, 11, 7.5)});
      const Feet off((a + b) / 10.0);
      for (const PartEnd end : {PartEnd::fly, PartEnd::rod}) {
        INFO(a << " " << b);
        const auto cut = trimmed(part, end, off);
        REQUIRE(cut);
        CHECK((cut->part.length() + off).value() == Approx(part.length().value()).margin(1e-9));
        CHECK(check(cut->part).empty());
      }
    }
  }
  const auto hair = trimmed(tip({sinking(10, 11, 7.5)}), PartEnd::fly, Feet(1e-16));
  REQUIRE(hair);
  CHECK(hair->part.length() == Feet(10));
}

TEST_CASE("Trim: nothing, less than nothing and all of it are refused") {
  for (const double feet : {0.0, -1.0, 23.0, 22.95, 50.0}) {
    CHECK_FALSE(trimmed(short525(), PartEnd::fly, Feet(feet)));
  }
}
