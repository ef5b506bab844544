// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/profile_chart.h"

#include <QAccessibleWidget>
#include <QChart>
#include <QChartView>
#include <QGraphicsLayout>
#include <QKeyEvent>
#include <QLineSeries>
#include <QMouseEvent>
#include <QPainter>
#include <QValueAxis>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/charts/axis_ticks.h"
#include "ui/charts/cursor_overlay.h"
#include "ui/charts/profile_points.h"
#include "ui/strip/ruler.h"
#include "ui/text/quantities.h"
#include "ui/theme/ground.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

// Pixels at type scale 1.
constexpr int kHeight = 150;
constexpr int kLeastHeight = 124;
constexpr int kTop = 26;
constexpr int kBottom = 11;
constexpr int kAxisType = 14;
constexpr int kWidth = 1366;
constexpr int kLeastWidth = 400;
/// Columns in which a line of many points is thinned, in window pixels; one so dense that only its upper and
/// lower edge are seen, and the grains so far, which only rise, in wider ones.
constexpr double kColumn_px = 6;
constexpr double kWideColumn_px = 16;
/// Columns of the area that are filled at once as far as all of them reach.
constexpr std::size_t kTogether = 64;
constexpr double kStep_ft = 0.5;
constexpr double kFineStep_ft = 0.1;
/// Of the river's colour in the area under the line.
constexpr double kWash = 34.0 / 255;
/// Room above the highest point, as a share of it.
constexpr double kHeadroom = 1.06;
constexpr double kLeastTop = 1e-3;
/// Nylon alone keeps this scale, so that it does not look heavy.
constexpr GrainsPerFoot kLeastHighest(5);

/// `share` of `over` laid on `under`, as one colour that hides what is behind it.
QColor laidOn(const QColor& under, const QColor& over, double share) {
  const auto mixed = [share](float a, float b) { return float(a + (b - a) * share); };
  return QColor::fromRgbF(mixed(under.redF(), over.redF()), mixed(under.greenF(), over.greenF()),
                          mixed(under.blueF(), over.blueF()));
}

/// A chart is one thing to a screen reader: its name, its summary; the view inside has nothing to say.
class ChartForTheEar : public QAccessibleWidget {
 public:
  explicit ChartForTheEar(QWidget* chart) : QAccessibleWidget(chart, QAccessible::Chart) {}
  [[nodiscard]] int childCount() const override { return 0; }
  [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
  [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
};

QAccessibleInterface* chartForTheEar(const QString&, QObject* object) {
  auto* chart = qobject_cast<ProfileChart*>(object);
  return chart != nullptr ? new ChartForTheEar(chart) : nullptr;
}

}  // namespace

ProfileChart::ProfileChart(Look* look, AnalysisFeed* feed, Ruler* ruler, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed), m_ruler(ruler) {
  static const bool installed = (QAccessible::installFactory(chartForTheEar), true);
  Q_UNUSED(installed);
  setFocusPolicy(Qt::StrongFocus);
  setAttribute(Qt::WA_OpaquePaintEvent);
  setAccessibleName(tr("What each foot weighs"));
  setToolTip(tr("Left and Right move the line by half a foot, with Shift by a tenth"));
  makeAxesAndSeries();
  makeView();
  m_overlay = new CursorOverlay(this);
  connect(feed, &AnalysisFeed::analysisChanged, this, &ProfileChart::refresh);
  connect(look, &Look::changed, this, &ProfileChart::applyLook);
  connect(ruler, &Ruler::changed, this, &ProfileChart::place);
  connect(ruler, &Ruler::cursorMoved, this, &ProfileChart::cursorChanged);
  applyLook();
}

void ProfileChart::makeAxesAndSeries() {
  m_chart = new QChart;
  m_chart->setAnimationOptions(QChart::NoAnimation);
  m_chart->setBackgroundVisible(false);
  m_chart->setMargins({});
  m_chart->legend()->hide();
  m_line = new QLineSeries;
  m_soFar = new QLineSeries;
  m_feet = new QValueAxis;
  m_mass = new QValueAxis;
  m_grains = new QValueAxis;
  // Labels that are never seen would be laid out all the same: as few as can be.
  m_feet->setTickCount(2);
  m_grains->setTickCount(2);
  // Before the chart gives them a type of its own, which would be loaded for nothing.
  for (QValueAxis* axis : {m_feet, m_mass, m_grains}) axis->setLabelsFont(m_look->font(kAxisType));
  m_chart->addAxis(m_feet, Qt::AlignBottom);
  m_chart->addAxis(m_mass, Qt::AlignLeft);
  m_chart->addAxis(m_grains, Qt::AlignRight);
  const std::array<std::pair<QAbstractSeries*, QValueAxis*>, 2> all{{{m_line, m_mass}, {m_soFar, m_grains}}};
  for (const auto& [series, axis] : all) {
    m_chart->addSeries(series);
    series->attachAxis(m_feet);
    series->attachAxis(axis);
  }
  // The feet stand on the ruler above; the total is written at the end of its line.
  m_feet->setVisible(false);
  m_grains->setVisible(false);
  m_mass->setTickType(QValueAxis::TicksDynamic);
  m_mass->setTickAnchor(0);
  m_mass->setLineVisible(false);
  m_mass->setGridLineVisible(false);
}

void ProfileChart::makeView() {
  m_view = new QChartView(m_chart, this);
  m_view->setRenderHint(QPainter::Antialiasing);
  m_view->setFrameShape(QFrame::NoFrame);
  // Painted with this widget; by itself the scene would ask for a second picture behind every edit.
  m_view->setViewportUpdateMode(QGraphicsView::NoViewportUpdate);
  m_view->setFocusPolicy(Qt::NoFocus);
  m_view->setAttribute(Qt::WA_TransparentForMouseEvents);
  // A chart view accepts drops by itself and would swallow files dropped on the window.
  m_view->setAcceptDrops(false);
  m_view->viewport()->setAcceptDrops(false);
  m_view->setBackgroundBrush(Qt::NoBrush);
  m_view->viewport()->setAutoFillBackground(false);
}

void ProfileChart::setDriveShown(bool shown) {
  if (shown == m_driveShown) return;
  m_driveShown = shown;
  m_overlay->update();
}

QSize ProfileChart::minimumSizeHint() const { return {kLeastWidth, m_look->px(kLeastHeight)}; }

QSize ProfileChart::sizeHint() const { return {kWidth, m_look->px(kHeight)}; }

QRectF ProfileChart::plotArea() const {
  const double top = m_look->px(kTop);
  return {m_ruler->left(), top, m_ruler->right() - m_ruler->left(),
          height() - top - m_look->px(kBottom)};
}

/// The ruler has moved. When it did for an edit, the news of the edit comes next and draws all of it.
void ProfileChart::place() {
  if (m_drawn != m_feed->runs()) return;
  fit();
  update();
}

void ProfileChart::fit() {
  m_view->setGeometry(rect());
  m_overlay->setGeometry(rect());
  if (m_chart->plotArea() != plotArea()) {
    m_chart->setPlotArea(plotArea());
    // A new plot area reaches the axes only with the next layout: now, or they lag one resize behind.
    m_chart->layout()->invalidate();
    m_chart->layout()->activate();
  }
  m_feet->setRange(m_ruler->from().feet(), m_ruler->to().feet());
}

void ProfileChart::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  place();
}

void ProfileChart::setAxes(double highest, double total) {
  const double tick = gridStep(std::max(highest, kLeastTop));
  const double top = std::max(tick, highest * kHeadroom);
  if (m_mass->tickInterval() != tick) {
    m_mass->setTickInterval(tick);
    m_mass->setLabelFormat(tick < 1 ? QStringLiteral("%.1f") : QStringLiteral("%.0f"));
  }
  if (m_mass->max() != top) m_mass->setRange(0, top);
  const double grains = std::max(total, kLeastTop) * kHeadroom;
  if (m_grains->max() != grains) m_grains->setRange(0, grains);
}

/// A dense line is drawn fine and without smoothing.
void ProfileChart::smooth(bool smooth) {
  m_view->setRenderHint(QPainter::Antialiasing, smooth);
  QPen dashes(m_look->colours().slate, smooth ? 1.4 : 1.0, Qt::CustomDashLine, Qt::FlatCap);
  dashes.setDashPattern({4, 3});
  m_soFar->setPen(dashes);
  // Qt finds the angle of every corner for a join that is not the plain one.
  m_line->setPen(QPen(m_look->colours().river, smooth ? 2.2 : 1.0, Qt::SolidLine, Qt::FlatCap,
                      smooth ? Qt::MiterJoin : Qt::BevelJoin));
}

void ProfileChart::refresh() {
  const Analysis& a = m_feed->analysis();
  m_drawn = m_feed->runs();
  const double perPixel_ft = 1 / m_ruler->pixelsPerFoot();
  const double column_ft = (isDense(a) ? kWideColumn_px : kColumn_px) * perPixel_ft;
  m_masses = thinned(massPoints(a, m_look->units()), column_ft);
  double highest = shownValue(kLeastHighest.value(), Measure::lineMass, m_look->units());
  for (const QPointF& point : std::as_const(m_masses)) highest = std::max(highest, point.y());
  // Without points while the axes change: each change would outline the old ones anew.
  m_line->replace(QList<QPointF>());
  m_soFar->replace(QList<QPointF>());
  m_mass->setVisible(!a.rows.empty());  // no figures beside nothing
  fit();
  setAxes(highest, a.totals.mass.value());
  smooth(!isDense(a));
  m_line->replace(m_masses);
  m_soFar->replace(thinned(grainPoints(a), kWideColumn_px * perPixel_ft));
  cursorChanged();
  update();
}

void ProfileChart::cursorChanged() {
  setAccessibleDescription(spokenSummary());
  m_overlay->update();
}

void ProfileChart::applyLook() {
  const Colours& c = m_look->colours();
  m_mass->setLabelsColor(c.slate);
  m_mass->setLabelsFont(m_look->font(kAxisType));
  m_chart->layout()->invalidate();  // for the room that the labels take
  m_chart->layout()->activate();
  updateGeometry();
  refresh();
}

/// The upper edge of the area in every column of the plot that the line reaches, `column` px wide, from `from` on.
std::vector<int> ProfileChart::areaTops(const QRectF& plot, int from, int column) const {
  const double left = m_ruler->x(Station(0));
  const double perFoot = m_ruler->pixelsPerFoot();
  const auto xOf = [&](const QPointF& point) { return left + point.x() * perFoot; };
  const int end = int(std::round(xOf(m_masses.last())));
  std::vector<int> tops;
  qsizetype i = 0;
  for (int x = from; x < end; x += column) {
    const double middle = x + column / 2.0;
    while (i + 2 < m_masses.size() && xOf(m_masses[i + 1]) < middle) ++i;
    const QPointF& a = m_masses[i];
    const QPointF& b = m_masses[std::min(i + 1, m_masses.size() - 1)];
    const double wide = xOf(b) - xOf(a);
    const double share = wide > 0 ? std::clamp((middle - xOf(a)) / wide, 0.0, 1.0) : 1.0;
    const double value = a.y() + (b.y() - a.y()) * share;
    tops.push_back(int(std::round(plot.bottom() - plot.height() * value / m_mass->max())));
  }
  return tops;
}

/// As many columns at once as reach one height, and what rises above it column by column: tall narrow
/// rectangles are slow to fill. Its edge lies under the line.
void ProfileChart::paintArea(QPainter& p, const QRectF& plot) const {
  if (m_masses.isEmpty()) return;
  const QColor colour = laidOn(m_look->colours().paper, m_look->colours().river, kWash);
  const int bottom = int(std::round(plot.bottom()));
  const int left = int(std::round(m_ruler->x(Station(m_masses.first().x()))));
  const int column = isDense(m_feed->analysis()) ? 2 : 1;
  const std::vector<int> tops = areaTops(plot, left, column);
  const auto fill = [&](std::size_t from, std::size_t end, int top, int to) {
    p.fillRect(QRect(left + int(from) * column, top, int(end - from) * column, to - top), colour);
  };
  for (std::size_t from = 0; from < tops.size(); from += kTogether) {
    const std::size_t end = std::min(from + kTogether, tops.size());
    const int lowest = *std::max_element(tops.begin() + std::ptrdiff_t(from), tops.begin() + std::ptrdiff_t(end));
    fill(from, end, lowest, bottom);
    for (std::size_t i = from; i < end;) {
      const std::size_t first = i;
      while (i < end && tops[i] == tops[first]) ++i;
      fill(first, i, tops[first], lowest);
    }
  }
}

void ProfileChart::paintGrid(QPainter& p, const QRectF& plot) const {
  if (m_feed->analysis().rows.empty()) return;
  for (int i = 0; i * m_mass->tickInterval() <= m_mass->max(); ++i) {
    const double y = plot.bottom() - plot.height() * i * m_mass->tickInterval() / m_mass->max();
    p.fillRect(QRectF(plot.left(), std::floor(y), plot.width(), 1), m_look->colours().edge);
  }
}

void ProfileChart::paintEvent(QPaintEvent*) {
  QPainter p(this);
  paintGround(p, this, m_look->colours().paper);
  paintArea(p, plotArea());
  paintGrid(p, plotArea());
}

QPointF ProfileChart::position(QLineSeries* series, double x, double y) const {
  const QPointF inScene = m_chart->mapToScene(m_chart->mapToPosition({x, y}, series));
  return m_view->viewportTransform().map(inScene) + QPointF(m_view->pos());
}

QPointF ProfileChart::position(double station_ft, double shownMass) const {
  return position(m_line, station_ft, shownMass);
}

QPointF ProfileChart::grainPosition(double station_ft, double grains) const {
  return position(m_soFar, station_ft, grains);
}

QString ProfileChart::readout() const {
  const Analysis& a = m_feed->analysis();
  if (a.rows.empty()) return tr("nothing on the line yet");
  const DisplayUnits units = m_look->units();
  const Station at = m_ruler->cursor();
  const MassProfile& line = a.profile;
  if (at > line.end) return tr("%1: past the end of the line").arg(stationText(at, units));
  const GrainsPerFoot mass = at < line.end ? line.after(at) : line.before(at);
  const QString rest = roundLengthText(line.end - at, units);
  const bool fly = m_feed->rig()->flyIndex().has_value();
  return (fly ? tr("%1: %2, %3 so far, %4 from the fly") : tr("%1: %2, %3 so far, %4 from the end"))
      .arg(stationText(at, units), lineMassText(mass, units), massText(line.soFar(at), units), rest);
}

QString ProfileChart::spokenSummary() const {
  const Analysis& a = m_feed->analysis();
  if (a.rows.empty()) return readout();
  const DisplayUnits units = m_look->units();
  const auto heaviest =
      std::max_element(a.rows.begin(), a.rows.end(), [](const ProfileRow& x, const ProfileRow& y) {
        return x.mass < y.mass;
      });
  return tr("%1 of line, %2 in all, heaviest at %3 with %4. The cursor is at %5.")
      .arg(lengthText(a.totals.length, units), massText(a.totals.mass, units),
           stationText(heaviest->at, units), lineMassText(heaviest->mass, units), readout());
}

/// To a tenth of a foot, so that what stands in the readout is where the cursor is.
void ProfileChart::setCursorAt(Station station) {
  const MassProfile& line = m_feed->analysis().profile;
  const double ft = std::round(station.feet() / kFineStep_ft) * kFineStep_ft;
  m_ruler->setCursor(std::clamp(Station(ft), line.start, std::max(line.start, line.end)));
}

void ProfileChart::setCursorAt(QMouseEvent* event) {
  if (event->buttons() & Qt::LeftButton) setCursorAt(m_ruler->station(event->position().x()));
}

void ProfileChart::keyPressEvent(QKeyEvent* event) {
  const bool left = event->key() == Qt::Key_Left;
  if (!left && event->key() != Qt::Key_Right) {
    QWidget::keyPressEvent(event);
    return;
  }
  const double step = event->modifiers() & Qt::ShiftModifier ? kFineStep_ft : kStep_ft;
  setCursorAt(m_ruler->cursor() + Feet(left ? -step : step));
}

void ProfileChart::mousePressEvent(QMouseEvent* event) { setCursorAt(event); }

void ProfileChart::mouseMoveEvent(QMouseEvent* event) { setCursorAt(event); }

void ProfileChart::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  m_overlay->update();
}

void ProfileChart::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  m_overlay->update();
}

}  // namespace grainwise::ui
