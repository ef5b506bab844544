// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QTemporaryDir>

#include "core/model/deck_edits.h"
#include "tests/ui/clinic_support.h"
#include "ui/clinic/card_form.h"
#include "ui/clinic/keep_awake.h"

namespace grainwise::ui {
namespace {

const Deck& deckOf(test::ClinicFixture& f) { return f.clinic->document()->deck(); }

}  // namespace

TEST_CASE("Edits of a deck put cards in, take them out, double and move them, and nothing else") {
  const Deck deck = test::sampleDeck("why-that-tip");
  CHECK(deck_edits::removed(deck_edits::inserted(deck, 3, Card{}), 3) == deck);
  CHECK(deck_edits::inserted(deck, deck.cards.size(), Card{}).cards.back() == Card{});
  const Deck twice = deck_edits::duplicated(deck, 4);
  CHECK(twice.cards[4] == twice.cards[5]);
  CHECK(deck_edits::removed(twice, 5) == deck);
  const Deck moved = deck_edits::moved(deck, 2, 6);
  CHECK(moved.cards[6] == deck.cards[2]);
  CHECK(moved.cards[2] == deck.cards[3]);
  CHECK(deck_edits::moved(moved, 6, 2) == deck);
  CHECK_THROWS_AS(deck_edits::removed(deck, deck.cards.size()), std::logic_error);
  CHECK_THROWS_AS(deck_edits::moved(deck, 0, deck.cards.size()), std::logic_error);
}

TEST_CASE_METHOD(test::ClinicFixture, "Every edit of a deck is one named step that is undone to the very deck before") {
  QUndoStack* stack = clinic->document()->undoStack();
  const Deck before = deckOf(*this);
  clinic->choose(2);
  const auto step = [&](const char* name, const std::function<void()>& act) {
    INFO(name);
    const Deck was = deckOf(*this);
    const int steps = stack->index();
    act();
    CHECK(stack->index() == steps + 1);
    CHECK(stack->undoText() == QLatin1String(name));
    CHECK_FALSE(deckOf(*this) == was);
    stack->undo();
    CHECK(deckOf(*this) == was);
    clinic->choose(2);
  };
  step("Duplicate card", [&] { press("cardTwice"); });
  step("Delete card", [&] { press("cardDelete"); });
  step("Move card", [&] { press("cardDown"); });
  step("Move card", [&] { QTest::keyClick(find<QListWidget>("deckCards"), Qt::Key_Up, Qt::AltModifier); });
  step("Add card", [&] { press("cardBlank"); });
  step("Take the rig out", [&] { press("cardRigNone"); });
  clinic->benchRig = [] { return std::optional(test::sampleRig("02-slot")); };
  step("Add card", [&] { press("cardFromBench"); });
  step("Take the bench's rig", [&] { press("cardRigBBench"); });
  CHECK(deckOf(*this) == before);
}

TEST_CASE_METHOD(test::ClinicFixture, "Words typed into one field are one step, and the cursor stays where it is") {
  QUndoStack* stack = clinic->document()->undoStack();
  clinic->choose(3);
  auto* say = find<QPlainTextEdit>("cardSay");
  say->setFocus();
  say->moveCursor(QTextCursor::Start);
  QTest::keyClicks(say, QStringLiteral("Look: "));
  CHECK(stack->count() == 1);
  CHECK(deckOf(*this).cards[3].say->rfind("Look: Weight may fall", 0) == 0);
  CHECK(say->textCursor().position() == 6);
  auto* title = find<QLineEdit>("cardTitle");
  title->setFocus();
  title->setCursorPosition(0);
  QTest::keyClicks(title, QStringLiteral("Is it "));
  CHECK(stack->count() == 2);
  CHECK(title->cursorPosition() == 6);
  CHECK(find<QListWidget>("deckCards")->item(3)->text() == QLatin1String("4. Is it Downhill or hinge"));
  stack->undo();
  stack->undo();
  CHECK(deckOf(*this) == test::sampleDeck("why-that-tip"));
  CHECK(stack->isClean());
}

TEST_CASE_METHOD(test::ClinicFixture, "A card from the bench holds the rig itself, behind the card that was chosen") {
  clinic->choose(4);
  clinic->addCard(deck_edits::cardOf(test::sampleRig("02-slot"), CardShow::river));
  CHECK(clinic->current() == 5);
  const Card& card = deckOf(*this).cards[5];
  CHECK(card.show == CardShow::river);
  CHECK(std::get<Rig>(*card.rig) == test::sampleRig("02-slot"));
  CHECK(card.title == test::sampleRig("02-slot").name);
}

TEST_CASE_METHOD(test::ClinicFixture, "A deck is written as it was read, and as it was changed") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("mine.deck.json"));
  clinic->askSavePath = [&] { return path; };
  clinic->choose(0);
  CHECK(clinic->saveAs());
  QFile read(path);
  REQUIRE(read.open(QIODevice::ReadOnly));
  QFile original(QString::fromStdString(test::deckPath("why-that-tip")));
  REQUIRE(original.open(QIODevice::ReadOnly));
  CHECK(read.readAll() == original.readAll());
  press("cardDelete");
  CHECK(clinic->document()->isModified());
  press("deckSave");
  CHECK_FALSE(clinic->document()->isModified());
  CHECK(loadDeck(path.toStdString()).value() == deckOf(*this));
}

TEST_CASE_METHOD(test::ClinicFixture, "A deck that could not be opened again is not written over one that can") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("mine.deck.json"));
  REQUIRE(clinic->document()->saveAs(path).empty());
  const Deck good = loadDeck(path.toStdString()).value();
  Deck deck = good;
  deck.cards.front().rig = Rig{};  // an empty line of the bench
  clinic->document()->apply(QStringLiteral("Rig"), deck);
  const Problems problems = clinic->document()->saveAs(path);
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().what.text() == "not saved: a rig needs parts");
  CHECK(clinic->document()->isModified());
  CHECK(loadDeck(path.toStdString()).value() == good);
}

TEST_CASE_METHOD(test::ClinicFixture, "A card whose rig is missing says which, and the show goes on") {
  Deck deck = deckOf(*this);
  deck.cards[2].rig = std::string("gone.rig.json");
  clinic->document()->apply(QStringLiteral("Name a rig file"), deck);
  REQUIRE(QTest::qWaitFor([&] { return clinic->said().contains(QLatin1String("gone.rig.json")); }, 3000));
  CHECK(clinic->said().contains(QLatin1String("Card 3")));
  clinic->startShow(2);
  REQUIRE(clinic->run()->shown());
  CHECK(clinic->run()->shown()->missing.size() == 1);
  clinic->run()->next();
  clinic->run()->next();
  CHECK(clinic->run()->index() == 3);
  CHECK(clinic->run()->shown()->missing.isEmpty());
  clinic->endShow();
}

TEST_CASE_METHOD(test::ClinicFixture, "A rig outside the deck's folder is not named, and the reason is said") {
  clinic->choose(2);
  const Deck before = deckOf(*this);
  clinic->askRigPath = [] { return QStringLiteral("/tmp/elsewhere.rig.json"); };
  press("cardRigFile");
  CHECK(deckOf(*this) == before);
  CHECK(clinic->said().contains(QLatin1String("outside the deck's folder")));
  clinic->askRigPath = [] { return QString::fromStdString(test::samplePath("02-slot")); };
  press("cardRigFile");
  CHECK(std::get<std::string>(*deckOf(*this).cards[2].rig) == "02-slot.rig.json");
}

TEST_CASE_METHOD(test::ClinicFixture, "A deck that cannot be read leaves the open one, and says line and fix") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("bad.deck.json"));
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("{ \"format\": \"grainwise-deck\", \"version\": 1, \"title\": \"t\", \"cards\": [\n"
             "{ \"title\": \"c\", \"show\": \"strip\", \"rig\": \"../up.rig.json\" } ] }\n");
  file.close();
  const Deck before = deckOf(*this);
  CHECK_FALSE(clinic->openDeck(path).empty());
  CHECK(deckOf(*this) == before);
  CHECK(clinic->said().contains(QLatin1String("bad.deck.json:2")));
}

TEST_CASE_METHOD(test::ClinicFixture, "Every control of the Clinic has a name for the ear and room for a finger") {
  constexpr int kTarget = 44;
  for (const QWidget* widget : clinic->findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || widget->objectName().startsWith(QLatin1String("qt_"))) continue;
    INFO(widget->metaObject()->className() << " " << widget->objectName().toStdString());
    CHECK_FALSE(widget->objectName().isEmpty());
    const auto* button = qobject_cast<const QAbstractButton*>(widget);
    CHECK_FALSE((widget->accessibleName().isEmpty() && !(button && !button->text().isEmpty())));
    if (button) CHECK(button->height() >= kTarget);
  }
}

TEST_CASE_METHOD(test::ClinicFixture, "The editor's fields take the room that a card of words leaves, and each choice has its name over it") {
  const auto tall = [this](int card) {
    clinic->choose(card);
    QTest::qWait(1);
    return find<QWidget>("cardSay")->height();
  };
  const int words = tall(0);
  const int rig = tall(3);
  CHECK(words > rig + find<QWidget>("cardSay")->fontMetrics().lineSpacing());
  for (const char* name : {"cardShows", "cardFigure"}) {
    const auto* choice = find<QWidget>(name);
    const auto labels = clinic->findChildren<QLabel*>();
    const auto over = std::find_if(labels.begin(), labels.end(), [&](const QLabel* label) { return label->buddy() == choice; });
    REQUIRE(over != labels.end());
    CHECK((*over)->text() == choice->accessibleName());
    CHECK((*over)->isVisible());
    clinic->choose(0);
    QTest::qWait(1);
    CHECK((*over)->isVisible() == choice->isVisible());
    clinic->choose(3);
    QTest::qWait(1);
  }
}

TEST_CASE_METHOD(test::ClinicFixture, "No words of the editor are cut or touch their button, on a projector's screen and a laptop's") {
  constexpr int kAir = 8;  // at each side of a button's words
  clinic->askRigPath = [] { return QString::fromStdString(test::samplePath("01-plain-winter")); };
  for (const QSize size : {QSize(1280, 676), QSize(1366, 720)}) {
    clinic->resize(size);
    for (int card = 0; card < int(deckOf(*this).cards.size()); ++card) {
      clinic->choose(card);
      QTest::qWait(1);
      INFO(size.width() << ", card " << card);
      for (const QPushButton* button : clinic->findChildren<QPushButton*>()) {
        if (!button->isVisible()) continue;
        INFO(button->objectName().toStdString());
        CHECK(button->width() >= button->fontMetrics().horizontalAdvance(button->text()) + 2 * kAir);
      }
      for (const char* name : {"cardRig", "cardRigB", "cardParts", "cardPools"}) {
        const auto* label = find<QLabel>(name);
        if (!label->isVisible()) continue;
        INFO(name << " " << label->text().toStdString());
        const QRect needs = label->fontMetrics().boundingRect(label->rect(), Qt::TextWordWrap, label->text());
        CHECK(label->rect().adjusted(0, 0, 1, 1).contains(needs));
      }
    }
  }
}

TEST_CASE_METHOD(test::ClinicFixture, "A card of tips takes pools and tips from the bench, and says which figures it shows") {
  const int at = 1;
  clinic->choose(at);
  auto* shows = find<QComboBox>("cardShows");
  const auto pick = [](QComboBox* box, int index) {
    box->setCurrentIndex(index);
    Q_EMIT box->activated(index);
  };
  pick(shows, shows->findText(showWords(CardShow::tips)));
  clinic->benchRig = [] { return std::optional(test::sampleRig("03-thin-tail")); };
  Pool pool;
  pool.name = "Here";
  pool.surfaceSpeed = FeetPerSecond(2);
  pool.depth = Feet(4);
  clinic->benchPools = [pool] { return std::vector<Pool>{pool}; };
  const std::size_t flies = deckOf(*this).cards[at].parts.size();
  press("cardPartsNone");
  CHECK(flies == 4);
  press("cardPartsBench");
  press("cardPoolsBench");
  const Card& card = deckOf(*this).cards[at];
  REQUIRE(card.parts.size() == 1);
  CHECK(card.parts.front().kind == PartKind::tip);
  REQUIRE(card.pools.size() == 1);
  CHECK(find<QLabel>("cardPools")->text() == QLatin1String("Pools: Here"));
  auto* figure = find<QComboBox>("cardFigure");
  CHECK_FALSE(figure->isVisible());
  pick(shows, shows->findText(showWords(CardShow::compare)));
  CHECK(figure->isVisible());
  pick(figure, figure->findText(figureWords(CardFigure::none)));
  CHECK(deckOf(*this).cards[at].figure == CardFigure::none);
  CHECK(clinic->document()->undoStack()->undoText() == QLatin1String("Change figures"));
  pick(figure, 0);
  CHECK_FALSE(deckOf(*this).cards[at].figure);
  pick(shows, shows->findText(showWords(CardShow::tips)));
  press("cardPoolsNone");
  CHECK(deckOf(*this).cards[at].pools.empty());
  // What it needs not is not asked for.
  CHECK_FALSE(find<QLabel>("cardRigB")->isVisible());
  pick(shows, shows->findText(showWords(CardShow::text)));
  for (const char* name : {"cardRig", "cardParts", "cardPools"}) CHECK_FALSE(find<QLabel>(name)->isVisible());
}

TEST_CASE_METHOD(test::UiFixture, "Without a session bus the screen is not kept awake, and nothing fails") {
  qunsetenv("DBUS_SESSION_BUS_ADDRESS");
  const KeepAwake awake(QStringLiteral("test"));
  CHECK_FALSE(awake.held());
}

}  // namespace grainwise::ui
