// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "core/air/cast.h"
#include "core/air/rolling_loop.h"
#include "core/units/si.h"

/// Published values and closed forms of lines in the air, the source named beside each.
using namespace grainwise;

namespace {

constexpr double kClosedForm = 1e-4;

/// A level line of 1 g/m and a fly of 0.5 g, with 10 m in front of a loop of 1 m.
AirLine levelLine() {
  AirLine line;
  line.fly_kg = 0.5e-3;
  AirPiece piece;
  piece.to_m = 10.0 + 1.0 + std::numbers::pi / 4.0;
  piece.massFlyEnd_kg_per_m = piece.massRodEnd_kg_per_m = 1e-3;
  piece.diameterFlyEnd_m = piece.diameterRodEnd_m = 1e-3;
  line.pieces.push_back(piece);
  return line;
}

LoopShape level() {
  LoopShape shape;
  shape.gravity_m_per_s2 = 0.0;
  return shape;
}

}  // namespace

// Closed form: M u^2 is kept, so u = 20 sqrt(10.5/0.5) and t = 2 (10.5^1.5 - 0.5^1.5)/(3 x 10
// sqrt(10.5)).
TEST_CASE("A loop without drag reaches 91.6515 m/s after 0.692726 s") {
  const RollingLoop loop(levelLine(), level(), LoopDrag{0.0, 0.0, 0.0, 0.0});
  const LoopEnd end = loop.run(20, 0, LoopDrag{0.0, 0.0, 0.0, 0.0});
  CHECK(loop.start_m() == Approx(10).epsilon(1e-12));
  CHECK(end.speed_m_per_s == Approx(91.6515).epsilon(kClosedForm));
  CHECK(end.time_s == Approx(0.692726).epsilon(kClosedForm));
}

// Closed form of the identity d ln u/dx = -(mu - need)/(2M) with a constant need (fly drag only):
// u/u0 = (M0/M1)^((mu - need)/(2 mu)), need = 2 rho CdA.
TEST_CASE("A loop with fly drag alone keeps its power law") {
  LoopDrag drag{1.2, 0.0, 0.0, 3e-4};
  const RollingLoop loop(levelLine(), level(), drag);
  const double need = 2.0 * 1.2 * 3e-4;
  const double power = (1e-3 - need) / (2.0 * 1e-3);
  CHECK(loop.run(20, 0, drag).speed_m_per_s ==
        Approx(20 * std::pow(21.0, power)).epsilon(kClosedForm));
}

// Closed form with a moving rod leg and no drag: M (u - v)^2 is kept, momentum of nothing else.
TEST_CASE("A loop on a moving rod leg keeps M (u - v)^2") {
  const RollingLoop loop(levelLine(), level(), LoopDrag{0.0, 0.0, 0.0, 0.0});
  const LoopEnd end = loop.run(20, -5, LoopDrag{0.0, 0.0, 0.0, 0.0});
  CHECK(end.speed_m_per_s == Approx(-5 + 25 * std::sqrt(21.0)).epsilon(kClosedForm));
}

// Gatti-Bono & Perkins (2004), J. Appl. Mech. 71:745: a circular loop of radius R that advances at
// v0 has the form drag (2/3) rho d R v0^2 Cn along the line and none across it. Its power is that
// times v0, the loop's only motion across itself.
TEST_CASE("A circular loop's form drag is two thirds of rho d R v0^2 Cn") {
  CastSetup cast;
  cast.lineSpeed = FeetPerSecond(20 / 0.3048);
  cast.loop = Feet(1 / 0.3048);
  cast.launch = Degrees(0);
  cast.rodTip = Feet(13);
  AirSettings air;
  air.alongDrag = 0.0;
  CastModel model = castModel(levelLine(), cast, air, 800).value();
  model.gravityX_m_per_s2 = model.gravityY_m_per_s2 = 0.0;
  CastOptions options;
  options.until = Seconds(1e-5);
  const CastResult run = unroll(model, options);
  const double force = 2.0 / 3.0 * 1.2 * 1e-3 * 0.5 * 10.0 * 10.0 * 1.1;
  CHECK(run.end.toLineDrag_J / 1e-5 == Approx(force * 10.0).epsilon(0.005));
}

// ISO 2533:1975, standard atmosphere: 1.225 kg/m3 at sea level, 0.9075 of it at 1000 m.
TEST_CASE("The standard atmosphere thins as published") {
  const auto at_m = [](double h) { return standardAirDensity_kg_per_m3(si::toFeet(h)); };
  CHECK(at_m(0) == Approx(1.225).epsilon(1e-12));
  CHECK(at_m(1000) / 1.225 == Approx(0.9075).epsilon(1e-4));
  CHECK(at_m(1e9) == at_m(11000));
}
