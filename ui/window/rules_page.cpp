// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/rules_page.h"

#include <QPushButton>
#include <algorithm>
#include <cmath>

#include "ui/text/rule_words.h"
#include "ui/text/words.h"
#include "ui/window/value_row.h"

namespace grainwise::ui {
namespace {

/// A share as the per cent that a person reads, without the dust of the conversion.
double asShown(const RuleRow& row, double value) {
  constexpr double kFinest = 1e9;
  return row.unit == RuleUnit::share ? std::round(value * shownAs(row.unit) * kFinest) / kFinest : value;
}

ValueSpec specOf(const RuleRow& row) {
  ValueSpec spec;
  spec.object = QLatin1String(row.key);
  spec.object.replace(QLatin1Char('/'), QLatin1Char('_'));
  spec.name = capital(ruleWords(row));
  spec.measure = measureOf(row.unit);
  spec.limit = {row.what, row.unit == RuleUnit::share ? "%" : "", asShown(row, row.low), asShown(row, row.high)};
  spec.unit = unitWords(row.unit, {});
  return spec;
}

}  // namespace

RulesPage::RulesPage(SettingsDesk* desk, const char* name, const QString& intro,
                     const std::vector<RuleGroup>& groups, QWidget* parent)
    : SettingsPage(desk, name, parent) {
  addWords(intro);
  m_reset = addButton("resetPage", tr("Put this page back to usual"), [this] { resetAll(); });
  for (const RuleGroup group : groups) {
    addHeading(groupWords(group));
    for (const RuleRow& row : ruleRows()) {
      if (row.group != group) continue;
      auto* field = new ValueRow(look(), specOf(row), inside());
      add(field);
      m_rows.emplace_back(&row, field);
      connect(field, &ValueRow::typed, this,
              [this, &row, field](double value) { take(row, field, value / shownAs(row.unit)); });
      connect(field, &ValueRow::resetWanted, this,
              [this, &row, field] { take(row, field, row.get(Rules{})); });
    }
  }
  end();
  connect(desk->preferences(), &Preferences::rulesChanged, this, &RulesPage::refresh);
  connect(look(), &Look::changed, this, &RulesPage::refresh);
  refresh();
}

void RulesPage::take(const RuleRow& row, ValueRow* field, double value) {
  Rules rules = desk()->preferences()->rules();
  row.set(rules, value);
  if (const auto problem = problemOf(rules, row)) {
    field->refuse(problemWords(*problem, rules, look()->units()));
    return;
  }
  if (rules == desk()->preferences()->rules()) return refresh();  // what was refused is taken back
  desk()->preferences()->setRules(rules);
}

void RulesPage::resetAll() {
  Rules rules = desk()->preferences()->rules();
  for (const auto& [row, field] : m_rows) row->set(rules, row->get(Rules{}));
  desk()->preferences()->setRules(rules);
  refresh();
}

void RulesPage::refresh() {
  const Rules& rules = desk()->preferences()->rules();
  bool allUsual = true;
  for (const auto& [row, field] : m_rows) {
    const double usual = row->get(Rules{});
    const bool isUsual = row->get(rules) == usual;
    allUsual = allUsual && isUsual;
    field->setValue(asShown(*row, row->get(rules)),
                    tr("usual: %1, %2", "the usual value, whose it is")
                        .arg(valueWords(*row, usual, look()->units()), originWords(row->origin)),
                    isUsual);
  }
  m_reset->setEnabled(!allUsual);
}

}  // namespace grainwise::ui
