// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QPainter;

namespace grainwise::ui {

class StripView;

/// Lies over the blocks and takes no mouse: the pinned cursor, the dotted lines down from the
/// tags, and the mark that says that the running line is cut short.
class StripOverlay : public QWidget {
  Q_OBJECT
 public:
  explicit StripOverlay(StripView* strip);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paintBreak(QPainter& p) const;

  StripView* m_strip;
};

}  // namespace grainwise::ui
