// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/cursor_overlay.h"

#include <QPainter>

#include "ui/charts/profile_chart.h"
#include "ui/strip/ruler.h"
#include "ui/text/quantities.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {

CursorOverlay::CursorOverlay(ProfileChart* chart) : QWidget(chart), m_chart(chart) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
}

void CursorOverlay::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Look& look = *m_chart->m_look;
  const Colours& c = look.colours();
  const QRectF plot = m_chart->plotArea();
  p.setFont(look.font(14));
  p.setPen(c.slate);
  const QString axis = lineMassUnit(look.units());
  p.drawText(QRectF(16, plot.top() - look.px(22), 200, look.px(20)), Qt::AlignLeft | Qt::AlignVCenter,
             axis);
  const Analysis& a = m_chart->m_feed->analysis();
  if (a.rows.empty()) return;
  const QString total = ProfileChart::tr("%1 in all").arg(massText(a.totals.mass, look.units()));
  p.drawText(QRectF(plot.left(), plot.top() - look.px(22), plot.width(), look.px(20)),
             Qt::AlignRight | Qt::AlignVCenter, total);

  const double x = m_chart->m_ruler->x(m_chart->m_ruler->cursor());
  if (x < plot.left() - 1 || x > plot.right() + 1) return;
  p.setPen(QPen(c.brick, 1));
  p.drawLine(QPointF(x, 0), QPointF(x, plot.bottom()));
  const QString words = m_chart->readout();
  const double wide = p.fontMetrics().horizontalAdvance(words) + look.px(16);
  double left = x + look.px(6);
  if (left + wide > width() - 8) left = x - look.px(6) - wide;
  const QRectF box(std::max(8.0, left), plot.bottom() - look.px(30), wide, look.px(24));
  QColor card = c.card;
  card.setAlpha(235);
  p.setBrush(card);
  p.setPen(QPen(m_chart->hasFocus() ? c.river : c.edge, m_chart->hasFocus() ? 2 : 1));
  p.drawRoundedRect(box, 4, 4);
  p.setPen(c.ink);
  p.drawText(box, Qt::AlignCenter, words);
}

}  // namespace grainwise::ui
