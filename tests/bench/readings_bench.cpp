// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/compare/compare.h"
#include "core/material/section_properties.h"
#include "tests/bench/bench_rigs.h"
#include "tests/support/rig_parts.h"
#include "tests/support/sample_rig.h"

/// The readings that follow every edit: all of them together, and apart.
namespace {

using namespace grainwise;
using namespace grainwise::test::rigs;

const char* const kSamples[] = {"01-plain-winter", "02-slot",        "03-thin-tail",
                                "04-small-river",  "05-dry-line",    "06-under-the-film",
                                "07-old-winter",   "08-trout-two-hander", "09-wide-water"};

/// An edit and its Analysis, time by time: the counters are percentiles in ms.
void editAndAnalyse(benchmark::State& state, const Rig& rig) {
  std::vector<double> times_ms;
  int turn = 0;
  for (auto _ : state) {
    const auto begin = std::chrono::steady_clock::now();
    benchmark::DoNotOptimize(analyse(bench::edited(rig, turn++)).totals.mass.value());
    const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
    times_ms.push_back(took.count());
  }
  std::sort(times_ms.begin(), times_ms.end());
  state.counters["p50_ms"] = times_ms[times_ms.size() / 2];
  state.counters["p99_ms"] = times_ms[times_ms.size() * 99 / 100];
}

void largest(benchmark::State& state) { editAndAnalyse(state, bench::largestRig()); }
BENCHMARK(largest)->Iterations(3000)->Unit(benchmark::kMillisecond);

void sample(benchmark::State& state) {
  const Rig rig = test::sampleRig(kSamples[state.range(0)]);
  state.SetLabel(kSamples[state.range(0)]);
  editAndAnalyse(state, rig);
}
BENCHMARK(sample)->DenseRange(0, 8)->Iterations(2000)->Unit(benchmark::kMillisecond);

/// 1,024 sections whose diameters follow from mass and rated sink rate.
void ratedSections(benchmark::State& state) {
  std::vector<Section> sections;
  for (int i = 0; i < 16; ++i) sections.push_back(sinking(5, 8 + 0.5 * i, 6 + 0.1 * i));
  for (auto _ : state) {
    for (int i = 0; i < 64; ++i) {
      for (const Section& s : sections) {
        benchmark::DoNotOptimize(sectionProperties(s, PartKind::tip, 1.0 + 0.001 * i).diameterRodEnd);
      }
    }
  }
}
BENCHMARK(ratedSections)->Unit(benchmark::kMillisecond);

/// Two rigs that differ in head, tip, leader, tippet, fly, running line, rod and water.
void comparison(benchmark::State& state) {
  const Rig a = plainWinter();
  Rig b = onRod(rigOf({runningLine(90), fine480(), tip({sinking(12, 9, 6)}),
                       leader({nylon(2, 0.018)}), tippet({nylon(3, 0.012)}), fly(20)}),
                14, 9);
  b.water = a.water;
  b.water->depth = Feet(6);
  const Analysis ofA = analyse(a), ofB = analyse(b);
  for (auto _ : state) {
    benchmark::DoNotOptimize(compareRigs({a, ofA, {}}, {b, ofB, {}}).differences.size());
  }
}
BENCHMARK(comparison)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
