// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/choice_words.h"

#include <algorithm>

#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise::words {
namespace {

constexpr std::size_t kMostClauses = 3;

std::string perFoot(GrainsPerFoot mass) { return fixedText(mass.value(), 1); }

std::string rangeText(Feet low, Feet high) {
  return roundFeetText(low.value()) + "-" + roundFeetText(high.value()) + " ft";
}

std::string jointText(const Junction& j) {
  return std::string(of(j.verdict)) + " (" + perFoot(j.rodSideMean) + " to " +
         perFoot(j.flySideMean) + " gr/ft)";
}

std::string depthClause(const DepthFit& depth, const std::optional<WantedWater>& wanted) {
  std::string where = depthText(depth);
  if (!wanted || !depth.share) return where;
  const std::string behind = ", wanted " + wantedText(*wanted);
  switch (depth.way) {
    case DepthWay::inside:
      return *depth.share > 0.0 ? where : where + behind;
    case DepthWay::tooShallow:
      return (*depth.share > 0.0 ? "rather shallow: " : "too shallow: ") + where + behind;
    case DepthWay::tooDeep:
      return (*depth.share > 0.0 ? "rather deep: " : "too deep: ") + where + behind;
    case DepthWay::onBottom:
      return "lies on the bottom" + behind;
    case DepthWay::onTop:
      return "stays on top" + behind;
  }
  return where;
}

const char* wayText(DepthWay way) {
  switch (way) {
    case DepthWay::tooShallow:
      return "too shallow";
    case DepthWay::tooDeep:
      return "too deep";
    case DepthWay::onBottom:
      return "lies on the bottom";
    case DepthWay::onTop:
      return "stays on top";
    case DepthWay::inside:
      break;
  }
  return "not in the wanted water";
}

std::string strokeText(const Stroke& stroke) {
  std::string text = of(stroke.verdict);
  if (stroke.slowerLift) text += ", slower lift";
  if (stroke.quickerLift) text += ", quicker lift";
  return text;
}

/// The criteria of one zone, the worst grade first.
std::vector<Criterion> inZone(const TipChoice& choice, Grade zone) {
  std::vector<Judged> list;
  std::copy_if(choice.judged.begin(), choice.judged.end(), std::back_inserter(list),
               [&](const Judged& j) { return j.zone == zone; });
  std::stable_sort(list.begin(), list.end(),
                   [](const Judged& a, const Judged& b) { return a.grade < b.grade; });
  std::vector<Criterion> criteria;
  for (const Judged& j : list) criteria.push_back(j.criterion);
  return criteria;
}

std::string praise(const TipChoice& choice, const std::optional<WantedWater>& wanted) {
  const TipFigures& f = choice.figures;
  std::string text = "carries the fly";
  if (f.grip.tipShare) text += ", " + percentText(*f.grip.tipShare) + " of the head";
  if (f.depth) text += ", " + depthClause(*f.depth, wanted);
  if (f.stroke && f.stroke->verdict == StrokeVerdict::same) text += ", " + strokeText(*f.stroke);
  return text;
}

}  // namespace

const char* keyOf(Criterion criterion) {
  switch (criterion) {
    case Criterion::junction:
      return "junction";
    case Criterion::tipShare:
      return "tip-share";
    case Criterion::anchor:
      return "anchor";
    case Criterion::workingLength:
      return "working-length";
    case Criterion::flyAgainstTip:
      return "fly-against-tip";
    case Criterion::drive:
      return "drive";
    case Criterion::reserve:
      return "reserve";
    case Criterion::depth:
      return "depth";
    case Criterion::stroke:
      return "stroke";
  }
  return "";
}

const char* keyOf(Standing standing) {
  switch (standing) {
    case Standing::fits:
      return "fits";
    case Standing::watch:
      return "watch";
    case Standing::rejected:
      return "rejected";
  }
  return "";
}

const char* keyOf(ChoiceNeed need) {
  switch (need) {
    case ChoiceNeed::none:
      return "none";
    case ChoiceNeed::head:
      return "head";
    case ChoiceNeed::fly:
      return "fly";
    case ChoiceNeed::flyMass:
      return "fly-mass";
    case ChoiceNeed::shelf:
      return "shelf";
    case ChoiceNeed::pool:
      return "pool";
    case ChoiceNeed::wantedWater:
      return "wanted-water";
    case ChoiceNeed::nothingFits:
      return "nothing-fits";
  }
  return "";
}

const char* keyOf(WaterHandle handle) {
  switch (handle) {
    case WaterHandle::angle:
      return "angle";
    case WaterHandle::mend:
      return "mend";
    case WaterHandle::lineOut:
      return "line-out";
  }
  return "";
}

std::string nameOf(const Shelf& shelf, const std::optional<std::size_t>& part) {
  return part ? onOneLine(nameOf(shelf.parts[*part])) : "no tip";
}

std::string depthText(const std::optional<DepthFit>& depth) {
  if (!depth) return "";
  if (!depth->band) return "on top";
  if (isOnBottom(depth->state)) return "on the bottom";
  return rangeText(depth->band->low, depth->band->high) + " down";
}

std::string wantedText(const WantedWater& wanted) {
  return rangeText(wanted.low, wanted.high) + " down";
}

std::string criterionText(Criterion criterion, const TipFigures& f,
                          const std::optional<WantedWater>& wanted) {
  switch (criterion) {
    case Criterion::junction:
      return f.joint ? jointText(*f.joint) : "";
    case Criterion::tipShare:
      if (!f.grip.tipShareVerdict) return "";
      return percentText(*f.grip.tipShare) + " of the head: " + of(*f.grip.tipShareVerdict);
    case Criterion::anchor:
      if (!f.grip.anchorVerdict) return "";
      return roundFeetText(f.grip.anchor.value()) + " ft between head and fly: " +
             of(*f.grip.anchorVerdict);
    case Criterion::workingLength:
      if (!f.lengthVerdict) return "";
      return ratioText(*f.lengthRatio) + " rods of line: " + of(*f.lengthVerdict);
    case Criterion::flyAgainstTip:
      if (!f.fly.tipToFlyVerdict) return "";
      return "tip " + fixedText(*f.fly.tipToFly, 1) + " x fly: " + of(*f.fly.tipToFlyVerdict);
    case Criterion::drive:
      if (!f.driveVerdict) return "";
      if (*f.driveVerdict == DriveVerdict::marginal) return "only just carries the fly";
      return *f.driveVerdict == DriveVerdict::carries ? "carries the fly" : "does not carry the fly";
    case Criterion::reserve:
      if (!f.reserveVerdict) return "";
      if (*f.reserveVerdict == ReserveVerdict::marginal) {
        return "turns over with little speed to spare";
      }
      return of(*f.reserveVerdict);
    case Criterion::depth:
      return f.depth ? depthClause(*f.depth, wanted) : "";
    case Criterion::stroke:
      return f.stroke ? strokeText(*f.stroke) : "";
  }
  return "";
}

std::vector<std::string> choiceReasons(const TipChoice& choice,
                                       const std::optional<WantedWater>& wanted) {
  std::vector<std::string> reasons;
  for (const Criterion c : inZone(choice, Grade::wrong)) {
    reasons.push_back(criterionText(c, choice.figures, wanted));
  }
  return reasons;
}

std::string choiceSentence(const TipChoice& choice, const std::optional<WantedWater>& wanted) {
  if (choice.standing == Standing::fits) return praise(choice, wanted);
  const Grade zone = choice.standing == Standing::rejected ? Grade::wrong : Grade::watch;
  std::string text;
  std::size_t clauses = 0;
  for (const Criterion c : inZone(choice, zone)) {
    if (clauses++ == kMostClauses) break;
    if (!text.empty()) text += "; ";
    text += criterionText(c, choice.figures, wanted);
  }
  return text;
}

std::string needText(ChoiceNeed need) {
  switch (need) {
    case ChoiceNeed::none:
      return "";
    case ChoiceNeed::head:
      return "there is no head to put a tip on: start from the rod, or put a head on first";
    case ChoiceNeed::fly:
      return "there is no fly, and everything behind it is there to carry it: put a fly on first";
    case ChoiceNeed::flyMass:
      return "the fly's mass is not known: weigh it, or work it out from hook, eyes and wire";
    case ChoiceNeed::shelf:
      return "the shelf has no tip and no coated leader: add some to it, or take the shelf that the "
             "program carries";
    case ChoiceNeed::pool:
      return "no pool is chosen: depth is not judged; choose the pool that is to be fished";
    case ChoiceNeed::wantedWater:
      return "this pool does not say where the fly is wanted: depth is not judged; give it feet off "
             "the bottom or below the surface";
    case ChoiceNeed::nothingFits:
      return "nothing on the shelf will do: the one that comes nearest stands first; try the single "
             "changes under fixes, another fly, or another head";
  }
  return "";
}

std::string walletNeedText(ChoiceNeed need) {
  if (need == ChoiceNeed::pool) return "there is no pool to pack for: add the pools of the trip";
  if (need == ChoiceNeed::nothingFits) {
    return "nothing on the shelf serves any pool and fly of this trip: take other flies, another head, "
           "or a shelf with more on it";
  }
  return needText(need);
}

std::string adviceText(const WaterChange& change) {
  std::string text;
  const std::string to = fixedText(change.to, 0), from = fixedText(change.from, 0);
  switch (change.handle) {
    case WaterHandle::angle:
      text = "cast at " + to + " instead of " + from + " degrees";
      break;
    case WaterHandle::mend:
      text = to + " instead of " + from + " s of slack";
      break;
    case WaterHandle::lineOut:
      text = to + " instead of " + from + " ft of line out";
      break;
  }
  text += ": about " + roundFeetText(change.depth.value()) + " ft down";
  return text + (change.inside ? ", in the wanted water" : ", nearer to the wanted water");
}

std::string uncoveredText(const WalletUse& use, const Shelf& shelf, const WalletGrid& grid) {
  if (!use.nearest) return "nothing was tried";
  const std::string nearest = nameOf(shelf, grid.tips[*use.nearest]);
  if (use.beyondLimit) return nearest + " would do, but for the limits set";
  std::string why = use.cell.reason ? keyOf(*use.cell.reason) : "";
  switch (use.cell.reason.value_or(Criterion::stroke)) {
    case Criterion::junction:
      why = "hinges or collapses at the joint";
      break;
    case Criterion::tipShare:
      why = "its share of the head";
      break;
    case Criterion::anchor:
      why = "too little in the water";
      break;
    case Criterion::workingLength:
      why = "the working length";
      break;
    case Criterion::flyAgainstTip:
      why = "the fly is too heavy for it";
      break;
    case Criterion::drive:
      why = "does not carry the fly";
      break;
    case Criterion::reserve:
      why = "will not turn over";
      break;
    case Criterion::depth:
      why = wayText(use.cell.way);
      break;
    case Criterion::stroke:
      break;
  }
  return "nearest is " + nearest + ": " + why;
}

}  // namespace grainwise::words
