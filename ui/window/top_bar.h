// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QWidget>

#include "ui/theme/look.h"

class QAction;
class QMenu;

namespace grainwise::ui {

class PillButton;
class RigDocument;

/// The band at the top: menu, the rig's name with its unsaved mark, the rod and the water as two
/// sentences that open their panels; at the right end undo, redo, units, type size.
class TopBar : public QWidget {
  Q_OBJECT
 public:
  TopBar(Look* look, RigDocument* document, QMenu* menu, QMenu* units, QWidget* parent = nullptr);

  /// A pill that shows a face; none while there is only one.
  void addFace(QAction* action);
  /// The rig's name, rod and water; a face with several rigs names its own.
  void setSentencesShown(bool shown);
  /// Other words on the button of an action ("Undo in B").
  void setWords(QAction* action, const QString& words);
  /// A button at the right end that does what `action` does, in the short words given.
  void addActionButton(QAction* action, const QString& words);

  /// Room for the menu, the faces and the rig's name; the rest gives way.
  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  void nameRequested();
  void rodRequested();
  void waterRequested();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  bool event(QEvent* event) override;

 private:
  void fit();
  PillButton* addSentence(const QString& objectName);
  void refresh();

  Look* m_look;
  RigDocument* m_document;
  QList<PillButton*> m_faces;
  PillButton* m_menu;
  PillButton* m_name;
  PillButton* m_rod;
  PillButton* m_water;
  PillButton* m_units;
  QList<PillButton*> m_buttons;  ///< of actions, from left to right
  bool m_sentencesShown = true;
};

}  // namespace grainwise::ui
