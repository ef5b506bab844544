// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <stop_token>
#include <vector>

namespace grainwise {

/// Which things to take so that every demand is served by one of them. `grades[d][t]` is how well
/// thing t serves demand d, 0 for not at all.
struct CoverProblem {
  std::vector<std::vector<double>> grades;
  std::vector<std::size_t> keep;      ///< things that are taken in any case
  std::vector<std::size_t> leaveOut;  ///< things that are not (a kept one is kept)
  std::optional<std::size_t> most;    ///< things at most, the kept ones among them
};

struct Cover {
  std::vector<std::size_t> chosen;  ///< in rising order
  std::size_t covered = 0;          ///< demands that are served
  double grade = 0.0;               ///< sum over the demands of the best grade
  bool proven = false;              ///< no better one exists; false only when stopped
  std::size_t nodes = 0;            ///< looked at for the proof
};

/// The best cover: most demands served, then fewest things, then the greatest sum of grades, then
/// the things that come first. Exact: branch and bound over bitsets of demands. Branches on the
/// demand that the fewest things serve; bounded below by demands that share no thing, above by the
/// greatest gains left and by the best grade of what may still be taken. Worst case exponential; 60
/// things and 96 demands take milliseconds.
Cover leastCover(const CoverProblem& problem, const std::stop_token& stop = {});

}  // namespace grainwise
