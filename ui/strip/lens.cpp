// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/lens.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "ui/strip/placement.h"

namespace grainwise::ui {
namespace {
constexpr double kMargin = 12;
constexpr int kFlyRoom = 62;
constexpr int kLineRow = 28;
constexpr int kWordsRow = 22;
constexpr int kType = 14;
constexpr double kFlyZoom = 1.1;
}  // namespace

Lens::Lens(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("lens"));
  setCursor(Qt::OpenHandCursor);
  setAccessibleName(tr("The last six feet, magnified"));
  setToolTip(tr("The last six feet, magnified: press or drag a part here as on the line"));
}

int Lens::wantedWidth(double pixelsPerFoot) const {
  return int(kFeet * pixelsPerFoot + kMargin + m_look->px(kFlyRoom));
}

int Lens::heightFor(const Look& look) { return look.px(kLineRow + kWordsRow); }

double Lens::lineMiddle() const { return m_look->px(kLineRow) / 2.0 + 2; }

void Lens::magnify(std::vector<Item> items, double pixelsPerGrain, double pixelsPerFoot) {
  m_items = std::move(items);
  // As on the line, unless that is too tall for the lens.
  double heaviest = 1e-6;
  for (const Item& item : m_items) heaviest = std::max(heaviest, item.shape.heaviest());
  m_pixelsPerGrain = std::min(pixelsPerGrain, (m_look->px(kLineRow) - 6) / heaviest);
  m_pixelsPerFoot = pixelsPerFoot;
  update();
}

bool Lens::shows(std::size_t part) const {
  return std::any_of(m_items.begin(), m_items.end(),
                     [&](const Item& item) { return item.index == part && item.from >= 0; });
}

QRectF Lens::boxOf(const Item& item) const {
  const double left = kMargin + item.from * m_pixelsPerFoot;
  const double right = item.shape.isFly ? width() - 4.0 : kMargin + item.to * m_pixelsPerFoot;
  return {left, 2, right - left, double(m_look->px(kLineRow))};
}

QRectF Lens::boxOf(std::size_t part) const {
  for (const Item& item : m_items) {
    if (item.index == part) return boxOf(item);
  }
  return {};
}

void Lens::mark(std::optional<std::size_t> selected, std::optional<std::size_t> landing) {
  m_selected = selected;
  m_landing = landing;
  update();
}

std::optional<std::size_t> Lens::partAt(const QPointF& at) const {
  for (auto it = m_items.rbegin(); it != m_items.rend(); ++it) {
    if (boxOf(*it).left() <= at.x() && at.x() <= boxOf(*it).right()) return it->index;
  }
  return std::nullopt;
}

void Lens::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  m_pressedAt = event->position();
  if (const auto part = partAt(event->position())) Q_EMIT pressed(*part);
}

void Lens::mouseMoveEvent(QMouseEvent* event) {
  if (!(event->buttons() & Qt::LeftButton) || !m_pressedAt) return;
  const QPointF way = event->position() - *m_pressedAt;
  if (way.manhattanLength() < QApplication::startDragDistance()) return;
  const auto part = partAt(*m_pressedAt);
  m_pressedAt.reset();
  if (part) Q_EMIT dragged(*part);
}

void Lens::mouseReleaseEvent(QMouseEvent*) { m_pressedAt.reset(); }

void Lens::mouseDoubleClickEvent(QMouseEvent* event) {
  if (const auto part = partAt(event->position())) Q_EMIT activated(*part);
}

void Lens::contextMenuEvent(QContextMenuEvent* event) {
  if (const auto part = partAt(event->pos())) Q_EMIT menuWanted(*part, event->globalPos());
}

void Lens::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF card = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  p.setPen(QPen(c.slate, 0.8));
  p.setBrush(c.paper);
  p.drawRoundedRect(card, 7, 7);
  p.setClipRect(card.adjusted(1, 1, -1, -1));
  for (const Item& item : m_items) {
    QRectF box = boxOf(item);
    box.moveCenter(QPointF(box.center().x(), lineMiddle()));
    if (item.shape.isFly) {
      paintFly(p, QPointF(box.left(), lineMiddle()), item.shape, kFlyZoom * m_look->px(100) / 100.0, c);
    } else {
      paintLine(p, box, item.shape, m_pixelsPerGrain, c);
    }
    const bool landing = m_landing == item.index;
    if (!landing && m_selected != item.index) continue;
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(c.river, landing ? 2.0 : 1.5, landing ? Qt::DashLine : Qt::SolidLine));
    p.drawRoundedRect(box.adjusted(1, 1, -1, -1), 4, 4);
  }
  paintCaptions(p);
}

void Lens::paintCaptions(QPainter& p) const {
  p.setFont(m_look->font(kType));
  p.setPen(m_look->colours().ink);
  const QFontMetricsF metrics(p.font());
  CaptionRoom room;
  room.body = QRectF(kMargin / 2, 0, width() - kMargin, height());
  room.middle = lineMiddle();
  room.height = metrics.height();
  room.gap = m_look->px(kLineRow) / 2.0 - 1;
  room.halfLine = [](double, double) { return 0.0; };
  room.width = [&](const QString& words) { return metrics.horizontalAdvance(words); };
  room.elided = [&](const QString& words, double wide) {
    return metrics.elidedText(words, Qt::ElideRight, wide);
  };
  std::vector<CaptionWish> wishes;
  for (const Item& item : m_items) {
    if (item.from >= 0) wishes.push_back({boxOf(item).left(), boxOf(item).right(), item.captions, true});
  }
  for (const auto& place : placeCaptions(wishes, room)) {
    if (place) p.drawText(place->box, Qt::AlignCenter | Qt::TextDontClip, place->words);
  }
}

}  // namespace grainwise::ui
