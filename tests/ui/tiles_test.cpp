// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/tiles.h"

#include <QAccessible>
#include <QImage>
#include <QLabel>
#include <QScrollArea>
#include <QSignalSpy>
#include <QTest>

#include "tests/support/ui_bench.h"
#include "ui/panels/why_panel.h"

namespace grainwise::ui {
namespace {

struct TilesFixture : test::BenchFixture {
  TilesFixture() : row(&look, &feed) {
    row.resize(1366, row.sizeHint().height());
    row.show();
    REQUIRE(QTest::qWaitForWindowExposed(&row));
  }
  void fitTo(int width) {
    row.resize(width, 100);
    settle();
    row.resize(width, row.sizeHint().height());
    settle();
  }
  void checkNothingClipped() {
    for (const Tile* tile : row.tiles()) {
      INFO(tile->words().title.toStdString() << ": " << tile->words().number.toStdString() << ", "
                                             << tile->words().verdict.toStdString());
      CHECK(tile->wordsWidth() <= tile->width());
      CHECK(tile->height() >= tile->minimumSizeHint().height());
      CHECK(row.rect().contains(tile->geometry()));
    }
    for (const Tile* a : row.tiles()) {
      for (const Tile* b : row.tiles()) {
        if (a != b) CHECK_FALSE(a->geometry().intersects(b->geometry()));
      }
    }
  }

  TileRow row;
};

}  // namespace

TEST_CASE_METHOD(TilesFixture, "tiles follow each edit and say the same to a screen reader") {
  Tile* share = row.tiles()[2];
  CHECK(share->words().number == QStringLiteral("21 %"));
  CHECK(share->accessibleName() ==
        QStringLiteral("Tip share, 21 %, 110 of 525 gr, right for this head, fits"));
  CHECK(QAccessible::queryAccessibleInterface(share)->role() == QAccessible::Button);
  Rig rig = document.rig();
  rig.parts[2].sections.front().mass = Along<GrainsPerFoot>(GrainsPerFoot(20));
  document.apply(QStringLiteral("Swap"), rig);
  settle();
  CHECK(share->words().number == QStringLiteral("38 %"));
  CHECK(share->accessibleName().endsWith(QStringLiteral("too much tip for this head, wrong")));
  document.setPreview(test::sampleRig("02-slot"));
  settle();
  CHECK(row.tiles()[4]->words().number == QStringLiteral("650"));
}

TEST_CASE_METHOD(TilesFixture, "the tile of the depth says of the bottom what the swing says") {
  const auto words = [&] { return row.tiles()[0]->words(); };
  CHECK(words().verdict == QStringLiteral("swings clear of the bottom"));
  DepthBand band = *feed.analysis().depthBand;
  const auto swung = [&](double share) {
    band.fromRuns = true;
    band.bottomShare = share;
    feed.refineDepth(band);
    return words().verdict;
  };
  CHECK(swung(0.31) == QStringLiteral("touches the bottom for 31 %"));
  CHECK_FALSE(words().number.isEmpty());
  CHECK(swung(0.8) == QStringLiteral("lies on the bottom"));
  CHECK(words().number.isEmpty());  // a depth would say the wrong thing there
  CHECK(swung(0) == QStringLiteral("swings clear of the bottom"));
  // The live estimate alone, where its range reaches the bed.
  Rig thin = document.rig();
  thin.water->depth = feed.analysis().hang->fly * 1.35;
  document.apply(QStringLiteral("Thin water"), thin);
  settle();
  REQUIRE(feed.analysis().hang->state == DepthState::hangs);
  CHECK(words().verdict == QStringLiteral("may touch the bottom"));
}

TEST_CASE_METHOD(TilesFixture, "a fly that floats is given no depth, by a swing neither") {
  document.startFrom(test::sampleRig("10-single-five"));
  settle();
  REQUIRE_FALSE(feed.analysis().depthBand);
  const TileWords before = row.tiles()[0]->words();
  CHECK(before.number.isEmpty());
  DepthBand band;
  band.fromRuns = true;
  band.high = Feet(1);
  feed.refineDepth(band);
  CHECK_FALSE(feed.analysis().depthBand);
  CHECK(row.tiles()[0]->words().number.isEmpty());
}

TEST_CASE_METHOD(TilesFixture, "a click, Enter, Space and the key of its place all ask why") {
  QSignalSpy why(&row, &TileRow::whyRequested);
  const auto asked = [&] {
    REQUIRE(QTest::qWaitFor([&] { return why.count() == 1; }, 2000));
    return why.takeFirst().front().value<Reading>();
  };
  QTest::mouseClick(row.tiles()[3], Qt::LeftButton);
  CHECK(asked() == Reading::flyAgainstTip);
  row.tiles()[1]->setFocus();
  QTest::keyClick(row.tiles()[1], Qt::Key_Return);
  CHECK(asked() == Reading::junction);
  QTest::keyClick(row.tiles()[1], Qt::Key_Space);
  CHECK(asked() == Reading::junction);
  row.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&row));
  const Reading order[] = {Reading::depth, Reading::junction, Reading::tipShare,
                           Reading::flyAgainstTip, Reading::headOnRod};
  for (int i = 0; i < 5; ++i) {
    CHECK(row.tiles()[i]->toolTip().contains(QStringLiteral("Alt+%1").arg(i + 1)));
    QTest::keyClick(&row, Qt::Key(Qt::Key_1 + i), Qt::AltModifier);
    CHECK(asked() == order[i]);
  }
}

TEST_CASE_METHOD(TilesFixture, "tiles can be reached by Tab in the order in which they stand") {
  row.tiles()[0]->setFocus();
  row.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&row));
  for (int i = 0; i < 4; ++i) {
    REQUIRE(row.tiles()[i]->hasFocus());
    QTest::keyClick(row.tiles()[i], Qt::Key_Tab);
  }
  CHECK(row.tiles()[4]->hasFocus());
}

TEST_CASE_METHOD(TilesFixture, "no word is cut, whatever the rig, the width, the units, the type size") {
  std::vector<Rig> rigs{Rig{}};
  for (const char* name : test::kSound) rigs.push_back(test::sampleRig(name));
  for (const char* name : test::kWrong) rigs.push_back(test::sampleRig(name));
  for (const double scale : {1.0, 1.5, 2.0}) {
    look.setTypeScale(scale);
    for (const DisplayUnits units : {test::kTrade, test::kMetric}) {
      look.setUnits(units);
      for (const int width : {1280, 1366, 1920}) {
        for (const Rig& rig : rigs) {
          INFO(rig.name << " at scale " << scale << " and width " << width);
          show(rig);
          fitTo(width);
          checkNothingClipped();
        }
      }
    }
  }
}

TEST_CASE_METHOD(TilesFixture, "the tiles stand in one row, at double type size in more") {
  for (const int width : {1280, 1366, 1920}) {
    look.setTypeScale(1.0);
    fitTo(width);
    CHECK(row.columns() == 5);
    look.setTypeScale(2.0);
    fitTo(width);
    CHECK(row.columns() < 5);
    CHECK(row.tiles()[3]->y() > row.tiles()[0]->y());
  }
  look.setTypeScale(1.0);
  fitTo(900);
  CHECK(row.columns() == 3);
}

TEST_CASE_METHOD(TilesFixture, "every verdict fits a tile of the narrowest window") {
  fitTo(1280);
  Tile* tile = row.tiles()[1];
  const auto fits = [&](const QString& verdict, Grade grade) {
    TileWords words = tile->words();
    words.verdict = verdict;
    words.grade = grade;
    tile->setWords(words);
    INFO(verdict.toStdString());
    CHECK(tile->wordsWidth() <= tile->width());
  };
  for (const auto v : {JunctionVerdict::hinges, JunctionVerdict::hingesUnlessSlow,
                       JunctionVerdict::stepsUp, JunctionVerdict::level, JunctionVerdict::smoothDrop,
                       JunctionVerdict::collapses, JunctionVerdict::nylonNoRule,
                       JunctionVerdict::nylonFine, JunctionVerdict::nylonThin,
                       JunctionVerdict::nylonPiles}) {
    fits(junctionWords(v), grade(v));
  }
  for (const auto v : {TipShareVerdict::noGrip, TipShareVerdict::light, TipShareVerdict::right,
                       TipShareVerdict::heavy, TipShareVerdict::tooMuch}) {
    fits(tipShareWords(v), grade(v));
  }
  for (const auto v : {Missing::head, Missing::fly, Missing::rod, Missing::rodLength,
                       Missing::headStyle, Missing::water, Missing::window, Missing::flyMass,
                       Missing::tip, Missing::stillWater, Missing::nothingSinks, Missing::flyFloats}) {
    fits(missingWords(v), Grade::watch);
  }
}

TEST_CASE_METHOD(TilesFixture, "the tiles: a change of scheme, units or type size is painted at once") {
  const QImage light = row.grab().toImage();
  look.setScheme(Scheme::dark);
  const QImage dark = row.grab().toImage();
  CHECK(light != dark);
  look.setUnits(test::kMetric);
  CHECK(row.grab().toImage() != dark);
  CHECK(row.tiles()[4]->words().number == QStringLiteral("34.0"));
  const int before = row.tiles()[0]->height();
  look.setTypeScale(1.5);
  fitTo(1366);
  CHECK(row.tiles()[0]->height() > before);
}

TEST_CASE_METHOD(TilesFixture, "the glyphs tell verdicts apart without colour") {
  QImage pictures[3];
  for (int i = 0; i < 3; ++i) {
    TileWords words = row.tiles()[0]->words();
    words.grade = Grade(i);
    row.tiles()[0]->setWords(words);
    pictures[i] = row.tiles()[0]->grab().toImage().convertToFormat(QImage::Format_Mono,
                                                                   Qt::ThresholdDither);
  }
  CHECK(pictures[0] != pictures[1]);
  CHECK(pictures[1] != pictures[2]);
  CHECK(pictures[0] != pictures[2]);
}

TEST_CASE_METHOD(test::BenchFixture, "the stroke's sentence appears with a reference and follows edits") {
  SentenceBar bar(&look, &feed);
  const auto* label = bar.findChild<QLabel*>(QStringLiteral("strokeSentence"));
  REQUIRE(label != nullptr);
  CHECK(label->text().isEmpty());
  const int height = bar.sizeHint().height();
  Conditions conditions;
  conditions.strokeReference = strokeBasis(document.rig(), feed.analysis().profile);
  feed.setConditions(conditions);
  settle();
  CHECK(label->text() == QStringLiteral("Same stroke as the rig you opened"));
  CHECK(bar.sizeHint().height() == height);
  Rig longer = document.rig();
  longer.parts[2].sections.front().length = Feet(17);
  document.apply(QStringLiteral("Length"), longer);
  settle();
  CHECK(label->text() == QStringLiteral("A different cast from the rig you opened, slower lift"));
}

TEST_CASE_METHOD(test::BenchFixture, "why shows what was asked, follows edits, and reflows at large type") {
  WhyPanel panel(&look, &feed);
  panel.resize(1334, 220);
  panel.show();
  REQUIRE(QTest::qWaitForWindowExposed(&panel));
  const auto text = [&] {
    QString all;
    for (const QLabel* label : panel.findChildren<QLabel*>()) all += label->text() + QLatin1Char('\n');
    return all;
  };
  panel.showReading(Reading::tipShare);
  CHECK(text().contains(QStringLiteral("loops included: 110 gr. Head: 525 gr.")));
  CHECK(text().contains(QStringLiteral("common practice, no source")));
  Rig rig = document.rig();
  rig.parts[2].sections.front().length = Feet(12);
  document.apply(QStringLiteral("Length"), rig);
  settle();
  CHECK(text().contains(QStringLiteral("loops included: 132 gr.")));
  look.setUnits(test::kMetric);
  CHECK(text().contains(QStringLiteral("Head: 34.0 g.")));
  CHECK(panel.columns() == 3);
  look.setTypeScale(2.0);
  settle();
  CHECK(panel.columns() == 1);
  for (const auto reading : {Reading::junction, Reading::flyAgainstTip, Reading::headOnRod}) {
    panel.showReading(reading);
    settle();
    const auto* scroll = panel.findChild<QScrollArea*>();
    for (const QLabel* label : panel.findChildren<QLabel*>()) {
      CHECK(label->height() >= label->heightForWidth(label->width()));
      CHECK(scroll->widget()->rect().contains(label->geometry()));
      CHECK(label->width() <= scroll->viewport()->width());
    }
  }
}

}  // namespace grainwise::ui
