// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>
#include <QTest>
#include <memory>

#include "tests/support/shipped_files.h"
#include "tests/support/ui_support.h"
#include "ui/compare/compare_face.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/ruler.h"
#include "ui/strip/strip_view.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {

inline const QString kRoot = QStringLiteral(GRAINWISE_SOURCE_DIR);
inline const QString kWinter = kRoot + QStringLiteral("/sample-rigs/01-plain-winter.rig.json");
inline const QString kTail = kRoot + QStringLiteral("/sample-rigs/03-thin-tail.rig.json");

/// The window on the first sample with Compare shown; B starts as a copy of it.
struct CompareFixture : test::UiFixture {
  CompareFixture() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->look()->setReduceMotion(true);
    window->askUnsaved = [this] {
      ++asked;
      return MainWindow::Unsaved::discard;
    };
    REQUIRE(window->openFile(kWinter));
    window->resize(1366, 768);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    window->faces()->open(QStringLiteral("compare"));
    face = window->compare()->face();
    REQUIRE(face != nullptr);
    settle();
  }
  /// The turns of the event loop in which analysis, comparison and pictures follow an edit.
  static void settle() {
    for (int turn = 0; turn < 8; ++turn) QCoreApplication::processEvents();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  Side* a() { return face->side(Side::Letter::a); }
  Side* b() { return face->side(Side::Letter::b); }
  const Rig& rigA() { return a()->document()->rig(); }
  const Rig& rigB() { return b()->document()->rig(); }
  static Block* block(Side* side, std::size_t part) { return side->strip()->blocks()[qsizetype(part)]; }
  /// A place on a side's line at a station of its own.
  static QPoint at(Side* side, double station_ft) {
    const QRect anyBlock = side->strip()->blocks()[1]->geometry();
    return {int(side->ruler()->x(Station(station_ft))), anyBlock.center().y()};
  }
  static std::size_t tipOf(const Rig& rig) {
    std::size_t i = 0;
    while (rig.parts[i].kind != PartKind::tip) ++i;
    return i;
  }
  /// The rig of B with a heavier tip.
  void heavierTip(Side* side) {
    Rig rig = side->document()->rig();
    rig.parts[tipOf(rig)].sections[0].mass = Along<GrainsPerFoot>(GrainsPerFoot(14));
    side->document()->apply(QStringLiteral("Heavier tip"), rig);
    settle();
  }
  void choose(Side* side, std::size_t part) {
    QTest::mouseClick(block(side, part), Qt::LeftButton);
    settle();
  }

  /// The sample river, whose second pool is fished at an angle and with a mend of its own.
  void openPools() {
    Pools pools = test::corrow();
    pools.pools[1].angle = Degrees(62);
    pools.pools[1].mend = Seconds(6);
    window->pools()->start(pools);
  }

  std::unique_ptr<MainWindow> window;
  CompareFace* face = nullptr;
  int asked = 0;
};

}  // namespace grainwise::ui
