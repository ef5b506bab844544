// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/remote_keys.h"

#include <QAbstractSpinBox>
#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QTextEdit>
#include <QWidget>

#include "ui/clinic/deck_run.h"

namespace grainwise::ui {
namespace {

bool isTypedIn(const QWidget* widget) {
  if (const auto* line = qobject_cast<const QLineEdit*>(widget)) return !line->isReadOnly();
  if (const auto* plain = qobject_cast<const QPlainTextEdit*>(widget)) return !plain->isReadOnly();
  if (const auto* rich = qobject_cast<const QTextEdit*>(widget)) return !rich->isReadOnly();
  return qobject_cast<const QAbstractSpinBox*>(widget) != nullptr;
}

}  // namespace

RemoteKeys::RemoteKeys(DeckRun* run, QObject* parent) : QObject(parent), m_run(run) {
  qApp->installEventFilter(this);
}

RemoteKeys::~RemoteKeys() { qApp->removeEventFilter(this); }

RemoteKeys::Act RemoteKeys::actOf(const QKeyEvent& key) const {
  const auto modifiers = key.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier);
  if (modifiers != Qt::NoModifier) return Act::none;
  switch (key.key()) {
    case Qt::Key_PageDown:
      return Act::next;
    case Qt::Key_PageUp:
      return Act::back;
    case Qt::Key_Escape:
      return Act::end;
    default:
      break;
  }
  if (isTypedIn(QApplication::focusWidget())) return Act::none;
  if (key.key() == Qt::Key_E) return Act::edit;
  if (key.key() == Qt::Key_H) return Act::numbers;
  // While the rig is edited its own keys work: arrows, Space, Backspace, letters.
  if (m_run->editing()) return Act::none;
  switch (key.key()) {
    case Qt::Key_Right:
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter:
      return Act::next;
    case Qt::Key_Left:
    case Qt::Key_Backspace:
      return Act::back;
    case Qt::Key_B:
    case Qt::Key_Period:
      return Act::blank;
    case Qt::Key_S:
      return Act::slow;
    default:
      return Act::none;
  }
}

void RemoteKeys::run(Act act) {
  switch (act) {
    case Act::next:
      m_run->next();
      break;
    case Act::back:
      m_run->back();
      break;
    case Act::blank:
      m_run->toggleBlank();
      break;
    case Act::numbers:
      m_run->toggleNumbers();
      break;
    case Act::slow:
      m_run->toggleSlow();
      break;
    case Act::edit:
      Q_EMIT editRequested();
      break;
    case Act::end:
      Q_EMIT endRequested();
      break;
    case Act::none:
      break;
  }
}

bool RemoteKeys::eventFilter(QObject* watched, QEvent* event) {
  const bool key = event->type() == QEvent::KeyPress || event->type() == QEvent::ShortcutOverride;
  // A dialog that asks something has its keys for itself.
  if (!key || !watched->isWidgetType() || QApplication::activeModalWidget()) return false;
  auto* pressed = static_cast<QKeyEvent*>(event);
  const Act act = actOf(*pressed);
  if (act == Act::none) return false;
  // Taken from shortcuts too, so that the key comes as a press.
  event->accept();
  if (event->type() == QEvent::KeyPress) run(act);
  return true;
}

}  // namespace grainwise::ui
