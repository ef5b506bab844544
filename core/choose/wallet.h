// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/choose/choose.h"

namespace grainwise {

/// A trip: rigs whose heads and flies are along, pools to be fished, a shelf to pack from.
struct WalletQuestion {
  std::vector<Rig> rigs;  ///< each with a head and a fly; a tip in one says which stroke it is fished with
  Pools pools;
  Shelf shelf;
  std::optional<std::size_t> most;  ///< tips at most
  bool oneLength = false;           ///< tips of one length only, so that the stroke stays
  std::vector<std::size_t> keep;      ///< shelf indices that come along in any case
  std::vector<std::size_t> leaveOut;  ///< and those that stay at home
  Conditions conditions;
};

/// How a tip (or none) serves a pool and a fly.
struct WalletCell {
  Standing standing = Standing::rejected;
  double score = 0.0;
  double nearness = 0.0;  ///< of what is refused: the greater, the less is wrong with it
  std::optional<Criterion> reason;  ///< the first that refuses it, or that is to be watched
  DepthWay way = DepthWay::inside;
  std::optional<DepthBand> band;
  bool onBottom = false;
};

/// Every tip with every rig in every pool, and no tip at all; computed once a trip.
struct WalletGrid {
  std::vector<std::optional<std::size_t>> tips;  ///< shelf indices; the first is no tip
  std::size_t rigs = 0, pools = 0;
  std::vector<WalletCell> cells;
  std::vector<bool> usable;  ///< of the rigs: with head, fly and its mass
  bool stopped = false;
  [[nodiscard]] const WalletCell& at(std::size_t tip, std::size_t rig, std::size_t pool) const {
    return cells[(tip * rigs + rig) * pools + pool];
  }
};

/// Each cell stands as the chooser has it for that rig in that pool (choose.h), the stroke against the rig
/// as it stands among them. Cost: 0.3 ms a tip and fly, 0.05 ms more a pool, on two threads.
WalletGrid walletGrid(const WalletQuestion& question, const std::stop_token& stop = {},
                      const std::function<void(double)>& progress = {});

/// What fishes a pool with a fly.
struct WalletUse {
  std::size_t rig = 0, pool = 0;
  std::optional<std::size_t> slot;  ///< in the wallet, from 0; none with `served`: no tip at all
  bool served = false;
  WalletCell cell;                  ///< of what serves it, or of what comes nearest
  std::optional<std::size_t> nearest;  ///< unserved: grid index of the tip that comes nearest
  bool beyondLimit = false;         ///< a tip would serve it, but for the limits set
};

struct Wallet {
  /// What stands in the way of packing at all: no pool, no tip on the shelf, or what every rig of the
  /// trip lacks (the first one's). `nothingFits`: no pool and fly is served.
  ChoiceNeed need = ChoiceNeed::none;
  std::vector<std::size_t> tips;  ///< shelf indices, by grains per foot, then by what sinks
  std::vector<WalletUse> uses;    ///< pool by pool, rig by rig
  std::vector<std::size_t> spares;  ///< slots of the two most used
  std::optional<Feet> length;       ///< of all tips, with `oneLength`
  bool proven = false;  ///< no smaller wallet does it, and no equally small one better
  bool stopped = false;
  [[nodiscard]] std::size_t uncovered() const;
};

/// The least number of tips that leaves no pool and fly without one: a tip that fits, or, where none
/// on the shelf does, one that is to be watched. Of equally small wallets the one with the greatest
/// sum of grades. Pools that are fished without a tip take up no room. Exact (cover.h); with
/// `oneLength` over every length on the shelf.
Wallet pack(const WalletQuestion& question, const WalletGrid& grid,
            const std::stop_token& stop = {});

}  // namespace grainwise
