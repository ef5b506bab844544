// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "core/choose/advice.h"
#include "core/choose/choose.h"
#include "core/choose/fixes.h"
#include "core/choose/wallet.h"
#include "ui/theme/look.h"

/// What the window says of choosing, packing and mending.
namespace grainwise::ui {

Grade gradeOf(Standing standing);

/// The name of a choice: its part's, or "no tip".
QString choiceName(const Shelf& shelf, const std::optional<std::size_t>& part, DisplayUnits units);
/// "2.7–4.4 ft down", "on the bottom", "on top"; empty where no depth is known.
QString choiceDepth(const std::optional<DepthFit>& depth, DisplayUnits units);
QString bandWords(const DepthBand& band, bool onBottom, DisplayUnits units);
/// "3.0–4.5 ft down".
QString wantedWords(const WantedWater& wanted, DisplayUnits units);
/// The one sentence of a choice: what speaks for it, what is to be watched, or why it is refused.
QString choiceSentence(const TipChoice& choice, const std::optional<WantedWater>& wanted,
                       DisplayUnits units);
/// What a tip is chosen by: "joint", "tip share", "turnover".
QString criterionName(Criterion criterion);
/// Its grades, one a line: "joint: 92 %".
QString gradeWords(const TipChoice& choice);
/// What is lacking and what to do next; empty for none.
QString needWords(ChoiceNeed need);
/// The same where a trip is packed for.
QString walletNeedWords(ChoiceNeed need);
/// "same stroke, slower lift".
QString strokeWords(const Stroke& stroke);
QString adviceWords(const WaterChange& change, DisplayUnits units);

/// "cut 2.5 ft off the fly end of 10 ft, 14 gr/ft".
QString changeWords(const Change& change, DisplayUnits units);
/// The step's name in the undo menu.
QString changeStep(const Change& change);
/// "repairs the joint; same stroke".
QString fixWords(const Fix& fix);
/// "the joint, the depth": what is wrong or to be watched.
QString readingList(const std::vector<Reading>& readings);

/// Why a pool and fly have nothing in the wallet.
QString uncoveredWords(const WalletUse& use, const Shelf& shelf, const WalletGrid& grid,
                       DisplayUnits units);

}  // namespace grainwise::ui
