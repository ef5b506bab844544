// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/show_window.h"

#include <QCloseEvent>
#include <QMouseEvent>
#include <QScreen>
#include <QVBoxLayout>

#include "ui/clinic/card_view.h"
#include "ui/clinic/deck_run.h"

namespace grainwise::ui {

ShowWindow::ShowWindow(Look* look, DeckRun* run)
    : QWidget(nullptr, Qt::Window | Qt::FramelessWindowHint), m_run(run) {
  setObjectName(QStringLiteral("show"));
  setWindowTitle(tr("Grainwise: for the class"));
  setFocusPolicy(Qt::StrongFocus);
  m_view = new CardView(look, this);
  m_view->setObjectName(QStringLiteral("showCard"));
  m_view->setCursor(Qt::BlankCursor);
  m_column = new QVBoxLayout(this);
  m_column->setContentsMargins(0, 0, 0, 0);
  m_column->setSpacing(0);
  m_column->addWidget(m_view, 3);
  connect(run, &DeckRun::changed, this, &ShowWindow::follow);
  follow();
}

void ShowWindow::openOn(QScreen* screen) {
  if (screen) {
    setScreen(screen);
    setGeometry(screen->geometry());
  }
  showFullScreen();
  activateWindow();
  setFocus();
}

void ShowWindow::setPanel(QWidget* panel) {
  if (panel == m_panel) return;
  if (m_panel) {
    m_column->removeWidget(m_panel);
    m_panel->hide();
  }
  m_panel = panel;
  if (!m_panel) return;
  m_column->addWidget(m_panel, 4);
  m_panel->show();
}

void ShowWindow::follow() {
  m_view->setCard(m_run->shown(), m_run->state());
  m_view->setBlank(m_run->blank());
}

void ShowWindow::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) m_run->next();
  if (event->button() == Qt::RightButton) m_run->back();
}

void ShowWindow::closeEvent(QCloseEvent* event) {
  event->accept();
  Q_EMIT closed();
}

}  // namespace grainwise::ui
