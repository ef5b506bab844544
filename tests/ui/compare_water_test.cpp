// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QComboBox>
#include <QTemporaryDir>

#include "core/analysis/depth_table.h"
#include "core/io/rig_file.h"
#include "tests/ui/compare_support.h"
#include "ui/panels/drawer.h"
#include "ui/theme/pill_button.h"
#include "ui/window/actions.h"

/// What of the water goes from one line of Compare to the other, and comes back with an undo.
namespace grainwise::ui {

TEST_CASE_METHOD(CompareFixture, "one water: a change for one is a change for the other, and undone with it") {
  CHECK(face->oneWater());
  Rig rig = rigA();
  rig.water->surfaceSpeed = FeetPerSecond(4);
  a()->document()->apply(QStringLiteral("Change the water"), rig);
  settle();
  CHECK(rigB().water->surfaceSpeed == FeetPerSecond(4));
  a()->document()->undoStack()->undo();
  settle();
  CHECK(rigB().water->surfaceSpeed == FeetPerSecond(3));
  auto* pill = window->findChild<PillButton*>(QStringLiteral("oneWater"));
  REQUIRE(pill != nullptr);
  QTest::mouseClick(pill, Qt::LeftButton);
  CHECK_FALSE(face->oneWater());
  a()->document()->apply(QStringLiteral("Change the water"), rig);
  settle();
  CHECK(rigB().water->surfaceSpeed == FeetPerSecond(3));
}

TEST_CASE_METHOD(CompareFixture, "in one water a step made of several on the bench is no step to go back by") {
  Rig slow = rigA();
  slow.water->surfaceSpeed = FeetPerSecond(2);
  QUndoStack* steps = a()->document()->undoStack();
  steps->beginMacro(QStringLiteral("Take this current"));
  a()->document()->apply(QStringLiteral("Change the water"), slow);
  steps->endMacro();
  settle();
  Rig own = rigB();
  REQUIRE(own.water->surfaceSpeed == FeetPerSecond(2));
  own.water->surfaceSpeed = FeetPerSecond(3);  // what it was before that step
  b()->document()->apply(QStringLiteral("Change the water"), own);
  settle();
  CHECK(rigA().water->surfaceSpeed == FeetPerSecond(3));
  CHECK(steps->count() == 2);
  steps->undo();  // now what was made of several is the next
  settle();
  CHECK(rigB().water->surfaceSpeed == FeetPerSecond(2));
}

TEST_CASE_METHOD(CompareFixture, "the Water page of either line has the pools and the bed; in one water both go to a pool, each in one step") {
  openPools();
  face->setOneWater(true);
  const Rig before = rigA(), beforeB = rigB();
  face->openWater();
  const auto shown = [&](const char* name) {
    for (QComboBox* each : face->drawer()->findChildren<QComboBox*>(QLatin1String(name))) {
      if (each->isVisible()) return each;
    }
    FAIL("no " << name);
    return static_cast<QComboBox*>(nullptr);
  };
  const auto choose = [&](const char* name, int index) {
    QComboBox* box = shown(name);
    box->setCurrentIndex(index);
    Q_EMIT box->activated(index);
    settle();
  };
  REQUIRE(shown("waterPool")->count() == window->pools()->names().size() + 1);
  choose("waterPool", 2);
  const Pool pool = window->pools()->pools().pools[1];
  CHECK(rigB() == inPool(beforeB, pool));
  CHECK(rigA() == inPool(before, pool));
  for (Side* each : {b(), a()}) {
    CAPTURE(each->letterWord().toStdString());
    for (Side* side : {a(), b()}) CHECK(side->document()->undoStack()->index() == 1);
    each->document()->undoStack()->undo();
    settle();
    CHECK(rigA() == before);
    CHECK(rigB() == beforeB);
    each->document()->undoStack()->redo();
    settle();
    CHECK(rigA() == inPool(before, pool));
    CHECK(rigB() == inPool(beforeB, pool));
  }
  b()->document()->undoStack()->undo();
  settle();
  REQUIRE(rigA() == before);
  face->setOneWater(false);
  choose("waterBed", 3);
  CHECK(rigB().water->bed == Bed::boulders);
  CHECK(rigA() == before);
}

TEST_CASE_METHOD(CompareFixture, "in one water an undo carries angle and mend to the other line, whatever was done on it since") {
  openPools();
  Rig own = rigB();
  own.swing = Swing{};
  own.swing->angle = Degrees(31);
  b()->document()->apply(QStringLiteral("Angle of its own"), own);
  face->setOneWater(true);
  face->setCurrent(a());
  face->openWater();
  QComboBox* pools = nullptr;
  for (QComboBox* each : face->drawer()->findChildren<QComboBox*>(QStringLiteral("waterPool"))) {
    if (each->isVisible()) pools = each;
  }
  REQUIRE(pools);
  const Pool pool = window->pools()->pools().pools[1];
  const auto go = [&] {
    pools->setCurrentIndex(2);
    Q_EMIT pools->activated(2);
    settle();
  };
  const auto undo = [&] {
    window->actionSet()->undo->trigger();
    settle();
  };
  const Rig a0 = rigA();
  Rig faster = a0;
  faster.water->surfaceSpeed = FeetPerSecond(4);
  const auto fast = [&] {
    a()->document()->apply(QStringLiteral("Change the water"), faster);
    settle();
  };
  // A change before it, and one of the same kind after it, stay steps of their own.
  fast();
  go();
  CHECK(rigB().swing->angle == pool.angle);
  undo();
  CHECK(rigA() == faster);
  CHECK(rigB().water == faster.water);
  CHECK(rigB().swing == own.swing);
  undo();
  CHECK(rigA() == a0);
  CHECK(rigB() == own);
  // With work on the other line since then its own step is not the last: water and angle come together.
  go();
  Rig fewer = rigB();
  fewer.parts.erase(fewer.parts.begin());
  b()->document()->apply(QStringLiteral("Remove"), fewer);
  settle();
  face->setCurrent(a());
  undo();
  CHECK(rigA() == a0);
  CHECK(rigB().water == a0.water);
  CHECK(rigB().swing == a0.swing);
  CHECK(rigB().parts == fewer.parts);
  // Steps that touch more than the water stay the other's own.
  Rig whole = rigB();
  whole.water = faster.water;
  whole.parts = own.parts;
  face->setOneWater(false);
  b()->document()->apply(QStringLiteral("Two at once"), whole);
  settle();
  fast();
  face->setOneWater(true);
  a()->document()->apply(QStringLiteral("Change the water"), a0);
  settle();
  CHECK(rigB().water == a0.water);
  CHECK(rigB().parts == own.parts);
}

TEST_CASE_METHOD(CompareFixture, "work on the bench alone leaves the rig that is not seen as it was") {
  window->faces()->open(QStringLiteral("bench"));
  Rig rig = rigA();
  rig.water->surfaceSpeed = FeetPerSecond(4);
  window->document()->apply(QStringLiteral("Change the water"), rig);
  settle();
  CHECK(rigB().water->surfaceSpeed == FeetPerSecond(3));
  CHECK_FALSE(b()->document()->isModified());
  window->faces()->open(QStringLiteral("compare"));
  settle();
  CHECK_FALSE(face->oneWater());
  CHECK(rigB().water->surfaceSpeed == FeetPerSecond(3));
}

TEST_CASE_METHOD(CompareFixture, "a rig opened beside keeps its own water and both may be saved to their files") {
  REQUIRE(window->openBeside(kTail));
  settle();
  CHECK_FALSE(face->oneWater());
  CHECK(rigB() == loadRig(kTail.toStdString()).value());
  CHECK(rigA() == loadRig(kWinter.toStdString()).value());
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("b.rig.json"));
  window->askSavePath = [&] { return path; };
  heavierTip(b());
  choose(b(), 1);
  window->actionSet()->saveAs->trigger();
  CHECK(b()->document()->path() == path);
  CHECK_FALSE(b()->document()->isModified());
  CHECK(loadRig(path.toStdString()).value() == rigB());
  CHECK(a()->document()->path() == kWinter);
}

}  // namespace grainwise::ui
