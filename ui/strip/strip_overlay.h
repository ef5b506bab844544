// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace grainwise::ui {

class StripView;

/// Lies over the blocks and takes no mouse: the pinned cursor and the dotted lines down from the tags.
class StripOverlay : public QWidget {
  Q_OBJECT
 public:
  explicit StripOverlay(StripView* strip);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  StripView* m_strip;
};

}  // namespace grainwise::ui
