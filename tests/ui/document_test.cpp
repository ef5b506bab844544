// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QUndoStack>
#include <csignal>
#include <sys/resource.h>
#include <unistd.h>

#include "tests/support/sample_rig.h"
#include "tests/support/ui_support.h"
#include "ui/document/rig_document.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

using test::bytes;
using test::write;

Rig named(const char* name) {
  Rig rig = test::sampleRig("01-plain-winter");
  rig.name = name;
  return rig;
}

struct DocumentFixture : test::UiFixture {
  DocumentFixture() { document.startFrom(named("a")); }
  std::string name() const { return document.rig().name; }
  RigDocument document;
};

/// No file of this process may grow beyond `bytes` while one of these lives: a full disk.
class FullDisk {
 public:
  explicit FullDisk(rlim_t bytes) : m_signal(std::signal(SIGXFSZ, SIG_IGN)) {
    getrlimit(RLIMIT_FSIZE, &m_before);
    rlimit now = m_before;
    now.rlim_cur = bytes;
    REQUIRE(setrlimit(RLIMIT_FSIZE, &now) == 0);
  }
  ~FullDisk() {
    setrlimit(RLIMIT_FSIZE, &m_before);
    std::signal(SIGXFSZ, m_signal);
  }

 private:
  rlimit m_before{};
  void (*m_signal)(int);
};

/// Takes the right to write everywhere from a process that runs as root while one of these lives.
class NotRoot {
 public:
  NotRoot() {
    constexpr uid_t kNobody = 65534;
    if (geteuid() == 0) m_was = seteuid(kNobody) == 0;
  }
  ~NotRoot() {
    if (m_was && seteuid(0) != 0) std::abort();
  }

 private:
  bool m_was = false;
};

Rig longRig() {
  Rig rig = named("long");
  rig.notes = std::string(4000, 'n');
  const Part tip = rig.parts[2];
  rig.parts.insert(rig.parts.begin() + 2, 40, tip);
  for (Part& part : rig.parts) {
    if (!part.fly) part.sections.resize(20, part.sections.front());
  }
  return rig;
}

}  // namespace

TEST_CASE_METHOD(DocumentFixture, "undo and redo swap the rig before and the rig after a step") {
  document.apply(QStringLiteral("Rename"), named("b"));
  CHECK(name() == "b");
  CHECK(document.undoStack()->undoText() == QStringLiteral("Rename"));
  document.undoStack()->undo();
  CHECK(name() == "a");
  document.undoStack()->redo();
  CHECK(name() == "b");
}

TEST_CASE_METHOD(DocumentFixture, "a step that changes nothing leaves no trace on the stack") {
  QSignalSpy changed(&document, &RigDocument::rigChanged);
  document.apply(QStringLiteral("Rename"), named("a"));
  CHECK(document.undoStack()->count() == 0);
  CHECK(changed.isEmpty());
}

TEST_CASE_METHOD(DocumentFixture, "steps of one gesture are one step back, others stay apart") {
  const QString slider = QStringLiteral("slider");
  document.apply(QStringLiteral("Length"), named("b"), slider);
  document.apply(QStringLiteral("Length"), named("c"), slider);
  document.apply(QStringLiteral("Length"), named("d"), slider);
  CHECK(document.undoStack()->count() == 1);
  document.apply(QStringLiteral("Mass"), named("e"), QStringLiteral("other slider"));
  document.apply(QStringLiteral("Rename"), named("f"));
  document.apply(QStringLiteral("Rename"), named("g"));
  CHECK(document.undoStack()->count() == 4);
  document.undoStack()->setIndex(1);
  CHECK(name() == "d");
  document.undoStack()->undo();
  CHECK(name() == "a");
}

TEST_CASE_METHOD(DocumentFixture, "a gesture that ends where it began vanishes from the stack") {
  const QString slider = QStringLiteral("slider");
  document.apply(QStringLiteral("Length"), named("b"), slider);
  document.apply(QStringLiteral("Length"), named("a"), slider);
  CHECK(document.undoStack()->count() == 0);
  CHECK(name() == "a");
  CHECK_FALSE(document.isModified());
}

TEST_CASE_METHOD(DocumentFixture, "a gesture does not reach back over a save") {
  QTemporaryDir folder;
  const QString slider = QStringLiteral("slider");
  document.apply(QStringLiteral("Length"), named("b"), slider);
  REQUIRE(document.saveAs(folder.filePath(QStringLiteral("r.rig.json"))).empty());
  document.apply(QStringLiteral("Length"), named("c"), slider);
  CHECK(document.undoStack()->count() == 2);
  document.undoStack()->undo();
  CHECK(name() == "b");
  CHECK_FALSE(document.isModified());
}

TEST_CASE_METHOD(DocumentFixture, "a preview is shown but is neither the rig nor a step") {
  QSignalSpy changed(&document, &RigDocument::rigChanged);
  document.setPreview(named("p"));
  CHECK(document.shown()->name == "p");
  CHECK(name() == "a");
  CHECK(document.undoStack()->count() == 0);
  CHECK_FALSE(document.isModified());
  document.setPreview(named("p"));
  CHECK(changed.count() == 1);
  document.setPreview(std::nullopt);
  CHECK(document.shown()->name == "a");
  CHECK_FALSE(document.previewing());
  CHECK(changed.count() == 2);
}

TEST_CASE_METHOD(DocumentFixture, "whatever changes the rig ends a preview") {
  document.setPreview(named("p"));
  document.apply(QStringLiteral("Drop"), named("p"));
  CHECK_FALSE(document.previewing());
  document.setPreview(named("q"));
  document.undoStack()->undo();
  CHECK_FALSE(document.previewing());
  CHECK(document.shown()->name == "a");
  document.setPreview(named("q"));
  document.apply(QStringLiteral("Drop"), named("a"));
  CHECK(document.shown()->name == "a");
  document.setPreview(named("q"));
  document.startFrom(named("z"));
  CHECK(document.shown()->name == "z");
}

TEST_CASE_METHOD(DocumentFixture, "only the rig is saved, never what is being tried") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("r.rig.json"));
  document.setPreview(named("p"));
  REQUIRE(document.saveAs(path).empty());
  RigDocument other;
  REQUIRE(other.open(path).empty());
  CHECK(other.rig().name == "a");
}

TEST_CASE_METHOD(DocumentFixture, "a file saved, opened and saved again is the same, byte for byte") {
  const QString from = QString::fromStdString(test::samplePath("02-slot"));
  QTemporaryDir folder;
  const QString first = folder.filePath(QStringLiteral("first.rig.json"));
  const QString second = folder.filePath(QStringLiteral("second.rig.json"));
  QSignalSpy file(&document, &RigDocument::fileChanged);
  REQUIRE(document.open(from).empty());
  CHECK(document.path() == from);
  CHECK_FALSE(file.isEmpty());
  REQUIRE(document.saveAs(first).empty());
  CHECK(document.path() == first);
  REQUIRE(document.open(first).empty());
  CHECK(document.rig() == test::sampleRig("02-slot"));
  REQUIRE(document.saveAs(second).empty());
  CHECK(bytes(second) == bytes(first));
}

TEST_CASE_METHOD(DocumentFixture, "opening starts a new stack and a clean mark") {
  document.apply(QStringLiteral("Rename"), named("b"));
  REQUIRE(document.open(QString::fromStdString(test::samplePath("02-slot"))).empty());
  CHECK(document.undoStack()->count() == 0);
  CHECK_FALSE(document.isModified());
}

TEST_CASE_METHOD(DocumentFixture, "a file that is at fault leaves everything as it was") {
  QTemporaryDir folder;
  const QString bad = folder.filePath(QStringLiteral("bad.rig.json"));
  write(bad, "{ \"format\": \"grainwise-rig\", \"version\": 1, \"name\": 3,\n \"parts\": 4 }\n");
  document.apply(QStringLiteral("Rename"), named("b"));
  QSignalSpy changed(&document, &RigDocument::rigChanged);
  const Problems problems = document.open(bad);
  REQUIRE(problems.size() == 2);
  CHECK(problems[0].pointer == "/name");
  CHECK(problems[1].line == 2);
  CHECK_FALSE(document.open(folder.filePath(QStringLiteral("none.rig.json"))).empty());
  CHECK(name() == "b");
  CHECK(document.path().isEmpty());
  CHECK(document.undoStack()->count() == 1);
  CHECK(changed.isEmpty());
}

TEST_CASE_METHOD(DocumentFixture, "the unsaved mark follows saving, editing, undo and redo") {
  QTemporaryDir folder;
  document.apply(QStringLiteral("Rename"), named("b"));
  CHECK(document.isModified());
  REQUIRE(document.saveAs(folder.filePath(QStringLiteral("r.rig.json"))).empty());
  CHECK_FALSE(document.isModified());
  QSignalSpy file(&document, &RigDocument::fileChanged);
  document.undoStack()->undo();
  CHECK(document.isModified());
  document.undoStack()->redo();
  CHECK_FALSE(document.isModified());
  CHECK(file.count() == 2);
}

TEST_CASE_METHOD(DocumentFixture, "a save to where nothing can be written says so and writes nothing") {
  QTemporaryDir folder;
  const QString plain = folder.filePath(QStringLiteral("plain"));
  write(plain, "x");
  for (const QString& path :
       {folder.filePath(QStringLiteral("missing/r.rig.json")), plain + QStringLiteral("/r.rig.json"),
        folder.path(), QStringLiteral("/dev/null")}) {
    INFO(path.toStdString());
    const Problems problems = document.saveAs(path);
    REQUIRE(problems.size() == 1);
    CHECK(problems[0].file == path.toStdString());
    CHECK(QString::fromStdString(problems[0].what.text()).startsWith(QStringLiteral("not saved: ")));
    CHECK_FALSE(problems[0].fix.empty());
    CHECK(document.path().isEmpty());
  }
  CHECK(bytes(plain) == "x");
  CHECK(QDir(folder.path()).entryList(QDir::Files) == QStringList{QStringLiteral("plain")});
}

TEST_CASE_METHOD(DocumentFixture, "a file that may not be written is kept and the save says so") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("r.rig.json"));
  write(path, "old");
  REQUIRE(QFile::setPermissions(path, QFile::ReadOwner | QFile::ReadOther));
  REQUIRE(QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::ExeOwner |
                                                   QFile::ReadOther | QFile::ExeOther));
  Problems problems;
  {
    const NotRoot nobody;
    problems = document.saveAs(path);
  }
  QFile::setPermissions(folder.path(), QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner);
  REQUIRE(problems.size() == 1);
  CHECK(QString::fromStdString(problems[0].fix.text()).contains(QStringLiteral("kept")));
  CHECK(bytes(path) == "old");
}

TEST_CASE_METHOD(DocumentFixture, "a link is written through, and keeps being a link") {
  QTemporaryDir folder;
  const QString target = folder.filePath(QStringLiteral("real.rig.json"));
  const QString link = folder.filePath(QStringLiteral("link.rig.json"));
  write(target, "old");
  REQUIRE(QFile::link(target, link));
  REQUIRE(document.saveAs(link).empty());
  CHECK(QFileInfo(link).isSymLink());
  CHECK(bytes(target).contains("\"grainwise-rig\""));
}

TEST_CASE_METHOD(DocumentFixture, "on a full disk the old file is kept whole and the save says so") {
  QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("r.rig.json"));
  REQUIRE(document.saveAs(path).empty());
  const QByteArray before = bytes(path);
  const QByteArray small = QByteArray::fromStdString(writeRig(named("b")));
  const QByteArray large = QByteArray::fromStdString(writeRig(longRig()));
  REQUIRE(large.size() > 64 * 1024);  // beyond any buffer: one short write
  for (const Rig& rig : {named("b"), longRig()}) {
    for (const rlim_t room : {rlim_t(0), rlim_t(100), rlim_t(1000), rlim_t(40000)}) {
      document.apply(QStringLiteral("Edit"), rig);
      const rlim_t size = rlim_t(QByteArray::fromStdString(writeRig(rig)).size());
      if (room >= size) continue;
      INFO("room for " << room << " of " << size);
      Problems problems;
      {
        const FullDisk full(room);
        problems = document.saveAs(path);
      }
      REQUIRE(problems.size() == 1);
      CHECK(QString::fromStdString(problems[0].fix.text()).contains(QStringLiteral("kept")));
      CHECK(bytes(path) == before);
      CHECK(document.isModified());
      CHECK(QDir(folder.path()).entryList(QDir::Files | QDir::Hidden).size() == 1);
    }
  }
  REQUIRE(small.size() > 1000);  // so that each size of rig met a full disk
  REQUIRE(document.saveAs(path).empty());
  CHECK(bytes(path) == large);
}

TEST_CASE_METHOD(DocumentFixture, "one edit is analysed once, several in one turn are too") {
  AnalysisFeed feed(&document);
  REQUIRE(feed.runs() == 1);
  CHECK(feed.rig()->name == "a");
  QSignalSpy changed(&feed, &AnalysisFeed::analysisChanged);
  document.apply(QStringLiteral("Rename"), named("b"));
  CHECK(feed.runs() == 1);
  QCoreApplication::processEvents();
  CHECK(feed.runs() == 2);
  document.apply(QStringLiteral("Rename"), named("c"));
  document.undoStack()->undo();
  document.setPreview(named("p"));
  QCoreApplication::processEvents();
  CHECK(feed.runs() == 3);
  CHECK(changed.count() == 2);
  CHECK(feed.rig()->name == "p");
  QCoreApplication::processEvents();
  CHECK(feed.runs() == 3);
}

TEST_CASE_METHOD(DocumentFixture, "the feed's analysis is that of its rig under its conditions") {
  AnalysisFeed feed(&document);
  CHECK(feed.analysis().totals.mass == analyse(document.rig()).totals.mass);
  CHECK_FALSE(feed.analysis().stroke);
  Conditions conditions;
  conditions.strokeReference = strokeBasis(document.rig(), feed.analysis().profile);
  feed.setConditions(conditions);
  QCoreApplication::processEvents();
  CHECK(feed.runs() == 2);
  REQUIRE(feed.analysis().stroke);
  CHECK(feed.analysis().stroke->verdict == StrokeVerdict::same);
}

TEST_CASE_METHOD(test::UiFixture, "a feed outlives its document") {
  auto document = std::make_unique<RigDocument>();
  AnalysisFeed feed(document.get());
  document->apply(QStringLiteral("Rename"), named("b"));
  document.reset();
  QCoreApplication::processEvents();
  CHECK(feed.runs() == 1);
}

}  // namespace grainwise::ui
