// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace grainwise::ui {

class ProfileChart;

/// Lies over the profile chart: the pinned cursor with its words, the axis's name, the total. Takes no
/// mouse.
class CursorOverlay : public QWidget {
  Q_OBJECT
 public:
  explicit CursorOverlay(ProfileChart* chart);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  ProfileChart* m_chart;
};

}  // namespace grainwise::ui
