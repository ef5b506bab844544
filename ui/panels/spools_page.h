// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>

#include "core/model/spool.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTableWidget;

namespace grainwise::ui {

class NumberField;
class OwnStore;

/// What is left on the spools: a table whose names and feet are edited in place, new spools, a file in
/// and out.
class SpoolsPage : public MakePage {
  Q_OBJECT
 public:
  SpoolsPage(Look* look, OwnStore* store, QWidget* parent);

  /// Reads a list of spools in place of the one that is there (undo brings it back); says why not.
  QString readFile(const QString& path);
  std::function<QString()> askReadPath;
  std::function<QString()> askWritePath;

 protected:
  void restyle() override;

 private:
  void refresh();
  void addSpool();
  void removeSpool();
  void writeFile();
  void edited(int row, int column);
  void showFields();

  OwnStore* m_store;
  QTableWidget* m_table;
  QComboBox* m_kind;
  NumberField* m_mass;
  NumberField* m_rate;
  NumberField* m_diameter;
  NumberField* m_feet;
  std::optional<double> m_massTyped, m_rateTyped, m_diameterTyped, m_feetTyped;
  QLabel* m_begin;
  QLabel* m_said;
  QPushButton* m_remove;
  QPushButton* m_undo;
  bool m_filling = false;
};

}  // namespace grainwise::ui
