// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <memory>

#include "tests/support/rig_parts.h"
#include "tests/support/sample_rig.h"
#include "tests/support/shipped_files.h"
#include "tests/support/ui_support.h"
#include "ui/document/rig_document.h"
#include "ui/strip/block.h"
#include "ui/strip/ruler.h"
#include "ui/strip/shelf_view.h"
#include "ui/strip/strip_view.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::test {

inline Rig twoTips() {
  Rig rig = rigs::plainWinter();
  rig.parts[2].name = "first tip";
  Part second = rigs::tip({rigs::sinking(5, 8, 6)});
  second.name = "second tip";
  rig.parts.insert(rig.parts.begin() + 3, second);
  return rig;
}

/// A window with a strip, an empty place under it and the Shelf below, on one rig. No motion, so that
/// what a test sees is where things stand.
struct StripBench : UiFixture {
  StripBench() { start(rigs::plainWinter()); }

  void start(const Rig& rig, int width = 1366, double typeScale = 1.0) {
    look.setReduceMotion(true);
    look.setTypeScale(typeScale);
    document.startFrom(rig);
    host.reset();
    feed = std::make_unique<ui::AnalysisFeed>(&document);
    host = std::make_unique<QWidget>();
    auto* column = new QVBoxLayout(host.get());
    column->setContentsMargins(0, 0, 0, 0);
    strip = new ui::StripView(&look, &document, feed.get(), &ruler, host.get());
    aside = new QWidget(host.get());
    aside->setMinimumHeight(60);
    shelf = new ui::ShelfView(&look, &document, host.get());
    shelf->setShelf(genericShelf());
    column->addWidget(strip);
    column->addWidget(aside);
    column->addWidget(shelf, 1);
    host->resize(width, int(300 + 260 * typeScale));
    host->show();
    REQUIRE(QTest::qWaitForWindowExposed(host.get()));
    settle();
  }

  /// Lets the analysis and the picture that follow an edit come.
  static void settle() { QTest::qWait(1); }

  [[nodiscard]] const std::vector<Part>& parts() const { return document.rig().parts; }
  [[nodiscard]] ui::Block* block(std::size_t index) const { return strip->blocks()[qsizetype(index)]; }
  [[nodiscard]] QPoint over(std::size_t index) const { return block(index)->geometry().center(); }
  /// A place in the strip at a station of the ruler, on the line.
  [[nodiscard]] QPoint at(double station_ft) const {
    return {int(ruler.x(Station(station_ft))), over(0).y()};
  }
  QUndoStack& undo() { return *document.undoStack(); }
  void key(int key, Qt::KeyboardModifiers with = Qt::NoModifier) {
    QWidget* target = QApplication::focusWidget();
    QTest::keyClick(target != nullptr ? target : strip, Qt::Key(key), with);
    settle();
  }
  void choose(std::size_t index) {
    QTest::mouseClick(block(index), Qt::LeftButton);
    settle();
  }

  ui::Look look;
  ui::RigDocument document;
  ui::Ruler ruler;
  std::unique_ptr<ui::AnalysisFeed> feed;
  std::unique_ptr<QWidget> host;
  ui::StripView* strip = nullptr;
  QWidget* aside = nullptr;
  ui::ShelfView* shelf = nullptr;
};

}  // namespace grainwise::test
