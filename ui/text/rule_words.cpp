// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/rule_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cstring>

namespace grainwise::ui {
namespace {

class RuleWords {
  Q_DECLARE_TR_FUNCTIONS(RuleWords)
};

/// The names of core/analysis/rule_table.cpp.
constexpr std::array kNames{
    QT_TRANSLATE_NOOP("RuleWords", "a joint hinges over this ratio, fly side to rod side"),
    QT_TRANSLATE_NOOP("RuleWords", "over this it hinges unless the stroke is slow and open"),
    QT_TRANSLATE_NOOP("RuleWords", "over this it steps up and has to be forced"),
    QT_TRANSLATE_NOOP("RuleWords", "under this it is a drop, no longer level"),
    QT_TRANSLATE_NOOP("RuleWords", "under this the front collapses"),
    QT_TRANSLATE_NOOP("RuleWords", "line on each side whose mean is taken"),
    QT_TRANSLATE_NOOP("RuleWords", "bare nylon up to this length has no rule"),
    QT_TRANSLATE_NOOP("RuleWords", "longer nylon is stout enough from this ratio on"),
    QT_TRANSLATE_NOOP("RuleWords", "longer nylon piles under this ratio"),
    QT_TRANSLATE_NOOP("RuleWords", "a head fits within this of the rod's window"),
    QT_TRANSLATE_NOOP("RuleWords", "beyond this it is the wrong head"),
    QT_TRANSLATE_NOOP("RuleWords", "short head with its tip: too short under"),
    QT_TRANSLATE_NOOP("RuleWords", "short head with its tip: usual from"),
    QT_TRANSLATE_NOOP("RuleWords", "short head with its tip: usual to"),
    QT_TRANSLATE_NOOP("RuleWords", "short head with its tip: too long over"),
    QT_TRANSLATE_NOOP("RuleWords", "short head on a single-hand rod: too short under"),
    QT_TRANSLATE_NOOP("RuleWords", "short head on a single-hand rod: usual from"),
    QT_TRANSLATE_NOOP("RuleWords", "short head on a single-hand rod: usual to"),
    QT_TRANSLATE_NOOP("RuleWords", "short head on a single-hand rod: too long over"),
    QT_TRANSLATE_NOOP("RuleWords", "fine taper: too short under"),
    QT_TRANSLATE_NOOP("RuleWords", "fine taper: usual from"),
    QT_TRANSLATE_NOOP("RuleWords", "fine taper: usual to"),
    QT_TRANSLATE_NOOP("RuleWords", "fine taper: too long over"),
    QT_TRANSLATE_NOOP("RuleWords", "long belly with its tip: too short under"),
    QT_TRANSLATE_NOOP("RuleWords", "long belly with its tip: usual from"),
    QT_TRANSLATE_NOOP("RuleWords", "long belly with its tip: usual to"),
    QT_TRANSLATE_NOOP("RuleWords", "long belly with its tip: too long over"),
    QT_TRANSLATE_NOOP("RuleWords", "no grip under this share of the head"),
    QT_TRANSLATE_NOOP("RuleWords", "light under this"),
    QT_TRANSLATE_NOOP("RuleWords", "right up to this"),
    QT_TRANSLATE_NOOP("RuleWords", "too much tip over this"),
    QT_TRANSLATE_NOOP("RuleWords", "right up to this on a fine taper or long belly"),
    QT_TRANSLATE_NOOP("RuleWords", "too little in the water under this, head to fly"),
    QT_TRANSLATE_NOOP("RuleWords", "enough in the water from this on"),
    QT_TRANSLATE_NOOP("RuleWords", "much in the water over this"),
    QT_TRANSLATE_NOOP("RuleWords", "the tip carries a fly when it weighs this many times as much"),
    QT_TRANSLATE_NOOP("RuleWords", "under this the fly is too heavy for the tip"),
    QT_TRANSLATE_NOOP("RuleWords", "line that is weighed against the fly"),
    QT_TRANSLATE_NOOP("RuleWords", "nylon longer than this is weighed against the fly too"),
    QT_TRANSLATE_NOOP("RuleWords", "such nylon carries the fly from this many times its weight on"),
    QT_TRANSLATE_NOOP("RuleWords", "under this the fly is too heavy for the leader"),
    QT_TRANSLATE_NOOP("RuleWords", "lands in a heap under this, line speed against the least that turns over"),
    QT_TRANSLATE_NOOP("RuleWords", "probably does not turn over under this"),
    QT_TRANSLATE_NOOP("RuleWords", "speed to spare from this on"),
    QT_TRANSLATE_NOOP("RuleWords", "the front does not carry under this, pull against need"),
    QT_TRANSLATE_NOOP("RuleWords", "the front carries from this on"),
    QT_TRANSLATE_NOOP("RuleWords", "front of the line in which that is asked"),
    QT_TRANSLATE_NOOP("RuleWords", "the fly dies under this share of the line speed"),
    QT_TRANSLATE_NOOP("RuleWords", "it arrives firmly from this on"),
    QT_TRANSLATE_NOOP("RuleWords", "it arrives lively from this on"),
    QT_TRANSLATE_NOOP("RuleWords", "it kicks over this"),
    QT_TRANSLATE_NOOP("RuleWords", "behind a joint that steps up by more than this, lively is a kick"),
    QT_TRANSLATE_NOOP("RuleWords", "the fly is too bulky when the nylon keeps less of its speed"),
    QT_TRANSLATE_NOOP("RuleWords", "the same stroke within this change of working length"),
    QT_TRANSLATE_NOOP("RuleWords", "a different cast from this change of length on"),
    QT_TRANSLATE_NOOP("RuleWords", "the same stroke within this change of weight"),
    QT_TRANSLATE_NOOP("RuleWords", "a different cast from this change of weight on"),
    QT_TRANSLATE_NOOP("RuleWords", "a slower lift from this much more sinking line"),
    QT_TRANSLATE_NOOP("RuleWords", "a weighed part is as meant within this"),
    QT_TRANSLATE_NOOP("RuleWords", "a drop down to this ratio has the full grade"),
    QT_TRANSLATE_NOOP("RuleWords", "grade where a joint starts to step up"),
    QT_TRANSLATE_NOOP("RuleWords", "tip share of a short head with the full grade"),
    QT_TRANSLATE_NOOP("RuleWords", "grade where the tip share turns light or heavy"),
    QT_TRANSLATE_NOOP("RuleWords", "line from head to fly with the full grade"),
    QT_TRANSLATE_NOOP("RuleWords", "grade where that line turns short"),
    QT_TRANSLATE_NOOP("RuleWords", "wanted this near the bottom, lying on it is right"),
    QT_TRANSLATE_NOOP("RuleWords", "grade where the stroke becomes a different cast"),
    QT_TRANSLATE_NOOP("RuleWords", "grade of the most different cast"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: the worst joint"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: tip share"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: line from head to fly"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: working length"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: fly against tip"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: pull of the front"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: line speed to spare"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: depth"),
    QT_TRANSLATE_NOOP("RuleWords", "weight of: change of the stroke"),
};

constexpr int kDecimals = 3;

}  // namespace

QString ruleWords(const RuleRow& row) { return QCoreApplication::translate("RuleWords", row.what); }

bool ruleWordsKnown(const RuleRow& row) {
  return std::any_of(kNames.begin(), kNames.end(),
                     [&](const char* name) { return std::strcmp(name, row.what) == 0; });
}

QString groupWords(RuleGroup group) {
  switch (group) {
    case RuleGroup::joints:
      return RuleWords::tr("Joints");
    case RuleGroup::headOnRod:
      return RuleWords::tr("Head on rod and working length");
    case RuleGroup::tipShare:
      return RuleWords::tr("Tip share and line in the water");
    case RuleGroup::fly:
      return RuleWords::tr("Fly against tip and leader");
    case RuleGroup::turnover:
      return RuleWords::tr("Turnover");
    case RuleGroup::stroke:
      return RuleWords::tr("Stroke");
    case RuleGroup::weighIn:
      return RuleWords::tr("Weigh-in");
    case RuleGroup::grades:
      return RuleWords::tr("Grades from 0 to 1, between the limits");
    case RuleGroup::weights:
      break;
  }
  return RuleWords::tr("How much each counts in the ranking; at 0 it only refuses");
}

QString originWords(RuleOrigin origin) {
  return origin == RuleOrigin::ours ? RuleWords::tr("ours") : RuleWords::tr("common practice");
}

Measure measureOf(RuleUnit unit) {
  return unit == RuleUnit::feet ? Measure::length : unit == RuleUnit::grains ? Measure::mass : Measure::plain;
}

QString unitWords(RuleUnit unit, DisplayUnits units) {
  switch (unit) {
    case RuleUnit::share:
      return QStringLiteral("%");
    case RuleUnit::rods:
      return RuleWords::tr("rods");
    case RuleUnit::feet:
    case RuleUnit::grains:
      return unitOf(measureOf(unit), units);
    default:
      return {};
  }
}

double shownAs(RuleUnit unit) { return unit == RuleUnit::share ? 100.0 : 1.0; }

QString valueWords(const RuleRow& row, double value, DisplayUnits units) {
  const double shown = shownValue(value, measureOf(row.unit), units) * shownAs(row.unit);
  const QString unit = unitWords(row.unit, units);
  const QString figure = numberText(shown, kDecimals);
  return unit.isEmpty() ? figure : RuleWords::tr("%1 %2", "a figure, its unit").arg(figure, unit);
}

QString problemWords(const RuleProblem& problem, const Rules& rules, DisplayUnits units) {
  const RuleRow& row = *problem.row;
  if (problem.over != nullptr) {
    return RuleWords::tr("Must be over %1: %2")
        .arg(valueWords(*problem.over, problem.over->get(rules), units), ruleWords(*problem.over));
  }
  if (problem.under != nullptr) {
    return RuleWords::tr("Must be under %1: %2")
        .arg(valueWords(*problem.under, problem.under->get(rules), units), ruleWords(*problem.under));
  }
  return RuleWords::tr("Outside what is possible; give %1 to %2.")
      .arg(valueWords(row, row.low, units), valueWords(row, row.high, units));
}

}  // namespace grainwise::ui
