// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/profile_chart.h"

#include <QAbstractAxis>
#include <QAccessible>
#include <QChartView>
#include <QImage>
#include <QTest>
#include <algorithm>

#include "core/mass/profile.h"
#include "core/model/check.h"
#include "core/model/edits.h"
#include "tests/support/rig_parts.h"
#include "tests/support/ui_bench.h"
#include "ui/charts/cursor_overlay.h"
#include "ui/charts/profile_points.h"
#include "ui/strip/ruler.h"

namespace grainwise::ui {
namespace {

/// Half a pixel: what stands at one foot above stands at the same foot below.
constexpr double kSamePixel = 0.5;

struct ChartFixture : test::BenchFixture {
  ChartFixture() : chart(&look, &feed, &ruler) {
    chart.resize(1366, 150);
    spanLine();
    chart.show();
    REQUIRE(QTest::qWaitForWindowExposed(&chart));
  }
  /// What the line above does whenever the rig or the window changes.
  void spanLine() {
    const MassProfile& line = feed.analysis().profile;
    const double to = std::max(line.end.feet(), 1.0);
    ruler.setRange(line.start, Station(to), 132, chart.width() - 34);
  }
  void checkAligned() {
    settle();
    for (double ft = ruler.from().feet(); ft <= ruler.to().feet(); ft += 0.7) {
      CHECK(std::abs(chart.position(ft, 5).x() - ruler.x(Station(ft))) <= kSamePixel);
      CHECK(std::abs(chart.grainPosition(ft, 5).x() - ruler.x(Station(ft))) <= kSamePixel);
    }
  }

  Ruler ruler;
  ProfileChart chart;
};

/// Columns of a picture of the chart in which the line of the pinned cursor stands.
std::vector<int> cursorColumns(QWidget& chart, const QColor& colour) {
  const QImage image = chart.grab().toImage();
  std::vector<int> columns;
  for (int x = 0; x < image.width(); ++x) {
    int like = 0;
    for (int y = 2; y < image.height() / 2; ++y) {
      const QColor c = image.pixelColor(x, y);
      const int away = std::abs(c.red() - colour.red()) + std::abs(c.green() - colour.green()) +
                       std::abs(c.blue() - colour.blue());
      if (away < 40) ++like;
    }
    if (like > image.height() / 4) columns.push_back(x);
  }
  return columns;
}

}  // namespace

TEST_CASE_METHOD(ChartFixture, "a label on next to no length is drawn, with few lines behind it") {
  for (const double length_ft : {1e-2, 1e-5, 1e-300, 4.9e-324}) {
    INFO(length_ft);
    Section tiny = test::rigs::sinking(1, 10, 6);
    tiny.length = Feet(length_ft);
    Part part = test::rigs::tip({tiny});
    part.label = Grains(5000);
    REQUIRE(check(part).empty());
    document.startFrom(test::rigs::rigOf({test::rigs::short525(), part}));
    settle();
    CHECK(std::isfinite(scaleOf(part)));
    CHECK(std::isfinite(feed.analysis().totals.mass.value()));
    spanLine();
    CHECK_FALSE(chart.grab().isNull());
  }
}

TEST_CASE_METHOD(ChartFixture, "a foot on the chart stands exactly under that foot of the ruler") {
  for (const int width : {1280, 1366, 1920}) {
    chart.resize(width, 150);
    spanLine();
    checkAligned();
  }
  look.setTypeScale(2.0);
  checkAligned();
  look.setUnits(test::kMetric);
  checkAligned();
  document.apply(QStringLiteral("Remove"), edits::removed(document.rig(), 2));
  settle();
  spanLine();
  checkAligned();
}

TEST_CASE_METHOD(ChartFixture, "the chart stays aligned when the ruler starts in the running line") {
  ruler.setRange(Station(-4.25), Station(37), 20.5, 1300.25);
  checkAligned();
}

TEST_CASE_METHOD(ChartFixture, "the pinned cursor is painted where the ruler says") {
  for (const double ft : {2.0, 14.0, 30.5}) {
    ruler.setCursor(Station(ft));
    settle();
    const auto columns = cursorColumns(chart, look.colours().brick);
    REQUIRE_FALSE(columns.empty());
    for (const int x : columns) CHECK(std::abs(x + 0.5 - ruler.x(Station(ft))) <= 1.0);
  }
}

TEST_CASE_METHOD(ChartFixture, "the keys move the cursor by half a foot, with Shift by a tenth") {
  ruler.setCursor(Station(14));
  QTest::keyClick(&chart, Qt::Key_Right);
  CHECK(ruler.cursor().feet() == Approx(14.5));
  QTest::keyClick(&chart, Qt::Key_Left);
  QTest::keyClick(&chart, Qt::Key_Left);
  CHECK(ruler.cursor().feet() == Approx(13.5));
  QTest::keyClick(&chart, Qt::Key_Right, Qt::ShiftModifier);
  CHECK(ruler.cursor().feet() == Approx(13.6));
  QTest::keyClick(&chart, Qt::Key_Left, Qt::ShiftModifier);
  CHECK(ruler.cursor().feet() == Approx(13.5));
  for (int i = 0; i < 100; ++i) QTest::keyClick(&chart, Qt::Key_Left);
  CHECK(ruler.cursor() == Station(0));
  for (int i = 0; i < 100; ++i) QTest::keyClick(&chart, Qt::Key_Right);
  CHECK(ruler.cursor().feet() == Approx(37));
}

TEST_CASE_METHOD(ChartFixture, "a click and a drag set the cursor, other buttons do not") {
  const auto at = [&](double ft) { return QPoint(int(std::lround(ruler.x(Station(ft)))), 90); };
  QTest::mouseClick(&chart, Qt::LeftButton, {}, at(14));
  CHECK(ruler.cursor().feet() == Approx(14.0));
  QTest::mousePress(&chart, Qt::LeftButton, {}, at(20));
  QMouseEvent move(QEvent::MouseMove, at(25), chart.mapToGlobal(at(25)), Qt::NoButton,
                   Qt::LeftButton, {});
  QCoreApplication::sendEvent(&chart, &move);
  CHECK(ruler.cursor().feet() == Approx(25.0));
  QTest::mouseRelease(&chart, Qt::LeftButton, {}, at(25));
  QTest::mouseClick(&chart, Qt::RightButton, {}, at(5));
  CHECK(ruler.cursor().feet() == Approx(25.0));
  QTest::mouseClick(&chart, Qt::LeftButton, {}, QPoint(3, 90));
  CHECK(ruler.cursor() == Station(0));
}

TEST_CASE_METHOD(ChartFixture, "the readout says the foot, its weight, the grains so far and the rest") {
  ruler.setCursor(Station(14));
  CHECK(chart.readout() ==
        QStringLiteral("14.0 ft: 24.1 gr/ft, 328 gr so far, 23 ft from the fly"));
  look.setUnits(test::kMetric);
  CHECK(chart.readout() ==
        QStringLiteral("4.27 m: 5.13 g/m, 21.3 g so far, 7.01 m from the fly"));
  look.setUnits(test::kTrade);
  ruler.setCursor(Station(37));
  CHECK(chart.readout() ==
        QStringLiteral("37.0 ft: 0.72 gr/ft, 671 gr so far, 0 ft from the fly"));
}

TEST_CASE_METHOD(ChartFixture, "a cursor that an edit leaves behind the end says so and comes back") {
  ruler.setCursor(Station(36));
  Rig shorter = document.rig();
  shorter.parts.erase(shorter.parts.begin() + 2);
  document.setPreview(shorter);
  settle();
  CHECK(chart.readout() == QStringLiteral("36.0 ft: past the end of the line"));
  document.setPreview(std::nullopt);
  settle();
  CHECK(ruler.cursor() == Station(36));
  CHECK(chart.readout().contains(QStringLiteral("671")) == false);
  CHECK(chart.readout().contains(QStringLiteral("so far")));
}

TEST_CASE_METHOD(ChartFixture, "an empty line and a line without a fly have words of their own") {
  show(Rig{});
  CHECK(chart.readout() == QStringLiteral("nothing on the line yet"));
  const auto shown = [this] {  // figures beside an axis
    const auto axes = chart.findChild<QChartView*>()->chart()->axes();
    return std::count_if(axes.begin(), axes.end(), [](const QAbstractAxis* axis) { return axis->isVisible(); });
  };
  CHECK(shown() == 0);
  Rig rig = test::sampleRig("01-plain-winter");
  rig.parts.pop_back();
  show(rig);
  CHECK(shown() == 1);
  ruler.setCursor(Station(14));
  CHECK(chart.readout().endsWith(QStringLiteral("23 ft from the end")));
  CHECK_FALSE(chart.grab().isNull());
}

TEST_CASE_METHOD(ChartFixture, "the cursor's words stay whole within the chart at every size") {
  const auto* overlay = chart.findChild<CursorOverlay*>();
  REQUIRE(overlay != nullptr);
  for (const double scale : {1.0, 1.5, 2.0}) {
    look.setTypeScale(scale);
    for (const int width : {1280, 1366, 1920}) {
      chart.resize(width, look.px(150));
      spanLine();
      for (const double ft : {0.0, 14.0, 25.0, 37.0}) {
        ruler.setCursor(Station(ft));
        const QRectF box = overlay->readoutBox();
        INFO("scale " << scale << ", width " << width << ", at " << ft);
        CHECK(QRectF(overlay->rect()).contains(box));
        const QFontMetricsF metrics(look.font(14));
        CHECK(metrics.horizontalAdvance(chart.readout()) <= box.width());
        CHECK(metrics.height() <= box.height() + 1);
      }
    }
  }
}

TEST_CASE_METHOD(ChartFixture, "the need of the loop stands as a line on the chart, the stretch that falls short shaded") {
  const auto* overlay = chart.findChild<CursorOverlay*>();
  Rig bulky = document.rig();
  bulky.parts.back().fly->dragArea = SquareCentimetres(12);
  document.apply(QStringLiteral("Bulky fly"), bulky);
  settle();
  spanLine();
  ruler.setCursor(Station(2));
  CHECK(overlay->driveWordsBox().isNull());
  const QImage without = chart.grab().toImage();
  chart.setDriveShown(true);
  settle();
  const QImage with = chart.grab().toImage();
  const auto& stations = feed.analysis().turnover->stations;
  const auto changed = [&](const QPointF& at) {
    const QPoint pixel = at.toPoint();
    return with.rect().contains(pixel) && with.pixel(pixel) != without.pixel(pixel);
  };
  int shaded = 0, short_ = 0, plain = 0, enough = 0, onLine = 0;
  constexpr double kClear_px = 8;  // of the lines, their words and the steps of the profile
  for (std::size_t i = 1; i + 1 < stations.size(); ++i) {
    const TurnoverStation& s = stations[i];
    const QPointF need = overlay->driveAt(s, s.need), line = overlay->driveAt(s, s.line);
    for (const int up : {-1, 0, 1}) onLine += changed(need + QPointF(0, up)) ? 1 : 0;
    const QPointF middle = (need + line) / 2;
    if (s.bareNylon || std::abs(need.y() - line.y()) < 2 * kClear_px || overlay->driveWordsBox().contains(middle) ||
        std::abs(stations[i - 1].line.value() - stations[i + 1].line.value()) > 1) {
      continue;
    }
    (s.line < s.need ? short_ : enough) += 1;
    if (changed(middle)) (s.line < s.need ? shaded : plain) += 1;
  }
  CHECK(onLine > int(stations.size()) / 3);  // it is dashed
  CHECK(short_ > 3);
  CHECK(shaded == short_);
  CHECK(enough + short_ > 3);
  CHECK(plain == 0);
}

TEST_CASE_METHOD(ChartFixture, "the name of the need stands clear of the cursor's words, wherever the cursor is") {
  const auto* overlay = chart.findChild<CursorOverlay*>();
  chart.setDriveShown(true);
  for (const double scale : {1.0, 1.5}) {
    look.setTypeScale(scale);
    chart.resize(1366, look.px(150));
    spanLine();
    settle();
    for (double ft = 0; ft <= 37; ft += 1) {
      ruler.setCursor(Station(ft));
      INFO("scale " << scale << ", at " << ft);
      CHECK_FALSE(overlay->driveWordsBox().isNull());
      CHECK_FALSE(overlay->driveWordsBox().intersects(overlay->readoutBox()));
    }
  }
}

TEST_CASE_METHOD(ChartFixture, "files dropped on the window are not swallowed by the chart") {
  const auto* view = chart.findChild<QChartView*>();
  REQUIRE(view != nullptr);
  CHECK_FALSE(view->acceptDrops());
  CHECK_FALSE(view->viewport()->acceptDrops());
  CHECK_FALSE(chart.acceptDrops());
}

TEST_CASE_METHOD(ChartFixture, "a screen reader meets one chart with a name and a summary") {
  QAccessibleInterface* iface = QAccessible::queryAccessibleInterface(&chart);
  REQUIRE(iface != nullptr);
  CHECK(iface->role() == QAccessible::Chart);
  CHECK(iface->text(QAccessible::Name) == QStringLiteral("What each foot weighs"));
  CHECK(iface->childCount() == 0);
  ruler.setCursor(Station(14));
  CHECK(iface->text(QAccessible::Description) ==
        QStringLiteral("37 ft of line, 671 gr in all, heaviest at 2.0 ft with 24.5 gr/ft. The cursor "
                       "is at 14.0 ft: 24.1 gr/ft, 328 gr so far, 23 ft from the fly."));
}

TEST_CASE_METHOD(ChartFixture, "a change of scheme, units or type size is painted at once") {
  settle();
  const QImage light = chart.grab().toImage();
  look.setScheme(Scheme::dark);
  const QImage dark = chart.grab().toImage();
  CHECK(light != dark);
  look.setUnits(test::kMetric);
  const QImage metric = chart.grab().toImage();
  CHECK(metric != dark);
  look.setTypeScale(1.5);
  CHECK(chart.sizeHint().height() == 225);
  CHECK(chart.grab().toImage() != metric);
}

TEST_CASE_METHOD(ChartFixture, "one edit paints the chart once, and moving the cursor too") {
  settle();
  QTest::qWait(30);
  const auto* view = chart.findChild<QChartView*>();
  const test::PaintCounter paints(view->viewport());
  Rig rig = document.rig();
  rig.parts[1].label = Grains(540);
  document.apply(QStringLiteral("Label"), rig);
  QTest::qWait(50);
  CHECK(paints.count() == 1);
}

TEST_CASE_METHOD(ChartFixture, "an edit that moves the ruler under the chart paints it once, in its place") {
  QObject::connect(&feed, &AnalysisFeed::analysisChanged, &chart, [this] { spanLine(); });
  settle();
  QTest::qWait(30);
  const test::PaintCounter paints(chart.findChild<QChartView*>()->viewport());
  Rig rig = document.rig();
  rig.parts[1].sections[0].length = rig.parts[1].sections[0].length * 1.2;
  const double before = ruler.pixelsPerFoot();
  document.apply(QStringLiteral("Length"), rig);
  QTest::qWait(50);
  CHECK(ruler.pixelsPerFoot() < before);
  CHECK(paints.count() == 1);
  checkAligned();
}

TEST_CASE_METHOD(ChartFixture, "under the line the chart is washed as high as the line stands, above it is paper") {
  ruler.setCursor(Station(36.9));
  settle();
  const QImage image = chart.grab().toImage().convertToFormat(QImage::Format_RGB32);
  const double scale = image.width() / double(chart.width());
  const auto washed = [&](double ft, double mass) {
    const QPointF at = chart.position(ft, mass) * scale;
    return image.pixelColor(int(at.x()), int(at.y())) != look.colours().paper;
  };
  const Analysis& a = feed.analysis();
  for (double ft = 1.3; ft < 24; ft += 1.7) {
    const double mass = a.profile.after(Station(ft)).value();
    INFO("at " << ft << " ft");
    CHECK(washed(ft, 0.8 * mass));
    CHECK(washed(ft, 0.4 * mass));
  }
  CHECK_FALSE(washed(30, 0.9 * a.profile.after(Station(2)).value()));
}

TEST_CASE("a thinned line keeps its ends, its highest and lowest points and its order") {
  QList<QPointF> dense;
  for (int i = 0; i <= 20000; ++i) {
    const double x = i * 0.002;
    dense.append({x, i == 7777 ? 99.0 : i == 12345 ? -5.0 : 10 + x * 0.1});
  }
  const double column_ft = 0.05;
  const QList<QPointF> few = thinned(dense, column_ft);
  CHECK(static_cast<double>(few.size()) <= 2 * (40 / column_ft + 2));
  CHECK(few.front() == dense.front());
  CHECK(few.back() == dense.back());
  CHECK(few.contains(dense[7777]));
  CHECK(few.contains(dense[12345]));
  CHECK(std::is_sorted(few.begin(), few.end(),
                       [](const QPointF& a, const QPointF& b) { return a.x() < b.x(); }));
  CHECK(thinned(dense.mid(0, 500), column_ft).size() == 500);
}

TEST_CASE("the drawn points lie on the profile: ends of rows, both sides of steps, the fly's jump") {
  const Rig rig = test::sampleRig("01-plain-winter");
  const Analysis analysis = analyse(rig);
  const QList<QPointF> mass = massPoints(analysis, test::kTrade);
  for (const ProfileRow& row : analysis.rows) {
    CHECK(mass.contains(QPointF(row.at.feet(), row.mass.value())));
  }
  const QList<QPointF> grains = grainPoints(analysis);
  CHECK(grains.front() == QPointF(0, 0));
  CHECK(grains.back() == QPointF(37, analysis.totals.mass.value()));
  CHECK(grains[grains.size() - 2].x() == 37);
  CHECK(grains.back().y() - grains[grains.size() - 2].y() == Approx(33));
  for (const QPointF& point : grains) {
    if (point.x() < 23.0) {
      CHECK(point.y() == Approx(analysis.profile.soFar(Station(point.x())).value()));
    }
  }
}

}  // namespace grainwise::ui
