// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/tab_walk.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QApplication>
#include <QButtonGroup>
#include <QComboBox>
#include <QHeaderView>
#include <QImage>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPointer>
#include <QScrollBar>
#include <QSlider>
#include <QTest>
#include <algorithm>
#include <cmath>

#include "tests/support/contrast.h"

namespace grainwise::test {
namespace {

constexpr int kMostStops = 300;
/// What may stand above the control before it and still be of its row.
constexpr int kSameRow_px = 6;
/// A mark of the focus: so many pixels that have changed by 3 to 1. Source: WCAG 2.2 (2023), 1.4.11 and 2.4.13.
constexpr int kLeastMark_px = 30;
constexpr double kLeastChange = 3.0;
/// A ring may lie around a control.
constexpr int kAround_px = 4;

QImage pictureAround(QWidget* widget) {
  QWidget* host = widget->parentWidget();
  if (host == nullptr || widget->isWindow()) return widget->grab().toImage();
  return host->grab(widget->geometry().adjusted(-kAround_px, -kAround_px, kAround_px, kAround_px)).toImage();
}

int changed(const QImage& a, const QImage& b) {
  int count = 0;
  for (int y = 0; y < std::min(a.height(), b.height()); ++y) {
    for (int x = 0; x < std::min(a.width(), b.width()); ++x) {
      const QRgb p = a.pixel(x, y), q = b.pixel(x, y);
      if (p != q && contrast(p, q) >= kLeastChange) ++count;
    }
  }
  return count;
}

QRect placeOf(const QWidget* widget) {
  return {widget->mapTo(widget->window(), QPoint(0, 0)), widget->size()};
}

/// Up, and not into a column further right; or back along the row.
bool stepsBack(const QRect& from, const QRect& to) {
  const bool above = to.bottom() <= from.top() + kSameRow_px && to.left() < from.right();
  const bool oneRow = std::abs(to.center().y() - from.center().y()) <= kSameRow_px;
  return above || (oneRow && to.right() <= from.left() + kSameRow_px);
}

/// The line that a block, joint or the line itself belongs to: from rod to fly and then joint by joint.
const QWidget* lineOf(const QWidget* widget) {
  while (widget != nullptr && !widget->inherits("grainwise::ui::StripView")) widget = widget->parentWidget();
  return widget;
}

/// One of a set of buttons is the stop of all; the arrows go to the others.
bool isOtherOfSet(const QWidget* widget) {
  const auto* button = qobject_cast<const QAbstractButton*>(widget);
  if (button == nullptr || button->isChecked()) return false;
  return button->autoExclusive() || (button->isCheckable() && button->group() != nullptr && button->group()->exclusive());
}

bool canBeTabbedTo(const QWidget* widget) {
  if (!widget->isEnabled() || !widget->isVisible() || widget->focusProxy() != nullptr) return false;
  // What has been weighed: its rows are chosen with Up and Down in the field beside it (make_test.cpp).
  if (widget->objectName() == QLatin1String("weighTable")) return false;
  return !isOtherOfSet(widget);
}

}  // namespace

bool isControl(const QWidget* widget) {
  if (qobject_cast<const QScrollBar*>(widget) || qobject_cast<const QHeaderView*>(widget)) return false;
  if (widget->objectName().startsWith(QLatin1String("qt_"))) return false;
  const QWidget* parent = widget->parentWidget();
  if (parent == nullptr || qobject_cast<const QComboBox*>(parent) || parent->inherits("QAbstractSpinBox")) return false;
  // The button that empties a field; Ctrl+A and Delete do the same.
  if (qobject_cast<const QLineEdit*>(parent) || widget->inherits("QTableCornerButton")) return false;
  return qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
         qobject_cast<const QComboBox*>(widget) || qobject_cast<const QAbstractSlider*>(widget) ||
         qobject_cast<const QAbstractItemView*>(widget) || qobject_cast<const QPlainTextEdit*>(widget) ||
         widget->inherits("QAbstractSpinBox") || (widget->focusPolicy() & Qt::TabFocus);
}

QString controlName(const QWidget* widget) {
  QString own = widget->objectName();
  for (const QWidget* w = widget; own.isEmpty() && w != nullptr; w = w->parentWidget()) {
    if (!w->objectName().isEmpty()) own = w->objectName() + QStringLiteral("/…");
  }
  return QStringLiteral("%1 (%2 \"%3\")")
      .arg(own, QString::fromLatin1(widget->metaObject()->className()).section(QLatin1Char(':'), -1),
           widget->accessibleName().left(40));
}

TabWalk walkByTab(QWidget* window, bool marks) {
  TabWalk walk;
  if (QWidget* held = window->focusWidget()) held->clearFocus();
  QList<QPointer<QWidget>> met;
  QImage withFocus;
  const auto leave = [&](QWidget* left) {
    if (!marks || left == nullptr || withFocus.isNull()) return;
    if (changed(withFocus, pictureAround(left)) >= kLeastMark_px) {
      ++walk.marksSeen;
    } else {
      walk.faults << QStringLiteral("no mark of the focus: ") + controlName(left);
    }
  };
  while (met.size() < kMostStops) {
    QWidget* from = QApplication::focusWidget();
    QTest::keyClick(from != nullptr && from->window() == window ? from : window, Qt::Key_Tab);
    QTest::qWait(0);
    QWidget* at = QApplication::focusWidget();
    if (!met.isEmpty()) leave(met.back());
    if (at == nullptr || at->window() != window) {
      walk.faults << QStringLiteral("Tab left the window behind ") +
                         (met.isEmpty() ? QStringLiteral("nothing") : controlName(met.back()));
      break;
    }
    if (at == from) {
      walk.faults << QStringLiteral("Tab stays in ") + controlName(at);
      break;
    }
    if (!met.isEmpty() && at == met.front()) break;
    if (met.contains(at)) {
      walk.faults << QStringLiteral("Tab goes round without the first, from %1 to %2")
                         .arg(controlName(met.back()), controlName(at));
      break;
    }
    const bool onLine = !met.isEmpty() && lineOf(at) != nullptr && lineOf(at) == lineOf(met.back());
    if (!met.isEmpty() && met.back() && !onLine && stepsBack(placeOf(met.back()), placeOf(at))) {
      walk.faults << QStringLiteral("a step back from %1 to %2").arg(controlName(met.back()), controlName(at));
    }
    met.append(at);
    walk.stops << controlName(at);
    if (marks) withFocus = pictureAround(at);
  }
  for (QWidget* widget : window->findChildren<QWidget*>()) {
    const bool clicked = widget->testAttribute(Qt::WA_SetCursor) && widget->cursor().shape() == Qt::PointingHandCursor;
    if (clicked && widget->isVisible() && widget->window() == window && !(widget->focusPolicy() & Qt::TabFocus) &&
        !isOtherOfSet(widget)) {
      walk.faults << QStringLiteral("for the mouse only: ") + controlName(widget);
    }
    if (widget->window() != window || !isControl(widget) || !canBeTabbedTo(widget)) continue;
    if (!met.contains(widget)) walk.faults << QStringLiteral("skipped: ") + controlName(widget);
  }
  return walk;
}

}  // namespace grainwise::test
