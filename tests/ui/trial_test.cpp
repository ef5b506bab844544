// SPDX-License-Identifier: GPL-3.0-or-later
#include <QAction>
#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QListWidget>
#include <QMenu>
#include <QPushButton>
#include <QSlider>
#include <algorithm>
#include <set>

#include "core/bench/own_shelf.h"
#include "tests/support/choice_bench.h"
#include "tests/support/rig_parts.h"
#include "ui/document/own_store.h"
#include "ui/panels/family_row.h"
#include "ui/panels/make_panel.h"
#include "ui/strip/strip_view.h"
#include "ui/text/choice_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

const QString kEight = QStringLiteral("10 ft, 8 gr/ft");
const std::string kOwnTip = "Marsh tip of mine";

/// The Tips page open, with a tip tried on.
struct TrialFixture : test::ChoiceFixture {
  TrialFixture() {
    openTips();
    before = document().rig();
  }
  void tryOn(const QString& name) {
    chooser().view()->setFocus();
    chooser().view()->setCurrentIndex(chooser().list()->index(rowNamed(name), 0));
  }
  QString shownTip() {
    const Part* tip = tipOf(*document().shown());
    return tip != nullptr && tip->name ? QString::fromStdString(*tip->name) : QString();
  }
  QWidget* bar() { return on<QWidget>(*window, "trialBar"); }
  /// A tip of one's own, which no carried one is equal to.
  void ownTip() {
    Part part;
    for (const Part& p : window->own()->generic().parts) {
      if (p.name == kEight.toStdString()) part = p;
    }
    part.id.reset();
    part.name = kOwnTip;
    part.label = Grains(83);
    window->own()->setOwn(ownShelf::with(window->own()->own(), part, window->own()->generic()));
  }
  Rig before;
};

}  // namespace

TEST_CASE_METHOD(TrialFixture, "a tip that is tried on stays on the line in Cast and in River, however those are set") {
  tryOn(kEight);
  REQUIRE(bar()->isVisible());
  REQUIRE(document().rig() == before);
  window->actionSet()->cast->trigger();
  REQUIRE(shownTip() == kEight);
  window->actionSet()->river->trigger();
  REQUIRE(shownTip() == kEight);
  auto* angle = on<QSlider>(*window, "angle_deg");
  const int was = angle->value();
  angle->setFocus();
  QTest::keyClick(angle, Qt::Key_Right);
  REQUIRE(angle->value() != was);
  REQUIRE(document().rig().swing != before.swing);
  REQUIRE(document().rig().parts == before.parts);
  REQUIRE(shownTip() == kEight);
  REQUIRE(document().shown()->swing == document().rig().swing);
  QCoreApplication::processEvents();
  REQUIRE(tipOf(*window->feed()->rig())->name == kEight.toStdString());  // what chart, cast and river are of

  const int steps = document().undoStack()->count();
  QTest::keyClick(angle, Qt::Key_Return);
  REQUIRE(tip()->name == kEight.toStdString());
  REQUIRE_FALSE(document().previewing());
  REQUIRE_FALSE(bar()->isVisible());
  REQUIRE(document().undoStack()->count() == steps + 1);
  document().undoStack()->undo();
  REQUIRE(document().rig().parts == before.parts);
}

TEST_CASE_METHOD(TrialFixture, "Escape puts back what is tried on, on the Tips page and on any other") {
  tryOn(kEight);
  QTest::keyClick(chooser().view(), Qt::Key_Escape);
  REQUIRE_FALSE(document().previewing());
  REQUIRE_FALSE(chooser().view()->currentIndex().isValid());
  tryOn(kEight);
  window->actionSet()->cast->trigger();
  auto* speed = on<QSlider>(*window, "line_speed_ft_per_s");
  speed->setFocus();
  QTest::keyClick(speed, Qt::Key_Escape);
  REQUIRE_FALSE(document().previewing());
  REQUIRE(document().undoStack()->count() == 0);
}

TEST_CASE_METHOD(TrialFixture, "take it and put it back have a button each, with the tip's name beside them") {
  tryOn(kEight);
  REQUIRE(on<QLabel>(*bar(), "trialWords")->accessibleName().contains(kEight));
  on<QAbstractButton>(*bar(), "trialBack")->click();
  REQUIRE_FALSE(document().previewing());
  REQUIRE_FALSE(bar()->isVisible());
  tryOn(kEight);
  on<QAbstractButton>(*bar(), "trialTake")->click();
  REQUIRE(tip()->name == kEight.toStdString());
}

TEST_CASE_METHOD(TrialFixture, "another choice takes the place of what is tried on") {
  tryOn(kEight);
  tryOn(QStringLiteral("10 ft, 14 gr/ft"));
  REQUIRE(shownTip() == QStringLiteral("10 ft, 14 gr/ft"));
  REQUIRE(document().rig() == before);
  tryOn(QStringLiteral("%1 (on)").arg(QString::fromStdString(*tip()->name)));
  REQUIRE_FALSE(document().previewing());  // the rig's own is no trial
}

TEST_CASE_METHOD(TrialFixture, "work on the line itself puts back what is tried on, and changes nothing by it") {
  tryOn(kEight);
  StripView* strip = window->bench()->strip();
  strip->setFocus();
  QWidget* focused = QApplication::focusWidget();
  QTest::keyClick(focused != nullptr && strip->isAncestorOf(focused) ? focused : strip, Qt::Key_Delete);
  REQUIRE_FALSE(document().previewing());
  REQUIRE(document().rig() == before);
  tryOn(kEight);
  QTest::mouseClick(strip, Qt::LeftButton, {}, QPoint(3, 3));
  REQUIRE_FALSE(document().previewing());
  tryOn(kEight);
  window->actionSet()->part->trigger();
  REQUIRE_FALSE(document().previewing());
  REQUIRE(document().rig() == before);
}

TEST_CASE_METHOD(TrialFixture, "undo of a part ends a trial; a pointer that passes over rows does not") {
  chooser().view()->setFocus();
  tryOn(QStringLiteral("10 ft, 14 gr/ft"));
  QTest::keyClick(chooser().view(), Qt::Key_Return);
  settle();
  tryOn(kEight);
  QMouseEvent over(QEvent::MouseMove, chooser().view()->visualRect(chooser().list()->index(0, 0)).center(),
                   QPointF(1, 1), Qt::NoButton, Qt::NoButton, Qt::NoModifier);
  QApplication::sendEvent(chooser().view()->viewport(), &over);
  QEvent leave(QEvent::Leave);
  QApplication::sendEvent(chooser().view(), &leave);
  REQUIRE(shownTip() == kEight);
  document().undoStack()->undo();
  REQUIRE_FALSE(document().previewing());
  REQUIRE(document().rig() == before);
}

TEST_CASE_METHOD(TrialFixture, "the fly is picked on the page, as one step, and the shelf is ranked for it") {
  auto* flies = on<QComboBox>(chooser(), "chooserFly");
  REQUIRE(flies->currentIndex() == 0);
  int offered = 0;
  for (const Part& part : test::genericShelf().parts) {
    if (part.kind == PartKind::fly) ++offered;
  }
  REQUIRE(offered > 3);
  REQUIRE(flies->count() == offered + 4);  // the rig's own, two lines between, and one to build
  const auto first = *chooser().list()->answer();
  int item = -1;
  for (int i = 0; i < flies->count(); ++i) {
    if (flies->itemData(i).isValid() && flies->itemData(i).toInt() >= 0 && flies->itemText(i) != flies->itemText(0)) item = i;
  }
  const Part wanted = chooser().list()->answer()->question.shelf.parts[std::size_t(flies->itemData(item).toInt())];
  Q_EMIT flies->activated(item);
  REQUIRE(document().undoStack()->count() == 1);
  REQUIRE(document().rig().parts.back().name == wanted.name);
  settle();
  REQUIRE(chooser().list()->answer()->question.rig == document().rig());
  REQUIRE(flies->currentIndex() == 0);
  REQUIRE(flies->itemText(0).contains(QString::fromStdString(*wanted.name)));
  document().undoStack()->undo();
  REQUIRE(document().rig() == before);
}

TEST_CASE_METHOD(TrialFixture, "a fly that is not there yet is built, and the page comes back when it is tied on") {
  auto* flies = on<QComboBox>(chooser(), "chooserFly");
  Q_EMIT flies->activated(flies->count() - 1);
  REQUIRE(window->bench()->drawer()->current() == QStringLiteral("make"));
  REQUIRE(on<MakePanel>(*window, "makePanel")->task() == QStringLiteral("makeFly"));
  on<QPushButton>(*window, "flyPlace")->click();
  REQUIRE(window->bench()->drawer()->current() == QStringLiteral("tips"));
  REQUIRE(document().rig().parts.back().name == "New fly");
  // Without being sent from here, the Make drawer stays.
  window->actionSet()->make->trigger();
  on<QPushButton>(*window, "flyPlace")->click();
  REQUIRE(window->bench()->drawer()->current() == QStringLiteral("make"));
}

TEST_CASE_METHOD(TrialFixture, "an own part is ranked, packed and tried as a fix as soon as it is made") {
  window->actionSet()->wallet->trigger();
  auto* wallet = on<WalletWindow>(*window, "walletWindow");
  REQUIRE(test::until([&] { return wallet->packed() != nullptr && !wallet->busy(); }));
  const auto has = [](const Shelf& shelf) {
    return std::any_of(shelf.parts.begin(), shelf.parts.end(), [](const Part& p) { return p.name == kOwnTip; });
  };
  REQUIRE_FALSE(has(wallet->packed()->question.shelf));
  ownTip();
  REQUIRE(test::until([&] { return !wallet->busy() && has(wallet->packed()->question.shelf); }));
  REQUIRE(on<QComboBox>(*wallet, "walletKeepMore")->findText(QString::fromStdString(kOwnTip), Qt::MatchContains) > 0);
  settle();
  REQUIRE(has(chooser().list()->answer()->question.shelf));
  REQUIRE(rowNamed(QString::fromStdString(kOwnTip)) >= 0);

  // What was said of a part stays with it when others come and go.
  std::size_t mine = 0;
  for (std::size_t i = 0; i < window->own()->all()->parts.size(); ++i) {
    if (window->own()->all()->parts[i].name == kOwnTip) mine = i;
  }
  wallet->keep(mine);
  REQUIRE(test::until([&] { return !wallet->busy() && wallet->packed()->question.keep.size() == 1; }));
  window->own()->undo();
  REQUIRE(test::until([&] { return !wallet->busy() && wallet->packed()->question.keep.empty(); }));
  REQUIRE_FALSE(has(wallet->packed()->question.shelf));
  wallet->close();
}

TEST_CASE_METHOD(TrialFixture, "the last packed wallet is a filter of the Tips page") {
  REQUIRE_FALSE(on<QCheckBox>(chooser(), "chooserWallet")->isEnabled());
  window->actionSet()->wallet->trigger();
  auto* wallet = on<WalletWindow>(*window, "walletWindow");
  REQUIRE(test::until([&] { return wallet->packed() != nullptr && !wallet->busy(); }));
  on<QCheckBox>(chooser(), "chooserWallet")->setChecked(true);
  std::set<std::string> packed, shown;
  const PackedWallet& trip = *wallet->packed();
  for (const std::size_t tip : trip.wallet.tips) packed.insert(*trip.question.shelf.parts[tip].name);
  for (int row = 0; row < chooser().list()->rowCount(); ++row) {
    const auto& choice = chooser().list()->choice(row);
    if (choice.shelf) shown.insert(*chooser().list()->answer()->question.shelf.parts[*choice.shelf].name);
  }
  REQUIRE_FALSE(packed.empty());
  REQUIRE(shown == packed);
  wallet->close();
}

TEST_CASE_METHOD(TrialFixture, "packing can be stopped, says so, and is taken up again") {
  window->actionSet()->wallet->trigger();
  auto* wallet = on<WalletWindow>(*window, "walletWindow");
  auto* stop = on<QPushButton>(*wallet, "walletStop");
  REQUIRE(wallet->busy());
  REQUIRE(stop->isVisible());
  stop->click();
  REQUIRE_FALSE(wallet->busy());
  REQUIRE(on<QLabel>(*wallet, "walletTitle")->text().contains(QStringLiteral("Stopped")));
  REQUIRE(wallet->packed() == nullptr);
  stop->click();
  REQUIRE(test::until([&] { return wallet->packed() != nullptr && !wallet->busy(); }));
  REQUIRE_FALSE(stop->isVisible());
  wallet->close();
}

TEST_CASE_METHOD(TrialFixture, "the wallet packs under the limits of the bench") {
  window->actionSet()->wallet->trigger();
  auto* wallet = on<WalletWindow>(*window, "walletWindow");
  REQUIRE(test::until([&] { return wallet->packed() != nullptr && !wallet->busy(); }));
  double scores = 0.0, slower = 0.0;
  for (const WalletCell& cell : wallet->packed()->grid->cells) scores += cell.score;
  window->actionSet()->cast->trigger();
  on<QCheckBox>(*window, "learner")->setChecked(true);  // a fifth less line speed
  QCoreApplication::processEvents();
  wallet->findChild<QCheckBox*>(QStringLiteral("walletOneLength"))->setChecked(true);
  REQUIRE(test::until([&] { return !wallet->busy() && wallet->packed()->question.oneLength; }));
  for (const WalletCell& cell : wallet->packed()->grid->cells) slower += cell.score;
  REQUIRE(slower < scores);
  wallet->close();
}

TEST_CASE_METHOD(TrialFixture, "names on the map stand on no other name and inside it, and every dot can be named") {
  DepthMap& map = *chooser().map();
  const auto tidy = [&] {
    const auto names = map.names();
    for (std::size_t i = 0; i < names.size(); ++i) {
      REQUIRE(QRectF(map.rect()).contains(names[i].box));
      for (std::size_t k = 0; k < i; ++k) REQUIRE_FALSE(names[i].box.intersects(names[k].box));
    }
    return names;
  };
  const auto names = tidy();
  REQUIRE(names.size() >= 2);  // the tip that is on and the best one, in any type
  int dots = 0;
  for (int row = 0; row < chooser().list()->rowCount(); row += 7) {
    if (!map.dotOf(row)) continue;
    ++dots;
    map.setMarked(row);
    const auto with = tidy();
    REQUIRE(std::any_of(with.begin(), with.end(), [&](const auto& n) { return n.row == row && !n.words.isEmpty(); }));
    REQUIRE(map.accessibleDescription().contains(chooser().list()->name(row)));
  }
  REQUIRE(dots > 5);
}

TEST_CASE_METHOD(TrialFixture, "the map says in words how many fit, what is wanted and what is best") {
  const QString said = chooser().map()->accessibleDescription();
  const Choice& choice = chooser().list()->answer()->choice;
  REQUIRE(said.contains(QStringLiteral("%1 fit").arg(choice.count(Standing::fits))));
  REQUIRE(said.contains(QStringLiteral("%1 refused").arg(choice.count(Standing::rejected))));
  REQUIRE(said.contains(QStringLiteral("Wanted 3–4.5 ft down")));
  REQUIRE(said.contains(chooser().list()->name(0)));
}

TEST_CASE_METHOD(TrialFixture, "the arrow keys go over every dot of the map, and Enter puts that tip on") {
  DepthMap& map = *chooser().map();
  map.setFocus();
  std::set<int> seen, all;
  for (int row = 0; row < chooser().list()->rowCount(); ++row) {
    if (map.dotOf(row)) all.insert(row);
  }
  for (std::size_t i = 0; i < all.size(); ++i) QTest::keyClick(&map, Qt::Key_Left);
  for (std::size_t i = 0; i <= all.size(); ++i) {
    seen.insert(map.marked());
    QTest::keyClick(&map, Qt::Key_Right);
  }
  REQUIRE(seen == all);
  REQUIRE(map.hasFocus());
  QTest::keyClick(&map, Qt::Key_Home);
  for (int i = 0; i < 3; ++i) QTest::keyClick(&map, Qt::Key_Down);
  REQUIRE(chooser().view()->currentIndex().row() == map.marked());
  const TipChoice& choice = chooser().list()->choice(map.marked());
  REQUIRE(choice.shelf);
  const auto name = chooser().list()->answer()->question.shelf.parts[*choice.shelf].name;
  QTest::keyClick(&map, Qt::Key_Return);
  REQUIRE(tip()->name == name);
  settle();
}

TEST_CASE_METHOD(TrialFixture, "a family's buttons say depth and stroke, and none is lost where there is no room") {
  open("03-thin-tail");
  settle();
  REQUIRE(test::until([&] { return chooser().list()->answer()->question.rig == document().rig(); }));
  auto* row = on<FamilyRow>(chooser(), "familyRow");
  REQUIRE(row->buttons().size() >= 5);
  int now = 0, hidden = 0;
  for (const QPushButton* button : row->buttons()) {
    const QStringList lines = button->text().split(QLatin1Char('\n'));
    REQUIRE(lines.size() == 2);
    REQUIRE(lines[0].contains(QStringLiteral(" → ")));
    const TipChoice& choice = chooser().list()->answer()->choice.ranked[std::size_t(button->property("ranked").toInt())];
    if (choice.asItStands) {
      ++now;
      REQUIRE(lines[1] == QStringLiteral("on now"));
    } else {
      const QString whole = strokeWords(*choice.figures.stroke);
      INFO(lines[1].toStdString() << " of " << whole.toStdString());
      REQUIRE(whole.contains(lines[1]));
      REQUIRE((choice.figures.stroke->verdict == StrokeVerdict::same || lines[1] == whole));
    }
    if (!button->isVisible()) ++hidden;
  }
  REQUIRE(now == 1);
  REQUIRE(row->more()->actions().size() == hidden);
  window->resize(700, window->height());
  QCoreApplication::processEvents();
  hidden = 0;
  for (const QPushButton* button : row->buttons()) hidden += button->isVisible() ? 0 : 1;
  REQUIRE(row->more()->actions().size() == hidden);
  if (hidden > 0) {
    const Feet length = tip()->length();
    row->more()->actions().front()->trigger();
    REQUIRE(document().undoStack()->count() == 1);
    REQUIRE(tip()->length().value() == Approx(length.value()));
  }
  settle();
}

TEST_CASE_METHOD(TrialFixture, "of a long shelf the first tips are shown while the rest is looked through") {
  Shelf shelf = test::genericShelf();
  const std::size_t carried = shelf.parts.size();
  for (std::size_t i = 0; shelf.parts.size() < 1000; ++i) {
    Part part = shelf.parts[i % carried];
    part.id.reset();
    part.name = "no. " + std::to_string(i);
    if (isTipOrCoated(part)) shelf.parts.push_back(part);
  }
  std::size_t tips = 1;  // and no tip at all
  for (const Part& part : shelf.parts) tips += isTipOrCoated(part) ? 1 : 0;
  QList<std::size_t> rows;
  QObject::connect(&chooser(), &ChooserPanel::answered, &chooser(),
                   [&] { rows << chooser().list()->answer()->choice.ranked.size(); });
  chooser().setShelf(shelf);
  REQUIRE(test::until([&] { return rows.size() == 2; }));
  REQUIRE(rows[0] > 10);
  REQUIRE(rows[0] < tips);
  REQUIRE(rows[1] == tips);
  REQUIRE_FALSE(chooser().busy());
}

TEST_CASE_METHOD(TrialFixture, "whatever is lacking, the Tips page says what to do next") {
  const auto says = [&](const char* words) {
    settle();
    INFO(words << " in " << chooser().message().toStdString());
    REQUIRE(test::until([&] { return chooser().message().contains(QString::fromUtf8(words)); }));
  };
  Q_EMIT on<QComboBox>(chooser(), "chooserPool")->activated(0);
  says("No pool yet, so depth is not judged: choose the pool to be fished");
  document().undoStack()->undo();
  says("Wanted 3–4.5 ft down");
  Rig heavy = document().rig();
  heavy.parts.back() = test::rigs::fly(400);
  document().apply(QStringLiteral("Tie on an anvil"), heavy);
  says("Nothing on the shelf will do; what comes nearest stands first");
  REQUIRE(chooser().list()->rowCount() > 0);
  Rig headless = before;
  std::erase_if(headless.parts, [](const Part& p) { return p.kind == PartKind::head; });
  document().apply(QStringLiteral("Take the head off"), headless);
  says("No head to put a tip on: start from a rod");
  document().apply(QStringLiteral("Put it on again"), before);
  chooser().setShelf({});
  says("The shelf has no tip and no coated leader: add some");
}

TEST_CASE_METHOD(TrialFixture, "whatever is lacking, the wallet says what to do next") {
  window->actionSet()->wallet->trigger();
  auto* wallet = on<WalletWindow>(*window, "walletWindow");
  const auto says = [&](const char* words) {
    REQUIRE(test::until([&] {
      return !wallet->busy() && on<QLabel>(*wallet, "walletUncovered")->text().contains(QLatin1String(words));
    }));
    REQUIRE(on<QLabel>(*wallet, "walletTitle")->text() == QStringLiteral("Nothing is packed yet."));
  };
  auto* pools = on<QListWidget>(*wallet, "walletPools");
  for (int i = 0; i < pools->count(); ++i) pools->item(i)->setCheckState(Qt::Unchecked);
  says("No pool is chosen: tick the pools of the trip");
  for (int i = 0; i < pools->count(); ++i) pools->item(i)->setCheckState(Qt::Checked);
  Rig heavy = document().rig();
  heavy.parts.back() = test::rigs::fly(400);
  document().apply(QStringLiteral("Tie on an anvil"), heavy);
  says("Nothing on the shelf serves any pool and fly of this trip");
  document().undoStack()->undo();
  wallet->setShelf({});
  says("The shelf has no tip and no coated leader: add some");
  wallet->close();
}

TEST_CASE_METHOD(TrialFixture, "a row says its grades, criterion by criterion, in words") {
  const ChoiceList& list = *chooser().list();
  const QString said = list.data(list.index(0, 0), Qt::AccessibleDescriptionRole).toString();
  for (const Judged& j : list.choice(0).judged) {
    INFO(said.toStdString());
    REQUIRE(said.contains(criterionName(j.criterion)));
  }
  REQUIRE(chooser().message().contains(QStringLiteral("Limits: common practice; turnover, depth and grades ours")));
}

TEST_CASE_METHOD(TrialFixture, "a click on a change under Fixes makes it, as one step") {
  open("wrong-hinge");
  window->actionSet()->fixes->trigger();
  REQUIRE(test::until([&] { return fixes().fixes() != nullptr && !fixes().busy(); }));
  const Rig faulty = document().rig();
  PreviewList* now = fixes().now();
  REQUIRE(now->model()->rowCount() > 1);
  const Rig wanted = fixes().fixes()->now[1].after;
  QTest::mouseClick(now->viewport(), Qt::LeftButton, {}, now->visualRect(now->model()->index(1, 0)).center());
  REQUIRE(document().rig() == wanted);
  REQUIRE(document().undoStack()->count() == 1);
  settle();
  document().undoStack()->undo();
  REQUIRE(document().rig() == faulty);
}

TEST_CASE_METHOD(TrialFixture, "a name of the program follows a cut that Fixes makes, one of the person stays") {
  for (const char* name : {"10 ft, 20 gr/ft", "My heavy one"}) {
    open("wrong-anvil");
    Rig rig = document().rig();
    const auto tip = std::find_if(rig.parts.begin(), rig.parts.end(), [](const Part& p) { return p.kind == PartKind::tip; });
    REQUIRE(tip != rig.parts.end());
    const auto at = std::size_t(tip - rig.parts.begin());
    tip->name = name;
    window->startFrom(rig);
    window->actionSet()->fixes->trigger();
    settle();
    const auto& later = fixes().fixes()->later;
    const auto cut = std::find_if(later.begin(), later.end(), [](const Fix& f) { return f.change.kind == ChangeKind::cutTip; });
    REQUIRE(cut != later.end());
    const Feet left = cut->after.parts[at].length();
    PreviewList* view = fixes().later();
    const auto row = view->model()->index(int(cut - later.begin()), 0);
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(row).center());
    const Part& now = document().rig().parts[at];
    REQUIRE(now.length() == left);
    const QString words = partWords(now, {});
    INFO(words.toStdString());
    if (QLatin1String(name).startsWith(QLatin1String("My"))) {
      REQUIRE(words == QLatin1String(name));
    } else {
      REQUIRE(words.startsWith(lengthText(left, {})));
    }
  }
}

}  // namespace grainwise::ui
