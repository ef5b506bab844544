// SPDX-License-Identifier: GPL-3.0-or-later
// Reading and writing rigs beside nlohmann/json's own parse into its tree, which checks nothing of
// ours.
#include <benchmark/benchmark.h>

#include <fstream>
#include <iterator>
#include <nlohmann/json.hpp>

#include "core/analysis/analysis.h"
#include "core/io/rig_file.h"

namespace {

using namespace grainwise;

/// 0: the first sample; 1: the largest rig there may be, 64 parts of 64 sections.
std::string text(std::int64_t size) {
  std::ifstream file(GRAINWISE_SOURCE_DIR "/sample-rigs/01-plain-winter.rig.json",
                     std::ios::binary);
  const std::string sample{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  if (size == 0) return sample;
  Rig rig = readRig(sample).value();
  const Part tip = rig.parts.at(2);
  rig.parts.assign(64, tip);
  for (Part& part : rig.parts) part.sections.resize(64, part.sections.front());
  return writeRig(rig);
}

void ours(benchmark::State& state) {
  const std::string source = text(state.range(0));
  for (auto _ : state) benchmark::DoNotOptimize(readRig(source).has_value());
  state.SetBytesProcessed(state.iterations() * std::int64_t(source.size()));
}
void peer(benchmark::State& state) {
  const std::string source = text(state.range(0));
  for (auto _ : state) benchmark::DoNotOptimize(nlohmann::json::parse(source).size());
  state.SetBytesProcessed(state.iterations() * std::int64_t(source.size()));
}
void oursWriting(benchmark::State& state) {
  const Rig rig = readRig(text(state.range(0))).value();
  for (auto _ : state) benchmark::DoNotOptimize(writeRig(rig).size());
}
void peerWriting(benchmark::State& state) {
  const nlohmann::json json = nlohmann::json::parse(text(state.range(0)));
  for (auto _ : state) benchmark::DoNotOptimize(json.dump(2).size());
}
void analysing(benchmark::State& state) {
  const Rig rig = readRig(text(state.range(0))).value();
  for (auto _ : state) benchmark::DoNotOptimize(analyse(rig).totals.mass.value());
}

}  // namespace

BENCHMARK(ours)->Arg(0)->Arg(1);
BENCHMARK(peer)->Arg(0)->Arg(1);
BENCHMARK(oursWriting)->Arg(0)->Arg(1);
BENCHMARK(peerWriting)->Arg(0)->Arg(1);
BENCHMARK(analysing)->Arg(0)->Arg(1);
BENCHMARK_MAIN();
