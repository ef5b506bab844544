// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPointF>
#include <QWidget>
#include <vector>

#include "core/units/station.h"
#include "ui/theme/look.h"

class QChart;
class QChartView;
class QLineSeries;
class QValueAxis;

namespace grainwise::ui {

class AnalysisFeed;
class CursorOverlay;
class Ruler;

/// What each foot weighs: grains per foot as an area over feet from the back of the head, exactly on the
/// ruler of the line above it, with the grains so far as a dashed line on an axis of its own. The pinned
/// cursor is moved by Left and Right (half a foot; with Shift a tenth), a click or a drag.
/// Axis and lines are Qt Charts'; the area and the grid, which cost it most of a frame, are filled here.
class ProfileChart : public QWidget {
  Q_OBJECT
 public:
  ProfileChart(Look* look, AnalysisFeed* feed, Ruler* ruler, QWidget* parent = nullptr);

  /// Where a station and a mass per length (in the shown unit) stand in this widget, as the chart
  /// itself maps them.
  [[nodiscard]] QPointF position(double station_ft, double shownMass) const;
  /// The same on the axis of the grains so far.
  [[nodiscard]] QPointF grainPosition(double station_ft, double grains) const;
  /// What the cursor says: "14.0 ft: 24.1 gr/ft, 328 gr so far, 23.0 ft from the fly".
  [[nodiscard]] QString readout() const;
  /// The picture for the ear.
  [[nodiscard]] QString spokenSummary() const;

  /// Draws what the loop needs along the line beside what each foot gives, the stretch that gives less
  /// shaded.
  void setDriveShown(bool shown);
  [[nodiscard]] bool driveShown() const { return m_driveShown; }

  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  friend class CursorOverlay;
  void makeAxesAndSeries();
  void makeView();
  void refresh();
  void applyLook();
  void place();
  void fit();
  void smooth(bool smooth);
  [[nodiscard]] std::vector<int> areaTops(const QRectF& plot, int from, int column) const;
  void paintArea(QPainter& p, const QRectF& plot) const;
  void paintGrid(QPainter& p, const QRectF& plot) const;
  void cursorChanged();
  void setCursorAt(Station station);
  void setCursorAt(QMouseEvent* event);
  void setAxes(double highest, double total);
  [[nodiscard]] QPointF position(QLineSeries* series, double x, double y) const;
  [[nodiscard]] QRectF plotArea() const;

  Look* m_look;
  AnalysisFeed* m_feed;
  Ruler* m_ruler;
  QChart* m_chart;
  QChartView* m_view;
  QLineSeries* m_line;
  QLineSeries* m_soFar;
  QValueAxis* m_feet;
  QValueAxis* m_mass;
  QValueAxis* m_grains;
  CursorOverlay* m_overlay;
  QList<QPointF> m_masses;  ///< the line as it is drawn, feet and mass as shown
  int m_drawn = -1;         ///< the run of the feed that is drawn
  bool m_driveShown = false;
};

}  // namespace grainwise::ui
