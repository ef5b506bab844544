// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <QAction>
#include <QApplication>
#include <QFile>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QVBoxLayout>

#include "core/io/deck_file.h"
#include "core/io/pools_file.h"
#include "tests/support/pages.h"
#include "tests/support/reading_room.h"
#include "tests/support/strip_bench.h"
#include "tests/support/ui_support.h"
#include "ui/clinic/clinic_face.h"
#include "ui/compare/compare_face.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/panels/make_panel.h"
#include "ui/strip/strip_view.h"
#include "ui/theme/language.h"
#include "ui/text/shelf_words.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_window.h"

namespace grainwise::ui {
namespace {

constexpr QSize kScreen(1366, 768);
/// What runs in the background has its picture by then, or says that it is working on it.
constexpr int kSettle_ms = 60;
constexpr int kMostSettle_ms = 3000;
const QStringList kRigs{QStringLiteral("01-plain-winter"), QStringLiteral("wrong-hinge"),
                        QStringLiteral("wrong-fat-fly"), QStringLiteral("wrong-no-grip")};

/// A rig whose own names are no words, so that every word on screen is the program's.
Rig namelessRig(const QString& name) {
  Rig rig = test::sampleRig(name.toStdString());
  rig.name = "Qq 1";
  rig.notes.reset();
  if (rig.water && rig.water->name) rig.water->name = "Qq 2";
  for (Part& part : rig.parts) {
    if (part.name && !isShelfName(QString::fromStdString(*part.name))) part.name.reset();
  }
  return rig;
}

/// The window, read page by page.
struct WindowReader : test::UiFixture {
  explicit WindowReader(bool readsWords = true) : words(readsWords) {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->look()->setReduceMotion(true);
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    window->resize(kScreen);
    Pools pools;
    for (const char* name : {"Qq 3", "Qq 4"}) {
      Pool pool;
      pool.name = name;
      pool.depth = Feet(6);
      pool.surfaceSpeed = FeetPerSecond(3);
      pools.pools.push_back(pool);
    }
    window->pools()->start(pools);
    start(kRigs.front());
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    QTest::qWait(kSettle_ms);
  }

  void start(const QString& file) { window->startFrom(namelessRig(file)); }

  /// What there is to object to once the window stands still: on a busy machine a page may still be
  /// finding room for its words when it is first looked at.
  QStringList settled(QWidget* of) {
    QTest::qWait(kSettle_ms);
    QStringList found;
    (void)QTest::qWaitFor(
        [&] {
          found = test::objections(of, words);
          return std::all_of(found.begin(), found.end(), [&](const QString& one) { return said.contains(one); });
        },
        kMostSettle_ms);
    return found;
  }

  /// Reads what the window says now and keeps what there is to object to, under the name of the page.
  void read(const QString& page) {
    for (const QString& one : settled(window.get())) {
      const QString line = page + QStringLiteral(" | ") + one;
      if (!said.contains(one)) faults.append(line);
      said.insert(one);
    }
  }

  /// The same of every other window that is open.
  void readOthers(const QString& page) {
    for (QWidget* other : QApplication::topLevelWidgets()) {
      if (other == window.get() || !other->isVisible()) continue;
      // The platform's own screen is smaller than any that a class would see.
      if (other->isFullScreen()) other->setGeometry(QRect(QPoint(), kScreen));
      for (const QString& one : settled(other)) {
        if (!said.contains(one)) faults.append(page + QStringLiteral(" | ") + one);
        said.insert(one);
      }
    }
  }

  void closeOthers() {
    for (QWidget* other : QApplication::topLevelWidgets()) {
      if (other != window.get() && other->isVisible()) other->close();
    }
  }

  void hold() {
    CHECK(window->width() == kScreen.width());
    CHECK(window->height() == kScreen.height());
    INFO(faults.join(QLatin1Char('\n')).toStdString());
    CHECK(faults.isEmpty());
  }

  using Pages = std::vector<std::pair<const char*, std::function<void()>>>;
  Pages benchPages() {
    BenchFace* bench = window->bench();
    return {{"shelf", [=] { bench->openShelf(); }},   {"cast", [=] { bench->openCast(); }},
            {"river", [=] { bench->openRiver(); }},   {"tips", [=] { bench->openTips(); }},
            {"fixes", [=] { bench->openFixes(); }},   {"pools", [=] { bench->openPools(); }},
            {"depths", [=] { bench->openDepths(); }}, {"rod", [=] { bench->openRod(true); }},
            {"water", [=] { bench->openWater(); }},   {"name", [=] { bench->openName(); }}};
  }

  /// Every page of the bench on a rig: what opens, each part, each why.
  void readBench(const QString& file) {
    start(file);
    for (const auto& [name, open] : benchPages()) {
      open();
      read(file + QLatin1Char(' ') + QLatin1String(name));
    }
    window->bench()->openPart();
    for (std::size_t i = 0; i < window->document()->rig().parts.size(); ++i) {
      window->bench()->strip()->select(i);
      read(QStringLiteral("%1 part %2").arg(file).arg(i));
    }
    for (int key = Qt::Key_1; key <= Qt::Key_6; ++key) {
      QTest::keyClick(window.get(), Qt::Key(key), Qt::AltModifier);
      read(QStringLiteral("%1 why %2").arg(file).arg(key - Qt::Key_0));
    }
  }

  void readMake() {
    window->bench()->openMake();
    auto* make = window->findChild<MakePanel*>();
    REQUIRE(make != nullptr);
    for (const char* task : test::kMakeTasks) {
      make->openTask(QLatin1String(task));
      read(QLatin1String(task));
    }
  }

  void readSettings() {
    window->actionSet()->settings->trigger();
    auto* settings = window->findChild<SettingsWindow*>();
    REQUIRE(settings != nullptr);
    for (int i = 0; i < settings->pages()->count(); ++i) {
      settings->pages()->setCurrentRow(i);
      readOthers(QStringLiteral("settings %1").arg(i));
    }
    closeOthers();
  }

  std::unique_ptr<MainWindow> window;
  bool words;
  QStringList faults;
  QSet<QString> said;
};

struct PseudoVoice {
  test::PseudoLanguage pseudo;
};
struct PseudoFixture : PseudoVoice, WindowReader {};

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "the reader of the window sees what is untranslated, cut off or sticks out") {
  QWidget host;
  host.resize(300, 200);
  auto* label = new QLabel(QStringLiteral("Plain words"), &host);
  label->setGeometry(10, 10, 200, 30);
  host.show();
  REQUIRE(QTest::qWaitForWindowExposed(&host));
  CHECK(test::objections(&host, true).size() == 1);
  CHECK(test::objections(&host, false).isEmpty());
  label->setGeometry(10, 10, 20, 30);
  CHECK(test::objections(&host, false).size() == 1);
  label->setText(QStringLiteral("‹5 ft›"));
  label->setGeometry(200, 10, 200, 30);
  CHECK(test::objections(&host, true).size() == 1);
  label->setGeometry(10, 10, 200, 30);
  CHECK(test::objections(&host, true).isEmpty());
}

TEST_CASE_METHOD(PseudoFixture, "every page of the bench goes through translation, and has room for it") {
  for (const QString& name : kRigs) readBench(name);
  window->startFrom(Rig{});
  for (const auto& [name, open] : benchPages()) {
    open();
    read(QStringLiteral("empty line, ") + QLatin1String(name));
  }
  hold();
}

TEST_CASE_METHOD(PseudoFixture, "every group of the Shelf goes through translation, and has room for it") {
  window->bench()->openShelf();
  auto* groups = window->findChild<QListWidget*>(QStringLiteral("shelfGroups"));
  REQUIRE(groups != nullptr);
  for (int i = 0; i < groups->count(); ++i) {
    groups->setCurrentRow(i);
    read(QStringLiteral("group %1").arg(i));
  }
  hold();
}

TEST_CASE_METHOD(PseudoFixture, "every task of Make goes through translation, and has room for it") {
  readMake();
  hold();
}

TEST_CASE_METHOD(PseudoFixture, "every page of Compare goes through translation, and has room for it") {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("Qq.rig.json"));
  RigDocument other;
  other.startFrom(namelessRig(kRigs[2]));
  REQUIRE(other.saveAs(path).empty());
  REQUIRE(window->openBeside(path));
  CompareFace* face = window->compare()->face();
  REQUIRE(face != nullptr);
  for (const auto& [name, open] : test::comparePages(face)) {
    open();
    read(QStringLiteral("compare ") + QLatin1String(name));
  }
  face->copyToOther(face->side(CompareFace::Letter::a));
  read(QStringLiteral("compare alike"));
  hold();
}

TEST_CASE_METHOD(PseudoFixture, "the Clinic and what the class sees go through translation, and have room for it") {
  window->faces()->open(QStringLiteral("clinic"));
  read(QStringLiteral("clinic without a card"));
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("Qq.deck.json"));
  Deck deck;
  deck.title = "Qq 5";
  for (const CardShow show : {CardShow::strip, CardShow::profile, CardShow::cast, CardShow::river,
                              CardShow::compare, CardShow::text}) {
    Card card;
    card.title = "Qq 6";
    card.ask = "Qq?";
    card.reveal = "Qq.";
    card.notes = "Qq!";
    card.show = show;
    card.rig = namelessRig(kRigs[1]);
    if (show == CardShow::compare) card.rigB = namelessRig(kRigs[2]);
    deck.cards.push_back(card);
  }
  QFile file(path);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write(QByteArray::fromStdString(writeDeck(deck)));
  file.close();
  REQUIRE(window->openFile(path));
  ClinicFace* face = window->clinic()->face();
  REQUIRE(face != nullptr);
  for (std::size_t i = 0; i < deck.cards.size(); ++i) {
    face->choose(int(i));
    read(QStringLiteral("card %1").arg(i));
  }
  window->actionSet()->showDeck->trigger();
  for (std::size_t i = 0; i < 2 * deck.cards.size(); ++i) {
    readOthers(QStringLiteral("shown %1").arg(i));
    if (QWidget* active = QApplication::activeWindow()) QTest::keyClick(active, Qt::Key_PageDown);
  }
  closeOthers();
  hold();
}

TEST_CASE_METHOD(PseudoFixture, "every window and menu goes through translation, and has room for it") {
  Actions& actions = *window->actionSet();
  actions.wallet->trigger();
  readOthers(QStringLiteral("wallet"));
  actions.help->trigger();
  readOthers(QStringLiteral("help"));
  closeOthers();
  readSettings();
  for (const QMenu* menu : window->findChildren<QMenu*>()) {
    if (menu == actions.recentMenu()) continue;
    const bool ofLanguages = !menu->actions().isEmpty() &&
                             menu->actions().front()->objectName().startsWith(QLatin1String("language_"));
    if (ofLanguages) continue;  // their own names
    for (const QAction* action : menu->actions()) {
      for (const QString& text : {action->text(), action->toolTip(), action->whatsThis()}) {
        const QStringList plain = test::plainWords(text);
        if (!plain.isEmpty()) faults << menu->title() + QStringLiteral(": ") + text;
      }
    }
  }
  hold();
}

TEST_CASE("in each of its languages the bench has room for all that it says") {
  for (const Language& one : languages()) {
    const Speaking speaking(one.code);
    WindowReader reader(false);
    INFO(one.code.toStdString());
    reader.readBench(kRigs.back());
    reader.readMake();
    reader.readSettings();
    reader.hold();
  }
}

}  // namespace grainwise::ui
