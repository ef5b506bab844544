// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QLabel>
#include <QLockFile>
#include <QProcess>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include "core/io/rig_file.h"
#include "tests/support/sample_rig.h"
#include "tests/support/ui_support.h"
#include "ui/compare/compare_face.h"
#include "ui/compare/side.h"
#include "ui/document/autosave.h"
#include "ui/document/rig_document.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/compare_host.h"
#include "ui/window/faces.h"
#include "ui/panels/drawer.h"
#include "ui/window/main_window.h"
#include "ui/window/notice_bar.h"
#include "ui/theme/pill_button.h"

namespace grainwise::ui {
namespace {

using test::bytes;
using test::write;

using OnDisk = RigDocument::OnDisk;

Rig named(const char* name) {
  Rig rig = test::sampleRig("01-plain-winter");
  rig.name = name;
  return rig;
}

QByteArray textOf(const char* name) {
  return QByteArray::fromStdString(writeRig(named(name)));
}

/// As most programs save: whole, in the place of the old one.
void replace(const QString& path, const QByteArray& text) {
  write(path + QStringLiteral("~"), text);
  QFile::remove(path);
  REQUIRE(QFile::rename(path + QStringLiteral("~"), path));
}

struct SavingFixture : test::UiFixture {
  SavingFixture() {
    document.startFrom(named("a"));
    REQUIRE(document.saveAs(path).empty());
  }
  void edit(RigDocument& of, const char* name) { of.apply(QStringLiteral("Rename"), named(name)); }
  QString recovery() const { return folder.filePath(QStringLiteral("recovery")); }
  QStringList copies() const {
    return QDir(recovery()).entryList({QStringLiteral("*.rig.json")}, QDir::Files);
  }

  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("r.rig.json"));
  RigDocument document;
};

/// A window whose copies of unsaved work lie in the test's own data folder.
struct WindowFixture : test::UiFixture {
  WindowFixture() {
    QSettings().clear();
    QDir(recoveryFolder()).removeRecursively();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    write(path, textOf("a"));
    REQUIRE(window->openFile(path));
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  ~WindowFixture() {
    window.reset();
    QDir(recoveryFolder()).removeRecursively();
  }
  RigDocument& document() { return *window->document(); }
  QString told() { return window->notice()->told(); }
  void answer(const char* button) {
    auto* pill = window->notice()->findChild<PillButton*>(QLatin1String(button));
    REQUIRE(pill != nullptr);
    pill->click();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
  }
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("r.rig.json"));
  std::unique_ptr<MainWindow> window;
};

/// Its copy as a program leaves it that was ended from outside, with a lock that nobody holds; where that copy is.
QString leaveCopy(const Autosave& autosave) {
  REQUIRE_FALSE(autosave.copy().isEmpty());
  const QString base = autosave.copy().chopped(9);
  for (const char* ending : {".rig.json", ".from.json"}) {
    const QString left = base + QStringLiteral("-left") + QLatin1String(ending);
    REQUIRE(QFile::copy(base + QLatin1String(ending), left));
  }
  return base + QStringLiteral("-left.rig.json");
}

/// The same of work on a file, or on none.
void leaveWork(const QString& folder, const QString& from, const char* name) {
  RigDocument document;
  if (from.isEmpty()) document.startFrom(named("a"));
  if (!from.isEmpty()) REQUIRE(document.open(from).empty());
  Autosave autosave(&document, folder);
  document.apply(QStringLiteral("Rename"), named(name));
  autosave.keep();
  (void)leaveCopy(autosave);
}

}  // namespace

TEST_CASE_METHOD(SavingFixture,
                 "what another program writes into the file is noticed, however it writes") {
  QSignalSpy changed(&document, &RigDocument::diskChanged);
  SECTION("into the file") {
    write(path, textOf("b"));
  }
  SECTION("in its place") {
    replace(path, textOf("b"));
  }
  SECTION("no rig at all") {
    write(path, "x");
  }
  REQUIRE(QTest::qWaitFor([&] { return !changed.isEmpty(); }, 3000));
  CHECK(document.onDisk() == OnDisk::changed);
  CHECK(document.rig().name == "a");
  CHECK_FALSE(document.isModified());
}

TEST_CASE_METHOD(SavingFixture, "a file that is replaced twice is noticed twice") {
  QSignalSpy changed(&document, &RigDocument::diskChanged);
  replace(path, textOf("b"));
  REQUIRE(QTest::qWaitFor([&] { return changed.count() == 1; }, 3000));
  replace(path, textOf("c"));
  CHECK(QTest::qWaitFor([&] { return changed.count() == 2; }, 3000));
}

TEST_CASE_METHOD(SavingFixture, "a file taken away is noticed, and one brought back too") {
  QSignalSpy changed(&document, &RigDocument::diskChanged);
  const QByteArray before = bytes(path);
  REQUIRE(QFile::remove(path));
  REQUIRE(QTest::qWaitFor([&] { return changed.count() == 1; }, 3000));
  CHECK(document.onDisk() == OnDisk::gone);
  write(path, before);
  REQUIRE(QTest::qWaitFor([&] { return changed.count() == 2; }, 3000));
  CHECK(document.onDisk() == OnDisk::same);
}

TEST_CASE_METHOD(SavingFixture, "our own saves and a touch without a change are no news") {
  QSignalSpy changed(&document, &RigDocument::diskChanged);
  edit(document, "b");
  REQUIRE(document.saveAs(path).empty());
  write(path, bytes(path));
  write(folder.filePath(QStringLiteral("other")), "x");
  QTest::qWait(500);
  CHECK(changed.isEmpty());
}

TEST_CASE_METHOD(SavingFixture,
                 "a save over what another program wrote is refused once, then done") {
  replace(path, textOf("theirs"));
  edit(document, "ours");
  const Problems problems = document.saveAs(path);
  REQUIRE(problems.size() == 1);
  CHECK(QString::fromStdString(problems[0].what.text()).contains(QStringLiteral("another program")));
  CHECK(bytes(path) == textOf("theirs"));
  CHECK(document.isModified());
  SECTION("again") {
    REQUIRE(document.saveAs(path).empty());
    CHECK(bytes(path) == textOf("ours"));
  }
  SECTION("but not when it was changed once more") {
    replace(path, textOf("theirs again"));
    CHECK(document.saveAs(path).size() == 1);
    CHECK(bytes(path) == textOf("theirs again"));
  }
  SECTION("by another name of the same file") {
    const QString around = folder.path() + QStringLiteral("/./r.rig.json");
    REQUIRE(document.saveAs(around).empty());
    CHECK(bytes(path) == textOf("ours"));
  }
  SECTION("and elsewhere at once") {
    REQUIRE(document.saveAs(folder.filePath(QStringLiteral("e.rig.json"))).empty());
    CHECK(bytes(path) == textOf("theirs"));
  }
}

TEST_CASE_METHOD(SavingFixture,
                 "of two windows on one file the second to save is told of the first") {
  RigDocument other;
  REQUIRE(other.open(path).empty());
  edit(document, "first");
  edit(other, "second");
  REQUIRE(document.saveAs(path).empty());
  CHECK(other.saveAs(path).size() == 1);
  CHECK(bytes(path) == textOf("first"));
  REQUIRE(other.saveAs(path).empty());
  CHECK(document.onDisk() == OnDisk::changed);
}

TEST_CASE_METHOD(SavingFixture, "what could not be opened again is not written") {
  document.apply(QStringLiteral("Empty the line"), Rig{});
  const Problems problems = document.saveAs(path);
  REQUIRE(problems.size() == 1);
  CHECK_FALSE(problems[0].fix.empty());
  CHECK(bytes(path) == textOf("a"));
}

TEST_CASE_METHOD(SavingFixture, "a folder that has vanished stops a save and loses nothing") {
  edit(document, "b");
  REQUIRE(QDir(folder.path()).removeRecursively());
  REQUIRE(document.saveAs(path).size() == 1);
  CHECK(document.isModified());
  CHECK(document.rig().name == "b");
  REQUIRE(QDir().mkpath(folder.path()));
  CHECK(document.saveAs(path).empty());
}

TEST_CASE_METHOD(SavingFixture, "unsaved work is copied a moment after an edit and only then") {
  Autosave autosave(&document, recovery());
  autosave.setPace(50);
  QSignalSpy kept(&autosave, &Autosave::kept);
  QTest::qWait(150);
  CHECK(kept.isEmpty());
  CHECK_FALSE(QFileInfo::exists(recovery()));
  edit(document, "b");
  REQUIRE(QTest::qWaitFor([&] { return kept.count() == 1; }, 3000));
  CHECK(bytes(autosave.copy()) == textOf("b"));
  CHECK(bytes(path) == textOf("a"));
  QTest::qWait(150);
  CHECK(kept.count() == 1);  // nothing new, nothing written
}

TEST_CASE_METHOD(SavingFixture, "edits in one go do not put the copy off") {
  Autosave autosave(&document, recovery());
  autosave.setPace(200);
  QSignalSpy kept(&autosave, &Autosave::kept);
  for (int i = 0; i < 20 && kept.isEmpty(); ++i) {
    edit(document, i % 2 ? "b" : "c");
    QTest::qWait(40);
  }
  CHECK(kept.count() == 1);
}

TEST_CASE_METHOD(SavingFixture, "what is only being tried is not copied") {
  Autosave autosave(&document, recovery());
  autosave.setPace(10);
  edit(document, "b");
  document.setPreview(named("tried"));
  REQUIRE(QTest::qWaitFor([&] { return !autosave.copy().isEmpty(); }, 3000));
  CHECK(bytes(autosave.copy()) == textOf("b"));
}

TEST_CASE_METHOD(SavingFixture,
                 "the copy goes when the work is saved, undone, let go of or closed") {
  auto autosave = std::make_unique<Autosave>(&document, recovery());
  edit(document, "b");
  autosave->keep();
  REQUIRE(copies().size() == 1);
  SECTION("saved") {
    REQUIRE(document.saveAs(path).empty());
  }
  SECTION("undone") {
    document.undoStack()->undo();
  }
  SECTION("let go of") {
    document.startFrom(named("z"));
  }
  SECTION("closed") {
    autosave.reset();
  }
  CHECK(QDir(recovery()).entryList(QDir::Files | QDir::Hidden).isEmpty());
}

TEST_CASE_METHOD(SavingFixture, "copies are for their owner's eyes") {
  Autosave autosave(&document, recovery());
  edit(document, "b");
  autosave.keep();
  const auto others = QFile::ReadGroup | QFile::WriteGroup | QFile::ExeGroup | QFile::ReadOther |
                      QFile::WriteOther | QFile::ExeOther;
  CHECK_FALSE(QFile::permissions(recovery()) & others);
  CHECK_FALSE(QFile::permissions(autosave.copy()) & others);
}

TEST_CASE_METHOD(SavingFixture, "a copy that cannot be written is told once") {
  write(recovery(), "in the way");
  Autosave autosave(&document, recovery());
  QSignalSpy failed(&autosave, &Autosave::failed);
  edit(document, "b");
  autosave.keep();
  autosave.keep();
  CHECK(failed.count() == 1);
  CHECK(bytes(recovery()) == "in the way");
}

TEST_CASE_METHOD(SavingFixture,
                 "work of a program that lives is not offered, work that was left is") {
  {
    Autosave autosave(&document, recovery());
    edit(document, "b");
    autosave.keep();
    CHECK_FALSE(Recovery(recovery()).next());
  }
  leaveWork(recovery(), path, "left");
  Recovery found(recovery());
  const auto left = found.next();
  REQUIRE(left);
  CHECK(left->rig.name == "left");
  CHECK(left->path == path);
  CHECK(left->when.secsTo(QDateTime::currentDateTime()) < 60);
  CHECK_FALSE(Recovery(recovery()).next());  // offered elsewhere
  CHECK_FALSE(found.next());
  CHECK(copies().size() == 1);  // not opened, not thrown away: still there
  Recovery again(recovery());
  REQUIRE(again.next());
  again.discard();
  CHECK(QDir(recovery()).entryList(QDir::Files | QDir::Hidden).isEmpty());
}

TEST_CASE_METHOD(SavingFixture, "work on a line that has no part yet is offered again, too") {
  RigDocument left;
  left.startFrom(Rig{});
  Autosave autosave(&left, recovery());
  Rig begun;
  begun.name = "only a name and notes";
  begun.notes = "what the guide said";
  left.apply(QStringLiteral("Notes"), begun);
  autosave.keep();
  const QString copy = leaveCopy(autosave);
  const auto found = Recovery(recovery()).next();
  REQUIRE(found);
  CHECK(found->rig == begun);
  Rig tooMany = begun;
  tooMany.parts.assign(65, Part{});
  write(copy, QByteArray::fromStdString(writeRig(tooMany)));
  CHECK_FALSE(Recovery(recovery()).next());  // the other rules stand
}

TEST_CASE_METHOD(SavingFixture,
                 "work taken up again is unsaved work on its file, which stays as it was") {
  RigDocument taken;
  taken.recover(named("left"), path, document.seen());
  CHECK(taken.isModified());
  CHECK(taken.path() == path);
  CHECK(taken.onDisk() == OnDisk::same);
  CHECK(bytes(path) == textOf("a"));
  REQUIRE(taken.saveAs(path).empty());
  CHECK(bytes(path) == textOf("left"));
  RigDocument late;
  late.recover(named("left"), path, document.seen());  // the file has gone on since
  CHECK(late.onDisk() == OnDisk::changed);
  CHECK(late.saveAs(path).size() == 1);
}

TEST_CASE_METHOD(WindowFixture, "the second rig of Compare is kept as well while it is unsaved") {
  window->faces()->open(QStringLiteral("compare"));
  QTest::qWait(20);
  RigDocument* other = window->compare()->face()->side(Side::Letter::b)->document();
  REQUIRE(other != window->document());
  other->apply(QStringLiteral("Rename"), named("of B"));
  const auto autosaves = window->compare()->face()->findChildren<Autosave*>();
  REQUIRE(autosaves.size() == 1);
  autosaves[0]->keep();
  CHECK(bytes(autosaves[0]->copy()) == textOf("of B"));
}

TEST_CASE_METHOD(WindowFixture,
                 "left work is offered by name in a line, and opens as unsaved work") {
  leaveWork(recoveryFolder(), path, "<b>Left</b> & found");
  window->offerRecovery();
  CHECK(told().contains(QStringLiteral("<b>Left</b> & found")));
  answer("notice0");
  CHECK(document().rig().name == "<b>Left</b> & found");
  CHECK(document().isModified());
  CHECK(document().path() == path);
  CHECK(bytes(path) == textOf("a"));
  CHECK(told().isEmpty());
  // Its copy is this window's own now, and goes with the work.
  CHECK(QDir(recoveryFolder()).entryList({QStringLiteral("*.rig.json")}).size() == 1);
  window->actionSet()->save->trigger();
  CHECK(QDir(recoveryFolder()).entryList(QDir::Files).isEmpty());
}

TEST_CASE_METHOD(WindowFixture, "left work is thrown away when asked, and put off when not") {
  leaveWork(recoveryFolder(), {}, "one");
  QTest::qWait(20);
  leaveWork(recoveryFolder(), {}, "two");
  window->offerRecovery();
  CHECK(told().contains(QStringLiteral("two")));
  answer("notice1");
  CHECK(told().contains(QStringLiteral("one")));
  answer("notice2");
  CHECK(told().isEmpty());
  CHECK(QDir(recoveryFolder()).entryList({QStringLiteral("*.rig.json")}).size() == 1);
}

TEST_CASE_METHOD(WindowFixture,
                 "a change by another program is told in a line and taken in when asked") {
  replace(path, textOf("theirs"));
  REQUIRE(QTest::qWaitFor([&] { return told().contains(QStringLiteral("r.rig.json")); }, 3000));
  CHECK(document().rig().name == "a");
  answer("notice0");
  CHECK(document().rig().name == "theirs");
  CHECK(told().isEmpty());
}

TEST_CASE_METHOD(WindowFixture, "a file that has gone is told and is put back by saving") {
  REQUIRE(QFile::remove(path));
  REQUIRE(QTest::qWaitFor([&] { return !told().isEmpty(); }, 3000));
  answer("notice0");
  CHECK(bytes(path) == textOf("a"));
  CHECK(told().isEmpty());
}

TEST_CASE_METHOD(WindowFixture,
                 "an ending put on by us never replaces a file that nobody was asked about") {
  const QString plain = folder.filePath(QStringLiteral("winter 1.5"));
  window->askSavePath = [&] { return plain; };
  window->actionSet()->saveAs->trigger();
  const QString whole = plain + QStringLiteral(".rig.json");
  CHECK(bytes(whole) == textOf("a"));
  document().apply(QStringLiteral("Rename"), named("b"));
  window->actionSet()->saveAs->trigger();
  CHECK(bytes(whole) == textOf("a"));
  CHECK(window->bench()->drawer()->said().contains(QStringLiteral("winter 1.5.rig.json")));
}

}  // namespace grainwise::ui
