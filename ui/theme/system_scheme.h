// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPalette>

namespace grainwise::ui {

class Look;

/// Whether a palette is a dark one: its words are lighter than what they stand on.
bool isDark(const QPalette& palette);

/// Keeps the application in the colours of the look, and the look in step with the desktop. Qt 6.4 has
/// no call for a desktop's scheme; its palette tells. The application wears the look's palette over
/// the desktop's, which is uncovered for a moment where it has to be read.
class SystemScheme {
 public:
  /// Reads the desktop as it is.
  explicit SystemScheme(Look* look);

  /// Puts the look's palette on the application.
  void wear();
  /// The application came to another palette (QEvent::ApplicationPaletteChange).
  void paletteChanged();
  /// The desktop changed its theme (QEvent::ThemeChange), which the look's palette hides.
  void themeChanged();

 private:
  void put(const QPalette& palette);
  void read();

  Look* m_look;
  bool m_putting = false;
};

}  // namespace grainwise::ui
