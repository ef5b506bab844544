// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

namespace grainwise::ui {

class Ruler;

/// The pinned cursor over the blocks: a thin line at the ruler's station, with a knob while the arrow
/// keys move it. Lets every click through.
class StripOverlay : public QWidget {
  Q_OBJECT
 public:
  StripOverlay(Look* look, Ruler* ruler, QWidget* parent);
  void setSpan(double top, bool keyboard);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void follow();
  [[nodiscard]] QRect strokeAt(double x) const;

  Look* m_look;
  Ruler* m_ruler;
  double m_top = 0;
  bool m_keyboard = false;
  double m_x = -1;
};

}  // namespace grainwise::ui
