// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings_window.h"

#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "core/model/deck_edits.h"
#include "tests/support/ui_support.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_run.h"
#include "ui/clinic/show_window.h"
#include "ui/compare/compare_face.h"
#include "ui/compare/side.h"
#include "ui/document/own_store.h"
#include "ui/document/preferences.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/strip/number_field.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"
#include "ui/window/settings_pages.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

const QString kSamples = QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/");

/// A window on the first sample with its settings open; they start as usual and are forgotten again.
struct SettingsBench : test::UiFixture {
  SettingsBench() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    REQUIRE(window->openFile(kSamples + QStringLiteral("01-plain-winter.rig.json")));
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    window->actionSet()->settings->trigger();
    settings = window->findChild<SettingsWindow*>();
    REQUIRE(settings != nullptr);
  }
  ~SettingsBench() {
    window.reset();
    QSettings().clear();
  }
  template <class W>
  W* find(const char* name) {
    W* widget = settings->findChild<W*>(QLatin1String(name));
    INFO(name);
    REQUIRE(widget != nullptr);
    return widget;
  }
  /// As pasted: the whole number at once.
  void type(const char* field, const char* text) {
    auto* edit = find<QLineEdit>(field);
    edit->setText(QString::fromUtf8(text));
    Q_EMIT edit->textEdited(edit->text());
  }
  void choose(const char* name, int index) {
    auto* box = find<QComboBox>(name);
    box->setCurrentIndex(index);
    Q_EMIT box->activated(index);
  }
  QString error(const char* field) {
    return qobject_cast<NumberField*>(find<QLineEdit>(field)->parentWidget())->error();
  }
  void click(const char* name) {
    auto* button = find<QPushButton>(name);
    INFO(name);
    REQUIRE(button->isEnabled());
    REQUIRE_FALSE(button->isHidden());
    button->click();
  }
  [[nodiscard]] const Rules& rules() const { return window->preferences()->rules(); }

  std::unique_ptr<MainWindow> window;
  SettingsWindow* settings = nullptr;
};

bool judged(const Analysis& analysis, JunctionVerdict as) {
  return !analysis.junctions.empty() && analysis.junctions[0].verdict == as;
}
bool level(const Analysis& analysis) { return judged(analysis, JunctionVerdict::level); }
bool drops(const Analysis& analysis) { return judged(analysis, JunctionVerdict::smoothDrop); }

}  // namespace

TEST_CASE_METHOD(SettingsBench, "settings: stand beside the workbench, opened by their key, every page reached") {
  CHECK_FALSE(settings->isModal());
  CHECK(window->actionSet()->settings->shortcut() == QKeySequence(Qt::CTRL | Qt::Key_Comma));
  CHECK(window->actionSet()->settings->menuRole() == QAction::PreferencesRole);
  window->actionSet()->settings->trigger();
  CHECK(window->findChildren<SettingsWindow*>().size() == 1);
  for (int i = 0; i < settings->pages()->count(); ++i) {
    settings->pages()->setCurrentRow(i);
    QWidget* shown = nullptr;
    for (SettingsPage* page : settings->findChildren<SettingsPage*>()) {
      if (page->isVisible()) shown = page;
    }
    REQUIRE(shown != nullptr);
    CHECK(shown->accessibleName() == settings->pages()->item(i)->text());
  }
  for (QWidget* child : settings->findChildren<QWidget*>()) {
    const bool takesKeys = (child->focusPolicy() & Qt::TabFocus) != 0 && !child->objectName().startsWith(QLatin1String("qt_"));
    INFO(child->metaObject()->className() << " " << child->objectName().toStdString());
    if (takesKeys && qobject_cast<QLineEdit*>(child)) CHECK_FALSE(child->accessibleName().isEmpty());
    if (takesKeys && qobject_cast<QComboBox*>(child)) CHECK_FALSE(child->accessibleName().isEmpty());
  }
}

TEST_CASE_METHOD(SettingsBench, "settings: a limit is judged by at once on the Bench, in Compare and in the Clinic") {
  window->faces()->open(QStringLiteral("compare"));
  window->faces()->open(QStringLiteral("clinic"));
  AnalysisFeed* const compare[] = {window->compare()->face()->side(CompareFace::Letter::a)->feed(),
                                   window->compare()->face()->side(CompareFace::Letter::b)->feed()};
  ClinicFace* clinic = window->clinic()->face();
  clinic->addCard(deck_edits::cardOf(window->document()->rig(), CardShow::strip));
  clinic->startShow(clinic->current());
  REQUIRE(clinic->run() != nullptr);
  REQUIRE_FALSE(clinic->run()->shown()->rigs.empty());
  CHECK(QTest::qWaitFor([&] { return drops(window->feed()->analysis()) && drops(compare[1]->analysis()); }));
  CHECK(drops(*clinic->run()->shown()->rigs.front().analysis));
  type("joints_drop", "0.5");
  CHECK(rules().junctions.drop == 0.5);
  CHECK(QTest::qWaitFor([&] {
    return level(window->feed()->analysis()) && level(compare[0]->analysis()) && level(compare[1]->analysis());
  }));
  CHECK(level(*clinic->run()->shown()->rigs.front().analysis));
  CHECK(clinic->conditions().rules == rules());
  clinic->endShow();
  click("joints_drop_reset");
  CHECK(rules() == Rules{});
  CHECK(QTest::qWaitFor([&] { return drops(window->feed()->analysis()); }));
}

TEST_CASE_METHOD(SettingsBench, "settings: nonsense and a wrong order are said beside the field and change nothing") {
  type("joints_hinge", "much");
  CHECK(error("joints_hinge").contains(QLatin1String("no number")));
  type("joints_hinge", "99");
  CHECK(error("joints_hinge").contains(QLatin1String("1.05 to 5")));
  CHECK(rules() == Rules{});
  type("joints_hinge", "1.5");
  CHECK(error("joints_hinge") ==
        QLatin1String("Must be over 1.55: over this it hinges unless the stroke is slow and open"));
  CHECK(rules() == Rules{});
  click("joints_hinge_reset");
  CHECK(error("joints_hinge").isEmpty());
  CHECK(find<QLineEdit>("joints_hinge")->text() == QLatin1String("2"));
  type("tip_share_right", "30");
  CHECK(rules().grip.right == 0.30);
  CHECK(error("tip_share_right").isEmpty());
  window->look()->setUnits({true, true, false});
  type("head_inside", "2");  // grams now
  CHECK(rules().rod.inside.value() == Approx(30.8647).epsilon(1e-5));
  CHECK(find<QPushButton>("joints_drop_reset")->isHidden());
  SettingsPage* page = find<SettingsPage>("settingsVerdicts");
  page->findChild<QPushButton*>(QStringLiteral("resetPage"))->click();
  CHECK(rules() == Rules{});
}

TEST_CASE_METHOD(SettingsBench, "settings: a number is typed digit by digit and stays as it was typed") {
  settings->pages()->setCurrentRow(1);
  auto* edit = find<QLineEdit>("joints_hinge");
  edit->setFocus();
  REQUIRE(QTest::qWaitFor([&] { return edit->hasFocus(); }));
  edit->selectAll();
  QTest::keyClicks(edit, QStringLiteral("2,25"));
  CHECK(edit->text() == QLatin1String("2,25"));
  CHECK(rules().junctions.hinge == 2.25);
}

TEST_CASE_METHOD(SettingsBench, "settings: what is set is there at the next start, in one file") {
  type("weights_depth", "0.5");
  type("new_rig_depth_ft", "6");
  type("bench_tied_loop_in", "6");
  type("autosave_seconds", "30");
  choose("scheme", 2);
  choose("typeSize", 3);
  choose("lengths", 1);
  find<QCheckBox>("reduceMotion")->setChecked(true);
  MainWindow next;
  CHECK(next.preferences()->rules().weights.depth == 0.5);
  CHECK(next.preferences()->newRig().water.depth == Feet(6));
  CHECK(next.preferences()->autosave_s() == 30);
  CHECK(next.own()->rules().tiedLoop == Inches(6));
  CHECK(next.look()->scheme() == Scheme::dark);
  CHECK(next.look()->typeScale() == Approx(1.3));
  CHECK(next.look()->units().metres);
  CHECK(next.look()->reduceMotion());
}

TEST_CASE_METHOD(SettingsBench, "settings: a new rig starts with them, and only a new one") {
  type("new_rig_depth_ft", "6");
  type("new_rig_line_speed_ft_per_s", "70");
  type("new_rig_loop_ft", "99");
  CHECK(error("new_rig_loop_ft").contains(QLatin1String("0.3 to 15")));
  CHECK(window->document()->rig().water->depth == Feet(5));
  window->actionSet()->newRig->trigger();
  const Rig& rig = window->document()->rig();
  REQUIRE(rig.water);
  CHECK(rig.water->depth == Feet(6));
  REQUIRE(rig.cast);
  CHECK(rig.cast->lineSpeed == FeetPerSecond(70));
  CHECK_FALSE(rig.cast->loop);
  CHECK_FALSE(rig.swing);
  type("new_rig_depth_ft", "");
  click("new_rig_line_speed_ft_per_s_reset");
  CHECK(window->preferences()->newRig() == NewRig{});
}

TEST_CASE_METHOD(SettingsBench, "settings: out into a file, in again, and back") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("mine.conf"));
  auto* page = find<FilePage>("settingsFile");
  page->askExportPath = [&] { return path; };
  page->askImportPath = [&] { return path; };
  type("joints_hinge", "2.5");
  choose("masses", 1);
  click("exportSettings");
  CHECK(find<QLabel>("settingsWords")->text().contains(QLatin1String("mine.conf")));
  click("allUsual");
  CHECK(rules() == Rules{});
  CHECK_FALSE(window->look()->units().grams);
  click("importSettings");
  CHECK(rules().junctions.hinge == 2.5);
  CHECK(window->look()->units().grams);
  click("takeBackSettings");
  CHECK(rules() == Rules{});
  CHECK_FALSE(find<QPushButton>("takeBackSettings")->isEnabled());
  test::write(path, test::bytes(path).replace("hinge=2.5", "hinge=0.5"));
  click("importSettings");
  CHECK(rules() == Rules{});
  CHECK(find<QLabel>("settingsWords")->text().contains(QLatin1String("limits/joints/hinge")));
  page->askImportPath = [] { return kSamples + QStringLiteral("01-plain-winter.rig.json"); };
  click("importSettings");
  CHECK(find<QLabel>("settingsWords")->text().contains(QLatin1String("no settings file")));
  CHECK(rules() == Rules{});
}

TEST_CASE_METHOD(SettingsBench, "settings: the menus and the settings say the same of looks and language") {
  window->look()->setScheme(Scheme::projector);
  CHECK(find<QComboBox>("scheme")->currentIndex() == 4);
  window->look()->setTypeScale(2.0);
  CHECK(find<QComboBox>("typeSize")->currentText() == QLatin1String("200 %"));
  choose("language", 2);
  const QString code = Settings().language();
  CHECK_FALSE(code.isEmpty());
  int checked = 0;
  for (QAction* action : window->actionSet()->all()) {
    if (!action->objectName().startsWith(QLatin1String("language_")) || !action->isChecked()) continue;
    ++checked;
    CHECK(action->objectName() == QStringLiteral("language_") + code);
  }
  CHECK(checked == 1);
}

}  // namespace grainwise::ui
