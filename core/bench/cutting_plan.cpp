// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/cutting_plan.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <numeric>
#include <optional>

namespace grainwise {
namespace {

constexpr double kRounding_ft = 1e-6;
using Set = std::uint16_t;  // of cuts, a bit each
constexpr std::uint8_t kNever = std::numeric_limits<std::uint8_t>::max();

/// What it costs to place a set: spools opened, then feet on them.
struct Cost {
  std::uint8_t opened = kNever;
  double feet = 0.0;
  [[nodiscard]] bool betterThan(const Cost& other) const {
    if (opened != other.opened) return opened < other.opened;
    return opened != kNever && feet < other.feet - kRounding_ft;
  }
};

std::vector<double> sumsOf(const std::vector<Feet>& cuts) {
  std::vector<double> sums(std::size_t{1} << cuts.size(), 0.0);
  for (std::size_t set = 1; set < sums.size(); ++set) {
    const auto low = static_cast<std::size_t>(std::countr_zero(set));
    sums[set] = sums[set & (set - 1)] + cuts[low].value();
  }
  return sums;
}

/// The set of most cuts, then most feet, then least cost, that can be placed.
std::size_t bestSet(const std::vector<Cost>& costs, const std::vector<double>& sums) {
  std::size_t best = 0;
  for (std::size_t set = 1; set < costs.size(); ++set) {
    if (costs[set].opened == kNever) continue;
    const int more = std::popcount(set) - std::popcount(best);
    const double longer = sums[set] - sums[best];
    const bool equal = more == 0 && std::abs(longer) <= kRounding_ft;
    const bool better = more > 0 || (more == 0 && longer > kRounding_ft);
    if (better || (equal && costs[set].betterThan(costs[best]))) best = set;
  }
  return best;
}

void finish(CuttingPlan& plan, const std::vector<Feet>& cuts, const std::vector<Feet>& spools) {
  const auto longer = [&](std::size_t a, std::size_t b) { return cuts[a] > cuts[b]; };
  for (auto& load : plan.spools) {
    std::stable_sort(load.cuts.begin(), load.cuts.end(), longer);
    Feet used;
    for (const std::size_t cut : load.cuts) used += cuts[cut];
    load.left = std::max(Feet(0), spools[load.spool] - used);
  }
  std::sort(plan.spools.begin(), plan.spools.end(),
            [](const auto& a, const auto& b) { return a.spool < b.spool; });
}

CuttingPlan exactPlan(const std::vector<Feet>& cuts, const std::vector<Feet>& spools,
                      const std::vector<std::size_t>& usable) {
  const auto sums = sumsOf(cuts);
  const std::size_t sets = sums.size();
  std::vector<Cost> costs(sets);
  costs[0].opened = 0;
  std::vector<std::vector<Set>> taken(usable.size(), std::vector<Set>(sets, 0));
  for (std::size_t s = 0; s < usable.size(); ++s) {
    const double room = spools[usable[s]].value();
    std::vector<Cost> next = costs;
    for (std::size_t set = 1; set < sets; ++set) {
      for (std::size_t load = set; load != 0; load = (load - 1) & set) {
        const Cost& rest = costs[set ^ load];
        if (rest.opened == kNever || sums[load] > room + kRounding_ft) continue;
        const Cost with{static_cast<std::uint8_t>(rest.opened + 1), rest.feet + room};
        if (!with.betterThan(next[set])) continue;
        next[set] = with;
        taken[s][set] = static_cast<Set>(load);
      }
    }
    costs = std::move(next);
  }
  CuttingPlan plan;
  std::size_t open = bestSet(costs, sums);
  plan.leastOpened = costs[open].opened;
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    if ((open >> i & 1U) == 0) plan.unplaced.push_back(i);
  }
  for (std::size_t s = usable.size(); s-- > 0;) {
    const std::size_t load = taken[s][open];
    if (load == 0) continue;
    CuttingPlan::Spool& spool = plan.spools.emplace_back();
    spool.spool = usable[s];
    for (std::size_t i = 0; i < cuts.size(); ++i) {
      if ((load >> i & 1U) != 0) spool.cuts.push_back(i);
    }
    open ^= load;
  }
  finish(plan, cuts, spools);
  return plan;
}

/// Best fit, longest cut first, on the given spools.
CuttingPlan bestFit(const std::vector<Feet>& cuts, const std::vector<std::size_t>& longestFirst,
                    const std::vector<Feet>& spools, const std::vector<std::size_t>& onto) {
  std::vector<double> room;
  for (const std::size_t s : onto) room.push_back(spools[s].value());
  std::vector<std::vector<std::size_t>> loads(onto.size());
  CuttingPlan plan;
  for (const std::size_t cut : longestFirst) {
    const double length = cuts[cut].value();
    std::optional<std::size_t> tightest;
    for (std::size_t s = 0; s < onto.size(); ++s) {
      if (room[s] + kRounding_ft < length) continue;
      if (!tightest || room[s] < room[*tightest] - kRounding_ft) tightest = s;
    }
    if (!tightest) {
      plan.unplaced.push_back(cut);
      continue;
    }
    room[*tightest] -= length;
    loads[*tightest].push_back(cut);
  }
  for (std::size_t s = 0; s < onto.size(); ++s) {
    if (!loads[s].empty()) plan.spools.push_back({onto[s], loads[s], Feet(0)});
  }
  return plan;
}

/// Each load, the one with most left behind it first, moved to the shortest spool that holds it.
void shrink(CuttingPlan& plan, const std::vector<Feet>& spools,
            const std::vector<std::size_t>& usable) {
  std::vector<std::size_t> order(plan.spools.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
    return plan.spools[a].left > plan.spools[b].left;
  });
  for (const std::size_t i : order) {
    CuttingPlan::Spool& load = plan.spools[i];
    const double used = (spools[load.spool] - load.left).value();
    for (const std::size_t other : usable) {
      const bool open = std::any_of(plan.spools.begin(), plan.spools.end(),
                                    [&](const auto& spool) { return spool.spool == other; });
      const double length = spools[other].value();
      if (open || length + kRounding_ft < used) continue;
      if (length < spools[load.spool].value() - kRounding_ft) load.spool = other;
    }
  }
}

/// The least number of spools whose lengths together reach `feet`; `longest` in falling order.
std::size_t leastSpools(double feet, const std::vector<std::size_t>& longest,
                        const std::vector<Feet>& spools) {
  double sum = 0.0;
  std::size_t count = 0;
  while (count < longest.size() && sum + kRounding_ft < feet) sum += spools[longest[count++]].value();
  return count;
}

CuttingPlan quickPlan(const std::vector<Feet>& cuts, const std::vector<Feet>& spools,
                      const std::vector<std::size_t>& usable) {
  std::vector<std::size_t> order(cuts.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return cuts[a] > cuts[b]; });
  std::vector<std::size_t> longest = usable;
  std::stable_sort(longest.begin(), longest.end(),
                   [&](std::size_t a, std::size_t b) { return spools[a] > spools[b]; });
  double wanted = 0.0;
  for (const Feet cut : cuts) wanted += cut.value();
  std::size_t count = leastSpools(wanted, longest, spools);
  CuttingPlan plan;
  do {
    const std::vector<std::size_t> onto(longest.begin(),
                                        longest.begin() + static_cast<std::ptrdiff_t>(count));
    plan = bestFit(cuts, order, spools, onto);
  } while (!plan.unplaced.empty() && count++ < longest.size());
  std::sort(plan.unplaced.begin(), plan.unplaced.end());
  finish(plan, cuts, spools);
  shrink(plan, spools, usable);
  finish(plan, cuts, spools);
  double placed = wanted;
  for (const std::size_t cut : plan.unplaced) placed -= cuts[cut].value();
  plan.exact = false;
  plan.leastOpened = leastSpools(placed, longest, spools);
  return plan;
}

}  // namespace

CuttingPlan planCuts(const std::vector<Feet>& cuts, const std::vector<Feet>& spools) {
  if (cuts.empty()) return {};
  const Feet shortest = *std::min_element(cuts.begin(), cuts.end());
  std::vector<std::size_t> usable;
  for (std::size_t s = 0; s < spools.size(); ++s) {
    if (spools[s].value() + kRounding_ft >= shortest.value()) usable.push_back(s);
  }
  const bool few = cuts.size() <= kMostExactCuts && usable.size() <= kMostExactSpools;
  return few ? exactPlan(cuts, spools, usable) : quickPlan(cuts, spools, usable);
}

}  // namespace grainwise
