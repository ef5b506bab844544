// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <stop_token>
#include <utility>

#include "core/mass/profile.h"
#include "core/water/band.h"
#include "core/water/swing.h"
#include "tests/bench/stop_bench.h"
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
constexpr double kBegins_s = 0.4;
constexpr std::size_t kNodes = 50;
constexpr std::size_t kBandNodes = 30;
constexpr double kBandStep_s = 0.04;

/// So long of a swing from the moment the line comes tight, in steps of one length.
void swingInSteps(benchmark::State& state, std::size_t nodes, double step_s, double seconds) {
  const test::WaterCase& one = cases()[kSwingCase];
  const test::SwingChain start(one, nodes);
  numerics::Vec3 end;
  for (auto _ : state) {
    test::SwingChain chain = start;
    if (!chain.run(seconds, step_s)) state.SkipWithError("a step did not converge");
    end = chain.line().fly();
  }
  test::SwingChain counted = start;
  state.counters["nodes"] = double(counted.line().nodes());
  test::SwingChain fine = start;
  (void)fine.run(seconds, step_s / 10);
  state.counters["depth_m"] = -end.z;
  state.counters["error_m"] = (end - fine.line().fly()).norm();
}
void swinging(benchmark::State& state) { swingInSteps(state, std::size_t(state.range(0)), kStep_s, kSwing_s); }
BENCHMARK(swinging)->Arg(25)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMillisecond);

/// The beginning of a swing, and of one as coarse as those of the band: SciPy takes a minute for more.
void swingBegins(benchmark::State& state) { swingInSteps(state, kNodes, kStep_s, kBegins_s); }
void bandSwingBegins(benchmark::State& state) { swingInSteps(state, kBandNodes, kBandStep_s, kBegins_s); }
BENCHMARK(swingBegins)->Unit(benchmark::kMillisecond);
BENCHMARK(bandSwingBegins)->Unit(benchmark::kMillisecond);

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

void stoppingBand(benchmark::State& state) {
  const Rig rig = test::sampleRig("01-plain-winter");
  int moment_ms = 2;
  bench::timeStopping(
      state, [&](std::stop_token stop) { return swingBand(rig, {}, {}, stop).end == SwingEnd::stopped; },
      [&] { return std::exchange(moment_ms, 2 + (moment_ms + 17) % 60); });
}
BENCHMARK(stoppingBand)->UseManualTime()->Iterations(40)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
