// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <vector>

#include "core/bench/cutting_plan.h"

/// Every way to cut, tried one after the other: what a cutting plan is measured against.
namespace grainwise::test {

inline constexpr double kRounding_ft = 1e-6;  // two lengths within this are one length on any bench

/// What a plan is judged by: cuts placed, feet placed, spools opened, feet left on those.
struct Score {
  std::size_t placed = 0;
  double feet = 0;
  std::size_t opened = 0;
  double left = 0;
  [[nodiscard]] bool betterThan(const Score& other) const {
    if (placed != other.placed) return placed > other.placed;
    if (std::abs(feet - other.feet) > kRounding_ft) return feet > other.feet;
    if (opened != other.opened) return opened < other.opened;
    return left < other.left - kRounding_ft;
  }
};

inline Score scoreOf(const CuttingPlan& plan, const std::vector<Feet>& cuts) {
  Score score;
  for (const auto& spool : plan.spools) {
    score.placed += spool.cuts.size();
    for (const std::size_t cut : spool.cuts) score.feet += cuts[cut].value();
    score.left += spool.left.value();
  }
  score.opened = plan.spools.size();
  return score;
}

/// Every way to put every cut on every spool or on none, one after the other.
class BruteForce {
 public:
  BruteForce(const std::vector<Feet>& cuts, const std::vector<Feet>& spools)
      : m_cuts(cuts), m_spools(spools), m_used(spools.size(), 0.0), m_count(spools.size(), 0) {
    place(0);
  }
  Score best;

 private:
  void place(std::size_t cut) {
    if (cut == m_cuts.size()) return judge();
    place(cut + 1);  // left out
    for (std::size_t s = 0; s < m_spools.size(); ++s) {
      const double length = m_cuts[cut].value();
      if (m_used[s] + length > m_spools[s].value() + kRounding_ft) continue;
      m_used[s] += length;
      ++m_count[s];
      place(cut + 1);
      --m_count[s];
      m_used[s] -= length;
    }
  }
  void judge() {
    Score score;
    for (std::size_t s = 0; s < m_spools.size(); ++s) {
      if (m_count[s] == 0) continue;
      score.placed += static_cast<std::size_t>(m_count[s]);
      score.feet += m_used[s];
      score.left += m_spools[s].value() - m_used[s];
      ++score.opened;
    }
    if (score.betterThan(best)) best = score;
  }

  const std::vector<Feet>& m_cuts;
  const std::vector<Feet>& m_spools;
  std::vector<double> m_used;
  std::vector<int> m_count;
};

}  // namespace grainwise::test
