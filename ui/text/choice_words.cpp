// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/choice_words.h"

#include <algorithm>

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr std::size_t kMostClauses = 3;

/// "2.7–4.4 ft": two rounded lengths with one unit.
QString spanWords(Feet low, Feet high, DisplayUnits units) {
  return ChoiceWords::tr("%1–%2 %3", "from, to, unit")
      .arg(numberText(shownValue(low.value(), Measure::length, units), 1),
           numberText(shownValue(high.value(), Measure::length, units), 1), lengthUnit(units));
}

QString jointClause(const Junction& j, DisplayUnits units) {
  return ChoiceWords::tr("%1 (%2 %3)", "what a joint does, its figures, unit")
      .arg(junctionWords(j.verdict), junctionFigures(j, units), lineMassUnit(units));
}

QString depthClause(const DepthFit& depth, const std::optional<WantedWater>& wanted,
                    DisplayUnits units) {
  QString where = choiceDepth(depth, units);
  if (!wanted || !depth.share) return where;
  switch (depth.way) {
    case DepthWay::inside:
      return where;
    case DepthWay::tooShallow:
      return (*depth.share > 0.0 ? ChoiceWords::tr("rather shallow: %1")
                                 : ChoiceWords::tr("too shallow: %1"))
          .arg(where);
    case DepthWay::tooDeep:
      return (*depth.share > 0.0 ? ChoiceWords::tr("rather deep: %1")
                                 : ChoiceWords::tr("too deep: %1"))
          .arg(where);
    case DepthWay::onBottom:
      return ChoiceWords::tr("lies on the bottom");
    case DepthWay::onTop:
      return ChoiceWords::tr("stays on top");
  }
  return where;
}

QString driveClause(DriveVerdict verdict) {
  switch (verdict) {
    case DriveVerdict::carries:
      return ChoiceWords::tr("carries the fly");
    case DriveVerdict::marginal:
      return ChoiceWords::tr("only just carries the fly");
    case DriveVerdict::doesNotCarry:
      break;
  }
  return ChoiceWords::tr("does not carry the fly");
}

QString reserveClause(ReserveVerdict verdict) {
  switch (verdict) {
    case ReserveVerdict::heap:
      return ChoiceWords::tr("will land in a heap");
    case ReserveVerdict::probablyNot:
      return ChoiceWords::tr("probably will not turn over");
    case ReserveVerdict::marginal:
      return ChoiceWords::tr("turns over with little speed to spare");
    case ReserveVerdict::toSpare:
      break;
  }
  return ChoiceWords::tr("turns over with speed to spare");
}

QString criterionClause(Criterion criterion, const TipFigures& f,
                        const std::optional<WantedWater>& wanted, DisplayUnits units) {
  const QString both = ChoiceWords::tr("%1: %2", "a figure: what it means");
  switch (criterion) {
    case Criterion::junction:
      return f.joint ? jointClause(*f.joint, units) : QString();
    case Criterion::tipShare:
      if (!f.grip.tipShareVerdict) return {};
      return both.arg(ChoiceWords::tr("%1 of the head").arg(percentText(*f.grip.tipShare)),
                      tipShareWords(*f.grip.tipShareVerdict));
    case Criterion::anchor:
      return f.grip.anchorVerdict ? anchorWords(*f.grip.anchorVerdict) : QString();
    case Criterion::workingLength:
      return f.lengthVerdict ? lengthWords(*f.lengthVerdict) : QString();
    case Criterion::flyAgainstTip:
      if (!f.fly.tipToFlyVerdict) return {};
      return both.arg(ChoiceWords::tr("tip %1 × fly").arg(ratioText(*f.fly.tipToFly)),
                      flyWords(*f.fly.tipToFlyVerdict));
    case Criterion::drive:
      return f.driveVerdict ? driveClause(*f.driveVerdict) : QString();
    case Criterion::reserve:
      return f.reserveVerdict ? reserveClause(*f.reserveVerdict) : QString();
    case Criterion::depth:
      return f.depth ? depthClause(*f.depth, wanted, units) : QString();
    case Criterion::stroke:
      return f.stroke ? strokeWords(*f.stroke) : QString();
  }
  return {};
}

QString praise(const TipChoice& choice, const std::optional<WantedWater>& wanted,
               DisplayUnits units) {
  const TipFigures& f = choice.figures;
  QStringList clauses{ChoiceWords::tr("carries the fly")};
  if (f.grip.tipShare)
    clauses << ChoiceWords::tr("%1 of the head").arg(percentText(*f.grip.tipShare));
  if (f.depth) clauses << depthClause(*f.depth, wanted, units);
  if (f.stroke) clauses << strokeWords(*f.stroke);
  return clauses.join(QStringLiteral(", "));
}

QString refusal(const WalletCell& cell) {
  switch (cell.reason.value_or(Criterion::stroke)) {
    case Criterion::junction:
      return ChoiceWords::tr("hinges or collapses at the joint");
    case Criterion::tipShare:
      return ChoiceWords::tr("wrong share of the head");
    case Criterion::anchor:
      return ChoiceWords::tr("too little in the water");
    case Criterion::workingLength:
      return ChoiceWords::tr("wrong length on this rod");
    case Criterion::flyAgainstTip:
      return ChoiceWords::tr("the fly is too heavy for it");
    case Criterion::drive:
      return ChoiceWords::tr("does not carry the fly");
    case Criterion::reserve:
      return ChoiceWords::tr("will not turn over");
    case Criterion::depth:
      break;
    case Criterion::stroke:
      return ChoiceWords::tr("another stroke");
  }
  switch (cell.way) {
    case DepthWay::tooShallow:
      return ChoiceWords::tr("too shallow");
    case DepthWay::tooDeep:
      return ChoiceWords::tr("too deep");
    case DepthWay::onBottom:
      return ChoiceWords::tr("lies on the bottom");
    case DepthWay::onTop:
      return ChoiceWords::tr("stays on top");
    case DepthWay::inside:
      break;
  }
  return ChoiceWords::tr("not in the wanted water");
}

}  // namespace

Grade gradeOf(Standing standing) {
  switch (standing) {
    case Standing::fits:
      return Grade::fits;
    case Standing::watch:
      return Grade::watch;
    case Standing::rejected:
      break;
  }
  return Grade::wrong;
}

QString choiceName(const Shelf& shelf, const std::optional<std::size_t>& part,
                   DisplayUnits units) {
  return part ? partWords(shelf.parts[*part], units) : ChoiceWords::tr("no tip");
}

QString bandWords(const DepthBand& band, bool onBottom, DisplayUnits units) {
  if (onBottom) return ChoiceWords::tr("on the bottom");
  return ChoiceWords::tr("%1 down").arg(spanWords(band.low, band.high, units));
}

QString choiceDepth(const std::optional<DepthFit>& depth, DisplayUnits units) {
  if (!depth) return {};
  if (!depth->band) return ChoiceWords::tr("on top");
  return bandWords(*depth->band, isOnBottom(depth->state), units);
}

QString wantedWords(const WantedWater& wanted, DisplayUnits units) {
  return ChoiceWords::tr("%1 down").arg(spanWords(wanted.low, wanted.high, units));
}

QString choiceSentence(const TipChoice& choice, const std::optional<WantedWater>& wanted,
                       DisplayUnits units) {
  if (choice.standing == Standing::fits) return praise(choice, wanted, units);
  std::vector<Judged> list;
  std::copy_if(choice.judged.begin(), choice.judged.end(), std::back_inserter(list),
               [&](const Judged& j) { return j.zone == gradeOf(choice.standing); });
  std::stable_sort(list.begin(), list.end(),
                   [](const Judged& a, const Judged& b) { return a.grade < b.grade; });
  list.resize(std::min(list.size(), kMostClauses));
  QStringList clauses;
  for (const Judged& j : list) {
    clauses << criterionClause(j.criterion, choice.figures, wanted, units);
  }
  return clauses.join(QStringLiteral("; "));
}

QString strokeWords(const Stroke& stroke) {
  QString text;
  switch (stroke.verdict) {
    case StrokeVerdict::same:
      text = ChoiceWords::tr("same stroke");
      break;
    case StrokeVerdict::adjustLonger:
      text = ChoiceWords::tr("longer sweep");
      break;
    case StrokeVerdict::adjustShorter:
      text = ChoiceWords::tr("shorter sweep");
      break;
    case StrokeVerdict::different:
      text = ChoiceWords::tr("a different cast");
      break;
  }
  if (stroke.slowerLift) text = ChoiceWords::tr("%1, slower lift").arg(text);
  if (stroke.quickerLift) text = ChoiceWords::tr("%1, quicker lift").arg(text);
  return text;
}

QString criterionName(Criterion criterion) {
  switch (criterion) {
    case Criterion::junction:
      return ChoiceWords::tr("joint");
    case Criterion::tipShare:
      return ChoiceWords::tr("tip share");
    case Criterion::anchor:
      return ChoiceWords::tr("line in the water");
    case Criterion::workingLength:
      return ChoiceWords::tr("length on the rod");
    case Criterion::flyAgainstTip:
      return ChoiceWords::tr("fly against tip");
    case Criterion::drive:
      return ChoiceWords::tr("carrying the fly");
    case Criterion::reserve:
      return ChoiceWords::tr("turnover");
    case Criterion::depth:
      return ChoiceWords::tr("depth");
    case Criterion::stroke:
      break;
  }
  return ChoiceWords::tr("stroke");
}

QString gradeWords(const TipChoice& choice) {
  QStringList lines;
  for (const Judged& j : choice.judged) {
    lines << ChoiceWords::tr("%1: %2", "what is judged: its grade").arg(criterionName(j.criterion), percentText(j.grade));
  }
  return lines.join(QLatin1Char('\n'));
}

QString needWords(ChoiceNeed need) {
  switch (need) {
    case ChoiceNeed::none:
      return {};
    case ChoiceNeed::head:
      return ChoiceWords::tr(
          "No head to put a tip on: start from a rod, or drop a head on the line.");
    case ChoiceNeed::fly:
      return ChoiceWords::tr(
          "No fly, and everything behind it is there to carry it: drop a fly on the line "
          "first.");
    case ChoiceNeed::flyMass:
      return ChoiceWords::tr(
          "The fly has no mass yet: weigh it, or build it from hook, eyes and wire.");
    case ChoiceNeed::shelf:
      return ChoiceWords::tr("The shelf has no tip and no coated leader: add some to it.");
    case ChoiceNeed::pool:
      return ChoiceWords::tr("No pool yet, so depth is not judged: choose the pool to be fished.");
    case ChoiceNeed::wantedWater:
      return ChoiceWords::tr(
          "This pool does not say where the fly is wanted, so depth is not judged: say so "
          "under Pools.");
    case ChoiceNeed::nothingFits:
      return ChoiceWords::tr(
          "Nothing on the shelf will do; what comes nearest stands first. Look under Fixes, "
          "or try another fly or head.");
  }
  return {};
}

QString walletNeedWords(ChoiceNeed need) {
  if (need == ChoiceNeed::pool) return ChoiceWords::tr("No pool is chosen: tick the pools of the trip.");
  if (need == ChoiceNeed::nothingFits) {
    return ChoiceWords::tr(
        "Nothing on the shelf serves any pool and fly of this trip: try other flies or another head.");
  }
  return needWords(need);
}

QString adviceWords(const WaterChange& change, DisplayUnits units) {
  const QString depth = roundLengthText(change.depth, units);
  const QString end = change.inside
                          ? ChoiceWords::tr("about %1 down, where it is wanted").arg(depth)
                          : ChoiceWords::tr("about %1 down, nearer to it").arg(depth);
  QString what;
  switch (change.handle) {
    case WaterHandle::angle:
      what = ChoiceWords::tr("cast at %1°").arg(numberText(change.to, 0));
      break;
    case WaterHandle::mend:
      what = ChoiceWords::tr("%1 s of slack").arg(numberText(change.to, 0));
      break;
    case WaterHandle::lineOut:
      what = ChoiceWords::tr("%1 of line out").arg(lengthText(Feet(change.to), units));
      break;
  }
  return ChoiceWords::tr("%1: %2", "a change on the water: what it does").arg(what, end);
}

QString uncoveredWords(const WalletUse& use, const Shelf& shelf, const WalletGrid& grid,
                       DisplayUnits units) {
  if (!use.nearest) return ChoiceWords::tr("nothing was tried");
  const QString nearest = choiceName(shelf, grid.tips[*use.nearest], units);
  if (use.beyondLimit) return ChoiceWords::tr("%1 would do, but for the limits set").arg(nearest);
  return ChoiceWords::tr("nearest is %1: %2").arg(nearest, refusal(use.cell));
}

}  // namespace grainwise::ui
