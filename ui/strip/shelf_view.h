// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/model/shelf.h"
#include "ui/theme/look.h"

class QLabel;
class QLineEdit;
class QListView;
class QListWidget;

namespace grainwise::ui {

class RigDocument;
class ShelfModel;

/// The Shelf drawer: groups at the left, the parts of one group as cards with silhouette and figures; typing
/// in the field searches all groups. A card is dragged up onto the line, or placed with Enter.
class ShelfView : public QWidget {
  Q_OBJECT
 public:
  ShelfView(Look* look, RigDocument* document, QWidget* parent = nullptr);

  void setShelf(const Shelf& shelf);
  [[nodiscard]] QListView* cards() const { return m_cards; }
  [[nodiscard]] QLineEdit* search() const { return m_search; }
  [[nodiscard]] QListWidget* groups() const { return m_groups; }
  [[nodiscard]] ShelfModel* model() const { return m_model; }

 Q_SIGNALS:
  void refused(const QString& why);

 private:
  void showParts();
  void place(int row);
  void applyLook();

  Look* m_look;
  RigDocument* m_document;
  Shelf m_shelf;
  QLineEdit* m_search;
  QListWidget* m_groups;
  QListView* m_cards;
  QLabel* m_nothing;
  ShelfModel* m_model;
};

}  // namespace grainwise::ui
