// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/block.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMouseEvent>
#include <QPainter>

namespace grainwise::ui {
namespace {
constexpr int kSlide_ms = 120;
constexpr double kFaint = 0.35;
}  // namespace

Block::Block(Look* look, QWidget* parent)
    : QWidget(parent), m_look(look), m_slide(new QPropertyAnimation(this, "geometry", this)) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::OpenHandCursor);
  m_slide->setDuration(kSlide_ms);
  m_slide->setEasingCurve(QEasingCurve::OutCubic);
}

void Block::setPicture(const Picture& picture) {
  m_picture = picture;
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

void Block::setLifted(bool lifted) {
  if (lifted == m_lifted) return;
  m_lifted = lifted;
  update();
}

void Block::moveTo(const QRect& place, bool slide) {
  m_slide->stop();
  if (!slide || !isVisible() || place == geometry()) {
    setGeometry(place);
    return;
  }
  m_slide->setStartValue(geometry());
  m_slide->setEndValue(place);
  m_slide->start();
}

void Block::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  if (m_lifted) p.setOpacity(kFaint);
  const Colours& c = m_look->colours();
  QRectF line = m_picture.line.translated(-pos());
  if (m_slide->state() == QAbstractAnimation::Running) {
    // On its way: the outline keeps to the moving widget, the exact place comes with the last frame.
    line = QRectF(rect());
  }
  if (m_picture.shape.isFly) {
    paintFly(p, QRectF(rect()), m_picture.shape, c);
  } else {
    paintLine(p, line, m_picture.shape, m_picture.pixelsPerGrain, c);
  }
  if (m_picture.captionInside) {
    const auto& pieces = m_picture.shape.pieces;
    bool sinking = false;
    for (const auto& piece : pieces) {
      if (piece.from <= 0.5 && piece.to >= 0.5) sinking = piece.sinks;
    }
    p.setFont(m_look->font(15, true));
    if (sinking) {
      // Words on a hatch need a quiet ground.
      const double wide = p.fontMetrics().horizontalAdvance(m_picture.caption) + m_look->px(12);
      QRectF ground(0, 0, wide, m_look->px(20));
      ground.moveCenter(line.center());
      p.setPen(Qt::NoPen);
      p.setBrush(c.sinkFill);
      p.drawRoundedRect(ground, 4, 4);
    }
    p.setPen(sinking ? c.onSink : c.ink);
    p.drawText(line, Qt::AlignCenter, m_picture.caption);
  }
  if (!m_selected && !hasFocus()) return;
  p.setBrush(Qt::NoBrush);
  p.setPen(QPen(c.river, hasFocus() ? 2 : 1, hasFocus() ? Qt::SolidLine : Qt::DashLine));
  p.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

void Block::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton) return;
  m_pressedAt = event->position().toPoint();
  Q_EMIT pressed(m_index);
}

void Block::mouseMoveEvent(QMouseEvent* event) {
  if (!(event->buttons() & Qt::LeftButton)) return;
  const int far = (event->position().toPoint() - m_pressedAt).manhattanLength();
  if (far >= QApplication::startDragDistance()) Q_EMIT dragged(m_index);
}

void Block::mouseDoubleClickEvent(QMouseEvent*) { Q_EMIT activated(m_index); }

void Block::contextMenuEvent(QContextMenuEvent* event) { Q_EMIT menuWanted(m_index, event->globalPos()); }

void Block::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void Block::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

}  // namespace grainwise::ui
