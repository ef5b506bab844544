// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mass/rod_fit.h"

#include <array>
#include <cmath>

#include "core/mass/on_the_limit.h"

namespace grainwise {
namespace {

struct Range {
  double low, high;
};
constexpr int kShortFirst = 3;
constexpr std::array<Range, 8> kShort{{{225, 275},
                                       {275, 325},
                                       {325, 400},
                                       {400, 475},
                                       {475, 540},
                                       {525, 600},
                                       {600, 690},
                                       {690, 780}}};
constexpr std::array<Range, 8> kFine{{{200, 240},
                                      {240, 290},
                                      {300, 360},
                                      {360, 420},
                                      {420, 480},
                                      {480, 540},
                                      {540, 620},
                                      {620, 700}}};
constexpr int kLongFirst = 6;
constexpr std::array<Range, 5> kLong{{{430, 520}, {520, 600}, {600, 700}, {700, 800}, {800, 900}}};

template <std::size_t N>
std::optional<GrainWindow> rowOf(const std::array<Range, N>& table, int first, double number) {
  const double whole = std::floor(number);
  const double index = whole - first;
  if (whole != number || index < 0.0 || index >= static_cast<double>(N)) return std::nullopt;
  const Range& row = table[static_cast<std::size_t>(index)];
  return GrainWindow{Grains(row.low), Grains(row.high)};
}

bool oneHanded(const Rod& rod) { return rod.hands.value_or(2) == 1; }

std::optional<GrainWindow> statedWindow(const Rod& rod, std::optional<Style> style) {
  if (rod.windows && style) {
    const Rod::Windows& by = *rod.windows;
    const auto& own = *style == Style::shortHead   ? by.shortHead
                      : *style == Style::fine      ? by.fine
                      : *style == Style::longBelly ? by.longBelly
                                                   : by.singleHand;
    if (own) return own;
  }
  return rod.window;
}

/// A head that is judged with its tip has no band without one.
std::optional<LengthBand> bandFor(Style style, bool hasTip, bool singleHandRod,
                                  const RodLimits& limits) {
  if (style == Style::fine) return limits.fine;
  if (style == Style::shortHead && singleHandRod) return limits.shortOneHand;
  if (!hasTip) return std::nullopt;
  if (style == Style::shortHead) return limits.shortHead;
  if (style == Style::longBelly) return limits.longBelly;
  return std::nullopt;
}

LengthVerdict judgeLength(double ratio, const LengthBand& band) {
  if (under(ratio, band.low)) return LengthVerdict::tooShort;
  if (under(ratio, band.usualLow)) return LengthVerdict::shortish;
  if (!over(ratio, band.usualHigh)) return LengthVerdict::usual;
  return over(ratio, band.high) ? LengthVerdict::tooLong : LengthVerdict::longish;
}

HeadVerdict judgeHead(Grains head, const GrainWindow& window, const RodLimits& limits) {
  const Grains lacks = window.low - head;
  const Grains exceeds = head - window.high;
  if (over(lacks, limits.touch)) return HeadVerdict::wrongLight;
  if (over(exceeds, limits.touch)) return HeadVerdict::wrongHeavy;
  if (over(lacks, limits.inside)) return HeadVerdict::touchLight;
  return over(exceeds, limits.inside) ? HeadVerdict::touchHeavy : HeadVerdict::fits;
}

/// Heads and tips of a rig: what they weigh and how far they reach.
struct HeadAndTips {
  bool hasHead = false;
  bool hasTip = false;
  Grains head;
  Feet headLength;
  Feet tipLength;
};

HeadAndTips headAndTips(const Rig& rig, const MassProfile& profile) {
  HeadAndTips sum;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const PartPlace& place = profile.places[i];
    if (rig.parts[i].kind == PartKind::head) {
      sum.hasHead = true;
      sum.head += place.mass();
      sum.headLength += place.to - place.from;
    } else if (rig.parts[i].kind == PartKind::tip) {
      sum.hasTip = true;
      sum.tipLength += place.to - place.from;
    }
  }
  return sum;
}

void fitLength(RodFit& fit, const HeadAndTips& line, std::optional<Style> style, const Rod& rod,
               const RodLimits& limits) {
  if (!rod.length) return;
  fit.lengthRatio = *fit.workingLength / *rod.length;
  if (!style) return;
  fit.lengthBand = bandFor(*style, line.hasTip, oneHanded(rod), limits);
  if (fit.lengthBand) fit.lengthVerdict = judgeLength(*fit.lengthRatio, *fit.lengthBand);
}

}  // namespace

std::optional<Style> headStyle(const Rig& rig) {
  for (const Part& part : rig.parts) {
    if (part.kind == PartKind::head && part.style != Style::extension) return part.style;
  }
  return std::nullopt;
}

std::optional<GrainWindow> defaultWindow(Style style, double lineNumber) {
  switch (style) {
    case Style::shortHead:
      return rowOf(kShort, kShortFirst, lineNumber);
    case Style::fine:
      return rowOf(kFine, kShortFirst, lineNumber);
    case Style::longBelly:
      return rowOf(kLong, kLongFirst, lineNumber);
    default:
      return std::nullopt;
  }
}

RodFit rodFit(const Rig& rig, const MassProfile& profile, const RodLimits& limits) {
  RodFit fit;
  const auto style = headStyle(rig);
  const HeadAndTips line = headAndTips(rig, profile);
  if (line.hasHead) {
    fit.head = line.head;
    const bool headAlone = style == Style::fine;
    fit.workingLength = headAlone ? line.headLength : line.headLength + line.tipLength;
  }
  if (!rig.rod) return fit;
  const Rod& rod = *rig.rod;
  fit.window = statedWindow(rod, style);
  if (!fit.window && style && rod.lineNumber && !oneHanded(rod)) {
    fit.window = defaultWindow(*style, *rod.lineNumber);
    fit.windowFromLineNumber = fit.window.has_value();
  }
  if (fit.window && fit.head) fit.headVerdict = judgeHead(*fit.head, *fit.window, limits);
  if (fit.workingLength) fitLength(fit, line, style, rod, limits);
  return fit;
}

Grade grade(HeadVerdict verdict) {
  switch (verdict) {
    case HeadVerdict::fits:
      return Grade::fits;
    case HeadVerdict::touchLight:
    case HeadVerdict::touchHeavy:
      return Grade::watch;
    case HeadVerdict::wrongLight:
    case HeadVerdict::wrongHeavy:
      break;
  }
  return Grade::wrong;
}

Grade grade(LengthVerdict verdict) {
  switch (verdict) {
    case LengthVerdict::usual:
      return Grade::fits;
    case LengthVerdict::shortish:
    case LengthVerdict::longish:
      return Grade::watch;
    case LengthVerdict::tooShort:
    case LengthVerdict::tooLong:
      break;
  }
  return Grade::wrong;
}

}  // namespace grainwise
