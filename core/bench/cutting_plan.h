// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

#include "core/units/trade.h"

namespace grainwise {

/// Up to so many cuts from up to so many spools are laid out exactly.
inline constexpr std::size_t kMostExactCuts = 12;
inline constexpr std::size_t kMostExactSpools = 40;

/// Which cut comes off which spool.
struct CuttingPlan {
  struct Spool {
    std::size_t spool = 0;          ///< index of the spool
    std::vector<std::size_t> cuts;  ///< indices of the cuts, the longest first
    Feet left;                      ///< on the spool behind them
  };
  std::vector<Spool> spools;          ///< those that are opened, in the order given
  std::vector<std::size_t> unplaced;  ///< cuts for which there is no line
  bool exact = true;                  ///< no plan is better
  std::size_t leastOpened = 0;        ///< no plan for the placed cuts opens fewer spools
};

/// Lays `cuts` on `spools` of one material (cutting stock with one dimension). The better plan is
/// the one with more cuts placed, then more feet placed, then fewer spools opened, then less left on
/// the spools that are opened; among equals the earlier spools.
/// Method: up to 12 cuts and 40 spools that hold one exactly, by dynamic programming over the sets of
/// cuts (3^cuts steps a spool, at most 0.2 s). Above: best fit, longest cut first, on the fewest
/// longest spools that take them all, then each load moved to the shortest spool that holds it;
/// `leastOpened` is the bound from the lengths alone. Lengths that differ by less than 1e-6 ft are
/// equal. Cuts must be over 0; shorter spools than that are never opened.
CuttingPlan planCuts(const std::vector<Feet>& cuts, const std::vector<Feet>& spools);

}  // namespace grainwise
