// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/make_bench.h"

#include "tests/support/pages.h"
#include "tests/support/random_rig.h"

namespace grainwise::ui {

TEST_CASE_METHOD(MakeBench, "make: the cut sheet draws the rig's cuts from the bench's spools") {
  open("makeCut");
  CHECK(words("cutNotes").contains(QLatin1String("No spools yet")));
  benchSpools();
  const CutPicture& picture = find<CutDrawing>("cutDrawing")->picture();
  REQUIRE(picture.spools.size() == 3);
  CHECK(picture.spools[0].cuts[0].mark == QLatin1String("10 ft 5 in"));
  CHECK(picture.spools[0].left == QLatin1String("1 ft 7 in left"));  // off the 12 ft end
  CHECK(picture.labels.size() == 3);
  look.setUnits({true, true, true});
  CHECK(find<CutDrawing>("cutDrawing")->picture().spools[0].cuts[0].mark ==
        QLatin1String("3.175 m"));
}

TEST_CASE_METHOD(MakeBench, "make: what the spools lack is said, and cutting takes it off them") {
  open("makeCut");
  benchSpools();
  auto* page = find<CutPage>("makeCut");
  page->askAddPath = [] { return kFamily; };
  click("cutAdd");
  CHECK(words("cutNotes").contains(QLatin1String("1 ft 3 1/2 in short")));
  CHECK(find<CutDrawing>("cutDrawing")->picture().labels.size() == 7);  // 3/4 sinking cannot be cut
  click("cutForget");
  CHECK(find<CutDrawing>("cutDrawing")->picture().labels.size() == 3);
  click("cutDone");
  CHECK(store->spools().spools[3].left.value() == Approx(12 - 125.0 / 12));
  store->undo();
  CHECK(store->spools().spools[3].left == Feet(12));
  page->askAddPath = [] { return kSpools; };
  click("cutAdd");
  CHECK(find<CutDrawing>("cutDrawing")->picture().labels.size() == 3);
}

TEST_CASE_METHOD(MakeBench, "make: sheet and labels are written as a PDF that can be read") {
  open("makeCut");
  benchSpools();
  const QString path = folder.filePath(QStringLiteral("sheet.pdf"));
  find<CutPage>("makeCut")->askPdfPath = [&] { return path; };
  click("cutPdf");
  QFile file(path);
  REQUIRE(file.open(QIODevice::ReadOnly));
  CHECK(file.read(5) == QByteArray("%PDF-"));
  const QString tool = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
  REQUIRE_FALSE(tool.isEmpty());
  QProcess reader;
  reader.start(tool, {QStringLiteral("-layout"), path, QStringLiteral("-")});
  REQUIRE(reader.waitForFinished(20000));
  const QString text = QString::fromUtf8(reader.readAllStandardOutput());
  CHECK(text.contains(QLatin1String("10 ft 5 in")));
  CHECK(text.contains(QLatin1String("Labels")));
  // Each label's figures in words: the day, the grains, a foot, what sinks; no name is shortened.
  const QString day = QLocale().toString(QDate::currentDate(), QLocale::ShortFormat);
  CHECK(text.count(day) == 4);  // the sheet and its three labels
  CHECK(text.contains(QLatin1String("10 ft, 11 gr/ft, 115 gr")));
  CHECK(text.contains(QLatin1String("all of it sinks")));
  CHECK_FALSE(text.contains(QChar(0x2026)));
  find<CutPage>("makeCut")->askPdfPath = [&] { return folder.path(); };
  click("cutPdf");  // a folder cannot be written
  CHECK(words("cutSaid").contains(QLatin1String("Not written")));
}

TEST_CASE_METHOD(MakeBench, "make: a label holds its strip symbol, length, sink split, grains a foot, grains, day") {
  const auto family = loadShelf(kFamily.toStdString());
  REQUIRE(family);
  Part named = family->parts[3];
  named.name = "The long winter one with three quarters of it sinking, for the tail of the Chapel Hole";
  Spools plenty = *loadSpools(kSpools.toStdString());
  for (Spool& spool : plenty.spools) spool.left = Feet(100);
  const CutPicture picture =
      pictureOf(cutSheet({{named, "", std::nullopt}}, plenty), plenty, {}, QDate(2026, 3, 5));
  REQUIRE(picture.labels.size() == 1);
  const auto& label = picture.labels.front();
  CHECK(label.symbol.pieces.size() == 2);
  CHECK_FALSE(label.symbol.sinksAt(0.1));
  CHECK(label.symbol.sinksAt(0.5));
  CHECK(label.figures == QLatin1String("10 ft, 11 gr/ft, 116 gr"));
  CHECK(label.sinks == QLatin1String("7 ft 6 in of it sink"));
  CHECK(label.made == QLocale().toString(QDate(2026, 3, 5), QLocale::ShortFormat));
  // A long name makes the label taller, and the symbol leaves its mark on paper.
  PictureStyle style;
  style.colours = paperColours();
  auto brief = label;
  brief.name = QStringLiteral("tip");
  const QRectF box(0, 0, kLabelWidth * style.text, 0);
  CHECK(paintLabel(nullptr, box, label, style) > paintLabel(nullptr, box, brief, style) + style.text);
  const auto ink = [&](const CutPicture::Label& of) {
    QImage image(300, 220, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter p(&image);
    paintLabel(&p, box, of, style);
    p.end();
    int dark = 0;
    for (int y = 0; y < image.height(); ++y) {
      for (int x = 0; x < image.width(); ++x) dark += qGray(image.pixel(x, y)) < 200 ? 1 : 0;
    }
    return dark;
  };
  auto bare = label;
  bare.symbol = {};
  CHECK(ink(label) > ink(bare) + 100);
}

TEST_CASE_METHOD(MakeBench, "make: loops and knots are those of this bench, on every page and next time") {
  open("makeCut");
  benchSpools();
  click("cutHabits");
  type("loopLength", "4");
  CHECK(find<CutDrawing>("cutDrawing")->picture().spools[0].cuts[0].mark == QLatin1String("10 ft 8 in"));
  type("loopLength", "40");  // no loop takes that
  CHECK(store->rules().weldedLoop == Inches(4));
  auto* kind = find<QComboBox>("loopKind");
  kind->setCurrentIndex(int(LoopKind::none));
  Q_EMIT kind->activated(int(LoopKind::none));
  CHECK(find<CutDrawing>("cutDrawing")->picture().spools[0].cuts[0].mark == QLatin1String("10 ft"));
  CHECK_FALSE(find<QLineEdit>("loopLength")->isEnabled());
  type("knotLength", "6");
  const OwnStore again(Shelf{}, folder.path());
  CHECK(again.rules() == store->rules());
  CHECK(again.rules().lineLoop == LoopKind::none);
  CHECK(again.rules().joiningKnot == Inches(6));
  CHECK(again.rules().weldedLoop == Inches(4));
  open("makeTips");
  find<QComboBox>("divideSpool")->setCurrentIndex(2);
  CHECK(words("divideWords").contains(QLatin1String("3 of 10 ft finished")));
}

TEST_CASE_METHOD(MakeBench, "make: the loops of this bench are put on the line") {
  open("makeCut");
  click("cutHabits");
  type("loopLength", "6");
  click("cutLoops");
  REQUIRE(parts()[2].loops);
  CHECK(parts()[2].loops->rodEnd == Grains(5.5));
  document.undoStack()->undo();
  CHECK_FALSE(parts()[2].loops);
}

TEST_CASE_METHOD(MakeBench, "make: a packed wallet is cut without the open rig, until the rig is wanted again") {
  benchSpools();
  const auto family = loadShelf(kFamily.toStdString());
  panel->cut({family->parts[4], family->parts[4]}, QStringLiteral("The packed wallet"));
  CHECK(panel->task() == QLatin1String("makeCut"));
  const auto* drawing = find<CutDrawing>("cutDrawing");
  CHECK(drawing->picture().labels.size() == 2);
  click("cutPrint");
  CHECK(previewed == QLatin1String("The packed wallet"));
  click("cutForget");
  CHECK(drawing->picture().labels.size() == 3);
  click("cutPrint");
  CHECK(previewed == QString::fromStdString(document.rig().name));
}

TEST_CASE_METHOD(MakeBench, "make: a rig is weighed in with the keyboard alone") {
  panel->weigh();
  auto* page = find<WeighPage>("makeWeigh");
  CHECK(page->current() == 1);  // the head; the running line is not weighed first
  typeHere("520,5");
  enter();
  CHECK(parts()[1].weighed->mass == Grains(520.5));
  CHECK(parts()[1].weighed->on.has_value());
  CHECK(page->current() == 2);
  typeHere("7.4 g");
  CHECK(words("weighLive").contains(QLatin1String("light")) == false);
  enter();
  CHECK(parts()[2].weighed->mass.value() == Approx(114.2).margin(0.01));
  CHECK(check(document.rig()).empty());
  QTest::keyClick(QApplication::focusWidget(), Qt::Key_Up);
  CHECK(page->current() == 2);
  click("weighForget");
  CHECK_FALSE(parts()[2].weighed);
}

TEST_CASE_METHOD(MakeBench, "make: what was typed is of the part that lay on the scale, wherever the line puts it") {
  panel->weigh();
  auto* page = find<WeighPage>("makeWeigh");
  typeHere("520");
  REQUIRE(page->current() == 1);
  Rig rig = document.rig();
  rig.parts.erase(rig.parts.begin());
  document.apply(QStringLiteral("Take the running line off"), rig);
  QTest::qWait(1);
  CHECK(page->current() == 0);
  enter();
  CHECK(parts()[0].kind == PartKind::head);
  CHECK(parts()[0].weighed->mass == Grains(520));
  CHECK_FALSE(parts()[1].weighed);
  // Of one that is gone nothing was weighed.
  typeHere("113");
  REQUIRE(page->current() == 1);
  rig = document.rig();
  rig.parts.erase(rig.parts.begin() + 1);
  document.apply(QStringLiteral("Take the tip off"), rig);
  QTest::qWait(1);
  click("weighEnter");
  for (std::size_t i = 1; i < parts().size(); ++i) CHECK_FALSE(parts()[i].weighed);
}

TEST_CASE_METHOD(MakeBench, "make: which readings a weighing changes is said before it is kept, and comes true") {
  panel->weigh();
  enter();  // the tip
  typeHere("140");
  const QString said = words("weighChanges");
  CHECK(said.contains(QLatin1String("17.8 to 11 becomes 17.8 to 14")));  // 140 gr over 10 ft
  CHECK(said.contains(QLatin1String("21 % becomes 27 %")));               // 140 of 525 gr
  const Rig before = document.rig();
  CHECK(before.parts[2].weighed == std::nullopt);
  enter();
  const Analysis now = analyse(document.rig());
  CHECK(tileWords(Reading::tipShare, document.rig(), now, {}).number == QLatin1String("27 %"));
  CHECK(words("weighChanges").isEmpty());
  panel->weigh();
  find<WeighPage>("makeWeigh");
  document.undoStack()->undo();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(MakeBench, "make: loops that are not stated are told at the weighing, and counted by one undoable step") {
  panel->weigh();
  CHECK_FALSE(find<QPushButton>("weighLoops")->isVisibleTo(panel));  // a head
  enter();
  CHECK(words("weighLive").contains(QLatin1String("meant 110 gr")));
  CHECK(words("weighLive").contains(QLatin1String("loops, 4.6 gr, are not counted")));
  const Rig before = document.rig();
  typeHere("114.6");
  CHECK(words("weighLive").contains(QLatin1String("as it should be with its loops")));
  find<QLineEdit>("weighMass")->selectAll();
  QTest::keyClick(find<QLineEdit>("weighMass"), Qt::Key_Delete);
  click("weighLoops");
  CHECK(parts()[2].loops->rodEnd == Grains(2.3));
  CHECK(words("weighLive").contains(QLatin1String("meant 115 gr")));
  CHECK_FALSE(find<QPushButton>("weighLoops")->isVisibleTo(panel));
  typeHere("114.6");
  CHECK(words("weighLive").contains(QLatin1String("as it should be")));
  document.undoStack()->undo();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(MakeBench, "make: a splice is part of what a float/sink tip is meant to weigh") {
  Rig rig = document.rig();
  rig.parts[2] = test::rigs::withLoops(
      test::rigs::tip({test::rigs::floating(5, 11), test::rigs::sinking(5, 11, 7.5)}), 2.3, 2.3);
  document.startFrom(rig);
  panel->weigh();
  enter();
  CHECK(words("weighLive").contains(QLatin1String("loops 4.6 gr and splice 1.8 gr")));
  BenchRules rules;
  rules.splice = Inches(3);
  store->setRules(rules);
  CHECK(words("weighLive").contains(QLatin1String("splice 5.5 gr")));
}

TEST_CASE_METHOD(MakeBench, "make: a weighing that changes nothing to see says so") {
  panel->weigh();
  enter();
  typeHere("110");
  CHECK(words("weighChanges") == QLatin1String("No reading of the rig changes."));
  typeHere("x");
  CHECK(words("weighChanges").isEmpty());
}

TEST_CASE_METHOD(MakeBench, "make: weighing and undo leave the rig as it was") {
  const Rig before = document.rig();
  panel->weigh();
  typeHere("530");
  enter();
  CHECK(!(document.rig() == before));
  document.undoStack()->undo();
  CHECK(document.rig() == before);
}

TEST_CASE_METHOD(MakeBench, "make: random rigs, weighed part by part and undone, are what they were") {
  constexpr int kRounds = 25;
  test::Random random(20260307);
  int weighed = 0;
  for (int round = 0; round < kRounds; ++round) {
    const Rig rig = test::randomRig(random);
    document.startFrom(rig);
    panel->weigh();
    for (const Part& part : rig.parts) {
      auto* edit = find<QLineEdit>("weighMass");
      edit->setFocus();
      edit->selectAll();
      QTest::keyClicks(edit, QString::number(nominalMass(part).value() * 1.03, 'f', 1));
      enter();
      QTest::keyClick(edit, Qt::Key_Down);
    }
    weighed += document.undoStack()->count();
    REQUIRE(check(document.rig()).empty());
    while (document.undoStack()->canUndo()) document.undoStack()->undo();
    REQUIRE(document.rig() == rig);
  }
  CHECK(weighed > kRounds);
}

TEST_CASE_METHOD(MakeBench, "make: a number that is no mass changes nothing, and a slip is told") {
  const Rig before = document.rig();
  panel->weigh();
  for (const char* junk : {"abc", "-5", "99999", "12 ft"}) {
    typeHere(junk);
    enter();
    CHECK(document.rig() == before);
    panel->weigh();
  }
  typeHere("34");
  CHECK(words("weighLive").contains(QLatin1String("grams?")));
}

TEST_CASE_METHOD(MakeBench, "make: Enter without a number goes on to the next part") {
  panel->weigh();
  enter();
  CHECK(find<WeighPage>("makeWeigh")->current() == 2);
}

TEST_CASE_METHOD(MakeBench, "make: a leader is tied from the spools and put on the line") {
  open("makeLeader");
  CHECK(words("leaderWords").contains(QLatin1String("No nylon")));
  for (const char* idle : {"leaderPlace", "leaderDrawing", "leaderTippet"}) CHECK_FALSE(find<QWidget>(idle)->isVisible());
  click("leaderSpools");
  CHECK(panel->task() == QLatin1String("makeSpools"));
  open("makeLeader");
  benchSpools();
  CHECK(find<QWidget>("leaderDrawing")->isVisible());
  CHECK_FALSE(find<QWidget>("leaderSpools")->isVisible());
  type("leaderLength", "10");
  CHECK(words("leaderWords").contains(QLatin1String("5 pieces, 10 ft")));
  click("leaderPlace");
  REQUIRE(parts().size() == 6);
  CHECK(parts()[3].sections.size() == 4);
  CHECK(parts()[3].length().value() + parts()[4].length().value() == Approx(10));
  CHECK(check(document.rig()).empty());
  document.undoStack()->undo();
  CHECK(parts()[3].sections.size() == 1);
}

TEST_CASE_METHOD(MakeBench, "make: a leader's drawing drags as a part, and Enter places it") {
  open("makeLeader");
  benchSpools();
  find<QComboBox>("leaderLine")->setCurrentIndex(2);
  auto* drawing = find<LeaderDrawing>("leaderDrawing");
  std::optional<PartPayload> carried;
  drawing->runDrag = [&](QDrag* drag) {
    carried = payloadOf(drag->mimeData());
    drag->deleteLater();
    return Qt::CopyAction;
  };
  QTest::mousePress(drawing, Qt::LeftButton, {}, QPoint(40, 40));
  QMouseEvent move(QEvent::MouseMove, QPointF(90, 40), drawing->mapToGlobal(QPointF(90, 40)),
                   Qt::LeftButton, Qt::LeftButton, {});
  QApplication::sendEvent(drawing, &move);
  QTest::mouseRelease(drawing, Qt::LeftButton, {}, QPoint(90, 40));
  REQUIRE(carried);
  CHECK(carried->part.kind == PartKind::leader);
  CHECK(carried->part.length().value() == Approx(4));
  drawing->setFocus();
  QTest::keyClick(drawing, Qt::Key_Return);
  CHECK(parts()[3].length().value() + parts()[4].length().value() == Approx(4));
}

TEST_CASE_METHOD(MakeBench, "make: a leader's drawing has its measure in either unit, and the leader is kept as one part") {
  open("makeLeader");
  benchSpools();
  type("leaderLength", "10");
  auto* drawing = find<LeaderDrawing>("leaderDrawing");
  drawing->grab();
  CHECK(drawing->scale().contains(QLatin1String(" ft; thickness")));
  look.setUnits({true, true, true});
  drawing->grab();
  CHECK(drawing->scale().contains(QLatin1String(" m; thickness")));
  look.setUnits({});
  const Rig before = document.rig();
  click("leaderKeep");
  CHECK(document.rig() == before);
  REQUIRE(store->own().parts.size() == 1);
  const Part& kept = store->own().parts.front();
  CHECK(kept.kind == PartKind::leader);
  CHECK(kept.length().value() == Approx(10));
  CHECK(kept.sections.size() == 5);
  CHECK(check(kept).empty());
  CHECK(QString::fromStdString(*kept.name).contains(QLatin1String("to 0.013 in")));
  CHECK(words("leaderWords").contains(QLatin1String("Kept")));
  store->undo();
  CHECK(store->own().parts.empty());
}

TEST_CASE_METHOD(MakeBench, "make: a tippet's packet figure and a missing diameter are taken up") {
  open("makeLeader");
  benchSpools();
  type("leaderPacket", "4");
  CHECK(words("leaderWords").contains(QStringLiteral("2.2–3.4 lb")));  // 55-85 % of 4 lb
  Spools few = store->spools();
  std::erase_if(few.spools, [](const Spool& s) {
    return s.diameter && s.diameter->value() > 0.0145 && s.diameter->value() < 0.0215;
  });
  store->setSpools(few);
  CHECK(words("leaderWords").contains(QLatin1String("add a diameter over 0.013 in")));
}

TEST_CASE_METHOD(MakeBench, "make: the tippet that was chosen stays so when spools before it go") {
  open("makeLeader");
  benchSpools();
  auto* tippet = find<QComboBox>("leaderTippet");
  const int last = tippet->count() - 1;
  REQUIRE(last > 1);
  tippet->setCurrentIndex(last);
  const QString chosen = tippet->currentText();
  Spools fewer = store->spools();
  for (std::size_t i = 0; i < fewer.spools.size(); ++i) {
    if (!fewer.spools[i].diameter || !fewer.spools[i].material) continue;
    fewer.spools.erase(fewer.spools.begin() + std::ptrdiff_t(i));
    break;
  }
  store->setSpools(fewer);
  REQUIRE(tippet->count() == last);
  CHECK(tippet->currentText() == chosen);
}

TEST_CASE_METHOD(MakeBench, "make: a fly is dressed, put on the line and kept") {
  open("makeFly");
  type("flyBeads", "2");
  type("flyBead", "5.5");
  type("flyHole", "1.5");
  CHECK(words("flyWords").contains(QLatin1String("head first")));
  click("flyPlace");
  REQUIRE(document.rig().flyIndex());
  const Fly& fly = *parts().back().fly;
  CHECK(fly.dry.value() == Approx(5.2 + 41.9 + 2.0).margin(0.06));
  CHECK(fly.sinksHeadFirst == true);
  click("flyKeep");
  CHECK(store->own().parts.size() == 1);
  type("flyHole", "6");
  CHECK(words("flyWords").contains(QLatin1String("hole")));
  CHECK_FALSE(find<QPushButton>("flyPlace")->isEnabled());
}

TEST_CASE_METHOD(MakeBench, "make: lead brings its caution, and only then") {
  open("makeFly");
  const auto saysLead = [&] {
    const auto labels = find<QWidget>("makeFly")->findChildren<QLabel*>();
    return std::any_of(labels.begin(), labels.end(), [](QLabel* label) {
      return label->text().contains(QLatin1String("away from food"));
    });
  };
  CHECK_FALSE(saysLead());
  type("flyEyes", "18");
  CHECK(saysLead());
}

TEST_CASE_METHOD(MakeBench, "make: own parts are kept, named, copied, removed, found and brought back") {
  open("makeParts");
  find<QComboBox>("ownFromLine")->setCurrentIndex(2);
  click("ownKeep");
  REQUIRE(store->own().parts.size() == 1);
  type("partName", "Winter eleven");
  CHECK(store->own().parts[0].name == "Winter eleven");
  click("ownCopy");
  CHECK(store->own().parts.size() == 2);
  find<QLineEdit>("ownSearch")->setText(QStringLiteral("copy"));
  CHECK(find<QListWidget>("ownList")->count() == 1);
  click("ownRemove");
  CHECK(store->own().parts.size() == 1);
  click("ownUndo");
  CHECK(store->own().parts.size() == 2);
  find<QLineEdit>("ownSearch")->clear();
  click("ownPlace");
  CHECK(parts().size() == 7);
  const OwnStore again(Shelf{}, folder.path());
  CHECK(again.own() == store->own());
}

TEST_CASE_METHOD(MakeBench, "make: own parts go out to a file and come in again without loss") {
  store->setOwn(Shelf{{part("one", "a"), part("two", "b")}, {}});
  open("makeParts");
  auto* page = find<OwnPartsPage>("makeParts");
  const QString path = folder.filePath(QStringLiteral("out.shelf.json"));
  page->askWritePath = [&] { return path; };
  click("ownWrite");
  const Shelf before = store->own();
  store->setOwn({});
  CHECK(page->readFile(path) == QLatin1String("2 added, 0 there already"));
  CHECK(store->own() == before);
  CHECK(page->readFile(path) == QLatin1String("0 added, 2 there already"));
  CHECK(page->readFile(kSpools).contains(QLatin1String("not a shelf")));
  CHECK(store->own() == before);
}

TEST_CASE_METHOD(MakeBench, "make: a store that cannot be read is set aside, never written over") {
  QTemporaryDir broken;
  QFile file(broken.filePath(QStringLiteral("my-parts.shelf.json")));
  REQUIRE(file.open(QIODevice::WriteOnly));
  file.write("{ broken");
  file.close();
  OwnStore fresh(Shelf{}, broken.path());
  CHECK_FALSE(fresh.problems().empty());
  fresh.setOwn(Shelf{{part("one", "a")}, {}});
  QFile aside(broken.filePath(QStringLiteral("my-parts.shelf.json.unread")));
  REQUIRE(aside.open(QIODevice::ReadOnly));
  CHECK(aside.readAll() == QByteArray("{ broken"));
}

TEST_CASE_METHOD(MakeBench, "make: a trim shows what is left before the knife, then does it") {
  open("makeTips");
  find<QComboBox>("trimPart")->setCurrentIndex(0);
  type("trimOff", "3");
  CHECK(words("trimWords").contains(QLatin1String("20 ft")));
  CHECK(words("trimWords").contains(QLatin1String("21.5 gr/ft")));
  CHECK(parts()[1].length() == Feet(23));
  click("trimTake");
  CHECK(parts()[1].length().value() == Approx(20));
}

TEST_CASE_METHOD(MakeBench, "make: dividing a spool and naming a tip answer in a sentence") {
  open("makeTips");
  benchSpools();
  find<QComboBox>("divideSpool")->setCurrentIndex(2);
  CHECK(words("divideWords").contains(QLatin1String("3 of 9 ft 7 in finished, cut at 10 ft")));
  type("nameMass", "112");
  type("nameLength", "10.1");
  CHECK(words("nameWords").contains(QLatin1String("the trade's 11")));
  click("nameKeep");
  CHECK(store->own().parts.size() == 1);
}

TEST_CASE_METHOD(MakeBench, "make: spools are written down, changed in place and taken off the list") {
  open("makeSpools");
  type("spoolMass", "11");
  type("spoolRate", "7.5");
  type("spoolFeet", "30");
  click("spoolAdd");
  REQUIRE(store->spools().spools.size() == 1);
  auto* table = find<QTableWidget>("spoolTable");
  table->item(0, 2)->setText(QStringLiteral("12 ft 6 in"));
  CHECK(store->spools().spools[0].left == Feet(12.5));
  table->item(0, 2)->setText(QStringLiteral("a lot"));
  CHECK(store->spools().spools[0].left == Feet(12.5));
  table->setCurrentCell(0, 0);
  click("spoolRemove");
  CHECK(store->spools().spools.empty());
  click("spoolUndo");
  CHECK(store->spools().spools.size() == 1);
  CHECK(find<SpoolsPage>("makeSpools")->readFile(kFamily).contains(QLatin1String("not a list")));
}

TEST_CASE_METHOD(MakeBench, "make: every task keeps its words inside at type size 200 %") {
  benchSpools();
  look.setTypeScale(2.0);
  for (const char* task : test::kMakeTasks) {
    open(task);
    CHECK(panel->task() == QLatin1String(task));
    CHECK_FALSE(panel->grab().isNull());
  }
}

}  // namespace grainwise::ui
