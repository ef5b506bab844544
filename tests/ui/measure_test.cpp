// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/make_bench.h"

#include <QTableWidget>

#include "core/analysis/depth_table.h"
#include "ui/panels/depth_table_panel.h"
#include "ui/strip/shelf_model.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {

TEST_CASE_METHOD(MakeBench, "make: falls timed in a tub become the rate, and the rated one comes back") {
  const Rig before = document.rig();
  open("makeMeasure");
  type("tubFall", "24 in");
  type("tubTimes", "3,4 3.4");
  CHECK(words("tubWords").contains(QLatin1String("rated 7.5 in/s")));
  click("tubTake");
  const Section& timed = parts()[2].sections[0];
  CHECK(timed.sinkRate->rodEnd.value() == Approx(7.06));
  CHECK(timed.timed->rated->rodEnd == InchesPerSecond(7.5));
  CHECK(timed.timed->on.has_value());
  click("tubBack");
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(MakeBench, "make: times that are none are refused, and nothing is taken") {
  open("makeMeasure");
  type("tubTimes", "3 x");
  CHECK_FALSE(find<QPushButton>("tubTake")->isEnabled());
  type("riverDepth", "9");
  CHECK(words("riverWords").contains(QLatin1String("says nothing about the current")));
  CHECK_FALSE(find<QPushButton>("riverTake")->isEnabled());
}

TEST_CASE_METHOD(MakeBench, "make: a measured depth becomes the current, and the stated one comes back") {
  const Rig before = document.rig();
  open("makeMeasure");
  type("riverDepth", "2");
  click("riverTake");
  CHECK(document.rig().water->measured->stated == FeetPerSecond(3));
  CHECK(document.rig().water->surfaceSpeed != FeetPerSecond(3));
  click("riverBack");
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(MakeBench, "make: a measured current is the pool's too, and one undo takes both back") {
  Rig before = document.rig();
  before.water->name = "Mill Run";
  document.startFrom(before);
  Pools book;
  Pool stated;
  stated.name = "Mill Run";
  stated.surfaceSpeed = *before.water->surfaceSpeed;
  stated.depth = *before.water->depth;
  book.pools.push_back(stated);
  pools.start(book);
  open("makeMeasure");
  type("riverDepth", "2");
  click("riverTake");
  const Pool& pool = pools.pools().pools[0];
  REQUIRE(pool.measured);
  CHECK(pool.surfaceSpeed == *document.rig().water->surfaceSpeed);
  CHECK(pool.measured->stated == FeetPerSecond(3));
  CHECK(document.undoStack()->count() == 1);
  document.undoStack()->undo();
  CHECK(document.rig() == before);
  CHECK(pools.pools() == book);
  document.undoStack()->redo();
  CHECK(pools.pools().pools[0].measured.has_value());
  click("riverBack");
  CHECK(pools.pools() == book);
  // A pool changed in the book since then is the person's own.
  document.undoStack()->undo();
  Pool own = pools.pools().pools[0];
  own.surfaceSpeed = FeetPerSecond(6);
  pools.replace(0, own);
  document.undoStack()->undo();
  CHECK(document.rig() == before);
  CHECK(pools.pools().pools[0] == own);
}

TEST_CASE_METHOD(MakeBench, "make: what was measured is told wherever its figure stands") {
  const DisplayUnits trade;
  const auto why = [&] { return whyWords(Reading::depth, document.rig(), analyse(document.rig()), {}, trade); };
  CHECK_FALSE(waterSentence(document.rig(), trade).contains(QLatin1String("measured")));
  CHECK(why().limits[0].contains(QLatin1String("12 %")));
  CHECK(why().limits[0].contains(QLatin1String("0.5 in/s")));
  open("makeMeasure");
  type("tubFall", "24 in");
  type("tubTimes", "3.4 3.4 3.4");
  click("tubTake");
  type("riverDepth", "2");
  click("riverTake");
  const CurrentFit fit = *document.rig().water->measured;
  CHECK(waterSentence(document.rig(), trade).contains(QLatin1String("measured")));
  CHECK(why().limits[0].contains(QLatin1String("as timed")));
  CHECK_FALSE(why().limits[0].contains(QLatin1String("12 %")));
  CHECK(why().figures.join(QLatin1Char(' ')).contains(measuredWords(fit, trade)));
  WaterPanel water(&look, &document, &pools);
  CHECK(water.findChild<QLabel*>("waterMeasured")->text() == measuredWords(fit, trade));
  CHECK(measuredWords(fit, trade).contains(QLatin1String("stated 3 ft/s")));
  // Where the figures stand beside others: the piece to be timed, a card of the Shelf, the table of pools.
  CHECK(find<QComboBox>("tubPiece")->currentText().contains(QLatin1String("in/s timed")));
  ShelfModel cards(&look, nullptr);
  cards.setShelf(Shelf{{parts()[2]}, {}});
  cards.showFound(QString());
  REQUIRE(cards.rowCount() == 1);
  CHECK(cards.card(0).figures.contains(QLatin1String("in/s timed")));
  Pools book;
  book.pools.push_back(*poolOf(document.rig()));
  book.pools.push_back(book.pools.front());
  book.pools.back().measured.reset();
  pools.start(book);
  AnalysisFeed feed(&document);
  DepthTablePanel depths(&look, &feed, &pools);
  depths.show();
  auto* table = depths.findChild<QTableWidget*>();
  REQUIRE(QTest::qWaitFor([&] { return table->rowCount() == 2; }));
  CHECK(table->item(0, 1)->text().contains(QLatin1String("ft/s measured")));
  CHECK_FALSE(table->item(1, 1)->text().contains(QLatin1String("measured")));
  // A speed typed over it is the person's again.
  Rig typed = document.rig();
  typed.water->surfaceSpeed = FeetPerSecond(4.5);
  document.apply(QStringLiteral("Type"), typed);
  CHECK_FALSE(waterSentence(document.rig(), trade).contains(QLatin1String("measured")));
  CHECK(water.findChild<QLabel*>("waterMeasured")->isHidden());
}

}  // namespace grainwise::ui
