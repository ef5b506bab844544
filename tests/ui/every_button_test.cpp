// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QAction>
#include <QButtonGroup>
#include <QDir>
#include <QImage>
#include <QLabel>
#include <QListWidget>
#include <QPainter>
#include <QScrollArea>
#include <QSettings>
#include <QStandardPaths>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include "core/analysis/rule_table.h"
#include "tests/support/sample_window.h"
#include "tests/support/strip_bench.h"
#include "tests/support/tab_walk.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_run.h"
#include "ui/clinic/edit_panel.h"
#include "ui/clinic/show_window.h"
#include "ui/clinic/teacher_view.h"
#include "ui/document/bench_habits.h"
#include "ui/document/new_rig_rows.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"
#include "ui/panels/wallet_window.h"
#include "ui/window/actions.h"
#include "ui/window/clinic_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_pages.h"
#include "ui/window/settings_window.h"

/// Every button of the Presenter, the wallet and the settings is pressed, and each press is answered by
/// something that can be seen elsewhere than on the button: a button that does nothing is a fault.
namespace grainwise::ui {
namespace {

constexpr int kAnswer_ms = 10000;  ///< packing a wallet on a busy machine
const QString kSamples = QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/");

/// What is on the screen: which windows, and a picture of each without the button that is pressed and
/// what changes by itself.
struct Seen {
  QList<const QWidget*> windows;
  QList<QImage> pictures;
  bool operator==(const Seen&) const = default;
};

struct EveryButton : test::UiFixture {
  EveryButton() { QSettings().clear(); }
  ~EveryButton() {
    window.reset();
    QSettings().clear();
    QDir(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)).removeRecursively();
  }

  /// A window on the first sample, as after a start.
  void start() {
    window.reset();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    window = test::sampleWindow();
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }

  static QList<QWidget*> visibleWindows() {
    QList<QWidget*> windows;
    for (QWidget* top : QApplication::topLevelWidgets()) {
      if (top->isVisible()) windows << top;
    }
    std::sort(windows.begin(), windows.end());
    return windows;
  }

  using Hidden = QHash<const QWidget*, QList<QRect>>;
  /// The clock goes on by itself, the button shows its own press.
  static Hidden hiddenFor(const QAbstractButton* button) {
    Hidden hidden;
    const auto hide = [&](const QWidget* widget) {
      hidden[widget->window()] << QRect(widget->mapTo(widget->window(), QPoint(0, 0)), widget->size());
    };
    hide(button);
    for (const QWidget* top : visibleWindows()) {
      for (const auto* clock : top->findChildren<QLabel*>(QStringLiteral("clock"))) hide(clock);
    }
    return hidden;
  }
  static Seen see(const Hidden& hidden) {
    QCoreApplication::processEvents();
    Seen seen;
    for (QWidget* top : visibleWindows()) {
      QImage picture = top->grab().toImage();
      QPainter p(&picture);
      for (const QRect& rect : hidden.value(top)) p.fillRect(rect, Qt::black);
      p.end();
      seen.windows << top;
      seen.pictures << picture;
    }
    return seen;
  }

  using Scene = std::function<QList<QWidget*>()>;
  static QList<QAbstractButton*> buttonsOf(const QList<QWidget*>& parts) {
    QList<QAbstractButton*> buttons;
    for (const QWidget* part : parts) {
      for (auto* button : part->findChildren<QAbstractButton*>()) {
        // One of a set that is chosen already has nothing to do.
        const bool chosen = button->isChecked() && button->group() != nullptr && button->group()->exclusive();
        const bool can = button->isVisible() && button->isEnabled() && test::isControl(button) && !chosen;
        if (can && !buttons.contains(button)) buttons << button;
      }
    }
    return buttons;
  }

  /// Sets the scene anew for every button of its parts and presses it with the mouse. `own` holds those whose
  /// press is not seen in a picture, each with what is asked of it instead.
  void pressAll(const char* name, const Scene& scene,
                const std::map<QString, std::function<bool(QAbstractButton*)>>& own = {}) {
    QStringList idle;
    const qsizetype count = buttonsOf(scene()).size();
    REQUIRE(count > 0);
    for (qsizetype i = 0; i < count; ++i) {
      const QList<QAbstractButton*> buttons = buttonsOf(scene());
      REQUIRE(buttons.size() == count);
      QAbstractButton* button = buttons[i];
      const QString what = test::controlName(button);
      pressed << button->objectName();
      button->setFocus();
      for (QWidget* up = button->parentWidget(); up != nullptr; up = up->parentWidget()) {
        if (auto* area = qobject_cast<QScrollArea*>(up)) area->ensureWidgetVisible(button);
      }
      QCoreApplication::processEvents();
      if (const auto other = own.find(button->objectName()); other != own.end()) {
        if (!other->second(button)) idle << what;
        continue;
      }
      const Hidden hidden = hiddenFor(button);
      const Seen before = see(hidden);
      QTest::mouseClick(button, Qt::LeftButton);
      if (!QTest::qWaitFor([&] { return !(see(hidden) == before); }, kAnswer_ms)) idle << what;
    }
    INFO(name << ", pressed without an answer:\n" << idle.join(QLatin1Char('\n')).toStdString());
    CHECK(idle.isEmpty());
  }

  std::unique_ptr<MainWindow> window;
  QTemporaryDir folder;
  QStringList pressed;
};

/// All limits a little off the usual ones, in their order.
Rules unusualRules() {
  Rules rules;
  for (const RuleRow& row : ruleRows()) {
    const double usual = row.get(rules);
    const double more = std::min(row.high, usual * 1.01);
    row.set(rules, more != usual ? more : usual - (row.high - row.low) / 100);
  }
  return rules;
}

}  // namespace

TEST_CASE_METHOD(EveryButton, "every button: each of the Presenter does something that is seen") {
  ClinicFace* face = nullptr;
  const auto show = [&](int card, bool answered = false) {
    start();
    REQUIRE(window->openFile(kSamples + QStringLiteral("why-that-tip.deck.json")));
    face = window->clinic()->face();
    face->startShow(card);
    if (answered) face->run()->next();
    REQUIRE(QTest::qWaitFor([&] { return !face->run()->waiting(); }, kAnswer_ms));
    return QList<QWidget*>{face->teacher(), face->showWindow()};
  };
  // Two are modes that stay for the cards to come: where this one neither moves nor has a number, the run tells.
  const std::map<QString, std::function<bool(QAbstractButton*)>> modes{
      {QStringLiteral("showSlow"),
       [&](QAbstractButton* button) {
         QTest::mouseClick(button, Qt::LeftButton);
         return face->run()->slow() && button->isChecked() &&
                face->run()->playing() == (face->run()->shown()->runs != nullptr);
       }},
      {QStringLiteral("showNumbers"), [&](QAbstractButton* button) {
         QTest::mouseClick(button, Qt::LeftButton);
         return face->run()->numbersHidden() && button->isChecked();
       }}};
  pressAll("the first card", [&] { return show(0); }, modes);
  CHECK_FALSE(pressed.contains(QStringLiteral("showBack")));  // nothing stands before it
  CHECK_FALSE(pressed.contains(QStringLiteral("showEdit")));  // it has no rig
  pressAll("a card of a rig", [&] { return show(2); }, {*modes.find(QStringLiteral("showSlow"))});
  pressAll("a card of casts", [&] { return show(6, true); }, {*modes.find(QStringLiteral("showSlow"))});
  CHECK(pressed.contains(QStringLiteral("showEdit")));
  const auto pressedBefore = pressed.size();
  pressAll("the last card", [&] { return show(12, true); }, modes);
  CHECK_FALSE(pressed.mid(pressedBefore).contains(QStringLiteral("showNext")));  // nothing comes behind it
  for (const char* name : {"showBack", "showNext", "showBlank", "showNumbers", "showSlow", "showEdit", "showEnd"}) {
    CHECK(pressed.contains(QLatin1String(name)));
  }
}

TEST_CASE_METHOD(EveryButton, "every button: each that changes a card's rig before the class does something that is seen") {
  const auto edit = [&](bool part) {
    start();
    REQUIRE(window->openFile(kSamples + QStringLiteral("why-that-tip.deck.json")));
    ClinicFace* face = window->clinic()->face();
    face->startShow(3);
    face->teacher()->findChild<QAbstractButton*>(QStringLiteral("showEdit"))->click();
    EditPanel* panel = face->editPanel();
    REQUIRE(panel->isVisible());
    Rig renamed = panel->document()->rig();
    renamed.parts[1].name = "another";
    panel->document()->apply(QStringLiteral("Rename"), renamed);
    panel->strip()->select(1);
    if (part) Q_EMIT panel->strip()->partActivated(1);
    QCoreApplication::processEvents();
    return QList<QWidget*>{panel};
  };
  pressAll("with the Shelf", [&] { return edit(false); });
  pressAll("with the part", [&] { return edit(true); });
  // The one that is under the hands is a stop of Tab, and the arrows go to the other.
  auto* panel = static_cast<EditPanel*>(edit(false).front());
  auto* a = panel->findChild<QAbstractButton*>(QStringLiteral("cardEditA"));
  a->setFocus();
  QTest::keyClick(a, Qt::Key_Right);
  CHECK(panel->side() == 1);
  for (const char* name : {"cardEditB", "cardEditUndo", "putBack"}) CHECK(pressed.contains(QLatin1String(name)));
}

TEST_CASE_METHOD(EveryButton, "every button: each of the wallet does something that is seen") {
  WalletWindow* wallet = nullptr;
  int previewed = 0;
  const auto open = [&](bool chosen) {
    start();
    REQUIRE(window->pools()->open(kSamples + QStringLiteral("corrow.pools.json")).empty());
    window->actionSet()->wallet->trigger();
    wallet = window->findChild<WalletWindow*>();
    REQUIRE(wallet != nullptr);
    wallet->askRigPaths = [] { return QStringList{kSamples + QStringLiteral("02-slot.rig.json")}; };
    wallet->askCardPath = [this] { return folder.filePath(QStringLiteral("card.pdf")); };
    wallet->setPaper({[&](const PackedWallet&, DisplayUnits) { ++previewed; },
                      [](const PackedWallet&, DisplayUnits, const QString& path) {
                        test::write(path, "a card");
                        return QString();
                      }});
    wallet->addRig(test::sampleRig("04-small-river"));
    REQUIRE(QTest::qWaitFor([&] { return !wallet->busy() && wallet->packed() != nullptr; }, kAnswer_ms));
    REQUIRE_FALSE(wallet->packed()->wallet.tips.empty());
    if (chosen) {
      wallet->findChild<QListWidget*>(QStringLiteral("walletRigs"))->setCurrentRow(1);
      auto* table = wallet->findChild<QTableView*>(QStringLiteral("walletGrid"));
      table->setCurrentIndex(table->model()->index(0, 0));
    }
    return QList<QWidget*>{wallet};
  };
  // A preview of the paper is a window of its own, which a test does not open.
  const std::map<QString, std::function<bool(QAbstractButton*)>> own{
      {QStringLiteral("walletPrint"), [&](QAbstractButton* button) {
         previewed = 0;
         QTest::mouseClick(button, Qt::LeftButton);
         return previewed == 1;
       }}};
  pressAll("nothing chosen", [&] { return open(false); }, own);
  for (const char* name : {"walletRemoveRig", "walletKeep", "walletLeaveOut"}) {
    CHECK_FALSE(pressed.contains(QLatin1String(name)));
  }
  pressAll("a rig and a tip chosen", [&] { return open(true); }, own);
  for (const char* name : {"walletAddRigs", "walletRemoveRig", "walletOneLength", "walletKeep", "walletLeaveOut",
                           "walletCut", "walletPrint", "walletCard", "walletClose"}) {
    CHECK(pressed.contains(QLatin1String(name)));
  }
  // The tip that was chosen stays so while it is packed anew; one that is left out gives its place on.
  open(true);
  auto* table = wallet->findChild<QTableView*>(QStringLiteral("walletGrid"));
  const auto chosenTip = [&] { return wallet->packed()->wallet.tips.at(std::size_t(table->currentIndex().row())); };
  const auto press = [&](const char* name) {
    QTest::mouseClick(wallet->findChild<QAbstractButton*>(QLatin1String(name)), Qt::LeftButton);
    REQUIRE(wallet->busy());
    REQUIRE(QTest::qWaitFor([&] { return !wallet->busy(); }, kAnswer_ms));
  };
  const std::size_t tip = chosenTip();
  press("walletKeep");
  CHECK(chosenTip() == tip);
  CHECK_FALSE(wallet->findChild<QAbstractButton*>(QStringLiteral("walletKeep"))->isEnabled());
  press("walletLeaveOut");
  REQUIRE(table->currentIndex().isValid());
  CHECK(chosenTip() != tip);
  CHECK(wallet->findChild<QAbstractButton*>(QStringLiteral("walletLeaveOut"))->isEnabled());
}

TEST_CASE_METHOD(EveryButton, "every button: each of the settings does something that is seen") {
  SettingsWindow* settings = nullptr;
  const auto open = [&](int page) {
    if (settings == nullptr) {
      start();
      window->actionSet()->settings->trigger();
      settings = window->findChild<SettingsWindow*>();
      REQUIRE(settings != nullptr);
      window->hide();  // what a limit does to the readings is another test's
      auto* file = settings->findChild<FilePage*>();
      file->askExportPath = [this] { return folder.filePath(QStringLiteral("settings.conf")); };
      file->askImportPath = [this] { return folder.filePath(QStringLiteral("none.conf")); };
    }
    Preferences* preferences = window->preferences();
    window->look()->setReduceMotion(true);
    preferences->setRules(unusualRules());
    NewRig start;
    for (const NewRigRow& row : kNewRigRows) row.set(start, (row.limit.low + row.limit.high) / 2);
    preferences->setNewRig(start);
    BenchRules rules;
    for (const BenchHabit& habit : kBenchHabits) rules.*habit.length = rules.*habit.length * 2.0 + Inches(0.1);
    window->own()->setRules(rules);
    preferences->setAutosave(kMostAutosave_s);
    settings->show();
    settings->pages()->setCurrentRow(page);
    QCoreApplication::processEvents();
    return QList<QWidget*>{settings};
  };
  const std::map<QString, std::function<bool(QAbstractButton*)>> own{
      {QStringLiteral("reduceMotion"), [&](QAbstractButton* button) {
         button->click();
         return !window->look()->reduceMotion();  // what does not move is not seen in one picture
       }}};
  open(0);
  const int pages = settings->pages()->count();
  for (int page = 0; page < pages; ++page) {
    pressAll(qPrintable(settings->pages()->item(page)->text()), [&] { return open(page); }, own);
  }
  const qsizetype rows = qsizetype(ruleRows().size() + std::size(kNewRigRows) + std::size(kBenchHabits)) + 1;
  CHECK(pressed.filter(QStringLiteral("_reset")).size() == rows);
  CHECK(pressed.count(QStringLiteral("resetPage")) == 4);
  for (const char* name : {"reduceMotion", "exportSettings", "importSettings", "allUsual"}) {
    CHECK(pressed.contains(QLatin1String(name)));
  }
  // What was put back to usual is taken back.
  open(pages - 1);
  settings->findChild<QAbstractButton*>(QStringLiteral("allUsual"))->click();
  CHECK(window->preferences()->rules() == Rules{});
  settings->findChild<QAbstractButton*>(QStringLiteral("takeBackSettings"))->click();
  CHECK(window->preferences()->rules() == unusualRules());
}

}  // namespace grainwise::ui
