// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mass/grip.h"

#include "core/mass/on_the_limit.h"
#include "core/mass/rod_fit.h"
#include "core/mass/standards.h"

namespace grainwise {
namespace {

bool liesInTheWater(const Part& part) {
  return part.kind == PartKind::tip || part.isCoatedLeader();
}

std::optional<TipShareVerdict> judgeShare(double share, Style style, const GripLimits& limits) {
  const bool shortHead = style == Style::shortHead;
  if (!shortHead && style != Style::fine && style != Style::longBelly) return std::nullopt;
  if (over(share, limits.heavy)) return TipShareVerdict::tooMuch;
  if (over(share, shortHead ? limits.right : limits.longHeadMost)) return TipShareVerdict::heavy;
  if (!shortHead || !under(share, limits.light)) return TipShareVerdict::right;
  return under(share, limits.noGrip) ? TipShareVerdict::noGrip : TipShareVerdict::light;
}

AnchorVerdict judgeAnchor(double ratio, const GripLimits& limits) {
  if (under(ratio, limits.anchorLeast)) return AnchorVerdict::tooLittle;
  if (under(ratio, limits.anchorGood)) return AnchorVerdict::shortish;
  return over(ratio, limits.anchorMost) ? AnchorVerdict::longish : AnchorVerdict::good;
}

Grains sinkingLine(const Rig& rig, const MassProfile& profile) {
  Grains sum;
  for (std::size_t i = profile.firstSpan; i < profile.spans.size(); ++i) {
    const ProfileSpan& span = profile.spans[i];
    const Part& part = rig.parts[span.part];
    const bool counts = part.kind == PartKind::head || liesInTheWater(part);
    if (counts && span.sinks) sum += span.mass();
  }
  return sum;
}

/// The length between the last head piece and the fly; nothing without a head.
std::optional<Feet> behindTheHead(const Rig& rig, const MassProfile& profile) {
  std::optional<Station> headEnd;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    if (rig.parts[i].kind == PartKind::head) headEnd = profile.places[i].to;
  }
  if (!headEnd) return std::nullopt;
  return profile.end - *headEnd;
}

void judgeAnchorLength(Grip& grip, const Rig& rig, std::optional<Style> style,
                       const GripLimits& limits) {
  if (!rig.rod || !rig.rod->length) return;
  grip.anchorRatio = grip.anchor / *rig.rod->length;
  // Anchors belong to the two-handed casts: an overhead line is not judged by them.
  const bool overhead = style == Style::singleHand || rig.rod->hands.value_or(2) == 1;
  if (!overhead) grip.anchorVerdict = judgeAnchor(*grip.anchorRatio, limits);
}

/// Grains and feet of the last `most` of line that is not bare nylon.
void measureTipWindow(FlyFit& fit, const MassProfile& profile, Feet most) {
  for (std::size_t i = profile.spans.size(); i-- > profile.firstSpan;) {
    const ProfileSpan& span = profile.spans[i];
    const Feet left = most - fit.tipWindowLength;
    if (span.bareNylon || left <= Feet(0)) continue;
    if (span.properties.length <= left) {
      fit.tipWindowLength += span.properties.length;
      fit.tipWindow += span.mass();
    } else {
      fit.tipWindowLength = most;
      fit.tipWindow += span.between(span.to - left, span.to);
    }
  }
}

void measureNylon(FlyFit& fit, const MassProfile& profile) {
  for (std::size_t i = profile.firstSpan; i < profile.spans.size(); ++i) {
    if (!profile.spans[i].bareNylon) continue;
    fit.nylonLength += profile.spans[i].properties.length;
    fit.nylon += profile.spans[i].mass();
  }
}

FlyVerdict judgeFly(double ratio, const GripLimits& limits) {
  if (!under(ratio, limits.flyCarries)) return FlyVerdict::carries;
  return under(ratio, limits.flyHeavy) ? FlyVerdict::tooHeavy : FlyVerdict::heavySlow;
}

LeaderVerdict judgeLeader(double ratio, const GripLimits& limits) {
  if (!under(ratio, limits.leaderFine)) return LeaderVerdict::fine;
  return under(ratio, limits.leaderWatch) ? LeaderVerdict::tooHeavy : LeaderVerdict::watch;
}

}  // namespace

Grip grip(const Rig& rig, const MassProfile& profile, const GripLimits& limits) {
  Grip result;
  bool hasTip = false;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const Part& part = rig.parts[i];
    if (part.kind == PartKind::head) result.head += profile.places[i].mass();
    if (!liesInTheWater(part)) continue;
    hasTip = true;
    result.tip += profile.places[i].mass();
  }
  result.sinking = sinkingLine(rig, profile);
  const auto anchor = behindTheHead(rig, profile);
  if (!anchor) return result;
  const auto style = headStyle(rig);
  result.anchor = *anchor;
  judgeAnchorLength(result, rig, style, limits);
  if (hasTip && result.head > Grains(0)) {
    result.tipShare = result.tip / result.head;
    if (style) result.tipShareVerdict = judgeShare(*result.tipShare, *style, limits);
  }
  if (style == Style::shortHead) result.table = standards::tipForShortHead(result.head);
  return result;
}

FlyFit flyFit(const Rig& rig, const MassProfile& profile, const GripLimits& limits) {
  FlyFit fit;
  measureTipWindow(fit, profile, limits.tipWindow);
  measureNylon(fit, profile);
  if (const auto fly = rig.flyIndex()) fit.fly = profile.places[*fly].line;
  if (fit.fly <= Grains(0)) return fit;
  if (fit.tipWindowLength > Feet(0)) {
    fit.tipToFly = fit.tipWindow / fit.fly;
    fit.tipToFlyVerdict = judgeFly(*fit.tipToFly, limits);
    fit.feetOfTip = fit.fly / (fit.tipWindow / fit.tipWindowLength);
  }
  if (over(fit.nylonLength, limits.nylonFree)) {
    fit.leaderToFly = fit.nylon / fit.fly;
    fit.leaderToFlyVerdict = judgeLeader(*fit.leaderToFly, limits);
  }
  return fit;
}

Grade grade(TipShareVerdict verdict) {
  switch (verdict) {
    case TipShareVerdict::right:
      return Grade::fits;
    case TipShareVerdict::light:
    case TipShareVerdict::heavy:
      return Grade::watch;
    case TipShareVerdict::noGrip:
    case TipShareVerdict::tooMuch:
      break;
  }
  return Grade::wrong;
}

Grade grade(AnchorVerdict verdict) {
  switch (verdict) {
    case AnchorVerdict::good:
      return Grade::fits;
    case AnchorVerdict::shortish:
    case AnchorVerdict::longish:
      return Grade::watch;
    case AnchorVerdict::tooLittle:
      break;
  }
  return Grade::wrong;
}

Grade grade(FlyVerdict verdict) {
  switch (verdict) {
    case FlyVerdict::carries:
      return Grade::fits;
    case FlyVerdict::heavySlow:
      return Grade::watch;
    case FlyVerdict::tooHeavy:
      break;
  }
  return Grade::wrong;
}

Grade grade(LeaderVerdict verdict) {
  switch (verdict) {
    case LeaderVerdict::fine:
      return Grade::fits;
    case LeaderVerdict::watch:
      return Grade::watch;
    case LeaderVerdict::tooHeavy:
      break;
  }
  return Grade::wrong;
}

}  // namespace grainwise
