// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/material/sink_rate.h"
#include "core/water/line_dynamics.h"
#include "tests/support/water_cases.h"

using namespace grainwise;
using namespace grainwise::swinging;

namespace {

River even(double surface_ft_per_s, double depth_ft) {
  River river = riverOf(FeetPerSecond(surface_ft_per_s), Feet(depth_ft), {});
  river.profile.exponent = 0.0;  // the same speed at every depth
  return river;
}

void run(LineDynamics& line, double seconds, double dt_s) {
  const int n = static_cast<int>(std::lround(seconds / dt_s));
  for (int i = 0; i < n; ++i) REQUIRE(line.step(dt_s));
}

/// The same where some steps have to be taken in pieces.
void runInPieces(LineDynamics& line, double seconds, double dt_s) {
  double t_s = 0.0, now_s = dt_s;
  while (t_s < seconds && now_s > 1e-6) {
    if (!line.step(now_s)) {
      now_s *= 0.5;
      continue;
    }
    t_s += now_s;
    now_s = std::min(dt_s, 1.5 * now_s);
  }
  REQUIRE(t_s >= seconds);
}

}  // namespace

TEST_CASE("a level line that drifts freely sinks at its terminal rate") {
  for (const auto& [mass, rate] : {std::pair(8.0, 6.5), std::pair(14.0, 8.5)}) {
    CAPTURE(mass);
    const WaterLine line{test::fly(0.01, 4.0, 0.0, 1.0), {test::sinking(20, mass, rate)}};
    LineDynamics moving(line, even(3, 30));
    moving.land(M_PI / 4);
    run(moving, 3.0, 0.02);
    const WaterPiece& piece = line.pieces[0];
    const auto expected = sinkRate(si::toGrainsPerFoot(piece.massFlyEnd_kg_per_m),
                                   si::toInches(piece.diameterFlyEnd_m), {});
    const double middle = moving.velocities()[moving.nodes() / 2].z;
    CHECK(-middle == Approx(si::m_per_s(expected)).epsilon(2e-3));
  }
}

TEST_CASE("a fly that drifts on a slack line sinks at its terminal rate") {
  // W = 1/2 rho k CdA w^2, sinking flat: k = 3
  const WaterFly fly = test::fly(40, 5.5, 1.5, 3.0);
  const WaterLine line{fly, {test::nylon(4, 0.002)}};
  LineDynamics moving(line, even(2, 30));
  moving.land(0.5);
  runInPieces(moving, 1.2, 0.01);
  const double rho = waterAt({}).rho_kg_per_m3;
  const double wet_n = (fly.mass_kg - rho * fly.volume_m3) * si::kGravity_m_per_s2;
  const double rate = std::sqrt(wet_n / (0.5 * rho * 3.0 * fly.dragArea_m2));
  CHECK(-moving.flyVelocity().z == Approx(rate).epsilon(0.03));  // 4 ft of leader brake it a little
}

TEST_CASE("in still water a sinking line only loses energy") {
  const WaterLine line{test::heavyFly(), {test::nylon(4, 0.0138), test::sinking(10, 11, 7.5)}};
  LineDynamics moving(line, even(0, 6));
  moving.land(0.3);
  run(moving, 0.5, 0.01);  // wholly under water from here on
  moving.tie({0.0, 0.0, moving.positions()[1].z});
  double before = moving.energy_j();
  const double start = before;
  for (int i = 0; i < 600; ++i) {
    REQUIRE(moving.step(0.01));
    const double now = moving.energy_j();
    CHECK(now <= before + 1e-9);
    before = now;
  }
  CHECK(before < start - 1e-3);
}

TEST_CASE("a line stays in the plane that the current and its landing span straight downstream") {
  // landed straight downstream nothing pushes it sideways
  const auto c = test::waterCases().front();
  LineDynamics moving(c.line, c.river());
  moving.land(M_PI / 2);
  run(moving, 1.0, 0.02);
  moving.tie({0.0, 0.0, 0.6});
  runInPieces(moving, 5.0, 0.02);
  for (const Vec3& x : moving.positions()) CHECK(std::abs(x.y) < 1e-9);
}

TEST_CASE("the step is of first order in time") {
  const WaterLine line{test::heavyFly(), {test::nylon(4, 0.0138), test::sinking(10, 11, 7.5)}};
  const auto flyAfter = [&line](double dt_s) {
    LineDynamics moving(line, riverOf(FeetPerSecond(3), Feet(20), {}), {0.6, 0.6, 0.6});
    moving.land(M_PI / 4);
    run(moving, 2.0, dt_s);
    return moving.fly();
  };
  const Vec3 exact = flyAfter(0.0003125);
  const double coarse = (flyAfter(0.02) - exact).norm();
  const double fine = (flyAfter(0.01) - exact).norm();
  const double finer = (flyAfter(0.005) - exact).norm();
  CHECK(std::log2(coarse / fine) == Approx(1.0).margin(0.25));
  CHECK(std::log2(fine / finer) == Approx(1.0).margin(0.25));
}

TEST_CASE("a step that does not converge leaves the line as it was") {
  const auto c = test::waterCases().front();
  LineDynamics moving(c.line, c.river(), {}, {1e-30, 3});  // nothing converges to this
  moving.land(0.5);
  const auto before = moving.positions();
  CHECK_FALSE(moving.step(0.02));
  for (std::size_t i = 0; i < before.size(); ++i) {
    CHECK((moving.positions()[i] - before[i]).norm() == 0.0);
  }
}
