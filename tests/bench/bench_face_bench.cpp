// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QElapsedTimer>
#include <QEventLoop>
#include <QPainter>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/model/deck.h"
#include "tests/bench/bench_rigs.h"
#include "tests/support/sample_rig.h"
#include "ui/clinic/card_view.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_document.h"
#include "ui/clinic/deck_run.h"
#include "ui/clinic/show_window.h"
#include "ui/compare/compare_face.h"
#include "ui/compare/pair_view.h"
#include "ui/document/rig_document.h"
#include "ui/theme/house_style.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/compare_host.h"
#include "ui/window/main_window.h"
#include "ui/work/analysis_feed.h"

/// Times an edit to a new picture of the whole window and a drag that hovers, for everyday rigs and
/// for the largest (64 parts of 16 sections), Compare and the Clinic with both casts playing. Prints
/// percentiles; judges nothing.
namespace {

using namespace grainwise;
using bench::edited;
using Clock = std::chrono::steady_clock;

constexpr double kPicture_ms = 8.0;
constexpr double kFrame_ms = 1000.0 / 60;
constexpr int kTurns = 300;
constexpr int kRounds = 3;  ///< of which the quietest counts: others use this machine as well

double ms(Clock::duration d) { return std::chrono::duration<double, std::milli>(d).count(); }

struct Percentiles {
  double p50 = 1e9, p99 = 1e9, worst = 1e9;
};

Percentiles of(std::vector<double> times) {
  std::sort(times.begin(), times.end());
  const auto at = [&](double share) { return times[std::size_t(share * double(times.size() - 1))]; };
  return {at(0.5), at(0.99), times.back()};
}

/// The quietest of three rounds of one thing, turn by turn, each to its picture on the screen.
void time(const char* what, double aim_ms, const std::function<void(int)>& turn) {
  Percentiles best;
  for (int round = 0; round < kRounds; ++round) {
    std::vector<double> times;
    for (int i = 0; i < kTurns; ++i) {
      const auto start = Clock::now();
      turn(i);
      QApplication::sendPostedEvents();
      QApplication::processEvents();
      times.push_back(ms(Clock::now() - start));
    }
    if (const Percentiles now = of(times); now.p99 < best.p99) best = now;
  }
  std::printf("%-52s p50 %7.3f  p99 %7.3f  worst %7.3f ms", what, best.p50, best.p99, best.worst);
  aim_ms > 0 ? std::printf("  (aim %.3g)\n", aim_ms) : std::printf("\n");
  std::fflush(stdout);
}

/// The peer: a window of the same size that only fills itself.
class Filled : public QWidget {
 protected:
  void paintEvent(QPaintEvent*) override { QPainter(this).fillRect(rect(), Qt::darkCyan); }
};

void benchFilled() {
  Filled window;
  window.resize(1920, 1080);
  window.show();
  QEventLoop().processEvents();
  time("a bare window of 1920x1080 that fills itself", 0, [&](int) { window.update(); });
}

/// What stays open is at rest again before it is timed: slides of blocks, swings that run for it.
void settle() {
  QElapsedTimer since;
  since.start();
  while (since.elapsed() < 1500) QApplication::processEvents(QEventLoop::AllEvents, 50);
}

void benchBench(const char* name, const Rig& rig) {
  ui::MainWindow window;
  window.resize(1920, 1080);
  window.startFrom(rig);
  window.show();
  settle();
  const QByteArray edit = QByteArray("edit to a new picture, ") + name;
  time(edit.constData(), kPicture_ms, [&](int i) {
    window.document()->apply(QStringLiteral("edit"), edited(rig, i), QStringLiteral("bench"));
  });
  const QByteArray hover = QByteArray("hover of a drag to a new picture, ") + name;
  // Each hover shows another rig: parts of different kinds have one order only, a move would show none.
  time(hover.constData(), kFrame_ms, [&](int i) { window.document()->setPreview(edited(rig, i)); });
  window.document()->setPreview(std::nullopt);
  window.document()->undoStack()->setClean();
}

void benchCompare() {
  ui::MainWindow window;
  window.resize(1920, 1080);
  window.startFrom(test::sampleRig("01-plain-winter"));
  window.show();
  (void)window.openBeside(QString::fromStdString(test::samplePath("02-slot")));
  window.compare()->face()->openCast();
  ui::PairView* view = window.compare()->face()->casts()->view();
  QElapsedTimer since;
  since.start();
  while (since.elapsed() < 20000 && (view->track(false).frames.empty() || view->track(true).frames.empty())) {
    QApplication::processEvents(QEventLoop::AllEvents, 50);
  }
  settle();
  time("Compare, both casts, a frame", kFrame_ms, [&](int i) {
    view->setTime(view->length_s() * (i % 100) / 100);
  });
  int frames = 0;
  QObject::connect(view, &ui::PairView::timeChanged, view, [&] { ++frames; });
  view->setTime(0);
  frames = 0;
  since.restart();
  view->setPlaying(true);
  while (view->playing()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
  std::printf("Compare, both casts playing: %.1f frames a second over %.1f s  (aim 60)\n",
              1000.0 * frames / double(since.elapsed()), double(since.elapsed()) / 1000.0);
}

/// How often a widget was painted.
class Painted : public QObject {
 public:
  explicit Painted(QWidget* widget) { widget->installEventFilter(this); }
  int times = 0;

 protected:
  bool eventFilter(QObject*, QEvent* event) override {
    if (event->type() == QEvent::Paint) ++times;
    return false;
  }
};

/// A card of two casts before a class, and the teacher's view of it, each over a screen of 1920x1080.
void benchClinic() {
  Card card;
  card.title = "Two tips on one head";
  card.show = CardShow::cast;
  card.rig = test::sampleRig("01-plain-winter");
  card.rigB = test::sampleRig("02-slot");
  ui::Look look;
  ui::ClinicFace face(&look, Shelf{});
  face.document()->startFrom(Deck{"Casts", {card}, {}});
  face.resize(1920, 1080);
  face.show();
  face.startShow(0);
  ui::CardView* view = face.showWindow()->view();
  ui::DeckRun* run = face.run();
  face.showWindow()->resize(1920, 1080);
  while (!run->playing()) QApplication::processEvents(QEventLoop::AllEvents, 50);
  settle();
  run->toggleSlow();
  run->toggleSlow();  // from the start, at a cast's own speed
  Painted painted(view);
  QElapsedTimer since;
  since.start();
  while (run->playing()) QApplication::processEvents(QEventLoop::WaitForMoreEvents);
  std::printf("the Clinic, both casts playing: %.1f frames a second over %.1f s  (aim 60)\n",
              1000.0 * painted.times / double(since.elapsed()), double(since.elapsed()) / 1000.0);
  auto* laptop = face.findChild<ui::CardView*>(QStringLiteral("cardNow"));
  ui::CardState state = run->state();
  time("the Clinic, both casts, a frame on both screens", kFrame_ms, [&](int i) {
    state.time_s = run->shown()->runs->length_s() * (i % 100) / 100;
    for (ui::CardView* each : {view, laptop}) each->setCard(run->shown(), state);
  });
  time("the same, on the class's screen alone", kFrame_ms, [&](int i) {
    state.time_s = run->shown()->runs->length_s() * (i % 100) / 100;
    view->setCard(run->shown(), state);
  });
  face.endShow();
}

}  // namespace

int main(int argc, char** argv) {
  QApplication app(argc, argv);
  QApplication::setStyle(new ui::HouseStyle);
  benchFilled();
  benchBench("a sample rig", test::sampleRig("01-plain-winter"));
  benchBench("5 x 16", [] {
    Rig few = bench::largestRig();
    std::vector<Part> parts;
    for (const std::size_t i : {0, 10, 55, 60, 63}) parts.push_back(few.parts[i]);
    few.parts = parts;
    return few;
  }());
  benchBench("64 x 16", bench::largestRig());
  benchCompare();
  benchClinic();
  return 0;
}
