// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace grainwise::ui {

class ProfileChart;

/// Lies over the profile chart: the axis's name, the fly and the total at the end of the dashed line,
/// the pinned cursor with its words. Takes no mouse.
class CursorOverlay : public QWidget {
  Q_OBJECT
 public:
  explicit CursorOverlay(ProfileChart* chart);

  /// Where the cursor's words stand: beside the cursor, always whole within the chart.
  [[nodiscard]] QRectF readoutBox() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintAxisName(QPainter& p) const;
  void paintTotal(QPainter& p) const;
  void paintDrive(QPainter& p) const;
  void paintCursor(QPainter& p) const;

  ProfileChart* m_chart;
};

}  // namespace grainwise::ui
