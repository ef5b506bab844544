// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/profile_chart.h"

#include <QAreaSeries>
#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QLineSeries>
#include <QMouseEvent>
#include <QValueAxis>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/charts/cursor_overlay.h"
#include "ui/strip/ruler.h"
#include "ui/text/quantities.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kHeight = 150;
constexpr int kTop = 26;
constexpr int kBottom = 14;
constexpr double kStep_ft = 0.5;
constexpr double kFineStep_ft = 0.1;
/// Rows beyond which the curve between two rows is finer than a pixel.
constexpr std::size_t kDenseRows = 200;
constexpr int kBetween = 4;
constexpr int kMostPoints = 500;

double shownLineMass(GrainsPerFoot mass, DisplayUnits units) {
  return editText(mass.value(), Measure::lineMass, units).toDouble();
}

/// The tick that gives two to five lines up to `highest`.
double tickFor(double highest) {
  for (const double tick : {0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0}) {
    if (highest / tick <= 4) return tick;
  }
  return 100;
}

QList<QPointF> massPoints(const Analysis& a, DisplayUnits units) {
  // One factor for all rows: the unit is a plain multiple.
  const double factor = shownLineMass(GrainsPerFoot(1), units);
  QList<QPointF> points;
  points.reserve(qsizetype(a.rows.size()));
  for (const ProfileRow& row : a.rows) points.append({row.at.feet(), row.mass.value() * factor});
  return points;
}

/// At most about two points a bucket, its lowest and its highest, where there are more points than a
/// screen has room for: the picture is the same.
QList<QPointF> thinned(const QList<QPointF>& points) {
  if (points.size() <= kMostPoints) return points;
  QList<QPointF> kept;
  const qsizetype bucket = 2 * points.size() / kMostPoints + 1;
  for (qsizetype i = 0; i < points.size(); i += bucket) {
    const auto from = points.begin() + i;
    const auto to = points.begin() + std::min(points.size(), i + bucket);
    const auto [low, high] = std::minmax_element(
        from, to, [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); });
    kept.append(*std::min(low, high));
    if (low != high) kept.append(*std::max(low, high));
  }
  kept.append(points.back());
  return kept;
}

QList<QPointF> grainPoints(const Analysis& a) {
  QList<QPointF> points;
  for (std::size_t i = 0; i < a.rows.size(); ++i) {
    points.append({a.rows[i].at.feet(), a.rows[i].soFar.value()});
    if (i + 1 == a.rows.size() || a.rows.size() > kDenseRows) continue;
    const double from = a.rows[i].at.feet();
    const double to = a.rows[i + 1].at.feet();
    for (int k = 1; k < kBetween && to > from; ++k) {
      const double at = from + (to - from) * k / kBetween;
      points.append({at, a.profile.soFar(Station(at)).value()});
    }
  }
  return points;
}

}  // namespace

ProfileChart::ProfileChart(Look* look, AnalysisFeed* feed, Ruler* ruler, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed), m_ruler(ruler) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("What each foot weighs"));
  m_chart = new QChart;
  m_chart->setAnimationOptions(QChart::NoAnimation);
  m_chart->setBackgroundVisible(false);
  m_chart->setMargins({});
  m_chart->legend()->hide();
  m_upper = new QLineSeries(this);
  m_area = new QAreaSeries(m_upper);
  m_line = new QLineSeries;
  m_soFar = new QLineSeries;
  m_feet = new QValueAxis;
  m_mass = new QValueAxis;
  m_grains = new QValueAxis;
  m_chart->addAxis(m_feet, Qt::AlignBottom);
  m_chart->addAxis(m_mass, Qt::AlignLeft);
  m_chart->addAxis(m_grains, Qt::AlignRight);
  const std::array<std::pair<QAbstractSeries*, QValueAxis*>, 3> all{
      {{m_area, m_mass}, {m_line, m_mass}, {m_soFar, m_grains}}};
  for (const auto& [series, axis] : all) {
    m_chart->addSeries(series);
    series->attachAxis(m_feet);
    series->attachAxis(axis);
  }
  for (QValueAxis* axis : {m_feet, m_grains}) {
    axis->setVisible(false);
  }
  m_mass->setTickType(QValueAxis::TicksDynamic);
  m_mass->setTickAnchor(0);
  m_mass->setLineVisible(false);
  m_view = new QChartView(m_chart, this);
  m_view->setRenderHint(QPainter::Antialiasing);
  m_view->setFrameShape(QFrame::NoFrame);
  m_view->setFocusPolicy(Qt::NoFocus);
  m_view->setAttribute(Qt::WA_TransparentForMouseEvents);
  // A chart view accepts drops by itself and would swallow files dropped on the window.
  m_view->setAcceptDrops(false);
  m_view->viewport()->setAcceptDrops(false);
  m_view->setBackgroundBrush(Qt::NoBrush);
  m_view->viewport()->setAutoFillBackground(false);
  m_overlay = new CursorOverlay(this);
  connect(feed, &AnalysisFeed::analysisChanged, this, &ProfileChart::refresh);
  connect(look, &Look::changed, this, &ProfileChart::applyLook);
  connect(ruler, &Ruler::changed, this, &ProfileChart::place);
  connect(ruler, &Ruler::cursorMoved, this, [this] {
    setAccessibleDescription(readout());
    m_overlay->update();
  });
  applyLook();
}

QSize ProfileChart::minimumSizeHint() const { return {400, m_look->px(kHeight - 20)}; }

QSize ProfileChart::sizeHint() const { return {1366, m_look->px(kHeight)}; }

QRectF ProfileChart::plotArea() const {
  const double top = m_look->px(kTop);
  return {m_ruler->left(), top, m_ruler->right() - m_ruler->left(),
          height() - top - m_look->px(kBottom)};
}

void ProfileChart::place() {
  m_view->setGeometry(rect());
  m_overlay->setGeometry(rect());
  m_chart->setPlotArea(plotArea());
  // A new plot area reaches the axes only with the next layout: now, or they lag one resize behind.
  m_chart->layout()->invalidate();
  m_chart->layout()->activate();
  m_feet->setRange(m_ruler->from().feet(), m_ruler->to().feet());
  m_overlay->update();
}

void ProfileChart::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place();
}

void ProfileChart::setAxis(double highest, double total) {
  const double tick = tickFor(std::max(highest, 1e-3));
  const double top = std::max(tick, highest * 1.06);
  if (m_mass->tickInterval() != tick) {
    m_mass->setTickInterval(tick);
    m_mass->setLabelFormat(tick < 1 ? QStringLiteral("%.1f") : QStringLiteral("%.0f"));
  }
  if (m_mass->max() != top) m_mass->setRange(0, top);
  const double grains = std::max(total, 1e-3) * 1.06;
  if (m_grains->max() != grains) m_grains->setRange(0, grains);
}

void ProfileChart::refresh() {
  const Analysis& a = m_feed->analysis();
  const QList<QPointF> mass = thinned(massPoints(a, m_look->units()));
  double highest = 0;
  for (const QPointF& point : mass) highest = std::max(highest, point.y());
  setAxis(highest, a.totals.mass.value());
  m_upper->replace(mass);
  m_line->replace(mass);
  m_soFar->replace(thinned(grainPoints(a)));
  setAccessibleDescription(readout());
  m_overlay->update();
}

void ProfileChart::applyLook() {
  const Colours& c = m_look->colours();
  QColor wash = c.river;
  wash.setAlpha(34);
  m_area->setPen(Qt::NoPen);
  m_area->setBrush(wash);
  m_line->setPen(QPen(c.river, 2.2));
  QPen dashes(c.slate, 1.2, Qt::CustomDashLine);
  dashes.setDashPattern({5, 4});
  m_soFar->setPen(dashes);
  m_mass->setGridLinePen(QPen(c.edge, 1));
  m_mass->setLabelsColor(c.slate);
  m_mass->setLabelsFont(m_look->font(14));
  updateGeometry();
  place();
  refresh();
}

QPointF ProfileChart::position(double station_ft, double shownMass) const {
  const QPointF inChart = m_chart->mapToPosition({station_ft, shownMass}, m_line);
  return m_view->mapTo(this, m_view->mapFromScene(m_chart->mapToScene(inChart)));
}

QString ProfileChart::readout() const {
  const Analysis& a = m_feed->analysis();
  const Station at = m_ruler->cursor();
  const DisplayUnits units = m_look->units();
  if (a.rows.empty()) return tr("nothing on the line yet");
  return tr("%1: %2, %3 so far, %4 from the fly")
      .arg(stationText(at, units), lineMassText(a.profile.after(at), units),
           massText(a.profile.soFar(at), units),
           stationText(Station((a.profile.end - at).value()), units));
}

void ProfileChart::setCursorAt(double x) {
  const Analysis& a = m_feed->analysis();
  const double ft = std::clamp(m_ruler->station(x).feet(), a.profile.start.feet(),
                               std::max(a.profile.start.feet(), a.profile.end.feet()));
  m_ruler->setCursor(Station(ft));
}

void ProfileChart::keyPressEvent(QKeyEvent* event) {
  const bool left = event->key() == Qt::Key_Left;
  if (!left && event->key() != Qt::Key_Right) {
    QWidget::keyPressEvent(event);
    return;
  }
  const double step = event->modifiers() & Qt::ShiftModifier ? kFineStep_ft : kStep_ft;
  const double at = std::round(m_ruler->cursor().feet() / step) * step + (left ? -step : step);
  setCursorAt(m_ruler->x(Station(at)));
}

void ProfileChart::mousePressEvent(QMouseEvent* event) { setCursorAt(event->position().x()); }

void ProfileChart::mouseMoveEvent(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) setCursorAt(event->position().x());
}

void ProfileChart::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  m_overlay->update();
}

void ProfileChart::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  m_overlay->update();
}

}  // namespace grainwise::ui
