// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/why_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <cmath>

#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

QString tr(const char* text) { return QCoreApplication::translate("Why", text); }

QString num(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }

QString percent(double share) { return num(100 * share, 0) + QStringLiteral(" %"); }

QString whose() { return tr("These limits are common practice or ours, no source; the water has no cliffs."); }

WhyWords whyHinge(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  for (const Junction& j : a.junctions) {
    why.figures.append(tr("%1, %2 into %3: %4 (ratio %5; at the joint itself %6 to %7)")
                           .arg(stationText(j.at, units), partWords(rig.parts[j.rodSide], units),
                                partWords(rig.parts[j.flySide], units), junctionTag(j, units),
                                num(j.ratio3ft, 2), lineMassNumber(j.rodSideMass, units),
                                lineMassNumber(j.flySideMass, units)));
  }
  if (a.worstJunction) {
    const Junction& j = a.junctions[*a.worstJunction];
    why.figures.append(tr("A small pulse at that joint sends back %1 % of itself; no loss of a whole loop "
                          "follows from that.").arg(num(100 * std::abs(j.echo), 0)));
  }
  why.formula = {tr("Ratio = mean of the %1 on the fly side / mean of the %1 on the rod side, shorter where the "
                    "line is shorter, loops not counted.").arg(lengthText(c.junctions.window, units)),
                 tr("A loop bends about five feet of line at once: the last inch of a taper decides nothing.")};
  const JunctionLimits& l = c.junctions;
  why.limits = {tr("Over %1 hinges; %2–%1 hinges unless slow and open; %3–%2 steps up and has to be forced.")
                    .arg(num(l.hinge, 2), num(l.slow, 2), num(l.stepUp, 2)),
                tr("%1–%2 runs level; %3–%1 drops smoothly; under %3 the front collapses.")
                    .arg(num(l.drop, 2), num(l.stepUp, 2), num(l.collapse, 2)),
                tr("Into more than %1 of bare nylon: %2 and over is fine, under %3 the butt piles.")
                    .arg(lengthText(l.nylonFree, units), num(l.nylonFine, 2), num(l.nylonThin, 2)),
                whose()};
  return why;
}

WhyWords whyShare(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const Grip& g = a.grip;
  why.figures.append(tr("Tips and coated leaders, loops included: %1; head: %2.")
                         .arg(massText(g.tip, units), massText(g.head, units)));
  if (g.tipShare) why.figures.append(tr("Share %1.").arg(percent(*g.tipShare)));
  if (g.anchorRatio && rig.rod && rig.rod->length) {
    why.figures.append(tr("Between head and fly: %1 on a rod of %2, %3 rods.")
                           .arg(lengthText(g.anchor, units), lengthText(*rig.rod->length, units),
                                num(*g.anchorRatio, 2)));
  }
  why.figures.append(tr("Sinking line to lift: %1.").arg(massText(g.sinking, units)));
  if (g.table) {
    why.figures.append(tr("The trade's table for a short head of these grains names a ten-foot tip of %1. It is this "
                          "rule with cliffs: a teaching line, not the verdict.").arg(lineMassText(*g.table, units)));
  }
  why.formula = {tr("Tip share = grains of tips and coated leaders / grains of the head."),
                 tr("What lies between head and fly holds the water: measured in lengths of the rod.")};
  const GripLimits& l = c.grip;
  why.limits = {tr("Short heads: under %1 no grip, to %2 light, to %3 right, to %4 heavy, beyond too much tip.")
                    .arg(percent(l.noGrip), percent(l.light), percent(l.right), percent(l.heavy)),
                tr("Fine tapers and long bellies: up to %1, no lower limit.").arg(percent(l.longHeadMost)),
                tr("In the water: under %1 rods is too little, %2–%3 is good.")
                    .arg(num(l.anchorLeast, 2), num(l.anchorGood, 2), num(l.anchorMost, 1)),
                whose()};
  return why;
}

WhyWords whyFly(const Rig&, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const FlyFit& f = a.fly;
  why.figures.append(tr("The last %1 of line weigh %2; the wet fly %3.")
                         .arg(lengthText(f.tipWindowLength, units), massText(f.tipWindow, units),
                              massText(f.fly, units)));
  if (f.tipToFly) why.figures.append(tr("That is %1 times the fly.").arg(num(*f.tipToFly, 1)));
  if (f.feetOfTip) {
    why.figures.append(tr("The fly is as heavy as %1 of that line.").arg(lengthText(*f.feetOfTip, units)));
  }
  if (f.leaderToFly) {
    why.figures.append(tr("%1 of nylon weigh %2: %3 times the fly.")
                           .arg(lengthText(f.nylonLength, units), massText(f.nylon, units),
                                num(*f.leaderToFly, 1)));
  }
  const GripLimits& l = c.grip;
  why.formula = {tr("Grains of the last %1 of line that is not bare nylon, loops not counted / grains of the wet fly.")
                     .arg(lengthText(l.tipWindow, units))};
  why.limits = {tr("%1 and over carries it; %2–%1 asks for a slow, open stroke; under %2 it is too heavy for this tip.")
                    .arg(num(l.flyCarries, 1), num(l.flyHeavy, 1)),
                tr("With more than %1 of nylon, the nylon against the fly: %2 and over is fine, under %3 too heavy.")
                    .arg(lengthText(l.nylonFree, units), num(l.leaderFine, 1), num(l.leaderWatch, 1)),
                whose()};
  return why;
}

WhyWords whyHead(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const RodFit& r = a.rod;
  if (r.head) why.figures.append(tr("Head, all its pieces: %1.").arg(massText(*r.head, units)));
  why.figures.append(tr("Head and tip together: %1; the window does not speak of it.")
                         .arg(massText(a.totals.headAndTip, units)));
  if (r.window) {
    const QString window = tr("%1–%2").arg(massNumber(r.window->low, units), massText(r.window->high, units));
    why.figures.append(r.windowFromLineNumber
                           ? tr("Window %1: ours for this line number, since the rod states none.").arg(window)
                           : tr("Window %1, the rod's own.").arg(window));
  }
  if (r.workingLength && r.lengthRatio) {
    QString line = tr("Working length %1, %2 rods").arg(lengthText(*r.workingLength, units), num(*r.lengthRatio, 2));
    if (r.lengthBand) {
      line += tr("; usual %1–%2").arg(num(r.lengthBand->usualLow, 1), num(r.lengthBand->usualHigh, 1));
    }
    why.figures.append(line + QLatin1Char('.'));
  }
  if (a.totals.first30ft) {
    why.figures.append(tr("The 30 ft of head nearest the fly: %1.").arg(massText(*a.totals.first30ft, units)));
  }
  if (a.singleHandRow) {
    const auto& row = *a.singleHandRow;
    why.figures.append(tr("Trade association's table, single hand #%1: %2–%3 over the first 30 ft, aim %4.")
                           .arg(row.lineNumber).arg(massNumber(row.low, units), massText(row.high, units),
                                massText(row.target, units)));
  } else if (rig.rod && rig.rod->lineNumber) {
    const int number = int(*rig.rod->lineNumber);
    const auto row = standards::twoHand(standards::TwoHandClass::h40ft, number);
    if (row && *rig.rod->lineNumber == number) {
      why.figures.append(tr("For reference, the trade association's two-handed table, #%1, shooting head to 40 ft: %2. No "
                            "tolerance is published; no verdict follows.").arg(number).arg(massText(*row, units)));
    }
  }
  why.formula = {tr("The grains on a rod are for the head alone, by the style of head.")};
  why.limits = {tr("Within %1 of the window it fits; to %2 a touch light or heavy; beyond, the wrong head for this rod.")
                    .arg(massText(c.rod.inside, units), massText(c.rod.touch, units)),
                tr("The rod maker's limits come first."), whose()};
  return why;
}

}  // namespace

WhyWords whyWords(Reading reading, const Rig& rig, const Analysis& analysis,
                  const Conditions& conditions, DisplayUnits units) {
  switch (reading) {
    case Reading::hinge:
      return whyHinge(rig, analysis, conditions, units);
    case Reading::tipShare:
      return whyShare(rig, analysis, conditions, units);
    case Reading::fly:
      return whyFly(rig, analysis, conditions, units);
    case Reading::head:
      return whyHead(rig, analysis, conditions, units);
  }
  return {};
}

}  // namespace grainwise::ui
