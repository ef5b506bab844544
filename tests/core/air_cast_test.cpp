// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <chrono>
#include <cmath>
#include <numbers>
#include <numeric>
#include <thread>

#include "core/air/cast.h"
#include "core/units/si.h"
#include "tests/support/air_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;

namespace {

constexpr double kBefore = 0.03;  // the table's figures come from another code, up to the turn

CastModel modelOf(const Rig& rig, std::size_t links = 200) {
  const CastSetup cast = castSetup(rig, false);
  const AirLine line = airLine(rig, massProfile(rig), cast.overhang).value();
  return castModel(line, cast, {}, links).value();
}

CastOptions quiet(double stepShare = 1.0) {
  CastOptions options;
  options.frameEvery = Seconds(0);
  options.stepShare = stepShare;
  return options;
}

/// Largest distance between the nodes of two ends of one model (m).
double apart_m(const CastModel& model, const CastResult& a, const CastResult& b) {
  double x = 0.0, y = 0.0, most = 0.0;
  for (std::size_t k = 0; k < model.links(); ++k) {
    x += model.link_m * (std::cos(a.angle_rad[k]) - std::cos(b.angle_rad[k]));
    y += model.link_m * (std::sin(a.angle_rad[k]) - std::sin(b.angle_rad[k]));
    most = std::max(most, std::hypot(x, y));
  }
  return most;
}

void takeAwayDrag(CastModel& model) {
  model.airDensity_kg_per_m3 = 0.0;
  model.bendingTime_s = 0.0;
}

}  // namespace

TEST_CASE("Every reference cast is met by the unrolling loop at the turn") {
  for (const AirCase& c : airCases()) {
    INFO(c.name);
    const CastResult cast = unroll(modelOf(c.rig), quiet());
    CHECK(cast.stop == CastStop::turnedOver);
    CHECK(cast.time.value() == Approx(c.time2d_s).epsilon(kBefore));
    CHECK(si::m_per_s(cast.flySpeed) == Approx(c.end2d_m_per_s).epsilon(kBefore));
    CHECK(si::m(cast.endHeight) == Approx(c.height2d_m).epsilon(kBefore));
  }
}

TEST_CASE("The model holds the line's mass and shadow whatever the number of links") {
  const Rig rig = castRig(
      {withLoops(airShort525(), 0, 2), withLoops(airTip(8), 2, 2), airTippet33(), airFly(20, 3)});
  const AirLine line = airLine(rig, massProfile(rig), Feet(0)).value();
  double shadow = 0.0;
  for (const AirPiece& piece : line.pieces) shadow += piece.shadow_m2(piece.from_m, piece.to_m);
  for (std::size_t links : {20U, 137U, 200U}) {
    const CastModel model = modelOf(rig, links);
    const double mass = std::accumulate(model.nodeMass_kg.begin(), model.nodeMass_kg.end(), 0.0);
    CHECK(si::toGrains(mass).value() ==
          Approx(12 * (11.333 + 24.4) / 8 + 12 * 24.2 + 115 + 66 + 80 + 4 * 0.459 + 20 + 6)
              .epsilon(1e-12));
    const double covered =
        model.link_m * std::accumulate(model.diameter_m.begin(), model.diameter_m.end(), 0.0);
    CHECK(covered == Approx(shadow).epsilon(1e-9));
  }
}

TEST_CASE("The loop starts as a rod leg, half a circle and a fly leg at the line speed") {
  const CastModel model = modelOf(airCases()[0].rig);
  CastOptions options;
  options.until = Seconds(0);
  const CastResult cast = unroll(model, options);
  CHECK(cast.stop == CastStop::timeReached);
  CHECK(cast.steps == 0);
  CHECK(cast.flySpeed.value() == Approx(72.178478).epsilon(1e-9));
  CHECK(model.startAngle_rad.front() == 0.0);
  CHECK(model.startAngle_rad.back() == Approx(std::numbers::pi));
  // The fly is one loop (1 m) above the rod leg and as far back as the legs differ.
  const double back_m = 2 * 1.0 + std::numbers::pi / 2 - 200 * model.link_m;
  const double a = model.launch_rad;
  CHECK(si::m(cast.endHeight) == Approx(4.0 + std::cos(a) + back_m * std::sin(a)).epsilon(1e-3));
}

TEST_CASE("Energy is kept to 1e-6 without drag, and its losses add up with it") {
  CastModel model = modelOf(airCases()[2].rig);
  const CastResult dragged = unroll(model, quiet(0.5));
  CHECK(dragged.end.total_J() == Approx(dragged.start.total_J()).epsilon(1e-6));
  CHECK(dragged.end.toLineDrag_J > 0.0);
  CHECK(dragged.end.toFlyDrag_J > 0.0);
  CHECK(dragged.end.toBending_J > 0.0);
  takeAwayDrag(model);
  const CastResult freely = unroll(model, quiet(0.5));
  CHECK(freely.stop == CastStop::turnedOver);
  const auto& e = freely.end;
  CHECK(e.toLineDrag_J + e.toFlyDrag_J + e.toBending_J == 0.0);
  CHECK(e.total_J() == Approx(freely.start.total_J()).epsilon(1e-6));
  CHECK(std::abs(e.lifted_J - freely.start.lifted_J) > 0.01);  // the balance is not an empty one
}

TEST_CASE("The error falls with the fourth power of the step in the loop phase") {
  const CastModel model = modelOf(airCases()[0].rig);
  const auto at = [&](double share) {
    CastOptions options = quiet(share);
    options.until = Seconds(0.3);
    return unroll(model, options);
  };
  const CastResult exact = at(0.05);
  const double coarse = apart_m(model, at(0.8), exact);
  const double fine = apart_m(model, at(0.4), exact);
  const double order = std::log2(coarse / fine);
  INFO("errors " << coarse << " m, " << fine << " m");
  CHECK(order > 3.6);
  CHECK(order < 4.8);
}

TEST_CASE("The steps of a usual run are within 1e-5 m of much finer ones") {
  for (const AirCase& c : airCases()) {
    INFO(c.name);
    const CastModel model = modelOf(c.rig);
    CastOptions options = quiet();
    options.until = Seconds(0.98 * c.time2d_s);
    const CastResult usual = unroll(model, options);
    options.stepShare = 0.2;
    CHECK(apart_m(model, usual, unroll(model, options)) < 1e-5);
  }
}

TEST_CASE("A cast seen in a mirror is the mirrored cast") {
  CastModel model = modelOf(airCases()[1].rig, 100);
  CastModel mirrored = model;
  for (double& angle : mirrored.startAngle_rad) angle = -angle;
  for (double& rate : mirrored.startRate_rad_per_s) rate = -rate;
  mirrored.gravityY_m_per_s2 = -mirrored.gravityY_m_per_s2;
  CastOptions options = quiet();
  options.until = Seconds(0.5);
  const CastResult a = unroll(model, options);
  const CastResult b = unroll(mirrored, options);
  REQUIRE(a.angle_rad.size() == 100);
  for (std::size_t k = 0; k < 100; ++k) {
    CHECK(a.angle_rad[k] == Approx(-b.angle_rad[k]).margin(1e-9));
    CHECK(a.rate_rad_per_s[k] == Approx(-b.rate_rad_per_s[k]).margin(1e-7));
  }
}

TEST_CASE("A finer chain tells the same cast") {
  constexpr double kLinks = 0.025;  // 100 against 300 links: time and height at the turn
  for (std::size_t i : {0U, 2U, 4U}) {
    const AirCase c = airCases()[i];
    INFO(c.name);
    const CastResult coarse = unroll(modelOf(c.rig, 100), quiet());
    const CastResult fine = unroll(modelOf(c.rig, 300), quiet());
    CHECK(coarse.time.value() == Approx(fine.time.value()).epsilon(kLinks + 0.02));
    CHECK(coarse.endHeight.value() == Approx(fine.endHeight.value()).epsilon(kLinks));
  }
}

TEST_CASE("Frames begin at the start, end at the turn and hold the whole line") {
  CastOptions options;
  options.frameEvery = Seconds(0.02);
  options.tensions = true;
  const CastModel model = modelOf(plainWinter());
  const CastResult cast = unroll(model, options);
  REQUIRE(cast.frames.size() > 20);
  CHECK(cast.frames.front().time == Seconds(0));
  CHECK(cast.frames.back().time == cast.time);
  CHECK(cast.frames.back().points.back().height.value() == Approx(cast.endHeight.value()));
  CHECK(cast.frames.back().flySpeed == cast.flySpeed);
  for (std::size_t i = 0; i < cast.frames.size(); ++i) {
    const CastFrame& frame = cast.frames[i];
    REQUIRE(frame.points.size() == 201);
    CHECK(frame.tension_N.size() == 200);
    CHECK(frame.points[0].height == Feet(13));
    CHECK(frame.energy.total_J() == Approx(cast.start.total_J()).epsilon(1e-5));
    if (i > 0) CHECK(frame.time > cast.frames[i - 1].time);
    for (std::size_t k = 1; k < 201; ++k) {
      const auto& a = frame.points[k - 1];
      const auto& b = frame.points[k];
      const double step =
          std::hypot(b.forward.value() - a.forward.value(), b.height.value() - a.height.value());
      REQUIRE(si::m(Feet(step)) == Approx(model.link_m).epsilon(1e-9));
    }
  }
}

TEST_CASE("A run that is cancelled ends on its way and says so") {
  const CastModel model = modelOf(plainWinter(), 800);
  std::stop_source source;
  CastResult cast;
  std::thread worker([&] { cast = unroll(model, quiet(), source.get_token()); });
  std::this_thread::sleep_for(std::chrono::milliseconds(30));
  source.request_stop();
  worker.join();
  CHECK(cast.stop == CastStop::cancelled);
  CHECK(cast.time.value() > 0.0);
  CHECK(cast.time < unroll(model, quiet()).time);
}

TEST_CASE("Progress goes from near nothing to near all and never back by much") {
  std::vector<double> seen;
  unroll(modelOf(plainWinter()), quiet(), {}, [&](double share) { seen.push_back(share); });
  REQUIRE(seen.size() > 10);
  CHECK(seen.front() < 0.2);
  CHECK(seen.back() > 0.85);
  for (std::size_t i = 1; i < seen.size(); ++i) CHECK(seen[i] >= seen[i - 1] - 0.02);
}

TEST_CASE("A cast too weak to turn over ends at its time limit") {
  Rig rig = plainWinter();
  rig.cast = Cast{};
  rig.cast->lineSpeed = FeetPerSecond(3);
  CastOptions options = quiet();
  options.longest = Seconds(0.5);
  const CastResult cast = unroll(modelOf(rig), options);
  CHECK(cast.stop == CastStop::noTurn);
  CHECK(cast.time == Seconds(0.5));
}

TEST_CASE("A line shorter than its loop has no model") {
  const Rig rig = rigOf({head({floating(8, 20)}), fly(10)});
  CastSetup cast = castSetup(rig, false);
  const AirLine line = airLine(rig, massProfile(rig), cast.overhang).value();
  CHECK_FALSE(castModel(line, cast));  // 1 m and half a circle of 5 ft are 11.1 ft
  cast.loop = Feet(2);
  CHECK(castModel(line, cast));
}
