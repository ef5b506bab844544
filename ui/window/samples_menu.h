// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QMenu;

namespace grainwise::ui {

class MainWindow;

/// The decks and rigs that the program carries, under their names in the window's language, each opened as an
/// untitled copy. A deck that is not in that language is there in English.
/// They are read when the menu is first opened, not at the start.
class SamplesMenu : public QObject {
  Q_OBJECT
 public:
  SamplesMenu(QMenu* menu, MainWindow* window);

 private:
  void fill();
  void addDecks();
  /// Those whose files are named so, under a heading.
  void addRigs(const QString& heading, const QString& files);

  QMenu* m_menu;
  MainWindow* m_window;
};

}  // namespace grainwise::ui
