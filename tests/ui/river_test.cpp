// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QSignalSpy>
#include <QSlider>
#include <QProgressBar>
#include <QTableWidget>
#include <QTest>
#include <QComboBox>

#include "core/io/rig_file.h"
#include "tests/support/ui_bench.h"
#include "ui/charts/river_feed.h"
#include "ui/document/pool_book.h"
#include "ui/panels/depth_table_panel.h"
#include "ui/panels/river_panel.h"
#include "ui/panels/water_panel.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr int kLongest_ms = 8000;

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

namespace {

/// The greatest distance of the front of the line from the straight line between its ends, in parts of
/// its length: 0 for what is straight.
double bowOf(const RiverFrame& frame, double front_ft) {
  const auto apart = [](const RiverPoint& a, const RiverPoint& b) {
    return std::hypot(a.downstream_ft - b.downstream_ft, a.across_ft - b.across_ft, a.depth_ft - b.depth_ft);
  };
  std::size_t rear = 0;
  for (double along_ft = 0; rear + 1 < frame.line.size() && along_ft < front_ft; ++rear) {
    along_ft += apart(frame.line[rear], frame.line[rear + 1]);
  }
  const RiverPoint &fly = frame.line.front(), &joint = frame.line[rear];
  const double chord = apart(fly, joint);
  double most = 0;
  for (std::size_t i = 0; i <= rear; ++i) {
    // Heron: twice the area of the triangle over its base.
    const double a = apart(fly, frame.line[i]), b = apart(joint, frame.line[i]), half = (a + b + chord) / 2;
    const double area = std::sqrt(std::max(0.0, half * (half - a) * (half - b) * (half - chord)));
    most = std::max(most, 2 * area / chord);
  }
  return most / front_ft;
}

}  // namespace

TEST_CASE_METHOD(RiverBench, "after the mend a coated leader hangs in a bow behind a weighted fly and a sinking tip is straighter") {
  // One head, one fly, one length of front: only what stands between them differs.
  const auto bow = [&](const Part& between) {
    Rig rig = test::sampleRig("01-plain-winter");
    for (Part& part : rig.parts) {
      if (part.kind == PartKind::tip) part = between;
    }
    document.apply(QStringLiteral("Swap"), rig);
    settle();
    waitForBand();
    panel.view()->setTime(swingSetup(document.rig()).mend.value());
    REQUIRE(panel.view()->shownFrame() != nullptr);
    return bowOf(*panel.view()->shownFrame(), feed.analysis().grip.anchor.value());
  };
  Part tip, coated;
  for (const Part& part : test::sampleRig("01-plain-winter").parts) {
    if (part.kind == PartKind::tip) tip = part;
  }
  for (const Part& part : test::sampleRig("06-under-the-film").parts) {
    if (part.style == Style::coated) coated = part;
  }
  REQUIRE_FALSE(coated.sections.empty());
  const double share = tip.length() / coated.length();
  for (Section& section : coated.sections) section.length = section.length * share;
  const double bowed = bow(coated), straight = bow(tip);
  INFO("coated leader " << bowed << ", tip " << straight << " of the front's length");
  CHECK(bowed > 0.05);
  CHECK(bowed > 1.3 * straight);
}

TEST_CASE_METHOD(RiverBench, "the rod stands at the left of the river behind a break mark, and before no mark when all has room") {
  CHECK(panel.view()->broken());
  Rig rig = document.rig();
  Swing swing;
  swing.lineOut = Feet(20);
  rig.swing = swing;
  document.apply(QStringLiteral("Short line"), rig);
  settle();
  waitForBand();
  CHECK_FALSE(panel.view()->broken());
}

TEST_CASE_METHOD(RiverBench, "the range says how far it is, and a new edit begins it anew") {
  auto* progress = panel.findChild<QProgressBar*>(QStringLiteral("bandProgress"));
  CHECK_FALSE(progress->isVisible());
  auto* mend = panel.findChild<QSlider*>(QStringLiteral("mend_s"));
  QSignalSpy shares(panel.swings(), &RiverFeed::bandProgress);
  mend->setValue(mend->value() + 1);
  settle();
  CHECK(progress->isVisible());
  CHECK(panel.view()->stale());
  REQUIRE(QTest::qWaitFor([&] { return progress->value() > 20; }, kLongest_ms));
  CHECK_FALSE(feed.analysis().depthBand->fromRuns);
  mend->setValue(mend->value() + 1);
  settle();
  CHECK(progress->value() == 0);  // what ran was called off
  CHECK(panel.view()->stale());
  waitForBand();
  CHECK_FALSE(progress->isVisible());
  CHECK(feed.analysis().depthBand->fromRuns);
  CHECK(shares.last().first().toDouble() == 1);
}

TEST_CASE_METHOD(test::BenchFixture, "a leaf that is timed gives the surface speed") {
  PoolBook pools;
  WaterPanel panel(&look, &document, &pools);
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

TEST_CASE_METHOD(test::BenchFixture, "angle and mend are typed beside the water, and what cannot be is refused beside the field") {
  PoolBook pools;
  WaterPanel panel(&look, &document, &pools);
  panel.show();
  auto* angle = panel.findChild<QLineEdit*>(QStringLiteral("water_angle_deg"));
  auto* mend = panel.findChild<QLineEdit*>(QStringLiteral("water_mend_s"));
  const auto type = [](QLineEdit* field, const char* text) {
    field->setFocus();
    field->selectAll();
    QTest::keyClicks(field, QLatin1String(text));
    QTest::keyClick(field, Qt::Key_Return);
  };
  type(angle, "60");
  type(mend, "4.5");
  CHECK(document.rig().swing->angle == Degrees(60));
  CHECK(document.rig().swing->mend == Seconds(4.5));
  const Rig before = document.rig();
  for (const char* nonsense : {"95", "-9", "sixty"}) {
    type(angle, nonsense);
    CHECK_FALSE(angle->accessibleDescription().isEmpty());
  }
  type(angle, "60");
  CHECK(document.rig() == before);
  CHECK(angle->accessibleDescription().isEmpty());
}

TEST_CASE_METHOD(test::BenchFixture, "a pool is chosen beside the water, in one step that is taken back") {
  PoolBook pools;
  REQUIRE(pools.open(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/corrow.pools.json")).empty());
  WaterPanel panel(&look, &document, &pools);
  panel.show();
  auto* choice = panel.findChild<QComboBox*>(QStringLiteral("waterPool"));
  REQUIRE(choice->count() == pools.names().size() + 1);
  const Rig before = document.rig();
  choice->setCurrentIndex(2);
  Q_EMIT choice->activated(2);
  settle();
  const Pool& pool = pools.pools().pools[1];
  CHECK(document.rig().water->name == pool.name);
  CHECK(document.rig().water->depth == pool.depth);
  CHECK(choice->currentIndex() == 2);
  CHECK(document.undoStack()->count() == 1);
  Rig deeper = document.rig();
  deeper.water->depth = pool.depth + Feet(1);
  document.apply(QStringLiteral("Deeper"), deeper);
  settle();
  CHECK(choice->currentIndex() == 0);  // no longer as the book has it
  document.undoStack()->undo();
  document.undoStack()->undo();
  settle();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(test::BenchFixture, "the bed is the rig's own: rougher, the rig hangs deeper; each choice is a step, the usual one is not written") {
  PoolBook pools;
  WaterPanel panel(&look, &document, &pools);
  panel.show();
  auto* bed = panel.findChild<QComboBox*>(QStringLiteral("waterBed"));
  CHECK(bed->currentIndex() == 1);  // what the readings take by themselves
  const Rig before = document.rig();
  const auto choose = [&](int index) {
    bed->setCurrentIndex(index);
    Q_EMIT bed->activated(index);
    settle();
  };
  double before_ft = 0;
  for (int i = 0; i < bed->count(); ++i) {
    choose(i);
    REQUIRE(feed.analysis().hang);
    CHECK(feed.analysis().hang->fly.value() > before_ft);
    before_ft = feed.analysis().hang->fly.value();
    CHECK(readRig(writeRig(document.rig())).value() == document.rig());
  }
  CHECK(document.rig().water->bed == Bed::boulders);
  choose(1);
  CHECK(document.rig() == before);
  CHECK(document.undoStack()->count() == 5);
  document.undoStack()->undo();
  settle();
  CHECK(document.rig().water->bed == Bed::boulders);
  CHECK(bed->currentIndex() == 3);
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

TEST_CASE_METHOD(test::BenchFixture, "the depth table takes the height that it has, and scrolls in itself") {
  PoolBook pools;
  REQUIRE(pools.open(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/corrow.pools.json")).empty());
  DepthTablePanel panel(&look, &feed, &pools);
  panel.resize(1200, 130);
  panel.show();
  settle();
  CHECK_FALSE(panel.layout()->hasHeightForWidth());
  CHECK(panel.minimumSizeHint().height() <= 130);
  const int low = panel.table()->height();
  panel.resize(1200, 400);
  settle();
  CHECK(panel.table()->height() == low + 270);
}

TEST_CASE_METHOD(RiverBench, "water that no line swings in gives a reason or a swing that stays in it") {
  const auto with = [&](double speed, double depth, double salt) {
    Rig rig = document.rig();
    rig.water->surfaceSpeed = FeetPerSecond(speed);
    rig.water->depth = Feet(depth);
    rig.water->salinity = GramsPerKilogram(salt);
    document.apply(QStringLiteral("Water"), rig);
    settle();
    waitForBand();
    const RiverFrame* frame = panel.view()->shownFrame();
    CHECK_FALSE(panel.view()->accessibleDescription().isEmpty());
    if (frame == nullptr) return;
    for (const RiverPoint& point : frame->line) CHECK(point.depth_ft <= depth);
    if (feed.analysis().depthBand) CHECK(feed.analysis().depthBand->high <= Feet(depth));
  };
  with(0, 5, 0);
  CHECK(panel.view()->shownFrame() == nullptr);
  with(15, 5, 0);
  CHECK(panel.view()->shownFrame() != nullptr);
  with(3, 0.2, 0);
  CHECK(panel.view()->shownFrame() != nullptr);
  with(3, 5, 45);
  CHECK(panel.view()->shownFrame() != nullptr);
}

TEST_CASE_METHOD(RiverBench, "what floats whole, or a fly lighter than water, says so in the place of a depth") {
  Rig rig = document.rig();
  for (Part& part : rig.parts) {
    if (part.fly) part.fly->density = GramsPerCubicCentimetre(0.5);
  }
  document.apply(QStringLiteral("Cork"), rig);
  settle();
  waitForBand();
  CHECK(feed.analysis().hang->state == DepthState::flyFloats);
  CHECK_FALSE(feed.analysis().depthBand);
  CHECK_FALSE(panel.view()->accessibleDescription().isEmpty());
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

