// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QTest>
#include <QTimer>
#include <QWidget>
#include <QWindow>
#include <functional>

/// Real drags in one process: QDrag::exec() runs a loop of its own inside the mouse move that starts it,
/// so the rest of the gesture is queued before, and sent to the window rather than to a widget.
namespace grainwise::test {

enum class DragEnd { drop, escape };

/// Presses on `from`, carries to `to` in the same window, calls `midway` while it hovers there, and lets
/// go or presses Escape. Never hangs: a drag that will not end is escaped.
inline void realDrag(QWidget* from, QPoint fromAt, QWidget* to, QPoint toAt, DragEnd end = DragEnd::drop,
                     const std::function<void()>& midway = {}) {
  constexpr int kSteps = 6;
  constexpr int kHover = kSteps + 2;
  constexpr int kRelease = kSteps + 4;
  constexpr int kGiveUp = 60;
  constexpr int kTick_ms = 12;
  QWindow* window = from->window()->windowHandle();
  const QPoint a = from->mapTo(from->window(), fromAt);
  const QPoint b = to->mapTo(to->window(), toAt);
  int step = 0;
  QTimer timer;
  timer.setInterval(kTick_ms);
  QObject::connect(&timer, &QTimer::timeout, window, [&] {
    ++step;
    if (step <= kSteps) {
      QTest::mouseMove(window, a + (b - a) * step / kSteps);
    } else if (step == kSteps + 1) {
      QTest::mouseMove(window, b + QPoint(1, 0));
    } else if (step == kHover) {
      if (midway) midway();
    } else if (step == kRelease) {
      if (end == DragEnd::escape) QTest::keyClick(window, Qt::Key_Escape);
      QTest::mouseRelease(window, Qt::LeftButton, {}, b);
    } else if (step == kGiveUp) {
      QTest::keyClick(window, Qt::Key_Escape);
      timer.stop();
    }
  });
  QTest::mousePress(window, Qt::LeftButton, {}, a);
  timer.start();
  QTest::mouseMove(window, a + QPoint(6, 0));
  QTest::mouseMove(window, a + QPoint(26, 2));
  (void)QTest::qWaitFor([&] { return step >= kRelease; }, 4000);
  timer.stop();
  QTest::qWait(0);
}

inline void realDrag(QWidget* from, QWidget* to, QPoint toAt, DragEnd end = DragEnd::drop,
                     const std::function<void()>& midway = {}) {
  realDrag(from, from->rect().center(), to, toAt, end, midway);
}

}  // namespace grainwise::test
