// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/trace.h"

#include <QApplication>
#include <QEvent>
#include <QTimer>
#include <cstdio>

#include "core/model/rig.h"
#include "ui/compare/compare_face.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/window/bench_face.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kSettled_ms = 250;  // longer than the slide of a block
}

std::unique_ptr<Trace> Trace::ifWanted(MainWindow& window) {
  if (qEnvironmentVariableIsEmpty("GRAINWISE_TRACE")) return nullptr;
  return std::unique_ptr<Trace>(new Trace(window));
}

Trace::Trace(MainWindow& window) : m_window(window) {
  if (qgetenv("GRAINWISE_TRACE") == "first-picture") {
    qApp->installEventFilter(this);
    return;
  }
  auto* settle = new QTimer(this);
  settle->setSingleShot(true);
  settle->setInterval(kSettled_ms);
  connect(settle, &QTimer::timeout, this, &Trace::print);
  connect(window.feed(), &AnalysisFeed::analysisChanged, settle, qOverload<>(&QTimer::start));
  connect(window.look(), &Look::changed, settle, qOverload<>(&QTimer::start));
  settle->start();
}

bool Trace::eventFilter(QObject* watched, QEvent* event) {
  // Painted, and everything that the first picture queued has run: the window is usable.
  const auto* widget = event->type() == QEvent::Paint ? qobject_cast<QWidget*>(watched) : nullptr;
  if (widget != nullptr && widget->window() == &m_window && !m_usable) {
    m_usable = true;
    QTimer::singleShot(0, qApp, [] {
      std::puts("usable");
      std::fflush(stdout);
      QCoreApplication::quit();
    });
  }
  return QObject::eventFilter(watched, event);
}

void Trace::print() const {
  std::fputs("parts", stdout);
  for (const Part& part : m_window.document()->rig().parts) std::printf(" %s", fileName(part.kind));
  std::fputc('\n', stdout);
  std::printf("face %s\n", qPrintable(m_window.faces()->current()));
  const CompareFace* compare = m_window.compare()->shown() ? m_window.compare()->face() : nullptr;
  if (compare != nullptr) {
    std::fputs("beside", stdout);
    for (const Part& part : compare->ownDocument()->rig().parts) std::printf(" %s", fileName(part.kind));
    std::fputc('\n', stdout);
  }
  const Drawer* drawer = compare != nullptr ? compare->drawer() : m_window.bench()->drawer();
  std::printf("said %s\n", qPrintable(drawer->said()));
  const auto named = m_window.findChildren<QWidget*>();
  for (const QWidget* w : named) {
    const QString name = w->objectName();
    if (name.isEmpty() || name.startsWith(QLatin1String("qt_")) || !w->isVisible()) continue;
    const QPoint at = w->mapToGlobal(QPoint(0, 0));
    std::printf("at %s %d %d %d %d\n", qPrintable(name), at.x(), at.y(), w->width(), w->height());
  }
  std::puts("settled");
  std::fflush(stdout);
}

}  // namespace grainwise::ui
