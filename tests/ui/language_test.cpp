// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/language.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QSet>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <algorithm>
#include <memory>

#include "core/io/rig_file.h"
#include "tests/support/shipped_files.h"
#include "tests/support/strip_bench.h"
#include "tests/support/ui_support.h"
#include "ui/document/rig_document.h"
#include "ui/strip/strip_view.h"
#include "ui/text/quantities.h"
#include "ui/text/sample_words.h"
#include "ui/text/shelf_words.h"
#include "ui/text/words.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/main_window.h"
#include "ui/window/notice_bar.h"

namespace grainwise::ui {
namespace {

const QString kRoot = QStringLiteral(GRAINWISE_SOURCE_DIR);
const QString kWinter = kRoot + QStringLiteral("/sample-rigs/01-plain-winter.rig.json");

std::unique_ptr<MainWindow> openedWindow() {
  QSettings().clear();
  auto window = std::make_unique<MainWindow>();
  window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
  REQUIRE(window->openFile(kWinter));
  window->show();
  REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  return window;
}

QString languageOf(const char* locale) { return spokenIn(QLocale(QString::fromLatin1(locale))); }

}  // namespace

TEST_CASE("a locale is answered in its own language where the program speaks it, else in English") {
  CHECK(languageOf("de_AT") == QStringLiteral("de"));
  CHECK(languageOf("nb_NO") == QStringLiteral("nb"));
  CHECK(languageOf("nn_NO") == QStringLiteral("nb"));
  CHECK(languageOf("es_MX") == QStringLiteral("es"));
  CHECK(languageOf("en_US") == QStringLiteral("en"));
  CHECK(languageOf("fr_FR") == QStringLiteral("en"));
  CHECK(spokenIn(QLocale::c()) == QStringLiteral("en"));
}

TEST_CASE("a chosen language brings its own numbers, unless the system is of that language anyhow") {
  const QLocale austria(QLocale::German, QLocale::Austria);
  const QLocale texas(QLocale::English, QLocale::UnitedStates);
  CHECK(localeOf(QStringLiteral("de"), texas) == QLocale(QLocale::German, QLocale::Germany));
  CHECK(localeOf(QStringLiteral("de"), austria) == austria);
  CHECK(localeOf(QStringLiteral("en"), austria).decimalPoint() == QStringLiteral("."));
  CHECK(localeOf(QStringLiteral("en"), texas) == texas);
  CHECK(localeOf(QString(), austria) == austria);
  CHECK(localeOf(QStringLiteral("xx"), texas) == texas);
}

TEST_CASE("each language has its words, and English comes back afterwards") {
  const QString english = readingTitle(Reading::junction);
  REQUIRE(english == QStringLiteral("Hinge"));
  QSet<QString> said{english};
  for (const Language& one : languages()) {
    const Speaking speaking(one.code);
    said.insert(readingTitle(Reading::junction));
    CHECK(spokenIn(QLocale()) == one.code);
  }
  CHECK(said.size() == languages().size());
  {
    // Qt has no Bokmål of its own; ours comes along.
    const Speaking speaking(QStringLiteral("nb"));
    CHECK(QCoreApplication::translate("QPlatformTheme", "Cancel") == QStringLiteral("Avbryt"));
  }
  CHECK(readingTitle(Reading::junction) == english);
}

TEST_CASE("every name and group of the carried Shelf is known to translators, and no other name is touched") {
  for (const Part& part : test::genericShelf().parts) {
    INFO(*part.name);
    CHECK(isShelfName(QString::fromStdString(*part.name)));
    CHECK(shelfName(QString::fromStdString(*part.name)) == QString::fromStdString(*part.name));
    if (part.group) CHECK(isShelfName(QString::fromStdString(*part.group)));
  }
  const Speaking speaking(QStringLiteral("de"));
  CHECK(shelfName(QStringLiteral("short head 525")) == QStringLiteral("kurzer Kopf 525"));
  CHECK(shelfName(QStringLiteral("7.5 ft, 5 gr/ft")) == QStringLiteral("7,5 ft, 5 gr/ft"));
  CHECK(shelfName(QStringLiteral("my 7.5 ft tip")) == QStringLiteral("my 7.5 ft tip"));
}

TEST_CASE("every name and note of a carried sample is known to translators, and no other is touched") {
  const QDir samples(kRoot + QStringLiteral("/sample-rigs"));
  const QStringList files = samples.entryList({QStringLiteral("*.rig.json")});
  CHECK(files.size() == 14);
  const Speaking speaking(QStringLiteral("de"));
  for (const QString& file : files) {
    const Rig rig = loadRig(samples.filePath(file).toStdString()).value();
    INFO(file.toStdString());
    CHECK(isSampleText(rig.name));
    CHECK(isSampleText(rig.notes.value()));
    Rig spoken = spokenSample(rig);
    CHECK(spoken.name != rig.name);
    CHECK(spoken.notes != rig.notes);
    spoken.name = rig.name;
    spoken.notes = rig.notes;
    CHECK(spoken == rig);
  }
  const Pools& river = test::corrow();
  const Pools spoken = spokenSample(river);
  for (std::size_t i = 0; i < river.pools.size(); ++i) {
    CHECK(isSampleText(river.pools[i].note.value()));
    CHECK(spoken.pools[i].note != river.pools[i].note);
    CHECK(spoken.pools[i].name == river.pools[i].name);
  }
  Rig own;
  own.name = "Plain winter of mine";
  CHECK(spokenSample(own) == own);
}

TEST_CASE_METHOD(test::UiFixture, "a language is chosen in the menu, kept, and spoken from the next start") {
  auto window = openedWindow();
  auto* german = window->findChild<QAction*>(QStringLiteral("language_de"));
  REQUIRE(german != nullptr);
  CHECK_FALSE(german->isChecked());
  german->trigger();
  CHECK(Settings().language() == QStringLiteral("de"));
  CHECK(window->notice()->told().contains(QStringLiteral("next start")));
  CHECK(window->actionSet()->save->text() == QStringLiteral("Save"));
  window.reset();

  const Speaking speaking(Settings().language());
  window = openedWindow();
  CHECK(window->actionSet()->save->text() == QStringLiteral("Speichern"));
}

TEST_CASE_METHOD(test::UiFixture, "in every language no menu has one mnemonic twice") {
  for (const Language& one : languages()) {
    const Speaking speaking(one.code);
    auto window = openedWindow();
    for (const QMenu* menu : window->findChildren<QMenu*>()) {
      QSet<QString> taken;
      for (const QAction* action : menu->actions()) {
        const QString key = QKeySequence::mnemonic(action->text()).toString();
        INFO(one.code.toStdString() << ": " << action->text().toStdString());
        CHECK((key.isEmpty() || !taken.contains(key)));
        taken.insert(key);
      }
    }
  }
}

TEST_CASE_METHOD(test::UiFixture, "where a comma is decimal the window shows and takes 3,5 and the file says 3.5") {
  for (const char* code : {"de", "nb", "es"}) {
    const Speaking speaking(QString::fromLatin1(code));
    auto window = openedWindow();
    INFO(code);
    CHECK(lengthText(Feet(3.5), {}) == QStringLiteral("3,5 ft"));
    StripView* strip = window->bench()->strip();
    const auto& parts = window->document()->rig().parts;
    const auto leader = std::find_if(parts.begin(), parts.end(),
                                     [](const Part& part) { return part.kind == PartKind::leader; });
    REQUIRE(leader != parts.end());
    const auto index = std::size_t(leader - parts.begin());
    window->bench()->openPart();
    QWidget* field = nullptr;
    REQUIRE(QTest::qWaitFor([&] {
      strip->select(index);  // its blocks come with the first picture
      field = window->findChild<QWidget*>(QStringLiteral("section0_length"));
      return field != nullptr;
    }));
    auto* edit = field->findChild<QLineEdit*>();
    edit->setFocus();
    edit->selectAll();
    QTest::keyClicks(edit, QStringLiteral("3,5"));
    CHECK(window->document()->rig().parts[index].sections.front().length == Feet(3.5));
    window->bench()->strip()->setFocus();
    CHECK(edit->text() == QStringLiteral("3,5"));

    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("typed.rig.json"));
    REQUIRE(window->document()->saveAs(path).empty());
    QFile file(path);
    REQUIRE(file.open(QIODevice::ReadOnly));
    const QByteArray text = file.readAll();
    CHECK(text.contains("\"length_ft\": 3.5"));
    CHECK_FALSE(text.contains("3,5"));
  }
}

}  // namespace grainwise::ui
