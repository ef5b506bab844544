// SPDX-License-Identifier: GPL-3.0-or-later
#include <QCheckBox>
#include <QDir>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QScrollBar>
#include <QSettings>
#include <QStyleOptionSlider>
#include <QTemporaryDir>
#include <QUndoStack>

#include "tests/support/contrast.h"
#include "tests/support/strip_bench.h"
#include "ui/document/file_names.h"
#include "ui/strip/shelf_model.h"
#include "ui/theme/house_style.h"
#include "ui/theme/pill_list.h"
#include "ui/window/main_window.h"

/// What somebody meets who has never seen the program: the way from an empty line to a rig, the Shelf that goes
/// along with it, names for what is saved, and controls that are seen in every scheme and at every size.
namespace grainwise::ui {
namespace {

using test::StripBench;
namespace rigs = test::rigs;

Part shortLeader() { return rigs::leader({rigs::nylon(4, 0.013)}); }
Part lightTip() { return rigs::tip({rigs::sinking(5, 8, 6)}); }
Part extension() { return rigs::head({rigs::floating(5, 12)}, Style::extension); }

struct GrowingLine : StripBench {
  /// What Enter and a click ask for, this at a share of the ruler, left of the middle.
  QList<PartKind> wantedOn(std::vector<Part> parts, double share = 0.35) {
    start(rigs::rigOf(std::move(parts)));
    QList<PartKind> wanted;
    const auto heard = QObject::connect(strip, &StripView::partWanted, [&](PartKind kind) { wanted << kind; });
    strip->setFocus();
    key(Qt::Key_Return);
    QTest::mouseClick(strip, Qt::LeftButton, {}, QPoint(alongRuler(share), over(0).y()));
    QObject::disconnect(heard);
    return wanted;
  }
  [[nodiscard]] int alongRuler(double share) const {
    return int(ruler.left() + share * (ruler.right() - ruler.left()));
  }
  [[nodiscard]] double rear() const { return ruler.x(Station(0)); }
};

QString shownGroup(const ShelfView& shelf) { return shelf.groups()->currentItem()->data(Qt::UserRole).toString(); }

bool inSight(const QListWidget* list) {
  return list->viewport()->rect().contains(list->visualItemRect(list->currentItem()).center());
}

}  // namespace

TEST_CASE_METHOD(GrowingLine, "a line that grows keeps to the fly's end and asks for fly, tip and head in turn") {
  ruler.setCursor(Station(10));
  start(rigs::rigOf({shortLeader(), rigs::fly(10)}));
  CHECK(ruler.cursor() == Station(4));  // on the line
  CHECK(wantedOn({shortLeader(), rigs::fly(10)}) == QList{PartKind::tip, PartKind::head});
  CHECK(rear() > alongRuler(0.8));
  CHECK(wantedOn({lightTip(), shortLeader(), rigs::fly(10)}) == QList{PartKind::head, PartKind::head});
  CHECK(rear() > alongRuler(0.6));
  // An extension is no head, and however much hangs on the fly, there is room for what is to come.
  CHECK(wantedOn({extension(), lightTip(), shortLeader(), rigs::fly(10)}) == QList{PartKind::head, PartKind::head});
  const Part longTip = rigs::tip({rigs::sinking(60, 8, 6)});
  CHECK(wantedOn({longTip, shortLeader(), rigs::fly(10)}) == QList{PartKind::head, PartKind::head});
  // With a running line, too, which then ends where the head is to begin.
  CHECK(wantedOn({rigs::runningLine(100), lightTip(), rigs::fly(10)}) == QList{PartKind::head, PartKind::head});
  CHECK(block(0)->geometry().right() < alongRuler(0.1));
  CHECK(wantedOn({rigs::short525(), lightTip(), shortLeader(), rigs::fly(10)}).isEmpty());
  CHECK(rear() < alongRuler(0.1));
  // Begun at another place than the fly, it leaves that one its room, too.
  CHECK(wantedOn({shortLeader()}) == QList{PartKind::fly, PartKind::head});
  CHECK(rear() > alongRuler(0.7));
  CHECK(ruler.x(Station(4)) < alongRuler(0.9));
  CHECK(wantedOn({lightTip()}, 0.95) == QList{PartKind::fly, PartKind::fly});
}

TEST_CASE_METHOD(StripBench, "the Shelf goes with a rig that is begun or opened, not with one that is edited, tried or saved") {
  document.startFrom(Rig{});
  CHECK(shownGroup(*shelf) == QStringLiteral("Flies"));
  document.startFrom(rigs::plainWinter());
  CHECK(shownGroup(*shelf) == QStringLiteral("Level tips"));
  CHECK(QTest::qWaitFor([&] { return inSight(shelf->groups()); }));
  shelf->showKind(PartKind::leader);
  const QString leaders = QStringLiteral("Leaders");
  CHECK(shownGroup(*shelf) == leaders);
  document.setPreview(test::twoTips());
  document.setPreview(std::nullopt);
  CHECK(shownGroup(*shelf) == leaders);
  document.apply(QStringLiteral("step"), test::twoTips());
  document.undoStack()->undo();
  CHECK(shownGroup(*shelf) == leaders);
  for (const Rig& rig : {test::twoTips(), rigs::plainWinter()}) {  // there and back in one gesture
    document.apply(QStringLiteral("length"), rig, QStringLiteral("length"));
  }
  CHECK(document.undoStack()->count() == 0);
  CHECK(shownGroup(*shelf) == leaders);
  const QTemporaryDir folder;
  REQUIRE(document.saveAs(folder.filePath(QStringLiteral("a.rig.json"))).empty());
  CHECK(shownGroup(*shelf) == leaders);
  // Parts of one's own that come to the Shelf leave it at the group that is looked at.
  Shelf more = test::genericShelf();
  more.parts.push_back(lightTip());
  shelf->setShelf(more);
  CHECK(shownGroup(*shelf) == leaders);
  shelf->showKind(PartKind::head);
  CHECK(shownGroup(*shelf) == QStringLiteral("Short heads"));
  host->resize(1366, 420);
  CHECK(QTest::qWaitFor([&] { return inSight(shelf->groups()); }));
}

TEST_CASE("a save dialog begins with the rig's name, in the folder of the last file, and a rig without a name has its file's") {
  const QTemporaryDir folder;
  const QString last = folder.filePath(QStringLiteral("last.rig.json"));
  const QString ending = QStringLiteral(".rig.json");
  CHECK(suggestedFile({}, "Plain winter", ending, last) == folder.filePath(QStringLiteral("Plain winter.rig.json")));
  CHECK(suggestedFile({}, "../up: 7/8?", ending, last) == folder.filePath(QStringLiteral("--up- 7-8-.rig.json")));
  CHECK(suggestedFile({}, "", ending, last) == folder.path() + QLatin1Char('/'));
  CHECK(suggestedFile(last, "Plain winter", ending, {}) == last);
  // A folder that has gone is not gone into.
  CHECK(QDir(suggestedFile({}, "", ending, QStringLiteral("/no/such/place/a.rig.json"))).exists());
  CHECK(shownName("Slot", last, QStringLiteral("unnamed")) == QStringLiteral("Slot"));
  CHECK(shownName("", folder.filePath(QStringLiteral("first rig.rig.json")), QStringLiteral("unnamed")) ==
        QStringLiteral("first rig"));
  CHECK(shownName("", {}, QStringLiteral("unnamed")) == QStringLiteral("unnamed"));
}

TEST_CASE_METHOD(test::UiFixture, "Ctrl+Y redoes as Ctrl+Shift+Z does") {
  QSettings().clear();
  MainWindow window;
  window.startFrom(rigs::plainWinter());
  window.show();
  window.activateWindow();
  REQUIRE(QTest::qWaitForWindowActive(&window));
  window.document()->apply(QStringLiteral("step"), test::twoTips());
  for (const auto& [with, again] : {std::pair{Qt::ControlModifier, Qt::Key_Y},
                                    std::pair{Qt::KeyboardModifier(int(Qt::ControlModifier) | int(Qt::ShiftModifier)), Qt::Key_Z}}) {
    QTest::keyClick(&window, Qt::Key_Z, Qt::ControlModifier);
    CHECK(window.document()->rig() == rigs::plainWinter());
    QTest::keyClick(&window, again, with);
    CHECK(window.document()->rig() == test::twoTips());
  }
}

TEST_CASE_METHOD(test::UiFixture, "in every scheme a field, a button and a box to tick stand out from the page, and the box grows with the type") {
  constexpr double kSeen = 3;  // WCAG 2.1 (2018), 1.4.11: what tells a control from the page
  QWidget page;
  auto* field = new QLineEdit(&page);
  auto* button = new QPushButton(QStringLiteral("words"), &page);
  auto* tick = new QCheckBox(QStringLiteral("words"), &page);
  field->setGeometry(10, 10, 100, 32);
  button->setGeometry(10, 50, 100, 32);
  tick->setGeometry(10, 90, 100, 32);
  page.resize(130, 130);
  const auto most = [&](const QImage& image, QWidget* of) {  // contrast along a row through its middle
    double found = 0;
    for (int x = of->x() - 2; x < of->x() + 8; ++x) {
      found = std::max(found, test::contrast(image.pixelColor(x, of->geometry().center().y()), image.pixelColor(2, 2)));
    }
    return found;
  };
  for (const Scheme scheme : {Scheme::dark, Scheme::projector}) {
    Look look;
    look.setScheme(scheme);
    page.setPalette(look.palette());
    const QImage image = page.grab().toImage();
    INFO(int(scheme));
    for (QWidget* each : {static_cast<QWidget*>(field), static_cast<QWidget*>(button), static_cast<QWidget*>(tick)}) {
      INFO(each->metaObject()->className());
      CHECK(most(image, each) >= kSeen);
    }
  }
  Look large;
  large.setTypeScale(2);
  const auto box = [&] { return tick->style()->pixelMetric(QStyle::PM_IndicatorWidth, nullptr, tick); };
  tick->setFont(Look().font(15));
  const int small = box();
  tick->setFont(large.font(15));
  CHECK(box() >= small * 3 / 2);
  const QImage empty = tick->grab().toImage();
  tick->setChecked(true);
  CHECK(tick->grab().toImage() != empty);
}

TEST_CASE_METHOD(test::UiFixture, "a press beside the rows of a list leaves its chosen row marked") {
  Look look;
  QListWidget list;
  list.setItemDelegate(new PillList(&look, 30, 0, &list));
  list.addItems({QStringLiteral("one"), QStringLiteral("two")});
  list.setCurrentRow(0);
  list.resize(200, 200);
  list.show();
  REQUIRE(QTest::qWaitForWindowExposed(&list));
  QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, QPoint(100, 180));
  CHECK(list.currentRow() == 0);
  CHECK(list.item(0)->isSelected());
  QTest::mouseClick(list.viewport(), Qt::LeftButton, {}, list.visualItemRect(list.item(1)).center());
  CHECK(list.item(1)->isSelected());
  CHECK_FALSE(list.item(0)->isSelected());
}

TEST_CASE_METHOD(test::UiFixture, "the sentence about turnover has its line to itself where the type is large") {
  QSettings().clear();
  MainWindow window;
  window.startFrom(rigs::plainWinter());
  window.resize(1366, 768);
  window.show();
  REQUIRE(QTest::qWaitForWindowExposed(&window));
  auto* stroke = window.findChild<QWidget*>(QStringLiteral("strokeSentence"));
  REQUIRE(stroke != nullptr);
  CHECK(stroke->x() > 0);
  window.look()->setTypeScale(2);
  CHECK(QTest::qWaitFor([&] { return stroke->y() > stroke->height() / 2; }));
  window.look()->setTypeScale(1);
  CHECK(QTest::qWaitFor([&] { return stroke->y() < stroke->height() / 2; }));
}

TEST_CASE_METHOD(test::UiFixture, "a scroll bar shows a handle in the page's own ink, and nothing where there is nothing to scroll") {
  QScrollBar bar(Qt::Vertical);
  QPalette colours;
  colours.setColor(QPalette::Window, Qt::white);
  colours.setColor(QPalette::PlaceholderText, Qt::blue);
  bar.setPalette(colours);
  bar.resize(bar.sizeHint().width(), 200);
  const auto inked = [&bar](QColor ink) {
    const QImage image = bar.grab().toImage();
    int count = 0;
    for (int y = 0; y < image.height(); ++y) count += image.pixelColor(image.width() / 2, y) == ink ? 1 : 0;
    return count;
  };
  bar.setRange(0, 0);
  CHECK(inked(Qt::white) == bar.height());
  bar.setPageStep(100);
  bar.setRange(0, 100);
  CHECK(inked(Qt::blue) > bar.height() / 3);
  CHECK(inked(Qt::blue) < bar.height() * 2 / 3);
  // From one end of the bar to the other: no arrows that take a part of it.
  QStyleOptionSlider option;
  option.initFrom(&bar);
  option.orientation = Qt::Vertical;
  option.maximum = 100;
  option.pageStep = 100;
  option.sliderPosition = 100;
  const HouseStyle style;
  const auto part = [&](QStyle::SubControl which) { return style.subControlRect(QStyle::CC_ScrollBar, &option, which, &bar); };
  CHECK(part(QStyle::SC_ScrollBarAddLine).isEmpty());
  CHECK(part(QStyle::SC_ScrollBarSlider).bottom() == bar.rect().bottom());
  CHECK(part(QStyle::SC_ScrollBarSubPage).top() == bar.rect().top());
}

}  // namespace grainwise::ui
