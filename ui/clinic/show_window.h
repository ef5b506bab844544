// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

class QScreen;
class QVBoxLayout;

namespace grainwise::ui {

class CardView;
class DeckRun;

/// What the class sees: the card over a whole screen, nothing else. A click goes on.
class ShowWindow : public QWidget {
  Q_OBJECT
 public:
  ShowWindow(Look* look, DeckRun* run);

  void openOn(QScreen* screen);
  [[nodiscard]] CardView* view() const { return m_view; }
  /// A panel under the card, where there is no second screen for it; null takes it away.
  void setPanel(QWidget* panel);

 Q_SIGNALS:
  void closed();

 protected:
  void mousePressEvent(QMouseEvent* event) override;
  void closeEvent(QCloseEvent* event) override;

 private:
  void follow();

  DeckRun* m_run;
  CardView* m_view;
  QVBoxLayout* m_column;
  QWidget* m_panel = nullptr;
};

}  // namespace grainwise::ui
