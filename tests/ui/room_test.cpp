// SPDX-License-Identifier: GPL-3.0-or-later
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QStackedWidget>

#include "core/io/spools_file.h"
#include "tests/support/choice_bench.h"
#include "tests/support/rig_parts.h"
#include "ui/document/own_store.h"
#include "ui/panels/make_panel.h"
#include "ui/strip/strip_view.h"

namespace grainwise::ui {
namespace {

/// What a desktop leaves of a small screen: its own bar, and the window's title.
constexpr int kDesktop_px = 30;
constexpr QSize kLaptop(1366, 768 - kDesktop_px);
constexpr QSize kProjector(1280, 720 - kDesktop_px);

struct RoomFixture : test::ChoiceFixture {
  void fit(QSize size) {
    window->resize(size);
    QTest::qWait(1);
    REQUIRE(window->size() == size);
  }
  QWidget* chart() { return on<QWidget>(*window, "profile"); }
  /// Whether all of a widget stands within the page that it scrolls with.
  static bool inView(const QWidget* widget) {
    for (const QWidget* up = widget->parentWidget(); up != nullptr; up = up->parentWidget()) {
      const auto* area = qobject_cast<const QScrollArea*>(up);
      if (area == nullptr) continue;
      const QRect seen(widget->mapTo(area->viewport(), QPoint()), widget->size());
      if (!area->viewport()->rect().contains(seen)) return false;
    }
    return widget->isVisible();
  }
};

}  // namespace

TEST_CASE_METHOD(RoomFixture, "three sections of a part stand in view on a laptop, two on a projector") {
  Rig rig = document().rig();
  rig.parts[1] = test::rigs::withLoops(rig.parts[1], 3.1, 3.1);  // a head of three sections, as said in full
  window->startFrom(rig);
  window->bench()->openPart();
  settle();
  window->bench()->strip()->select(1);
  const auto shown = [&](int section) {
    return QTest::qWaitFor([&] {
      const auto* last = window->findChild<QWidget*>(QStringLiteral("section%1_length").arg(section));
      return last != nullptr && inView(last) && inView(on<QWidget>(*window, "partName")) &&
             inView(on<QWidget>(*window, "partSummary")) &&
             inView(on<QWidget>(*window, "addSection"));
    });
  };
  fit(kLaptop);
  CHECK(shown(2));
  fit(kProjector);
  CHECK(shown(1));
}

TEST_CASE_METHOD(RoomFixture, "a task of Make stands whole on a projector: it has the chart's room, and gives it back") {
  window->own()->setSpools(loadSpools(std::string(GRAINWISE_SOURCE_DIR) + "/sample-rigs/bench.spools.json").value());
  Part kept = document().rig().parts[2];
  kept.id = "kept";
  window->own()->setOwn(Shelf{{kept}, {}});
  fit(kProjector);
  CHECK(chart()->isVisible());
  window->bench()->openMake();
  CHECK_FALSE(chart()->isVisible());
  auto* make = window->findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  // The cut sheet is as long as its spools and labels are many, and scrolls.
  for (const char* task : {"makeSpools", "makeWeigh", "makeLeader", "makeFly", "makeTips", "makeMeasure", "makeParts",
                           "makeList"}) {
    make->openTask(QLatin1String(task));
    if (QLatin1String(task) == QLatin1String("makeWeigh")) {  // with all that a weighing may say
      window->bench()->weigh();
      QTest::keyClicks(on<QLineEdit>(*make, "weighMass"), QStringLiteral("400"));
    }
    const auto* area = qobject_cast<const QScrollArea*>(make->findChild<QStackedWidget*>()->currentWidget());
    REQUIRE(area != nullptr);
    INFO(task);
    CHECK(QTest::qWaitFor([&] { return area->verticalScrollBar()->maximum() == 0; }));
    CHECK(area->horizontalScrollBar()->maximum() == 0);
  }
  window->bench()->openShelf();
  CHECK(chart()->isVisible());
  window->bench()->openMake();
  fit(QSize(1366, 1000));
  CHECK(chart()->isVisible());
}

}  // namespace grainwise::ui
