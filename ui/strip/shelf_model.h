// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractListModel>
#include <QStyledItemDelegate>
#include <vector>

#include "core/model/shelf.h"
#include "ui/strip/silhouette.h"
#include "ui/theme/kept_picture.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// A part of the Shelf with all that its card shows; worked out when it is first shown or searched.
struct ShelfCard {
  explicit ShelfCard(const Part& of) : part(&of) {}

  const Part* part;  ///< of the shelf that the model keeps
  bool ready = false;
  Silhouette shape;
  Grains mass;
  QString name;
  QString figures;  ///< what the name does not say: "110 gr, sinks 7.5 in/s"
  QString found;    ///< what it can be found by
};

/// The cards that the Shelf shows just now: those of one group, or those that some words find. Each can
/// be dragged as a part of our format.
class ShelfModel : public QAbstractListModel {
  Q_OBJECT
 public:
  ShelfModel(Look* look, QObject* parent);

  void setShelf(const SharedShelf& shelf);
  [[nodiscard]] bool holds(const SharedShelf& shelf) const { return m_shelf == shelf; }
  void showGroup(const QString& group);
  void showFound(const QString& words);

  [[nodiscard]] const ShelfCard& card(int row) const { return m_cards[m_shown[std::size_t(row)]]; }
  [[nodiscard]] const Part& part(int row) const { return *card(row).part; }
  /// Heaviest foot and longest part of all that are shown, for one scale.
  [[nodiscard]] double heaviest() const { return m_heaviest; }
  [[nodiscard]] double longest() const { return m_longest; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
  [[nodiscard]] QStringList mimeTypes() const override;
  [[nodiscard]] QMimeData* mimeData(const QModelIndexList& indexes) const override;
  [[nodiscard]] Qt::DropActions supportedDragActions() const override { return Qt::CopyAction; }

 private:
  void prepare(ShelfCard& card) const;
  void say(ShelfCard& card) const;
  template <class Wanted>
  void show(Wanted wanted);

  Look* m_look;
  SharedShelf m_shelf;
  std::vector<ShelfCard> m_cards;
  std::vector<std::size_t> m_shown;
  double m_heaviest = 1;
  double m_longest = 1;
};

/// Paints a card: silhouette to the scale of all that are shown, name, figures.
class ShelfCardPainter : public QStyledItemDelegate {
  Q_OBJECT
 public:
  ShelfCardPainter(Look* look, const ShelfModel* model, QObject* parent)
      : QStyledItemDelegate(parent), m_look(look), m_model(model) {}
  void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  [[nodiscard]] static int heightFor(const Look& look);
  [[nodiscard]] static int leastWidthFor(const Look& look);

 private:
  /// What the picture of an empty card is made of. Many of one size are shown at once.
  struct EmptyCard {
    QSize size;
    QColor fill, edge;
    double pen;
    double scale;
    bool operator==(const EmptyCard&) const = default;
  };
  static void drawEmpty(QPainter& p, const EmptyCard& card);
  void paintShape(QPainter& p, const QRectF& place, const ShelfCard& card) const;

  Look* m_look;
  const ShelfModel* m_model;
  mutable KeptPicture<EmptyCard> m_plainCard, m_chosenCard;
};

}  // namespace grainwise::ui
