// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

class QKeyEvent;

namespace grainwise::ui {

class DeckRun;

/// Hears the keys of a presenter's remote and of the keyboard while a deck is shown, before whatever
/// widget has the focus: PageDown, Right, Space, Enter go on; PageUp, Left, Backspace go back; B and `.` blank; H
/// hides the numbers; S is slow motion; E edits the card's rig; Escape ends. Letters, arrows, Space and
/// Backspace stay with a field that is being typed in, and with the rig while it is being edited.
class RemoteKeys : public QObject {
  Q_OBJECT
 public:
  /// Listens as long as it lives.
  explicit RemoteKeys(DeckRun* run, QObject* parent = nullptr);
  ~RemoteKeys() override;

 Q_SIGNALS:
  void editRequested();
  void endRequested();

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  enum class Act { none, next, back, blank, numbers, slow, edit, end };
  [[nodiscard]] Act actOf(const QKeyEvent& key) const;
  void run(Act act);

  DeckRun* m_run;
};

}  // namespace grainwise::ui
