// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QPainter>
#include <QRectF>
#include <memory>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/model/rig.h"
#include "ui/theme/look.h"

/// Still pictures of rigs, drawn with any painter at any size: for paper, for an image, for a
/// projector. Nothing in them is told by colour alone, everything is a vector, and nothing is
/// clipped (an SVG file would not honour it).
namespace grainwise::ui {

struct Silhouette;

/// How a picture is drawn. All sizes are in the painter's own units.
struct PictureStyle {
  Colours colours;
  DisplayUnits units;
  double text = 14;     ///< height of the type on the axes
  double stroke = 2;    ///< width of the lines of a rig
  bool numbers = true;  ///< false: no number stands anywhere until the class has guessed
  bool answered = true;  ///< false: what a card asks is not given away yet

  [[nodiscard]] QFont font(double times = 1.0, bool bold = false) const;
};

/// Ink on white, greys for fills: what a black and white printer can do.
Colours paperColours();

/// A rig with its analysis.
struct PictureRig {
  std::shared_ptr<const Rig> rig;
  std::shared_ptr<const Analysis> analysis;
  explicit PictureRig(Rig of, const Conditions& conditions = {});
};

/// Which of two rigs: A solid, B dashed, each with its letter.
enum class Setup { alone, a, b };
QColor setupColour(Setup setup, const Colours& colours);
QPen setupPen(Setup setup, const PictureStyle& style);
QString setupLetter(Setup setup);
/// What the rigs of a list are: alone, or A and B.
Setup setupOf(std::size_t index, std::size_t count);

/// The feet that a picture of these rigs spans, and the heaviest foot in it.
struct FootRange {
  double from = 0;
  double to = 40;
  double heaviest = 25;
  [[nodiscard]] double x(double foot, const QRectF& plot) const {
    return plot.left() + (foot - from) / (to - from) * plot.width();
  }
};
FootRange rangeOf(const std::vector<PictureRig>& rigs);

/// The line laid out true to scale across `plot`, its heaviest foot as high as `plot`; floating line
/// outlined, sinking line hatched more tightly the faster it sinks.
void paintStrip(QPainter& p, const QRectF& plot, const PictureRig& rig, const FootRange& range,
                Setup setup, const PictureStyle& style);

/// One part by itself in `box`, as it is drawn in a strip, its heaviest foot as high as the box.
void paintSymbol(QPainter& p, const QRectF& box, const Silhouette& part, const PictureStyle& style);

enum class CaptionDetail {
  brief,  ///< heads, tips, coated leaders and the fly by name, with the grains of heads and tips
  full,   ///< names, feet, grains, grains a foot
};

/// What stands under a strip at each part, in as many rows as they need, each joined to its part by a
/// thin line.
struct Captions {
  struct Caption {
    double x = 0;      ///< the middle of its part
    QRectF box;
    QStringList lines;
  };
  std::vector<Caption> captions;
  double height = 0;
};
Captions captionsOf(const PictureRig& rig, const QRectF& plot, const FootRange& range,
                    const PictureStyle& style, CaptionDetail detail, QPaintDevice* device);
void paintCaptions(QPainter& p, const Captions& captions, double stripMiddle, const PictureStyle& style);

/// What each foot weighs, one curve a rig, with both axes around `plot`.
void paintProfile(QPainter& p, const QRectF& plot, const std::vector<PictureRig>& rigs,
                  const FootRange& range, const PictureStyle& style);

/// The hanging line under the surface, rod left and fly right, the bed below it and the range of its
/// depth at the fly, true to scale in depth; one line a rig. What cannot be drawn is said in words.
void paintRiver(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                const PictureStyle& style);

}  // namespace grainwise::ui
