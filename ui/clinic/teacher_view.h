// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include "ui/theme/look.h"

class QLabel;
class QListWidget;
class QPlainTextEdit;
class QPushButton;
class QVBoxLayout;

namespace grainwise::ui {

class CardView;
class DeckRun;

/// The laptop while a deck is shown: the card that the class sees, the one that comes, notes and answer, the
/// clock, all cards to jump to, and what the remote does as buttons.
class TeacherView : public QWidget {
  Q_OBJECT
 public:
  explicit TeacherView(Look* look, QWidget* parent = nullptr);

  /// Follows a run; null lets go of it.
  void setRun(DeckRun* run);
  /// A panel in the place of notes and next card; null takes it away.
  void setPanel(QWidget* panel);
  [[nodiscard]] QString notes() const;

 Q_SIGNALS:
  void editRequested();
  void endRequested();

 private:
  void follow();
  void tick();
  void applyLook();
  QPushButton* addButton(const QString& name, const QString& words);

  Look* m_look;
  DeckRun* m_run = nullptr;
  CardView* m_now;
  CardView* m_next;
  QLabel* m_clock;
  QLabel* m_where;
  QPlainTextEdit* m_notes;
  QListWidget* m_list;
  QWidget* m_side;
  QWidget* m_buttons;
  QVBoxLayout* m_column;
  QPushButton* m_back;
  QPushButton* m_on;
  QPushButton* m_blank;
  QPushButton* m_numbers;
  QPushButton* m_slow;
  QPushButton* m_edit;
  QWidget* m_panel = nullptr;
  QElapsedTimer m_since;
  QTimer m_tick;
};

}  // namespace grainwise::ui
