// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QElapsedTimer>
#include <QEvent>
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <functional>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/model/edits.h"
#include "tests/bench/bench_rigs.h"
#include "tests/support/sample_rig.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/theme/house_style.h"
#include "ui/window/bench_face.h"
#include "ui/window/main_window.h"

/// How long the window's own thread was held by one event while heavy runs went on beside it: the longest
/// of each scene, with whose event it was. Opening a page is told apart from working on it. Prints; judges
/// nothing.
namespace {

using namespace grainwise;
using Clock = std::chrono::steady_clock;

constexpr double kFrame_ms = 1000.0 / 60;
constexpr int kEdits = 40;
constexpr int kBetweenEdits_ms = 60;
constexpr int kScene_ms = 6000;

/// Times each event from outside to its end, those within it included.
class TimedApp : public QApplication {
 public:
  using QApplication::QApplication;

  bool notify(QObject* receiver, QEvent* event) override {
    const std::string who = receiver->metaObject()->className();
    const int type = event->type();
    ++m_depth;
    const auto start = Clock::now();
    const bool done = QApplication::notify(receiver, event);
    --m_depth;
    if (m_depth == 0) {
      m_times.push_back(std::chrono::duration<double, std::milli>(Clock::now() - start).count());
      if (m_times.back() >= m_longest) {
        m_longest = m_times.back();
        m_whose = who + ", event " + std::to_string(type);
      }
    }
    return done;
  }

  void tell(const char* scene) {
    std::sort(m_times.begin(), m_times.end());
    const auto above = std::count_if(m_times.begin(), m_times.end(), [](double t) { return t > kFrame_ms; });
    const double p99 = m_times.empty() ? 0 : m_times[std::size_t(0.99 * double(m_times.size() - 1))];
    std::printf("%-46s %6zu events  p99 %7.3f  longest %7.2f ms (%s)  %td above a frame\n", scene,
                m_times.size(), p99, m_longest, m_whose.c_str(), above);
    std::fflush(stdout);
    forget();
  }
  void forget() {
    m_times.clear();
    m_longest = 0;
    m_whose.clear();
  }

 private:
  int m_depth = 0;
  double m_longest = 0;
  std::string m_whose;
  std::vector<double> m_times;
};

void wait(int ms) {
  QElapsedTimer since;
  since.start();
  while (since.elapsed() < ms) QApplication::processEvents(QEventLoop::AllEvents, 5);
}

/// Edits one after the other, faster than a heavy run ends, then quiet in which the last one arrives.
void work(ui::MainWindow& window, const Rig& rig) {
  for (int i = 0; i < kEdits; ++i) {
    window.document()->apply(QStringLiteral("edit"), bench::edited(rig, i), QStringLiteral("bench"));
    wait(kBetweenEdits_ms);
  }
  wait(kScene_ms);
}

void scenes(TimedApp& app, const char* of, const Rig& rig) {
  ui::MainWindow window;
  window.resize(1920, 1080);
  window.startFrom(rig);
  window.show();
  wait(1500);
  ui::BenchFace* bench = window.bench();
  const std::vector<std::pair<const char*, std::function<void()>>> pages{
      {"shelf", [&] { bench->openShelf(); }}, {"cast", [&] { bench->openCast(); }},
      {"river", [&] { bench->openRiver(); }}, {"depths", [&] { bench->openDepths(); }},
      {"tips", [&] { bench->openTips(); }},   {"fixes", [&] { bench->openFixes(); }},
      {"part", [&] { bench->openPart(); }}};
  for (const auto& [name, open] : pages) {
    app.forget();
    open();
    wait(300);
    app.tell((std::string(of) + ", " + name + " opened").c_str());
    work(window, rig);
    app.tell((std::string(of) + ", edits with " + name + " open").c_str());
  }
  window.document()->undoStack()->setClean();
}

}  // namespace

int main(int argc, char** argv) {
  TimedApp app(argc, argv);
  QApplication::setStyle(new ui::HouseStyle);
  scenes(app, "a sample rig", test::sampleRig("01-plain-winter"));
  return 0;
}
