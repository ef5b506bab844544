// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/wallet.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <tuple>

#include "core/choose/cover.h"
#include "core/choose/two_threads.h"

namespace grainwise {
namespace {

constexpr double kLengthStep = 20.0;  // lengths nearer than half of 1/20 ft are one
constexpr std::size_t kSpares = 2;
constexpr std::size_t kCriteria = 9;  // one reason more outweighs all grades

/// What a trip lacks before anything can be packed for it.
ChoiceNeed needOf(const WalletQuestion& question, const WalletGrid& grid) {
  if (question.rigs.empty()) return ChoiceNeed::head;
  if (std::find(grid.usable.begin(), grid.usable.end(), true) == grid.usable.end()) {
    return rigNeed(question.rigs.front());
  }
  if (question.pools.pools.empty()) return ChoiceNeed::pool;
  return hasTips(question.shelf) ? ChoiceNeed::none : ChoiceNeed::shelf;
}

WalletCell cellOf(const TipChoice& choice) {
  WalletCell cell;
  cell.standing = choice.standing;
  cell.score = choice.score;
  const Grade worst = choice.standing == Standing::rejected ? Grade::wrong : Grade::watch;
  for (const Judged& j : choice.judged) {
    if (j.zone == worst && !cell.reason) cell.reason = j.criterion;
    cell.nearness += j.grade;
  }
  cell.nearness -= static_cast<double>(kCriteria * choice.reasons());
  if (const auto& depth = choice.figures.depth) {
    cell.way = depth->way;
    cell.band = depth->band;
    cell.onBottom = isOnBottom(depth->state);
  }
  return cell;
}

/// A demand as the solver sees it: a pool and a rig that no bare head serves.
struct Demand {
  std::size_t rig, pool;
};

/// The cover of one set of tips.
struct Packed {
  Cover cover;
  std::optional<Feet> length;
};

bool better(const Packed& a, const Packed& b) {
  return std::make_tuple(a.cover.covered, -static_cast<long long>(a.cover.chosen.size()),
                         a.cover.grade) >
         std::make_tuple(b.cover.covered, -static_cast<long long>(b.cover.chosen.size()),
                         b.cover.grade);
}

class Packing {
 public:
  Packing(const WalletQuestion& question, const WalletGrid& grid, const std::stop_token& stop)
      : m_question(question), m_grid(grid), m_stop(stop) {
    for (std::size_t pool = 0; pool < grid.pools; ++pool) {
      for (std::size_t rig = 0; rig < grid.rigs; ++rig) {
        if (grid.usable[rig] && !bareHeadServes(rig, pool)) m_demands.push_back({rig, pool});
      }
    }
  }

  Wallet run() {
    const Packed packed = m_question.oneLength ? bestOfLengths() : solve(std::nullopt);
    Wallet wallet;
    wallet.proven = packed.cover.proven && m_proven;
    wallet.stopped = m_stop.stop_requested();
    wallet.length = packed.length;
    for (const std::size_t t : packed.cover.chosen) m_chosen.push_back(t + 1);
    sortBySize();
    for (const std::size_t t : m_chosen) wallet.tips.push_back(*m_grid.tips[t]);
    uses(wallet);
    spares(wallet);
    wallet.need = needOf(m_question, m_grid);
    wallet.proven = wallet.proven && wallet.need == ChoiceNeed::none;
    if (wallet.need == ChoiceNeed::none && wallet.uncovered() == wallet.uses.size()) {
      wallet.need = ChoiceNeed::nothingFits;
    }
    return wallet;
  }

 private:
  /// Without a tip, where that fits; with one length it would be another stroke.
  [[nodiscard]] bool bareHeadServes(std::size_t rig, std::size_t pool) const {
    return !m_question.oneLength && m_grid.at(0, rig, pool).standing == Standing::fits;
  }

  [[nodiscard]] const Part& partOf(std::size_t tip) const {
    return m_question.shelf.parts[*m_grid.tips[tip]];
  }

  /// What is good enough for a demand: tips that fit, or, where none does, those to be watched.
  [[nodiscard]] Standing standardOf(const Demand& d) const {
    for (std::size_t t = 1; t < m_grid.tips.size(); ++t) {
      if (m_grid.at(t, d.rig, d.pool).standing == Standing::fits) return Standing::fits;
    }
    return Standing::watch;
  }

  Packed solve(const std::optional<long long>& length) {
    CoverProblem problem;
    problem.most = m_question.most;
    const auto gridIndex = [&](std::size_t shelf) -> std::optional<std::size_t> {
      for (std::size_t t = 1; t < m_grid.tips.size(); ++t) {
        if (*m_grid.tips[t] == shelf) return t - 1;
      }
      return std::nullopt;
    };
    for (const std::size_t shelf : m_question.keep) {
      if (const auto t = gridIndex(shelf)) problem.keep.push_back(*t);
    }
    for (const std::size_t shelf : m_question.leaveOut) {
      if (const auto t = gridIndex(shelf)) problem.leaveOut.push_back(*t);
    }
    for (const Demand& d : m_demands) {
      const Standing standard = standardOf(d);
      std::vector<double> row(m_grid.tips.size() - 1, 0.0);
      for (std::size_t t = 1; t < m_grid.tips.size(); ++t) {
        const WalletCell& cell = m_grid.at(t, d.rig, d.pool);
        if (cell.standing > standard || (length && lengthKey(t) != *length)) continue;
        row[t - 1] = std::max(cell.score, 1e-6);
      }
      problem.grades.push_back(std::move(row));
    }
    Packed packed;
    packed.cover = leastCover(problem, m_stop);
    if (length) packed.length = Feet(static_cast<double>(*length) / kLengthStep);
    return packed;
  }

  [[nodiscard]] long long lengthKey(std::size_t tip) const {
    return std::llround(partOf(tip).length().value() * kLengthStep);
  }

  Packed bestOfLengths() {
    std::set<long long> lengths;
    for (std::size_t t = 1; t < m_grid.tips.size(); ++t) lengths.insert(lengthKey(t));
    std::optional<Packed> best;
    for (const long long length : lengths) {
      Packed packed = solve(length);
      m_proven = m_proven && packed.cover.proven;
      if (!best || better(packed, *best)) best = std::move(packed);
    }
    return best.value_or(Packed{});
  }

  void sortBySize() {
    const auto key = [&](std::size_t t) {
      const TipSize size = tipSize(partOf(t));
      return std::make_tuple(size.mean.value(), size.sinking.value(), size.length.value(), t);
    };
    std::sort(m_chosen.begin(), m_chosen.end(),
              [&](std::size_t a, std::size_t b) { return key(a) < key(b); });
  }

  void uses(Wallet& wallet) const {
    for (std::size_t pool = 0; pool < m_grid.pools; ++pool) {
      for (std::size_t rig = 0; rig < m_grid.rigs; ++rig) {
        if (m_grid.usable[rig]) wallet.uses.push_back(useOf(rig, pool));
      }
    }
  }

  [[nodiscard]] WalletUse useOf(std::size_t rig, std::size_t pool) const {
    WalletUse use;
    use.rig = rig;
    use.pool = pool;
    const WalletCell& bare = m_grid.at(0, rig, pool);
    if (bareHeadServes(rig, pool)) {
      use.served = true;
      use.cell = bare;
    }
    for (std::size_t slot = 0; slot < m_chosen.size(); ++slot) {
      const WalletCell& cell = m_grid.at(m_chosen[slot], rig, pool);
      if (cell.standing == Standing::rejected) continue;
      const bool bareIsEnough = use.served && !use.slot && cell.standing != Standing::fits;
      if (bareIsEnough || (use.served && std::make_tuple(use.cell.standing, -use.cell.score) <=
                                             std::make_tuple(cell.standing, -cell.score))) {
        continue;
      }
      use.served = true;
      use.slot = slot;
      use.cell = cell;
    }
    if (!use.served) explain(use);
    return use;
  }

  static double worth(const WalletCell& cell) {
    return cell.standing == Standing::rejected ? cell.nearness : cell.score;
  }

  /// Of what does not serve, the one that comes nearest.
  void explain(WalletUse& use) const {
    for (std::size_t t = 0; t < m_grid.tips.size(); ++t) {
      const WalletCell& cell = m_grid.at(t, use.rig, use.pool);
      const bool nearer = !use.nearest || cell.standing < use.cell.standing ||
                          (cell.standing == use.cell.standing && worth(cell) > worth(use.cell));
      if (!nearer) continue;
      use.nearest = t;
      use.cell = cell;
    }
    use.beyondLimit = use.cell.standing != Standing::rejected;
  }

  static void spares(Wallet& wallet) {
    std::vector<std::size_t> used(wallet.tips.size(), 0);
    for (const WalletUse& use : wallet.uses) {
      if (use.slot) ++used[*use.slot];
    }
    std::vector<std::size_t> slots;
    for (std::size_t slot = 0; slot < used.size(); ++slot) {
      if (used[slot] > 0) slots.push_back(slot);
    }
    std::stable_sort(slots.begin(), slots.end(),
                     [&](std::size_t a, std::size_t b) { return used[a] > used[b]; });
    slots.resize(std::min(slots.size(), kSpares));
    wallet.spares = std::move(slots);
  }

  const WalletQuestion& m_question;
  const WalletGrid& m_grid;
  const std::stop_token& m_stop;
  std::vector<Demand> m_demands;
  std::vector<std::size_t> m_chosen;  ///< grid indices, by slot
  bool m_proven = true;
};

}  // namespace

std::size_t Wallet::uncovered() const {
  return static_cast<std::size_t>(std::count_if(
      uses.begin(), uses.end(), [](const WalletUse& use) { return !use.served; }));
}

WalletGrid walletGrid(const WalletQuestion& question, const std::stop_token& stop,
                      const std::function<void(double)>& progress) {
  WalletGrid grid;
  grid.rigs = question.rigs.size();
  grid.pools = question.pools.pools.size();
  grid.tips.emplace_back(std::nullopt);
  for (std::size_t i = 0; i < question.shelf.parts.size(); ++i) {
    if (isTipOrCoated(question.shelf.parts[i])) grid.tips.emplace_back(i);
  }
  std::vector<std::optional<StrokeBasis>> strokes;
  for (const Rig& rig : question.rigs) {
    grid.usable.push_back(rigNeed(rig) == ChoiceNeed::none);
    strokes.push_back(grid.usable.back() ? strokeAsItStands(rig) : std::nullopt);
  }
  grid.cells.resize(grid.tips.size() * grid.rigs * grid.pools);
  const auto fill = [&](std::size_t i) {
    const std::size_t t = i / grid.rigs, r = i % grid.rigs;
    if (!grid.usable[r]) return;
    const Part* tip = grid.tips[t] ? &question.shelf.parts[*grid.tips[t]] : nullptr;
    const TipTrial trial(withTip(question.rigs[r], tip), question.conditions, strokes[r]);
    const TipChoice dry = trial.refusedInAir() ? trial.inAir() : TipChoice{};
    for (std::size_t p = 0; p < grid.pools; ++p) {
      grid.cells[i * grid.pools + p] =
          cellOf(trial.refusedInAir() ? dry : trial.inWater(question.pools.pools[p]));
    }
  };
  grid.stopped = !forEachOnTwo(grid.tips.size() * grid.rigs, fill, stop, progress);
  return grid;
}

Wallet pack(const WalletQuestion& question, const WalletGrid& grid, const std::stop_token& stop) {
  if (grid.stopped) {
    Wallet wallet;
    wallet.stopped = true;
    return wallet;
  }
  return Packing(question, grid, stop).run();
}

}  // namespace grainwise
