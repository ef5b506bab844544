// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/water/hang.h"
#include "core/water/hang_march.h"
#include "tests/support/water_cases.h"

using namespace grainwise;
using namespace grainwise::hanging;

namespace {

constexpr double kClosedForm = 1e-4;  // what RK4 at these steps must hold
constexpr double kReference = 0.01;   // hang-down against independent solutions
constexpr double kPrinted_ft = 0.006;  // those are printed to a hundredth of a foot
constexpr double kPrintedFeet_ft = 0.06;

/// A level line in a uniform current of 1 m/s: `weight` in N/m, across drag `r` in N/m.
struct Uniform {
  River river;
  std::vector<Element> line;
  HangForces forces;

  Uniform(double length_m, int steps, double weight_n_per_m, double r_n_per_m) {
    river = riverOf(FeetPerSecond(1 / 0.3048), Feet(1000), {});
    river.profile.exponent = 0.0;
    const double d_m = 0.001;
    forces.acrossCd = r_n_per_m / (0.5 * river.fluid.rho_kg_per_m3 * d_m);
    forces.along_n_per_m = 0.0;
    for (int i = 0; i < steps; ++i) {
      Element e;
      e.length_m = length_m / steps;
      for (double& w : e.wet_n_per_m) w = weight_n_per_m;
      for (double& d : e.diameter_m) d = d_m;
      line.push_back(e);
    }
  }
  [[nodiscard]] March from(double tension_n, double angle_rad) const {
    State start{-tension_n * std::cos(angle_rad), tension_n * std::sin(angle_rad), -200.0, 0.0};
    return Marcher(line, river, forces, false).march(start);
  }
};

double angleOf(const State& s) { return std::atan2(s.tz_n, -s.tx_n); }
double tensionOf(const State& s) { return std::hypot(s.tx_n, s.tz_n); }

}  // namespace

TEST_CASE("the hanging line agrees with independent solutions") {
  for (const auto& c : test::waterCases()) {
    CAPTURE(c.name);
    const HangDown h = hangDown(c.line, c.river());
    CHECK(h.state == DepthState::hangs);
    CHECK_FALSE(h.heldByRod);
    CHECK(h.fly.value() == Approx(c.hangDown_ft).epsilon(kReference).margin(kPrinted_ft));
    REQUIRE(h.junction);
    CHECK(h.junction->value() == Approx(c.junction_ft).epsilon(kReference).margin(kPrinted_ft));
    REQUIRE(h.surfacesFromFly);
    CHECK(h.surfacesFromFly->value() == Approx(c.surfaces_ft).margin(kPrintedFeet_ft));
  }
}

TEST_CASE("a heavy tip in a slow shallow pool lies on the bottom and says so") {
  const auto c = test::bottomCase();
  const HangDown h = hangDown(c.line, c.river());
  CHECK(isOnBottom(h.state));
  CHECK(h.fly.value() == Approx(3.0 - 0.03 / 0.3048));
  for (const HangPoint& p : h.shape) CHECK(p.depth.value() <= h.fly.value() + 1e-9);
}

TEST_CASE("a free long line settles at the critical angle") {
  for (double w : {0.02, 0.1, 0.5, 1.0, 3.0}) {
    CAPTURE(w);
    const Uniform free(600.0, 6000, w, 1.0);  // it comes in slowly
    const double expected = std::acos((std::sqrt(w * w + 4) - w) / 2);
    CHECK(angleOf(free.from(0.5, 0.7).last) == Approx(expected).epsilon(kClosedForm));
  }
}

TEST_CASE("a weightless line keeps its tension and bends by the closed form") {
  const Uniform weightless(3.0, 30, 0.0, 0.8);
  const double t0 = 1.2, a0 = 1.3;
  const March m = weightless.from(t0, a0);
  CHECK(tensionOf(m.last) == Approx(t0).epsilon(kClosedForm));
  const double a = angleOf(m.last);
  CHECK(1 / std::tan(a) - 1 / std::tan(a0) == Approx(0.8 * 3.0 / t0).epsilon(kClosedForm));
  const double rise_m = t0 / 0.8 * std::log(std::tan(a0 / 2) / std::tan(a / 2));
  CHECK(m.last.z_m + 200.0 == Approx(rise_m).epsilon(kClosedForm));
}

TEST_CASE("a heavy line without skin drag pulls by the closed form") {
  const double w = 0.4, r = 1.1, t0 = 0.7, a0 = 1.4;
  const Uniform heavy(2.5, 30, w, r);
  const March m = heavy.from(t0, a0);
  const double q = std::sqrt(w * w + 4 * r * r);
  const double c1 = (-w + q) / (2 * r), c2 = (-w - q) / (2 * r);
  const double c0 = std::cos(a0), c = std::cos(angleOf(m.last));
  const double ratio = std::pow((c - c2) * (c0 - c1) / ((c - c1) * (c0 - c2)), w / q);
  CHECK(tensionOf(m.last) / t0 == Approx(ratio).epsilon(kClosedForm));
}

TEST_CASE("the march converges with the fourth order of its step") {
  const double w = 0.4, r = 1.1;
  const auto height = [&](int steps) {
    return Uniform(2.5, steps, w, r).from(0.7, 1.4).last.z_m;
  };
  const double exact = height(640);
  const double coarse = std::abs(height(10) - exact), fine = std::abs(height(20) - exact);
  CHECK(std::log2(coarse / fine) == Approx(4.0).margin(0.4));
}

TEST_CASE("a section split in two hangs as the whole did") {
  for (const auto& c : test::waterCases()) {
    CAPTURE(c.name);
    WaterLine split = c.line;
    WaterPiece& whole = split.pieces[1];
    WaterPiece rodSide = whole;
    const double share = 0.37;
    rodSide.length_m = whole.length_m * (1 - share);
    rodSide.massFlyEnd_kg_per_m = whole.mass_kg_per_m(share);
    rodSide.diameterFlyEnd_m = whole.diameter_m(share);
    whole.massRodEnd_kg_per_m = rodSide.massFlyEnd_kg_per_m;
    whole.diameterRodEnd_m = rodSide.diameterFlyEnd_m;
    whole.length_m *= share;
    split.pieces.insert(split.pieces.begin() + 2, rodSide);
    const double before = hangDown(c.line, c.river()).fly.value();
    CHECK(hangDown(split, c.river()).fly.value() == Approx(before).epsilon(1e-4));
  }
}

TEST_CASE("faster water, a lighter tip or a bulkier fly never fishes deeper") {
  for (const auto& c : test::waterCases()) {
    CAPTURE(c.name);
    const double depth = hangDown(c.line, c.river()).fly.value();
    River faster = c.river();
    faster.surface_m_per_s *= 1.05;
    CHECK(hangDown(c.line, faster).fly.value() < depth);
    WaterLine bulky = c.line;
    bulky.fly.dragArea_m2 *= 1.3;
    CHECK(hangDown(bulky, c.river()).fly.value() < depth);
    WaterLine light = c.line;
    light.pieces[1].massFlyEnd_kg_per_m *= 0.97;
    light.pieces[1].massRodEnd_kg_per_m *= 0.97;
    CHECK(hangDown(light, c.river()).fly.value() < depth);
  }
}

TEST_CASE("the shape starts at the fly, rises all the way and ends level at the surface") {
  for (const auto& c : test::waterCases()) {
    CAPTURE(c.name);
    const HangDown h = hangDown(c.line, c.river());
    REQUIRE(h.shape.size() > 10);
    CHECK(h.shape.front().fromFly == Feet(0));
    CHECK(h.shape.front().depth.value() == Approx(h.fly.value()));
    CHECK(std::abs(h.shape.back().depth.value()) < 1e-4);
    for (std::size_t i = 1; i < h.shape.size(); ++i) {
      const HangPoint &a = h.shape[i - 1], &b = h.shape[i];
      CHECK(b.depth < a.depth);
      const double chord = std::hypot(b.depth / Feet(1) - a.depth / Feet(1),
                                      b.upstream / Feet(1) - a.upstream / Feet(1));
      CHECK(chord <= (b.fromFly - a.fromFly).value() + 1e-6);
    }
    const auto& p = h.shape[h.shape.size() - 2];
    CHECK(p.depth.value() < 0.1);
  }
}

TEST_CASE("where no depth exists a plain reason stands in its place") {
  const auto c = test::waterCases().front();
  River still = c.river();
  still.surface_m_per_s = 0.0;
  CHECK(hangDown(c.line, still).state == DepthState::stillWater);
  CHECK_FALSE(hasDepth(DepthState::stillWater));
  WaterLine dry = c.line;
  dry.fly.volume_m3 = dry.fly.mass_kg / 800.0;
  CHECK(hangDown(dry, c.river()).state == DepthState::flyFloats);
  WaterLine floating = test::lineOf(WaterFly{0, 0, 1e-4, 3}, {test::headOne()});
  CHECK(hangDown(floating, c.river()).state == DepthState::everythingFloats);
}

TEST_CASE("a line that sinks all the way to the rod is said to be held by it") {
  const auto c = test::waterCases()[3];
  WaterLine line{c.line.fly, {test::nylon(4, 0.0138), test::sinking(30, 14, 8.5),
                              test::nylon(41, 0.024)}};
  const HangDown h = hangDown(line, c.river());
  CHECK(h.heldByRod);
  CHECK(hasDepth(h.state));
  CHECK(h.fly.value() > 2.2);
  CHECK_FALSE(h.surfacesFromFly);
  CHECK_FALSE(h.junction);
}

TEST_CASE("a floating leader does not hold up a sinking tip that draws it under") {
  // fly, a little floating line, a heavy tip: the tip decides, not the leader
  const auto c = test::waterCases()[3];
  const WaterLine line = test::lineOf(
      test::lightFly(), {test::floatingTip(1, 1.0), test::sinking(10, 14, 8.5), test::headOne()});
  const double depth = hangDown(line, c.river()).fly.value();
  const double withNylon = hangDown(c.line, c.river()).fly.value();
  CHECK(depth > 0.7 * withNylon);
  CHECK(depth < 1.1 * withNylon);
}
