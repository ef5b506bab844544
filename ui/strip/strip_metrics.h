// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QtGlobal>
#include <algorithm>

/// Measures of the line on the bench, in px at type scale 1. What holds words grows with the type size
/// (`Look::px`); the line itself does not.
namespace grainwise::ui::strip_metrics {

inline constexpr int kBody = 94;         ///< height for the line, captions beside
inline constexpr int kLeastBody = 66;
inline constexpr int kLeastGuestBody = 48;
inline constexpr int kTextHeights = 92;  ///< tags, a row of captions, the rule
inline constexpr int kTagTop = 4;
inline constexpr int kTagGap = 6;
inline constexpr int kRuleHeight = 32;
inline constexpr double kBodyMargin = 7;
inline constexpr double kLeastHalf = 22;

inline constexpr int kLeftPlain = 40;       ///< with kLeftPerType: 64, for the chart's axis labels
inline constexpr int kLeftPerType = 24;
inline constexpr int kRunningPerType = 92;  ///< with kLeftPlain: where the head begins behind a running line
inline constexpr double kRunningFrom = 14;
inline constexpr double kRearRoom = 12;
inline constexpr int kRight = 26;
inline constexpr double kEmptyFeet = 40;
/// A shorter line is drawn as this short: a file may hold one of 1e-300 ft, whose feet have no number of pixels.
inline constexpr double kLeastFeet = 1e-3;
/// The feet that a line of a length is spread over.
constexpr double spreadFeet(double length_ft) {
  return length_ft > 0 ? std::max(length_ft, kLeastFeet) : kEmptyFeet;
}
inline constexpr double kFlyPlace = 0.90;   ///< share of the ruler where a fly is to come
inline constexpr double kMostGrown = 0.6;  ///< of the ruler, for a line that has no head yet
/// A line lighter than this keeps the scale, so that a light rig does not look heavy.
inline constexpr double kLeastScale_gr_per_ft = 8;

inline constexpr double kThinRing = 11;  ///< a ring round a thin line reaches this far; captions stay off it
inline constexpr int kLeastHit = 28;
inline constexpr int kFlyHit = 44;
inline constexpr int kLeastGrab = 36;  ///< a narrower part wants the lens
inline constexpr double kLensZoom = 2.0;
inline constexpr int kLensFoot = 48;

inline constexpr int kInsideType = 16;
inline constexpr double kInsideMargin = 7;
inline constexpr double kLeastInside = 40;
inline constexpr int kInsideSteps = 12;
inline constexpr int kOutsideType = 14;
/// With more parts than this, very narrow ones keep their caption for the tool tip and the ear.
inline constexpr std::size_t kCrowd = 24;
inline constexpr double kCrowdedCaption = 40;

inline constexpr int kSlide_ms = 120;
inline constexpr qsizetype kMostSliding = 24;

}  // namespace grainwise::ui::strip_metrics
