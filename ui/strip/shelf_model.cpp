// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/shelf_model.h"

#include <QListView>
#include <QMimeData>
#include <QPainter>
#include <QRegularExpression>
#include <algorithm>

#include "ui/strip/part_payload.h"
#include "ui/strip/shelf_search.h"
#include "ui/text/measured_words.h"
#include "ui/text/quantities.h"
#include "ui/text/shelf_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr int kCardHeight = 58;
constexpr int kLeastWidth = 300;
constexpr int kShapeWidth = 84;
constexpr double kCardEdge = 3.5;  ///< from its cell
constexpr double kShapeHeight = 36;
/// A single group of light things keeps this scale, so that they do not look heavy.
constexpr double kLeastHeaviest_gr_per_ft = 6;
constexpr double kLeastShape = 5;

/// "0.020 in" as "0.02 in": names give a diameter its three places, figures do not.
QString withoutZeros(QString words) {
  static const QRegularExpression zeros(QStringLiteral("([.,]\\d*[1-9])0+(?!\\d)"));
  return words.replace(zeros, QStringLiteral("\\1"));
}

QString sinkWords(const Part& part, DisplayUnits units) {
  for (const Section& section : part.sections) {
    if (section.sinkRate) return ShelfModel::tr("sinks %1").arg(sinkRateText(section, units));
  }
  return {};
}

QString diameterWords(const Part& part, DisplayUnits units) {
  if (part.sections.empty() || !part.sections.front().diameter) return {};
  const Inches rod = part.sections.front().diameter->rodEnd;
  const auto& last = part.sections.back().diameter;
  const QString from = diameterText(rod, units);
  return last && last->flyEnd != rod ? ShelfModel::tr("%1 to %2").arg(from, diameterText(last->flyEnd, units))
                                     : from;
}

QStringList flyFigures(const Part& part, DisplayUnits units) {
  const Fly& fly = *part.fly;
  QStringList all{ShelfModel::tr("%1 dry, %2 wet").arg(massNumber(fly.dry, units), massText(fly.wetMass(), units))};
  if (fly.sinksHeadFirst.value_or(false)) all << ShelfModel::tr("sinks head first");
  return all;
}

QStringList lineFigures(const ShelfCard& card, DisplayUnits units) {
  const Part& part = *card.part;
  const QString length = lengthText(part.length(), units);
  const QString mass = massText(card.mass, units);
  const GrainsPerFoot most(card.shape.heaviest());
  const GrainsPerFoot mean = part.length() > Feet(0) ? card.mass / part.length() : GrainsPerFoot(0);
  switch (part.kind) {
    case PartKind::head:
      return {length, mass, ShelfModel::tr("up to %1").arg(lineMassText(most, units)), sinkWords(part, units)};
    case PartKind::tip:
      return {length, lineMassText(mean, units), mass, sinkWords(part, units)};
    case PartKind::runningLine:
      return {length, diameterWords(part, units), lineMassText(mean, units)};
    default:
      return {length, diameterWords(part, units), mass, sinkWords(part, units)};
  }
}

}  // namespace

ShelfModel::ShelfModel(Look* look, QObject* parent) : QAbstractListModel(parent), m_look(look) {
  connect(look, &Look::changed, this, [this] {
    for (ShelfCard& each : m_cards) {
      if (each.ready) say(each);
    }
    if (!m_shown.empty()) Q_EMIT dataChanged(index(0), index(rowCount() - 1));
  });
}

void ShelfModel::setShelf(const SharedShelf& shelf) {
  beginResetModel();
  m_shelf = shelf;
  m_cards = std::vector<ShelfCard>(m_shelf->parts.begin(), m_shelf->parts.end());
  m_shown.clear();
  endResetModel();
}

void ShelfModel::prepare(ShelfCard& card) const {
  if (card.ready) return;
  Rig alone;
  alone.parts.push_back(*card.part);
  const MassProfile profile = massProfile(alone);
  card.shape = silhouettesOf(alone, profile).front();
  card.shape.runsOn = false;
  card.mass = profile.places.front().mass();
  card.ready = true;
  say(card);
}

void ShelfModel::say(ShelfCard& card) const {
  const DisplayUnits units = m_look->units();
  const bool fly = card.part->kind == PartKind::fly;
  // A fly's figures stand below; its name alone is its title here.
  card.name = fly && card.part->name ? shelfName(QString::fromStdString(*card.part->name))
                                    : partWords(*card.part, units);
  QStringList figures;
  const QString said = withoutZeros(card.name);
  for (const QString& each : fly ? flyFigures(*card.part, units) : lineFigures(card, units)) {
    if (!each.isEmpty() && !said.contains(withoutZeros(each))) figures << each;
  }
  card.figures = figures.join(QStringLiteral(", "));
  card.found = searchText(*card.part, card.name, card.figures);
}

/// `wanted` ranks a card: 0 is left out, the higher come first.
template <class Wanted>
void ShelfModel::show(Wanted wanted) {
  beginResetModel();
  m_shown.clear();
  m_heaviest = kLeastHeaviest_gr_per_ft;
  m_longest = 1;
  std::vector<int> rank(m_cards.size(), 0);
  for (std::size_t i = 0; i < m_cards.size(); ++i) {
    rank[i] = wanted(m_cards[i]);
    if (rank[i] == 0) continue;
    prepare(m_cards[i]);
    m_shown.push_back(i);
    m_heaviest = std::max(m_heaviest, m_cards[i].shape.heaviest());
    m_longest = std::max(m_longest, m_cards[i].part->length().value());
  }
  std::stable_sort(m_shown.begin(), m_shown.end(),
                   [&](std::size_t a, std::size_t b) { return rank[a] > rank[b]; });
  endResetModel();
}

void ShelfModel::showGroup(const QString& group) {
  show([&](const ShelfCard& each) {
    return QString::fromStdString(each.part->group.value_or(std::string())) == group;
  });
}

void ShelfModel::showFound(const QString& words) {
  show([&](ShelfCard& each) {
    prepare(each);
    return int(foundBy(each.found, words));
  });
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : int(m_shown.size());
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  switch (role) {
    case Qt::DisplayRole:
      return card(index.row()).name;
    case Qt::ToolTipRole:
    case Qt::AccessibleTextRole:
      return tr("%1: %2").arg(card(index.row()).name, card(index.row()).figures);
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

int ShelfCardPainter::heightFor(const Look& look) { return look.px(kCardHeight); }
int ShelfCardPainter::leastWidthFor(const Look& look) { return look.px(kLeastWidth); }

/// The whole cell of the list's grid.
QSize ShelfCardPainter::sizeHint(const QStyleOptionViewItem& option, const QModelIndex&) const {
  const auto* list = qobject_cast<const QListView*>(option.widget);
  const QSize cell = list != nullptr ? list->gridSize() : QSize();
  return cell.isValid() && !cell.isEmpty() ? cell : QSize(leastWidthFor(*m_look), heightFor(*m_look));
}

void ShelfCardPainter::drawEmpty(QPainter& p, const EmptyCard& card) {
  p.setRenderHint(QPainter::Antialiasing);
  p.setBrush(card.fill);
  p.setPen(QPen(card.edge, card.pen));
  p.drawRoundedRect(QRectF(QPointF(), card.size).adjusted(kCardEdge, kCardEdge, -kCardEdge, -kCardEdge), 6, 6);
}

void ShelfCardPainter::paintShape(QPainter& p, const QRectF& place, const ShelfCard& card) const {
  p.save();
  p.setClipRect(place.adjusted(-1, 0, 1, 0));
  const double zoom = m_look->px(100) / 100.0;
  if (card.shape.isFly) {
    const double wide = flyLength(card.shape) * zoom;
    paintFly(p, QPointF(place.center().x() - wide / 2, place.center().y()), card.shape, zoom,
             m_look->colours());
  } else {
    // To scale among the cards shown: the longest fills the place, all begin at the same edge.
    const double wide = place.width() * card.part->length().value() / m_model->longest();
    const QRectF box(place.left(), place.top(), std::max(kLeastShape, wide), place.height());
    paintLine(p, box, card.shape, m_look->px(kShapeHeight) / m_model->heaviest(), m_look->colours());
  }
  p.restore();
}

void ShelfCardPainter::paint(QPainter* p, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
  p->save();
  p->setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const bool chosen = option.state & QStyle::State_Selected;
  const bool focused = chosen && option.widget != nullptr && option.widget->hasFocus();
  const QRectF face = QRectF(option.rect).adjusted(kCardEdge, kCardEdge, -kCardEdge, -kCardEdge);
  const double pen = focused ? 3 : 1;  // as on the line
  const EmptyCard empty{option.rect.size(), c.card, chosen ? c.river : c.edge, pen, p->device()->devicePixelRatioF()};
  auto& kept = chosen ? m_chosenCard : m_plainCard;
  p->drawPixmap(option.rect.topLeft(), kept.of(empty, [&](QPainter& on) { drawEmpty(on, empty); }));
  const ShelfCard& card = m_model->card(index.row());
  const double margin = m_look->px(12);
  const QRectF shape(face.left() + margin, face.top() + 4, m_look->px(kShapeWidth), face.height() - 8);
  paintShape(*p, shape, card);
  const QRectF words(shape.right() + margin, face.top() + m_look->px(5),
                     face.right() - shape.right() - 2 * margin, face.height() - m_look->px(10));
  const auto line = [&](const QString& text, const QFont& font, const QColor& colour, int where) {
    p->setFont(font);
    p->setPen(colour);
    p->drawText(words, Qt::AlignLeft | where,
                QFontMetricsF(font).elidedText(text, Qt::ElideRight, words.width()));
  };
  line(card.name, m_look->font(16, true), c.ink, Qt::AlignTop);
  line(card.figures, m_look->font(14), c.slate, Qt::AlignBottom);
  p->restore();
}

}  // namespace grainwise::ui
