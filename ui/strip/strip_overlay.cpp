// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/strip_overlay.h"

#include <QPainter>
#include <cmath>

#include "ui/strip/junction_tag.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_view.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {

StripOverlay::StripOverlay(StripView* strip) : QWidget(strip), m_strip(strip) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
}

void StripOverlay::paintBreak(QPainter& p) const {
  const Rig& rig = *m_strip->m_feed->rig();
  if (rig.parts.empty() || rig.parts.front().kind != PartKind::runningLine) return;
  const Colours& c = m_strip->m_look->colours();
  const double x = m_strip->m_ruler->left() - 34;
  const double y = m_strip->middle();
  const double tall = 12;
  p.setRenderHint(QPainter::Antialiasing);
  p.setPen(Qt::NoPen);
  p.setBrush(c.paper);
  p.drawPolygon(QPolygonF({QPointF(x + 3, y - tall), QPointF(x + 9, y - tall), QPointF(x + 3, y + tall),
                           QPointF(x - 3, y + tall)}));
  p.setPen(QPen(c.slate, 1.6));
  for (const double dx : {0.0, 6.0}) {
    p.drawLine(QPointF(x + dx + 3, y - tall), QPointF(x + dx - 3, y + tall));
  }
}

void StripOverlay::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintBreak(p);
  const Colours& c = m_strip->m_look->colours();
  const Ruler& ruler = *m_strip->m_ruler;
  const Analysis& a = m_strip->m_feed->analysis();
  const double bottom = m_strip->middle() + m_strip->halfHeight();
  p.setPen(QPen(c.slate, 1, Qt::DotLine));
  for (const Junction& j : a.junctions) {
    const double x = ruler.x(j.at);
    p.drawLine(QPointF(x, m_strip->m_look->px(30)), QPointF(x, bottom));
  }
  if (a.rows.empty()) return;
  p.setPen(QPen(c.brick, 1));
  const double x = std::floor(ruler.x(ruler.cursor())) + 0.5;  // a crisp line
  if (x >= ruler.left() - 1 && x <= ruler.right() + 1) {
    p.drawLine(QPointF(x, m_strip->m_look->px(32)), QPointF(x, height()));
  }
}

}  // namespace grainwise::ui
