// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSlider>
#include <QSpinBox>

#include "tests/ui/clinic_support.h"
#include "ui/clinic/card_view.h"
#include "ui/clinic/edit_panel.h"
#include "ui/clinic/show_window.h"
#include "ui/clinic/teacher_view.h"
#include "ui/document/rig_document.h"
#include "ui/strip/strip_view.h"

namespace grainwise::ui {
namespace {

/// A show under way, from the second card on (the first asks nothing).
struct ShowFixture : test::ClinicFixture {
  ShowFixture() {
    clinic->startShow(1);
    REQUIRE(clinic->showing());
    settle();
  }
  ~ShowFixture() { clinic->endShow(); }
  static void settle() {
    for (int turn = 0; turn < 4; ++turn) QCoreApplication::processEvents();
  }
  DeckRun& run() { return *clinic->run(); }
  void key(int code, QWidget* to = nullptr) {
    QTest::keyClick(to ? to : clinic->showWindow(), Qt::Key(code));
    settle();
  }
};

/// Each way of going round once: on twice (answer, next card), back twice.
template <class Press>
void goesRound(DeckRun& run, const Press& press, int on, int back) {
  const int at = run.index();
  REQUIRE_FALSE(run.answered());
  press(on);
  CHECK(run.index() == at);
  CHECK(run.answered());
  press(on);
  CHECK(run.index() == at + 1);
  CHECK_FALSE(run.answered());
  press(back);
  CHECK(run.index() == at);
  CHECK(run.answered());
  press(back);
  CHECK(run.index() == at);
  CHECK_FALSE(run.answered());
}

}  // namespace

TEST_CASE_METHOD(ShowFixture, "A remote goes on to the answer, then to the next card, and back the same way") {
  const auto press = [this](int code) { key(code); };
  goesRound(run(), press, Qt::Key_PageDown, Qt::Key_PageUp);
  goesRound(run(), press, Qt::Key_Right, Qt::Key_Left);
  goesRound(run(), press, Qt::Key_Space, Qt::Key_Backspace);
}

TEST_CASE_METHOD(ShowFixture, "The remote is heard whichever widget has the focus") {
  QWidget host;
  auto* list = new QListWidget(&host);
  list->addItems({QStringLiteral("a"), QStringLiteral("b"), QStringLiteral("c")});
  auto* read = new QPlainTextEdit(QStringLiteral("one\ntwo\nthree"), &host);
  read->setReadOnly(true);
  auto* button = new QPushButton(QStringLiteral("x"), &host);
  auto* slider = new QSlider(&host);
  host.show();
  REQUIRE(QTest::qWaitForWindowExposed(&host));
  for (QWidget* widget : std::initializer_list<QWidget*>{list, read, button, slider, &host}) {
    INFO(widget->metaObject()->className());
    widget->setFocus();
    const auto press = [&](int code) { key(code, widget); };
    goesRound(run(), press, Qt::Key_PageDown, Qt::Key_PageUp);
    goesRound(run(), press, Qt::Key_Right, Qt::Key_Left);
    goesRound(run(), press, Qt::Key_Space, Qt::Key_Backspace);
    key(Qt::Key_B, widget);
    CHECK(run().blank());
    key(Qt::Key_Period, widget);
    CHECK_FALSE(run().blank());
  }
}

TEST_CASE_METHOD(ShowFixture, "A field that is typed in keeps its letters, and the remote's page keys still work") {
  QWidget host;
  auto* line = new QLineEdit(&host);
  auto* number = new QSpinBox(&host);
  auto* words = new QPlainTextEdit(&host);
  host.show();
  host.activateWindow();
  REQUIRE(QTest::qWaitForWindowExposed(&host));
  for (QWidget* widget : std::initializer_list<QWidget*>{line, number, words}) {
    INFO(widget->metaObject()->className());
    widget->setFocus();
    REQUIRE(QApplication::focusWidget() == widget);
    const int at = run().index();
    for (const int code : {Qt::Key_B, Qt::Key_H, Qt::Key_Period, Qt::Key_Space, Qt::Key_Right}) key(code, widget);
    CHECK_FALSE(run().blank());
    CHECK_FALSE(run().numbersHidden());
    CHECK(run().index() == at);
    CHECK_FALSE(run().answered());
    goesRound(run(), [&](int code) { key(code, widget); }, Qt::Key_PageDown, Qt::Key_PageUp);
  }
  CHECK(line->text() == QLatin1String("bh. "));
}

TEST_CASE_METHOD(ShowFixture, "B and the full stop blank the class's screen, and the next key brings it back") {
  const int at = run().index();
  key(Qt::Key_B);
  CHECK(run().blank());
  const QImage black = clinic->showWindow()->view()->grab().toImage();
  CHECK(black.pixelColor(black.width() / 2, black.height() / 2) == QColor(Qt::black));
  key(Qt::Key_PageDown);
  CHECK_FALSE(run().blank());
  CHECK(run().index() == at);
  CHECK_FALSE(run().answered());
}

TEST_CASE_METHOD(ShowFixture, "H takes the numbers from the class's screen and leaves them on the teacher's") {
  run().goTo(2);  // what a foot weighs
  CardView* view = clinic->showWindow()->view();
  view->resize(1280, 720);
  const QImage with = view->grab().toImage();
  auto* laptop = clinic->teacher()->findChild<CardView*>(QStringLiteral("cardNow"));
  const QImage kept = laptop->grab().toImage();
  key(Qt::Key_H);
  CHECK(run().numbersHidden());
  CHECK(view->grab().toImage() != with);
  CHECK(laptop->grab().toImage() == kept);
  CHECK(clinic->teacher()->notes().contains(QLatin1String("24.5 gr/ft")));
  key(Qt::Key_H);
  CHECK(view->grab().toImage() == with);
}

TEST_CASE_METHOD(ShowFixture, "Escape ends the show, and the chosen card is the one that stood") {
  key(Qt::Key_PageDown);
  key(Qt::Key_PageDown);
  const int at = run().index();
  key(Qt::Key_Escape);
  CHECK_FALSE(clinic->showing());
  CHECK_FALSE(clinic->showWindow());
  CHECK(clinic->current() == at);
  // The keys are the editor's own again.
  QTest::keyClick(find<QListWidget>("deckCards"), Qt::Key_PageUp);
  CHECK(clinic->current() != at);
}

TEST_CASE_METHOD(ShowFixture, "The last card stays, and a first card does not go back further") {
  run().goTo(run().count() - 1);
  for (int i = 0; i < 4; ++i) key(Qt::Key_PageDown);
  CHECK(run().index() == run().count() - 1);
  run().goTo(0);
  key(Qt::Key_PageUp);
  CHECK(run().index() == 0);
}

TEST_CASE_METHOD(ShowFixture, "The teacher reads notes and answer that the class does not see yet") {
  CHECK(clinic->teacher()->notes().contains(QLatin1String("Pass both round dry")));
  CHECK(clinic->teacher()->notes().contains(QLatin1String("Answer: The leech 33 grains")));
  CHECK_FALSE(clinic->showWindow()->view()->accessibleDescription().contains(QLatin1String("leech 33")));
  key(Qt::Key_PageDown);
  CHECK(clinic->showWindow()->view()->accessibleDescription().contains(QLatin1String("leech 33")));
}

TEST_CASE_METHOD(ShowFixture, "E changes the card's rig for the class at once, and leaving puts it back") {
  run().goTo(2);
  const Rig before = *run().shown()->rigs[0].rig;
  key(Qt::Key_E);
  REQUIRE(run().editing());
  EditPanel* panel = clinic->editPanel();
  CHECK(panel->isVisible());
  panel->strip()->select(2);
  panel->strip()->removeSelected();
  settle();
  CHECK(run().shown()->rigs[0].rig->parts.size() == before.parts.size() - 1);
  // Keys of the line are the line's while it is changed.
  const int at = run().index();
  key(Qt::Key_Right, panel->strip());
  CHECK(run().index() == at);
  CHECK_FALSE(run().answered());
  key(Qt::Key_Escape);
  CHECK(clinic->showing());
  CHECK_FALSE(run().editing());
  CHECK(*run().shown()->rigs[0].rig == before);
  CHECK(clinic->document()->deck() == test::sampleDeck("why-that-tip"));
}

TEST_CASE_METHOD(ShowFixture, "Going on while a rig is changed takes the panel away, and Escape then ends the show") {
  run().goTo(2);
  key(Qt::Key_E);
  REQUIRE(run().editing());
  while (run().index() == 2) key(Qt::Key_PageDown);  // its answer comes first
  CHECK_FALSE(run().editing());
  CHECK_FALSE(clinic->editPanel()->isVisible());
  key(Qt::Key_E);
  CHECK(run().editing());
  CHECK(clinic->editPanel()->isVisible());
  key(Qt::Key_Escape);
  CHECK(clinic->showing());
  CHECK_FALSE(clinic->editPanel()->isVisible());
}

TEST_CASE_METHOD(ShowFixture, "Either rig of a card of two is changed live, each with an undo of its own") {
  run().goTo(3);  // downhill or hinge
  REQUIRE(run().shown()->rigs.size() == 2);
  const Rig a = *run().shown()->rigs[0].rig, b = *run().shown()->rigs[1].rig;
  key(Qt::Key_E);
  EditPanel* panel = clinic->editPanel();
  for (const char* name : {"cardEditA", "cardEditB"}) {
    INFO(name);
    REQUIRE(panel->findChild<QAbstractButton*>(QLatin1String(name))->isVisible());
  }
  QTest::mouseClick(panel->findChild<QAbstractButton*>(QStringLiteral("cardEditB")), Qt::LeftButton);
  CHECK(panel->side() == 1);
  panel->strip()->select(2);
  panel->strip()->removeSelected();
  settle();
  CHECK(*run().shown()->rigs[0].rig == a);
  CHECK(run().shown()->rigs[1].rig->parts.size() == b.parts.size() - 1);
  QTest::mouseClick(panel->findChild<QAbstractButton*>(QStringLiteral("cardEditA")), Qt::LeftButton);
  panel->strip()->select(0);
  panel->strip()->removeSelected();
  settle();
  CHECK(run().shown()->rigs[0].rig->parts.size() == a.parts.size() - 1);
  CHECK(run().shown()->rigs[1].rig->parts.size() == b.parts.size() - 1);
  QTest::mouseClick(panel->findChild<QPushButton*>(QStringLiteral("cardEditUndo")), Qt::LeftButton);
  settle();
  CHECK(*run().shown()->rigs[0].rig == a);
  CHECK(run().shown()->rigs[1].rig->parts.size() == b.parts.size() - 1);
  key(Qt::Key_Escape);
  CHECK(*run().shown()->rigs[1].rig == b);
  run().goTo(2);  // of one rig: no letters to choose from
  key(Qt::Key_E);
  CHECK_FALSE(panel->findChild<QAbstractButton*>(QStringLiteral("cardEditB"))->isVisible());
}

TEST_CASE_METHOD(ShowFixture, "A swing that is on the card plays, slowly when asked, and stops at its end") {
  run().goTo(8);  // a rating is not a depth
  REQUIRE(QTest::qWaitFor([this] { return !run().waiting(); }, 10000));
  REQUIRE(run().shown()->runs);
  REQUIRE(run().playing());
  run().advance(100);
  const double fast = run().state().time_s;
  CHECK(fast >= 0.6);
  key(Qt::Key_S);
  CHECK(run().slow());
  run().advance(100);
  CHECK(run().state().time_s < fast / 2);
  run().advance(1e6);
  CHECK_FALSE(run().playing());
  CHECK(run().state().time_s < 0);
}

TEST_CASE_METHOD(ShowFixture, "The casts of a shipped card play, slowly when asked, and stop at their end") {
  run().goTo(6);  // who leads?
  REQUIRE(run().shown()->card.show == CardShow::cast);
  REQUIRE(QTest::qWaitFor([this] { return !run().waiting(); }, 20000));
  REQUIRE(run().shown()->runs);
  for (const auto& cast : run().shown()->runs->casts) CHECK(cast != nullptr);
  REQUIRE(run().playing());
  const double length = run().shown()->runs->length_s();
  CHECK(length > 0.5);
  run().advance(100);
  const double fast = run().state().time_s;
  CHECK(fast >= 0.05);
  key(Qt::Key_S);
  CHECK(run().slow());
  run().advance(100);
  CHECK(run().state().time_s < fast / 2);
  CHECK(run().state().time_s >= 0.01);
  // Each step paints both screens' card, and not the one that comes next.
  QTest::qWait(0);
  test::PaintCounter next(clinic->teacher()->findChild<QWidget*>(QStringLiteral("cardNext")));
  test::PaintCounter now(clinic->teacher()->findChild<QWidget*>(QStringLiteral("cardNow")));
  test::PaintCounter seen(clinic->showWindow()->view());
  REQUIRE(QTest::qWaitFor([&] { return now.count() > 2 && seen.count() > 2; }));
  CHECK(next.count() == 0);
  run().advance(1e6);
  CHECK_FALSE(run().playing());
  CHECK(run().state().time_s < 0);
}

}  // namespace grainwise::ui
