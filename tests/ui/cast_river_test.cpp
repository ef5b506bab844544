// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QTableWidget>
#include <QTest>

#include "tests/support/ui_bench.h"
#include "ui/charts/cast_feed.h"
#include "ui/charts/river_feed.h"
#include "ui/document/pool_book.h"
#include "core/io/pools_file.h"
#include "ui/panels/depth_table_panel.h"
#include "ui/panels/cast_panel.h"
#include "ui/panels/player_bar.h"
#include "ui/panels/river_panel.h"
#include "ui/panels/water_panel.h"
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

struct RiverBench : test::BenchFixture {
  RiverBench() : panel(&look, &document, &feed, &pools) {
    panel.resize(1334, 230);
    panel.show();
    REQUIRE(QTest::qWaitForWindowExposed(&panel));
    waitForBand();
  }
  void waitForBand() {
    QTest::qWait(30);
    REQUIRE(QTest::qWaitFor([&] { return !panel.swings()->busy(); }, kLongest_ms));
    settle();
  }
  PoolBook pools;
  RiverPanel panel;
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
  for (const char* name : {"loop_ft", "launch_deg", "rod_tip_ft"}) {
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

TEST_CASE_METHOD(RiverBench, "the swing is played from the landing to below the rod and its band replaces the estimate") {
  REQUIRE(panel.view()->shownFrame() != nullptr);
  CHECK(feed.analysis().depthBand->fromRuns);
  panel.view()->setTime(0);
  const RiverFrame landing = *panel.view()->shownFrame();
  panel.view()->setTime(1000);
  const RiverFrame last = *panel.view()->shownFrame();
  CHECK(last.time_s > landing.time_s + 10);
  CHECK(last.line.front().across_ft < landing.line.front().across_ft / 2);
  CHECK(last.line.front().depth_ft > 1);
  CHECK(last.line.front().depth_ft <= document.rig().water->depth->value());
}

TEST_CASE_METHOD(RiverBench, "angle, mend and line out are edits of the rig that change the swing") {
  const QString before = panel.findChild<QLabel*>(QStringLiteral("riverResult"))->text();
  CHECK(before.contains(QStringLiteral("Hangs at")));
  auto* mend = panel.findChild<QSlider*>(QStringLiteral("mend_s"));
  mend->setValue(mend->value() + 8);
  settle();
  CHECK(document.rig().swing->mend == Seconds(7));
  CHECK_FALSE(feed.analysis().depthBand->fromRuns);  // live again until the runs are there
  waitForBand();
  CHECK(feed.analysis().depthBand->fromRuns);
  CHECK(panel.findChild<QLabel*>(QStringLiteral("riverResult"))->text() != before);
  CHECK(document.undoStack()->count() == 1);
}

TEST_CASE_METHOD(RiverBench, "after the mend a coated leader hangs in a bow and a sinking tip is straighter") {
  // How far the front of the line sags from the straight line between its ends, in parts of its length.
  const auto bow = [&](const char* name) {
    document.apply(QLatin1String(name), test::sampleRig(name));
    settle();
    waitForBand();
    panel.view()->setTime(swingSetup(document.rig()).mend.value());
    const auto& line = panel.view()->shownFrame()->line;
    const double front_ft = feed.analysis().grip.anchor.value();
    std::vector<RiverPoint> front;
    for (const RiverPoint& point : line) {
      if (line.front().out_ft() - point.out_ft() <= front_ft) front.push_back(point);
    }
    const RiverPoint& fly = front.front();
    const RiverPoint& rear = front.back();
    const double length = std::hypot(fly.out_ft() - rear.out_ft(), fly.depth_ft - rear.depth_ft);
    double most = 0;
    for (const RiverPoint& point : front) {
      const double cross = (fly.out_ft() - rear.out_ft()) * (point.depth_ft - rear.depth_ft) -
                           (fly.depth_ft - rear.depth_ft) * (point.out_ft() - rear.out_ft());
      most = std::max(most, std::abs(cross) / length);
    }
    return most / length;
  };
  const double coated = bow("06-under-the-film");
  const double tip = bow("01-plain-winter");
  INFO("coated leader " << coated << ", tip " << tip);
  CHECK(coated > 0.01);
  CHECK(coated != Approx(tip).epsilon(0.2));
}

TEST_CASE_METHOD(test::BenchFixture, "a leaf that is timed gives the surface speed") {
  WaterPanel panel(&look, &document);
  panel.show();
  auto* way = panel.findChild<QLineEdit*>(QStringLiteral("leafWay"));
  auto* time = panel.findChild<QLineEdit*>(QStringLiteral("leafTime"));
  QTest::keyClicks(way, QStringLiteral("20"));
  QTest::keyClick(way, Qt::Key_Return);
  CHECK(document.rig().water->surfaceSpeed == FeetPerSecond(3));
  QTest::keyClicks(time, QStringLiteral("8"));
  QTest::keyClick(time, Qt::Key_Return);
  CHECK(document.rig().water->surfaceSpeed == FeetPerSecond(2.5));
  time->clear();
  QTest::keyClicks(time, QStringLiteral("0.5"));
  QTest::keyClick(time, Qt::Key_Return);
  CHECK(document.rig().water->surfaceSpeed->value() <= 15);
}

TEST_CASE_METHOD(test::BenchFixture, "the depth table has each pool at low, usual and high current, never below the bed") {
  PoolBook pools;
  REQUIRE(pools.open(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/corrow.pools.json")).empty());
  DepthTablePanel panel(&look, &feed, &pools);
  panel.show();
  settle();
  const QTableWidget& table = *panel.table();
  REQUIRE(table.rowCount() == int(pools.pools().pools.size()));
  CHECK(table.item(0, 0)->text().toStdString() == pools.pools().pools[0].name);
  for (const DepthRow& row : depthTable(document.rig(), pools.pools().pools)) {
    for (const DepthCell& cell : row.cells) {
      if (cell.band) CHECK(cell.band->high <= row.pool.depth);
    }
    if (row.cells[0].band && row.cells[2].band) CHECK(row.cells[0].band->middle >= row.cells[2].band->middle);
  }
}

TEST_CASE_METHOD(RiverBench, "without water the river says what is missing") {
  Rig rig = document.rig();
  rig.water.reset();
  document.apply(QStringLiteral("Dry"), rig);
  settle();
  waitForBand();
  CHECK(panel.view()->accessibleDescription() == missingWords(Missing::water));
}

}  // namespace grainwise::ui

