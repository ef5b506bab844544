// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_overlay.h"

#include <QPainter>
#include <cmath>

#include "ui/strip/ruler.h"

namespace grainwise::ui {
namespace {
constexpr double kKnob = 5;
}

StripOverlay::StripOverlay(Look* look, Ruler* ruler, QWidget* parent)
    : QWidget(parent), m_look(look), m_ruler(ruler) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAttribute(Qt::WA_NoSystemBackground);
  connect(ruler, &Ruler::cursorMoved, this, &StripOverlay::follow);
  connect(ruler, &Ruler::changed, this, &StripOverlay::follow);
}

void StripOverlay::setSpan(double top, bool keyboard) {
  if (top == m_top && keyboard == m_keyboard) return;
  m_top = top;
  m_keyboard = keyboard;
  update();
}

QRect StripOverlay::strokeAt(double x) const {
  return QRectF(x - kKnob - 1, 0, 2 * kKnob + 3, height()).toAlignedRect();
}

/// Only what the cursor leaves and where it comes is painted anew.
void StripOverlay::follow() {
  update(strokeAt(m_x));
  m_x = m_ruler->x(m_ruler->cursor());
  update(strokeAt(m_x));
}

void StripOverlay::paintEvent(QPaintEvent*) {
  m_x = m_ruler->x(m_ruler->cursor());
  if (m_x < m_ruler->left() - 1 || m_x > m_ruler->right() + 1) return;
  QPainter p(this);
  const double x = std::round(m_x) + 0.5;
  p.setPen(QPen(m_look->colours().brick, 1));
  p.drawLine(QPointF(x, m_top), QPointF(x, height()));
  if (!m_keyboard) return;
  p.setRenderHint(QPainter::Antialiasing);
  p.setBrush(m_look->colours().brick);
  p.drawEllipse(QPointF(x, m_top + kKnob), kKnob, kKnob);
}

}  // namespace grainwise::ui
