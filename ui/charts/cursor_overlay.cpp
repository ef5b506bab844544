// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/cursor_overlay.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/charts/profile_chart.h"
#include "ui/strip/ruler.h"
#include "ui/text/quantities.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 14;
constexpr int kEdge = 16;       ///< the face's margin, window pixels
constexpr int kTextRow = 20;    // pixels at type scale 1, as all that follow
constexpr int kReadoutRow = 24;
constexpr int kBesideCursor = 6;
constexpr int kInReadout = 8;
constexpr double kFlyRadius = 3.5;
QString driveWords() { return ProfileChart::tr("what the loop needs of each foot"); }
}  // namespace

CursorOverlay::CursorOverlay(ProfileChart* chart) : QWidget(chart), m_chart(chart) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
}

void CursorOverlay::paintAxisName(QPainter& p) const {
  const Look& look = *m_chart->m_look;
  p.setPen(look.colours().slate);
  const double top = m_chart->plotArea().top() - look.px(kTextRow + 4);
  const QString words =
      look.units().grams ? ProfileChart::tr("g per metre") : ProfileChart::tr("gr per foot");
  p.drawText(QRectF(kEdge, top, width() / 2.0, look.px(kTextRow)), Qt::AlignLeft | Qt::AlignVCenter,
             words);
}

/// The fly is a jump of the grains so far: a dot on its top, the total above it.
void CursorOverlay::paintTotal(QPainter& p) const {
  const Look& look = *m_chart->m_look;
  const Analysis& a = m_chart->m_feed->analysis();
  const Colours& c = look.colours();
  const double total_gr = a.totals.mass.value();
  const QPointF end = m_chart->grainPosition(a.profile.end.feet(), total_gr);
  const auto& points = a.profile.points;
  if (!points.empty() && points.back().kind == PointMass::Kind::fly) {
    const double before_gr = total_gr - points.back().mass.value();
    p.setPen(QPen(c.slate, 1.4));
    p.drawLine(m_chart->grainPosition(a.profile.end.feet(), before_gr), end);
    p.setPen(Qt::NoPen);
    p.setBrush(c.slate);
    p.drawEllipse(end, look.px(kFlyRadius), look.px(kFlyRadius));
  }
  p.setPen(c.slate);
  const QString words = ProfileChart::tr("%1 in all").arg(massText(a.totals.mass, look.units()));
  const double wide = p.fontMetrics().horizontalAdvance(words);
  const double most = std::max<double>(kEdge, width() - kEdge - wide);
  const double left = std::clamp<double>(end.x() - wide, kEdge, most);
  const double bottom = end.y() - look.px(kFlyRadius) - 1;
  p.drawText(QPointF(left, bottom - p.fontMetrics().descent()), words);
}

QRectF CursorOverlay::readoutBox() const {
  const Look& look = *m_chart->m_look;
  const QRectF plot = m_chart->plotArea();
  const double x = m_chart->m_ruler->x(m_chart->m_ruler->cursor());
  const QFontMetricsF metrics(look.font(kType));
  const double wide = metrics.horizontalAdvance(m_chart->readout()) + 2 * look.px(kInReadout);
  const double beside = look.px(kBesideCursor);
  double left = x + beside;
  if (left + wide > width() - kEdge) left = x - beside - wide;
  left = std::clamp(left, 0.0, std::max(0.0, width() - wide));
  const double tall = look.px(kReadoutRow);
  return {left, plot.bottom() - tall - look.px(kBesideCursor), wide, tall};
}

/// The foot of a station and what it must weigh there, on the chart.
QPointF CursorOverlay::driveAt(const TurnoverStation& station, GrainsPerFoot mass) const {
  const double shown = shownValue(mass.value(), Measure::lineMass, m_chart->m_look->units());
  QPointF point = m_chart->position(station.at.feet(), shown);
  point.setY(std::max(point.y(), m_chart->plotArea().top()));
  return point;
}

/// Under the beginning of its line, or over it where the cursor's words stand.
QRectF CursorOverlay::driveWordsBox() const {
  const auto& turnover = m_chart->m_feed->analysis().turnover;
  if (!m_chart->m_driveShown || !turnover || turnover->stations.size() < 2) return {};
  const QFontMetricsF metrics(m_chart->m_look->font(kType));
  const QPointF first = driveAt(turnover->stations.front(), turnover->stations.front().need);
  QRectF box(first.x(), first.y() + 0.4 * metrics.height(), metrics.horizontalAdvance(driveWords()), metrics.height());
  if (box.intersects(readoutBox())) box.moveBottom(first.y() - 0.2 * metrics.height());
  return box;
}

/// What each foot must weigh for the loop to keep its speed there, dashed; where the line is lighter
/// than that, the stretch between the two is shaded. Needs beyond the top of the chart are cut off.
void CursorOverlay::paintDrive(QPainter& p) const {
  const Look& look = *m_chart->m_look;
  const auto& turnover = m_chart->m_feed->analysis().turnover;
  if (!m_chart->m_driveShown || !turnover || turnover->stations.size() < 2) return;
  const QRectF plot = m_chart->plotArea();
  const auto at = [this](const TurnoverStation& s, GrainsPerFoot mass) { return driveAt(s, mass); };
  QColor shade = look.colours().ochreLine;
  shade.setAlpha(110);
  p.save();
  p.setClipRect(plot);
  QPolygonF need;
  for (std::size_t i = 0; i < turnover->stations.size(); ++i) {
    const TurnoverStation& here = turnover->stations[i];
    need.append(at(here, here.need));
    if (i == 0) continue;
    const TurnoverStation& before = turnover->stations[i - 1];
    if (before.bareNylon || here.bareNylon || before.line >= before.need || here.line >= here.need) continue;
    p.setPen(Qt::NoPen);
    p.setBrush(QBrush(shade, Qt::SolidPattern));
    p.drawPolygon(QPolygonF({at(before, before.line), at(before, before.need), at(here, here.need),
                             at(here, here.line)}));
  }
  p.setBrush(Qt::NoBrush);
  p.setPen(QPen(look.colours().ochreLine, 2, Qt::DashDotLine));
  p.drawPolyline(need);
  p.restore();
  p.setPen(look.colours().ochreWord);
  p.drawText(driveWordsBox(), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, driveWords());
}

void CursorOverlay::paintCursor(QPainter& p) const {
  const Look& look = *m_chart->m_look;
  const Colours& c = look.colours();
  const QRectF plot = m_chart->plotArea();
  const double x = m_chart->m_ruler->x(m_chart->m_ruler->cursor());
  if (x < plot.left() - 1 || x > plot.right() + 1) return;
  p.setPen(QPen(c.brick, 1));
  const double pixel = std::round(x) + 0.5;  // a crisp line, as on the strip
  p.drawLine(QPointF(pixel, 0), QPointF(pixel, plot.bottom()));
  const QRectF box = readoutBox();
  const bool focus = m_chart->hasFocus();
  p.setBrush(c.card);
  p.setPen(QPen(focus ? c.river : c.edge, focus ? 2 : 1));
  p.drawRoundedRect(box, 4, 4);
  p.setPen(c.ink);
  p.drawText(box, Qt::AlignCenter, m_chart->readout());
}

void CursorOverlay::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  p.setFont(m_chart->m_look->font(kType));
  if (m_chart->m_feed->analysis().rows.empty()) return;
  paintAxisName(p);
  paintTotal(p);
  paintDrive(p);
  paintCursor(p);
}

}  // namespace grainwise::ui
