// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <vector>

#include "core/model/part.h"
#include "ui/strip/silhouette.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// The parts that the Shelf shows just now. Each can be dragged as a part of our format.
class ShelfModel : public QAbstractListModel {
  Q_OBJECT
 public:
  ShelfModel(Look* look, QObject* parent) : QAbstractListModel(parent), m_look(look) {}

  void setParts(std::vector<Part> parts);
  [[nodiscard]] const Part& part(int row) const { return m_cards[std::size_t(row)].part; }
  [[nodiscard]] const Silhouette& silhouette(int row) const { return m_cards[std::size_t(row)].shape; }
  /// "10 ft, 11 gr/ft, 110 gr".
  [[nodiscard]] QString figures(int row) const;
  /// Heaviest foot of all cards, for one scale.
  [[nodiscard]] double heaviest() const { return m_heaviest; }
  /// Longest of all cards, in feet.
  [[nodiscard]] double longest() const { return m_longest; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  [[nodiscard]] QStringList mimeTypes() const override;
  [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;
  [[nodiscard]] Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

 private:
  struct Card {
    Part part;
    Silhouette shape;
    Grains mass;
  };
  Look* m_look;
  std::vector<Card> m_cards;
  double m_heaviest = 1;
  double m_longest = 1;
};

/// Paints a card: silhouette, name, figures.
class ShelfCardPainter : public QStyledItemDelegate {
  Q_OBJECT
 public:
  ShelfCardPainter(Look* look, const ShelfModel* model, QObject* parent)
      : QStyledItemDelegate(parent), m_look(look), m_model(model) {}
  void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  Look* m_look;
  const ShelfModel* m_model;
};

}  // namespace grainwise::ui
