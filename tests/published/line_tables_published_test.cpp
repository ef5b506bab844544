// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <catch2/catch.hpp>

#include "core/mass/junctions.h"
#include "core/mass/rod_fit.h"
#include "core/mass/standards.h"
#include "core/mass/stroke.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;
namespace st = grainwise::standards;

// Source: AFFTA (formerly AFTMA), Official fly line specifications, single-hand: grains of the first
// 30 ft, target with the manufacturing tolerance.
TEST_CASE("The single-hand table is the association's, line number by line number") {
  struct Row {
    int number;
    double target, tolerance;
  };
  constexpr std::array<Row, 15> kTable{{{1, 60, 6},    {2, 80, 6},    {3, 100, 6},   {4, 120, 6},
                                        {5, 140, 6},   {6, 160, 8},   {7, 185, 8},   {8, 210, 8},
                                        {9, 240, 10},  {10, 280, 10}, {11, 330, 12}, {12, 380, 12},
                                        {13, 450, 15}, {14, 500, 15}, {15, 550, 15}}};
  const auto& rows = st::singleHand();
  REQUIRE(rows.size() == kTable.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    INFO("line number " << kTable[i].number);
    CHECK(rows[i].lineNumber == kTable[i].number);
    CHECK(rows[i].target == Grains(kTable[i].target));
    CHECK(rows[i].low == Grains(kTable[i].target - kTable[i].tolerance));
    CHECK(rows[i].high == Grains(kTable[i].target + kTable[i].tolerance));
  }
}

// Source: AFFTA, Official fly line specifications, two-handed: grains at the weight point.
TEST_CASE("The two-handed table is the association's, class by class") {
  constexpr std::array<double, 7> kH{250, 300, 360, 430, 510, 600, 700};
  constexpr std::array<double, 7> kS{420, 470, 530, 600, 680, 770, 870};
  constexpr std::array<double, 7> kM{460, 510, 570, 640, 720, 810, 910};
  constexpr std::array<double, 7> kL{600, 650, 710, 780, 860, 950, 1050};
  for (int number = 6; number <= 12; ++number) {
    INFO("line number " << number);
    const auto i = static_cast<std::size_t>(number - 6);
    CHECK(st::twoHand(st::TwoHandClass::h40ft, number) == Grains(kH[i]));
    CHECK(st::twoHand(st::TwoHandClass::s55ft, number) == Grains(kS[i]));
    CHECK(st::twoHand(st::TwoHandClass::m65ft, number) == Grains(kM[i]));
    CHECK(st::twoHand(st::TwoHandClass::l80ft, number) == Grains(kL[i]));
  }
  CHECK_FALSE(st::twoHand(st::TwoHandClass::h40ft, 5));
  CHECK_FALSE(st::twoHand(st::TwoHandClass::l80ft, 13));
  CHECK(st::weightPoint(st::TwoHandClass::h40ft) == Feet(40));
  CHECK(st::weightPoint(st::TwoHandClass::s55ft) == Feet(55));
  CHECK(st::weightPoint(st::TwoHandClass::m65ft) == Feet(65));
  CHECK(st::weightPoint(st::TwoHandClass::l80ft) == Feet(80));
}

// Computed: a short head's mean mass per foot.
TEST_CASE("525 grains over 23 feet are 22.826 grains per foot") {
  const MassProfile profile = massProfile(rigOf({short525()}));
  const GrainsPerFoot mean = profile.places[0].mass() / (profile.end - profile.start);
  CHECK(mean.value() == Approx(22.826).margin(5e-4).epsilon(0));
}

// Common practice, no source.
TEST_CASE("Short heads take tips of 8, 11, 14 and 17 gr/ft by their grains") {
  CHECK(st::tipForShortHead(Grains(474.9)) == GrainsPerFoot(8));
  CHECK(st::tipForShortHead(Grains(475)) == GrainsPerFoot(11));
  CHECK(st::tipForShortHead(Grains(574.9)) == GrainsPerFoot(11));
  CHECK(st::tipForShortHead(Grains(575)) == GrainsPerFoot(14));
  CHECK(st::tipForShortHead(Grains(649.9)) == GrainsPerFoot(14));
  CHECK(st::tipForShortHead(Grains(650)) == GrainsPerFoot(17));
}

// Common practice, no source.
TEST_CASE("A head of about 425 grains suits a two-handed rod of line number 6") {
  const auto window = defaultWindow(Style::shortHead, 6);
  REQUIRE(window);
  CHECK(window->low <= Grains(425));
  CHECK(window->high >= Grains(425));
}

// Common practice, no source.
TEST_CASE("Eight grains per foot behind a fine taper's end of six step up and have to be forced") {
  const Rig rig =
      rigOf({head({floating(36, 20, 6)}, Style::fine), tip({sinking(10, 8, 6.5)})});
  const auto list = junctions(rig, massProfile(rig));
  REQUIRE(list.size() == 1);
  CHECK(list[0].verdict == JunctionVerdict::stepsUp);
}

// Common practice, no source.
TEST_CASE("Tips of one length keep the stroke, fifteen feet against two and a half do not") {
  const auto basisWith = [](Part tipPart) {
    const Rig rig = rigOf({short525(), std::move(tipPart)});
    return strokeBasis(rig, massProfile(rig));
  };
  const StrokeBasis quarter = basisWith(tip({floating(7.5, 11), sinking(2.5, 11, 7.5)}));
  const StrokeBasis whole = basisWith(tip({sinking(10, 11, 7.5)}));
  CHECK(stroke(quarter, whole).verdict == StrokeVerdict::same);
  CHECK(stroke(quarter, whole).slowerLift);
  const StrokeBasis longTip = basisWith(tip({sinking(15, 11, 7.5)}));
  const StrokeBasis stub = basisWith(tip({sinking(2.5, 11, 7.5)}));
  CHECK(stroke(longTip, stub).verdict == StrokeVerdict::different);
}

// Source: a pulse on a stretched string at mu2 = 4 mu1 under one tension (mechanics textbooks):
// reflected -1/3, transmitted 2/3. For the details only.
TEST_CASE("A small pulse at a joint of ratio four echoes minus a third and passes two thirds") {
  const Rig rig = rigOf({head({floating(20, 5)}), tip({sinking(10, 20, 9)})});
  const auto list = junctions(rig, massProfile(rig));
  REQUIRE(list.size() == 1);
  CHECK(list[0].echo == Approx(-1.0 / 3.0).epsilon(1e-14));
  CHECK(list[0].transmission == Approx(2.0 / 3.0).epsilon(1e-14));
}
