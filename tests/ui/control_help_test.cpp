// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/control_help.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QComboBox>
#include <QHeaderView>
#include <QHelpEvent>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScrollBar>
#include <QSettings>
#include <QSlider>
#include <QTest>
#include <QWhatsThis>

#include "tests/support/pages.h"
#include "tests/support/strip_bench.h"
#include "ui/clinic/clinic_face.h"
#include "ui/compare/compare_face.h"
#include "ui/panels/make_panel.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/window/whats_this.h"

namespace grainwise::ui {
namespace {

/// What a person works: not the inner parts that a control is made of.
bool isControl(const QWidget* widget) {
  if (qobject_cast<const QScrollBar*>(widget) || qobject_cast<const QHeaderView*>(widget)) return false;
  if (widget->objectName().startsWith(QLatin1String("qt_"))) return false;
  const QWidget* parent = widget->parentWidget();
  if (qobject_cast<const QComboBox*>(parent) || parent->inherits("QAbstractSpinBox")) return false;
  return qobject_cast<const QAbstractButton*>(widget) || qobject_cast<const QLineEdit*>(widget) ||
         qobject_cast<const QComboBox*>(widget) || qobject_cast<const QAbstractSlider*>(widget) ||
         qobject_cast<const QAbstractItemView*>(widget) || qobject_cast<const QPlainTextEdit*>(widget) ||
         widget->inherits("QAbstractSpinBox") || widget->focusPolicy() == Qt::StrongFocus;
}

struct HelpFixture : test::UiFixture {
  HelpFixture() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    window->startFrom(test::sampleRig("01-plain-winter"));
    window->resize(1366, 768);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  void read(const QWidget* top, const QString& page) {
    QTest::qWait(1);
    for (const QWidget* widget : top->findChildren<QWidget*>()) {
      if (!widget->isVisible() || widget->window() != top || !isControl(widget)) continue;
      ++controls;
      const QString name = QStringLiteral("%1: %2 %3 \"%4\"")
                               .arg(page, widget->objectName(),
                                    QString::fromLatin1(widget->metaObject()->className()), widget->accessibleName());
      if (WhatsThis::wordsFor(widget).isEmpty()) silent << name;
      if (!widget->isEnabled() && WhatsThis::reasonFor(widget).isEmpty()) unexplained << name;
    }
  }
  void hold() {
    silent.removeDuplicates();
    unexplained.removeDuplicates();
    INFO("without words: " << silent.join(QLatin1Char('\n')).toStdString());
    INFO("disabled without a reason: " << unexplained.join(QLatin1Char('\n')).toStdString());
    CHECK(controls > 10);
    CHECK(silent.isEmpty());
    CHECK(unexplained.isEmpty());
  }
  std::unique_ptr<MainWindow> window;
  QStringList silent, unexplained;
  int controls = 0;
};

}  // namespace

TEST_CASE("the words for a control are found by its name, by what its name goes on from, and nowhere else") {
  CHECK_FALSE(controlHelp(QStringLiteral("tile3")).isEmpty());
  CHECK(controlHelp(QStringLiteral("tile3")) == controlHelp(QStringLiteral("tile")));
  CHECK(controlHelp(QStringLiteral("tab_shelf")) != controlHelp(QStringLiteral("tab_nothing")));
  CHECK(controlHelp(QStringLiteral("playground")).isEmpty());
  CHECK(controlHelp(QString()).isEmpty());
  CHECK(disabledReason(QStringLiteral("cutPdf")) == disabledReason(QStringLiteral("cutPrint")));
  CHECK(disabledReason(QStringLiteral("menuButton")).isEmpty());
}

TEST_CASE_METHOD(HelpFixture, "every control of the bench says what it is for, and why when it cannot be used") {
  BenchFace* bench = window->bench();
  const std::vector<std::pair<const char*, std::function<void()>>> pages{
      {"shelf", [=] { bench->openShelf(); }},   {"part", [=] { bench->openPart(); }},
      {"cast", [=] { bench->openCast(); }},     {"river", [=] { bench->openRiver(); }},
      {"tips", [=] { bench->openTips(); }},     {"fixes", [=] { bench->openFixes(); }},
      {"pools", [=] { bench->openPools(); }},   {"depths", [=] { bench->openDepths(); }},
      {"rod", [=] { bench->openRod(false); }},  {"water", [=] { bench->openWater(); }},
      {"name", [=] { bench->openName(); }},     {"make", [=] { bench->openMake(); }}};
  for (const bool empty : {false, true}) {
    if (empty) window->startFrom(Rig{});
    if (!empty) bench->strip()->select(2);
    for (const auto& [name, open] : pages) {
      open();
      read(window.get(), QLatin1String(name));
    }
  }
  auto* make = window->findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  for (const char* task : test::kMakeTasks) {
    make->openTask(QLatin1String(task));
    read(window.get(), QLatin1String(task));
  }
  hold();
}

TEST_CASE_METHOD(HelpFixture, "every control of Compare, the Clinic, the wallet and the help says what it is for") {
  REQUIRE(window->openBeside(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/03-thin-tail.rig.json")));
  CompareFace* face = window->compare()->face();
  for (const auto& [name, open] : test::comparePages(face)) {
    open();
    read(window.get(), QStringLiteral("compare ") + QLatin1String(name));
  }
  window->faces()->open(QStringLiteral("clinic"));
  read(window.get(), QStringLiteral("clinic without a card"));
  REQUIRE(window->openFile(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/why-that-tip.deck.json")));
  read(window.get(), QStringLiteral("clinic"));
  window->actionSet()->wallet->trigger();
  window->actionSet()->help->trigger();
  for (const char* name : {"walletWindow", "help"}) {
    auto* other = window->findChild<QWidget*>(QLatin1String(name));
    REQUIRE(other != nullptr);
    REQUIRE(QTest::qWaitForWindowExposed(other));
    read(other, QLatin1String(name));
    other->close();
  }
  hold();
}

TEST_CASE_METHOD(HelpFixture, "a disabled action of the menu says why in its tooltip, an enabled one does not") {
  for (const char* face : {"bench", "compare", "clinic"}) {
    window->faces()->open(QLatin1String(face));
    for (const QAction* action : window->actionSet()->all()) {
      INFO(face << ' ' << action->objectName().toStdString());
      const QString why = disabledReason(action->objectName());
      if (!action->isEnabled()) {
        CHECK_FALSE(why.isEmpty());
        CHECK(action->toolTip() == why);
      } else if (!why.isEmpty()) {
        CHECK(action->toolTip() != why);
      }
    }
  }
}

TEST_CASE_METHOD(HelpFixture, "Shift+F1 tells what the control is that has the keyboard") {
  auto* chart = window->findChild<QWidget*>(QStringLiteral("profile"));
  REQUIRE(chart != nullptr);
  QHelpEvent query(QEvent::QueryWhatsThis, QPoint(), QPoint());
  query.ignore();
  QApplication::sendEvent(chart, &query);
  CHECK(query.isAccepted());
  chart->setFocus();
  window->actionSet()->whatsThis->trigger();
  const auto shown = [] {
    for (const QWidget* top : QApplication::topLevelWidgets()) {
      if (top->inherits("QWhatsThat") && top->isVisible()) return true;
    }
    return false;
  };
  CHECK(shown());
  QWhatsThis::hideText();
  QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

}  // namespace grainwise::ui
