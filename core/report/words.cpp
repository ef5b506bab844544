// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/words.h"

namespace grainwise::words {

const char* of(JunctionVerdict verdict) {
  switch (verdict) {
    case JunctionVerdict::hinges:
      return "hinges";
    case JunctionVerdict::hingesUnlessSlow:
      return "hinges unless slow and open";
    case JunctionVerdict::stepsUp:
      return "steps up: has to be forced";
    case JunctionVerdict::level:
      return "runs level";
    case JunctionVerdict::smoothDrop:
      return "smooth drop";
    case JunctionVerdict::collapses:
      return "big drop here: the front collapses";
    case JunctionVerdict::nylonNoRule:
      return "no rule";
    case JunctionVerdict::nylonFine:
      return "fine";
    case JunctionVerdict::nylonThin:
      return "thin";
    case JunctionVerdict::nylonPiles:
      return "butt too thin: will pile";
  }
  return "";
}

const char* of(HeadVerdict verdict) {
  switch (verdict) {
    case HeadVerdict::fits:
      return "fits";
    case HeadVerdict::touchLight:
      return "a touch light";
    case HeadVerdict::touchHeavy:
      return "a touch heavy";
    case HeadVerdict::wrongLight:
    case HeadVerdict::wrongHeavy:
      return "wrong head for this rod";
  }
  return "";
}

const char* of(LengthVerdict verdict) {
  switch (verdict) {
    case LengthVerdict::usual:
      return "usual";
    case LengthVerdict::shortish:
      return "on the short side";
    case LengthVerdict::longish:
      return "on the long side";
    case LengthVerdict::tooShort:
      return "too short for this rod";
    case LengthVerdict::tooLong:
      return "too long for this rod";
  }
  return "";
}

const char* of(TipShareVerdict verdict) {
  switch (verdict) {
    case TipShareVerdict::noGrip:
      return "no grip";
    case TipShareVerdict::light:
      return "light: small flies";
    case TipShareVerdict::right:
      return "right";
    case TipShareVerdict::heavy:
      return "heavy: roll it up first";
    case TipShareVerdict::tooMuch:
      return "too much tip";
  }
  return "";
}

const char* of(AnchorVerdict verdict) {
  switch (verdict) {
    case AnchorVerdict::tooLittle:
      return "too little in the water";
    case AnchorVerdict::shortish:
      return "on the short side";
    case AnchorVerdict::good:
      return "good";
    case AnchorVerdict::longish:
      return "on the long side";
  }
  return "";
}

const char* of(FlyVerdict verdict) {
  switch (verdict) {
    case FlyVerdict::carries:
      return "carries it";
    case FlyVerdict::heavySlow:
      return "heavy: slow, open stroke";
    case FlyVerdict::tooHeavy:
      return "too heavy for this tip";
  }
  return "";
}

const char* of(LeaderVerdict verdict) {
  switch (verdict) {
    case LeaderVerdict::fine:
      return "fine";
    case LeaderVerdict::watch:
      return "watch";
    case LeaderVerdict::tooHeavy:
      return "too heavy for this leader";
  }
  return "";
}

const char* of(StrokeVerdict verdict) {
  switch (verdict) {
    case StrokeVerdict::same:
      return "same stroke";
    case StrokeVerdict::adjustLonger:
      return "adjust: longer sweep";
    case StrokeVerdict::adjustShorter:
      return "adjust: shorter sweep";
    case StrokeVerdict::different:
      return "a different cast";
  }
  return "";
}

const char* of(DepthState state) {
  switch (state) {
    case DepthState::hangs:
      return "hangs free";
    case DepthState::nearBottom:
      return "near the bottom";
    case DepthState::onBottom:
      return "on the bottom";
    case DepthState::lineOnBottom:
      return "on the bottom with some of the line";
    case DepthState::stillWater:
      return "no depth in still water";
    case DepthState::everythingFloats:
      return "everything floats";
    case DepthState::flyFloats:
      return "the fly floats";
  }
  return "";
}

std::vector<std::string> missing(const Analysis& analysis, const HeavyRuns& heavy) {
  std::vector<std::string> lines;
  for (const Missing what : analysis.missing) lines.emplace_back(of(what));
  if (heavy.noCast) lines.emplace_back("no turnover to compute: the cast is left out");
  if (heavy.cast && heavy.cast->stop != CastStop::turnedOver) {
    lines.emplace_back(of(heavy.cast->stop));
  }
  if (!heavy.swing || !heavy.swing->ran()) return lines;
  if (!heavy.swing->timeTo10deg) {
    lines.emplace_back("the fly never comes within 10 degrees of straight below: time is left out");
  }
  if (!heavy.swing->swing) {
    lines.emplace_back("the fly hardly moves across the river: swing depth is left out");
  }
  return lines;
}

const char* of(Missing what) {
  switch (what) {
    case Missing::head:
      return "no head: head on rod, length, grip and turnover are left out";
    case Missing::fly:
      return "no fly: fly against tip, turnover and depth are left out";
    case Missing::rod:
      return "no rod: head on rod, length and anchor are not judged";
    case Missing::rodLength:
      return "no rod length: length and anchor are not judged";
    case Missing::headStyle:
      return "no style of head: what goes by the style is not judged";
    case Missing::water:
      return "no water: depth is left out";
    case Missing::window:
      return "no grain window for this style on this rod: the head is not judged";
    case Missing::flyMass:
      return "no mass of the fly: fly against tip, turnover and depth are left out";
    case Missing::tip:
      return "no tip: its share of the head is left out";
    case Missing::stillWater:
      return "still water, under 0.1 ft/s: depth is left out";
    case Missing::nothingSinks:
      return "nothing sinks: depth is left out";
    case Missing::flyFloats:
      return "the fly is lighter than water: depth is left out";
    case Missing::line:
      return "too little line in front of the loop: turnover is left out";
    case Missing::castable:
      return "over 300 ft of line, which nobody casts: turnover is left out";
    case Missing::lineSpeed:
      return "too little line speed for a loop: turnover is left out";
  }
  return "";
}

const char* of(PartKind kind) {
  switch (kind) {
    case PartKind::runningLine:
      return "running line";
    case PartKind::head:
      return "head";
    case PartKind::tip:
      return "tip";
    case PartKind::leader:
      return "leader";
    case PartKind::tippet:
      return "tippet";
    case PartKind::fly:
      return "fly";
  }
  return "";
}

std::string nameOf(const Part& part) {
  return part.name && !part.name->empty() ? *part.name : of(part.kind);
}

std::vector<std::string> cautions(const Rig&, const Analysis& analysis) {
  std::vector<std::string> lines{
      "Wear eye protection and a hat, and let nobody stand in the D-loop.",
      "In wind keep the anchor and the D-loop on the downwind side.",
  };
  if (analysis.grip.sinking > Grains(0)) {
    lines.emplace_back("Roll a heavy tip to the surface before the sweep.");
  }
  if (analysis.hang && hasDepth(analysis.hang->state)) {
    lines.emplace_back(
        "A depth is an estimate and no guide to wading: belt, staff, never alone, mind cold and "
        "rising water.");
  }
  lines.emplace_back(
      "Local rules on weighted lines and flies, the rod maker's limits and a qualified instructor "
      "come before these figures.");
  return lines;
}

}  // namespace grainwise::words
