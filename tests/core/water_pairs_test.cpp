// SPDX-License-Identifier: GPL-3.0-or-later
#include <atomic>
#include <catch2/catch.hpp>
#include <cmath>
#include <thread>

#include "core/model/check.h"
#include "core/water/hang.h"
#include "core/water/swing.h"
#include "tests/support/random_rig.h"

/// The water of two thousand random rigs in random pools: a figure or a reason, never a step that was not
/// solved, never anything that is no number, never anything through the bed.
using namespace grainwise;

namespace {

constexpr std::size_t kPairs = 2000;
constexpr std::uint64_t kSeed = 20260;
constexpr double kStretch = 0.01;  // what LineDynamics promises

/// Anything that a file may say of a pool and of how it is fished, most of it what anglers meet.
void intoPool(test::Random& random, Rig& rig) {
  Water water;
  water.surfaceSpeed =
      FeetPerSecond(random.chance(0.1) ? random.typed(0, 15, 1) : random.typed(0.5, 8, 1));
  water.depth = Feet(random.chance(0.1) ? random.typed(0.2, 60, 1) : random.typed(0.5, 12, 1));
  if (random.chance(0.5)) water.temperature = Celsius(random.typed(0, 35, 1));
  if (random.chance(0.2)) water.salinity = GramsPerKilogram(random.typed(0, 45, 0));
  water.bed = test::randomBed(water);
  rig.water = water;
  if (random.chance(0.3)) return;
  Swing swing;
  swing.lineOut = Feet(random.typed(10, 150, 0));
  swing.angle = Degrees(random.typed(0, 89, 0));
  swing.mend = Seconds(random.typed(0, 30, 1));
  rig.swing = swing;
}

struct PairOf {
  Rig rig;
  RigInWater water;
};

std::vector<PairOf> randomPairs() {
  test::Random random(kSeed);
  test::RandomRigOptions options;
  options.complete = true;
  std::vector<PairOf> pairs;
  while (pairs.size() < kPairs) {
    Rig rig = test::randomRig(random, options);
    intoPool(random, rig);
    if (auto water = rigInWater(rig, massProfile(rig))) {
      pairs.push_back({std::move(rig), std::move(*water)});
    }
  }
  return pairs;
}

/// Of any of the line at any time of the track; where a number is none, no depth at all would do.
Feet lowestOf(const SwingResult& result) {
  Feet lowest;
  for (const SwingFrame& frame : result.track) {
    for (const SwingPoint& p : frame.line) {
      if (!std::isfinite(p.depth.value() + p.across.value() + p.downstream.value())) return Feet(HUGE_VAL);
      lowest = std::max(lowest, p.depth);
    }
  }
  return lowest;
}

struct Swung {
  SwingResult result;  ///< without its track
  Feet lowest;
};

std::vector<Swung> swingAll(const std::vector<PairOf>& pairs, const SwingOptions& options) {
  std::vector<Swung> results(pairs.size());
  std::atomic<std::size_t> next{0};
  const auto work = [&] {
    for (std::size_t i = next++; i < pairs.size(); i = next++) {
      const RigInWater& w = pairs[i].water;
      SwingResult result = swing(w.line, w.river, w.setup, options);
      const Feet lowest = lowestOf(result);
      result.track.clear();
      result.track.shrink_to_fit();
      results[i] = {std::move(result), lowest};
    }
  };
  {
    const std::jthread other(work);
    work();
  }
  return results;
}

void checkSwings(SwingOptions options) {
  options.frameEvery = Seconds(0.02);  // of every step, or one of a few in the longest swings
  const auto pairs = randomPairs();
  const auto results = swingAll(pairs, options);
  std::size_t ran = 0;
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    const auto& [r, lowest] = results[i];
    if (!r.ran()) continue;
    ++ran;
    const Feet bed = *pairs[i].rig.water->depth;
    CAPTURE(i, int(r.end), lowest.value(), bed.value(), r.stretch, r.rejectedSteps);
    CHECK(r.end != SwingEnd::notConverged);
    CHECK(std::isfinite(r.afterMend.value() + r.deepest.value() + r.hangDown.value() + r.bottomShare +
                        r.swing.value_or(Feet(0)).value()));
    CHECK(lowest <= bed);
    CHECK(r.stretch < kStretch);
  }
  CHECK(ran > kPairs * 9 / 10);  // the rest: still water
}

}  // namespace

TEST_CASE("Two thousand random rigs hang in two thousand random pools with a depth or a reason, above the bed") {
  std::size_t deep = 0;
  for (const PairOf& pair : randomPairs()) {
    REQUIRE(check(pair.rig).empty());
    const HangDown hang = hangDown(pair.water.line, pair.water.river);
    const Feet bed = *pair.rig.water->depth;
    CAPTURE(int(hang.state), hang.fly.value(), bed.value());
    CHECK(std::isfinite(hang.fly.value()));
    CHECK(hang.fly >= Feet(0));
    CHECK(hang.fly <= bed);
    if (!hasDepth(hang.state)) continue;
    ++deep;
    double lowest = 0.0, sum = 0.0;
    for (const HangPoint& point : hang.shape) {
      lowest = std::max(lowest, point.depth.value());
      sum += point.depth.value() + point.upstream.value() + point.fromFly.value();
    }
    CHECK(lowest <= bed.value());
    CHECK(std::isfinite(sum));
  }
  CHECK(deep > kPairs / 2);
}

// Two minutes of one core each and more: apart from the inner loop, by their tags.
TEST_CASE("Two thousand random rigs swing through two thousand random pools without an unsolved step",
          "[.swings]") {
  SwingOptions quick;  // as the band takes them
  quick.coarse = true;
  quick.settle = false;
  checkSwings(quick);
}

TEST_CASE("Two thousand random rigs swing to rest in fine steps without an unsolved one", "[.fineswings]") {
  checkSwings(SwingOptions{});
}
