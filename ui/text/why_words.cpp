// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/why_words.h"

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

QString to2(double value) { return numberText(value, 2); }

QString rule() { return Why::tr("The rule is common practice, no source; the limits are ours."); }

QString rangeText(const GrainWindow& window, DisplayUnits units) {
  return Why::tr("%1\u2013%2", "a range of grains, the second with unit")
      .arg(massNumber(window.low, units), massText(window.high, units));
}

/// What cannot be said yet, each with what to do about it.
void addMissing(QStringList& lines, const Analysis& a, std::initializer_list<Missing> concerns) {
  for (const Missing what : a.missing) {
    for (const Missing concern : concerns) {
      if (what == concern) lines.append(Why::tr("Not yet: %1.").arg(missingWords(what)));
    }
  }
}

QStringList jointFigures(const Rig& rig, const Analysis& a, DisplayUnits units) {
  QStringList lines;
  for (const Junction& j : a.junctions) {
    lines.append(Why::tr("%1, %2 into %3: %4. Ratio %5; right at the joint %6 to %7.")
                     .arg(stationText(j.at, units), partWords(rig.parts[j.rodSide], units),
                          partWords(rig.parts[j.flySide], units), junctionSentence(j, rig, units),
                          to2(j.ratio3ft), lineMassNumber(j.rodSideMass, units),
                          lineMassNumber(j.flySideMass, units)));
  }
  if (a.worstJunction) {
    const Junction& j = a.junctions[*a.worstJunction];
    const double echo = j.echo < 0 ? -j.echo : j.echo;
    lines.append(Why::tr("A small pulse sends back %1 of itself at the joint in the tile. A whole "
                         "loop loses nothing by that: no verdict follows.")
                     .arg(percentText(echo)));
  }
  return lines;
}

WhyWords whyHinge(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  why.figures = jointFigures(rig, a, units);
  addMissing(why.figures, a, {Missing::head, Missing::tip});
  const JunctionLimits& l = c.rules.junctions;
  why.formula = {
      Why::tr("Ratio = mean weight per foot of the %1 on the fly's side / that of the %1 on the rod's "
              "side. Where the line is shorter, what there is; loops are not counted.")
          .arg(lengthText(l.window, units)),
      Why::tr("A loop bends about five feet of line at once, so the last inch of a taper decides "
              "nothing.")};
  why.limits = {
      Why::tr("Over %1 it hinges. %2\u2013%1: unless slow and open. %3\u2013%2: steps up, has to be forced.")
          .arg(to2(l.hinge), to2(l.slow), to2(l.stepUp)),
      Why::tr("%1\u2013%2 runs level. %3\u2013%1 is a smooth drop. Under %3 the front collapses.")
          .arg(to2(l.drop), to2(l.stepUp), to2(l.collapse)),
      Why::tr("Into more than %1 of bare nylon: %2 and over is stout enough, under %3 will pile.")
          .arg(lengthText(l.nylonFree, units), to2(l.nylonFine), to2(l.nylonThin)),
      rule()};
  return why;
}

WhyWords whyShare(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const Grip& g = a.grip;
  if (g.head > Grains(0)) {
    why.figures.append(Why::tr("Tips and coated leaders, loops included: %1. Head: %2.")
                           .arg(massText(g.tip, units), massText(g.head, units)));
  }
  if (g.tipShare && g.tip > Grains(0)) {
    why.figures.append(Why::tr("Tip share: %1.").arg(percentText(*g.tipShare)));
  }
  if (g.anchorRatio && rig.rod && rig.rod->length) {
    QString line = Why::tr("Anchor, all that is between head and fly: %1 on a rod of %2, %3 rods.")
                       .arg(lengthText(g.anchor, units), lengthText(*rig.rod->length, units),
                            to2(*g.anchorRatio));
    why.figures.append(line);
  }
  why.figures.append(g.sinking > Grains(0)
                         ? Why::tr("To lift: %1 of sinking line.").arg(massText(g.sinking, units))
                         : Why::tr("To lift: nothing sinks."));
  if (g.table) {
    why.figures.append(
        Why::tr("The trade's table names a ten-foot tip of %1 for a short head of these grains "
                "(common practice, no source). It is this rule with cliffs: a teaching line, not the "
                "verdict.")
            .arg(lineMassText(*g.table, units)));
  }
  addMissing(why.figures, a, {Missing::head, Missing::headStyle, Missing::tip, Missing::rod,
                              Missing::rodLength});
  why.formula = {Why::tr("Tip share = grains of tips and coated leaders / grains of the head."),
                 Why::tr("Anchor = everything between head and fly / length of the rod: what the "
                         "water can hold.")};
  const GripLimits& l = c.rules.grip;
  why.limits = {
      Why::tr("Tip share, short heads: under %1 no grip, to %2 light, to %3 right, to %4 heavy, "
              "beyond too much tip.")
          .arg(percentText(l.noGrip), percentText(l.light), percentText(l.right),
               percentText(l.heavy)),
      Why::tr("Fine tapers and long bellies: up to %1, no lower limit.")
          .arg(percentText(l.longHeadMost)),
      Why::tr("Anchor: under %1 rods too little in the water, %2\u2013%3 good.")
          .arg(to2(l.anchorLeast), to2(l.anchorGood), to2(l.anchorMost)),
      rule()};
  return why;
}

WhyWords whyFly(const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const FlyFit& f = a.fly;
  if (f.tipToFly) {
    why.figures.append(
        Why::tr("The last %1 of line weigh %2, the wet fly %3: %4 times the fly.")
            .arg(roundLengthText(f.tipWindowLength, units), massText(f.tipWindow, units),
                 massText(f.fly, units), ratioText(*f.tipToFly)));
  }
  if (f.feetOfTip) {
    why.figures.append(Why::tr("The fly is as heavy as %1 of that line.")
                           .arg(roundLengthText(*f.feetOfTip, units)));
  }
  if (f.nylonLength > Feet(0)) {
    QString line = Why::tr("Bare nylon: %1, %2.")
                       .arg(lengthText(f.nylonLength, units), massText(f.nylon, units));
    if (f.leaderToFly) {
      line = Why::tr("Bare nylon: %1, %2, %3 times the fly.")
                 .arg(lengthText(f.nylonLength, units), massText(f.nylon, units),
                      ratioText(*f.leaderToFly));
    }
    why.figures.append(line);
  }
  addMissing(why.figures, a, {Missing::fly, Missing::flyMass, Missing::head});
  const GripLimits& l = c.rules.grip;
  why.formula = {
      Why::tr("Fly = grains of the last %1 of line that is not bare nylon, loops not counted / grains "
              "of the wet fly.")
          .arg(lengthText(l.tipWindow, units)),
      Why::tr("A big fly that is light is not heavy; how bulky it is does not count here.")};
  why.limits = {
      Why::tr("%1 and over: the tip carries it. %2\u2013%1: heavy, slow and open stroke. Under %2: too "
              "heavy for this tip.")
          .arg(to2(l.flyCarries), to2(l.flyHeavy)),
      Why::tr("With more than %1 of nylon, its grains against the fly too: %2 and over is fine, under "
              "%3 too heavy for this leader.")
          .arg(lengthText(l.nylonFree, units), to2(l.leaderFine), to2(l.leaderWatch)),
      rule()};
  return why;
}

/// The line-number table of the trade association: a reference line, never a verdict here.
QString tableLine(const Rig& rig, const Analysis& a, DisplayUnits units) {
  if (a.singleHandRow) {
    const standards::SingleHandRow& row = *a.singleHandRow;
    return Why::tr("For reference, the trade association's table (AFFTA), one hand #%1: %2 over the "
                   "first 30 ft, aim %3.")
        .arg(row.lineNumber)
        .arg(rangeText({row.low, row.high}, units), massText(row.target, units));
  }
  if (!rig.rod || rig.rod->hands == 1 || !rig.rod->lineNumber) return {};
  const int number = static_cast<int>(*rig.rod->lineNumber);
  if (number != *rig.rod->lineNumber) return {};
  using standards::TwoHandClass;
  QStringList columns;
  for (const auto which : {TwoHandClass::h40ft, TwoHandClass::s55ft, TwoHandClass::m65ft,
                           TwoHandClass::l80ft}) {
    const auto row = standards::twoHand(which, number);
    if (!row) return {};
    columns.append(Why::tr("%1 at %2", "grains, at which length of line")
                       .arg(massText(*row, units),
                            lengthText(standards::weightPoint(which), units)));
  }
  return Why::tr("For reference, the trade association's table (AFFTA), two hands #%1: %2. No "
                 "tolerance is published and no verdict follows.")
      .arg(number)
      .arg(columns.join(QStringLiteral(", ")));
}

QString windowLine(const RodFit& r, DisplayUnits units) {
  const QString window = rangeText(*r.window, units);
  return r.windowFromLineNumber
             ? Why::tr("Window %1: ours, from the line number alone, since the rod states none.").arg(window)
             : Why::tr("Window %1: the rod's own.").arg(window);
}

WhyWords whyHead(const Rig& rig, const Analysis& a, const Conditions& c, DisplayUnits units) {
  WhyWords why;
  const RodFit& r = a.rod;
  if (r.head) {
    why.figures.append(Why::tr("Head, all its pieces: %1. With the tip: %2, of which the window does "
                               "not speak.")
                           .arg(massText(*r.head, units), massText(a.totals.headAndTip, units)));
  }
  if (r.window) why.figures.append(windowLine(r, units));
  if (r.workingLength && r.lengthRatio) {
    why.figures.append(Why::tr("Working length: %1, %2 rods.")
                           .arg(lengthText(*r.workingLength, units), to2(*r.lengthRatio)));
  }
  if (a.totals.first30ft) {
    why.figures.append(Why::tr("The 30 ft of head nearest the fly: %1.")
                           .arg(massText(*a.totals.first30ft, units)));
  }
  const QString table = tableLine(rig, a, units);
  if (!table.isEmpty()) why.figures.append(table);
  addMissing(why.figures, a, {Missing::head, Missing::headStyle, Missing::rod, Missing::rodLength,
                              Missing::window});
  why.formula = {Why::tr("The grains on a rod are for the head alone, by the style of head."),
                 Why::tr("Working length = back of the head to the end of the tip, for a fine taper "
                         "the head alone / length of the rod.")};
  why.limits = {Why::tr("Within %1 of the window it fits; to %2 a touch light or heavy; beyond, the "
                        "wrong head for this rod.")
                    .arg(massText(c.rules.rod.inside, units), massText(c.rules.rod.touch, units))};
  if (r.lengthBand) {
    const LengthBand& band = *r.lengthBand;
    why.limits.append(Why::tr("Working length for this head: usual %1\u2013%2 rods, limits %3\u2013%4.")
                          .arg(to2(band.usualLow), to2(band.usualHigh), to2(band.low),
                               to2(band.high)));
  }
  why.limits += {rule(), Why::tr("The rod maker's own figure comes first.")};
  return why;
}

}  // namespace

WhyWords whyWords(Reading reading, const Rig& rig, const Analysis& analysis,
                  const Conditions& conditions, DisplayUnits units) {
  switch (reading) {
    case Reading::junction:
      return whyHinge(rig, analysis, conditions, units);
    case Reading::tipShare:
    case Reading::anchor:
      return whyShare(rig, analysis, conditions, units);
    case Reading::flyAgainstTip:
    case Reading::flyAgainstLeader:
      return whyFly(analysis, conditions, units);
    case Reading::headOnRod:
    case Reading::workingLength:
      return whyHead(rig, analysis, conditions, units);
    case Reading::drive:
    case Reading::reserve:
      return whyTurnover(rig, analysis, conditions, units);
    case Reading::depth:
      return whyDepth(rig, analysis, conditions, units);
  }
  return {};
}

}  // namespace grainwise::ui
