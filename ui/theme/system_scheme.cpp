// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/system_scheme.h"

#include <QApplication>

#include "ui/theme/look.h"

namespace grainwise::ui {
namespace {

/// What the application wears of ours, if it does: windows come and go, the palette stays.
QPalette& worn() {
  static QPalette palette;
  return palette;
}

}  // namespace

bool isDark(const QPalette& palette) {
  return palette.color(QPalette::Active, QPalette::WindowText).lightness() >
         palette.color(QPalette::Active, QPalette::Window).lightness();
}

SystemScheme::SystemScheme(Look* look) : m_look(look) {
  QApplication::palette() == worn() ? themeChanged() : read();
}

void SystemScheme::put(const QPalette& palette) {
  m_putting = true;  // the application tells of this change too
  QApplication::setPalette(palette);
  m_putting = false;
}

void SystemScheme::read() { m_look->setSystemDark(isDark(QApplication::palette())); }

void SystemScheme::wear() {
  worn() = m_look->palette();
  put(worn());
}

void SystemScheme::paletteChanged() {
  if (m_putting || QApplication::palette() == worn()) return;
  read();
  wear();
}

void SystemScheme::themeChanged() {
  put(QPalette());
  read();
  wear();
}

}  // namespace grainwise::ui
