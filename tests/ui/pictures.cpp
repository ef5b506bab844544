// SPDX-License-Identifier: GPL-3.0-or-later
#include <QDir>
#include <QPainter>
#include <QTest>

#include "tests/support/ui_bench.h"
#include "ui/charts/profile_chart.h"
#include "ui/panels/tiles.h"
#include "ui/panels/why_panel.h"
#include "ui/strip/ruler.h"

namespace grainwise::ui {
namespace {

struct Case {
  const char* name;
  const char* rig;
  int width;
  Scheme scheme;
  double scale;
  DisplayUnits units;
};

}  // namespace

/// Not run by itself: writes pictures of the chart, the tiles and why into the folder GRAINWISE_SHOTS
/// for someone to look at.
TEST_CASE_METHOD(test::BenchFixture, "pictures of chart, tiles and why", "[.pictures]") {
  const QString folder = qEnvironmentVariable("GRAINWISE_SHOTS");
  REQUIRE(QDir().mkpath(folder));
  const Case cases[] = {
      {"winter-1280-light", "01-plain-winter", 1280, Scheme::light, 1.0, {}},
      {"winter-1366-dark", "01-plain-winter", 1366, Scheme::dark, 1.0, {}},
      {"winter-1920-light", "01-plain-winter", 1920, Scheme::light, 1.0, {}},
      {"winter-1280-light-200", "01-plain-winter", 1280, Scheme::light, 2.0, {}},
      {"winter-1366-metric-150", "01-plain-winter", 1366, Scheme::light, 1.5, test::kMetric},
      {"winter-1280-sunlight", "01-plain-winter", 1280, Scheme::sunlight, 1.0, {}},
      {"winter-1280-projector", "01-plain-winter", 1280, Scheme::projector, 1.0, {}},
      {"hinge-1366-light", "wrong-hinge", 1366, Scheme::light, 1.0, {}},
      {"no-grip-1366-dark", "wrong-no-grip", 1366, Scheme::dark, 1.0, {}},
      {"five-1366-metric", "10-single-five", 1366, Scheme::light, 1.0, test::kMetric},
      {"empty-1280-light", nullptr, 1280, Scheme::light, 1.0, {}},
  };
  for (const Case& c : cases) {
    look.setScheme(c.scheme);
    look.setTypeScale(c.scale);
    look.setUnits(c.units);
    show(c.rig == nullptr ? Rig{} : test::sampleRig(c.rig));
    Conditions conditions;
    conditions.strokeReference = strokeBasis(document.rig(), feed.analysis().profile);
    feed.setConditions(conditions);
    settle();
    QWidget face;
    face.setPalette(look.palette());
    face.setAutoFillBackground(true);
    Ruler ruler;
    ruler.setCursor(Station(14));
    ProfileChart chart(&look, &feed, &ruler, &face);
    TileRow tiles(&look, &feed, &face);
    SentenceBar bar(&look, &feed, &face);
    WhyPanel why(&look, &feed, &face);
    why.showReading(Reading::headOnRod);
    tiles.resize(c.width, 100);
    int y = 0;
    for (QWidget* part : std::initializer_list<QWidget*>{&chart, &tiles, &bar, &why}) {
      const int tall = part == &why ? look.px(170) : part->sizeHint().height();
      part->setGeometry(part == &why ? 16 : 0, y, part == &why ? c.width - 32 : c.width, tall);
      y += tall;
    }
    face.resize(c.width, y);
    const double to = std::max(feed.analysis().profile.end.feet(), 1.0);
    ruler.setRange(Station(0), Station(to), look.px(132), c.width - look.px(34));
    face.show();
    REQUIRE(QTest::qWaitForWindowExposed(&face));
    settle();
    CHECK(face.grab().save(QDir(folder).filePath(QLatin1String(c.name) + QStringLiteral(".png"))));
  }
}

}  // namespace grainwise::ui
