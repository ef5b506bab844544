// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/file_kinds.h"

#include <QAction>
#include <QDropEvent>
#include <QFile>
#include <QMenu>
#include <QMimeData>
#include <QScopeGuard>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>
#include <QUrl>

#include "tests/support/strip_bench.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_document.h"
#include "ui/compare/compare_face.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/panels/drawer.h"
#include "ui/panels/make_panel.h"
#include "ui/theme/language.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {

const QString kSamples = QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/");

struct OpenFixture : test::UiFixture {
  OpenFixture() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    window->startFrom(test::sampleRig("01-plain-winter"));
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  void drop(const QStringList& paths) {
    QMimeData data;
    QList<QUrl> urls;
    for (const QString& path : paths) urls << QUrl::fromLocalFile(path);
    data.setUrls(urls);
    QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &enter);
    REQUIRE(enter.isAccepted());
    QDropEvent drop(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &drop);
  }
  /// From the Help menu, where it stands under its own name.
  void openSample(const QString& file, const QString& name) {
    QMenu* menu = window->actionSet()->samplesMenu();
    Q_EMIT menu->aboutToShow();
    auto* sample = window->findChild<QAction*>(file);
    REQUIRE(sample != nullptr);
    CHECK(sample->text() == name);
    CHECK(menu->actions().contains(sample));
    sample->trigger();
  }
  /// By each way that a window has.
  void open(const QString& path, bool byDrop) {
    if (byDrop) return drop({path});
    window->askOpenPath = [path] { return path; };
    window->actionSet()->open->trigger();
  }
  QString said() { return window->bench()->drawer()->said(); }
  QStringList recent() {
    QStringList names;
    for (const QAction* entry : window->actionSet()->recentMenu()->actions()) names << entry->text();
    return names;
  }
  std::unique_ptr<MainWindow> window;
};

}  // namespace

TEST_CASE("a file's kind is told by its name, else by the format in it") {
  const QTemporaryDir folder;
  CHECK(kindOf(QStringLiteral("/x/a.rig.json")) == FileKind::rig);
  CHECK(kindOf(QStringLiteral("/x/a.spools.json")) == FileKind::spools);
  const QString plain = folder.filePath(QStringLiteral("plain.json"));
  REQUIRE(QFile::copy(kSamples + QStringLiteral("corrow.pools.json"), plain));
  CHECK(kindOf(plain) == FileKind::pools);
  test::write(folder.filePath(QStringLiteral("x.txt")), "nothing of ours");
  CHECK(kindOf(folder.filePath(QStringLiteral("x.txt"))) == FileKind::rig);
}

TEST_CASE_METHOD(OpenFixture, "every kind of file opens by the menu and by a drop, and can be taken back") {
  for (const bool byDrop : {false, true}) {
    INFO(byDrop);
    window->pools()->start({});
    open(kSamples + QStringLiteral("corrow.pools.json"), byDrop);
    CHECK_FALSE(window->pools()->pools().pools.empty());
    CHECK(window->bench()->drawer()->current() == QStringLiteral("pools"));
    CHECK(said().contains(QStringLiteral("corrow.pools.json")));
    window->pools()->takeBack();
    CHECK(window->pools()->pools().pools.empty());

    window->own()->setSpools({});
    const auto spools = window->own()->spools().spools.size();
    open(kSamples + QStringLiteral("bench.spools.json"), byDrop);
    CHECK(window->own()->spools().spools.size() > spools);
    CHECK(window->findChild<MakePanel*>()->task() == QStringLiteral("makeSpools"));
    CHECK(said().contains(QStringLiteral("bench.spools.json")));
    window->own()->undo();
    CHECK(window->own()->spools().spools.size() == spools);

    const auto parts = window->own()->own().parts.size();
    open(kSamples + QStringLiteral("five-tip-family.shelf.json"), byDrop);
    CHECK(window->own()->own().parts.size() > parts);
    CHECK(window->findChild<MakePanel*>()->task() == QStringLiteral("makeParts"));
    window->own()->undo();
    CHECK(window->own()->own().parts.size() == parts);

    open(kSamples + QStringLiteral("02-slot.rig.json"), byDrop);
    CHECK(window->document()->path().endsWith(QStringLiteral("02-slot.rig.json")));
    open(kSamples + QStringLiteral("why-that-tip.deck.json"), byDrop);
    CHECK(window->faces()->current() == QStringLiteral("clinic"));
    open(kSamples + QStringLiteral("01-plain-winter.rig.json"), byDrop);
    CHECK(window->faces()->current() == QStringLiteral("bench"));
  }
  for (const char* name : {"corrow.pools.json", "bench.spools.json", "five-tip-family.shelf.json", "02-slot.rig.json",
                           "why-that-tip.deck.json"}) {
    CHECK(recent().contains(QLatin1String(name)));
  }
}

TEST_CASE_METHOD(OpenFixture, "a faulty file of any kind changes nothing and is told on the page of problems") {
  const QTemporaryDir folder;
  const Rig before = window->document()->rig();
  const Spools spools = window->own()->spools();
  for (const char* kind : {"rig", "shelf", "pools", "spools"}) {
    INFO(kind);
    const QString path = folder.filePath(QStringLiteral("bad.%1.json").arg(QLatin1String(kind)));
    test::write(path, "{ \"format\": \"grainwise-none\", \"version\": 1 }\n");
    window->bench()->openShelf();
    CHECK_FALSE(window->openFile(path));
    CHECK(window->bench()->drawer()->current() == QStringLiteral("problems"));
  }
  CHECK(window->document()->rig() == before);
  CHECK(window->own()->spools() == spools);
}

TEST_CASE_METHOD(OpenFixture, "two files that are not both rigs are each opened, two rigs are compared") {
  window->pools()->start({});
  drop({kSamples + QStringLiteral("corrow.pools.json"), kSamples + QStringLiteral("02-slot.rig.json")});
  CHECK_FALSE(window->pools()->pools().pools.empty());
  CHECK(window->document()->path().endsWith(QStringLiteral("02-slot.rig.json")));
  CHECK(window->faces()->current() == QStringLiteral("bench"));
  drop({kSamples + QStringLiteral("02-slot.rig.json"), kSamples + QStringLiteral("03-thin-tail.rig.json")});
  CHECK(window->faces()->current() == QStringLiteral("compare"));
}

TEST_CASE_METHOD(OpenFixture, "a carried deck opens from the Help menu as an untitled copy with its rigs in it") {
  openSample(QStringLiteral("why-that-tip.deck.json"), QStringLiteral("Why that tip?"));
  CHECK(window->faces()->current() == QStringLiteral("clinic"));
  const DeckDocument* deck = window->clinic()->face()->document();
  CHECK(deck->path().isEmpty());
  REQUIRE_FALSE(deck->deck().cards.empty());
  for (const Card& card : deck->deck().cards) {
    if (card.rig) CHECK(std::holds_alternative<Rig>(*card.rig));
    if (card.rigB) CHECK(std::holds_alternative<Rig>(*card.rigB));
  }
  CHECK(window->clinic()->face()->said().isEmpty());
}

TEST_CASE("lessons and rigs of the Help menu speak the window's language, and English where it has none of them") {
  struct Row {
    const char *language, *lesson, *title, *first, *rig;
  };
  const Row rows[] = {
      {"de", "why-that-tip.de.deck.json", "Warum diese Spitze?", "Bevor die Ruten stehen", "Schlichter Winter"},
      {"nb", "why-that-tip.nb.deck.json", "Hvorfor den tuppen?", "Før stengene rigges", "Vanlig vinter"},
      {"es", "why-that-tip.es.deck.json", "¿Por qué esa punta?", "Antes de montar las cañas", "Invierno sencillo"},
      {"fr", "why-that-tip.deck.json", "Why that tip?", "Before rods are strung", "Plain winter"}};
  const QLocale before;
  const auto back = qScopeGuard([&] { QLocale::setDefault(before); });
  for (const Row& row : rows) {
    INFO(row.language);
    const Speaking speaking(QString::fromLatin1(row.language));
    QLocale::setDefault(QLocale(QString::fromLatin1(row.language)));
    OpenFixture opened;
    opened.openSample(QString::fromLatin1(row.lesson), QString::fromUtf8(row.title));
    const DeckDocument* deck = opened.window->clinic()->face()->document();
    CHECK(deck->path().isEmpty());
    CHECK(QString::fromStdString(deck->deck().cards.front().title) == QString::fromUtf8(row.first));
    const auto& rig = deck->deck().cards.at(2).rig;
    REQUIRE(rig);
    REQUIRE(std::holds_alternative<Rig>(*rig));
    CHECK(std::get<Rig>(*rig).name == row.rig);
    int lessons = 0;
    for (const QAction* entry : opened.window->actionSet()->samplesMenu()->actions()) {
      lessons += entry->objectName().endsWith(QLatin1String(".deck.json")) ? 1 : 0;
    }
    CHECK(lessons == 2);
    opened.openSample(QStringLiteral("01-plain-winter.rig.json"), QString::fromUtf8(row.rig));
    CHECK(opened.window->document()->rig().name == row.rig);
    CHECK(opened.window->document()->path().isEmpty());
  }
  for (const Language& one : languages()) {
    if (one.code == QLatin1String("en")) continue;
    INFO(one.code.toStdString());
    for (const char* lesson : {"why-that-tip", "how-deep-was-i"}) {
      CHECK(QFile::exists(QStringLiteral(":/sample-rigs/%1.%2.deck.json").arg(QLatin1String(lesson), one.code)));
    }
  }
}

TEST_CASE_METHOD(OpenFixture, "a carried rig opens where rigs are: in Compare in place of the one touched last") {
  const Rig first = window->document()->rig();
  window->faces()->open(QStringLiteral("compare"));
  CompareFace* face = window->compare()->face();
  face->setCurrent(face->side(Side::Letter::b));
  openSample(QStringLiteral("03-thin-tail.rig.json"), QStringLiteral("Thin tail"));
  CHECK(window->faces()->current() == QStringLiteral("compare"));
  CHECK(face->side(Side::Letter::b)->document()->rig().name == "Thin tail");
  CHECK(face->side(Side::Letter::b)->document()->path().isEmpty());
  CHECK(window->document()->rig() == first);
  face->setCurrent(face->side(Side::Letter::a));
  openSample(QStringLiteral("02-slot.rig.json"), QStringLiteral("Slot"));
  CHECK(window->document()->rig().name == "Slot");
  CHECK(face->side(Side::Letter::b)->document()->rig().name == "Thin tail");
  window->faces()->open(QStringLiteral("clinic"));
  openSample(QStringLiteral("wrong-hinge.rig.json"), QStringLiteral("Hinge"));
  CHECK(window->faces()->current() == QStringLiteral("bench"));
  CHECK(window->document()->rig().name == "Hinge");
}

TEST_CASE_METHOD(OpenFixture, "the window is called after the rig or the deck that is open in it") {
  const QString rig = window->windowTitle();
  window->faces()->open(QStringLiteral("clinic"));
  CHECK(window->windowTitle() != rig);
  openSample(QStringLiteral("why-that-tip.deck.json"), QStringLiteral("Why that tip?"));
  CHECK(window->windowTitle().startsWith(QStringLiteral("Why that tip?")));
  window->clinic()->face()->addCard(Card{});
  CHECK(window->isWindowModified());
  window->faces()->open(QStringLiteral("bench"));
  CHECK(window->windowTitle() == rig);
  CHECK_FALSE(window->isWindowModified());
}

}  // namespace grainwise::ui
