// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/block.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>

#include "ui/strip/strip_metrics.h"

namespace grainwise::ui {
using strip_metrics::kInsideType;
using strip_metrics::kThinRing;

namespace {
constexpr double kRound = 5;
}  // namespace

Block::Block(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::OpenHandCursor);
}

void Block::setPicture(const Picture& picture) {
  if (picture == m_picture) return;
  m_picture = picture;
  update();
}

void Block::setLine(const QRectF& line) {
  if (line == m_line) return;
  m_line = line;
  update();
}

void Block::setIndex(std::size_t index) {
  m_index = index;
  setObjectName(QStringLiteral("block%1").arg(index));
}

void Block::setSelected(bool selected) {
  if (selected == m_selected) return;
  m_selected = selected;
  update();
}

void Block::setLanding(bool landing) {
  if (landing == m_landing) return;
  m_landing = landing;
  update();
}

void Block::setWords(const QString& spoken, const QString& toolTip) {
  if (accessibleName() != spoken) setAccessibleName(spoken);
  if (this->toolTip() != toolTip) setToolTip(toolTip);
}

QRectF Block::captionBox(const QRectF& line) const {
  const QFontMetricsF metrics(m_look->font(kInsideType, true));
  QRectF box(0, 0, metrics.horizontalAdvance(m_picture.caption), metrics.height());
  box.moveCenter(QPointF(line.left() + line.width() * m_picture.captionShare, line.center().y()));
  return box;
}

void Block::paintCaption(QPainter& p, const QRectF& line) const {
  const bool onSink = m_picture.shape.sinksAt(m_picture.captionShare);
  p.setFont(m_look->font(kInsideType, true));
  p.setPen(onSink ? m_look->colours().onSink : m_look->colours().ink);
  p.drawText(captionBox(line), Qt::AlignCenter | Qt::TextDontClip, m_picture.caption);
}

/// What is chosen, what has the keyboard, what would land here: an outline each, told apart by form: a
/// hairline, one of three whole pixels around the same place, a dashed one.
void Block::paintMarks(QPainter& p) const {
  const Colours& c = m_look->colours();
  // Round what is drawn, not round all that can be hit.
  const double reach = m_picture.shape.isFly
                           ? height() / 2.0
                           : std::max(kThinRing, m_picture.shape.heaviest() * m_picture.pixelsPerGrain / 2 + 4);
  QRectF round = QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5);
  const double middle = m_line.center().y() - y();
  round.setTop(std::max(round.top(), middle - reach));
  round.setBottom(std::min(round.bottom(), middle + reach));
  p.setBrush(Qt::NoBrush);
  if (m_landing) {
    p.setPen(QPen(c.river, 2.5, Qt::DashLine));
  } else if (hasFocus()) {
    p.setPen(QPen(c.river, 3));
  } else if (m_selected) {
    p.setPen(QPen(c.river, 1));
  } else {
    return;
  }
  p.drawRoundedRect(round, kRound, kRound);
}

void Block::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF line = m_line.translated(-pos());
  if (m_picture.shape.isFly) {
    paintFly(p, QPointF(line.left(), line.center().y()), m_picture.shape, m_look->px(100) / 100.0, c);
  } else {
    const QRectF quiet = m_picture.caption.isEmpty() ? QRectF() : captionBox(line).adjusted(-5, -1, 5, 1);
    paintLine(p, line, m_picture.shape, m_picture.pixelsPerGrain, c, quiet);
  }
  if (!m_picture.caption.isEmpty()) paintCaption(p, line);
  paintMarks(p);
}

void Block::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  m_pressedAt = event->position().toPoint();
  Q_EMIT pressed(m_index);
}

void Block::mouseMoveEvent(QMouseEvent* event) {
  if (!(event->buttons() & Qt::LeftButton) || !m_pressedAt) return;
  const int far = (event->position().toPoint() - *m_pressedAt).manhattanLength();
  if (far < QApplication::startDragDistance()) return;
  m_pressedAt.reset();
  Q_EMIT dragged(m_index);  // last: the drag may end this block
}

void Block::mouseReleaseEvent(QMouseEvent*) { m_pressedAt.reset(); }

void Block::mouseDoubleClickEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) Q_EMIT activated(m_index);
}

void Block::contextMenuEvent(QContextMenuEvent* event) {
  Q_EMIT menuWanted(m_index, event->globalPos());
}

void Block::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
  if (event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason) {
    Q_EMIT focused(m_index);
  }
}

void Block::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

}  // namespace grainwise::ui
