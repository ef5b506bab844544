// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMouseEvent>
#include <QProcess>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include "core/io/pools_file.h"
#include "tests/support/choice_bench.h"
#include "ui/panels/make_panel.h"
#include "ui/panels/pools_panel.h"
#include "ui/print/wallet_pages.h"

namespace grainwise::ui {

using test::ChoiceFixture;
using test::corrow;

TEST_CASE_METHOD(ChoiceFixture, "the Tips page ranks the shelf with a glyph and a sentence a row") {
  openTips();
  const ChoiceList& list = *chooser().list();
  REQUIRE(list.rowCount() > 100);
  REQUIRE(list.choice(0).standing == Standing::fits);
  REQUIRE(list.choice(list.rowCount() - 1).standing == Standing::rejected);
  for (int row = 0; row < list.rowCount(); ++row) {
    REQUIRE_FALSE(list.name(row).isEmpty());
    REQUIRE_FALSE(list.sentence(row).isEmpty());
  }
  REQUIRE(chooser().message().contains(QStringLiteral("Wanted 3–4.5 ft down")));
  REQUIRE(chooser().list()->name(0).contains(QStringLiteral("(on)")));
}

TEST_CASE_METHOD(ChoiceFixture, "moving along the list shows each tip on the line, Enter puts it on, "
                                "undo takes it off") {
  openTips();
  const Rig before = document().rig();
  PreviewList* view = chooser().view();
  view->setFocus();
  view->setCurrentIndex(chooser().list()->index(rowNamed(QStringLiteral("10 ft, 8 gr/ft")), 0));
  REQUIRE(document().previewing());
  REQUIRE(tipOf(*document().shown())->name == "10 ft, 8 gr/ft");
  REQUIRE(document().rig() == before);
  QTest::keyClick(view, Qt::Key_Return);
  REQUIRE_FALSE(document().previewing());
  REQUIRE(tip()->name == "10 ft, 8 gr/ft");
  settle();
  REQUIRE(document().undoStack()->count() == 1);
  document().undoStack()->undo();
  REQUIRE(document().rig() == before);
}

TEST_CASE_METHOD(ChoiceFixture, "Escape, another page and the pointer's leaving end a preview") {
  openTips();
  PreviewList* view = chooser().view();
  view->setFocus();
  const auto preview = [&] {
    view->setCurrentIndex({});
    view->setCurrentIndex(chooser().list()->index(3, 0));
    REQUIRE(document().previewing());
  };
  preview();
  QTest::keyClick(view, Qt::Key_Escape);
  REQUIRE_FALSE(document().previewing());
  preview();
  window->actionSet()->shelf->trigger();
  REQUIRE_FALSE(document().previewing());
}

TEST_CASE_METHOD(ChoiceFixture, "hovering over a row shows it and leaving puts the line back") {
  openTips();
  PreviewList* view = chooser().view();
  const QRect row = view->visualRect(chooser().list()->index(1, 0));
  // The test platform has no pointer of its own to move.
  QMouseEvent move(QEvent::MouseMove, row.center(), view->viewport()->mapToGlobal(row.center()),
                   Qt::NoButton, Qt::NoButton, Qt::NoModifier);
  QApplication::sendEvent(view->viewport(), &move);
  REQUIRE(document().previewing());
  REQUIRE(tipOf(*document().shown()) != nullptr);
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(view->viewport(), &leave);
  QApplication::sendEvent(view, &leave);
  REQUIRE_FALSE(document().previewing());
}

TEST_CASE_METHOD(ChoiceFixture, "choosing a pool moves the rig there as one step and ranks anew") {
  openTips();
  auto* pool = chooser().findChild<QComboBox*>(QStringLiteral("chooserPool"));
  REQUIRE(pool->currentText() == QStringLiteral("Mill Run"));
  const int ford = pool->findText(QStringLiteral("Sheep Ford"));
  REQUIRE(ford > 0);
  pool->setCurrentIndex(ford);
  Q_EMIT pool->activated(ford);
  REQUIRE(document().rig().water->name == "Sheep Ford");
  REQUIRE(document().rig().water->depth == Feet(2.5));
  settle();
  REQUIRE(chooser().message().contains(QStringLiteral("Wanted 0.8–1.8 ft down")));
  document().undoStack()->undo();
  REQUIRE(document().rig().water->name == "Mill Run");
}

TEST_CASE_METHOD(ChoiceFixture, "the filters leave what was asked for and nothing else") {
  openTips();
  const ChoiceList& list = *chooser().list();
  const auto box = [&](const char* name) {
    return chooser().findChild<QCheckBox*>(QLatin1String(name));
  };
  const int all = list.rowCount();
  box("chooserUsable")->setChecked(true);
  REQUIRE(list.rowCount() < all);
  for (int row = 0; row < list.rowCount(); ++row) {
    REQUIRE(list.choice(row).standing != Standing::rejected);
  }
  box("chooserSameStroke")->setChecked(true);
  for (int row = 0; row < list.rowCount(); ++row) {
    REQUIRE(list.choice(row).figures.stroke->verdict == StrokeVerdict::same);
  }
  box("chooserUsable")->setChecked(false);
  box("chooserSameStroke")->setChecked(false);
  auto* kind = chooser().findChild<QComboBox*>(QStringLiteral("chooserKind"));
  kind->setCurrentIndex(2);
  Q_EMIT kind->activated(2);
  REQUIRE(list.rowCount() > 0);
  for (int row = 0; row < list.rowCount(); ++row) {
    REQUIRE(list.answer()->question.shelf.parts[*list.choice(row).shelf].isCoatedLeader());
  }
  REQUIRE_FALSE(box("chooserWallet")->isEnabled());
}

TEST_CASE_METHOD(ChoiceFixture, "the family keeps the length; its button puts the tip on") {
  open("03-thin-tail");
  openTips();
  settle();
  REQUIRE(chooser().family().size() >= 5);
  const Feet length = tip()->length();
  QPushButton* last = chooser().family().at(3);
  REQUIRE_FALSE(last->toolTip().isEmpty());
  QTest::mouseClick(last, Qt::LeftButton);
  REQUIRE(document().undoStack()->count() == 1);
  REQUIRE(tip()->length().value() == Approx(length.value()));
  settle();
}

TEST_CASE_METHOD(ChoiceFixture, "a dot of the map chooses its row in the list") {
  openTips();
  const auto dot = chooser().map()->dotOf(0);
  REQUIRE(dot);
  REQUIRE(QRectF(chooser().map()->rect()).contains(*dot));
  QTest::mouseClick(chooser().map(), Qt::LeftButton, {}, dot->toPoint());
  REQUIRE(chooser().view()->currentIndex().isValid());
}

TEST_CASE_METHOD(ChoiceFixture, "a line without a fly is told to take one first") {
  Rig bare = document().rig();
  bare.parts.pop_back();
  document().apply(QStringLiteral("Take the fly off"), bare);
  window->actionSet()->tips->trigger();
  REQUIRE(test::until(
      [&] { return chooser().message().contains(QStringLiteral("drop a fly on the line")); }));
  REQUIRE(chooser().list()->rowCount() == 0);
}

TEST_CASE_METHOD(ChoiceFixture, "the Fixes page says what is wrong and mends it in one undoable step") {
  open("wrong-hinge");
  window->actionSet()->fixes->trigger();
  REQUIRE(test::until([&] { return fixes().fixes() != nullptr && !fixes().busy(); }));
  REQUIRE(fixes().message().contains(QStringLiteral("the joint")));
  REQUIRE(fixes().now()->model()->rowCount() > 0);
  REQUIRE(fixes().now()->model()->rowCount() <= 7);
  REQUIRE(fixes().later()->model()->rowCount() <= 7);
  const Rig before = document().rig();
  PreviewList* now = fixes().now();
  now->setFocus();
  now->setCurrentIndex(now->model()->index(0, 0));
  REQUIRE(document().previewing());
  REQUIRE(faults(analyse(*document().shown())).empty());
  QTest::keyClick(now, Qt::Key_Return);
  REQUIRE(faults(analyse(document().rig())).empty());
  settle();
  REQUIRE(fixes().message().contains(QStringLiteral("Nothing is wrong")));
  document().undoStack()->undo();
  REQUIRE(document().rig() == before);
}

TEST_CASE_METHOD(ChoiceFixture, "changes found for a line that was edited since are not made") {
  open("wrong-hinge");
  window->actionSet()->fixes->trigger();
  REQUIRE(test::until([&] { return fixes().fixes() != nullptr && !fixes().busy(); }));
  PreviewList* now = fixes().now();
  now->setFocus();
  Rig edited = document().rig();
  edited.parts.erase(edited.parts.begin());  // every part is another's neighbour now
  document().apply(QStringLiteral("Take the head off"), edited);
  REQUIRE(fixes().busy());  // the rows are still those of the line before
  const QModelIndex first = now->model()->index(0, 0);
  now->setCurrentIndex(first);
  CHECK_FALSE(document().previewing());
  QTest::keyClick(now, Qt::Key_Return);
  QTest::mouseClick(now->viewport(), Qt::LeftButton, {}, now->visualRect(first).center());
  CHECK(document().rig() == edited);
  CHECK_FALSE(document().previewing());
  document().undoStack()->undo();
  now->setCurrentIndex(now->model()->index(1, 0));
  now->setCurrentIndex(first);
  CHECK(document().previewing());  // they are of this line again
}

TEST_CASE_METHOD(ChoiceFixture, "neither page computes while it is not seen") {
  REQUIRE_FALSE(chooser().busy());
  REQUIRE(chooser().list()->rowCount() == 0);
  REQUIRE(fixes().fixes() == nullptr);
}

TEST_CASE_METHOD(ChoiceFixture, "a pool is edited, taken back, added and removed, and stored at once") {
  QTemporaryDir folder;
  const QString store = folder.filePath(QStringLiteral("deep/my.pools.json"));
  PoolBook& book = *window->pools();
  book.setStore(store);
  window->actionSet()->pools->trigger();
  auto* panel = window->findChild<PoolsPanel*>(QStringLiteral("poolsPanel"));
  REQUIRE(panel->isVisible());
  auto* list = panel->findChild<QListWidget*>(QStringLiteral("poolList"));
  REQUIRE(list->count() == 6);
  list->setCurrentRow(1);
  auto* depth = panel->findChild<QWidget*>(QStringLiteral("poolDepth"))->findChild<QLineEdit*>();
  depth->setFocus();
  depth->selectAll();
  QTest::keyClicks(depth, QStringLiteral("7.5"));
  QTest::keyClick(depth, Qt::Key_Return);
  REQUIRE(book.pools().pools[1].depth == Feet(7.5));
  REQUIRE(loadPools(store.toStdString())->pools[1].depth == Feet(7.5));
  auto* bed = panel->findChild<QComboBox*>(QStringLiteral("poolBed"));
  bed->setCurrentIndex(2);
  Q_EMIT bed->activated(2);
  REQUIRE(loadPools(store.toStdString())->pools[1].bed == Bed::cobbles);
  while (book.canTakeBack()) book.takeBack();
  REQUIRE(book.pools() == corrow());
  QTest::mouseClick(panel->findChild<QPushButton*>(QStringLiteral("poolAdd")), Qt::LeftButton);
  REQUIRE(book.pools().pools.size() == 7);
  REQUIRE(book.pools().pools.back().name == "New pool");
  QTest::mouseClick(panel->findChild<QPushButton*>(QStringLiteral("poolRemove")), Qt::LeftButton);
  REQUIRE(book.pools() == corrow());
  list->setCurrentRow(2);
  QTest::mouseClick(panel->findChild<QPushButton*>(QStringLiteral("poolFish")), Qt::LeftButton);
  REQUIRE(document().rig().water->name == "Sheep Ford");
}

TEST_CASE_METHOD(ChoiceFixture, "a wallet packed from a shelf that is another by now keeps no tip that is gone") {
  window->actionSet()->wallet->trigger();
  auto* wallet = window->findChild<WalletWindow*>(QStringLiteral("walletWindow"));
  REQUIRE(wallet != nullptr);
  REQUIRE(test::until([&] { return wallet->packed() != nullptr && !wallet->busy(); }));
  REQUIRE_FALSE(wallet->packed()->wallet.tips.empty());
  const std::size_t tip = wallet->packed()->wallet.tips.front();
  Shelf fewer = wallet->packed()->question.shelf;
  fewer.parts.resize(tip);  // nothing stands at its place any more
  auto* table = wallet->findChild<QTableView*>(QStringLiteral("walletGrid"));
  REQUIRE(table != nullptr);
  table->setCurrentIndex(table->model()->index(0, 0));
  auto* keep = wallet->findChild<QPushButton*>(QStringLiteral("walletKeep"));
  REQUIRE(keep->isEnabled());
  wallet->hide();
  wallet->setShelf(SharedShelf(fewer));
  wallet->show();
  CHECK(wallet->busy());  // it packs anew from what there is
  keep->click();
  wallet->findChild<QPushButton*>(QStringLiteral("walletLeaveOut"))->click();
  CHECK(wallet->findChild<QListWidget*>(QStringLiteral("walletSides"))->count() == 0);
  REQUIRE(test::until([&] { return !wallet->busy(); }));
  CHECK(wallet->packed()->question.shelf == fewer);
}

TEST_CASE_METHOD(ChoiceFixture, "the wallet packs the trip, keeps, leaves out and prints a card") {
  window->actionSet()->wallet->trigger();
  auto* wallet = window->findChild<WalletWindow*>(QStringLiteral("walletWindow"));
  REQUIRE(wallet != nullptr);
  const auto settled = [&] { return wallet->packed() != nullptr && !wallet->busy(); };
  REQUIRE(test::until(settled));
  wallet->addRig(test::sampleRig("02-slot"));
  REQUIRE(test::until([&] { return settled() && wallet->packed()->question.rigs.size() == 2; }));
  const auto tips = wallet->packed()->wallet.tips;
  REQUIRE(tips.size() >= 2);
  REQUIRE(wallet->packed()->wallet.uses.size() == 12);

  wallet->leaveOut(tips.front());
  REQUIRE(test::until([&] { return settled() && !wallet->packed()->question.leaveOut.empty(); }));
  const auto& without = wallet->packed()->wallet.tips;
  REQUIRE(std::count(without.begin(), without.end(), tips.front()) == 0);
  wallet->keep(tips.front());
  REQUIRE(test::until([&] { return settled() && !wallet->packed()->question.keep.empty(); }));
  const auto& with = wallet->packed()->wallet.tips;
  REQUIRE(std::count(with.begin(), with.end(), tips.front()) == 1);

  wallet->findChild<QSpinBox*>(QStringLiteral("walletMost"))->setValue(1);
  REQUIRE(test::until([&] { return settled() && wallet->packed()->question.most == 1U; }));
  REQUIRE(wallet->packed()->wallet.tips.size() == 1);
  REQUIRE(wallet->findChild<QLabel*>(QStringLiteral("walletUncovered"))
              ->text()
              .contains(QStringLiteral("would do, but for the limits set")));

  QTemporaryDir folder;
  const QString card = folder.filePath(QStringLiteral("wallet.pdf"));
  wallet->askCardPath = [&] { return card; };
  QTest::mouseClick(wallet->findChild<QPushButton*>(QStringLiteral("walletCard")), Qt::LeftButton);
  QFile file(card);
  REQUIRE(file.open(QIODevice::ReadOnly));
  REQUIRE(file.readAll().startsWith("%PDF"));
  QProcess reader;
  reader.start(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), card, QStringLiteral("-")});
  REQUIRE(reader.waitForFinished(20000));
  const QString said = QString::fromUtf8(reader.readAllStandardOutput());
  const PackedWallet& packed = *wallet->packed();
  for (const char* words : {"Wallet: 1 tip", "slot 1", "90 x 140 mm", "Rods conduct", "Depths are estimates"}) {
    INFO(words << " in " << said.toStdString());
    REQUIRE(said.contains(QLatin1String(words)));
  }
  const WalletPages pages(packed, DisplayUnits{});
  REQUIRE(pages.points() >= 8.0);
  REQUIRE(pages.sides() >= 1);
  REQUIRE(pages.count() == (pages.sides() + 1) / 2);

  // The tips, spares once more, go to the cut sheet.
  std::vector<Part> wanted;
  QObject::connect(wallet, &WalletWindow::cutWanted, wallet, [&](const std::vector<Part>& t) { wanted = t; });
  QTest::mouseClick(wallet->findChild<QPushButton*>(QStringLiteral("walletCut")), Qt::LeftButton);
  REQUIRE(wanted.size() == packed.wallet.tips.size() + packed.wallet.spares.size());
  REQUIRE(wanted.front() == packed.question.shelf.parts[packed.wallet.tips.front()]);
  const auto* make = window->bench()->findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  REQUIRE(make->task() == QLatin1String("makeCut"));
  REQUIRE(make->findChild<QLabel*>(QStringLiteral("cutSaid"))->text().contains(QLatin1String("The packed wallet")));

  // What was packed is the filter on the Tips page and what is swapped now under Fixes.
  openTips();
  REQUIRE(chooser().findChild<QCheckBox*>(QStringLiteral("chooserWallet"))->isEnabled());
  wallet->close();
}

}  // namespace grainwise::ui
