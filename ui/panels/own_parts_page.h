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

class AnalysisFeed;
class OwnStore;
class PartEditor;
class RigDocument;

/// The person's own parts: kept from the line, edited in every figure, copied, removed with undo,
/// searched, read from a file and written to one. A part that stands on the line keeps its figures when
/// the one on the shelf is edited; putting the new one in is offered.
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
  QWidget* buttonRow();
  void connectAll();
  void refresh();
  void say(const QString& words);
  void fillList();
  /// Puts the chosen part under the editor.
  void load();
  /// Takes what was edited onto the shelf.
  void takeEdit();
  void refreshOffer();
  /// The parts of the line that are the chosen one by name, or as it was when it was chosen, with other
  /// figures.
  [[nodiscard]] std::vector<std::size_t> onLine() const;
  void putIn();
  void keepFromLine();
  void copy();
  void removePart();
  void place();
  void writeFile();
  [[nodiscard]] const Part* chosen() const;

  RigDocument* m_document;
  OwnStore* m_store;
  QLineEdit* m_search;
  QListWidget* m_list;
  RigDocument* m_edited;  ///< the chosen part by itself, for the editor
  AnalysisFeed* m_editedFeed;
  PartEditor* m_editor;
  QComboBox* m_fromLine;
  QLabel* m_said;
  QPushButton* m_keep;
  QLabel* m_offer;
  QPushButton* m_putIn;
  QPushButton* m_copy;
  QPushButton* m_remove;
  QPushButton* m_place;
  QPushButton* m_undo;
  QPushButton* m_read;
  QPushButton* m_write;
  std::vector<std::size_t> m_shown;  ///< indices into the own shelf
  std::string m_chosen;              ///< id of the chosen part
  Part m_was;                        ///< the chosen part as it was when it was chosen
  bool m_filling = false;
};

}  // namespace grainwise::ui
