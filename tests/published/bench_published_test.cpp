// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/bench/fly.h"
#include "core/bench/leader.h"
#include "core/material/section_properties.h"

using namespace grainwise;

namespace {

GrainsPerFoot perFoot(Inches diameter, Material material) {
  Section section;
  section.length = Feet(1);
  section.diameter = Along<Inches>(diameter);
  section.material = material;
  return lineMass(section, PartKind::tippet).rodEnd;
}

}  // namespace

// X sizes d = (11 - X)/1000 in: common practice, no source. Nylon 1.14 g/cm3, handbook value.
TEST_CASE("X sizes: nylon 0X weighs 0.3288 gr/ft and 5X 0.0978") {
  constexpr double kLastDigit = 0.5e-4;
  CHECK(diameterOfX(0).value() == Approx(0.011).margin(1e-12));
  CHECK(diameterOfX(5).value() == Approx(0.006).margin(1e-12));
  CHECK(xOf(Inches(0.007)) == Approx(4).margin(1e-9));
  CHECK(perFoot(diameterOfX(0), Material::nylon).value() == Approx(0.3288).margin(kLastDigit));
  CHECK(perFoot(diameterOfX(5), Material::nylon).value() == Approx(0.0978).margin(kLastDigit));
}

// Closed form pi D^3/6 with handbook densities.
TEST_CASE("Beads: a 4.6 mm tungsten sphere weighs 15.180 gr, a 3.2 mm brass one 2.251") {
  constexpr double kLastDigit = 0.5e-3;
  const auto bead = [](double d_mm, Metal metal) {
    return massOf(Bead{Inches(d_mm / 25.4), Inches(0), metal, 1}).value();
  };
  CHECK(bead(4.6, Metal::tungsten) == Approx(15.180).margin(kLastDigit));
  CHECK(bead(3.2, Metal::brass) == Approx(2.251).margin(kLastDigit));
}

// A published nylon breaking list, lb at in: 20/.017, 12/.013, 8/.010, 4/.007; 540-730 MPa.
TEST_CASE("Strength: the published nylon breaking list lies within the stated range") {
  for (const auto& [pounds, diameter] :
       {std::pair{20.0, 0.017}, {12.0, 0.013}, {8.0, 0.010}, {4.0, 0.007}}) {
    const PoundRange strength = strandStrength(Material::nylon, Inches(diameter));
    CAPTURE(pounds, strength.low_lb, strength.high_lb);
    CHECK(pounds >= strength.low_lb);
    CHECK(pounds <= strength.high_lb);
    // and the middle of the range is within a fifth of the list
    CHECK(strength.middle_lb == Approx(pounds).epsilon(0.2));
  }
}

// 600 MPa over pi/4 (0.013 in)^2: 600e6 x 8.5633e-8 m2 / 4.4482216 N = 11.551 lb (closed form).
TEST_CASE("Strength: the middle figure of nylon is 600 MPa over the strand's own area") {
  CHECK(strandStrength(Material::nylon, Inches(0.013)).middle_lb == Approx(11.551).margin(0.001));
  CHECK(nylonDiameterFor(11.551).value() == Approx(0.013).margin(1e-6));
}

// Common practice, no source: 60-75 % of the line tip; two-hand butts 0.022-0.026 in.
TEST_CASE("Leaders: butts as the trade ties them") {
  LeaderWish wish;
  CHECK(buttRange(wish)->thin == Inches(0.022));
  CHECK(buttRange(wish)->thick == Inches(0.026));
  wish.line = LeaderLine::singleHand;
  wish.lineTip = Inches(0.032);
  CHECK(buttRange(wish)->thin.value() == Approx(0.0192));
  CHECK(buttRange(wish)->thick.value() == Approx(0.024));
}
