// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

class QLabel;

namespace grainwise::ui {

class PillButton;
class Trial;

/// What is tried on, with "take it" and "put it back", seen only while something is. Enter anywhere in
/// `reach` takes it, Escape anywhere on the face puts it back, and so does the first key or press on `line`:
/// what is worked on there is the rig's own.
class TrialBar : public QWidget {
  Q_OBJECT
 public:
  TrialBar(Look* look, Trial* trial, QWidget* parent);
  void setReach(QWidget* face, QWidget* line, QWidget* reach);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void follow();
  void elide();
  [[nodiscard]] bool key(QWidget* at, int key);
  void applyLook();

  Look* m_look;
  Trial* m_trial;
  QWidget* m_face = nullptr;
  QWidget* m_line = nullptr;
  QWidget* m_reach = nullptr;
  QLabel* m_words;
  PillButton* m_take;
  PillButton* m_back;
};

}  // namespace grainwise::ui
