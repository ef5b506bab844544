// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <numeric>
#include <random>
#include <set>

#include "core/bench/cutting_plan.h"
#include "tests/support/every_cut.h"

using namespace grainwise;
using test::BruteForce;
using test::kRounding_ft;
using test::Score;
using test::scoreOf;

namespace {

std::vector<Feet> feet(std::initializer_list<double> lengths) {
  std::vector<Feet> all;
  for (const double length : lengths) all.emplace_back(length);
  return all;
}

void requireSound(const CuttingPlan& plan, const std::vector<Feet>& cuts,
                  const std::vector<Feet>& spools) {
  std::multiset<std::size_t> seen(plan.unplaced.begin(), plan.unplaced.end());
  std::set<std::size_t> opened;
  for (const auto& spool : plan.spools) {
    REQUIRE(opened.insert(spool.spool).second);
    REQUIRE_FALSE(spool.cuts.empty());
    double used = 0;
    for (const std::size_t cut : spool.cuts) {
      used += cuts[cut].value();
      seen.insert(cut);
    }
    REQUIRE(used <= spools[spool.spool].value() + kRounding_ft);
    REQUIRE(used + spool.left.value() == Approx(spools[spool.spool].value()).margin(kRounding_ft));
  }
  REQUIRE(seen.size() == cuts.size());
  for (std::size_t i = 0; i < cuts.size(); ++i) REQUIRE(seen.count(i) == 1);
}

}  // namespace

TEST_CASE("Cutting plan: random plans of up to six cuts are as good as every other way to cut") {
  std::mt19937 random(20260302);
  std::uniform_int_distribution<int> eighths(4, 96), many(1, 6), spoolCount(1, 4), room(0, 240);
  for (int round = 0; round < 250; ++round) {
    std::vector<Feet> cuts, spools;
    for (int i = many(random); i > 0; --i) cuts.emplace_back(eighths(random) / 8.0);
    for (int i = spoolCount(random); i > 0; --i) spools.emplace_back(room(random) / 8.0);
    const CuttingPlan plan = planCuts(cuts, spools);
    requireSound(plan, cuts, spools);
    const Score best = BruteForce(cuts, spools).best;
    const Score ours = scoreOf(plan, cuts);
    CAPTURE(round, ours.placed, best.placed, ours.opened, best.opened, ours.left, best.left);
    REQUIRE(plan.exact);
    REQUIRE_FALSE(best.betterThan(ours));
    REQUIRE_FALSE(ours.betterThan(best));
  }
}

TEST_CASE("Cutting plan: twelve cuts are still as good as every other way to cut") {
  std::mt19937 random(77);
  std::uniform_int_distribution<int> eighths(8, 80);
  for (int round = 0; round < 4; ++round) {
    std::vector<Feet> cuts;
    for (int i = 0; i < 12; ++i) cuts.emplace_back(eighths(random) / 8.0);
    const auto spools = feet({30, 22.5});
    const CuttingPlan plan = planCuts(cuts, spools);
    requireSound(plan, cuts, spools);
    REQUIRE(plan.exact);
    const Score best = BruteForce(cuts, spools).best;
    REQUIRE_FALSE(best.betterThan(scoreOf(plan, cuts)));
  }
}

TEST_CASE("Cutting plan: the end of a spool that fits is used before a full one is opened") {
  const auto plan = planCuts(feet({10.417}), feet({30, 12}));
  REQUIRE(plan.spools.size() == 1);
  CHECK(plan.spools[0].spool == 1);
  CHECK(plan.spools[0].left.value() == Approx(1.583));
}

TEST_CASE("Cutting plan: one spool opened is better than two with less left") {
  const auto plan = planCuts(feet({5, 5}), feet({5, 5, 30}));
  REQUIRE(plan.spools.size() == 1);
  CHECK(plan.spools[0].spool == 2);
}

TEST_CASE("Cutting plan: cuts that together are exactly the spool leave nothing") {
  const auto plan = planCuts(feet({10.0 + 5.0 / 12.0, 7.0 + 9.5 / 12.0, 5.0 + 3.5 / 12.0}),
                             feet({23.5}));
  CHECK(plan.unplaced.empty());
  REQUIRE(plan.spools.size() == 1);
  CHECK(plan.spools[0].left.value() == Approx(0).margin(kRounding_ft));
}

TEST_CASE("Cutting plan: a spool shorter than every cut is never opened, and nothing is lost") {
  const auto plan = planCuts(feet({3, 4}), feet({2.5, 0}));
  CHECK(plan.spools.empty());
  CHECK(plan.unplaced == std::vector<std::size_t>{0, 1});
  CHECK(planCuts({}, feet({2})).spools.empty());
  CHECK(planCuts(feet({3}), {}).unplaced == std::vector<std::size_t>{0});
}

TEST_CASE("Cutting plan: two hundred cuts are sound, and within two spools of the bound") {
  std::mt19937 random(5);
  std::uniform_int_distribution<int> inches(24, 180);
  std::vector<Feet> cuts;
  for (int i = 0; i < 200; ++i) cuts.emplace_back(inches(random) / 12.0);
  const std::vector<Feet> spools(80, Feet(30));
  const CuttingPlan plan = planCuts(cuts, spools);
  requireSound(plan, cuts, spools);
  CHECK(plan.unplaced.empty());
  CHECK_FALSE(plan.exact);
  CHECK(plan.spools.size() >= plan.leastOpened);
  CHECK(plan.spools.size() <= plan.leastOpened + 2);
}

TEST_CASE("Cutting plan: above twelve cuts what cannot be placed is told") {
  const std::vector<Feet> cuts(14, Feet(4));
  const CuttingPlan plan = planCuts(cuts, feet({30, 9}));
  requireSound(plan, cuts, feet({30, 9}));
  CHECK(plan.unplaced.size() == 5);
  CHECK(plan.leastOpened == 2);
}
