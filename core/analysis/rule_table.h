// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/analysis/rules.h"

namespace grainwise {

/// Where a limit comes from.
enum class RuleOrigin { ours, commonPractice };

/// What a limit is counted in; a share is held as a part of one and read as per cent.
enum class RuleUnit { ratio, share, rods, feet, grains, grade, weight };
/// "ft", "gr", "rods", or nothing for a bare number.
std::string unitOf(RuleUnit unit);

enum class RuleGroup { joints, headOnRod, tipShare, fly, turnover, stroke, weighIn, grades, weights };

/// One limit: its key in files, its name in plain words, whose it is, and the values that it may take.
struct RuleRow {
  const char* key;  ///< "joints/hinge": group and name, never renamed
  RuleGroup group;
  const char* what;
  RuleUnit unit;
  RuleOrigin origin;
  double low;  ///< both ends included
  double high;
  double (*get)(const Rules&);
  void (*set)(Rules&, double);
};

/// Every member of `Rules`, each once, in the order in which they are read.
const std::vector<RuleRow>& ruleRows();
/// The row with that key; nullptr for none.
const RuleRow* ruleRow(const std::string& key);

/// What is wrong with one limit: outside what it may be, or not over one that lies below it, or not under
/// one that lies above.
struct RuleProblem {
  const RuleRow* row = nullptr;
  const RuleRow* over = nullptr;   ///< must be over this one
  const RuleRow* under = nullptr;  ///< must be under this one
};

/// Everything that is wrong with `rules`: at most one problem a row, in the order of the rows. Of two that
/// stand in the wrong order both are named.
std::vector<RuleProblem> problemsOf(const Rules& rules);
/// What is wrong with one of them.
std::optional<RuleProblem> problemOf(const Rules& rules, const RuleRow& row);

/// The same rules with what is wrong put back to its default, and with it what it must keep its order with.
/// Nothing is wrong with the result.
Rules soundRules(Rules rules);

}  // namespace grainwise
