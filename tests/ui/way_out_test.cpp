// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/way_out.h"

#include <QApplication>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QLocale>
#include <QMenu>
#include <QMimeData>
#include <QSettings>
#include <QSvgRenderer>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QXmlStreamReader>

#include "core/io/spools_file.h"
#include "tests/support/shipped_files.h"
#include "tests/support/strip_bench.h"
#include "ui/charts/rig_tables.h"
#include "ui/clinic/clinic_face.h"
#include "ui/clinic/deck_document.h"
#include "ui/compare/compare_face.h"
#include "ui/document/own_store.h"
#include "ui/document/pool_book.h"
#include "ui/panels/drawer.h"
#include "ui/panels/make_panel.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/main_window.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

/// Ink that a picture has at least: pixels that are not its ground.
constexpr int kLeastInk = 200;
/// What a file drawn again may have more or less of than the picture itself: its edges are softened otherwise.
constexpr double kSameInk = 0.25;

int ink(const QImage& image) {
  int count = 0;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) count += qGray(image.pixel(x, y)) < 200 ? 1 : 0;
  }
  return count;
}

struct OutFixture : test::UiFixture {
  OutFixture() {
    QSettings().clear();
    window = std::make_unique<MainWindow>();
    window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
    window->look()->setReduceMotion(true);
    window->pools()->start(test::corrow());
    window->startFrom(test::sampleRig("01-plain-winter"));
    window->resize(1366, 768);
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
    QTest::qWait(1);
  }
  ~OutFixture() { QLocale::setDefault(QLocale::c()); }
  WayOut* of(const char* name) {
    auto* widget = window->findChild<QWidget*>(QLatin1String(name));
    REQUIRE(widget != nullptr);
    WayOut* out = WayOut::at(widget);
    REQUIRE(out != nullptr);
    REQUIRE(out->widget() == widget);
    return out;
  }
  std::unique_ptr<MainWindow> window;
};

/// The picture in each form: ink on white, vectors and words in the vector files, nothing that Qt's own
/// reader of SVG warns of (the fixture holds that).
void checkPicture(WayOut* out, int offer) {
  const QTemporaryDir folder;
  const QString name = out->nameOf(offer);
  INFO(name.toStdString());
  for (const char* ending : {"png", "svg", "pdf"}) {
    const QString path = folder.filePath(QStringLiteral("out.") + QLatin1String(ending));
    out->askPath = [&](const QString&, const QString&, const QStringList&) { return path; };
    out->savePicture(offer);
    REQUIRE(QFile::exists(path));
  }
  const QImage image(folder.filePath(QStringLiteral("out.png")));
  REQUIRE_FALSE(image.isNull());
  CHECK(image.pixelColor(0, 0) == QColor(Qt::white));
  CHECK(ink(image) > kLeastInk);
  const QByteArray svg = test::bytes(folder.filePath(QStringLiteral("out.svg")));
  QXmlStreamReader reader(svg);
  while (!reader.atEnd()) reader.readNext();
  CHECK_FALSE(reader.hasError());
  CHECK(svg.contains("<text"));
  CHECK(svg.contains("font-family"));
  CHECK_FALSE(svg.contains("<image"));
  CHECK_FALSE(svg.contains("fillpattern"));
  QSvgRenderer renderer(svg);
  REQUIRE(renderer.isValid());
  QImage again(image.size(), QImage::Format_RGB32);
  again.fill(Qt::white);
  QPainter p(&again);
  renderer.render(&p);
  p.end();
  CHECK(std::abs(ink(again) - ink(image)) < kSameInk * ink(image));
  const QByteArray pdf = test::bytes(folder.filePath(QStringLiteral("out.pdf")));
  CHECK(pdf.startsWith("%PDF"));
  CHECK(pdf.contains("/Font"));
  CHECK_FALSE(pdf.contains("/Subtype /Image"));
}

/// The table: as many cells as columns, decimal points in the file whatever the locale.
void checkTable(WayOut* out, int offer) {
  const QTemporaryDir folder;
  const QString path = folder.filePath(QStringLiteral("out.csv"));
  out->askPath = [&](const QString&, const QString&, const QStringList&) { return path; };
  INFO(out->nameOf(offer).toStdString());
  const OutTable table = out->offers()[offer].table();
  REQUIRE_FALSE(table.rows.empty());
  for (const auto& row : table.rows) CHECK(row.size() == std::size_t(table.header.size()));
  out->saveTable(offer);
  const QByteArray here = test::bytes(path);
  CHECK(here.count("\r\n") == int(table.rows.size()) + 1);
  QLocale::setDefault(QLocale(QLocale::German));
  out->saveTable(offer);
  QLocale::setDefault(QLocale::c());
  CHECK(test::bytes(path) == here);
}

}  // namespace

TEST_CASE("a table in a file has points, commas, CRLF, quotes where they are wanted and no formula") {
  const OutTable table{{QStringLiteral("a"), QStringLiteral("b (ft)")},
                       {{QStringLiteral("=1+1"), OutCell(-2.5, 1)},
                        {QStringLiteral("say \"so\", then"), OutCell(1234.5, 2)},
                        {QStringLiteral("@x"), OutCell::none()}}};
  QLocale::setDefault(QLocale(QLocale::German));
  CHECK(csvOf(table) == "a,b (ft)\r\n'=1+1,-2.5\r\n\"say \"\"so\"\", then\",1234.50\r\n'@x,\r\n");
  CHECK(tabbedOf(table).contains(QStringLiteral("\t1234,5\n")));
  CHECK(htmlOf(table).contains(QStringLiteral("<td>say &quot;so&quot;, then</td><td>1234,5</td>")));
  QLocale::setDefault(QLocale::c());
}

TEST_CASE_METHOD(OutFixture, "what the bench shows goes out as PNG, SVG, PDF and CSV, also from the dark") {
  window->look()->setScheme(Scheme::dark);
  for (WayOut* out : WayOut::shownIn(window.get())) {
    for (int i = 0; i < out->offers().size(); ++i) {
      checkPicture(out, i);
      checkTable(out, i);
    }
  }
  CHECK(window->look()->scheme() == Scheme::dark);
  CHECK(window->look()->colours().paper == coloursOf(Scheme::dark).paper);
}

TEST_CASE_METHOD(OutFixture, "a picture is copied as image and drawing, a table as text, table and CSV") {
  window->findChild<QWidget*>(QStringLiteral("profile"))->setFocus();
  window->actionSet()->copyPicture->trigger();
  const QMimeData* data = QApplication::clipboard()->mimeData();
  REQUIRE(data->hasImage());
  CHECK(ink(data->imageData().value<QImage>()) > kLeastInk);
  CHECK(data->data(QStringLiteral("image/svg+xml")).contains("<svg"));
  CHECK(window->bench()->drawer()->said().contains(of("profile")->nameOf(0)));
  window->actionSet()->copyTable->trigger();
  data = QApplication::clipboard()->mimeData();
  CHECK(data->text().count(QLatin1Char('\n')) == int(window->feed()->analysis().rows.size()) + 1);
  CHECK(data->html().startsWith(QStringLiteral("<table>")));
  CHECK(data->data(QStringLiteral("text/csv")) ==
        csvOf(profileTable(window->feed()->analysis(), window->look()->units())));
}

TEST_CASE_METHOD(OutFixture, "the menu key, Shift+F10 and a right click open what can be done with a picture") {
  auto* chart = window->findChild<QWidget*>(QStringLiteral("profile"));
  chart->setFocus();
  const auto shown = [&] {
    QMenu* menu = chart->findChild<QMenu*>(QStringLiteral("wayOut"));
    const bool is = menu != nullptr && menu->isVisible() && menu->actions().size() == 4;
    if (menu != nullptr) menu->close();
    QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return is;
  };
  QTest::keyClick(chart, Qt::Key_Menu);
  CHECK(shown());
  QTest::keyClick(chart, Qt::Key_F10, Qt::ShiftModifier);
  CHECK(shown());
  QContextMenuEvent click(QContextMenuEvent::Mouse, QPoint(20, 20), chart->mapToGlobal(QPoint(20, 20)));
  QApplication::sendEvent(chart, &click);
  CHECK(shown());
}

TEST_CASE_METHOD(OutFixture, "the window's menu lists every picture and table that is on screen") {
  QMenu* menu = window->actionSet()->outMenu();
  Q_EMIT menu->aboutToShow();
  QStringList names;
  for (const QAction* one : menu->actions()) names << one->text();
  for (const char* name : {"strip", "profile", "tiles"}) {
    for (const WayOut::Offer& offer : of(name)->offers()) CHECK(names.contains(offer.name()));
  }
}

TEST_CASE_METHOD(OutFixture, "a picture that cannot be written is told, and so is a name without an ending") {
  WayOut* out = of("profile");
  out->askPath = [](const QString&, const QString&, const QStringList&) { return QStringLiteral("/nowhere/x.png"); };
  out->savePicture();
  CHECK(window->bench()->drawer()->said().startsWith(QStringLiteral("/nowhere/x.png: ")));
  out->askPath = [](const QString&, const QString&, const QStringList&) { return QStringLiteral("x.doc"); };
  out->savePicture();
  CHECK(window->bench()->drawer()->said().contains(QStringLiteral(".svg")));
}

namespace {

/// What shows something: a picture or a table of the window.
bool shows(const QWidget* widget) {
  static const QStringList classes{QStringLiteral("StripView"), QStringLiteral("ProfileChart"), QStringLiteral("TileRow"),
                                   QStringLiteral("CastView"), QStringLiteral("RiverView"), QStringLiteral("DepthMap"),
                                   QStringLiteral("CutDrawing"), QStringLiteral("CompareChart"),
                                   QStringLiteral("ReadingsTable"), QStringLiteral("DifferenceList"),
                                   QStringLiteral("PairView"), QStringLiteral("CardView")};
  const QString name = QString::fromLatin1(widget->metaObject()->className()).section(QStringLiteral("::"), -1);
  return classes.contains(name) || qobject_cast<const QTableView*>(widget) != nullptr;
}

/// Lists in which there may be nothing: no change mends the rig, no part was kept.
bool mayBeEmpty(const WayOut* out) {
  return out->widget()->objectName().startsWith(QStringLiteral("fixes")) ||
         out->widget()->objectName() == QStringLiteral("ownList");
}

bool allFilled(const QWidget* window) {
  for (const WayOut* out : WayOut::shownIn(window)) {
    if (!mayBeEmpty(out) && out->offers().front().table().rows.empty()) return false;
  }
  return true;
}

/// Waits for what is computed, then takes everything out that is shown.
void checkPage(const QWidget* window, const QString& page) {
  INFO(page.toStdString());
  QTest::qWait(1);
  REQUIRE(QTest::qWaitFor([&] { return allFilled(window); }, 20000));
  for (const QWidget* widget : window->findChildren<QWidget*>()) {
    if (!widget->isVisible() || widget->window() != window || !shows(widget)) continue;
    INFO(widget->objectName().toStdString() << ' ' << widget->metaObject()->className());
    const WayOut* out = WayOut::at(widget);
    REQUIRE(out != nullptr);
    CHECK(out->widget() == widget);
  }
  for (WayOut* out : WayOut::shownIn(window)) {
    if (out->offers().front().table().rows.empty()) continue;
    INFO(out->widget()->objectName().toStdString());
    for (int i = 0; i < out->offers().size(); ++i) {
      checkPicture(out, i);
      checkTable(out, i);
    }
  }
}

}  // namespace

TEST_CASE_METHOD(OutFixture, "every picture and table on the pages of the bench goes out") {
  window->own()->setSpools(loadSpools(GRAINWISE_SOURCE_DIR "/sample-rigs/bench.spools.json").value());
  BenchFace* bench = window->bench();
  bench->openCast();
  checkPage(window.get(), QStringLiteral("cast"));
  // The bench above the drawer has been out once: from here on the pages alone.
  bench->openRiver();
  checkPage(window.get(), QStringLiteral("river"));
  window->actionSet()->depths->trigger();
  checkPage(window.get(), QStringLiteral("depths"));
  bench->openTips();
  checkPage(window.get(), QStringLiteral("tips"));
  bench->openFixes();
  checkPage(window.get(), QStringLiteral("fixes"));
  bench->openPools();
  checkPage(window.get(), QStringLiteral("pools"));
  bench->openMake();
  auto* make = window->findChild<MakePanel*>();
  REQUIRE(make != nullptr);
  for (const char* task : {"makeCut", "makeSpools", "makeWeigh", "makeParts"}) {
    make->openTask(QLatin1String(task));
    checkPage(window.get(), QLatin1String(task));
  }
}

TEST_CASE_METHOD(OutFixture, "every picture and table of Compare goes out") {
  REQUIRE(window->openBeside(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/03-thin-tail.rig.json")));
  CompareFace* face = window->compare()->face();
  checkPage(window.get(), QStringLiteral("differences"));
  face->openCast();
  checkPage(window.get(), QStringLiteral("casts"));
  face->openRiver();
  checkPage(window.get(), QStringLiteral("swings"));
}

TEST_CASE_METHOD(OutFixture, "every card of the Clinic goes out, and the wallet's grid") {
  REQUIRE(window->openFile(QStringLiteral(GRAINWISE_SOURCE_DIR "/sample-rigs/why-that-tip.deck.json")));
  ClinicFace* face = window->clinic()->face();
  for (std::size_t i = 0; i < face->document()->deck().cards.size(); ++i) {
    face->choose(int(i));
    checkPage(window.get(), QStringLiteral("card %1").arg(i));
  }
  window->actionSet()->wallet->trigger();
  auto* wallet = window->findChild<QWidget*>(QStringLiteral("walletWindow"));
  REQUIRE(wallet != nullptr);
  REQUIRE(QTest::qWaitForWindowExposed(wallet));
  checkPage(wallet, QStringLiteral("wallet"));
  wallet->close();
}

}  // namespace grainwise::ui
