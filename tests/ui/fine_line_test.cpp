// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFontMetricsF>
#include <QImage>
#include <QPainter>
#include <cmath>
#include <set>

#include "tests/support/rig_parts.h"
#include "tests/support/ui_support.h"
#include "ui/strip/silhouette.h"
#include "ui/theme/text_width.h"

namespace grainwise::ui {
namespace {

namespace rigs = test::rigs;

constexpr double kPixelsPerGrain = 3.0;
constexpr int kSections = 16;
constexpr int kTall = 80;

/// Sixteen sections of as many weights; a tip of them sinks by its rate.
Part manySections(PartKind kind) {
  std::vector<Section> sections;
  for (int i = 0; i < kSections; ++i) {
    const double level = 10 + i % 5;
    sections.push_back(kind == PartKind::tip ? rigs::sinking(1, level, 6) : rigs::floating(1, level));
  }
  return rigs::partOf(kind, sections);
}

/// `wide` logical px of the line on paper of its own.
QImage drawn(const Silhouette& s, double wide, const Colours& c, double scale = 1) {
  QImage image(int((wide + 20) * scale), int(kTall * scale), QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(scale);
  image.fill(c.paper);
  QPainter p(&image);
  paintLine(p, QRectF(10, 0, wide, kTall), s, kPixelsPerGrain, c);
  return image;
}

/// How high a column of the device is drawn, in its own pixels.
int heightAt(const QImage& image, int x, const Colours& c) {
  int tall = 0;
  for (int y = 0; y < image.height(); ++y) tall += image.pixelColor(x, y) != c.paper ? 1 : 0;
  return tall;
}

std::set<QRgb> coloursOf(const QImage& image) {
  std::set<QRgb> all;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) all.insert(image.pixel(x, y));
  }
  return all;
}

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "a part of many short sections is drawn as high as each of them weighs") {
  const Look look;
  const Colours& c = look.colours();
  for (const PartKind kind : {PartKind::head, PartKind::tip}) {
    const Silhouette s = silhouetteOf(manySections(kind));
    for (const double scale : {1.0, 2.0}) {
      const double wide = 32;
      const QImage image = drawn(s, wide, c, scale);
      for (int i = 0; i < int(wide * scale); ++i) {
        const double share = (i + 0.5) / (wide * scale);
        const double expected = s.massAt(share) * kPixelsPerGrain * scale;
        INFO("column " << i << " at scale " << scale);
        CHECK(std::abs(heightAt(image, int(10 * scale) + i, c) - expected) <= 1.5);
      }
      CHECK(heightAt(image, int(10 * scale) - 1, c) == 0);
      CHECK(heightAt(image, int((10 + wide) * scale), c) == 0);
    }
  }
}

TEST_CASE_METHOD(test::UiFixture, "a line that floats and one that sinks keep their fills where sections are short") {
  const Look look;
  const Colours& c = look.colours();
  const auto colours = [&](PartKind kind, double wide) {
    return coloursOf(drawn(silhouetteOf(manySections(kind)), wide, c));
  };
  CHECK(colours(PartKind::head, 32) == std::set<QRgb>{c.paper.rgb(), c.river.rgb(), c.riverFill.rgb()});
  CHECK(colours(PartKind::tip, 32) == std::set<QRgb>{c.paper.rgb(), c.sinkFill.rgb(), c.sinkHatch.rgb()});
  CHECK(colours(PartKind::head, 600).size() > 3);  // wide sections have smooth edges
}

TEST_CASE_METHOD(test::UiFixture, "the hatch of a sinking line is seen where sections are short") {
  const Look look;
  const Colours& c = look.colours();
  const QImage image = drawn(silhouetteOf(manySections(PartKind::tip)), 32, c);
  int inside = 0;
  for (int x = 14; x < 38; ++x) inside += image.pixelColor(x, kTall / 2) == c.sinkHatch ? 1 : 0;
  CHECK(inside >= 2);
  CHECK(inside <= 12);
}

TEST_CASE_METHOD(test::UiFixture, "a kept width of words is what the font says, font by font") {
  QFont plain;
  plain.setPixelSize(14);
  QFont large = plain;
  large.setPixelSize(28);
  for (int turn = 0; turn < 2; ++turn) {
    for (const QFont& font : {plain, large}) {
      for (const QString& words : {QStringLiteral("17.8 to 11"), QStringLiteral("Spitze"), QString()}) {
        CHECK(textWidth(words, font) == QFontMetricsF(font).horizontalAdvance(words));
      }
    }
  }
  for (int i = 0; i < 4500; ++i) (void)textWidth(QString::number(i), plain);  // more than are kept
  CHECK(textWidth(QStringLiteral("17.8 to 11"), plain) == QFontMetricsF(plain).horizontalAdvance(QStringLiteral("17.8 to 11")));
}

}  // namespace grainwise::ui
