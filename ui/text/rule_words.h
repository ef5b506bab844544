// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/analysis/rule_table.h"
#include "ui/text/quantities.h"

/// The limits of the verdicts in the person's language (core/analysis/rule_table.h).
namespace grainwise::ui {

QString ruleWords(const RuleRow& row);
/// Whether the name of a limit stands in the list of texts to translate.
bool ruleWordsKnown(const RuleRow& row);
QString groupWords(RuleGroup group);
/// "common practice" or "ours".
QString originWords(RuleOrigin origin);

/// What a limit is typed in.
Measure measureOf(RuleUnit unit);
/// The unit behind its name; nothing for a bare number.
QString unitWords(RuleUnit unit, DisplayUnits units);
/// A share is read and typed as per cent.
double shownAs(RuleUnit unit);
/// The figure with its unit: "33 %", "6 ft", "1.55".
QString valueWords(const RuleRow& row, double value, DisplayUnits units);
/// What is wrong with a limit, and what would be right.
QString problemWords(const RuleProblem& problem, const Rules& rules, DisplayUnits units);

}  // namespace grainwise::ui
