// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/compare_chart.h"

#include <QKeyEvent>
#include <QLocale>
#include <QMouseEvent>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "ui/charts/axis_ticks.h"
#include "ui/charts/profile_points.h"
#include "ui/compare/compare_feed.h"
#include "ui/strip/ruler.h"
#include "ui/text/quantities.h"
#include "ui/theme/ground.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kHeight = 144;
constexpr int kLeastHeight = 108;
constexpr int kRule = 30;
constexpr int kBottom = 10;
constexpr int kType = 14;
constexpr double kHeadroom = 1.08;
constexpr double kColumn_px = 2;
constexpr double kStep_ft = 0.5;
constexpr double kFineStep_ft = 0.1;

/// Of points in order of x, the value at `x`; 0 outside.
double valueAt(const QList<QPointF>& points, double x) {
  if (points.isEmpty() || x < points.front().x() || x > points.back().x()) return 0;
  const auto after = std::upper_bound(points.begin(), points.end(), x,
                                      [](double v, const QPointF& p) { return v < p.x(); });
  if (after == points.begin()) return points.front().y();
  if (after == points.end()) return points.back().y();
  const QPointF &p = *std::prev(after), &q = *after;
  return q.x() > p.x() ? p.y() + (q.y() - p.y()) * (x - p.x()) / (q.x() - p.x()) : q.y();
}

}  // namespace

CompareChart::CompareChart(Look* look, CompareFeed* feed, Ruler* rulerA, Ruler* rulerB,
                           QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed), m_rulerA(rulerA), m_rulerB(rulerB) {
  setObjectName(QStringLiteral("compareChart"));
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("What each foot weighs, of A and of B"));
  setToolTip(tr("Left and Right move the cursor by half a foot, with Shift by a tenth"));
  connect(feed, &CompareFeed::compared, this, &CompareChart::refresh);
  connect(look, &Look::changed, this, &CompareChart::refresh);
  for (Ruler* ruler : {rulerA, rulerB}) {
    connect(ruler, &Ruler::changed, this, qOverload<>(&QWidget::update));
    connect(ruler, &Ruler::cursorMoved, this, [this] {
      setAccessibleDescription(readout());
      update();
    });
  }
}

void CompareChart::setAlign(Align align) {
  m_align = align;
  update();
}

void CompareChart::setRulers(Ruler* rulerA, Ruler* rulerB) {
  m_rulerA = rulerA;
  m_rulerB = rulerB;
  refresh();
}

QSize CompareChart::minimumSizeHint() const { return {400, m_look->px(kLeastHeight)}; }

QSize CompareChart::sizeHint() const { return {1366, m_look->px(kHeight)}; }

QRectF CompareChart::plot() const {
  const double top = m_look->px(kRule) + m_look->px(6);
  return {m_rulerA->left(), top, m_rulerA->right() - m_rulerA->left(),
          height() - top - m_look->px(kBottom)};
}

double CompareChart::y(double mass) const {
  const QRectF box = plot();
  return box.bottom() - box.height() * mass / m_top;
}

void CompareChart::refresh() {
  const double column_ft = kColumn_px / std::max(0.1, m_rulerA->pixelsPerFoot());
  m_a = thinned(massPoints(m_feed->a()->analysis(), m_look->units()), column_ft);
  m_b = thinned(massPoints(m_feed->b()->analysis(), m_look->units()), column_ft);
  double highest = 1e-3;
  for (const QList<QPointF>* list : {&m_a, &m_b}) {
    for (const QPointF& point : *list) highest = std::max(highest, point.y());
  }
  m_top = highest * kHeadroom;
  setAccessibleDescription(readout());
  updateGeometry();
  update();
}

QList<QPointF> CompareChart::onScreen(const QList<QPointF>& points, const Ruler& ruler) const {
  QList<QPointF> list;
  list.reserve(points.size() + 2);
  for (const QPointF& point : points) list.append({ruler.x(Station(point.x())), y(point.y())});
  if (!list.isEmpty()) {
    list.prepend({list.front().x(), y(0)});
    list.append({list.back().x(), y(0)});
  }
  return list;
}

double CompareChart::massAt(bool ofB, double x) const {
  const Ruler& ruler = ofB ? *m_rulerB : *m_rulerA;
  return valueAt(ofB ? m_b : m_a, ruler.station(x).feet());
}

/// Feet from the rear of both heads, or back from both flies.
void CompareChart::paintRule(QPainter& p) const {
  const Colours& c = m_look->colours();
  const DisplayUnits units = m_look->units();
  const double footPerUnit = units.metres ? 1.0 / si::kMetresPerFoot : 1.0;
  const double unitPixels = footPerUnit * m_rulerA->pixelsPerFoot();
  const auto& profileA = m_feed->a()->analysis().profile;
  const auto& profileB = m_feed->b()->analysis().profile;
  const bool fromFly = m_align == Align::fly;
  const double zero = fromFly ? m_rulerA->x(profileA.end) : m_rulerA->x(profileA.start);
  const double way = fromFly ? -1 : 1;
  const double last = std::max((profileA.end - profileA.start).value(),
                               (profileB.end - profileB.start).value()) / footPerUnit;
  double labelEvery = 100;
  for (const double step : {1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
    if (step * unitPixels < m_look->px(56)) continue;
    labelEvery = step;
    break;
  }
  const double y0 = 2.5;
  p.setFont(m_look->font(kType));
  p.setPen(QPen(c.slate, 1));
  p.drawLine(QPointF(zero - way * 8, y0), QPointF(zero + way * (last * unitPixels + 8), y0));
  for (int i = 0; i <= int(last + 1e-9); ++i) {
    const double x = zero + way * i * unitPixels;
    const bool label = std::abs(std::remainder(double(i), labelEvery)) < 1e-9;
    p.drawLine(QPointF(x, y0), QPointF(x, y0 + (label ? 8 : 4)));
    if (!label) continue;
    const QString number = QLocale().toString(i);
    const QString words = i > 0     ? number
                          : fromFly ? tr("%1 %2 to the fly").arg(number, lengthUnit(units))
                                    : QStringLiteral("%1 %2").arg(number, lengthUnit(units));
    const double wide = p.fontMetrics().horizontalAdvance(words) + 4;
    const double left = std::clamp(x - wide / 2, 2.0, std::max(2.0, width() - wide - 8));
    p.drawText(QRectF(left, y0 + 8, wide, m_look->px(18)), Qt::AlignCenter, words);
  }
}

void CompareChart::paintGrid(QPainter& p) const {
  const Colours& c = m_look->colours();
  const QRectF box = plot();
  const double tick = gridStep(m_top);
  p.setFont(m_look->font(kType));
  const double tall = p.fontMetrics().height();
  p.setPen(c.slate);
  p.drawText(QRectF(2, 2, box.left() - 10, m_look->px(24)), Qt::AlignRight | Qt::AlignVCenter,
             lineMassUnit(m_look->units()));
  for (int i = 0; i * tick <= m_top; ++i) {
    const double at = y(i * tick);
    p.setPen(QPen(c.edge, 1));
    p.drawLine(QPointF(box.left(), at), QPointF(box.right(), at));
    p.setPen(c.slate);
    if (i == 0) continue;
    p.drawText(QRectF(2, at - tall / 2, box.left() - 10, tall), Qt::AlignRight | Qt::AlignVCenter,
               numberText(i * tick, 1));
  }
}

void CompareChart::paintShade(QPainter& p) const {
  const Colours& c = m_look->colours();
  QColor ofA = c.river, ofB = c.ochreLine;
  ofA.setAlpha(56);
  ofB.setAlpha(72);
  const QRectF box = plot();
  p.setRenderHint(QPainter::Antialiasing, false);
  for (int x = int(box.left()); x <= int(box.right()); ++x) {
    const double a = massAt(false, x + 0.5), b = massAt(true, x + 0.5);
    if (a == b) continue;
    const double top = y(std::max(a, b)), bottom = y(std::min(a, b));
    p.fillRect(QRectF(x, top, 1, bottom - top), a > b ? ofA : ofB);
  }
  p.setRenderHint(QPainter::Antialiasing);
}

QString CompareChart::readout() const {
  const DisplayUnits units = m_look->units();
  const Station at = m_rulerA->cursor();
  const double x = m_rulerA->x(at);
  const double a = massAt(false, x), b = massAt(true, x);
  const QString unit = lineMassUnit(units);
  const auto number = [](double v) { return QLocale().toString(v, 'f', 1); };
  // In the feet of the ruler above it: from the rears of the heads, or back from the flies.
  const QString where =
      m_align == Align::fly
          ? stationText(Station((m_feed->a()->analysis().profile.end - at).value()), units)
          : stationText(at, units);
  if (a <= 0 && b <= 0) return tr("%1: no line of either here").arg(where);
  if (a <= 0) return tr("%1: B %2 %3, A has no line here").arg(where, number(b), unit);
  if (b <= 0) return tr("%1: A %2 %3, B has no line here").arg(where, number(a), unit);
  const double by = b - a;
  const QString words = std::abs(by) < 0.05 ? tr("both alike")
                        : by > 0            ? tr("B %1 heavier").arg(number(by))
                                            : tr("B %1 lighter").arg(number(-by));
  return tr("%1: A %2, B %3 %4, %5").arg(where, number(a), number(b), unit, words);
}

void CompareChart::paintCursor(QPainter& p) const {
  const Colours& c = m_look->colours();
  const QRectF box = plot();
  const double x = m_rulerA->x(m_rulerA->cursor());
  p.setPen(QPen(c.brick, hasFocus() ? 2 : 1));
  p.drawLine(QPointF(x, box.top() - 4), QPointF(x, box.bottom()));
  p.setFont(m_look->font(kType));
  const QString words = readout();
  const double wide = p.fontMetrics().horizontalAdvance(words) + 16;
  double left = x + 6;
  if (left + wide > width() - 8) left = x - 6 - wide;
  const QRectF card(std::max(4.0, left), box.bottom() - m_look->px(28), wide, m_look->px(24));
  p.setPen(QPen(c.edge, 1));
  p.setBrush(c.card);
  p.drawRoundedRect(card, 4, 4);
  p.setPen(c.ink);
  p.drawText(card, Qt::AlignCenter, words);
}

void CompareChart::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  paintGround(p, this, c.paper);
  paintRule(p);
  paintGrid(p);
  paintShade(p);
  p.setBrush(Qt::NoBrush);
  p.setPen(QPen(c.river, 2.2, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  p.drawPolyline(QPolygonF(onScreen(m_a, *m_rulerA)));
  QPen dashed(c.ochreLine, 2.2, Qt::CustomDashLine, Qt::FlatCap, Qt::MiterJoin);
  dashed.setDashPattern({5, 3});
  p.setPen(dashed);
  p.drawPolyline(QPolygonF(onScreen(m_b, *m_rulerB)));
  paintCursor(p);
}

void CompareChart::setCursorAt(Station station) {
  const auto& a = m_feed->a()->analysis().profile;
  const auto& b = m_feed->b()->analysis().profile;
  const Station from = std::min(a.start, m_rulerA->station(m_rulerB->x(b.start)));
  const Station to = std::max(a.end, m_rulerA->station(m_rulerB->x(b.end)));
  const double ft = std::round(station.feet() / kFineStep_ft) * kFineStep_ft;
  m_rulerA->setCursor(std::clamp(Station(ft), from, std::max(from, to)));
}

void CompareChart::keyPressEvent(QKeyEvent* event) {
  const bool left = event->key() == Qt::Key_Left;
  if (!left && event->key() != Qt::Key_Right) return QWidget::keyPressEvent(event);
  const double step = event->modifiers() & Qt::ShiftModifier ? kFineStep_ft : kStep_ft;
  setCursorAt(m_rulerA->cursor() + Feet(left ? -step : step));
}

void CompareChart::mousePressEvent(QMouseEvent* event) { mouseMoveEvent(event); }

void CompareChart::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) setCursorAt(m_rulerA->station(event->position().x()));
}

}  // namespace grainwise::ui
