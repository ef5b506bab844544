// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QMenu;

namespace grainwise::ui {

class Actions;
class WayOut;

/// The window's own way to the pictures and tables that are on screen: a menu that lists them all, and a
/// key each for the one that has the keyboard.
class OutMenu : public QObject {
  Q_OBJECT
 public:
  OutMenu(Actions* actions, QWidget* window);

 private:
  void fill(QMenu* menu);
  /// Of what has the keyboard, else of the first on screen.
  [[nodiscard]] WayOut* meant() const;

  QWidget* m_window;
};

}  // namespace grainwise::ui
