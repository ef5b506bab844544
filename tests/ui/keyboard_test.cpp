// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QDir>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QRegularExpression>
#include <QSettings>
#include <QStandardPaths>
#include <QTabWidget>
#include <QTextBrowser>
#include <QTest>

#include "tests/support/pages.h"
#include "tests/support/sample_window.h"
#include "tests/support/strip_bench.h"
#include "tests/support/tab_walk.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/edit_panel.h"
#include "ui/clinic/show_window.h"
#include "ui/clinic/teacher_view.h"
#include "ui/compare/compare_face.h"
#include "ui/document/rig_document.h"
#include "ui/panels/make_panel.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/help_window.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_window.h"

namespace grainwise::ui {
namespace {

struct KeyboardFixture : test::UiFixture {
  KeyboardFixture() {
    window = test::sampleWindow();
    window->show();
    window->activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(window.get()));
    REQUIRE(QTest::qWaitFor([&] { return window->bench()->strip()->blocks().size() > 2; }));
  }

  /// What buttons have kept is not for the tests that follow.
  ~KeyboardFixture() {
    window.reset();
    QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).removeRecursively();
  }

  void walk(const QString& page, QWidget* top = nullptr) {
    QTest::qWait(1);
    const test::TabWalk one = test::walkByTab(top != nullptr ? top : window.get(), marks);
    stops += one.stops.size();
    for (const QString& fault : one.faults) {
      if (said.contains(fault)) continue;
      said << fault;
      faults << page + QStringLiteral(" | ") + fault;
    }
  }
  void hold() {
    INFO(faults.join(QLatin1Char('\n')).toStdString());
    CHECK(stops > 20);
    CHECK(faults.isEmpty());
  }

  using Pages = std::vector<std::pair<const char*, std::function<void()>>>;
  Pages benchPages() {
    BenchFace* bench = window->bench();
    return {{"shelf", [=] { bench->openShelf(); }},   {"part", [=] { bench->openPart(); }},
            {"cast", [=] { bench->openCast(); }},     {"river", [=] { bench->openRiver(); }},
            {"tips", [=] { bench->openTips(); }},     {"fixes", [=] { bench->openFixes(); }},
            {"pools", [=] { bench->openPools(); }},   {"depths", [=] { bench->openDepths(); }},
            {"rod", [=] { bench->openRod(false); }},  {"water", [=] { bench->openWater(); }},
            {"name", [=] { bench->openName(); }},     {"make", [=] { bench->openMake(); }}};
  }

  /// Compare, the Clinic and every other window; `scheme` begins the name of each page.
  void walkElsewhere(const QString& scheme) {
    REQUIRE(window->openBeside(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/03-thin-tail.rig.json")));
    CompareFace* face = window->compare()->face();
    for (const auto& [name, open] : test::comparePages(face)) {
      open();
      walk(scheme + QStringLiteral("compare ") + QLatin1String(name));
    }
    window->faces()->open(QStringLiteral("clinic"));
    walk(scheme + QStringLiteral("clinic without a card"));
    REQUIRE(window->openFile(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/why-that-tip.deck.json")));
    walk(scheme + QStringLiteral("clinic"));
    ClinicFace* clinic = window->clinic()->face();
    clinic->startShow(3);
    window->activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(window.get()));
    walk(scheme + QStringLiteral("teacher"));
    clinic->teacher()->findChild<QPushButton*>(QStringLiteral("showEdit"))->click();
    clinic->showWindow()->activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(clinic->showWindow()));
    clinic->editPanel()->strip()->select(1);
    for (const char* page : {"cardShelf", "cardPart"}) {
      auto* pages = clinic->editPanel()->findChild<QTabWidget*>(QStringLiteral("cardPages"));
      pages->setCurrentWidget(pages->findChild<QWidget*>(QLatin1String(page)));
      walk(scheme + QLatin1String(page), clinic->showWindow());
    }
    clinic->endShow();
    window->activateWindow();
    REQUIRE(QTest::qWaitForWindowActive(window.get()));
    for (QAction* action : {window->actionSet()->wallet, window->actionSet()->help, window->actionSet()->settings}) {
      action->trigger();
      QWidget* other = QApplication::activeWindow();
      REQUIRE(QTest::qWaitFor([&] { return (other = QApplication::activeWindow()) != window.get() && other != nullptr; }));
      if (auto* settings = qobject_cast<SettingsWindow*>(other)) {
        for (int i = 0; i < settings->pages()->count(); ++i) {
          settings->pages()->setCurrentRow(i);
          walk(scheme + QStringLiteral("settings %1").arg(i), other);
        }
      } else {
        walk(scheme + other->objectName(), other);
      }
      other->close();
      window->activateWindow();
      REQUIRE(QTest::qWaitForWindowActive(window.get()));
    }
  }

  std::unique_ptr<MainWindow> window;
  bool marks = false;
  QStringList faults, said;
  qsizetype stops = 0;
};

}  // namespace

TEST_CASE_METHOD(KeyboardFixture, "keyboard: Tab goes through every page of the bench as it is read, and skips nothing") {
  for (const bool empty : {false, true}) {
    if (empty) window->startFrom(Rig{});
    if (!empty) window->bench()->strip()->select(2);
    for (const auto& [name, open] : benchPages()) {
      open();
      walk(QLatin1String(name));
    }
  }
  auto* make = window->findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  for (const char* task : test::kMakeTasks) {
    make->openTask(QLatin1String(task));
    walk(QLatin1String(task));
  }
  hold();
}

TEST_CASE_METHOD(KeyboardFixture, "keyboard: Tab goes through Compare, the Clinic and every other window as they are read") {
  walkElsewhere({});
  hold();
}

TEST_CASE_METHOD(KeyboardFixture, "keyboard: what has the focus is marked by 3 to 1 in every scheme, on every page and window") {
  marks = true;
  for (const Scheme scheme : {Scheme::light, Scheme::dark, Scheme::sunlight, Scheme::projector}) {
    window->look()->setScheme(scheme);
    said.clear();
    for (const auto& [name, open] : benchPages()) {
      open();
      walk(QStringLiteral("%1 %2").arg(int(scheme)).arg(QLatin1String(name)));
    }
    walkElsewhere(QStringLiteral("%1 ").arg(int(scheme)));
    window->faces()->open(QStringLiteral("bench"));
  }
  hold();
}

TEST_CASE_METHOD(KeyboardFixture, "keyboard: sections that come and go leave the keyboard where it was, and the order whole") {
  window->bench()->strip()->select(2);
  window->bench()->openPart();
  const auto press = [&](const char* name, int key) {
    window->bench()->strip()->select(2);  // a walk along the line chooses other parts
    QTest::qWait(1);
    auto* control = window->findChild<QWidget*>(QLatin1String(name));
    REQUIRE(control != nullptr);
    control->setFocus();
    QTest::keyClick(control, Qt::Key(key));
    QTest::qWait(1);
    return QApplication::focusWidget() != nullptr ? QApplication::focusWidget()->objectName() : QString();
  };
  const auto sections = [&] { return window->document()->rig().parts[2].sections.size(); };
  const std::size_t before = sections();
  CHECK(press("addSection", Qt::Key_Space) == QStringLiteral("addSection"));
  CHECK(sections() == before + 1);
  walk(QStringLiteral("a section more"));
  CHECK(press("section0_split", Qt::Key_Space) == QStringLiteral("section0_split"));
  CHECK(sections() == before + 2);
  CHECK(press("section0_known", Qt::Key_Down) == QStringLiteral("section0_known"));
  walk(QStringLiteral("another make-up"));
  CHECK(press("section0_remove", Qt::Key_Space) == QStringLiteral("section0_remove"));
  CHECK_FALSE(press("section1_remove", Qt::Key_Space).isEmpty());
  CHECK(sections() == before);
  walk(QStringLiteral("as before"));
  hold();
}

TEST_CASE_METHOD(KeyboardFixture, "keyboard: no button of the bench or of Make throws the keyboard away") {
  BenchFace* bench = window->bench();
  auto pages = benchPages();
  bench->openMake();
  auto* make = window->findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  for (const char* task : test::kMakeTasks) {
    pages.emplace_back(task, [=] {
      bench->openMake();
      make->openTask(QLatin1String(task));
    });
  }
  const Rig rig = window->document()->rig();
  int pressed = 0;
  for (const auto& [name, open] : pages) {
    const auto settled = [&, open = open] {
      if (!(window->document()->rig() == rig)) window->startFrom(rig);
      bench->strip()->select(2);
      open();
      QTest::qWait(1);
    };
    settled();
    QStringList buttons;
    for (const auto* button : window->findChildren<QPushButton*>()) {
      // What asks for a file or opens a menu has a window of its own.
      const bool asks = button->text().endsWith(QChar(0x2026)) || button->menu() != nullptr;
      if (button->isVisible() && button->isEnabled() && !asks && !button->objectName().isEmpty()) buttons << button->objectName();
    }
    for (const QString& one : std::as_const(buttons)) {
      settled();
      auto* button = window->findChild<QPushButton*>(one);
      if (button == nullptr || !button->isVisible() || !button->isEnabled()) continue;
      button->setFocus();
      QTest::keyClick(button, Qt::Key_Space);
      QTest::qWait(1);
      ++pressed;
      INFO(name << ": " << one.toStdString());
      const QWidget* now = QApplication::focusWidget();
      CHECK((now != nullptr && now->isVisible() && now != window.get()));
      for (QWidget* other : QApplication::topLevelWidgets()) {
        if (other != window.get() && other->isVisible()) other->close();
      }
      window->activateWindow();
      REQUIRE(QTest::qWaitForWindowActive(window.get()));
    }
  }
  CHECK(pressed > 15);
}

namespace {

/// All that a menu leads to.
QSet<const QAction*> within(const QMenu* menu) {
  QSet<const QAction*> found;
  for (QAction* action : menu->actions()) {
    found.insert(action);
    if (action->menu() != nullptr) {
      Q_EMIT action->menu()->aboutToShow();
      found.unite(within(action->menu()));
    }
  }
  return found;
}

}  // namespace

TEST_CASE_METHOD(KeyboardFixture, "keyboard: every action of the window is in the menu or in that of a button Tab meets") {
  window->faces()->open(QStringLiteral("compare"));
  window->faces()->open(QStringLiteral("clinic"));
  QSet<const QAction*> reached = within(window->actionSet()->menu());
  reached.insert(window->actionSet()->menu()->menuAction());
  for (const auto* button : window->findChildren<QPushButton*>()) {
    if (button->menu() != nullptr && (button->focusPolicy() & Qt::TabFocus)) reached.unite(within(button->menu()));
  }
  int actions = 0;
  for (const QAction* action : window->findChildren<QAction*>()) {
    if (action->isSeparator() || action->text().isEmpty()) continue;
    ++actions;
    // W is a key of the line, the chart and the tiles; the menu has its twin.
    const bool twin = action->objectName() == QStringLiteral("weigh") && reached.contains(window->actionSet()->weigh);
    INFO(action->objectName().toStdString() << " \"" << action->text().toStdString() << '"');
    CHECK((twin || reached.contains(action)));
  }
  CHECK(actions > 60);
}

TEST_CASE_METHOD(KeyboardFixture, "keyboard: the help names the key of every action") {
  HelpWindow help(window->look());
  help.pages()->setCurrentRow(help.pages()->count() - 1);
  const QString page = help.text()->toPlainText();
  const auto names = [&](const QString& key) {
    return page.contains(QRegularExpression(QStringLiteral("(^|[\\s,])%1($|[\\s,])").arg(QRegularExpression::escape(key)),
                                            QRegularExpression::MultilineOption));
  };
  CHECK_FALSE(names(QStringLiteral("Ctrl+J")));
  int keys = 0;
  for (const char* face : {"bench", "clinic"}) {
    window->faces()->open(QLatin1String(face));
    for (const QAction* action : window->actionSet()->all()) {
      QStringList wanted;
      for (const QKeySequence& key : action->shortcuts()) wanted << key.toString(QKeySequence::PortableText);
      // A key that the menu only shows, where another widget takes it.
      const QString shown = action->text().section(QLatin1Char('\t'), 1);
      if (!shown.isEmpty()) wanted << shown;
      for (const QString& key : std::as_const(wanted)) {
        if (key.isEmpty()) continue;
        ++keys;
        INFO(action->text().toStdString() << " has " << key.toStdString());
        CHECK(names(key));
      }
    }
  }
  CHECK(keys > 60);
}

}  // namespace grainwise::ui
