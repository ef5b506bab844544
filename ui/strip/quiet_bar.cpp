// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/quiet_bar.h"

#include <QScrollBar>

namespace grainwise::ui {

void quieten(QScrollBar* bar, const Look& look) {
  const Colours& c = look.colours();
  const QString style =
      QStringLiteral(
          "QScrollBar { background: %1; border: none; width: 16px; height: 16px; }"
          "QScrollBar::handle { background: %2; border-radius: 4px; margin: 4px;"
          " min-height: 36px; min-width: 36px; }"
          "QScrollBar::handle:hover { background: %3; }"
          "QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }"
          "QScrollBar::add-page, QScrollBar::sub-page { background: none; }")
          .arg(c.band.name(), c.slate.name(), c.ink.name());
  if (bar->styleSheet() != style) bar->setStyleSheet(style);
}

}  // namespace grainwise::ui
