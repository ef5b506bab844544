// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QLabel>
#include <QLayout>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSlider>
#include <QProgressBar>
#include <QStyle>
#include <QStyleOptionSlider>
#include <QTableWidget>
#include <QTest>
#include <QTimer>
#include <QComboBox>

#include "tests/support/ui_bench.h"
#include "ui/charts/cast_feed.h"
#include "ui/charts/river_feed.h"
#include "ui/document/pool_book.h"
#include "core/io/pools_file.h"
#include "core/model/check.h"
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
  const double density = feed.conditions().air.density_kg_per_m3;
  for (const char* name : {"line_speed_ft_per_s", "loop_ft", "launch_deg", "rod_tip_ft"}) {
    QSlider* each = slider(name);
    for (const int end : {each->minimum(), each->maximum()}) {
      each->setValue(end);
      settle();
      CHECK(check(document.rig()).empty());
    }
  }
  QSlider* altitude = slider("altitude");
  altitude->setValue(altitude->maximum());
  settle();
  CHECK(feed.conditions().air.density_kg_per_m3 < 0.8 * density);
  const int steps = document.undoStack()->count();
  REQUIRE(reset->isEnabled());
  reset->click();
  settle();
  CHECK_FALSE(document.rig().cast);
  CHECK(document.undoStack()->count() == steps + 1);
  CHECK(feed.conditions().air.density_kg_per_m3 == density);
  CHECK_FALSE(reset->isEnabled());
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

TEST_CASE_METHOD(test::BenchFixture, "angle and mend are typed beside the water, and what cannot be is refused beside the field") {
  WaterPanel panel(&look, &document);
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
  WaterPanel panel(&look, &document);
  panel.offerPools(&pools);
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

TEST_CASE_METHOD(test::BenchFixture, "over a rougher bed the water is slower near it and the rig hangs deeper") {
  WaterPanel panel(&look, &document);
  panel.offerBeds(&feed);
  panel.show();
  auto* bed = panel.findChild<QComboBox*>(QStringLiteral("waterBed"));
  CHECK(bed->currentIndex() == 1);  // what the readings take by themselves
  double before_ft = 0;
  for (int i = 0; i < bed->count(); ++i) {
    bed->setCurrentIndex(i);
    Q_EMIT bed->activated(i);
    settle();
    REQUIRE(feed.analysis().hang);
    CHECK(feed.analysis().hang->fly.value() > before_ft);
    before_ft = feed.analysis().hang->fly.value();
    const auto& c = feed.conditions();
    CHECK(c.waterUncertainty.profileFull < c.current.exponent);
    CHECK(c.waterUncertainty.profileSteep > c.current.exponent);
  }
  bed->setCurrentIndex(1);
  Q_EMIT bed->activated(1);
  CHECK(feed.conditions().waterUncertainty == WaterUncertainty{});
  CHECK_FALSE(document.isModified());
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

