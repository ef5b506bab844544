// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/choose/advice.h"
#include "core/choose/choose.h"
#include "core/choose/fixes.h"
#include "core/choose/wallet.h"

/// The words of `choose`, `wallet` and `fix`, and their keys in JSON, which never change with a
/// language; the window has its own words (ui/text).
namespace grainwise::words {

/// Keys: "junction", "tip-share", "fits", "swap-tip", ...
const char* keyOf(Criterion criterion);
const char* keyOf(Standing standing);
const char* keyOf(ChoiceNeed need);
const char* keyOf(Reading reading);
const char* keyOf(ChangeKind kind);
const char* keyOf(WaterHandle handle);

/// The name of a choice: its part's, or "no tip".
std::string nameOf(const Shelf& shelf, const std::optional<std::size_t>& part);

/// "2.7-4.4 ft down", "on the bottom", "on top"; empty where no depth is known.
std::string depthText(const std::optional<DepthFit>& depth);
/// "3.0-4.5 ft down".
std::string wantedText(const WantedWater& wanted);

/// What one criterion says of a rig, in its zone.
std::string criterionText(Criterion criterion, const TipFigures& figures,
                          const std::optional<WantedWater>& wanted);
/// The one sentence of a choice: what speaks for one that fits, else what is to be watched or why it
/// is refused, the worst first, at most three.
std::string choiceSentence(const TipChoice& choice, const std::optional<WantedWater>& wanted);
/// The reasons that refuse it, one a line.
std::vector<std::string> choiceReasons(const TipChoice& choice,
                                       const std::optional<WantedWater>& wanted);

/// What is lacking and what to do next; empty for none.
std::string needText(ChoiceNeed need);

/// The same where a trip is packed for.
std::string walletNeedText(ChoiceNeed need);

/// "angle 65 instead of 45 degrees: 3.4 ft down, in the wanted water".
std::string adviceText(const WaterChange& change);

/// "cut 2.5 ft off the fly end of 10 ft, 14 gr/ft".
std::string changeText(const Change& change);
/// "the joint", "tip share", ...: what a reading is called.
const char* of(Reading reading);
/// "repairs the joint and the tip share; same stroke".
std::string fixText(const Fix& fix);

/// Why a pool and fly have nothing in the wallet.
std::string uncoveredText(const WalletUse& use, const Shelf& shelf, const WalletGrid& grid);

}  // namespace grainwise::words
