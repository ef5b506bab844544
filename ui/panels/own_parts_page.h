// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <vector>

#include "core/model/part.h"
#include "ui/panels/make_page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;

namespace grainwise::ui {

class OwnStore;
class RigDocument;

/// The person's own parts: kept from the line, edited on the line and kept again, copied, removed with
/// undo, searched, read from a file and written to one.
class OwnPartsPage : public MakePage {
  Q_OBJECT
 public:
  OwnPartsPage(Look* look, RigDocument* document, OwnStore* store, QWidget* parent);

  QString readFile(const QString& path);
  std::function<QString()> askReadPath;
  std::function<QString()> askWritePath;

 protected:
  void restyle() override;
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  void say(const QString& words);
  void keepFromLine();
  void rename();
  void copy();
  void removePart();
  void place();
  void writeFile();
  [[nodiscard]] const Part* chosen() const;

  RigDocument* m_document;
  OwnStore* m_store;
  QLineEdit* m_search;
  QListWidget* m_list;
  QLineEdit* m_name;
  QComboBox* m_fromLine;
  QLabel* m_said;
  QPushButton* m_keep;
  QPushButton* m_rename;
  QPushButton* m_copy;
  QPushButton* m_remove;
  QPushButton* m_place;
  QPushButton* m_undo;
  QPushButton* m_write;
  std::vector<std::size_t> m_shown;  ///< indices into the own shelf
};

}  // namespace grainwise::ui
