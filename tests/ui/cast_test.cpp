// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QStyle>
#include <QStyleOptionSlider>
#include <QTest>
#include <QTimer>
#include <QComboBox>

#include "tests/support/ui_bench.h"
#include "ui/charts/cast_feed.h"
#include "core/io/rig_file.h"
#include "core/model/check.h"
#include "ui/panels/cast_panel.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr int kLongest_ms = 8000;

struct CastBench : test::BenchFixture {
  CastBench() : panel(&look, &document, &feed) {
    look.setReduceMotion(true);
    panel.resize(1334, 230);
    panel.show();
    REQUIRE(QTest::qWaitForWindowExposed(&panel));
    QTest::qWait(0);
    waitForPicture();
  }
  void waitForPicture() {
    REQUIRE(QTest::qWaitFor([&] { return !panel.casts()->busy(); }, kLongest_ms));
    settle();
  }
  QSlider* slider(const char* name) { return panel.findChild<QSlider*>(QLatin1String(name)); }
  QString result() { return panel.findChild<QLabel*>(QStringLiteral("castResult"))->text(); }
  CastPanel panel;
};

}  // namespace

TEST_CASE_METHOD(CastBench, "the cast plays from a straight fly leg to the turn and can be scrubbed") {
  auto* scrubber = panel.findChild<QSlider*>(QStringLiteral("scrubber"));
  REQUIRE(scrubber->maximum() > 50);  // longer than half a second
  scrubber->setValue(0);
  const QImage begin = panel.view()->grab().toImage();
  scrubber->setValue(scrubber->maximum());
  CHECK(panel.view()->time_s() > 0.5);
  CHECK(panel.view()->grab().toImage() != begin);
  scrubber->setValue(0);
  CHECK(panel.view()->grab().toImage() == begin);
  auto* play = panel.findChild<QPushButton*>(QStringLiteral("play"));
  play->click();
  CHECK(panel.view()->playing());
  panel.view()->setSpeed(0.1);
  panel.view()->advance(1000);
  CHECK(panel.view()->time_s() >= 0.1);
  play->click();
  CHECK_FALSE(panel.view()->playing());
  CHECK(result().startsWith(QStringLiteral("Turns over after")));
}

TEST_CASE_METHOD(CastBench, "opened or computed anew the cast plays once by itself and stands at its end") {
  panel.hide();
  look.setReduceMotion(false);
  panel.show();
  waitForPicture();
  REQUIRE(panel.view()->playing());
  panel.view()->advance(1e5);
  CHECK_FALSE(panel.view()->playing());
  const double end_s = panel.view()->time_s();
  CHECK(end_s > 0.5);
  slider("loop_ft")->setValue(slider("loop_ft")->value() + 1);
  settle();
  waitForPicture();
  CHECK(panel.view()->playing());
  CHECK(panel.view()->time_s() < end_s);
}

TEST_CASE_METHOD(CastBench, "with reduced motion the cast stands still until somebody plays it") {
  CHECK_FALSE(panel.view()->playing());
  CHECK(panel.view()->time_s() > 0);
  slider("loop_ft")->setValue(slider("loop_ft")->value() + 1);
  settle();
  waitForPicture();
  CHECK_FALSE(panel.view()->playing());
}

TEST_CASE_METHOD(CastBench, "slow motion is a tenth of real time and a scrub stops the play") {
  auto* speed = panel.findChild<QComboBox*>(QStringLiteral("playSpeed"));
  auto* play = panel.findChild<QPushButton*>(QStringLiteral("play"));
  speed->setCurrentIndex(3);
  panel.view()->setTime(0);
  panel.view()->setPlaying(true);
  const double before_s = panel.view()->time_s();
  panel.view()->advance(1000);
  CHECK(panel.view()->time_s() - before_s == Approx(0.1));
  CHECK(play->text() == QStringLiteral("Pause"));
  panel.findChild<QSlider*>(QStringLiteral("scrubber"))->setValue(30);
  CHECK_FALSE(panel.view()->playing());
  CHECK(panel.view()->time_s() == Approx(0.3));
  CHECK(play->text() == QStringLiteral("Play"));
}

TEST_CASE_METHOD(CastBench, "the shares of the energy are named, sum to one and only go one way") {
  CastView* view = panel.view();
  view->setTime(0);
  EnergyShares before = energyShares(*view->shownFrame());
  CHECK(before.moving == Approx(1).margin(0.05));
  for (double time_s = 0.05; view->time_s() < 0.7; time_s += 0.05) {
    view->setTime(time_s);
    const EnergyShares now = energyShares(*view->shownFrame());
    CHECK(now.moving + now.toAir + now.toFly == Approx(1));
    CHECK(now.toAir + now.toFly >= before.toAir + before.toFly - 0.01);
    before = now;
  }
  CHECK(before.toAir > 0.1);
  CHECK(before.toFly > 0.1);
  CHECK(energyShares(CastFrame{}).moving == 0);
}

TEST_CASE_METHOD(CastBench, "thin ghosts of earlier moments stand behind the loop, never of later ones") {
  panel.view()->setTime(0);
  CHECK(panel.view()->ghosts_s().empty());
  std::size_t before = 0;
  for (const double time_s : {0.2, 0.5, 10.0}) {
    panel.view()->setTime(time_s);
    const auto ghosts = panel.view()->ghosts_s();
    for (const double ghost_s : ghosts) CHECK(ghost_s < panel.view()->time_s());
    CHECK(ghosts.size() > before);
    before = ghosts.size();
  }
}

TEST_CASE_METHOD(CastBench, "the axes of the cast are in the person's units, height and distance to one scale") {
  const auto farthest = [&] { return panel.view()->distances().back().at; };
  const auto highest = [&] { return panel.view()->heights().back().at; };
  const double feet = farthest(), feetHigh = highest();
  CHECK(panel.view()->heights().front().words == QStringLiteral("0"));
  CHECK(feetHigh >= 10);
  CHECK(feet >= 20);
  look.setUnits(test::kMetric);
  CHECK(farthest() <= feet * 0.3048 * 1.5);
  CHECK(farthest() >= feet * 0.3048 * 0.5);
  CHECK(highest() < feetHigh);
}

TEST_CASE("marks of an axis are round, in order and far enough apart") {
  for (const double pixelsPerUnit : {0.3, 1.0, 7.0, 33.0}) {
    const auto ticks = axisTicks(-23, 88, pixelsPerUnit, 80);
    REQUIRE_FALSE(ticks.empty());
    for (std::size_t i = 1; i < ticks.size(); ++i) {
      CHECK((ticks[i].at - ticks[i - 1].at) * pixelsPerUnit >= 80 - 1e-6);
    }
    CHECK(ticks.front().at >= -23);
    CHECK(ticks.back().at <= 88);
  }
  CHECK(axisTicks(0, 0, 1, 80).empty());
  CHECK(axisTicks(0, 10, 0, 80).empty());
}

TEST_CASE("grid lines of a mass axis are few and round, however heavy the line") {
  CHECK(gridStep(12) == 5);
  CHECK(gridStep(1e-3) == Approx(0.1));
  for (double highest = 0.32; highest < 1e12; highest *= 1.7) {
    INFO(highest);
    const double lines = std::floor(highest / gridStep(highest));
    CHECK(lines >= 1);
    CHECK(lines <= 3);
  }
}

TEST_CASE_METHOD(CastBench, "while a new cast is computed the old picture is marked and the window stays awake") {
  int turns = 0;
  QTimer ticks;
  QObject::connect(&ticks, &QTimer::timeout, &ticks, [&] { ++turns; });
  ticks.start(0);
  QSignalSpy arrived(panel.casts(), &CastFeed::arrived);
  slider("line_speed_ft_per_s")->setValue(slider("line_speed_ft_per_s")->value() + 5);
  REQUIRE(QTest::qWaitFor([&] { return panel.view()->stale(); }, kLongest_ms));
  CHECK(arrived.isEmpty());  // nothing of it was computed in the window's thread
  CHECK(panel.view()->accessibleDescription().contains(QStringLiteral("computed anew")));
  const int before = turns;
  waitForPicture();
  CHECK(arrived.count() == 1);
  CHECK(turns > before);
  CHECK_FALSE(panel.view()->stale());
}

namespace {

/// Presses a slider's handle and drags it by so many pixels, without letting it go.
void dragHandle(QSlider* slider, int pixels) {
  QStyleOptionSlider option;
  option.initFrom(slider);
  option.minimum = slider->minimum();
  option.maximum = slider->maximum();
  option.sliderPosition = slider->value();
  option.sliderValue = slider->value();
  option.orientation = Qt::Horizontal;
  const QPoint handle =
      slider->style()->subControlRect(QStyle::CC_Slider, &option, QStyle::SC_SliderHandle, slider).center();
  QTest::mousePress(slider, Qt::LeftButton, {}, handle);
  for (int step = 1; step <= 4; ++step) QTest::mouseMove(slider, handle + QPoint(pixels * step / 4, 0));
}

}  // namespace

TEST_CASE_METHOD(CastBench, "one drag of a slider is one step to undo, the next drag another") {
  QSlider* speed = slider("line_speed_ft_per_s");
  const auto drag = [&](int pixels) {
    dragHandle(speed, pixels);
    settle();
    QTest::mouseRelease(speed, Qt::LeftButton);
    settle();
  };
  const int start = speed->value();
  drag(20);
  const int middle = speed->value();
  REQUIRE(middle > start);
  CHECK(document.undoStack()->count() == 1);
  drag(20);
  REQUIRE(speed->value() > middle);
  CHECK(document.undoStack()->count() == 2);
  document.undoStack()->undo();
  settle();
  CHECK(speed->value() == middle);
  document.undoStack()->undo();
  settle();
  CHECK(speed->value() == start);
  // A key that is let go ends a step as well.
  QTest::keyClick(speed, Qt::Key_Right);
  QTest::keyClick(speed, Qt::Key_Right);
  CHECK(document.undoStack()->count() == 2);
}

TEST_CASE_METHOD(CastBench, "the sliders' ends are casts that a file may hold, and the usual cast comes back in one step") {
  auto* reset = panel.findChild<QPushButton*>(QStringLiteral("usualCast"));
  const bool stated = document.rig().cast.has_value();
  CHECK(reset->isEnabled() == stated);
  for (const char* name : {"line_speed_ft_per_s", "loop_ft", "launch_deg", "rod_tip_ft", "air_altitude_ft"}) {
    QSlider* each = slider(name);
    for (const int end : {each->minimum(), each->maximum()}) {
      each->setValue(end);
      settle();
      CHECK(check(document.rig()).empty());
    }
  }
  const int steps = document.undoStack()->count();
  REQUIRE(reset->isEnabled());
  reset->click();
  settle();
  CHECK_FALSE(document.rig().cast);
  CHECK(document.undoStack()->count() == steps + 1);
  CHECK_FALSE(reset->isEnabled());
}

TEST_CASE_METHOD(CastBench, "the air is the rig's own: kept with it, one step to undo, usual where it says nothing") {
  QSlider* altitude = slider("air_altitude_ft");
  const Rig before = document.rig();
  const double pace = feed.analysis().turnover->pace;
  CHECK(altitude->accessibleDescription() == QStringLiteral("700 ft"));
  altitude->setValue(100);  // in hundreds of feet
  settle();
  REQUIRE(document.rig().cast);
  CHECK(document.rig().cast->airAltitude == Feet(10000));
  CHECK(feed.analysis().turnover->pace > pace);  // thin air brakes less
  CHECK(readRig(writeRig(document.rig())).value() == document.rig());
  CHECK(document.undoStack()->count() == 1);
  document.undoStack()->undo();
  settle();
  CHECK(document.rig() == before);
  CHECK(feed.analysis().turnover->pace == pace);
  CHECK(altitude->accessibleDescription() == QStringLiteral("700 ft"));
}

TEST_CASE_METHOD(CastBench, "each slider of the cast is one undo step of the rig and a new loop") {
  const QString before = result();
  const int runs = panel.casts()->runs();
  slider("line_speed_ft_per_s")->setValue(slider("line_speed_ft_per_s")->value() + 10);
  slider("line_speed_ft_per_s")->setValue(slider("line_speed_ft_per_s")->value() + 10);
  settle();
  waitForPicture();
  REQUIRE(document.rig().cast);
  CHECK(document.rig().cast->lineSpeed == FeetPerSecond(75));
  CHECK(document.undoStack()->count() == 1);
  CHECK(panel.casts()->runs() > runs);
  CHECK(result() != before);
  document.undoStack()->undo();
  settle();
  waitForPicture();
  CHECK(result() == before);
  for (const char* name : {"loop_ft", "launch_deg", "rod_tip_ft", "air_altitude_ft"}) {
    const Rig rig = document.rig();
    slider(name)->setValue(slider(name)->value() + 1);
    settle();
    CHECK_FALSE(document.rig() == rig);
  }
}

TEST_CASE_METHOD(CastBench, "a learner's cast is read everywhere and is no edit of the rig") {
  const double reserve = feed.analysis().turnover->reserve;
  panel.findChild<QCheckBox*>(QStringLiteral("learner"))->setChecked(true);
  settle();
  CHECK(feed.analysis().turnover->reserve < reserve);
  CHECK_FALSE(document.isModified());
}

TEST_CASE_METHOD(CastBench, "without a fly the cast says why there is none") {
  Rig rig = document.rig();
  rig.parts.pop_back();
  document.apply(QStringLiteral("Remove"), rig);
  settle();
  waitForPicture();
  CHECK(panel.view()->accessibleDescription() == noTurnoverWords(NoTurnover::noFly));
  CHECK(result().isEmpty());
}

TEST_CASE_METHOD(test::BenchFixture, "no loop is computed while nobody looks at it") {
  CastPanel hidden(&look, &document, &feed);
  document.apply(QStringLiteral("Swap"), test::sampleRig("02-slot"));
  settle();
  CHECK(hidden.casts()->runs() == 0);
}

}  // namespace grainwise::ui
