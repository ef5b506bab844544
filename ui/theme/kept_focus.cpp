// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/kept_focus.h"

#include <QApplication>
#include <QWidget>
#include <algorithm>

namespace grainwise::ui {
namespace {

/// Its own name, or that of what it is the inner part of.
QString nameOf(const QWidget* widget) {
  while (widget != nullptr && widget->objectName().isEmpty()) widget = widget->parentWidget();
  return widget != nullptr ? widget->objectName() : QString();
}

/// What can have the keyboard, as Tab meets it: in the order in which it was made.
QList<QWidget*> controlsOf(const QWidget* inside) {
  QList<QWidget*> found = inside->findChildren<QWidget*>();
  found.removeIf([&](QWidget* one) {
    return !(one->focusPolicy() & Qt::TabFocus) || !one->isEnabled() || !one->isVisibleTo(inside) ||
           one->focusProxy() != nullptr;
  });
  return found;
}

}  // namespace

KeptFocus::KeptFocus(const QWidget* inside) {
  QWidget* now = QApplication::focusWidget();
  if (inside == nullptr || now == nullptr || !inside->isAncestorOf(now)) return;
  m_held = true;
  m_name = nameOf(now);
  m_at = std::max<qsizetype>(0, controlsOf(inside).indexOf(now));
}

void KeptFocus::giveTo(QWidget* inside) const {
  if (!m_held) return;
  const QList<QWidget*> controls = controlsOf(inside);
  if (controls.isEmpty()) return;
  QWidget* heir = controls[std::min(m_at, controls.size() - 1)];
  for (QWidget* one : controls) {
    if (!m_name.isEmpty() && nameOf(one) == m_name) {
      heir = one;
      break;
    }
  }
  heir->setFocus(Qt::OtherFocusReason);
}

}  // namespace grainwise::ui
