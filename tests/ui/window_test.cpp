// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QAction>
#include <QComboBox>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "core/io/rig_file.h"
#include "tests/support/ui_support.h"
#include "ui/charts/profile_chart.h"
#include "ui/document/rig_document.h"
#include "ui/panels/drawer.h"
#include "ui/panels/tiles.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/main_window.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

const QString kRoot = QStringLiteral(GRAINWISE_SOURCE_DIR);
const QString kWinter = kRoot + QStringLiteral("/sample-rigs/01-plain-winter.rig.json");
const QString kTail = kRoot + QStringLiteral("/sample-rigs/03-thin-tail.rig.json");

QByteArray bytes(const QString& path) {
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  return file.readAll();
}

/// A window on the first sample; settings start empty, unsaved work is let go of.
struct WindowFixture : test::UiFixture {
  WindowFixture() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [this] {
      ++asked;
      return answer;
    };
    REQUIRE(window->openFile(kWinter));
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  RigDocument& document() { return *window->document(); }
  template <class W>
  W* find(const char* name) {
    W* widget = window->findChild<W*>(QLatin1String(name));
    REQUIRE(widget != nullptr);
    return widget;
  }
  void dropUrl(const QUrl& url) {
    QMimeData data;
    data.setUrls({url});
    QDragEnterEvent enter(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &enter);
    REQUIRE(enter.isAccepted());
    QDropEvent drop(QPoint(10, 10), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &drop);
  }
  void rename(const char* name) {
    Rig rig = document().rig();
    rig.name = name;
    document().apply(QStringLiteral("Rename the rig"), rig);
  }

  std::unique_ptr<MainWindow> window;
  MainWindow::Unsaved answer = MainWindow::Unsaved::discard;
  int asked = 0;
};

}  // namespace

TEST_CASE_METHOD(WindowFixture, "the turnover sentence opens its why and puts the need of the loop on the chart, another page takes it off") {
  const auto* chart = window->findChild<ProfileChart*>();
  auto* sentence = window->findChild<SentenceBar*>()->findChild<QAbstractButton*>();
  REQUIRE(sentence != nullptr);
  CHECK_FALSE(chart->driveShown());
  QTest::mouseClick(sentence, Qt::LeftButton);
  CHECK(chart->driveShown());
  CHECK(window->bench()->drawer()->current() == QStringLiteral("why"));
  window->actionSet()->cast->trigger();
  CHECK_FALSE(chart->driveShown());
  QTest::keyClick(sentence, Qt::Key_Space);
  CHECK(chart->driveShown());
}

TEST_CASE_METHOD(WindowFixture, "a sample opens, saves elsewhere and comes back byte for byte") {
  QTemporaryDir folder;
  const QString copy = folder.filePath(QStringLiteral("copy.rig.json"));
  window->askSavePath = [&] { return copy; };
  window->actionSet()->saveAs->trigger();
  CHECK(bytes(copy) == bytes(kWinter));
  CHECK(document().path() == copy);
  CHECK_FALSE(document().isModified());
}

TEST_CASE_METHOD(WindowFixture, "the title carries the unsaved mark until the rig is saved or undone") {
  CHECK_FALSE(window->isWindowModified());
  rename("changed");
  CHECK(window->isWindowModified());
  window->actionSet()->undo->trigger();
  CHECK_FALSE(window->isWindowModified());
}

TEST_CASE_METHOD(WindowFixture, "a file that is at fault leaves the open rig as it was and is explained") {
  QTemporaryDir folder;
  const QString bad = folder.filePath(QStringLiteral("bad.rig.json"));
  QFile file(bad);
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("{ \"format\": \"grainwise-rig\",\n  \"version\": 99 }\n");
  file.close();
  const Rig before = document().rig();
  CHECK_FALSE(window->openFile(bad));
  CHECK(document().rig() == before);
  CHECK(document().path() == kWinter);
  CHECK(window->bench()->drawer()->current() == QStringLiteral("problems"));
  const QString list = find<QLabel>("problemList")->text();
  CHECK(list.contains(QStringLiteral("bad.rig.json:2")));
  CHECK(list.contains(QStringLiteral("/version")));
}

TEST_CASE_METHOD(WindowFixture, "a missing file is explained and the open rig stays") {
  const Rig before = document().rig();
  CHECK_FALSE(window->openFile(QStringLiteral("no-such.rig.json")));
  CHECK(document().rig() == before);
  CHECK(find<QLabel>("problemList")->text().contains(QStringLiteral("no-such.rig.json")));
}

TEST_CASE_METHOD(WindowFixture, "a failed save keeps the old file and says so") {
  QTemporaryDir folder;
  const QString inFile = folder.filePath(QStringLiteral("plain"));
  QFile plain(inFile);
  REQUIRE(plain.open(QIODevice::WriteOnly));
  plain.write("old");
  plain.close();
  rename("changed");
  window->askSavePath = [&] { return inFile + QStringLiteral("/below.rig.json"); };
  window->actionSet()->saveAs->trigger();
  CHECK(bytes(inFile) == "old");
  CHECK(document().isModified());
  CHECK(window->bench()->drawer()->current() == QStringLiteral("problems"));
  CHECK_FALSE(find<QLabel>("problemList")->text().isEmpty());
}

TEST_CASE_METHOD(WindowFixture, "a rig file dropped on the window opens") {
  dropUrl(QUrl::fromLocalFile(kTail));
  CHECK(document().path() == kTail);
}

TEST_CASE_METHOD(WindowFixture, "something else dropped on the window is refused in words") {
  const QString before = document().path();
  dropUrl(QUrl(QStringLiteral("http://example.org/x.rig.json")));
  CHECK(document().path() == before);
  CHECK_FALSE(window->bench()->drawer()->said().isEmpty());
}

TEST_CASE_METHOD(WindowFixture, "unsaved work is asked about once before it is let go of") {
  rename("changed");
  answer = MainWindow::Unsaved::cancel;
  window->actionSet()->newRig->trigger();
  CHECK(asked == 1);
  CHECK(document().rig().name == "changed");
  answer = MainWindow::Unsaved::discard;
  window->actionSet()->newRig->trigger();
  CHECK(asked == 2);
  CHECK(document().rig().parts.empty());
}

TEST_CASE_METHOD(WindowFixture, "cancelling keeps a window with unsaved work open") {
  rename("changed");
  answer = MainWindow::Unsaved::cancel;
  CHECK_FALSE(window->close());
  answer = MainWindow::Unsaved::discard;
  CHECK(window->close());
}

TEST_CASE_METHOD(WindowFixture, "recent files list the newest first, once each, without those that have gone") {
  REQUIRE(window->openFile(kTail));
  REQUIRE(window->openFile(kWinter));
  Settings settings;
  CHECK(settings.recentFiles() == QStringList({kWinter, kTail}));
  settings.addRecent(QStringLiteral("/no/such/file.rig.json"));
  CHECK(settings.recentFiles() == QStringList({kWinter, kTail}));
  settings.clearRecent();
  CHECK(settings.recentFiles().isEmpty());
}

TEST_CASE_METHOD(WindowFixture, "scheme, units and type size are remembered for the next window") {
  window->look()->setScheme(Scheme::dark);
  window->look()->setUnits({true, true, true});
  window->look()->setTypeScale(1.3);
  MainWindow next;
  CHECK(next.look()->scheme() == Scheme::dark);
  CHECK(next.look()->units() == DisplayUnits{true, true, true});
  CHECK(next.look()->typeScale() == Approx(1.3));
}

TEST_CASE_METHOD(WindowFixture, "every action has words and no two share a key") {
  QHash<QString, QString> owner;
  for (QAction* action : window->actionSet()->all()) {
    CHECK_FALSE(action->text().isEmpty());
    const QString key = action->shortcut().toString();
    if (key.isEmpty()) continue;
    INFO(key.toStdString() << " of " << action->text().toStdString());
    CHECK_FALSE(owner.contains(key));
    owner.insert(key, action->text());
  }
}

TEST_CASE_METHOD(WindowFixture, "one typed rod length is one undo step and one analysis") {
  window->actionSet()->rod->trigger();
  auto* field = find<QWidget>("rodPanel")->findChildren<QLineEdit*>().value(0);
  REQUIRE(field != nullptr);
  QApplication::processEvents();
  const int runs = window->feed()->runs();
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, QStringLiteral("14.50"));
  QApplication::processEvents();
  CHECK(document().rig().rod->length == Feet(14.5));
  CHECK(document().undoStack()->count() == 1);
  CHECK(window->feed()->runs() <= runs + 5);
  CHECK(writeRig(document().rig()).find("\"length_ft\": 14.50") != std::string::npos);
}

TEST_CASE_METHOD(WindowFixture, "a rod length that cannot be is shown beside the field and never enters") {
  window->actionSet()->rod->trigger();
  auto* field = find<QWidget>("rodPanel")->findChildren<QLineEdit*>().value(0);
  const Rig before = document().rig();
  field->setFocus();
  field->selectAll();
  QTest::keyClicks(field, QStringLiteral("x"));
  CHECK(document().rig() == before);
  CHECK_FALSE(field->accessibleDescription().isEmpty());
}

TEST_CASE_METHOD(WindowFixture, "a rig started from a rod has a head that fits it, a tip and a leader") {
  window->actionSet()->fromRod->trigger();
  find<QPushButton>("startFromRod")->click();
  QApplication::processEvents();
  const Analysis& analysis = window->feed()->analysis();
  CHECK(analysis.rod.headVerdict == HeadVerdict::fits);
  CHECK(document().rig().parts.size() == 4);
  document().undoStack()->undo();
  CHECK(writeRig(document().rig()) == bytes(kWinter).toStdString());
}

TEST_CASE_METHOD(WindowFixture, "the stroke is compared with the rig that was opened") {
  QApplication::processEvents();
  REQUIRE(window->feed()->analysis().stroke);
  CHECK(window->feed()->analysis().stroke->verdict == StrokeVerdict::same);
  Rig rig = document().rig();
  rig.parts.erase(rig.parts.begin() + 2);
  document().apply(QStringLiteral("Remove tip"), rig);
  QApplication::processEvents();
  CHECK(window->feed()->analysis().stroke->verdict == StrokeVerdict::different);
  auto* sentences = find<QWidget>("sentences");
  CHECK(sentences->findChildren<QLabel*>().last()->text().contains(QStringLiteral("different cast")));
}

TEST_CASE_METHOD(WindowFixture, "every control that takes the keyboard has a name for a screen reader") {
  for (const char* page : {"shelf", "part", "rod", "water", "name"}) {
    window->bench()->drawer()->open(QLatin1String(page));
    QApplication::processEvents();
    for (QWidget* w : window->findChildren<QWidget*>()) {
      if (!w->isVisible() || w->focusPolicy() == Qt::NoFocus) continue;
      if (qobject_cast<QAbstractScrollArea*>(w->parentWidget()) || w->focusProxy()) continue;
      INFO(page << ": " << w->metaObject()->className() << ' ' << w->objectName().toStdString());
      CHECK_FALSE((w->accessibleName() + w->property("text").toString()).isEmpty());
    }
  }
}

TEST_CASE_METHOD(WindowFixture, "everything in a window goes before the look that it is drawn with") {
  for (const char* name : {"wallet", "help", "face_compare", "face_clinic"}) {
    auto* action = window->findChild<QAction*>(QString::fromLatin1(name));
    REQUIRE(action);
    action->trigger();
  }
  const QWidgetList inside = window->findChildren<QWidget*>();
  CHECK(inside.size() > 100);
  bool lookGone = false;
  int early = 0, late = 0;
  QObject::connect(window->look(), &QObject::destroyed, qApp, [&] { lookGone = true; });
  for (const QWidget* widget : inside) {
    QObject::connect(widget, &QObject::destroyed, qApp, [&] { ++(lookGone ? late : early); });
  }
  window.reset();
  CHECK(lookGone);
  CHECK(late == 0);
  CHECK(early == inside.size());
}

}  // namespace grainwise::ui
