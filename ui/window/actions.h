// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QKeySequence>
#include <QList>
#include <QObject>

class QAction;
class QActionGroup;
class QMenu;
class QUndoGroup;
class QWidget;

namespace grainwise::ui {

class Look;

/// Every action of the window with its words and key, and the menus that show them. What they do is
/// connected by the window.
class Actions : public QObject {
  Q_OBJECT
 public:
  Actions(Look* look, QUndoGroup* undo, QWidget* window);

  /// The action that shows a face: the next of Ctrl+1, Ctrl+2...
  QAction* addFace(const QString& key, const QString& words);

  [[nodiscard]] QMenu* menu() const { return m_menu; }
  [[nodiscard]] QMenu* unitsMenu() const { return m_units; }
  [[nodiscard]] QMenu* recentMenu() const { return m_recent; }
  [[nodiscard]] QMenu* samplesMenu() const { return m_samples; }
  /// The pictures and tables on screen; filled when it opens.
  [[nodiscard]] QMenu* outMenu() const { return m_out; }
  /// Marks the language of the menu that is chosen.
  void showLanguage(const QString& code);
  [[nodiscard]] const QList<QAction*>& all() const { return m_all; }

  QAction* newRig;
  QAction* fromRod;
  QAction* open;
  QAction* save;
  QAction* saveAs;
  QAction* print;
  QAction* exportFile;
  QAction* copyPicture;
  QAction* copyTable;
  QAction* quit;
  QAction* undo;
  QAction* redo;
  QAction* editPart;
  QAction* moveToRod;
  QAction* moveToFly;
  QAction* duplicate;
  QAction* remove;
  QAction* shelf;
  QAction* part;
  QAction* make;
  QAction* weigh;
  QAction* tips;
  QAction* fixes;
  QAction* pools;
  QAction* wallet;
  QAction* cast;
  QAction* river;
  QAction* depths;
  QAction* rod;
  QAction* water;
  QAction* rename;
  QAction* settings;
  QAction* larger;
  QAction* smaller;
  QAction* help;
  QAction* whatsThis;
  QAction* pointAndAsk;
  QAction* about;
  QAction* takeCard;
  QAction* showDeck;
  QAction* showFromHere;
  QAction* printFour;
  QAction* swapRigs;
  QAction* copyAcross;
  QAction* alignFly;
  QAction* oneWater;

 Q_SIGNALS:
  /// Another language was chosen, by its code; empty for the system's. The window speaks it from its
  /// next start.
  void languageChosen(const QString& code);

 private:
  QAction* add(QMenu* menu, const QString& name, const QString& words, const QKeySequence& key = {});
  void addFile(QMenu* menu);
  void addEdit(QMenu* menu, QUndoGroup* stacks);
  void addView(QMenu* menu);
  void addCompare(QMenu* menu);
  void addClinic(QMenu* menu);
  void addUnits();
  void addLanguages(QMenu* menu);
  QAction* addChoice(QMenu* menu, QActionGroup* group, const QString& words, bool checked);

  Look* m_look;
  QWidget* m_window;
  QMenu* m_menu;
  QMenu* m_units;
  QMenu* m_recent;
  QMenu* m_samples;
  QMenu* m_out;
  QMenu* m_view;
  QActionGroup* m_faces;
  QActionGroup* m_languages;
  QAction* m_firstOfView;
  QList<QAction*> m_all;
};

}  // namespace grainwise::ui
