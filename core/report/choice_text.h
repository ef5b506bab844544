// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/choose/advice.h"
#include "core/choose/choose.h"
#include "core/choose/fixes.h"
#include "core/choose/wallet.h"

/// What the commands `choose`, `wallet` and `fix` print, as text and as JSON (formats
/// grainwise-choice, grainwise-wallet and grainwise-fixes, version 1).
namespace grainwise {

/// The answer for one pool.
struct PoolChoice {
  std::optional<Pool> pool;
  Choice choice;
  std::vector<WaterChange> advice;
};

std::string choiceText(const Rig& rig, const Shelf& shelf, const std::vector<PoolChoice>& pools);
std::string choiceJson(const Rig& rig, const Shelf& shelf, const std::vector<PoolChoice>& pools,
                       const Rules& rules);

std::string walletText(const WalletQuestion& question, const WalletGrid& grid,
                       const Wallet& wallet);
std::string walletJson(const WalletQuestion& question, const WalletGrid& grid,
                       const Wallet& wallet);

std::string fixesText(const FixQuestion& question, const Fixes& fixes);
std::string fixesJson(const FixQuestion& question, const Fixes& fixes);

}  // namespace grainwise
