// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QStringList>

#include "core/compare/compare.h"
#include "ui/theme/look.h"

/// What the Compare face says about two rigs.
namespace grainwise::ui {

class CompareWords {
  Q_DECLARE_TR_FUNCTIONS(CompareWords)
};

/// "short head 525 becomes fine-taper head 480", "only A has: 10 ft, 11 gr/ft", "another rod".
QString differenceTitle(const Difference& difference, const Rig& a, const Rig& b,
                        DisplayUnits units);
/// "3 ft longer, 45 gr heavier, 2.5 ft of it sink instead of 10"; empty where the title says it all.
QString differenceFacts(const Difference& difference, DisplayUnits units);

/// One thing that a difference does.
struct EffectWords {
  QString words;                 ///< "lies 1.2 ft deeper (0.8 to 1.7)"
  std::optional<Grade> becomes;  ///< where the verdict of B is another
};
EffectWords effectWords(const Consequence& consequence, DisplayUnits units);
/// Of what is within the uncertainty: what is no different for certain, "depth, turnover".
QString withinWords(const std::vector<Consequence>& list);

/// "1.4 to 2.9 ft".
QString rangeText(double low_ft, double high_ft, DisplayUnits units);
/// B against A in a few words for the table of readings; empty where there is none.
QString depthDifferenceWords(const Consequence& depth, DisplayUnits units);
QString strokeDifferenceWords(const Stroke& stroke);

}  // namespace grainwise::ui
