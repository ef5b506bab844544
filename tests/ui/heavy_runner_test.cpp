// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/work/heavy_runner.h"

#include <QElapsedTimer>
#include <QTest>
#include <atomic>

#include "tests/support/ui_support.h"

namespace grainwise::ui {
namespace {

HeavyRunner::Job returning(int value) {
  return [value](std::stop_token, const HeavyRunner::Progress& tell) {
    tell(0.5);
    return std::make_shared<const int>(value);
  };
}

/// Runs until it is stopped, counting how often it was.
HeavyRunner::Job endless(std::atomic<int>& started, std::atomic<int>& stopped) {
  return [&](std::stop_token stop, const HeavyRunner::Progress&) -> HeavyRunner::Result {
    ++started;
    while (!stop.stop_requested()) std::this_thread::yield();
    ++stopped;
    return nullptr;
  };
}

struct Results {
  explicit Results(HeavyRunner& runner) {
    QObject::connect(&runner, &HeavyRunner::finished,
                     [this](const HeavyRunner::Result& result) {
                       values.push_back(*std::static_pointer_cast<const int>(result));
                     });
    QObject::connect(&runner, &HeavyRunner::progress, [this](double share) { last = share; });
  }
  std::vector<int> values;
  double last = 0;
};

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "a job's result and progress arrive on the window's thread") {
  HeavyRunner runner;
  Results results(runner);
  runner.start(returning(7));
  CHECK(runner.busy());
  REQUIRE(QTest::qWaitFor([&] { return !runner.busy(); }));
  CHECK(results.values == std::vector<int>{7});
  CHECK(results.last == 0.5);
}

TEST_CASE_METHOD(test::UiFixture, "a newer job stops the running one and only the newest result arrives") {
  HeavyRunner runner;
  Results results(runner);
  std::atomic<int> started = 0;
  std::atomic<int> stopped = 0;
  runner.start(endless(started, stopped));
  REQUIRE(QTest::qWaitFor([&] { return started == 1; }));
  for (int i = 0; i < 20; ++i) runner.start(returning(i));
  REQUIRE(QTest::qWaitFor([&] { return !runner.busy(); }));
  CHECK(stopped == 1);
  CHECK(results.values == std::vector<int>{19});
}

TEST_CASE_METHOD(test::UiFixture, "a cancelled job delivers nothing") {
  HeavyRunner runner;
  Results results(runner);
  std::atomic<int> started = 0;
  std::atomic<int> stopped = 0;
  runner.start(endless(started, stopped));
  REQUIRE(QTest::qWaitFor([&] { return started == 1; }));
  runner.cancel();
  CHECK_FALSE(runner.busy());
  REQUIRE(QTest::qWaitFor([&] { return stopped == 1; }));
  QApplication::processEvents();
  CHECK(results.values.empty());
}

TEST_CASE_METHOD(test::UiFixture, "destroying the runner stops the job that runs and waits for it") {
  std::atomic<int> started = 0;
  std::atomic<int> stopped = 0;
  {
    HeavyRunner runner;
    runner.start(endless(started, stopped));
    REQUIRE(QTest::qWaitFor([&] { return started == 1; }));
  }
  CHECK(stopped == 1);
}

}  // namespace grainwise::ui
