// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "core/bench/scale_log.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QHBoxLayout;
class QLabel;
class QPlainTextEdit;
class QPushButton;

namespace grainwise::ui {

class OwnStore;

/// A scale log or a list of tips, pasted or from a file: what each column is can be changed, every line
/// that cannot be read is told, the rest becomes own parts.
class ListPage : public MakePage {
  Q_OBJECT
 public:
  ListPage(Look* look, OwnStore* store, QWidget* parent);

  QString readFile(const QString& path);
  std::function<QString()> askPath;

 protected:
  void restyle() override;

 private:
  void guess();
  void showColumns();
  void read();
  void keep();

  OwnStore* m_store;
  QPlainTextEdit* m_text;
  QHBoxLayout* m_columns;
  QList<QComboBox*> m_boxes;
  QLabel* m_words;
  QPushButton* m_keep;
  LogMapping m_mapping;
  std::vector<Part> m_parts;
};

}  // namespace grainwise::ui
