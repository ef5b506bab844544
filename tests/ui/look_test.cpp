// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractAnimation>
#include <QAbstractButton>
#include <QLabel>
#include <QListWidget>
#include <QScrollArea>
#include <QSettings>
#include <QTest>

#include "tests/support/pages.h"
#include "tests/support/sample_window.h"
#include "tests/support/strip_bench.h"
#include "tests/support/tab_walk.h"
#include "ui/charts/cast_view.h"
#include "ui/charts/river_view.h"
#include "ui/clinic/clinic_face.h"
#include "ui/compare/compare_face.h"
#include "ui/compare/pair_view.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/panels/make_panel.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_window.h"

namespace grainwise::ui {
namespace {

const QString kDeck = QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/why-that-tip.deck.json");

/// Where a widget stands among the others: names where there are some, else class and number.
QString pathOf(const QWidget* widget) {
  QString path;
  for (const QWidget* w = widget; w != nullptr; w = w->parentWidget()) {
    QString own = w->objectName();
    if (own.isEmpty() && w->parentWidget() != nullptr) {
      own = QStringLiteral("%1%2").arg(QString::fromLatin1(w->metaObject()->className()))
                .arg(w->parentWidget()->children().indexOf(const_cast<QWidget*>(w)));
    }
    path.prepend(QLatin1Char('/') + own);
    if (w->isWindow()) break;
  }
  return path;
}

/// What the look gives to what shows words: its type, its ink.
using Worn = QMap<QString, QString>;

void note(Worn& worn, const QWidget* top) {
  for (const QWidget* widget : top->findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->window() != top) continue;
    const bool says = qobject_cast<const QLabel*>(widget) || qobject_cast<const QAbstractButton*>(widget) ||
                      (test::isControl(widget) && widget->focusPolicy() != Qt::NoFocus);
    if (!says) continue;
    worn.insert(pathOf(widget), QStringLiteral("%1 px, %2")
                                    .arg(QFontInfo(widget->font()).pixelSize())
                                    .arg(widget->palette().color(QPalette::WindowText).name()));
  }
}

struct Desk {
  Desk() {
    window = test::sampleWindow();
  }
  void show() {
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  /// Every page once, in one order.
  template <class What>
  void visit(What&& what) {
    BenchFace* bench = window->bench();
    bench->strip()->select(2);
    const auto seen = [&](const QString& page, const QWidget* top) {
      QTest::qWait(1);
      what(page, top);
    };
    for (const auto& open : std::vector<std::function<void()>>{
             [=] { bench->openShelf(); }, [=] { bench->openPart(); }, [=] { bench->openCast(); },
             [=] { bench->openRiver(); }, [=] { bench->openTips(); }, [=] { bench->openFixes(); },
             [=] { bench->openPools(); }, [=] { bench->openDepths(); }, [=] { bench->openRod(false); },
             [=] { bench->openWater(); }, [=] { bench->openName(); }, [=] { bench->openMake(); }}) {
      open();
      seen(bench->drawer()->current(), window.get());
    }
    auto* make = window->findChild<MakePanel*>();
    REQUIRE(make != nullptr);
    for (const char* task : test::kMakeTasks) {
      make->openTask(QLatin1String(task));
      seen(QLatin1String(task), window.get());
    }
    window->faces()->open(QStringLiteral("compare"));
    CompareFace* face = window->compare()->face();
    for (const auto& open : std::vector<std::function<void()>>{
             [=] { face->openDifferences(); }, [=] { face->openCast(); }, [=] { face->openRiver(); },
             [=] { face->openShelf(); }, [=] { face->openRod(false); }, [=] { face->openWater(); }}) {
      open();
      seen(QStringLiteral("compare ") + face->drawer()->current(), window.get());
    }
    if (window->clinic()->face() == nullptr) {
      REQUIRE(window->openFile(kDeck));
    }
    window->faces()->open(QStringLiteral("clinic"));
    seen(QStringLiteral("clinic"), window.get());
    Actions& a = *window->actionSet();
    for (const auto& [name, action] : {std::pair{"help", a.help}, std::pair{"settings", a.settings},
                                       std::pair{"walletWindow", a.wallet}}) {
      action->trigger();
      auto* other = window->findChild<QWidget*>(QLatin1String(name));
      REQUIRE(other != nullptr);
      REQUIRE(QTest::qWaitForWindowExposed(other));
      auto* settings = qobject_cast<SettingsWindow*>(other);
      for (int i = 0; i < (settings != nullptr ? settings->pages()->count() : 1); ++i) {
        if (settings != nullptr) settings->pages()->setCurrentRow(i);
        seen(QStringLiteral("%1 %2").arg(QLatin1String(name)).arg(i), other);
      }
      other->close();
    }
    window->faces()->open(QStringLiteral("bench"));
  }
  std::unique_ptr<MainWindow> window;
};

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "a type size and a scheme that change reach every page as if they had been there from the start") {
  const auto wear = [](MainWindow& window) {
    window.look()->setTypeScale(1.6);
    window.look()->setScheme(Scheme::dark);
  };
  Worn before, after;
  {
    Desk desk;
    wear(*desk.window);
    desk.show();
    desk.visit([&](const QString&, const QWidget* top) { note(before, top); });
  }
  {
    Desk desk;
    desk.show();
    desk.visit([](const QString&, const QWidget*) {});
    wear(*desk.window);
    desk.visit([&](const QString&, const QWidget* top) { note(after, top); });
  }
  CHECK(before.size() > 300);
  QStringList differ;
  int same = 0;
  for (auto it = before.cbegin(); it != before.cend(); ++it) {
    if (!after.contains(it.key())) continue;
    after[it.key()] == it.value() ? void(++same)
                                  : void(differ << it.key() + QStringLiteral(": ") + after[it.key()] +
                                                       QStringLiteral(", not ") + it.value());
  }
  INFO(differ.join(QLatin1Char('\n')).toStdString());
  CHECK(differ.isEmpty());
  CHECK(same > 250);
}

TEST_CASE_METHOD(test::UiFixture, "at type size 200 % a page that is opened is brought to sight, and no words are cut at the side") {
  for (const QSize size : {QSize(1366, 768), QSize(1280, 720)}) {
    Desk desk;
    desk.window->look()->setTypeScale(2);
    desk.window->resize(size);
    desk.show();
    INFO(size.width());
    BenchFace* bench = desk.window->bench();
    for (const auto& open : std::vector<std::function<void()>>{[=] { bench->openRiver(); }, [=] { bench->openFixes(); },
                                                               [=] { bench->openShelf(); }}) {
      // Back to the line, as one does.
      for (auto* area : desk.window->findChildren<QScrollArea*>()) area->ensureVisible(0, 0);
      open();
      QTest::qWait(1);
      auto* tab = desk.window->findChild<QWidget*>(QStringLiteral("tab_") + bench->drawer()->current());
      REQUIRE(tab != nullptr);
      CHECK_FALSE(tab->visibleRegion().isEmpty());
    }
    QStringList cut;
    desk.visit([&](const QString& page, const QWidget* top) {
      for (const auto* area : top->findChildren<QScrollArea*>()) {
        if (!area->isVisible() || area->widget() == nullptr || area->window() != top) continue;
        if (area->horizontalScrollBarPolicy() != Qt::ScrollBarAlwaysOff) continue;
        if (area->widget()->width() > area->viewport()->width() + 1) {
          cut << QStringLiteral("%1: %2 of %3 in %4").arg(page).arg(area->viewport()->width()).arg(area->widget()->width()).arg(pathOf(area));
        }
      }
    });
    INFO(cut.join(QLatin1Char('\n')).toStdString());
    CHECK(cut.isEmpty());
  }
}

namespace {

/// What moves at this moment: a picture that is played, or an animation.
QStringList movers(const QWidget* top) {
  QStringList found;
  for (const auto* view : top->findChildren<CastView*>()) {
    if (view->playing()) found << QStringLiteral("cast");
  }
  for (const auto* view : top->findChildren<RiverView*>()) {
    if (view->playing()) found << QStringLiteral("river");
  }
  for (const auto* view : top->findChildren<PairView*>()) {
    if (view->playing()) found << QStringLiteral("pair");
  }
  for (const auto* animation : top->findChildren<QAbstractAnimation*>()) {
    if (animation->state() == QAbstractAnimation::Running) found << QStringLiteral("animation");
  }
  return found;
}

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "with reduced motion no page moves by itself; without it the cast does") {
  constexpr int kWait_ms = 5000;
  Desk desk;
  desk.show();
  desk.window->bench()->openCast();
  CHECK(QTest::qWaitFor([&] { return movers(desk.window.get()).isEmpty(); }, kWait_ms));
  desk.window->bench()->openShelf();
  desk.window->look()->setReduceMotion(false);
  desk.window->bench()->openCast();
  CHECK(QTest::qWaitFor([&] { return movers(desk.window.get()).contains(QStringLiteral("cast")); }, kWait_ms));
  desk.window->look()->setReduceMotion(true);
  desk.window->startFrom(test::sampleRig("wrong-hinge"));
  desk.visit([&](const QString& page, const QWidget* top) {
    INFO(page.toStdString());
    CHECK(QTest::qWaitFor([&] { return movers(top).isEmpty(); }, kWait_ms));
  });
}

TEST_CASE_METHOD(test::UiFixture, "what has no type of its own is set in the window's, from its first words on") {
  QApplication::setFont(QFont(QStringLiteral("Sans Serif"), 9));  // as the desktop has it
  const auto window = test::sampleWindow();
  const QLabel plain(window->centralWidget());
  CHECK(plain.font().families() == window->look()->font(15).families());
  CHECK(plain.font().pixelSize() == window->look()->px(15));
  window->look()->setTypeScale(1.5);
  CHECK(plain.font().pixelSize() == window->look()->px(15));
}

}  // namespace grainwise::ui
