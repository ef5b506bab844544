// SPDX-License-Identifier: GPL-3.0-or-later
#include <benchmark/benchmark.h>

#include <random>
#include <stop_token>

#include "core/bench/cutting_plan.h"
#include "core/choose/choose.h"
#include "core/choose/fixes.h"
#include "core/choose/wallet.h"
#include "tests/bench/stop_bench.h"
#include "tests/support/every_cut.h"
#include "tests/support/sample_rig.h"
#include "tests/support/shipped_files.h"

/// Choosing, packing, mending and cutting. Two threads work: wall time is what a person waits.
namespace {

using namespace grainwise;

/// So many tips: those of the carried shelf, again and again, each a hair heavier than the last.
Shelf tips(std::size_t count) {
  Shelf shelf;
  for (double heavier = 1.0; shelf.parts.size() < count; heavier += 0.002) {
    for (const Part& part : test::genericShelf().parts) {
      if (!isTipOrCoated(part) || shelf.parts.size() == count) continue;
      shelf.parts.push_back(part);
      for (Section& section : shelf.parts.back().sections) {
        if (section.mass) section.mass->rodEnd = section.mass->rodEnd * heavier;
        if (section.mass) section.mass->flyEnd = section.mass->flyEnd * heavier;
      }
    }
  }
  return shelf;
}

void tipsInAPool(benchmark::State& state) {
  const TipQuestion question{test::sampleRig("01-plain-winter"), test::corrow().pools.front(),
                             tips(std::size_t(state.range(0))), {}};
  std::size_t judged = 0;
  for (auto _ : state) judged = chooseTip(question).ranked.size();
  state.counters["judged"] = double(judged);
}
BENCHMARK(tipsInAPool)->Arg(300)->Arg(600)->Arg(1250)->Arg(2500)->Arg(5000)
    ->UseRealTime()->Unit(benchmark::kMillisecond);

void stopping(benchmark::State& state) {
  const TipQuestion question{test::sampleRig("01-plain-winter"), test::corrow().pools.front(), tips(5000), {}};
  std::mt19937 random(3);
  std::uniform_int_distribution<int> moment_ms(5, 250);
  bench::timeStopping(
      state, [&](std::stop_token stop) { return chooseTip(question, stop).stopped; }, [&] { return moment_ms(random); });
}
BENCHMARK(stopping)->UseManualTime()->Iterations(40)->Unit(benchmark::kMillisecond);

WalletQuestion trip() {
  WalletQuestion question;
  for (const char* name : {"01-plain-winter", "02-slot", "03-thin-tail", "04-small-river",
                           "07-old-winter", "08-trout-two-hander", "09-wide-water",
                           "06-under-the-film"}) {
    question.rigs.push_back(test::sampleRig(name));
  }
  question.pools = test::corrow();
  for (const Pool& p : test::corrow().pools) {
    Pool other = p;
    other.name += ", high water";
    other.surfaceSpeed = p.surfaceSpeed * 1.2;
    other.depth = p.depth + Feet(1);
    question.pools.pools.push_back(other);
  }
  for (const Part& part : test::genericShelf().parts) {
    if (isTipOrCoated(part) && question.shelf.parts.size() < 60) question.shelf.parts.push_back(part);
  }
  return question;
}

void wallet(benchmark::State& state) {
  const WalletQuestion question = trip();
  Wallet packed;
  for (auto _ : state) packed = pack(question, walletGrid(question));
  state.counters["tips"] = double(question.shelf.parts.size());
  state.counters["pools"] = double(question.pools.pools.size());
  state.counters["flies"] = double(question.rigs.size());
  state.counters["packed"] = double(packed.tips.size());
  state.counters["proven"] = packed.proven ? 1 : 0;
}
BENCHMARK(wallet)->UseRealTime()->Unit(benchmark::kMillisecond);

void fixes(benchmark::State& state) {
  const char* const faulty[] = {"wrong-hinge", "wrong-anvil", "wrong-fat-fly", "wrong-no-grip"};
  const FixQuestion question{test::sampleRig(faulty[state.range(0)]), test::genericShelf(), std::nullopt,
                             std::nullopt, {}};
  state.SetLabel(faulty[state.range(0)]);
  Fixes found;
  for (auto _ : state) found = fixesFor(question);
  state.counters["tried"] = double(trialsFor(question).size());
  state.counters["found"] = double(found.now.size() + found.later.size());
}
BENCHMARK(fixes)->DenseRange(0, 3)->UseRealTime()->Unit(benchmark::kMillisecond);

std::vector<Feet> lengths(std::mt19937& random, int count, int from_in, int to_in, double more_ft) {
  std::uniform_int_distribution<int> inches(from_in, to_in);
  std::vector<Feet> all;
  for (int i = 0; i < count; ++i) all.emplace_back(more_ft + inches(random) / 12.0);
  return all;
}

void cutsInBulk(benchmark::State& state) {
  std::mt19937 random(5);
  const auto cuts = lengths(random, int(state.range(0)), 24, 180, 0);
  const std::vector<Feet> spools(std::size_t(state.range(0)), Feet(30));
  CuttingPlan plan;
  for (auto _ : state) plan = planCuts(cuts, spools);
  state.counters["opened"] = double(plan.spools.size());
  state.counters["bound"] = double(plan.leastOpened);
  state.counters["unplaced"] = double(plan.unplaced.size());
}
BENCHMARK(cutsInBulk)->Arg(50)->Arg(100)->Arg(200)->Arg(400)->Unit(benchmark::kMillisecond);

/// The most that is laid out exactly: 12 cuts from 40 spools.
void exactCuts(benchmark::State& state) {
  std::mt19937 random(9);
  const auto cuts = lengths(random, 12, 24, 120, 0);
  const auto spools = lengths(random, 40, 24, 120, 10);
  CuttingPlan plan;
  for (auto _ : state) plan = planCuts(cuts, spools);
  state.counters["exact"] = plan.exact ? 1 : 0;
}
BENCHMARK(exactCuts)->Unit(benchmark::kMillisecond);

struct Twelve {
  std::vector<Feet> cuts, spools{Feet(30), Feet(22.5)};
  Twelve() {
    std::mt19937 random(77);
    std::uniform_int_distribution<int> eighths(8, 80);
    for (int i = 0; i < 12; ++i) cuts.emplace_back(eighths(random) / 8.0);
  }
};

void twelveCuts(benchmark::State& state) {
  const Twelve task;
  CuttingPlan plan;
  for (auto _ : state) plan = planCuts(task.cuts, task.spools);
  state.counters["left_ft"] = test::scoreOf(plan, task.cuts).left;
  state.counters["placed"] = double(test::scoreOf(plan, task.cuts).placed);
}
BENCHMARK(twelveCuts)->Unit(benchmark::kMillisecond);

/// The peer: every way to cut, one after the other.
void twelveCutsByTrying(benchmark::State& state) {
  const Twelve task;
  test::Score best;
  for (auto _ : state) best = test::BruteForce(task.cuts, task.spools).best;
  state.counters["left_ft"] = best.left;
  state.counters["placed"] = double(best.placed);
}
BENCHMARK(twelveCutsByTrying)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
