// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/water/hang.h"
#include "core/water/swing.h"
#include "tests/support/water_cases.h"

using namespace grainwise;

namespace {
constexpr double kSwing = 0.03;     // against independent solutions with other meshes
constexpr double kSwing_ft = 0.05;
constexpr double kSteady = 0.015;   // a swing that has come to rest against the steady march

bool near(double ours, double reference) {
  return std::abs(ours - reference) <= std::max(kSwing_ft, kSwing * reference);
}
}  // namespace

TEST_CASE("the swing agrees with independent solutions") {
  for (const auto& c : test::waterCases()) {
    const SwingResult r = swing(c.line, c.river(), {});
    CAPTURE(c.name, r.afterMend.value(), r.deepest.value(), r.swing->value(),
            r.timeTo10deg->value());
    CHECK(r.end == SwingEnd::hangs);
    CHECK(near(r.afterMend.value(), c.afterMend_ft));
    CHECK(near(r.deepest.value(), c.deepest_ft));
    CHECK(near(r.swing->value(), c.swing_ft));
    CHECK(near(r.timeTo10deg->value(), c.to10deg_s));
    CHECK(r.bottomShare == 0.0);
    CHECK(r.stretch < 0.01);
    // the moving and the steady line are different equations, solved by different methods
    const double steady = hangDown(c.line, c.river()).fly.value();
    CHECK(r.hangDown.value() == Approx(steady).epsilon(kSteady));
  }
}

TEST_CASE("a heavy tip in a slow shallow pool swings along the bottom") {
  const auto c = test::bottomCase();
  const SwingResult r = swing(c.line, c.river(), {});
  CHECK(r.onBottom());
  CHECK(r.bottomShare == Approx(0.92).margin(0.03));
  CHECK(r.hangDown.value() <= 3.0);
}

TEST_CASE("nothing of the line is ever below the bed and everything is finite") {
  auto cases = test::waterCases();
  cases.push_back(test::bottomCase());
  for (const auto& c : cases) {
    CAPTURE(c.name);
    const SwingResult r = swing(c.line, c.river(), {});
    REQUIRE(r.track.size() > 100);
    double deepest = -1;
    for (const SwingFrame& frame : r.track) {
      for (const SwingPoint& p : frame.line) {
        const double sum = p.downstream.value() + p.across.value() + p.depth.value();
        if (!std::isfinite(sum)) FAIL_CHECK("not finite at " << frame.time.value());
        deepest = std::max(deepest, p.depth.value());
      }
    }
    CHECK(deepest < c.depth_ft);
    CHECK(r.track.front().time == Seconds(0));
    CHECK(r.track.back().line.back().depth.value() == Approx(r.hangDown.value()).margin(1e-3));
  }
}

TEST_CASE("the same swing gives the same bits") {
  const auto c = test::waterCases()[3];
  const SwingResult a = swing(c.line, c.river(), {}), b = swing(c.line, c.river(), {});
  CHECK(a.swing == b.swing);
  CHECK(a.hangDown == b.hangDown);
  REQUIRE(a.track.size() == b.track.size());
  CHECK(a.track.back().line.back().downstream == b.track.back().line.back().downstream);
}

TEST_CASE("the quick runs of the band stay within a hundredth of the fine ones") {
  for (const auto& c : test::waterCases()) {
    CAPTURE(c.name);
    SwingOptions quick;
    quick.coarse = true;
    quick.settle = false;
    quick.frameEvery = Seconds(0);
    const SwingResult coarse = swing(c.line, c.river(), {}, quick);
    CHECK(coarse.track.empty());
    CHECK(coarse.swing->value() ==
          Approx(swing(c.line, c.river(), {}).swing->value()).epsilon(0.01));
  }
}

TEST_CASE("longer mends and steeper casts do what every angler knows") {
  const auto c = test::waterCases()[6];
  const auto with = [&c](double angle, double mend) {
    SwingSetup setup;
    setup.angle = Degrees(angle);
    setup.mend = Seconds(mend);
    return swing(c.line, c.river(), setup);
  };
  CHECK(with(45, 1).afterMend < with(45, 2).afterMend);
  CHECK(with(45, 2).afterMend < with(45, 4).afterMend);
  CHECK(*with(30, 3).timeTo10deg > *with(60, 3).timeTo10deg);
  CHECK(*with(30, 3).swing > *with(60, 3).swing);
}

TEST_CASE("a swing can be stopped and tells how far it is") {
  const auto c = test::waterCases().front();
  std::stop_source source;
  double last = 0.0;
  int calls = 0;
  const SwingResult r = swing(c.line, c.river(), {}, {}, source.get_token(), [&](double share) {
    CHECK(share >= 0.0);
    CHECK(share <= 1.0);
    last = share;
    if (++calls == 5) source.request_stop();
  });
  CHECK(r.end == SwingEnd::stopped);
  CHECK(calls == 6);  // and once more at the end
  CHECK(std::isfinite(r.hangDown.value()));
  double before = 0.0;
  swing(c.line, c.river(), {}, {}, {}, [&](double share) {
    CHECK(share >= before - 0.05);  // the angle may swing back a little
    before = share;
  });
  CHECK(before == 1.0);
}

TEST_CASE("still water and a cast straight downstream have no swing depth") {
  const auto c = test::waterCases().front();
  River still = c.river();
  still.surface_m_per_s = 0.01;
  CHECK_FALSE(swing(c.line, still, {}).ran());
  SwingSetup straight;
  straight.angle = Degrees(89);
  const SwingResult r = swing(c.line, c.river(), straight);
  CHECK(r.end == SwingEnd::hangs);
  CHECK_FALSE(r.swing);
}
