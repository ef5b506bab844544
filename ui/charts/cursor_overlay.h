// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/air/turnover.h"

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
  /// Where the name of the need's line stands, clear of the cursor's words; nowhere while it is not shown.
  [[nodiscard]] QRectF driveWordsBox() const;
  /// Where a station of the loop with this much line stands on the chart.
  [[nodiscard]] QPointF driveAt(const TurnoverStation& station, GrainsPerFoot mass) const;

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
