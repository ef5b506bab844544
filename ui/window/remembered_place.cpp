// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/remembered_place.h"

#include <QEvent>
#include <QScreen>
#include <QWidget>

#include "ui/window/settings.h"

namespace grainwise::ui {
namespace {
constexpr int kAroundWindow = 60;  ///< title bar and borders
constexpr int kLeastRoom = 800;    ///< no page is made for less
}

RememberedPlace::RememberedPlace(QWidget* window) : QObject(window), m_window(window) {
  window->restoreGeometry(Settings().place(window->objectName()));
  // The screen may be a smaller one today, or the type was larger then.
  const QSize room = window->screen()->availableSize() - QSize(kAroundWindow, kAroundWindow);
  if (room.width() >= kLeastRoom) window->resize(window->size().boundedTo(room));
  window->installEventFilter(this);
}

bool RememberedPlace::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_window && event->type() == QEvent::Hide) {
    Settings().setPlace(m_window->objectName(), m_window->saveGeometry());
  }
  return false;
}

}  // namespace grainwise::ui
