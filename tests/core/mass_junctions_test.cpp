// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/mass/junctions.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx exactly(double value) { return Approx(value).margin(1e-9).epsilon(1e-12); }

std::vector<Junction> junctionsOf(const Rig& rig) { return junctions(rig, massProfile(rig)); }

/// The verdict on a joint of two level lines, 10 gr/ft on the rod side.
JunctionVerdict lineVerdict(double flySide) {
  return junctionsOf(rigOf({head({floating(20, 10)}), tip({floating(10, flySide)})}))[0].verdict;
}

}  // namespace

TEST_CASE("A joint is judged by the means of three feet, not by a taper's last inch") {
  const auto list = junctionsOf(rigOf({short525(), tip({sinking(10, 11, 7.5)})}));
  REQUIRE(list.size() == 1);
  const Junction& j = list[0];
  CHECK(j.at == Station(23));
  CHECK(j.ratio == exactly(11 / 14.125));
  // The last 3 ft of 4 ft from 24 to 14.125 gr/ft.
  const double slope = (24 - 14.125) / 4;
  CHECK(j.rodSideMean.value() == exactly(14.125 + 1.5 * slope));
  CHECK(j.ratio3ft == exactly(11 / (14.125 + 1.5 * slope)));
  CHECK(j.verdict == JunctionVerdict::smoothDrop);
}

TEST_CASE("A three-foot mean is shorter where the line is shorter") {
  const auto list = junctionsOf(rigOf({runningLine(50), head({floating(1, 10)}),
                                       tip({floating(2, 12)}), fly(10)}));
  REQUIRE(list.size() == 1);
  CHECK(list[0].rodSideMean.value() == exactly(10));
  CHECK(list[0].flySideMean.value() == exactly(12));
}

TEST_CASE("A three-foot mean runs on through short pieces of line") {
  const auto list = junctionsOf(
      rigOf({head({floating(20, 10)}), tip({floating(1, 12)}), tip({floating(10, 6)})}));
  REQUIRE(list.size() == 2);
  CHECK(list[0].flySideMean.value() == exactly((12 + 2 * 6) / 3.0));
  CHECK(list[1].rodSideMean.value() == exactly((12 + 2 * 10) / 3.0));
}

TEST_CASE("Loops at a joint do not count in its means") {
  const Rig plain = rigOf({short525(), tip({sinking(10, 11, 7.5)})});
  Rig looped = plain;
  looped.parts[0] = withLoops(looped.parts[0], 3, 3);
  looped.parts[1] = withLoops(looped.parts[1], 3, 3);
  CHECK(junctionsOf(looped)[0].ratio3ft == junctionsOf(plain)[0].ratio3ft);
}

TEST_CASE("There is no joint from running line to head, from nylon to nylon, or to the fly") {
  const auto list = junctionsOf(plainWinter());
  REQUIRE(list.size() == 2);
  CHECK(list[0].rodSide == 1);
  CHECK(list[0].flySide == 2);
  CHECK(list[1].rodSide == 2);
  CHECK(list[1].flySide == 3);
  CHECK(list[1].toNylon);
  CHECK_FALSE(list[0].toNylon);
}

TEST_CASE("The nylon's mean runs on from leader into tippet and its length is that of both") {
  const auto list =
      junctionsOf(rigOf({fine480(), leader({nylon(1, 0.020)}), tippet({nylon(9, 0.010)})}));
  REQUIRE(list.size() == 1);
  const double thick = 0.020 * 0.020;
  const double thin = 0.010 * 0.010;
  CHECK(list[0].nylonLength.value() == exactly(10));
  CHECK(list[0].flySideMean / list[0].flySideMass == exactly((thick + 2 * thin) / 3 / thick));
}

TEST_CASE("Nylon never counts on the line's side of a joint") {
  Part coated = leader({floating(4, 6), nylon(0.5, 0.016)}, Style::coated);
  const auto list = junctionsOf(rigOf({head({floating(20, 10)}), coated, tippet({nylon(8, 0.012)})}));
  // The coated leader ends in nylon: line meets nylon inside it, where no tag stands.
  REQUIRE(list.size() == 1);
  CHECK(list[0].flySideMean.value() == exactly(6));
}

TEST_CASE("A plain leader is nylon whatever it weighs") {
  const auto list =
      junctionsOf(rigOf({head({floating(20, 3)}, Style::singleHand), leader({nylon(9, 0.028, 0.008)})}));
  REQUIRE(list.size() == 1);
  CHECK(list[0].toNylon);
}

TEST_CASE("Each step of the ratio has its verdict and a limit takes the milder word") {
  CHECK(lineVerdict(20.1) == JunctionVerdict::hinges);
  CHECK(lineVerdict(20.0) == JunctionVerdict::hingesUnlessSlow);
  CHECK(lineVerdict(15.6) == JunctionVerdict::hingesUnlessSlow);
  CHECK(lineVerdict(15.5) == JunctionVerdict::stepsUp);
  CHECK(lineVerdict(11.1) == JunctionVerdict::stepsUp);
  CHECK(lineVerdict(11.0) == JunctionVerdict::level);
  CHECK(lineVerdict(9.0) == JunctionVerdict::level);
  CHECK(lineVerdict(8.9) == JunctionVerdict::smoothDrop);
  CHECK(lineVerdict(3.5) == JunctionVerdict::smoothDrop);
  CHECK(lineVerdict(3.4) == JunctionVerdict::collapses);
}

TEST_CASE("Up to six feet of nylon there is no rule for its butt, beyond there is") {
  const auto verdict = [](double length_ft, double diameter_in) {
    return junctionsOf(
               rigOf({head({floating(20, 10)}), leader({nylon(length_ft, diameter_in)})}))[0]
        .verdict;
  };
  CHECK(verdict(6.0, 0.010) == JunctionVerdict::nylonNoRule);
  CHECK(verdict(6.1, 0.010) == JunctionVerdict::nylonPiles);
  // 2383.442 x 1.14 d^2 = 1.0 gr/ft at 0.019184 in and 1.2 at 0.021015.
  CHECK(verdict(9.0, 0.0191) == JunctionVerdict::nylonPiles);
  CHECK(verdict(9.0, 0.0193) == JunctionVerdict::nylonThin);
  CHECK(verdict(9.0, 0.0209) == JunctionVerdict::nylonThin);
  CHECK(verdict(9.0, 0.0211) == JunctionVerdict::nylonFine);
}

TEST_CASE("A joint that hinges, collapses or piles is wrong and one that is forced is watched") {
  using V = JunctionVerdict;
  for (const V wrong : {V::hinges, V::collapses, V::nylonPiles}) CHECK(grade(wrong) == Grade::wrong);
  for (const V watch : {V::hingesUnlessSlow, V::stepsUp, V::nylonThin}) {
    CHECK(grade(watch) == Grade::watch);
  }
  for (const V fits : {V::level, V::smoothDrop, V::nylonNoRule, V::nylonFine}) {
    CHECK(grade(fits) == Grade::fits);
  }
}

TEST_CASE("The limits of a joint are the caller's") {
  const Rig rig = rigOf({head({floating(20, 10)}), tip({floating(10, 18)})});
  JunctionLimits strict;
  strict.hinge = 1.7;
  CHECK(junctions(rig, massProfile(rig), strict)[0].verdict == JunctionVerdict::hinges);
}

TEST_CASE("The worst joint is the one of the worst grade, then the one furthest from level") {
  const auto list = junctionsOf(rigOf({head({floating(20, 10)}), tip({floating(5, 12)}),
                                       tip({floating(5, 5)}), leader({nylon(4, 0.012)})}));
  REQUIRE(list.size() == 3);
  CHECK(worstJunction(list) == std::size_t{0});
  CHECK_FALSE(worstJunction({}).has_value());
}

TEST_CASE("A drop to nylon is not called the worst joint when no joint is worse") {
  const auto list = junctionsOf(plainWinter());
  CHECK(worstJunction(list) == std::size_t{0});
}
