// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/words.h"

#include <array>

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

/// Within this share of the window from one of its ends a head is said to be at that end. Ours.
constexpr double kEndOfWindow = 0.2;

QString junctionMeaning(const Junction& j, const Rig& rig) {
  switch (j.verdict) {
    case JunctionVerdict::hinges:
      return Words::tr("hinges here: the %1 is heavier than the line behind it")
          .arg(kindWords(rig.parts[j.flySide].kind));
    case JunctionVerdict::hingesUnlessSlow:
      return Words::tr("hinges here unless the stroke is slow and open");
    case JunctionVerdict::collapses:
      return Words::tr("big drop here: the front collapses");
    case JunctionVerdict::nylonNoRule:
      return Words::tr("into a short leader, no rule");
    case JunctionVerdict::nylonFine:
      return Words::tr("the butt of the leader is stout enough");
    case JunctionVerdict::nylonThin:
      return Words::tr("the butt of the leader is thin: a stouter one turns over better");
    default:
      return junctionWords(j.verdict);
  }
}

QString fitsWords(const RodFit& fit) {
  const double head = fit.head->value();
  const double low = fit.window->low.value();
  const double high = fit.window->high.value();
  const double end = kEndOfWindow * (high - low);
  if (head < low) return Words::tr("fits, just under the window");
  if (head > high) return Words::tr("fits, just over the window");
  if (head < low + end) return Words::tr("fits, at the light end");
  if (head > high - end) return Words::tr("fits, at the heavy end");
  return Words::tr("fits this rod");
}

/// Of one way to cast: as it is, with a slower lift, with a quicker one.
using ByLift = std::array<QString, 3>;

QString lifted(const Stroke& stroke, const ByLift& words) {
  return words[stroke.slowerLift ? 1 : stroke.quickerLift ? 2 : 0];
}

}  // namespace

QString capital(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString readingTitle(Reading reading) {
  switch (reading) {
    case Reading::junction:
      return Words::tr("Hinge");
    case Reading::headOnRod:
      return Words::tr("Head on rod");
    case Reading::workingLength:
      return Words::tr("Length on rod");
    case Reading::tipShare:
      return Words::tr("Tip share");
    case Reading::anchor:
      return Words::tr("Anchor");
    case Reading::flyAgainstTip:
      return Words::tr("Fly");
    case Reading::flyAgainstLeader:
      return Words::tr("Fly on leader");
    case Reading::drive:
    case Reading::reserve:
      return Words::tr("Turnover");
    case Reading::depth:
      return Words::tr("Depth, estimate");
  }
  return {};
}

QString junctionWords(JunctionVerdict verdict) {
  switch (verdict) {
    case JunctionVerdict::hinges:
      return Words::tr("hinges here");
    case JunctionVerdict::hingesUnlessSlow:
      return Words::tr("hinges unless slow and open");
    case JunctionVerdict::stepsUp:
      return Words::tr("steps up: has to be forced");
    case JunctionVerdict::level:
      return Words::tr("runs level");
    case JunctionVerdict::smoothDrop:
      return Words::tr("smooth drop");
    case JunctionVerdict::collapses:
      return Words::tr("big drop: front collapses");
    case JunctionVerdict::nylonNoRule:
      return Words::tr("into the leader");
    case JunctionVerdict::nylonFine:
      return Words::tr("stout enough butt");
    case JunctionVerdict::nylonThin:
      return Words::tr("thin butt");
    case JunctionVerdict::nylonPiles:
      return Words::tr("butt too thin: will pile");
  }
  return {};
}

QString junctionFigures(const Junction& j, DisplayUnits units) {
  return Words::tr("%1 to %2", "grains per foot either side of a joint")
      .arg(lineMassNumber(j.rodSideMean, units), lineMassNumber(j.flySideMean, units));
}

QString junctionTag(const Junction& j, DisplayUnits units) {
  return Words::tr("%1: %2", "figures of a joint: what they mean")
      .arg(junctionFigures(j, units), junctionWords(j.verdict));
}

QString junctionSentence(const Junction& j, const Rig& rig, DisplayUnits units) {
  return Words::tr("%1 %2: %3", "figures of a joint, their unit: what they mean")
      .arg(junctionFigures(j, units), lineMassUnit(units), junctionMeaning(j, rig));
}

QString junctionSpoken(const Junction& j, const Rig& rig) {
  const QString words = j.ratio3ft > 1
                            ? Words::tr("steps up from the %1 by %2: %3", "kind of part, ratio, verdict")
                            : Words::tr("steps down from the %1 by %2: %3", "kind of part, ratio, verdict");
  return words.arg(kindWords(rig.parts[j.rodSide].kind), numberText(j.ratio3ft, 2),
                   junctionMeaning(j, rig));
}

QString headWords(const RodFit& fit) {
  if (!fit.headVerdict) return {};
  switch (*fit.headVerdict) {
    case HeadVerdict::fits:
      return fitsWords(fit);
    case HeadVerdict::touchLight:
      return Words::tr("a touch light for this rod");
    case HeadVerdict::touchHeavy:
      return Words::tr("a touch heavy for this rod");
    case HeadVerdict::wrongLight:
      return Words::tr("too light a head for this rod");
    case HeadVerdict::wrongHeavy:
      return Words::tr("too heavy a head for this rod");
  }
  return {};
}

QString lengthWords(LengthVerdict verdict) {
  switch (verdict) {
    case LengthVerdict::usual:
      return Words::tr("usual for this rod");
    case LengthVerdict::shortish:
      return Words::tr("on the short side");
    case LengthVerdict::longish:
      return Words::tr("on the long side");
    case LengthVerdict::tooShort:
      return Words::tr("too short for this rod");
    case LengthVerdict::tooLong:
      return Words::tr("too long for this rod");
  }
  return {};
}

QString tipShareWords(TipShareVerdict verdict) {
  switch (verdict) {
    case TipShareVerdict::noGrip:
      return Words::tr("no grip: a heavier tip");
    case TipShareVerdict::light:
      return Words::tr("light: small flies");
    case TipShareVerdict::right:
      return Words::tr("right for this head");
    case TipShareVerdict::heavy:
      return Words::tr("heavy: roll it up first");
    case TipShareVerdict::tooMuch:
      return Words::tr("too much tip for this head");
  }
  return {};
}

QString anchorWords(AnchorVerdict verdict) {
  switch (verdict) {
    case AnchorVerdict::tooLittle:
      return Words::tr("too little in the water");
    case AnchorVerdict::shortish:
      return Words::tr("a short anchor");
    case AnchorVerdict::good:
      return Words::tr("enough in the water");
    case AnchorVerdict::longish:
      return Words::tr("a long anchor");
  }
  return {};
}

QString flyWords(FlyVerdict verdict) {
  switch (verdict) {
    case FlyVerdict::carries:
      return Words::tr("the tip carries it");
    case FlyVerdict::heavySlow:
      return Words::tr("heavy: slow, open stroke");
    case FlyVerdict::tooHeavy:
      return Words::tr("too heavy for this tip");
  }
  return {};
}

QString leaderWords(LeaderVerdict verdict) {
  switch (verdict) {
    case LeaderVerdict::fine:
      return Words::tr("the leader carries it");
    case LeaderVerdict::watch:
      return Words::tr("heavy for this leader");
    case LeaderVerdict::tooHeavy:
      return Words::tr("too heavy for this leader");
  }
  return {};
}

QString missingWords(Missing what) {
  switch (what) {
    case Missing::head:
      return Words::tr("drop a head on the line");
    case Missing::fly:
      return Words::tr("drop a fly on the line");
    case Missing::rod:
      return Words::tr("no rod yet: choose one");
    case Missing::rodLength:
      return Words::tr("no rod length yet: type it");
    case Missing::headStyle:
      return Words::tr("say what style of head it is");
    case Missing::water:
      return Words::tr("no water yet: choose a pool");
    case Missing::window:
      return Words::tr("give the rod a grain window");
    case Missing::flyMass:
      return Words::tr("weigh the fly and type it");
    case Missing::tip:
      return Words::tr("drop a tip on the line");
    case Missing::stillWater:
      return Words::tr("still water: no swing");
    case Missing::nothingSinks:
      return Words::tr("all floats: it fishes on top");
    case Missing::flyFloats:
      return Words::tr("the fly floats: it fishes on top");
    case Missing::line:
      return Words::tr("too little line to cast a loop");
    case Missing::castable:
      return Words::tr("over 300 ft of line: nobody casts that");
    case Missing::lineSpeed:
      return Words::tr("too slow for a loop: give more line speed");
  }
  return {};
}

QString strokeSentence(const Stroke& stroke) {
  switch (stroke.verdict) {
    case StrokeVerdict::same:
      return lifted(stroke, {Words::tr("Same stroke as the rig you opened"),
                             Words::tr("Same timing as the rig you opened, slower lift"),
                             Words::tr("Same timing as the rig you opened, quicker lift")});
    case StrokeVerdict::adjustLonger:
      return lifted(stroke, {Words::tr("A longer sweep than the rig you opened"),
                             Words::tr("A longer sweep than the rig you opened, slower lift"),
                             Words::tr("A longer sweep than the rig you opened, quicker lift")});
    case StrokeVerdict::adjustShorter:
      return lifted(stroke, {Words::tr("A shorter sweep than the rig you opened"),
                             Words::tr("A shorter sweep than the rig you opened, slower lift"),
                             Words::tr("A shorter sweep than the rig you opened, quicker lift")});
    case StrokeVerdict::different:
      return lifted(stroke, {Words::tr("A different cast from the rig you opened"),
                             Words::tr("A different cast from the rig you opened, slower lift"),
                             Words::tr("A different cast from the rig you opened, quicker lift")});
  }
  return {};
}

QString gradeWord(Grade grade) {
  switch (grade) {
    case Grade::fits:
      return Words::tr("fits");
    case Grade::watch:
      return Words::tr("watch");
    case Grade::wrong:
      return Words::tr("wrong");
  }
  return {};
}

Glyph glyphOf(Grade grade) {
  switch (grade) {
    case Grade::fits:
      return Glyph::circle;
    case Grade::watch:
      return Glyph::triangle;
    case Grade::wrong:
      break;
  }
  return Glyph::square;
}

}  // namespace grainwise::ui
