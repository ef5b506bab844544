// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/robustness/monkey/monkey.h"

#include <malloc.h>

#include <QApplication>
#include <QClipboard>
#include <QDir>
#include <QFile>
#include <QFontDatabase>
#include <QMenu>
#include <QPixmapCache>
#include <QTest>
#include <QUndoStack>
#include <cstdio>

#include "core/io/rig_file.h"
#include "core/model/check.h"
#include "tests/support/ui_support.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/panels/make_panel.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/faces.h"

extern "C" std::size_t __sanitizer_get_current_allocated_bytes() __attribute__((weak));

namespace grainwise::test {
namespace {

constexpr int kRemembered = 25;  // gestures told when something breaks
constexpr int kShortStack = 12;  // undone and redone after every gesture, longer ones now and then
constexpr int kLongStackEvery = 40;
constexpr int kGesturesPerWindow = 1500;
constexpr int kTold = 5000;
// Of the heap, when all that can be given back was. Qt 6.4 keeps the name of every picture that its style has drawn,
// one for each size and palette of a button: 0.31 MB a window in a heap profile of eight windows, 87 % of what grew.
constexpr std::size_t kNamesPerWindow = 400u << 10;
constexpr std::size_t kGrowthBytes = 5u << 20;

/// An empty line is no file yet, but a rig that may be on the bench.
bool onlyEmpty(const Problems& problems) {
  return problems.size() == 1 && problems.front().pointer == "/parts";
}

/// What is kept on purpose and has a bound of its own, but comes and goes: Qt's pictures (10 MB), its fonts with
/// their drawn letters, and what was copied.
void giveBackKept() {
  const int limit = QPixmapCache::cacheLimit();
  QPixmapCache::setCacheLimit(0);
  QPixmapCache::setCacheLimit(limit);
  // A font that came or went, be it none, makes Qt look up all of them anew.
  QFontDatabase::addApplicationFontFromData("no font");
  QFontDatabase::removeAllApplicationFonts();
  QApplication::clipboard()->clear();
}

}  // namespace

std::size_t bytesInUse() {
  if (__sanitizer_get_current_allocated_bytes) return __sanitizer_get_current_allocated_bytes();
  return mallinfo2().uordblks;
}

Monkey::Monkey(std::uint64_t seed, const QString& sampleFolder, Shelf shelf)
    : m_random(seed), m_shelf(std::move(shelf)), m_counts(gestures().size()) {
  const QDir samples(sampleFolder);
  for (const QString& name : samples.entryList({QStringLiteral("*.json")}, QDir::Files, QDir::Name)) {
    m_sources.append(samples.filePath(name));
    m_samples.append(m_folder.filePath(name));
  }
  m_popups.setInterval(5);
  connect(&m_popups, &QTimer::timeout, this, [this] { answerPopups(); });
  m_popups.start();
  startWindow();
}

Monkey::~Monkey() {
  endWindow();
}

void Monkey::startWindow() {
  for (int i = 0; i < m_samples.size(); ++i) {  // a hand that saves must not reach the samples themselves
    QFile::remove(m_samples[i]);
    QFile::copy(m_sources[i], m_samples[i]);
  }
  m_window = std::make_unique<ui::MainWindow>();
  m_window->askOpenPath = [this] { return oneIn(5) ? QString() : anyFile(); };
  m_window->askSavePath = [this] {
    return oneIn(5) ? QString()
                    : m_folder.filePath(QStringLiteral("saved%1.rig.json").arg(below(3)));
  };
  m_window->askExportPath = [this] {
    return oneIn(2) ? QString() : m_folder.filePath(QStringLiteral("handout%1.pdf").arg(below(2)));
  };
  m_window->askUnsaved = [this] {
    return std::array{ui::MainWindow::Unsaved::discard, ui::MainWindow::Unsaved::save,
                      ui::MainWindow::Unsaved::cancel}[below(3)];
  };
  connect(m_window->document(), &ui::RigDocument::fileChanged, this, [this] { rememberStart(); });
  connect(m_window->document()->undoStack(), &QUndoStack::indexChanged, this,
          [this] { ++m_steps; });
  m_window->openFile(m_samples.at(int(below(std::size_t(m_samples.size())))));
  rememberStart();
  m_window->show();
  (void)QTest::qWaitForWindowExposed(m_window.get());
  ++m_windows;
}

void Monkey::endWindow() {
  m_window.reset();
  QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Monkey::rememberStart() {
  if (m_window && m_window->document()->undoStack()->count() == 0) m_start = m_window->document()->rig();
}

/// Menus and boxes that a gesture has opened are answered from the timer: they run loops of their
/// own.
void Monkey::answerPopups() {
  if (QWidget* box = QApplication::activeModalWidget()) {
    done(QStringLiteral("closes %1").arg(QLatin1String(box->metaObject()->className())));
    box->close();
  } else if (QWidget* popup = QApplication::activePopupWidget()) {
    for (std::size_t i = below(8); i > 0; --i) QTest::keyClick(popup, Qt::Key_Down);
    if (QApplication::activePopupWidget() == nullptr) return;
    done(QStringLiteral("answers %1").arg(QLatin1String(popup->metaObject()->className())));
    // From the loop, not from here: what it opens must find this timer free to answer it.
    const QPointer<QWidget> open = QApplication::activePopupWidget();
    const Qt::Key key = oneIn(3) ? Qt::Key_Escape : Qt::Key_Return;
    const bool closes = oneIn(20);
    QTimer::singleShot(0, this, [open, key, closes] {
      if (open) QTest::keyClick(open, key);
      if (closes && QApplication::activePopupWidget()) QApplication::activePopupWidget()->close();
    });
  }
}

void Monkey::settle() {
  QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
  QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void Monkey::done(const QString& what) {
  m_last.push_back(QStringLiteral("%1 %2").arg(m_number).arg(what));
  if (m_last.size() > kRemembered) m_last.pop_front();
}

QString Monkey::place() const {
  const QString face = m_window->faces()->current();
  if (face != QLatin1String("bench")) return face;
  const QString page = m_window->bench()->drawer()->current();
  const auto* make = m_window->findChild<ui::MakePanel*>();
  if (page != QLatin1String("make") || make == nullptr) return face + QLatin1Char(' ') + page;
  return QStringLiteral("bench make ") + make->task();
}

QString Monkey::brokenUndo() {
  QUndoStack* stack = m_window->document()->undoStack();
  if (stack->count() > kShortStack && m_number % kLongStackEvery != 0) return {};
  const Rig here = m_window->document()->rig();
  const int index = stack->index();
  const bool modified = m_window->document()->isModified();
  stack->setIndex(0);
  const bool backAtStart = m_window->document()->rig() == m_start;
  stack->setIndex(index);
  ++m_walks;
  if (!backAtStart) return QStringLiteral("undoing %1 steps does not lead to the start").arg(index);
  if (m_window->document()->rig() != here)
    return QStringLiteral("redoing %1 steps leads elsewhere").arg(index);
  if (m_window->document()->isModified() != modified)
    return QStringLiteral("the unsaved mark has changed");
  return {};
}

QString Monkey::brokenSave() {
  if (m_number % kLongStackEvery != 1) return {};
  const Rig& rig = m_window->document()->rig();
  const std::string text = writeRig(rig);
  const auto back = readRig(text);
  if (back && *back != rig) return QStringLiteral("the rig reads back as another");
  if (!back && !onlyEmpty(back.error())) {
    return QStringLiteral("the rig does not read back: ") +
           QString::fromStdString(describe(back.error().front()));
  }
  return {};
}

QString Monkey::broken() {
  const Problems problems = check(m_window->document()->rig());
  if (!problems.empty() && !onlyEmpty(problems)) {
    return QStringLiteral("the rig is not sound: ") +
           QString::fromStdString(describe(problems.front()));
  }
  if (!qtMessages().isEmpty())
    return QStringLiteral("Qt said: ") + qtMessages().join(QLatin1Char('\n'));
  if (QString what = brokenUndo(); !what.isEmpty()) return what;
  return brokenSave();
}

/// Ends the window: nothing of it may live on, and a fresh one must not need more than the ones
/// before.
QString Monkey::leftBehind() {
  m_window->askUnsaved = [] { return ui::MainWindow::Unsaved::discard; };
  endWindow();
  settle();
  QWidgetList widgets = QApplication::allWidgets();
  // Qt's own stand-in for the desktop, made once when something first asks for it.
  widgets.removeIf([](const QWidget* widget) { return widget->windowType() == Qt::Desktop; });
  if (!widgets.isEmpty()) {
    return QStringLiteral("%1 widgets outlive their window, one is %2 \"%3\"")
        .arg(widgets.size())
        .arg(QLatin1String(widgets.first()->metaObject()->className()),
             widgets.first()->objectName());
  }
  giveBackKept();
  const std::size_t bytes = bytesInUse();
  if (m_windows == kWarmWindows) m_bytesEarly = bytes;
  m_bytesLate = bytes;
  if (m_windows > kWarmWindows &&
      bytes > m_bytesEarly + kGrowthBytes + std::size_t(m_windows - kWarmWindows) * kNamesPerWindow) {
    return QStringLiteral("the heap has grown from %1 to %2 bytes").arg(m_bytesEarly).arg(bytes);
  }
  startWindow();
  return {};
}

QString Monkey::play(int times) {
  int all = 0;
  for (const Gesture& g : gestures()) all += g.weight;
  for (int i = 0; i < times; ++i) {
    if (++m_number % kTold == 0) {
      std::printf("%d gestures, heap %zu kB\n", m_number, m_bytesLate / 1024);
      std::fflush(stdout);
    }
    int at = int(below(std::size_t(all)));
    std::size_t which = 0;
    while (at >= gestures()[which].weight) at -= gestures()[which++].weight;
    done(QLatin1String(gestures()[which].name));
    ++m_counts[which];
    ++m_places[place()];
    (this->*gestures()[which].make)();
    settle();
    QString what = broken();
    const bool closed = !m_window->isVisible();  // "Quit" was chosen from the menu
    if (what.isEmpty() && (closed || m_number % kGesturesPerWindow == 0)) what = leftBehind();
    if (what.isEmpty()) continue;
    what += QStringLiteral("\nafter gesture %1; before it:").arg(m_number);
    for (const QString& one : m_last) what += QStringLiteral("\n  ") + one;
    return what;
  }
  return {};
}

QString Monkey::summary() const {
  QString text =
      QStringLiteral(
          "%1 gestures in %2 windows: %3 files opened, %4 refused, %5 steps done or undone, "
          "%6 walks to the start and back; heap %7 kB after %8 windows, %9 kB at the end\n")
          .arg(m_number)
          .arg(m_windows)
          .arg(m_opened)
          .arg(m_refused)
          .arg(m_steps)
          .arg(m_walks)
          .arg(m_bytesEarly / 1024)
          .arg(kWarmWindows)
          .arg(m_bytesLate / 1024);
  for (std::size_t i = 0; i < m_counts.size(); ++i) {
    text += QStringLiteral("  %1 %2\n").arg(m_counts[i], 7).arg(QLatin1String(gestures()[i].name));
  }
  text += QStringLiteral("made at\n");
  for (const auto& [where, times] : m_places) text += QStringLiteral("  %1 %2\n").arg(times, 7).arg(where);
  return text;
}

}  // namespace grainwise::test
