// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/settings_pages.h"

#include <QCheckBox>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>
#include <QSignalBlocker>
#include <cmath>

#include "ui/document/bench_habits.h"
#include "ui/document/new_rig_rows.h"
#include "ui/document/own_store.h"
#include "ui/theme/language.h"
#include "ui/window/value_row.h"

namespace grainwise::ui {
namespace {

constexpr int kTypeSteps = 10;  ///< from 100 to 200 %
constexpr auto kName = "grainwise-settings.conf";

QStringList typeSizes() {
  QStringList sizes;
  for (int i = 0; i <= kTypeSteps; ++i) sizes.append(LookPage::tr("%1 %").arg(100 + 10 * i));
  return sizes;
}

QString fieldName(const char* key) {
  return QString::fromLatin1(key).replace(QLatin1Char('/'), QLatin1Char('_'));
}

/// The name and the unit of each of kNewRigRows.
struct Named {
  QString name;
  QString unit;
};
std::vector<Named> newRigNames() {
  return {{NewRigPage::tr("Line speed"), {}},
          {NewRigPage::tr("Height of the loop"), {}},
          {NewRigPage::tr("Launch angle"), QStringLiteral("°")},
          {NewRigPage::tr("Rod tip above the water"), {}},
          {NewRigPage::tr("Running line outside the rod tip"), {}},
          {NewRigPage::tr("Altitude of the river"), {}},
          {NewRigPage::tr("Speed of the surface"), {}},
          {NewRigPage::tr("Depth of the water"), {}},
          {NewRigPage::tr("Temperature of the water"), {}},
          {NewRigPage::tr("Salt"), QStringLiteral("g/kg")},
          {NewRigPage::tr("Line out"), {}},
          {NewRigPage::tr("Angle of the cast, down from straight across"), QStringLiteral("°")},
          {NewRigPage::tr("Mend, seconds of slack"), QStringLiteral("s")}};
}

QStringList habitNames() {
  return {BenchPage::tr("A welded loop takes"),     BenchPage::tr("A sleeved loop takes"),
          BenchPage::tr("A tied loop takes"),       BenchPage::tr("A splice takes, each side"),
          BenchPage::tr("A knot takes, each side"), BenchPage::tr("The knot at the fly takes")};
}

}  // namespace

LookPage::LookPage(SettingsDesk* desk, QWidget* parent) : SettingsPage(desk, "settingsLook", parent) {
  const auto unit = [this](bool DisplayUnits::*field) {
    return [this, field](int index) {
      DisplayUnits units = look()->units();
      units.*field = index == 1;
      look()->setUnits(units);
    };
  };
  addHeading(tr("Units"));
  m_lengths = addChoice("lengths", tr("Lengths"), {tr("Feet and inches"), tr("Metres and millimetres")},
                        unit(&DisplayUnits::metres));
  m_masses = addChoice("masses", tr("Weights"), {tr("Grains"), tr("Grams")}, unit(&DisplayUnits::grams));
  m_degrees = addChoice("degrees", tr("Temperatures"), {tr("Fahrenheit"), tr("Celsius")},
                        unit(&DisplayUnits::celsius));
  addHeading(tr("Looks"));
  m_scheme = addChoice("scheme", tr("Colours"),
                       {tr("As the system"), tr("Light"), tr("Dark"), tr("Sunlight"), tr("Projector")},
                       [this](int index) {
                         index == 0 ? look()->followSystem() : look()->setScheme(Scheme(index - 1));
                       });
  m_type = addChoice("typeSize", tr("Size of type and diagrams"), typeSizes(),
                     [this](int index) { look()->setTypeScale(1.0 + 0.1 * index); });
  m_still = new QCheckBox(tr("Reduce motion: nothing slides or plays by itself"), inside());
  m_still->setObjectName(QStringLiteral("reduceMotion"));
  connect(m_still, &QCheckBox::toggled, look(), &Look::setReduceMotion);
  add(m_still);
  addHeading(tr("Language"));
  QStringList names{tr("As the system")};
  for (const Language& one : languages()) names.append(one.name);
  m_language = addChoice("language", tr("Language of words and numbers, from the next start"), names,
                         [desk](int index) {
                           desk->setLanguage(index == 0 ? QString() : languages().at(index - 1).code);
                         });
  end();
  connect(desk, &SettingsDesk::changed, this, &LookPage::refresh);
  refresh();
}

void LookPage::refresh() {
  const AllSettings now = desk()->now();
  m_lengths->setCurrentIndex(now.units.metres ? 1 : 0);
  m_masses->setCurrentIndex(now.units.grams ? 1 : 0);
  m_degrees->setCurrentIndex(now.units.celsius ? 1 : 0);
  m_scheme->setCurrentIndex(now.followsSystem ? 0 : int(now.scheme) + 1);
  m_type->setCurrentIndex(int(std::lround((now.typeScale - 1.0) * kTypeSteps)));
  const QSignalBlocker quiet(m_still);
  m_still->setChecked(now.reduceMotion);
  m_still->setFont(look()->font(15));
  int language = 0;
  const QList<Language> all = languages();
  for (int i = 0; i < all.size(); ++i) {
    if (all[i].code == now.language) language = i + 1;
  }
  m_language->setCurrentIndex(language);
}

NewRigPage::NewRigPage(SettingsDesk* desk, QWidget* parent)
    : SettingsPage(desk, "settingsNewRig", parent) {
  addWords(tr("What a new rig has from the start. What is left open is as usual for its head; rigs that are "
              "there already keep their own."));
  m_reset = addButton("resetPage", tr("Put this page back to usual"),
                      [this] { this->desk()->preferences()->setNewRig({}); });
  const std::vector<Named> names = newRigNames();
  for (std::size_t i = 0; i < kNewRigRows.size(); ++i) {
    const NewRigRow& row = kNewRigRows[i];
    if (i == 0) addHeading(tr("Cast"));
    if (row.measure == Measure::speed && i > 0) addHeading(tr("Water"));
    if (i == 10) addHeading(tr("Swing"));
    ValueSpec spec{fieldName(row.key), names[i].name, row.measure, row.limit, names[i].unit, true};
    auto* field = new ValueRow(look(), spec, inside());
    add(field);
    m_rows.push_back(field);
    const auto set = [this, &row](std::optional<double> value) {
      NewRig start = this->desk()->preferences()->newRig();
      row.set(start, value);
      this->desk()->preferences()->setNewRig(start);
      refresh();
    };
    connect(field, &ValueRow::typed, this, set);
    connect(field, &ValueRow::cleared, this, [set] { set(std::nullopt); });
    connect(field, &ValueRow::resetWanted, this, [set] { set(std::nullopt); });
  }
  end();
  connect(desk, &SettingsDesk::changed, this, &NewRigPage::refresh);
  refresh();
}

void NewRigPage::refresh() {
  const NewRig& start = desk()->preferences()->newRig();
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    const auto value = kNewRigRows[i].get(start);
    const bool cast = i < 5;
    m_rows[i]->setValue(value, cast ? tr("usual: by the head, common practice") : tr("usual: left open"),
                        !value.has_value());
  }
  m_reset->setEnabled(!(start == NewRig{}));
}

BenchPage::BenchPage(SettingsDesk* desk, QWidget* parent) : SettingsPage(desk, "settingsBench", parent) {
  addWords(tr("The line that loops, splices and knots take over the finished length, for cut sheets, divided "
              "spools and leaders."));
  m_reset = addButton("resetPage", tr("Put this page back to usual"),
                      [this] { this->desk()->own()->setRules({}); });
  m_kind = addChoice("benchLoop", tr("Loops of tips"),
                     {tr("no loops"), tr("welded loops"), tr("sleeved loops"), tr("tied loops")},
                     [this](int index) {
                       BenchRules rules = this->desk()->own()->rules();
                       rules.lineLoop = static_cast<LoopKind>(index);
                       this->desk()->own()->setRules(rules);
                     });
  const QStringList names = habitNames();
  for (std::size_t i = 0; i < kBenchHabits.size(); ++i) {
    const BenchHabit& habit = kBenchHabits[i];
    auto* field = new ValueRow(
        look(), {fieldName(habit.key), names[qsizetype(i)], Measure::diameter, kAllowance, {}, false}, inside());
    add(field);
    m_rows.push_back(field);
    const auto set = [this, &habit](double inches) {
      BenchRules rules = this->desk()->own()->rules();
      rules.*habit.length = Inches(inches);
      this->desk()->own()->setRules(rules);
      refresh();
    };
    connect(field, &ValueRow::typed, this, set);
    connect(field, &ValueRow::resetWanted, this, [set, &habit] { set((BenchRules{}.*habit.length).value()); });
  }
  end();
  connect(desk, &SettingsDesk::changed, this, &BenchPage::refresh);
  refresh();
}

void BenchPage::refresh() {
  const BenchRules& rules = desk()->own()->rules();
  const BenchRules usual{};
  m_kind->setCurrentIndex(int(rules.lineLoop));
  for (std::size_t i = 0; i < m_rows.size(); ++i) {
    const Inches has = rules.*kBenchHabits[i].length, had = usual.*kBenchHabits[i].length;
    m_rows[i]->setValue(has.value(),
                        tr("usual: %1, common practice").arg(diameterText(had, look()->units())), has == had);
  }
  m_reset->setEnabled(!(rules == usual));
}

FilePage::FilePage(SettingsDesk* desk, QWidget* parent) : SettingsPage(desk, "settingsFile", parent) {
  askExportPath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Export the settings"), QLatin1String(kName),
                                        tr("Settings (*.conf);;All files (*)"));
  };
  askImportPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Import settings"), QString(),
                                        tr("Settings (*.conf);;All files (*)"));
  };
  addHeading(tr("Copies of unsaved work"));
  m_autosave = new ValueRow(look(),
                            {QStringLiteral("autosave_seconds"),
                             tr("A copy at most so long after a change"),
                             Measure::plain,
                             {"seconds", "s", kLeastAutosave_s, kMostAutosave_s},
                             QStringLiteral("s"),
                             false},
                            inside());
  add(m_autosave);
  connect(m_autosave, &ValueRow::typed, this, [this](double seconds) {
    this->desk()->preferences()->setAutosave(int(std::lround(seconds)));
  });
  connect(m_autosave, &ValueRow::resetWanted, this,
          [this] { this->desk()->preferences()->setAutosave(kUsualAutosave_s); });
  addHeading(tr("All settings as a file"));
  addWords(tr("For another machine or another person: units, looks, limits, weights, new rigs and bench habits. "
              "Rigs, pools, own parts and what was open last are not in it."));
  addButton("exportSettings", tr("Export…"), [this] { exportFile(); });
  addButton("importSettings", tr("Import…"), [this] { importFile(); });
  m_usual = addButton("allUsual", tr("Put all settings back to usual"), [this] {
    this->desk()->replace({});
    say(tr("All settings are as usual."), true);
  });
  m_back = addButton("takeBackSettings", tr("Take that back"), [this] {
    this->desk()->takeBack();
    say(tr("The settings are as they were before."), true);
  });
  m_words = addWords({});
  m_words->setObjectName(QStringLiteral("settingsWords"));
  addWords(tr("They are kept in this file:"));
  m_place = new QLineEdit(QDir::toNativeSeparators(QSettings().fileName()), inside());
  m_place->setObjectName(QStringLiteral("settingsPlace"));
  m_place->setAccessibleName(tr("Where the settings are kept"));
  m_place->setReadOnly(true);
  add(m_place);
  end();
  connect(desk, &SettingsDesk::changed, this, &FilePage::refresh);
  refresh();
}

void FilePage::say(const QString& words, bool good) {
  m_words->setText(words);
  QPalette p = m_words->palette();
  p.setColor(QPalette::WindowText, good ? look()->colours().ink : look()->colours().brick);
  m_words->setPalette(p);
  refresh();
  ensureWidgetVisible(m_words);
}

void FilePage::exportFile() {
  const QString path = askExportPath();
  if (path.isEmpty()) return;
  const QString why = exportSettings(path, desk()->now());
  const QString file = QFileInfo(path).fileName();
  say(why.isEmpty() ? tr("Written: %1").arg(file) : tr("%1 was not written: %2").arg(file, why), why.isEmpty());
}

void FilePage::importFile() {
  const QString path = askImportPath();
  if (path.isEmpty()) return;
  const QString file = QFileInfo(path).fileName();
  const auto read = importSettings(path);
  if (!read) {
    say(tr("%1 was not taken; all settings stay as they are.\n%2")
            .arg(file, read.error().join(QLatin1Char('\n'))),
        false);
    return;
  }
  desk()->replace(*read);
  say(tr("Taken: %1").arg(file), true);
}

void FilePage::refresh() {
  const int seconds = desk()->preferences()->autosave_s();
  m_place->setFont(look()->font(15));
  m_autosave->setValue(seconds, tr("usual: %1 s, ours").arg(kUsualAutosave_s), seconds == kUsualAutosave_s);
  m_usual->setEnabled(!(desk()->now() == AllSettings{}));
  m_back->setEnabled(desk()->canTakeBack());
}

}  // namespace grainwise::ui
