// SPDX-License-Identifier: GPL-3.0-or-later
#include <QListView>
#include <QLineEdit>
#include <QListWidget>
#include <QMenu>
#include <QSettings>
#include <QSlider>

#include "tests/support/drag.h"
#include "tests/support/strip_bench.h"
#include "tests/support/tab_walk.h"
#include "ui/compare/compare_face.h"
#include "ui/panels/slider_row.h"
#include "ui/strip/shelf_model.h"
#include "ui/window/bench_face.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

/// Whatever is done by a drag is done again by keys, and both rigs are compared. Files: open_kinds_test.cpp;
/// a leader's drawing: make_test.cpp; the order of cards: clinic_deck_test.cpp, which has no drag.
namespace grainwise::ui {
namespace {

using test::realDrag;
using test::StripBench;
using test::twoTips;
namespace rigs = test::rigs;

/// The rig that a gesture makes of the one it begins with, and the name of its step.
struct Done {
  Rig rig;
  QString step;
  bool operator==(const Done& other) const { return rig == other.rig && step == other.step; }
};

Done after(StripBench& bench, const Rig& from, const std::function<void()>& gesture) {
  bench.start(from);
  gesture();
  StripBench::settle();
  CHECK(bench.undo().count() == 1);
  return {bench.document.rig(), bench.undo().undoText()};
}

QModelIndex card(const StripBench& bench, const char* words) {
  bench.shelf->search()->setText(QLatin1String(words));
  StripBench::settle();
  REQUIRE(bench.shelf->model()->rowCount() > 0);
  return bench.shelf->model()->index(0, 0);
}

}  // namespace

TEST_CASE_METHOD(StripBench, "twins: Enter on a card of the Shelf does what dragging it to the end of the tips does") {
  const char* words = "10 ft, 14 gr/ft level";
  const Done dragged = after(*this, rigs::plainWinter(), [&] {
    const QModelIndex at = card(*this, words);
    realDrag(shelf->cards()->viewport(), shelf->cards()->visualRect(at).center(), strip, this->at(32));
  });
  const Done typed = after(*this, rigs::plainWinter(), [&] {
    card(*this, words);
    shelf->search()->setFocus();
    key(Qt::Key_Down);
    key(Qt::Key_Return);
  });
  CHECK(dragged.rig.parts.size() == 7);
  CHECK((typed == dragged));
}

TEST_CASE_METHOD(StripBench, "twins: Alt with an arrow does what dragging a part past its neighbour does") {
  const Done dragged = after(*this, twoTips(), [&] { realDrag(block(2), strip, over(4) - QPoint(6, 0)); });
  const Done typed = after(*this, twoTips(), [&] {
    choose(2);
    key(Qt::Key_Right, Qt::AltModifier);
  });
  CHECK(dragged.rig.parts[3].name == "first tip");
  CHECK((typed == dragged));
}

TEST_CASE_METHOD(StripBench, "twins: Delete does what dragging a part off the line does") {
  const Done dragged = after(*this, twoTips(), [&] { realDrag(block(2), aside, QPoint(500, 30)); });
  const Done typed = after(*this, twoTips(), [&] {
    choose(2);
    key(Qt::Key_Delete);
  });
  CHECK(dragged.rig.parts.size() == twoTips().parts.size() - 1);
  CHECK((typed == dragged));
}

TEST_CASE_METHOD(StripBench, "twins: the arrows take the pinned cursor where the pointer takes it") {
  const QPoint below(0, strip->height() - 12);
  QTest::mouseClick(strip, Qt::LeftButton, {}, QPoint(at(12).x(), below.y()));
  const double clicked = ruler.cursor().feet();
  strip->setFocus();
  for (int i = 0; i < 200; ++i) key(Qt::Key_Left);
  CHECK(ruler.cursor().feet() < 0.5);
  for (int i = 0; i < 24; ++i) key(Qt::Key_Right);
  // Half a foot is a step of the arrows, a tenth with Shift; a pixel of the ruler is less.
  CHECK(ruler.cursor().feet() == Approx(clicked).margin(0.05));
}

TEST_CASE_METHOD(StripBench, "twins: Enter on the empty line asks for the part that a click on its outline asks for") {
  start(Rig{});
  QList<PartKind> wanted;
  QObject::connect(strip, &StripView::partWanted, [&](PartKind kind) { wanted << kind; });
  // The fly's outline stands at the right end of the ruler.
  QTest::mouseClick(strip, Qt::LeftButton, {}, QPoint(int(ruler.right()) - 30, strip->height() / 2 - 20));
  strip->setFocus();
  key(Qt::Key_Return);
  CHECK(wanted == QList{PartKind::fly, PartKind::fly});
  start(rigs::rigOf({rigs::fly(33)}));
  QObject::connect(strip, &StripView::partWanted, [&](PartKind kind) { wanted << kind; });
  strip->setFocus();
  key(Qt::Key_Return);
  CHECK(wanted.back() == PartKind::leader);
  start(rigs::plainWinter());
  QObject::connect(strip, &StripView::partWanted, [&](PartKind kind) { wanted << kind; });
  strip->setFocus();
  key(Qt::Key_Return);
  CHECK(wanted.size() == 3);
}

TEST_CASE_METHOD(test::UiFixture, "twins: an outline of the empty line opens the Shelf at its parts, ready for Enter") {
  QSettings().clear();
  MainWindow window;
  window.resize(1366, 768);
  window.startFrom(Rig{});
  window.show();
  REQUIRE(QTest::qWaitForWindowExposed(&window));
  BenchFace* bench = window.bench();
  bench->openCast();
  for (const PartKind kind : {PartKind::fly, PartKind::leader, PartKind::tip, PartKind::head, PartKind::runningLine}) {
    Q_EMIT bench->strip()->partWanted(kind);
    QTest::qWait(1);
    auto* shelf = window.findChild<ShelfView*>(QStringLiteral("shelf"));
    REQUIRE(shelf != nullptr);
    CHECK(shelf->isVisible());
    CHECK(shelf->cards()->hasFocus());
    const std::size_t before = window.document()->rig().parts.size();
    QTest::keyClick(shelf->cards(), Qt::Key_Return);
    QTest::qWait(1);
    REQUIRE(window.document()->rig().parts.size() == before + 1);
    const auto& parts = window.document()->rig().parts;
    CHECK(std::any_of(parts.begin(), parts.end(), [&](const Part& part) { return part.kind == kind; }));
    // The group that is shown is in sight.
    const QListWidget* groups = shelf->groups();
    CHECK(groups->viewport()->rect().intersects(groups->visualItemRect(groups->currentItem())));
  }
}

TEST_CASE_METHOD(test::UiFixture, "twins: Alt+Down copies a part from A to B as a drag does, Alt+Up back, and the menu too") {
  QSettings().clear();
  MainWindow window;
  window.look()->setReduceMotion(true);
  window.askUnsaved = [] { return MainWindow::Unsaved::discard; };
  window.startFrom(test::sampleRig("01-plain-winter"));
  window.resize(1366, 768);
  window.show();
  window.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  window.faces()->open(QStringLiteral("compare"));
  CompareFace* face = window.compare()->face();
  Side *a = face->side(Side::Letter::a), *b = face->side(Side::Letter::b);
  const Rig before = a->document()->rig();
  REQUIRE(before.parts[2].kind == PartKind::tip);
  const auto blockOf = [](Side* side) { return side->strip()->blocks()[2]; };
  const auto settle = [] { QTest::qWait(1); };
  for (const Side* side : {a, b}) {
    REQUIRE(QTest::qWaitFor([&] { return side->strip()->blocks().size() == qsizetype(before.parts.size()); }));
  }
  const QRect line = b->strip()->blocks()[1]->geometry();
  realDrag(blockOf(a), blockOf(a)->rect().center(), b->strip(),
           QPoint(int(b->ruler()->x(Station(32))), line.center().y()));
  settle();
  const Rig dragged = b->document()->rig();
  REQUIRE(dragged.parts.size() == before.parts.size() + 1);
  b->document()->undoStack()->undo();
  settle();
  REQUIRE(b->document()->rig() == before);

  window.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  QTest::mouseClick(blockOf(a), Qt::LeftButton);
  REQUIRE(QTest::qWaitFor([&] { return face->current() == a; }));
  QTest::keyClick(blockOf(a), Qt::Key_Up, Qt::AltModifier);  // nothing is above
  CHECK(b->document()->rig() == before);
  QTest::keyClick(blockOf(a), Qt::Key_Down, Qt::AltModifier);
  settle();
  CHECK(b->document()->rig() == dragged);
  CHECK(a->document()->rig() == before);
  const bool there = QTest::qWaitFor([&] { return face->current() == b; });
  INFO(test::controlName(window.focusWidget()).toStdString());
  REQUIRE(there);
  REQUIRE(b->isAncestorOf(window.focusWidget()));
  QTest::keyClick(window.focusWidget(), Qt::Key_Up, Qt::AltModifier);
  settle();
  CHECK(a->document()->rig().parts.size() == before.parts.size() + 1);
  a->document()->undoStack()->undo();
  b->document()->undoStack()->undo();
  settle();

  QTest::mouseClick(blockOf(a), Qt::LeftButton);
  QContextMenuEvent asked(QContextMenuEvent::Keyboard, QPoint(5, 5), blockOf(a)->mapToGlobal(QPoint(5, 5)));
  QApplication::sendEvent(blockOf(a), &asked);
  auto* menu = a->strip()->findChild<QMenu*>();
  REQUIRE(menu != nullptr);
  menu->actions().back()->trigger();
  menu->close();
  settle();
  CHECK(b->document()->rig() == dragged);
}

TEST_CASE_METHOD(test::UiFixture, "twins: every slider takes the arrows, and lands where a drag lands") {
  Look look;
  QWidget host;
  auto* row = new SliderRow(&look, QStringLiteral("Angle"), 0, 90, 5,
                            [](double v, DisplayUnits) { return QString::number(v); }, &host);
  row->resize(400, 30);
  host.resize(420, 60);
  host.show();
  REQUIRE(QTest::qWaitForWindowExposed(&host));
  double moved = -1;
  QObject::connect(row, &SliderRow::moved, [&](double v) { moved = v; });
  auto* slider = row->findChild<QSlider*>();
  REQUIRE(slider != nullptr);
  slider->setValue(0);
  QTest::mousePress(slider, Qt::LeftButton, {}, QPoint(5, slider->height() / 2));
  QMouseEvent move(QEvent::MouseMove, QPointF(slider->width() / 2.0, slider->height() / 2.0),
                   slider->mapToGlobal(QPointF(slider->width() / 2.0, slider->height() / 2.0)), Qt::LeftButton,
                   Qt::LeftButton, {});
  QApplication::sendEvent(slider, &move);
  QTest::mouseRelease(slider, Qt::LeftButton, {}, QPoint(slider->width() / 2, slider->height() / 2));
  const double dragged = moved;
  CHECK(dragged > 0);
  QTest::keyClick(slider, Qt::Key_Home);
  CHECK(moved == 0);
  for (int i = 0; i < int(dragged / 5 + 0.5); ++i) QTest::keyClick(slider, Qt::Key_Right);
  CHECK(moved == Approx(dragged));
}

}  // namespace grainwise::ui
