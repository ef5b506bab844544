// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/remembered_place.h"

#include <QEvent>
#include <QWidget>

#include "ui/window/settings.h"

namespace grainwise::ui {

RememberedPlace::RememberedPlace(QWidget* window) : QObject(window), m_window(window) {
  window->restoreGeometry(Settings().place(window->objectName()));
  window->installEventFilter(this);
}

bool RememberedPlace::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_window && event->type() == QEvent::Hide) {
    Settings().setPlace(m_window->objectName(), m_window->saveGeometry());
  }
  return false;
}

}  // namespace grainwise::ui
