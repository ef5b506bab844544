// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <utility>
#include <vector>

#include "core/analysis/rule_table.h"
#include "ui/window/settings_page.h"

namespace grainwise::ui {

/// The limits of some groups, each with what is usual and whose that is. A number that cannot be is said
/// beside its field and changes nothing; one that can is judged by at once.
class RulesPage : public SettingsPage {
  Q_OBJECT
 public:
  RulesPage(SettingsDesk* desk, const char* name, const QString& intro, const std::vector<RuleGroup>& groups,
            QWidget* parent);

 private:
  void take(const RuleRow& row, ValueRow* field, double value);
  void resetAll();
  void refresh();

  std::vector<std::pair<const RuleRow*, ValueRow*>> m_rows;
  QPushButton* m_reset;
};

}  // namespace grainwise::ui
