// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAccessible>
#include <QContextMenuEvent>
#include <QMenu>
#include <QPushButton>

#include "tests/support/strip_bench.h"
#include "ui/strip/junction_tag.h"

namespace grainwise::ui {
namespace {

using test::StripBench;
using test::twoTips;
namespace rigs = test::rigs;

QStringList menuWords(const QMenu* menu, bool enabled) {
  QStringList words;
  for (const QAction* action : menu->actions()) {
    if (action->isEnabled() == enabled) words << action->text().section(QLatin1Char('\t'), 0, 0);
  }
  return words;
}

}  // namespace

TEST_CASE_METHOD(StripBench, "a click selects and a click beside the blocks lets go") {
  QSignalSpy selected(strip, &StripView::partSelected);
  choose(2);
  CHECK(strip->selected() == 2u);
  CHECK(block(2)->isSelected());
  CHECK(block(2)->hasFocus());
  QTest::mouseClick(strip, Qt::LeftButton, {}, QPoint(at(15).x(), strip->height() - 10));
  CHECK_FALSE(strip->selected());
  CHECK(strip->hasFocus());
  CHECK(selected.count() == 2);
}

TEST_CASE_METHOD(StripBench, "arrows walk from block to block and stop at the ends") {
  choose(1);
  key(Qt::Key_Right);
  CHECK(strip->selected() == 2u);
  CHECK(block(2)->hasFocus());
  key(Qt::Key_Left);
  key(Qt::Key_Left);
  key(Qt::Key_Left);
  CHECK(strip->selected() == 0u);
  key(Qt::Key_End);
  CHECK(strip->selected() == 5u);
  key(Qt::Key_Right);
  CHECK(strip->selected() == 5u);
  key(Qt::Key_Home);
  CHECK(block(0)->hasFocus());
}

TEST_CASE_METHOD(StripBench, "Alt with an arrow moves the part, its focus and its selection, in one step") {
  start(twoTips());
  choose(2);
  Block* moved = block(2);
  key(Qt::Key_Right, Qt::AltModifier);
  CHECK(parts()[3].name == "first tip");
  CHECK(undo().count() == 1);
  CHECK(undo().undoText() == QStringLiteral("Move tip"));
  CHECK(block(3) == moved);  // the same widget stands in the new place
  CHECK(moved->hasFocus());
  CHECK(strip->selected() == 3u);
  key(Qt::Key_Left, Qt::AltModifier);
  CHECK(document.rig() == twoTips());
  CHECK(moved->hasFocus());
  undo().undo();
  settle();
  CHECK(strip->selected() == 3u);  // the selection follows its part through undo
  CHECK(block(3) == moved);
}

TEST_CASE_METHOD(StripBench, "keys that come faster than pictures still move the right part") {
  Rig rig = twoTips();
  Part third = rigs::tip({rigs::sinking(3, 7, 5)});
  third.name = "third tip";
  rig.parts.insert(rig.parts.begin() + 4, third);
  start(rig);
  choose(2);
  // No event loop between the two: the strip still shows the rig before the first.
  QTest::keyClick(block(2), Qt::Key_Right, Qt::AltModifier);
  QTest::keyClick(block(2), Qt::Key_Right, Qt::AltModifier);
  CHECK(parts()[4].name == "first tip");
  CHECK(undo().count() == 2);
  settle();
  CHECK(strip->selected() == 4u);
}

TEST_CASE_METHOD(StripBench, "a move that the order forbids is refused in words") {
  QSignalSpy refused(strip, &StripView::refused);
  choose(2);
  key(Qt::Key_Left, Qt::AltModifier);
  choose(5);
  key(Qt::Key_Right, Qt::AltModifier);
  CHECK(document.rig() == rigs::plainWinter());
  CHECK(undo().count() == 0);
  REQUIRE(refused.count() == 2);
  CHECK(refused[0].first().toString() == QStringLiteral("A tip stands between the head and the leader."));
  CHECK(refused[1].first().toString() == QStringLiteral("The fly stands at the end of the line."));
}

TEST_CASE_METHOD(StripBench, "Delete removes, the next part takes the focus, and undo brings it back") {
  choose(2);
  key(Qt::Key_Delete);
  REQUIRE(parts().size() == 5);
  CHECK(undo().undoText() == QStringLiteral("Remove 10 ft, 11 gr/ft"));
  CHECK(strip->selected() == 2u);
  CHECK(block(2)->hasFocus());
  undo().undo();
  CHECK(document.rig() == rigs::plainWinter());
}

TEST_CASE_METHOD(StripBench, "the last part can be removed and the empty line offers a start") {
  start(rigs::rigOf({rigs::fly(33)}));
  choose(0);
  key(Qt::Key_Delete);
  CHECK(parts().empty());
  CHECK_FALSE(strip->selected());
  auto* button = strip->findChild<QPushButton*>();
  REQUIRE(button != nullptr);
  CHECK(button->isVisible());
  QSignalSpy fromRod(strip, &StripView::startFromRod);
  QTest::mouseClick(button, Qt::LeftButton);
  CHECK(fromRod.count() == 1);
}

TEST_CASE_METHOD(StripBench, "a line too short to be seen has its place in pixels, and slides from there") {
  look.setReduceMotion(false);
  const Rig before = document.rig();
  for (const double length_ft : {4.9e-324, 1e-310, 1e-300, 1e-9}) {
    INFO(length_ft);
    Section short_ = before.parts[1].sections.front();
    short_.length = Feet(length_ft);
    Rig rig = before;
    rig.parts = {before.parts[1]};
    rig.parts.front().sections = {short_};
    document.apply(QStringLiteral("Shorten"), rig);
    settle();
    REQUIRE(std::isfinite(ruler.pixelsPerFoot()));
    CHECK(std::isfinite(ruler.station(ruler.right()).feet()));
    CHECK(block(0)->line().right() >= block(0)->line().left());
    CHECK(block(0)->line().left() > 0);
    undo().undo();
    for (int frame = 0; frame < 4; ++frame) {  // half way, the fixture hears what Qt says of it
      QTest::qWait(30);
      strip->grab();
      CHECK(std::isfinite(block(0)->line().left()));
    }
  }
}

TEST_CASE_METHOD(StripBench, "Ctrl+D puts a second one behind, or says why there is no room for it") {
  QSignalSpy refused(strip, &StripView::refused);
  choose(2);
  key(Qt::Key_D, Qt::ControlModifier);
  REQUIRE(parts().size() == 7);
  CHECK(parts()[3] == parts()[2]);
  CHECK(strip->selected() == 3u);
  CHECK(block(3)->hasFocus());
  CHECK(undo().undoText() == QStringLiteral("Duplicate tip"));
  key(Qt::Key_End);
  key(Qt::Key_D, Qt::ControlModifier);
  CHECK(parts().size() == 7);
  REQUIRE(refused.count() == 1);
  CHECK(refused[0].first().toString().contains(QStringLiteral("one fly")));
}

TEST_CASE_METHOD(StripBench, "Enter and a double click open the part") {
  QSignalSpy activated(strip, &StripView::partActivated);
  choose(3);
  key(Qt::Key_Return);
  QTest::mouseDClick(block(1), Qt::LeftButton);
  REQUIRE(activated.count() == 2);
  CHECK(activated[0].first().value<std::size_t>() == 3);
  CHECK(activated[1].first().value<std::size_t>() == 1);
}

TEST_CASE_METHOD(StripBench, "with nothing selected the arrows move the pinned cursor within the line") {
  strip->setFocus();
  ruler.setCursor(Station(10));
  key(Qt::Key_Right);
  CHECK(ruler.cursor() == Station(10.5));
  key(Qt::Key_Left, Qt::ShiftModifier);
  CHECK(ruler.cursor().feet() == Approx(10.4).margin(1e-9));
  ruler.setCursor(Station(0));
  key(Qt::Key_Left);
  CHECK(ruler.cursor() == Station(0));
  ruler.setCursor(Station(37));
  key(Qt::Key_Right);
  CHECK(ruler.cursor() == Station(37));
  QTest::mouseClick(strip, Qt::LeftButton, {}, QPoint(int(ruler.x(Station(15))), strip->height() - 10));
  CHECK(ruler.cursor().feet() == Approx(15).margin(1 / ruler.pixelsPerFoot()));
}

TEST_CASE_METHOD(StripBench, "Escape lets go of the part and gives the arrows to the cursor") {
  choose(2);
  key(Qt::Key_Escape);
  CHECK_FALSE(strip->selected());
  CHECK(strip->hasFocus());
}

TEST_CASE_METHOD(StripBench, "Tab goes from rod to fly, also after blocks were made anew") {
  const auto walk = [&] {
    strip->setFocus();
    QStringList names;
    for (int i = 0; i < strip->blocks().size(); ++i) {
      QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
      names << QApplication::focusWidget()->objectName();
    }
    return names;
  };
  const auto expected = [&] {
    QStringList names;
    for (int i = 0; i < strip->blocks().size(); ++i) names << QStringLiteral("block%1").arg(i);
    return names;
  };
  CHECK(walk() == expected());
  CHECK(strip->selected() == 5u);  // coming to a block by keyboard selects it
  Rig longer = twoTips();
  document.apply(QStringLiteral("Add"), longer);
  settle();
  REQUIRE(strip->blocks().size() == 7);
  CHECK(walk() == expected());
  // Behind the fly come the joints.
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
  CHECK(qobject_cast<JunctionTag*>(QApplication::focusWidget()) == strip->tags().first());
}

TEST_CASE_METHOD(StripBench, "the context menu has a twin for every drag and greys out what cannot be") {
  start(twoTips());
  QContextMenuEvent asked(QContextMenuEvent::Keyboard, QPoint(5, 5), block(2)->mapToGlobal(QPoint(5, 5)));
  QApplication::sendEvent(block(2), &asked);
  auto* menu = strip->findChild<QMenu*>();
  REQUIRE(menu != nullptr);
  CHECK(menuWords(menu, true) == QStringList{QStringLiteral("Edit"), QStringLiteral("Move right, towards the fly"),
                                             QStringLiteral("Duplicate"), QStringLiteral("Remove")});
  CHECK(menuWords(menu, false) == QStringList{QStringLiteral("Move left, towards the rod")});
  menu->actions()[2]->trigger();
  menu->close();
  settle();
  CHECK(parts()[3].name == "first tip");
  CHECK(undo().count() == 1);
}

TEST_CASE_METHOD(StripBench, "what a change only shows has no menu, and no key takes what stands at its place") {
  const Rig before = document.rig();
  QSignalSpy refused(strip, &StripView::refused);
  document.setPreview(twoTips());
  settle();
  REQUIRE(strip->blocks().size() == 7);
  for (const int shown : {3, 6}) {  // the second tip; the fly, for which the line itself has no such place
    QContextMenuEvent asked(QContextMenuEvent::Mouse, QPoint(5, 5), block(shown)->mapToGlobal(QPoint(5, 5)));
    QApplication::sendEvent(block(shown), &asked);
    CHECK(strip->findChild<QMenu*>() == nullptr);
    choose(shown);
    key(Qt::Key_Delete);
    key(Qt::Key_D, Qt::ControlModifier);
  }
  CHECK(document.rig() == before);
  CHECK(refused.count() == 6);
  choose(1);  // the head stands on the line as well
  key(Qt::Key_Delete);
  settle();
  CHECK(parts().size() == before.parts.size() - 1);
}

TEST_CASE_METHOD(StripBench, "a tag pressed by mouse or keyboard asks for the why of its joint") {
  QSignalSpy clicked(strip, &StripView::tagClicked);
  REQUIRE(strip->tags().size() == 2);
  QTest::mouseClick(strip->tags()[1], Qt::LeftButton);
  QTest::keyClick(strip->tags()[0], Qt::Key_Space);
  REQUIRE(clicked.count() == 2);
  CHECK(clicked[0].first().value<std::size_t>() == 1);
  CHECK(clicked[1].first().value<std::size_t>() == 0);
}

TEST_CASE_METHOD(StripBench, "a screen reader hears what each block is and what its joint does") {
  QAccessibleInterface* list = QAccessible::queryAccessibleInterface(strip);
  REQUIRE(list != nullptr);
  CHECK(list->role() == QAccessible::List);
  CHECK(list->text(QAccessible::Name) == QStringLiteral("The line, from the rod to the fly"));
  QAccessibleInterface* tip = QAccessible::queryAccessibleInterface(block(2));
  CHECK(tip->role() == QAccessible::ListItem);
  CHECK(tip->text(QAccessible::Name) ==
        QStringLiteral("tip, 10 feet, 11 grains a foot, steps down from the head by 0.62: smooth drop"));
  QAccessibleInterface* tag = QAccessible::queryAccessibleInterface(strip->tags()[0]);
  CHECK(tag->role() == QAccessible::Button);
  CHECK(tag->text(QAccessible::Name) == QStringLiteral("17.8 to 11: smooth drop, fits"));
  choose(2);
  CHECK(tip->state().selected);
  CHECK(tip->state().focused);
}

TEST_CASE_METHOD(StripBench, "a screen reader can move and open a block") {
  start(twoTips());
  QSignalSpy activated(strip, &StripView::partActivated);
  QAccessibleActionInterface* actions = QAccessible::queryAccessibleInterface(block(2))->actionInterface();
  REQUIRE(actions != nullptr);
  actions->doAction(QAccessibleActionInterface::increaseAction());
  settle();
  CHECK(parts()[3].name == "first tip");
  actions->doAction(QAccessibleActionInterface::pressAction());
  REQUIRE(activated.count() == 1);
  CHECK(activated[0].first().value<std::size_t>() == 3);
}

}  // namespace grainwise::ui
