// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QHash>
#include <functional>
#include <string>
#include <vector>

#include "core/bench/scale_log.h"
#include "ui/panels/make_page.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace grainwise::ui {

class OwnStore;

/// A scale log or a list of tips, pasted or from a file. A table shows its lines as they will be read:
/// what parts the columns, whether the first line names them and what each column is can be changed;
/// behind each line stands the tip that it becomes, or why it becomes none.
class ListPage : public MakePage {
  Q_OBJECT
 public:
  ListPage(Look* look, OwnStore* store, QWidget* parent);

  QString readFile(const QString& path);
  std::function<QString()> askPath;

 protected:
  void restyle() override;

 private:
  QWidget* mappingRow();
  void guess();
  void separate(int which);
  void showMapping();
  void showColumns();
  void read();
  /// `answers`: what each line becomes, by its number.
  void showLines(const QHash<int, QString>& answers);
  void keep();

  OwnStore* m_store;
  QPlainTextEdit* m_text;
  QComboBox* m_separator;
  QCheckBox* m_heading;
  QTableWidget* m_table;
  QList<QComboBox*> m_boxes;
  QLabel* m_words;
  QPushButton* m_keep;
  std::string m_read;  ///< the text as it is read
  LogMapping m_mapping;
  std::vector<Part> m_parts;
};

}  // namespace grainwise::ui
