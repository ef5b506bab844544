// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/shelf_model.h"

#include <QMimeData>
#include <QPainter>
#include <algorithm>

#include "ui/strip/part_payload.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr int kCardWidth = 232;
constexpr int kCardHeight = 62;
constexpr double kShapeWidth = 58;
}  // namespace

void ShelfModel::setParts(std::vector<Part> parts) {
  beginResetModel();
  m_cards.clear();
  m_heaviest = 1;
  m_longest = 1;
  for (Part& part : parts) {
    Rig alone;
    alone.parts.push_back(part);
    const MassProfile profile = massProfile(alone);
    Silhouette shape = silhouetteOf(part, profile, 0);
    m_heaviest = std::max(m_heaviest, shape.heaviest());
    m_longest = std::max(m_longest, part.length().value());
    m_cards.push_back({std::move(part), std::move(shape), profile.places.front().mass()});
  }
  endResetModel();
}

QString ShelfModel::figures(int row) const {
  const Card& card = m_cards[std::size_t(row)];
  const DisplayUnits units = m_look->units();
  if (card.part.kind == PartKind::fly) {
    const Fly& fly = *card.part.fly;
    return tr("%1 dry, %2 wet").arg(massNumber(fly.dry, units), massText(fly.wetMass(), units));
  }
  const GrainsPerFoot mean = card.mass / card.part.length();
  const QString length = lengthText(card.part.length(), units);
  if (card.part.kind == PartKind::head) return tr("%1, %2").arg(length, massText(card.mass, units));
  return tr("%1, %2, %3").arg(length, lineMassText(mean, units), massText(card.mass, units));
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(m_cards.size());
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const QString name = partWords(part(index.row()), m_look->units());
  switch (role) {
    case Qt::DisplayRole:
      return name;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return name + QStringLiteral(": ") + figures(index.row());
    default:
      return {};
  }
}

Qt::ItemFlags ShelfModel::flags(const QModelIndex& index) const {
  if (!index.isValid()) return Qt::NoItemFlags;
  return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDragEnabled;
}

QStringList ShelfModel::mimeTypes() const {
  return {QStringLiteral("application/x-grainwise-part+json")};
}

QMimeData* ShelfModel::mimeData(const QModelIndexList& indexes) const {
  if (indexes.isEmpty()) return nullptr;
  Part dragged = part(indexes.first().row());
  dragged.id.reset();
  dragged.group.reset();
  return mimeOf({dragged, std::nullopt});
}

QSize ShelfCardPainter::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
  return {m_look->px(kCardWidth), m_look->px(kCardHeight)};
}

void ShelfCardPainter::paint(QPainter* p, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  p->save();
  p->setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const bool chosen = option.state & QStyle::State_Selected;
  const bool focused = option.state & QStyle::State_HasFocus;
  const QRectF card = QRectF(option.rect).adjusted(3, 3, -3, -3);
  p->setBrush(c.card);
  p->setPen(QPen(chosen || focused ? c.river : c.edge, focused ? 2 : 1));
  p->drawRoundedRect(card, 6, 6);
  const Silhouette& shape = m_model->silhouette(index.row());
  const Part& part = m_model->part(index.row());
  const double most = m_look->px(kShapeWidth);
  QRectF place(card.left() + m_look->px(8), card.top() + 4, most, card.height() - 8);
  p->save();
  p->setClipRect(place.adjusted(-4, 0, 4, 0));
  if (shape.isFly) {
    paintFly(*p, place, shape, c);
  } else {
    // To scale among the cards shown: the longest fills the place.
    const double share = std::max(0.1, part.length().value() / m_model->longest());
    place.setWidth(most * share);
    place.moveLeft(card.left() + m_look->px(8) + (most - place.width()) / 2);
    paintLine(*p, place, shape, m_look->px(34) / std::max(m_model->heaviest(), 12.0), c);
  }
  p->restore();
  const QRectF words(card.left() + m_look->px(8) + most + m_look->px(10), card.top() + m_look->px(6),
                     card.right() - card.left() - most - m_look->px(26), card.height() - m_look->px(12));
  p->setPen(c.ink);
  p->setFont(m_look->font(15, true));
  QString name = index.data(Qt::DisplayRole).toString();
  // A fly's figures stand below; its name alone is its caption here.
  if (shape.isFly && part.name) name = QString::fromStdString(*part.name);
  p->drawText(words, Qt::AlignLeft | Qt::AlignTop,
              p->fontMetrics().elidedText(name, Qt::ElideRight, int(words.width())));
  p->setPen(c.slate);
  p->setFont(m_look->font(14));
  p->drawText(words, Qt::AlignLeft | Qt::AlignBottom,
              p->fontMetrics().elidedText(m_model->figures(index.row()), Qt::ElideRight, int(words.width())));
  p->restore();
}

}  // namespace grainwise::ui
