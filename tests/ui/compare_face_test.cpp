// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QScrollArea>
#include <QSlider>
#include <QTest>
#include <QUndoGroup>

#include "tests/support/drag.h"
#include "tests/ui/compare_support.h"
#include "ui/compare/compare_chart.h"
#include "ui/compare/compare_feed.h"
#include "ui/compare/compare_words.h"
#include "ui/compare/difference_list.h"
#include "ui/compare/pair_view.h"
#include "ui/compare/readings_table.h"
#include "ui/compare/summary_bar.h"
#include "ui/document/own_store.h"
#include "ui/panels/drawer.h"
#include "ui/strip/shelf_model.h"
#include "ui/strip/shelf_view.h"
#include "ui/theme/pill_button.h"
#include "ui/window/actions.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

const QString kHinge = kRoot + QStringLiteral("/sample-rigs/wrong-hinge.rig.json");
constexpr double kPixel = 1.0;  // two rulers agree to the pixel

}  // namespace

TEST_CASE_METHOD(CompareFixture, "the cursor's words are in the feet of the ruler, and say where a line has ended") {
  REQUIRE(window->openBeside(kHinge));
  settle();
  auto* chart = face->findChild<CompareChart*>();
  a()->ruler()->setCursor(Station(10));
  CHECK(chart->readout().startsWith(QStringLiteral("10.0 ft: A 24.3, B 16.3")));
  const double endA = a()->feed()->analysis().profile.end.feet();
  a()->ruler()->setCursor(Station(endA + 3));
  CHECK(chart->readout().contains(QStringLiteral("A has no line here")));
  window->findChild<PillButton*>(QStringLiteral("alignFly"))->click();
  settle();
  a()->ruler()->setCursor(Station(endA - 8));
  CHECK(chart->readout().startsWith(QStringLiteral("8.0 ft: ")));
  a()->ruler()->setCursor(Station(-5));
  CHECK(chart->readout().contains(QStringLiteral("A has no line here")));
}

TEST_CASE("a line with nothing to turn over is no figure to compare with") {
  Consequence c;
  c.effect = Effect::reserve;
  c.b = Figure{1.5, ReserveVerdict::toSpare, std::nullopt};
  CHECK(effectWords(c, DisplayUnits{}).words == QStringLiteral("Now there is a line to turn over"));
  std::swap(c.a, c.b);
  CHECK(effectWords(c, DisplayUnits{}).words == QStringLiteral("Nothing to turn over"));
}

TEST_CASE_METHOD(CompareFixture, "the table of readings stays while one reads down the list") {
  auto* list = face->differences();
  auto* table = face->findChild<QWidget*>(QStringLiteral("readingsTable"));
  const auto areaOf = [](QWidget* widget) {
    while (widget != nullptr && qobject_cast<QScrollArea*>(widget) == nullptr) widget = widget->parentWidget();
    return qobject_cast<QScrollArea*>(widget);
  };
  REQUIRE(areaOf(table) != nullptr);
  CHECK(areaOf(table) != areaOf(list));
}

TEST_CASE_METHOD(CompareFixture, "Compare begins with B as a copy of A, and no difference") {
  CHECK(rigB() == rigA());
  CHECK(a()->document() == window->document());
  CHECK_FALSE(b()->document()->isModified());
  CHECK(face->feed()->comparison().differences.empty());
  CHECK(face->differences()->cards().isEmpty());
}

TEST_CASE_METHOD(CompareFixture, "each line is edited by its own keys and the other stays as it was") {
  const Rig before = rigA();
  choose(b(), tipOf(rigB()));
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Delete);
  settle();
  CHECK(rigA() == before);
  CHECK(rigB().parts.size() == before.parts.size() - 1);
  choose(a(), before.parts.size() - 1);
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Delete);
  settle();
  CHECK(rigA().parts.size() == before.parts.size() - 1);
  CHECK(rigA().parts.back().kind != PartKind::fly);
  CHECK(rigB().parts.back().kind == PartKind::fly);
}

TEST_CASE_METHOD(CompareFixture, "undo takes back in the rig that was touched last and says which") {
  heavierTip(a());
  heavierTip(b());
  const Rig heavy = rigA();
  choose(a(), 1);
  CHECK(face->current() == a());
  auto* undo = window->findChild<PillButton*>(QStringLiteral("button_undo"));
  REQUIRE(undo != nullptr);
  CHECK(undo->text() == QStringLiteral("Undo in A"));
  window->actionSet()->undo->trigger();
  settle();
  CHECK_FALSE(rigA() == heavy);
  CHECK(rigB() == heavy);
  choose(b(), 1);
  CHECK(undo->text() == QStringLiteral("Undo in B"));
  window->actionSet()->undo->trigger();
  settle();
  CHECK(rigB() == rigA());
  window->faces()->open(QStringLiteral("bench"));
  CHECK(undo->text() == QStringLiteral("Undo"));
  CHECK(window->undoGroup()->activeStack() == window->document()->undoStack());
}

TEST_CASE_METHOD(CompareFixture, "a part dragged from A to B is copied: A stays whole and B has it once more") {
  const Rig before = rigA();
  const std::size_t tip = tipOf(before);
  bool wholeMidway = false;
  test::realDrag(block(a(), tip), block(a(), tip)->rect().center(), b()->strip(), at(b(), 30),
                 test::DragEnd::drop, [&] {
                   wholeMidway = *a()->document()->shown() == before &&
                                 b()->document()->previewing();
                 });
  settle();
  CHECK(wholeMidway);
  CHECK(rigA() == before);
  CHECK_FALSE(a()->document()->previewing());
  REQUIRE(rigB().parts.size() == before.parts.size() + 1);
  CHECK(rigB().parts[tip].kind == PartKind::tip);
  CHECK(rigB().parts[tip + 1].kind == PartKind::tip);
  CHECK(b()->document()->undoStack()->count() == 1);
  CHECK(a()->document()->undoStack()->count() == 0);
}

TEST_CASE_METHOD(CompareFixture, "a drag to the other line that is escaped leaves both as they were") {
  const Rig before = rigA();
  test::realDrag(block(a(), 1), block(a(), 1)->rect().center(), b()->strip(), at(b(), 10),
                 test::DragEnd::escape);
  settle();
  CHECK(rigA() == before);
  CHECK(rigB() == before);
  CHECK_FALSE(a()->document()->previewing());
  CHECK_FALSE(b()->document()->previewing());
}

TEST_CASE_METHOD(CompareFixture, "swapping exchanges the places and leaves rigs, undo and files alone") {
  heavierTip(b());
  const Rig light = rigA(), heavy = rigB();
  RigDocument* own = b()->document();
  QTest::keyClick(b()->strip(), Qt::Key_X);
  settle();
  CHECK(rigA() == heavy);
  CHECK(rigB() == light);
  CHECK(a()->document() == own);
  CHECK(b()->document() == window->document());
  CHECK(a()->strip()->mapTo(face, QPoint()).y() < b()->strip()->mapTo(face, QPoint()).y());
  REQUIRE(face->feed()->comparison().differences.size() == 1);
  const auto& facts = face->feed()->comparison().differences[0].facts;
  const auto mass = std::find_if(facts.begin(), facts.end(),
                                 [](const FactPair& f) { return f.fact == Fact::mass; });
  REQUIRE(mass != facts.end());
  CHECK(*mass->a > *mass->b);
  CHECK(own->undoStack()->count() == 1);
}

TEST_CASE_METHOD(CompareFixture, "copying A to B is one step of B's undo") {
  heavierTip(a());
  auto* copy = window->findChild<PillButton*>(QStringLiteral("copyA"));
  REQUIRE(copy != nullptr);
  QTest::mouseClick(copy, Qt::LeftButton);
  settle();
  CHECK(rigB() == rigA());
  CHECK(b()->document()->undoStack()->count() == 1);
  CHECK(face->current() == b());
  window->actionSet()->undo->trigger();
  settle();
  CHECK_FALSE(rigB() == rigA());
}

TEST_CASE_METHOD(CompareFixture, "rear to rear the heads begin together, fly to fly the flies stand together") {
  REQUIRE(window->openBeside(kHinge));
  settle();
  const auto rear = [](Side* s) { return s->ruler()->x(s->feed()->analysis().profile.start); };
  const auto fly = [](Side* s) { return s->ruler()->x(s->feed()->analysis().profile.end); };
  CHECK(std::abs(rear(a()) - rear(b())) < kPixel);
  CHECK(std::abs(fly(a()) - fly(b())) > 50);
  CHECK(a()->ruler()->pixelsPerFoot() == Approx(b()->ruler()->pixelsPerFoot()));
  auto* pill = window->findChild<PillButton*>(QStringLiteral("alignFly"));
  REQUIRE(pill != nullptr);
  QTest::mouseClick(pill, Qt::LeftButton);
  settle();
  CHECK(face->align() == CompareChart::Align::fly);
  CHECK(std::abs(fly(a()) - fly(b())) < kPixel);
  CHECK(std::abs(rear(a()) - rear(b())) > 50);
  for (Side* s : {a(), b()}) {
    CHECK(std::min(rear(a()), rear(b())) >= 0);
    CHECK(fly(s) < s->width());
  }
}

TEST_CASE_METHOD(CompareFixture, "a foot weighs the same height on both lines") {
  REQUIRE(window->openBeside(kHinge));
  settle();
  CHECK(block(a(), 1)->picture().pixelsPerGrain == Approx(block(b(), 1)->picture().pixelsPerGrain));
}

TEST_CASE_METHOD(CompareFixture, "unsaved work on the second rig is asked about when the window closes") {
  heavierTip(b());
  window->close();
  CHECK(asked == 1);
}

TEST_CASE_METHOD(CompareFixture, "a card of the Shelf shows what if, Enter keeps it and Escape does not") {
  const Rig before = rigB();
  face->setCurrent(b());
  window->actionSet()->shelf->trigger();
  ShelfView* shelf = face->shelfOf(Side::Letter::b);
  REQUIRE(shelf->isVisible());
  shelf->search()->setFocus();
  QTest::keyClicks(shelf->search(), QStringLiteral("14 gr/ft"));
  REQUIRE(shelf->model()->rowCount() > 0);
  shelf->cards()->setCurrentIndex(shelf->model()->index(0));
  shelf->cards()->setFocus();
  settle();
  const PartKind kind = shelf->model()->part(0).kind;
  CHECK(b()->document()->previewing());
  CHECK(b()->document()->shown()->parts.size() == before.parts.size());
  CHECK_FALSE(face->feed()->comparison().differences.empty());
  CHECK_FALSE(face->summary()->words().contains(QStringLiteral("same line")));
  QTest::keyClick(shelf->cards(), Qt::Key_Escape);
  settle();
  CHECK_FALSE(b()->document()->previewing());
  CHECK(rigB() == before);
  shelf->cards()->setFocus();
  QTest::keyClick(shelf->cards(), Qt::Key_Return);
  settle();
  CHECK_FALSE(rigB() == before);
  CHECK(b()->document()->undoStack()->count() == 1);
  CHECK(std::count_if(rigB().parts.begin(), rigB().parts.end(),
                      [&](const Part& p) { return p.kind == kind; }) ==
        std::count_if(before.parts.begin(), before.parts.end(),
                      [&](const Part& p) { return p.kind == kind; }));
}

TEST_CASE_METHOD(CompareFixture, "own parts stand on the Shelf of either line, also one that is made later") {
  const ShelfModel* model = face->shelfOf(Side::Letter::b)->model();
  const SharedShelf carried = window->own()->all();
  CHECK(model->holds(carried));
  Shelf own;
  own.parts.push_back(rigB().parts[tipOf(rigB())]);
  own.parts.back().id = "my-tip";
  window->own()->setOwn(own);
  CHECK_FALSE(model->holds(carried));
  CHECK(model->holds(window->own()->all()));
  window->own()->undo();
  CHECK(model->holds(carried));
}

TEST_CASE_METHOD(CompareFixture, "both are cast by one caster: a learner on the bench is one for both lines") {
  window->faces()->open(QStringLiteral("bench"));
  Conditions conditions = window->feed()->conditions();
  conditions.learner = true;
  window->feed()->setConditions(conditions);
  settle();
  window->faces()->open(QStringLiteral("compare"));
  settle();
  const auto reserve = [](Side* side) { return side->feed()->analysis().turnover->reserve; };
  CHECK(reserve(a()) == reserve(b()));
  CHECK(face->feed()->comparison().differences.empty());
  REQUIRE(QTest::qWaitFor([&] { return face->feed()->fromRuns(); }, 10000));
  conditions.learner = false;
  window->feed()->setConditions(conditions);
  settle();
  CHECK_FALSE(face->feed()->fromRuns());  // those casts were a learner's
}

TEST_CASE_METHOD(CompareFixture, "the list and the table tell what a change does, and choose its part on both lines") {
  heavierTip(b());
  REQUIRE(face->differences()->cards().size() == 1);
  DifferenceCard* card = face->differences()->cards().front();
  CHECK(card->words().contains(QStringLiteral("30 gr heavier")));
  CHECK(card->words().contains(QStringLiteral("now")));
  CHECK_FALSE(card->words().contains(QStringLiteral("reserve")));
  QTest::mouseClick(card, Qt::LeftButton);
  CHECK(a()->strip()->selected() == tipOf(rigA()));
  CHECK(b()->strip()->selected() == tipOf(rigB()));
  const auto& rows = face->readings()->rows();
  REQUIRE(rows.size() >= 7);
  CHECK(rows[2].a.number != rows[2].b.number);  // the share of the tip
}

TEST_CASE_METHOD(CompareFixture, "after a moment of calm the depths come from real swings, and a change makes them old") {
  heavierTip(b());
  CHECK_FALSE(face->feed()->fromRuns());
  REQUIRE(QTest::qWaitFor([&] { return face->feed()->fromRuns(); }, 20000));
  const auto& overall = face->feed()->comparison().overall;
  const auto depth = std::find_if(overall.begin(), overall.end(),
                                  [](const Consequence& c) { return c.effect == Effect::depth; });
  REQUIRE(depth != overall.end());
  CHECK(depth->fromRuns);
  b()->document()->undoStack()->undo();
  settle();
  CHECK_FALSE(face->feed()->fromRuns());
}

TEST_CASE_METHOD(CompareFixture, "both casts and both swings play in one picture, at one time") {
  heavierTip(b());
  CHECK(face->casts()->view()->length_s() == 0);
  REQUIRE(QTest::qWaitFor([&] { return face->feed()->fromRuns(); }, 20000));
  for (PairPanel* panel : {face->casts(), face->swings()}) {
    PairView* view = panel->view();
    INFO(view->objectName().toStdString());
    REQUIRE(view->track(false).frames.size() > 10);
    REQUIRE(view->track(true).frames.size() > 10);
    CHECK(view->length_s() == std::max(view->track(false).length_s(), view->track(true).length_s()));
    auto* slider = panel->findChild<QSlider*>();
    REQUIRE(slider != nullptr);
    slider->setValue(slider->maximum() / 2);
    CHECK(view->time_s() == Approx(view->length_s() / 2));
    const double half = view->time_s();
    view->advance(20);
    CHECK(view->time_s() > half);
    // Both at one time: neither frame is later than it.
    for (const bool ofB : {false, true}) CHECK(view->track(ofB).at(view->time_s())->time_s <= view->time_s() + 1e-9);
    view->setTime(1e9);
    CHECK(view->time_s() == view->length_s());
  }
  // Deeper in the end, the heavier tip's fly is deeper in the picture.
  const PairView* river = face->swings()->view();
  CHECK(river->track(true).frames.back().feet.back().y() < river->track(false).frames.back().feet.back().y());
}

TEST_CASE_METHOD(CompareFixture, "the loops and the lines of both are as large as a laptop's page lets them be, with their words beside them") {
  heavierTip(b());
  REQUIRE(QTest::qWaitFor([&] { return face->feed()->fromRuns(); }, 20000));
  constexpr double kLeastPixelsPerFoot = 10;  // a loop of five feet stands fifty pixels high
  face->openCast();
  settle();
  CHECK(face->casts()->view()->pixelsPerFoot() >= kLeastPixelsPerFoot);
  const auto* words = face->casts()->findChild<QLabel*>(QStringLiteral("castWords"));
  REQUIRE(words != nullptr);
  CHECK(words->text() == face->casts()->view()->summary());
  CHECK(words->geometry().left() >= face->casts()->view()->geometry().right());
  face->openRiver();
  settle();
  CHECK(face->swings()->view()->pixelsPerFoot() >= kLeastPixelsPerFoot);
}

TEST_CASE_METHOD(CompareFixture, "the cursor stands at one place on both lines and says what both weigh there") {
  heavierTip(b());
  face->chart()->setFocus();
  a()->ruler()->setCursor(Station(27.9));
  QTest::keyClick(face->chart(), Qt::Key_Right, Qt::ShiftModifier);
  CHECK(a()->ruler()->cursor().feet() == Approx(28));
  CHECK(b()->ruler()->x(b()->ruler()->cursor()) == Approx(a()->ruler()->x(a()->ruler()->cursor())));
  CHECK(face->chart()->readout().contains(QStringLiteral("A 11")));
  CHECK(face->chart()->readout().contains(QStringLiteral("B 14")));
  CHECK(face->chart()->readout().contains(QStringLiteral("3.0 heavier")));
}

TEST_CASE_METHOD(CompareFixture, "units may change while Compare is not seen and A has lost its parts") {
  heavierTip(b());
  window->faces()->open(QStringLiteral("bench"));
  Rig rig = rigA();
  rig.parts.resize(1);
  window->document()->apply(QStringLiteral("Take parts away"), rig);
  settle();
  window->look()->setUnits({true, true, true});
  settle();
  window->faces()->open(QStringLiteral("compare"));
  settle();
  CHECK(face->feed()->rigOf(false) == rigA());
  CHECK(face->feed()->rigOf(true) == rigB());
  CHECK(face->feed()->comparison().differences.size() > 1);
}

TEST_CASE_METHOD(CompareFixture, "every control has a name, and no two keys of the window are the same") {
  for (QWidget* widget : face->findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus) continue;
    if (qobject_cast<QAbstractScrollArea*>(widget->parentWidget()) != nullptr) continue;
    INFO(widget->metaObject()->className() << " " << widget->objectName().toStdString());
    const bool named = !widget->accessibleName().isEmpty() || qobject_cast<QLineEdit*>(widget) != nullptr ||
                       qobject_cast<QComboBox*>(widget) != nullptr;
    CHECK(named);
  }
  QStringList keys;
  for (const QAction* action : window->actionSet()->all()) {
    const QString key = action->shortcut().toString();
    if (key.isEmpty()) continue;
    CHECK_FALSE(keys.contains(key));
    keys << key;
  }
}

TEST_CASE_METHOD(CompareFixture, "at 1280 by 720 both lines, the chart and the pages are whole inside the window") {
  window->resize(1280, 700);
  settle();
  for (QWidget* widget : {static_cast<QWidget*>(a()), static_cast<QWidget*>(b()),
                          static_cast<QWidget*>(face->chart()), static_cast<QWidget*>(face->drawer())}) {
    const QRect place(widget->mapTo(window.get(), QPoint()), widget->size());
    INFO(widget->objectName().toStdString() << " from " << place.top() << " to " << place.bottom() << " in "
                                            << window->height());
    CHECK(window->rect().contains(place));
    CHECK(widget->height() >= widget->minimumSizeHint().height());
  }
}

}  // namespace grainwise::ui
