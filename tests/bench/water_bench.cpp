// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include "core/mass/profile.h"
#include "core/water/band.h"
#include "core/water/swing.h"
#include "tests/support/sample_rig.h"
#include "tests/support/swing_chain.h"

/// Hang-down, swing and band; water_peers.py runs this and times SciPy on the same lines.
namespace {

using namespace grainwise;

const std::vector<test::WaterCase>& cases() {
  static const auto all = test::waterCases();
  return all;
}

void hanging(benchmark::State& state) {
  const test::WaterCase& one = cases()[std::size_t(state.range(0))];
  const River river = one.river();
  state.SetLabel(one.name);
  HangDown hang;
  for (auto _ : state) hang = hangDown(one.line, river);
  state.counters["depth_m"] = si::m(hang.fly);
}
BENCHMARK(hanging)->DenseRange(0, 7)->Unit(benchmark::kMicrosecond);

constexpr std::size_t kSwingCase = 3;
constexpr double kSwing_s = 30.0;
constexpr double kStep_s = 0.02;

/// Thirty seconds of swing in steps of 20 ms, from the moment the line comes tight.
void swinging(benchmark::State& state) {
  const test::WaterCase& one = cases()[kSwingCase];
  const test::SwingChain start(one, std::size_t(state.range(0)));
  numerics::Vec3 end;
  for (auto _ : state) {
    test::SwingChain chain = start;
    if (!chain.run(kSwing_s, kStep_s)) state.SkipWithError("a step did not converge");
    end = chain.line().fly();
  }
  test::SwingChain counted = start;
  state.counters["nodes"] = double(counted.line().nodes());
  test::SwingChain fine = start;
  (void)fine.run(kSwing_s, kStep_s / 10);
  state.counters["depth_m"] = -end.z;
  state.counters["error_m"] = (end - fine.line().fly()).norm();
}
BENCHMARK(swinging)->Arg(25)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMillisecond);

/// A whole swing as the River shows it: landing, drift, swing, hang-down.
void wholeSwing(benchmark::State& state) {
  const test::WaterCase& one = cases()[kSwingCase];
  const River river = one.river();
  SwingResult result;
  for (auto _ : state) result = swing(one.line, river, {});
  state.counters["run_s"] = result.track.back().time.value();
}
BENCHMARK(wholeSwing)->Unit(benchmark::kMillisecond);

void band(benchmark::State& state) {
  const Rig rig = test::sampleRig("01-plain-winter");
  SwingBand found;
  for (auto _ : state) found = swingBand(rig);
  state.counters["runs"] = found.runs;
}
BENCHMARK(band)->UseRealTime()->Unit(benchmark::kMillisecond);

/// Thirty-two runs of the kind the band is made of, one after the other.
void runsOfTheBand(benchmark::State& state) {
  const Rig rig = test::sampleRig("01-plain-winter");
  const auto water = rigInWater(rig, massProfile(rig));
  SwingOptions quick;
  quick.frameEvery = Seconds(0);
  quick.settle = false;
  quick.coarse = true;
  for (auto _ : state) {
    for (int run = 0; run < 32; ++run) {
      SwingSetup setup = water->setup;
      setup.mend = Seconds(2.3 + 0.05 * run);
      benchmark::DoNotOptimize(swing(water->line, water->river, setup, quick).swing);
    }
  }
}
BENCHMARK(runsOfTheBand)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
