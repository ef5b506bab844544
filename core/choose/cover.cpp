// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/cover.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <limits>

namespace grainwise {
namespace {

/// A set of small numbers.
class Bits {
 public:
  explicit Bits(std::size_t size = 0) : m_words((size + 63) / 64, 0) {}
  void set(std::size_t i) { m_words[i / 64] |= std::uint64_t{1} << (i % 64); }
  void clear(std::size_t i) { m_words[i / 64] &= ~(std::uint64_t{1} << (i % 64)); }
  [[nodiscard]] bool has(std::size_t i) const { return (m_words[i / 64] >> (i % 64)) & 1U; }
  [[nodiscard]] std::size_t count() const {
    std::size_t n = 0;
    for (const auto w : m_words) n += static_cast<std::size_t>(std::popcount(w));
    return n;
  }
  [[nodiscard]] bool none() const {
    return std::all_of(m_words.begin(), m_words.end(), [](auto w) { return w == 0; });
  }
  void remove(const Bits& other) {
    for (std::size_t i = 0; i < m_words.size(); ++i) m_words[i] &= ~other.m_words[i];
  }
  void add(const Bits& other) {
    for (std::size_t i = 0; i < m_words.size(); ++i) m_words[i] |= other.m_words[i];
  }
  [[nodiscard]] std::size_t common(const Bits& other) const {
    std::size_t n = 0;
    for (std::size_t i = 0; i < m_words.size(); ++i) {
      n += static_cast<std::size_t>(std::popcount(m_words[i] & other.m_words[i]));
    }
    return n;
  }
  template <class F>
  void each(F&& f) const {
    for (std::size_t i = 0; i < m_words.size(); ++i) {
      for (auto w = m_words[i]; w != 0; w &= w - 1) {
        f(i * 64 + static_cast<std::size_t>(std::countr_zero(w)));
      }
    }
  }

 private:
  std::vector<std::uint64_t> m_words;
};

constexpr double kSameGrade = 1e-9;

class Search {
 public:
  Search(const CoverProblem& problem, const std::stop_token& stop)
      : m_problem(problem), m_stop(stop), m_demands(problem.grades.size()) {
    if (m_demands > 0) m_things = problem.grades.front().size();
    m_serves.assign(m_things, Bits(m_demands));
    m_servers.assign(m_demands, Bits(m_things));
    m_most = problem.most.value_or(std::numeric_limits<std::size_t>::max());
    m_most = std::max(m_most, problem.keep.size());
    for (std::size_t d = 0; d < m_demands; ++d) {
      for (std::size_t t = 0; t < m_things; ++t) {
        if (problem.grades[d][t] <= 0.0) continue;
        m_serves[t].set(d);
        m_servers[d].set(t);
      }
    }
  }

  Cover run() {
    Node root;
    root.open = Bits(m_demands);
    root.free = Bits(m_things);
    for (std::size_t t = 0; t < m_things; ++t) root.free.set(t);
    root.grade.assign(m_demands, 0.0);
    for (const std::size_t t : m_problem.leaveOut) {
      if (t < m_things) root.free.clear(t);
    }
    for (std::size_t d = 0; d < m_demands; ++d) root.open.set(d);
    for (const std::size_t t : m_problem.keep) {
      if (t < m_things && !contains(root.chosen, t)) take(root, t);
    }
    giveUpUnserved(root);
    m_giveUps = false;
    explore(root);
    if (!m_best.found && !m_stopped) {  // all of them take more than may be taken
      m_giveUps = true;
      explore(root);
    }
    Cover cover;
    cover.chosen = m_best.chosen;
    std::sort(cover.chosen.begin(), cover.chosen.end());
    cover.covered = m_best.covered;
    cover.grade = m_best.grade;
    cover.proven = !m_stopped && m_best.found;
    cover.nodes = m_nodes;
    return cover;
  }

 private:
  struct Node {
    std::vector<std::size_t> chosen;
    Bits open;  ///< demands neither served nor given up
    Bits free;  ///< things that may still be taken
    std::vector<double> grade;  ///< best so far of each demand
    std::size_t covered = 0;
  };
  struct Best {
    bool found = false;
    std::vector<std::size_t> chosen;
    std::size_t covered = 0;
    double grade = 0.0;
  };

  static bool contains(const std::vector<std::size_t>& list, std::size_t t) {
    return std::find(list.begin(), list.end(), t) != list.end();
  }

  void take(Node& node, std::size_t t) const {
    node.chosen.push_back(t);
    node.free.clear(t);
    node.open.remove(m_serves[t]);
    m_serves[t].each([&](std::size_t d) {
      if (node.grade[d] <= 0.0) ++node.covered;
      node.grade[d] = std::max(node.grade[d], m_problem.grades[d][t]);
    });
  }

  void giveUpUnserved(Node& node) const {
    for (std::size_t d = 0; d < m_demands; ++d) {
      if (node.open.has(d) && m_servers[d].common(node.free) == 0) node.open.clear(d);
    }
  }

  [[nodiscard]] std::size_t roomLeft(const Node& node) const {
    return m_most > node.chosen.size() ? m_most - node.chosen.size() : 0;
  }

  /// Things needed at least for what is open: demands that share no thing need one each.
  [[nodiscard]] std::size_t neededAtLeast(const Node& node) const {
    Bits used(m_things);
    std::size_t needed = 0;
    node.open.each([&](std::size_t d) {
      Bits servers = m_servers[d];
      Bits barred = servers;
      barred.remove(node.free);
      servers.remove(barred);
      if (servers.common(used) > 0) return;
      ++needed;
      used.add(servers);
    });
    return needed;
  }

  /// Demands that `room` more things can serve at most: the greatest gains.
  [[nodiscard]] std::size_t mostGain(const Node& node, std::size_t room) const {
    std::vector<std::size_t> gains;
    node.free.each([&](std::size_t t) {
      if (const std::size_t gain = m_serves[t].common(node.open); gain > 0) gains.push_back(gain);
    });
    room = std::min(room, gains.size());
    std::partial_sort(gains.begin(), gains.begin() + static_cast<std::ptrdiff_t>(room), gains.end(),
                      std::greater<>());
    std::size_t sum = 0;
    for (std::size_t i = 0; i < room; ++i) sum += gains[i];
    return std::min(sum, node.open.count());
  }

  /// Grade that may still be reached, with any of what is free taken.
  [[nodiscard]] double mostGrade(const Node& node) const {
    double sum = 0.0;
    for (std::size_t d = 0; d < m_demands; ++d) {
      double best = node.grade[d];
      for (std::size_t t = 0; t < m_things; ++t) {
        if (node.free.has(t)) best = std::max(best, m_problem.grades[d][t]);
      }
      sum += best;
    }
    return sum;
  }

  static bool earlier(std::vector<std::size_t> a, std::vector<std::size_t> b) {
    std::sort(a.begin(), a.end());
    std::sort(b.begin(), b.end());
    return a < b;
  }

  void offer(const Node& node) {
    double grade = 0.0;
    for (const double g : node.grade) grade += g;
    const bool first = !m_best.found;
    const bool better =
        first || node.covered > m_best.covered ||
        (node.covered == m_best.covered &&
         (node.chosen.size() < m_best.chosen.size() ||
          (node.chosen.size() == m_best.chosen.size() &&
           (grade > m_best.grade + kSameGrade ||
            (grade > m_best.grade - kSameGrade && earlier(node.chosen, m_best.chosen))))));
    if (better) m_best = {true, node.chosen, node.covered, grade};
  }

  /// Whether nothing below this node can be better than the best known.
  [[nodiscard]] bool bounded(const Node& node) const {
    const std::size_t room = roomLeft(node);
    const std::size_t open = node.open.count();
    if (!m_giveUps && neededAtLeast(node) > room) return true;
    if (!m_best.found) return false;
    const std::size_t reach = m_giveUps ? node.covered + mostGain(node, room) : node.covered + open;
    if (reach < m_best.covered) return true;
    if (reach > m_best.covered) return false;
    // As many demands at best: then all of what is within reach has to be served.
    const std::size_t needed = m_giveUps ? (open > 0 ? 1 : 0) : neededAtLeast(node);
    const std::size_t size = node.chosen.size() + needed;
    if (size > m_best.chosen.size()) return true;
    if (size < m_best.chosen.size()) return false;
    return mostGrade(node) < m_best.grade - kSameGrade;
  }

  /// The open demand that the fewest free things serve.
  [[nodiscard]] std::size_t hardest(const Node& node) const {
    std::size_t best = 0, fewest = std::numeric_limits<std::size_t>::max();
    node.open.each([&](std::size_t d) {
      const std::size_t n = m_servers[d].common(node.free);
      if (n < fewest) {
        fewest = n;
        best = d;
      }
    });
    return best;
  }

  void explore(const Node& node) {
    if (m_stopped || ((++m_nodes & 63U) == 0 && m_stop.stop_requested())) {
      m_stopped = true;
      return;
    }
    if (node.open.none()) {
      if (node.chosen.size() <= m_most) offer(node);
      return;
    }
    if (m_giveUps && node.chosen.size() <= m_most) offer(node);
    if (bounded(node)) return;
    const std::size_t demand = hardest(node);
    Node rest = node;
    if (roomLeft(node) > 0) {
      std::vector<std::size_t> order;
      m_servers[demand].each([&](std::size_t t) {
        if (node.free.has(t)) order.push_back(t);
      });
      std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return m_serves[a].common(node.open) > m_serves[b].common(node.open);
      });
      for (const std::size_t t : order) {
        Node next = rest;
        take(next, t);
        explore(next);
        rest.free.clear(t);  // further branches do without it
      }
    }
    if (!m_giveUps) return;
    rest.open.clear(demand);
    explore(rest);
  }

  const CoverProblem& m_problem;
  const std::stop_token& m_stop;
  std::size_t m_demands = 0, m_things = 0, m_most = 0;
  std::vector<Bits> m_serves;   ///< demands of a thing
  std::vector<Bits> m_servers;  ///< things of a demand
  Best m_best;
  bool m_giveUps = false;
  bool m_stopped = false;
  std::size_t m_nodes = 0;
};

}  // namespace

Cover leastCover(const CoverProblem& problem, const std::stop_token& stop) {
  return Search(problem, stop).run();
}

}  // namespace grainwise
