// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <optional>

#include "core/water/depth_basis.h"
#include "ui/text/contexts.h"
#include "ui/text/measured_words.h"
#include "ui/text/quantities.h"
#include "ui/text/why_words.h"

/// Why of the readings that rest on a model: the rolling loop and the line in the current.
namespace grainwise::ui {
namespace {

QString to1(double value) { return numberText(value, 1); }
QString to2(double value) { return numberText(value, 2); }

QString inputWords(TurnoverInput input) {
  switch (input) {
    case TurnoverInput::skinDrag:
      return Why::tr("the drag along the line");
    case TurnoverInput::flyDrag:
      return Why::tr("the drag of the fly");
    case TurnoverInput::lineSpeed:
      return Why::tr("the line speed");
  }
  return {};
}

/// "1.42 (1.20 to 1.66)", and which input changes the verdict, if one does.
QString ranged(double value, const TurnoverRange& range) {
  QString figure = Why::tr("%1 (%2 to %3)", "a figure, from, to")
                       .arg(to2(value), to2(range.low), to2(range.high));
  if (!range.hangsOn) return figure;
  return Why::tr("%1; the verdict hangs on %2", "figure with range, an input")
      .arg(figure, inputWords(*range.hangsOn));
}

void addCast(QStringList& lines, const CastSetup& cast, bool learner, DisplayUnits units) {
  lines.append(Why::tr("Cast: %1 line speed%2, a loop of %3, %4\u00b0 up, rod tip %5 above the water.")
                   .arg(speedText(cast.lineSpeed, units),
                        learner ? Why::tr(" (a learner's, 20 % less)") : QString(),
                        lengthText(cast.loop, units), to1(cast.launch.value()),
                        lengthText(cast.rodTip, units)));
  if (cast.airAltitude) {
    lines.append(Why::tr("In the air at %1 above the sea.").arg(altitudeText(*cast.airAltitude, units)));
  }
}

void addReadings(QStringList& lines, const Rig& rig, const Turnover& t, DisplayUnits units) {
  lines.append(Why::tr("Reserve %1: line speed against the least that turns over%2.")
                   .arg(ranged(t.reserve, t.reserveRange),
                        t.leastLineSpeed ? Why::tr(", %1").arg(speedText(*t.leastLineSpeed, units))
                                         : QString()));
  if (t.drive) {
    lines.append(Why::tr("Drive %1, least at %2 in %3.")
                     .arg(ranged(*t.drive, t.driveRange), stationText(t.driveAt, units),
                          partWords(rig.parts[t.drivePart], units)));
    lines.append(Why::tr("The last %1 coast on the speed they have.")
                     .arg(roundLengthText(t.coast, units)));
  }
  if (!t.arrives) {
    lines.append(Why::tr("The fly stops on the way: no pace."));
    return;
  }
  lines.append(Why::tr("Pace %1: the fly arrives at %2 after %3 s, %4 above the water.")
                   .arg(ranged(t.pace, t.paceRange), speedText(t.flySpeed, units),
                        to2(t.time.value()), roundLengthText(t.endHeight, units)));
  if (t.nylonKeep) {
    lines.append(Why::tr("The bare nylon keeps %1 of its speed%2.")
                     .arg(percentText(*t.nylonKeep),
                          t.nylonVerdict == NylonVerdict::flyTooBulky
                              ? Why::tr(": the fly is too bulky for this leader")
                              : QString()));
  }
}

QString pace(const TurnoverLimits& l) {
  return Why::tr("Pace: under %1 dies, to %2 soft, to %3 firm, to %4 lively, beyond kicks (after a step "
                 "up of over %5 from %3 on).")
      .arg(to2(l.dies), to2(l.firm), to2(l.lively), to2(l.kicks), to2(l.stepsUp));
}

}  // namespace

WhyWords whyTurnover(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  if (!a.turnover) {
    why.figures = {turnoverSentence(rig, a)};
  } else {
    addCast(why.figures, a.turnover->cast, c.learner, units);
    addReadings(why.figures, rig, *a.turnover, units);
  }
  const TurnoverLimits& l = c.rules.turnover;
  const AirSettings air;
  why.formula = {
      Why::tr("A loop rolls down the line. Each foot that passes through it pulls with half its "
              "mass per foot times the square of the speed at which the legs part."),
      Why::tr("Against that: the drag along the line still flying, the drag of the fly, and weight."),
      Why::tr("Drive = the least of pull / need over the front %1 of line that is not bare nylon.")
          .arg(lengthText(l.driveWindow, units)),
      Why::tr("In brackets: drag along the line %1\u2013%2, drag of the fly \u00d7 or \u00f7 %3, line "
              "speed \u00b1 %4, each alone.")
          .arg(numberText(air.alongDragLow, 3), numberText(air.alongDragHigh, 3),
               to1(air.flyDragFactor), percentText(air.lineSpeedShare))};
  why.limits = {
      Why::tr("Reserve: under %1 lands in a heap, under %2 probably will not, under %3 marginal.")
          .arg(to2(l.heap), to2(l.probablyNot), to2(l.toSpare)),
      Why::tr("Drive: %1 and over carries, under %2 does not.").arg(to2(l.carries), to2(l.doesNotCarry)),
      pace(l), Why::tr("Wind, the stroke and the caster are left out. The limits are ours.")};
  return why;
}

namespace {

/// How far the rated rates may be off; what was timed is surer by itself.
QString ratingWords(const Rig& rig, InchesPerSecond usual, DisplayUnits units) {
  std::optional<InchesPerSecond> timed;
  bool others = false;
  for (const Part& part : rig.parts) {
    for (const Section& section : part.sections) {
      if (!section.sinkRate) continue;
      const Timed* found = timedOf(section);
      if (found && found->plusMinus) {
        timed = std::max(timed.value_or(InchesPerSecond(0)), std::min(usual, *found->plusMinus));
      } else {
        others = true;
      }
    }
  }
  if (!timed) return rateText(usual, units);
  if (!others) return Why::tr("%1 as timed").arg(rateText(*timed, units));
  return Why::tr("%1, or %2 as timed,").arg(rateText(usual, units), rateText(*timed, units));
}

/// What is taken for granted: how dense the head is, how the current slackens towards the bed.
void addBasis(QStringList& lines, const Rig& rig, const DepthBasis& basis) {
  if (basis.headLight) {
    const QString light = densityText(*basis.headLight), heavy = densityText(*basis.headHeavy);
    const QString density = light == heavy ? light : Why::tr("%1 to %2", "a density, another").arg(light, heavy);
    lines.append(basis.headAssumed
                     ? Why::tr("Density of the head: %1, our usual figure where none is stated.").arg(density)
                     : Why::tr("Density of the head: %1.").arg(density));
  }
  const QString share = percentText(basis.halfWay);
  lines.append(rig.water && rig.water->bed
                   ? Why::tr("Half way down the current runs at %1 of its speed at the surface, as over such a bed.")
                         .arg(share)
                   : Why::tr("Half way down the current runs at %1 of its speed at the surface, as over a usual "
                             "bed: none is stated.")
                         .arg(share));
}

/// What the range covers of these two.
QString basisRange(const DepthBasis& basis, const WaterUncertainty& u) {
  const QString slow = percentText(basis.halfWaySlow), fast = percentText(basis.halfWayFast);
  if (!basis.headAssumed) {
    return Why::tr("It covers as well a current half way down of %1 to %2 of the surface's.").arg(slow, fast);
  }
  return Why::tr("It covers as well a head of %1 to %2, and a current half way down of %3 to %4 of the surface's.")
      .arg(densityText(u.headLight), densityText(u.headHeavy), slow, fast);
}

}  // namespace

WhyWords whyDepth(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const WaterUncertainty& u = c.waterUncertainty;
  const DepthBasis basis = depthBasis(rig, a.profile, c.current, u);
  const TileWords tile = tileWords(Reading::depth, rig, a, units);
  if (!a.hang || !hasDepth(a.hang->state)) {
    why.figures.append(tile.verdict);
  } else {
    const HangDown& h = *a.hang;
    why.figures.append(Why::tr("Once it has swung round it hangs at %1: %2.")
                           .arg(roundLengthText(h.fly, units), depthWords(h.state)));
    if (a.depthBand) {
      why.figures.append(
          a.depthBand->fromRuns
              ? Why::tr("Four swings out of five lie in the range; its middle is %1. From real runs.")
                    .arg(roundLengthText(a.depthBand->middle, units))
              : Why::tr("Four swings out of five lie in the range; its middle is %1. A live estimate.")
                    .arg(roundLengthText(a.depthBand->middle, units)));
    }
    if (a.depthBand && a.depthBand->roundAfter) {
      why.figures.append(Why::tr("Round in %1 s, the mend included.")
                             .arg(numberText(a.depthBand->roundAfter->value(), 0)));
    }
    if (a.depthBand && a.depthBand->bottomShare > 0) {
      why.figures.append(Why::tr("On the bottom for %1 of the way across.")
                             .arg(percentText(a.depthBand->bottomShare)));
    }
    if (h.surfacesFromFly) {
      why.figures.append(Why::tr("The last %1 of line are under water.")
                             .arg(roundLengthText(*h.surfacesFromFly, units)));
    }
    if (h.junction) {
      why.figures.append(Why::tr("The floating line ends %1 down.")
                             .arg(roundLengthText(*h.junction, units)));
    }
    if (rig.water->bed) why.figures.append(Why::tr("Bed: %1.").arg(bedWords(*rig.water->bed)));
    addBasis(why.figures, rig, basis);
    if (h.heldByRod) {
      why.figures.append(Why::tr("No floating line takes up the pull: the rod holds the line, and "
                                 "raising the tip raises the fly."));
    }
  }
  why.formula = {
      Why::tr("Every piece of line is pushed by the current at its depth and pulled down by its weight "
              "in water; the shape is where all of them balance."),
      Why::tr("A tip hangs far shallower than its sink rate for a fixed time would have it: the water "
              "planes it up.")};
  const CurrentFit* fit =
      rig.water ? holding(rig.water->measured, rig.water->surfaceSpeed) : nullptr;
  if (fit) why.figures.append(measuredWords(*fit, units));
  why.limits = {
      Why::tr("The range covers the current \u00b1 %1, sink rates \u00b1 %2, drag \u00b1 %3, the fly's drag "
              "\u00d7 or \u00f7 %4, the mend \u00b1 %5 s and the angle \u00b1 %6\u00b0.")
          .arg(percentText(currentShareOf(rig, u.current)), ratingWords(rig, u.rating, units), percentText(u.drag),
               to1(u.flyDrag), to1(u.mend.value()), to1(u.angle.value())),
      basisRange(basis, u),
      Why::tr("An even current and bed: seams, boulders and back eddies are left out."),
      Why::tr("No verdict: how deep is right is for the day and you. The estimates are ours.")};
  return why;
}

}  // namespace grainwise::ui
