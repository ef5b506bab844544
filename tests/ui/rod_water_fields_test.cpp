// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QTest>
#include <memory>

#include "core/mass/rod_fit.h"
#include "tests/support/rig_parts.h"
#include "tests/support/ui_bench.h"
#include "ui/document/pool_book.h"
#include "ui/panels/rod_panel.h"
#include "ui/panels/water_panel.h"
#include "ui/strip/number_field.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

/// A panel of fields by itself, on the plain winter rig; its fields by the name that is spoken.
struct FieldBench : test::BenchFixture {
  FieldBench() { show(test::rigs::plainWinter()); }
  template <class Panel, class... More>
  void open(More... more) {
    panel = std::make_unique<Panel>(&look, &document, more...);
    panel->resize(1280, 240);
    panel->show();
    REQUIRE(QTest::qWaitForWindowExposed(panel.get()));
    panel->activateWindow();
    settle();
  }
  NumberField* field(const char* name, int which = 0) {
    for (NumberField* one : panel->findChildren<NumberField*>()) {
      if (one->edit()->accessibleName() == QLatin1String(name) && which-- == 0) return one;
    }
    FAIL("no field " << name);
    return nullptr;
  }
  void type(NumberField* into, const char* text) {
    into->edit()->setFocus();
    into->edit()->selectAll();
    if (*text == '\0') QTest::keyClick(into->edit(), Qt::Key_Delete);
    QTest::keyClicks(into->edit(), QLatin1String(text));
    settle();
  }
  QUndoStack& undo() { return *document.undoStack(); }
  const Rod& rod() { return *document.rig().rod; }
  const Water& water() { return *document.rig().water; }

  PoolBook pools;
  std::unique_ptr<QWidget> panel;
};

}  // namespace

TEST_CASE_METHOD(FieldBench, "rod: where the maker says nothing, the usual window of the line number stands in grey") {
  Rig rig = test::rigs::plainWinter();
  rig.rod->windows = Rod::Windows{};
  rig.rod->windows->fine = GrainWindow{Grains(480), Grains(520)};
  show(rig);
  open<RodPanel>(Shelf{});
  const auto grey = [this](const char* name, int which = 0) { return field(name, which)->edit()->placeholderText(); };
  const GrainWindow usual = *defaultWindow(Style::shortHead, 8);
  CHECK(grey("Short heads from, gr") == QString::number(usual.low.value()));
  CHECK(grey("to, gr") == QString::number(usual.high.value()));
  CHECK(field("Short heads from, gr")->edit()->text().isEmpty());
  CHECK(grey("Fine tapers from, gr").isEmpty());
  CHECK(field("Fine tapers from, gr")->edit()->text() == QLatin1String("480"));
  CHECK(grey("Single-hand lines from, gr").isEmpty());
  look.setUnits({false, true, false});
  CHECK(grey("Short heads from, g") == massNumber(usual.low, look.units()));
  type(field("Line number"), "");
  CHECK(grey("Short heads from, g").isEmpty());
}

TEST_CASE_METHOD(FieldBench, "rod: a typed length is one step with a name; a refused one leaves the rod as it was") {
  open<RodPanel>(Shelf{});
  const Rig before = document.rig();
  type(field("Rod length, ft"), "15,25");
  CHECK(rod().length == Feet(15.25));
  CHECK(undo().count() == 1);
  CHECK(undo().undoText() == QLatin1String("Change the rod"));
  undo().undo();
  settle();
  CHECK(document.rig() == before);
  for (const char* wrong : {"150", "0", "x", "13 lb"}) {
    INFO(wrong);
    type(field("Rod length, ft"), wrong);
    CHECK(document.rig() == before);
    QTest::keyClick(field("Rod length, ft")->edit(), Qt::Key_Escape);
  }
  CHECK(undo().count() <= 1);
  type(field("Line number"), "17");
  CHECK(document.rig() == before);
  CHECK(field("Line number")->error().contains(QLatin1String("16")));
  type(field("Rod length, ft"), "");
  CHECK_FALSE(rod().length);
}

TEST_CASE_METHOD(FieldBench, "rod: what one end of a window refuses does not get in by the other") {
  open<RodPanel>(Shelf{});
  const Rig before = document.rig();
  type(field("to, gr"), "6000");
  CHECK_FALSE(field("to, gr")->error().isEmpty());
  type(field("Short heads from, gr"), "450");
  CHECK(document.rig() == before);
  CHECK_FALSE(field("to, gr")->error().isEmpty());
  type(field("to, gr"), "600");
  REQUIRE(rod().windows);
  CHECK(rod().windows->shortHead->low == Grains(450));
  CHECK(rod().windows->shortHead->high == Grains(600));
}

TEST_CASE_METHOD(FieldBench, "rod: a window of grains needs both ends in order before it is in the rig") {
  open<RodPanel>(Shelf{});
  const Rig before = document.rig();
  type(field("Short heads from, gr"), "525");
  CHECK(document.rig() == before);
  CHECK(field("to, gr")->error() == QLatin1String("Both ends are needed."));
  type(field("to, gr"), "600");
  REQUIRE(rod().windows);
  CHECK(rod().windows->shortHead->low == Grains(525));
  CHECK(rod().windows->shortHead->high == Grains(600));
  type(field("to, gr"), "500");
  CHECK(rod().windows->shortHead->high == Grains(600));
  CHECK(field("to, gr")->error().contains(QLatin1String("below")));
  QTest::keyClick(field("to, gr")->edit(), Qt::Key_Escape);
  type(field("Short heads from, gr"), "34 g");
  CHECK(rod().windows->shortHead->low.value() == Approx(524.7).margin(0.01));
}

TEST_CASE_METHOD(FieldBench, "water: figures are typed in either unit; a refused one leaves the water as it was") {
  open<WaterPanel>(&pools);
  const Rig before = document.rig();
  type(field("Surface speed, ft/s"), "3.50");
  CHECK(water().surfaceSpeed == FeetPerSecond(3.5));
  CHECK(digitsOf(water().kept, "surface_ft_per_s") == "3.50");
  CHECK(undo().undoText() == QLatin1String("Change the water"));
  undo().undo();
  settle();
  for (const char* wrong : {"99", "16", "x", "3 ft"}) {
    INFO(wrong);
    type(field("Surface speed, ft/s"), wrong);
    CHECK(document.rig() == before);
    CHECK_FALSE(field("Surface speed, ft/s")->error().isEmpty());
    QTest::keyClick(field("Surface speed, ft/s")->edit(), Qt::Key_Escape);
  }
  type(field("Depth, ft"), "0.1");
  CHECK(document.rig() == before);
  QTest::keyClick(field("Depth, ft")->edit(), Qt::Key_Escape);
  look.setUnits(test::kMetric);
  settle();
  type(field("Depth, m"), "1,524");
  CHECK(water().depth->value() == Approx(5));
  type(field("Salt, g/kg"), "35");
  CHECK(water().salinity->value() == 35);
  type(field("Salt, g/kg"), "");
  CHECK_FALSE(water().salinity);
}

TEST_CASE_METHOD(FieldBench, "water: a leaf over a paced stretch gives the speed, and one that flies is refused") {
  open<WaterPanel>(&pools);
  auto* way = panel->findChild<QLineEdit*>(QStringLiteral("leafWay"));
  auto* time = panel->findChild<QLineEdit*>(QStringLiteral("leafTime"));
  way->setFocus();
  QTest::keyClicks(way, QStringLiteral("30"));
  time->setFocus();
  QTest::keyClicks(time, QStringLiteral("12"));
  settle();
  CHECK(water().surfaceSpeed == FeetPerSecond(2.5));
  const Rig before = document.rig();
  time->selectAll();
  QTest::keyClicks(time, QStringLiteral("1"));
  settle();
  CHECK(document.rig() == before);
}

}  // namespace grainwise::ui
