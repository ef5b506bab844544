// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>
#include <array>
#include <functional>
#include <optional>
#include <vector>

/// Where words go so that none stands on another. Plain geometry: knows nothing of parts.
namespace grainwise::ui {

/// A badge that wants to stand over a joint, whole or shortened.
struct TagWish {
  double at = 0;                      ///< x of the joint
  std::array<double, 3> widths{};     ///< whole, figures only, glyph only
  double weight = 0;                  ///< the lightest is shortened first
};
struct TagPlace {
  int room = 0;  ///< 0 whole, 1 figures, 2 glyph, 3 left out
  double left = 0;
};
/// In one row from `left` to `right`, `gap` apart, each over its joint. Wishes stand in order of `at`.
/// Cost: a few passes over the list for every tag that has to be shortened.
std::vector<TagPlace> placeTags(const std::vector<TagWish>& wishes, double left, double right,
                                double gap);

/// Words that belong to a stretch of line and stand beside it.
struct CaptionWish {
  double from = 0;  ///< the stretch
  double to = 0;
  QStringList choices;  ///< the same thing said ever shorter
  bool preferBelow = false;
};
struct CaptionPlace {
  QRectF box;
  QString words;
};
struct CaptionRoom {
  QRectF body;      ///< captions stay inside
  double middle = 0;
  double height = 0;  ///< of a line of words
  double gap = 4;
  std::function<double(double from, double to)> halfLine;  ///< how far the line reaches from `middle`
  std::function<double(const QString&)> width;
  std::function<QString(const QString&, double)> elided;
  std::vector<double> uprights;  ///< dotted lines above the line that words should not cross
  std::vector<QRectF> taken;     ///< where something stands already
};
/// One place for each wish, or nothing where there is none without clipping or overlap. Tries above and
/// below, moved aside while still at its stretch, then shorter words, then elided ones.
std::vector<std::optional<CaptionPlace>> placeCaptions(const std::vector<CaptionWish>& wishes,
                                                       CaptionRoom room);

}  // namespace grainwise::ui
