// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <algorithm>
#include <cmath>
#include <stop_token>
#include <utility>
#include <vector>

#include "core/air/cast.h"
#include "core/units/si.h"
#include "tests/bench/hinge_chain.h"
#include "tests/bench/stop_bench.h"
#include "tests/support/air_cases.h"

/// Times turnover on an edit and the unrolling loop, and MuJoCo on the same bare chain. air_peers.py
/// runs this, times SciPy on the same model and prints the ratios.
namespace {

using namespace grainwise;

constexpr double kSpan_s = 0.3;       // of cast, in the loop phase
constexpr double kAccuracy_m = 1e-5;  // the equal accuracy that times are compared at
const int kEdits = 6;

CastModel modelOf(std::size_t links) {
  const Rig rig = test::airCases()[2].rig;
  return castModel(rig, massProfile(rig), {}, links).value();
}

/// Under gravity alone: what a chain of hinges knows without being told of air.
CastModel bareModel(std::size_t links) {
  CastModel model = modelOf(links);
  model.airDensity_kg_per_m3 = 0.0;
  for (double& b : model.bending_N_m) b = 0.0;
  return model;
}

CastOptions spanned(double stepShare = 1.0) {
  CastOptions options;
  options.frameEvery = Seconds(0);
  options.until = Seconds(kSpan_s);
  options.stepShare = stepShare;
  return options;
}

double apart_m(const CastModel& model, const std::vector<double>& a, const std::vector<double>& b) {
  double x = 0.0, y = 0.0, most = 0.0;
  for (std::size_t k = 0; k < a.size(); ++k) {
    x += model.link_m * (std::cos(a[k]) - std::cos(b[k]));
    y += model.link_m * (std::sin(a[k]) - std::sin(b[k]));
    most = std::max(most, std::hypot(x, y));
  }
  return most;
}

/// The largest share of the usual steps, from 2 down by sixths, that keeps to the accuracy. Larger
/// shares stay sound, since the usual ones leave that much to the limit of stability.
double shareFor(const CastModel& model, const std::vector<double>& exact) {
  double share = 1.7;
  while (share > 0.01 &&
         !(apart_m(model, unroll(model, spanned(share)).angle_rad, exact) <= kAccuracy_m)) {
    share /= 1.2;
  }
  return share;
}

void turnoverOnAnEdit(benchmark::State& state) {
  const Rig rig = test::airCases()[static_cast<std::size_t>(state.range(0))].rig;
  const MassProfile profile = massProfile(rig);
  const auto joints = junctions(rig, profile);
  for (auto _ : state) {
    benchmark::DoNotOptimize(turnover(rig, profile, joints));
  }
}
BENCHMARK(turnoverOnAnEdit)->DenseRange(0, kEdits)->Unit(benchmark::kMicrosecond);

void wholeCast(benchmark::State& state) {
  const Rig rig = test::airCases()[static_cast<std::size_t>(state.range(0))].rig;
  const CastModel model = castModel(rig, massProfile(rig)).value();
  CastOptions options;
  options.frameEvery = Seconds(0);
  double cast_s = 0.0;
  for (auto _ : state) cast_s = unroll(model, options).time.value();
  CastOptions until = options;
  until.until = Seconds(0.98 * cast_s);
  const auto usual = unroll(model, until).angle_rad;
  until.stepShare = 0.1;
  state.counters["error_m"] = apart_m(model, usual, unroll(model, until).angle_rad);
  state.counters["cast_s"] = cast_s;
}
BENCHMARK(wholeCast)->DenseRange(0, kEdits)->Unit(benchmark::kMillisecond);

/// A long cast that would take seconds.
void stoppingCast(benchmark::State& state) {
  const Rig rig = test::airCases().front().rig;
  const CastModel model = castModel(rig, massProfile(rig), {}, 800).value();
  CastOptions slow;
  slow.stepShare = 0.02;
  int moment_ms = 5;
  bench::timeStopping(
      state, [&](std::stop_token stop) { return unroll(model, slow, stop).stop == CastStop::cancelled; },
      [&] { return std::exchange(moment_ms, 5 + (moment_ms + 37) % 100); });
}
BENCHMARK(stoppingCast)->UseManualTime()->Iterations(40)->Unit(benchmark::kMillisecond);

void oursAt(benchmark::State& state, const CastModel& model) {
  const auto exact = unroll(model, spanned(0.05)).angle_rad;
  const double share = shareFor(model, exact);
  const CastOptions options = spanned(share);
  CastResult end;
  for (auto _ : state) end = unroll(model, options);
  state.counters["error_m"] = apart_m(model, end.angle_rad, exact);
  state.counters["steps"] = static_cast<double>(end.steps);
}
void inAir(benchmark::State& state) {
  oursAt(state, modelOf(static_cast<std::size_t>(state.range(0))));
}
void bare(benchmark::State& state) {
  oursAt(state, bareModel(static_cast<std::size_t>(state.range(0))));
}
BENCHMARK(inAir)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Arg(800)->Unit(benchmark::kMillisecond);
BENCHMARK(bare)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Arg(800)->Unit(benchmark::kMillisecond);

/// One step of the hinges; its length is the longest that keeps to the accuracy. Above kTried links it
/// is what ours take in the mean, since trying would take minutes.
void hinges(benchmark::State& state) {
  constexpr std::size_t kTried = 200;
  constexpr double kLongest_s = 3e-3;
  const auto links = static_cast<std::size_t>(state.range(0));
  const CastModel model = bareModel(links);
  const auto exact = unroll(model, spanned(0.05)).angle_rad;
  double error_m = std::nan("");
  double step_s = kLongest_s;
  for (; links <= kTried && step_s > 1e-5; step_s /= 1.2) {
    bench::HingeChain tried(model, step_s);
    tried.run(kSpan_s);
    error_m = apart_m(model, tried.angles(), exact);
    if (error_m <= kAccuracy_m) break;
  }
  if (links > kTried) {
    const CastResult ours = unroll(model, spanned(shareFor(model, exact)));
    step_s = kSpan_s / static_cast<double>(ours.steps);
  }
  bench::HingeChain chain(model, step_s);
  for (auto _ : state) chain.step();
  if (std::isfinite(error_m)) state.counters["error_m"] = error_m;
  state.counters["steps"] = kSpan_s / step_s;
}
BENCHMARK(hinges)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
