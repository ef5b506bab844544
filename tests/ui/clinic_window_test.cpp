// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QSettings>
#include <QTest>

#include "tests/ui/clinic_support.h"
#include "tests/support/sample_rig.h"
#include "ui/clinic/edit_panel.h"
#include "ui/compare/compare_face.h"
#include "ui/document/own_store.h"
#include "ui/panels/drawer.h"
#include "ui/print/deck_pages.h"
#include "ui/strip/shelf_model.h"
#include "ui/strip/shelf_view.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {

/// The whole window on the first sample, with the first deck open in its Clinic.
struct DeckWindow : test::UiFixture {
  DeckWindow() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    REQUIRE(window->openFile(QString::fromStdString(test::samplePath("01-plain-winter"))));
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    window->activateWindow();
    REQUIRE(window->openFile(QString::fromStdString(test::deckPath("why-that-tip"))));
    face = window->clinic()->face();
    face->askUnsaved = [] { return ClinicFace::Unsaved::discard; };
  }
  ~DeckWindow() { face->endShow(); }
  const Card& newest() const { return face->document()->deck().cards[std::size_t(face->current())]; }

  std::unique_ptr<MainWindow> window;
  ClinicFace* face = nullptr;
};

}  // namespace

TEST_CASE_METHOD(DeckWindow, "F5 shows the deck wherever the keyboard is in the window, and elsewhere opens the river") {
  CHECK(QApplication::focusWidget() == face->findChild<QListWidget*>(QStringLiteral("deckCards")));
  face->choose(4);
  QWidget* const places[] = {window.get(), window->findChild<QWidget*>(QStringLiteral("face_clinic")),
                             face->findChild<QWidget*>(QStringLiteral("deckTitle")),
                             face->findChild<QWidget*>(QStringLiteral("cardSay")),
                             face->findChild<QWidget*>(QStringLiteral("deckCards"))};
  for (QWidget* place : places) {
    if (place == nullptr) continue;
    INFO(place->objectName().toStdString());
    const auto press = [&](Qt::KeyboardModifiers modifiers) {
      window->activateWindow();
      REQUIRE(QTest::qWaitForWindowActive(window.get()));
      place->setFocus();
      QTest::keyClick(place, Qt::Key_F5, modifiers);
      REQUIRE(face->showing());
    };
    press(Qt::NoModifier);
    CHECK(face->run()->index() == 0);
    face->endShow();
    face->choose(4);
    press(Qt::ShiftModifier);
    CHECK(face->run()->index() == 4);
    face->endShow();
  }
  window->activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(window.get()));
  QTest::keyClick(window.get(), Qt::Key_F11);
  CHECK(face->showing());
  face->endShow();
  window->faces()->open(QStringLiteral("bench"));
  window->activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(window.get()));
  QTest::keyClick(window.get(), Qt::Key_F5);
  CHECK_FALSE(face->showing());
  CHECK(window->bench()->drawer()->current() == QLatin1String("river"));
}

TEST_CASE_METHOD(DeckWindow, "The menu shows the key that starts the show while the Clinic is open") {
  Actions& a = *window->actionSet();
  CHECK(a.showDeck->shortcut() == QKeySequence(Qt::Key_F5));
  CHECK(a.river->shortcut().isEmpty());
  window->faces()->open(QStringLiteral("bench"));
  CHECK(a.showDeck->shortcut() == QKeySequence(Qt::Key_F11));
  CHECK(a.river->shortcut() == QKeySequence(Qt::Key_F5));
}

TEST_CASE_METHOD(DeckWindow, "A card taken in Compare shows the picture that is open there, of A and of B") {
  Actions& a = *window->actionSet();
  window->openBeside(QString::fromStdString(test::samplePath("wrong-hinge")));
  CompareFace* compare = window->compare()->face();
  const auto take = [&](CardShow wanted) {
    const Rig rigA = compare->side(CompareFace::Letter::a)->document()->rig();
    const Rig rigB = compare->side(CompareFace::Letter::b)->document()->rig();
    a.takeCard->trigger();
    CHECK(newest().show == wanted);
    CHECK(std::get<Rig>(newest().rig.value()) == rigA);
    CHECK(std::get<Rig>(newest().rigB.value()) == rigB);
    window->faces()->open(QStringLiteral("compare"));
  };
  compare->openDifferences();
  take(CardShow::compare);
  compare->openCast();
  take(CardShow::cast);
  compare->openRiver();
  take(CardShow::river);
  compare->swap();
  take(CardShow::river);
}

TEST_CASE_METHOD(DeckWindow, "A card is changed live with one's own parts as well, also with one that is made during the show") {
  const auto onShelves = [&](const SharedShelf& all) {
    for (const char* name : {"cardShelf", "cardShelfB"}) {
      const auto* shelf = face->editPanel()->findChild<ShelfView*>(QLatin1String(name));
      if (shelf == nullptr || !shelf->model()->holds(all)) return false;
    }
    return true;
  };
  const SharedShelf carried = window->own()->all();
  CHECK(onShelves(carried));
  Shelf own;
  own.parts.push_back(test::sampleRig("01-plain-winter").parts.front());
  own.parts.back().id = "my-part";
  window->own()->setOwn(own);
  REQUIRE_FALSE(window->own()->all() == carried);
  CHECK(onShelves(window->own()->all()));
  face->startShow(0);
  window->own()->undo();
  CHECK(onShelves(carried));
}

TEST_CASE_METHOD(DeckWindow, "The deck is printed a card a page, or four with lines to write on, from its button and the menu") {
  std::vector<int> sheets;
  window->clinic()->preview = [&](const std::shared_ptr<const Pages>& pages) { sheets.push_back(pages->count()); };
  const QMenu* menu = face->findChild<QPushButton*>(QStringLiteral("deckPrint"))->menu();
  REQUIRE(menu != nullptr);
  for (QAction* action : menu->actions()) action->trigger();
  window->actionSet()->print->trigger();
  window->actionSet()->printFour->trigger();
  CHECK(sheets == std::vector<int>{13, 4, 13, 4});
}

}  // namespace grainwise::ui
