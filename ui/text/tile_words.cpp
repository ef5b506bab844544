// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

bool lacks(const Analysis& a, Missing what) {
  return std::find(a.missing.begin(), a.missing.end(), what) != a.missing.end();
}

TileWords toDo(Reading reading, const QString& what) {
  return {readingTitle(reading), {}, {}, what, std::nullopt};
}

/// "3.3 ×"
QString times(double ratio, int decimals) {
  return Words::tr("%1 \u00d7", "so many times").arg(numberText(ratio, decimals));
}

/// "33 on 13 ft": a length of line on a rod.
QString onRod(Feet length, const Rig& rig, DisplayUnits units) {
  const double shown = shownValue(length.value(), Measure::length, units);
  return Words::tr("%1 on %2", "a length of line, the rod's length with unit")
      .arg(numberText(shown, units.metres ? 2 : 1), lengthText(*rig.rod->length, units));
}

TileWords hingeTile(const Analysis& a, DisplayUnits units) {
  if (!a.worstJunction) {
    return toDo(Reading::junction, lacks(a, Missing::head)
                                       ? missingWords(Missing::head)
                                       : Words::tr("no joint yet: add a tip or leader"));
  }
  const Junction& j = a.junctions[*a.worstJunction];
  return {readingTitle(Reading::junction), junctionFigures(j, units), lineMassUnit(units),
          junctionWords(j.verdict), grade(j.verdict)};
}

TileWords anchorTile(const Rig& rig, const Grip& grip, DisplayUnits units) {
  return {readingTitle(Reading::anchor), times(*grip.anchorRatio, 2),
          onRod(grip.anchor, rig, units), anchorWords(*grip.anchorVerdict),
          grade(*grip.anchorVerdict)};
}

TileWords shareTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  const Grip& grip = a.grip;
  if (lacks(a, Missing::head)) return toDo(Reading::tipShare, missingWords(Missing::head));
  const bool anchored = grip.anchorVerdict && grip.anchorRatio && rig.rod && rig.rod->length;
  if (!grip.tipShare || grip.tip == Grains(0)) {
    if (anchored) return anchorTile(rig, grip, units);
    return toDo(Reading::tipShare, headStyle(rig) == Style::singleHand
                                       ? Words::tr("no rule for a one-hand line")
                                       : missingWords(Missing::tip));
  }
  TileWords words{readingTitle(Reading::tipShare), percentText(*grip.tipShare),
                  Words::tr("%1 of %2", "grains of the tip, of the head with unit")
                      .arg(massNumber(grip.tip, units), massText(grip.head, units)),
                  Words::tr("no rule for this head"), std::nullopt};
  if (grip.tipShareVerdict) {
    words.verdict = tipShareWords(*grip.tipShareVerdict);
    words.grade = grade(*grip.tipShareVerdict);
  }
  const bool anchorIsWorse =
      anchored && grade(*grip.anchorVerdict) > words.grade.value_or(Grade::fits);
  return anchorIsWorse ? anchorTile(rig, grip, units) : words;
}

/// Of a line without a tip it is the line that carries the fly.
QString carriedWords(FlyVerdict verdict, bool byTip) {
  if (byTip || verdict == FlyVerdict::heavySlow) return flyWords(verdict);
  return verdict == FlyVerdict::carries ? Words::tr("the line carries it") : Words::tr("too heavy for this line");
}

TileWords flyTile(const Analysis& a, DisplayUnits units) {
  const FlyFit& fly = a.fly;
  if (lacks(a, Missing::fly)) return toDo(Reading::flyAgainstTip, missingWords(Missing::fly));
  if (lacks(a, Missing::flyMass)) {
    return toDo(Reading::flyAgainstTip, missingWords(Missing::flyMass));
  }
  const auto figures = [&](Reading reading, double ratio, Grains line) {
    return TileWords{readingTitle(reading), times(ratio, ratio < 9.95 ? 1 : 0),
                     Words::tr("%1 on %2", "grains of line, of the fly with unit")
                         .arg(massNumber(line, units), massText(fly.fly, units)),
                     {}, std::nullopt};
  };
  std::optional<TileWords> tile;
  if (fly.tipToFly && fly.tipToFlyVerdict) {
    tile = figures(Reading::flyAgainstTip, *fly.tipToFly, fly.tipWindow);
    tile->verdict = carriedWords(*fly.tipToFlyVerdict, a.grip.tip > Grains(0));
    tile->grade = grade(*fly.tipToFlyVerdict);
  }
  const bool byLeader = fly.leaderToFly && fly.leaderToFlyVerdict &&
                        (!tile || grade(*fly.leaderToFlyVerdict) > *tile->grade);
  if (byLeader) {
    tile = figures(Reading::flyAgainstLeader, *fly.leaderToFly, fly.nylon);
    tile->verdict = leaderWords(*fly.leaderToFlyVerdict);
    tile->grade = grade(*fly.leaderToFlyVerdict);
  }
  return tile.value_or(toDo(Reading::flyAgainstTip, Words::tr("no line to carry it yet")));
}

QString windowFigures(const RodFit& rod, DisplayUnits units) {
  const QString low = massNumber(rod.window->low, units);
  const QString high = massNumber(rod.window->high, units);
  const bool inside = *rod.head >= rod.window->low && *rod.head <= rod.window->high;
  return inside ? Words::tr("in %1\u2013%2", "a head's grains in the rod's window").arg(low, high)
                : Words::tr("for %1\u2013%2", "a head's grains outside the window").arg(low, high);
}

/// Why a head is there but not judged.
QString headToDo(const Analysis& a) {
  for (const Missing what : {Missing::rod, Missing::headStyle, Missing::window}) {
    if (lacks(a, what)) return missingWords(what);
  }
  return missingWords(Missing::window);
}

TileWords headTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  const RodFit& rod = a.rod;
  if (!rod.head) return toDo(Reading::headOnRod, missingWords(Missing::head));
  TileWords words{readingTitle(Reading::headOnRod), massNumber(*rod.head, units), massUnit(units),
                  headToDo(a), std::nullopt};
  if (rod.headVerdict && rod.window) {
    words.from = windowFigures(rod, units);
    words.verdict = headWords(rod);
    words.grade = grade(*rod.headVerdict);
  }
  const bool byLength = rod.lengthVerdict && rod.lengthRatio && rig.rod && rig.rod->length &&
                        grade(*rod.lengthVerdict) > words.grade.value_or(Grade::fits);
  if (!byLength) return words;
  return {readingTitle(Reading::workingLength), times(*rod.lengthRatio, 2),
          onRod(*rod.workingLength, rig, units), lengthWords(*rod.lengthVerdict),
          grade(*rod.lengthVerdict)};
}

/// "2.0\u20133.1 of 5 ft": the range, never a depth without one.
/// What the fly does with the bottom: as a real swing has it, else as the hanging line has it.
QString bottomWords(const DepthBand& band, DepthState hangs, Feet water) {
  constexpr double kATouch = 0.005;
  if (band.onBottom()) return depthWords(DepthState::lineOnBottom);
  if (band.bottomShare > kATouch) return Words::tr("touches the bottom for %1").arg(percentText(band.bottomShare));
  if (hangs == DepthState::hangs && band.high >= water) return Words::tr("may touch the bottom");
  return depthWords(hangs);
}

TileWords depthTile(const Rig& rig, const Analysis& a, DisplayUnits units) {
  if (!a.hang) {
    for (const Missing what : {Missing::water, Missing::fly, Missing::flyMass}) {
      if (lacks(a, what)) return toDo(Reading::depth, missingWords(what));
    }
    return toDo(Reading::depth, Words::tr("no line in the water yet"));
  }
  if (!a.depthBand || !rig.water || !rig.water->depth) {
    return toDo(Reading::depth, depthWords(a.hang->state));
  }
  const QString bottom = bottomWords(*a.depthBand, a.hang->state, *rig.water->depth);
  // On the bed a depth would say the wrong thing.
  const bool lies = a.depthBand->fromRuns ? a.depthBand->onBottom() : isOnBottom(a.hang->state);
  if (lies) return toDo(Reading::depth, bottom);
  const auto number = [units](Feet depth) {
    return numberText(shownValue(depth.value(), Measure::length, units), 1);
  };
  return {readingTitle(Reading::depth),
          Words::tr("%1\u2013%2", "a range of depth").arg(number(a.depthBand->low), number(a.depthBand->high)),
          Words::tr("of %1", "the depth of the water with unit").arg(lengthText(*rig.water->depth, units)),
          bottom, std::nullopt};
}

}  // namespace

TileWords tileWords(Reading reading, const Rig& rig, const Analysis& analysis, DisplayUnits units) {
  switch (reading) {
    case Reading::junction:
      return hingeTile(analysis, units);
    case Reading::tipShare:
    case Reading::anchor:
      return shareTile(rig, analysis, units);
    case Reading::flyAgainstTip:
    case Reading::flyAgainstLeader:
      return flyTile(analysis, units);
    case Reading::headOnRod:
    case Reading::workingLength:
      return headTile(rig, analysis, units);
    case Reading::depth:
      return depthTile(rig, analysis, units);
    case Reading::drive:
    case Reading::reserve:
      return {readingTitle(reading), {}, {}, turnoverSentence(rig, analysis),
              turnoverGrade(analysis)};
  }
  return {};
}

}  // namespace grainwise::ui
