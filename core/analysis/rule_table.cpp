// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/rule_table.h"

#include <algorithm>
#include <type_traits>

namespace grainwise {
namespace {

using Group = RuleGroup;
using Unit = RuleUnit;
constexpr auto kOurs = RuleOrigin::ours;
constexpr auto kTrade = RuleOrigin::commonPractice;

template <auto... Path>
double getAt(const Rules& rules) {
  const auto& value = (rules.*....*Path);
  if constexpr (std::is_same_v<std::remove_cvref_t<decltype(value)>, double>) {
    return value;
  } else {
    return value.value();
  }
}

template <auto... Path>
void setAt(Rules& rules, double to) {
  auto& value = (rules.*....*Path);
  value = std::remove_cvref_t<decltype(value)>(to);
}

/// `Path` leads from the rules to the limit.
template <auto... Path>
RuleRow rowOf(const char* key, Group group, const char* what, Unit unit, RuleOrigin origin,
              double low, double high) {
  return {key, group, what, unit, origin, low, high, &getAt<Path...>, &setAt<Path...>};
}

std::vector<RuleRow> makeRows() {
  return {
      rowOf<&Rules::junctions, &JunctionLimits::hinge>(
          "joints/hinge", Group::joints, "a joint hinges over this ratio, fly side to rod side",
          Unit::ratio, kTrade, 1.05, 5),
      rowOf<&Rules::junctions, &JunctionLimits::slow>(
          "joints/slow", Group::joints, "over this it hinges unless the stroke is slow and open",
          Unit::ratio, kTrade, 1.02, 4),
      rowOf<&Rules::junctions, &JunctionLimits::stepUp>(
          "joints/step_up", Group::joints, "over this it steps up and has to be forced",
          Unit::ratio, kTrade, 1.0, 3),
      rowOf<&Rules::junctions, &JunctionLimits::drop>("joints/drop", Group::joints,
                                                      "under this it is a drop, no longer level",
                                                      Unit::ratio, kTrade, 0.05, 1.0),
      rowOf<&Rules::junctions, &JunctionLimits::collapse>("joints/collapse", Group::joints,
                                                          "under this the front collapses",
                                                          Unit::ratio, kTrade, 0.01, 0.95),
      rowOf<&Rules::junctions, &JunctionLimits::window>("joints/window", Group::joints,
                                                        "line on each side whose mean is taken",
                                                        Unit::feet, kOurs, 0.5, 10),
      rowOf<&Rules::junctions, &JunctionLimits::nylonFree>(
          "joints/nylon_free", Group::joints, "bare nylon up to this length has no rule",
          Unit::feet, kTrade, 0, 20),
      rowOf<&Rules::junctions, &JunctionLimits::nylonFine>(
          "joints/nylon_fine", Group::joints, "longer nylon is stout enough from this ratio on",
          Unit::ratio, kOurs, 0.02, 1.0),
      rowOf<&Rules::junctions, &JunctionLimits::nylonThin>("joints/nylon_thin", Group::joints,
                                                           "longer nylon piles under this ratio",
                                                           Unit::ratio, kOurs, 0.01, 0.99),
      rowOf<&Rules::rod, &RodLimits::inside>("head/inside", Group::headOnRod,
                                             "a head fits within this of the rod's window",
                                             Unit::grains, kOurs, 0, 100),
      rowOf<&Rules::rod, &RodLimits::touch>("head/touch", Group::headOnRod,
                                            "beyond this it is the wrong head", Unit::grains, kOurs,
                                            1, 300),
      rowOf<&Rules::rod, &RodLimits::shortHead, &LengthBand::low>(
          "head/short_least", Group::headOnRod, "short head with its tip: too short under",
          Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortHead, &LengthBand::usualLow>(
          "head/short_from", Group::headOnRod, "short head with its tip: usual from", Unit::rods,
          kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortHead, &LengthBand::usualHigh>(
          "head/short_to", Group::headOnRod, "short head with its tip: usual to", Unit::rods,
          kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortHead, &LengthBand::high>(
          "head/short_most", Group::headOnRod, "short head with its tip: too long over", Unit::rods,
          kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortOneHand, &LengthBand::low>(
          "head/short_one_hand_least", Group::headOnRod,
          "short head on a single-hand rod: too short under", Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortOneHand, &LengthBand::usualLow>(
          "head/short_one_hand_from", Group::headOnRod,
          "short head on a single-hand rod: usual from", Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortOneHand, &LengthBand::usualHigh>(
          "head/short_one_hand_to", Group::headOnRod, "short head on a single-hand rod: usual to",
          Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::shortOneHand, &LengthBand::high>(
          "head/short_one_hand_most", Group::headOnRod,
          "short head on a single-hand rod: too long over", Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::fine, &LengthBand::low>("head/fine_least", Group::headOnRod,
                                                             "fine taper: too short under",
                                                             Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::fine, &LengthBand::usualLow>(
          "head/fine_from", Group::headOnRod, "fine taper: usual from", Unit::rods, kTrade, 0.5,
          10),
      rowOf<&Rules::rod, &RodLimits::fine, &LengthBand::usualHigh>(
          "head/fine_to", Group::headOnRod, "fine taper: usual to", Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::fine, &LengthBand::high>("head/fine_most", Group::headOnRod,
                                                              "fine taper: too long over",
                                                              Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::longBelly, &LengthBand::low>(
          "head/long_belly_least", Group::headOnRod, "long belly with its tip: too short under",
          Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::longBelly, &LengthBand::usualLow>(
          "head/long_belly_from", Group::headOnRod, "long belly with its tip: usual from",
          Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::longBelly, &LengthBand::usualHigh>(
          "head/long_belly_to", Group::headOnRod, "long belly with its tip: usual to", Unit::rods,
          kTrade, 0.5, 10),
      rowOf<&Rules::rod, &RodLimits::longBelly, &LengthBand::high>(
          "head/long_belly_most", Group::headOnRod, "long belly with its tip: too long over",
          Unit::rods, kTrade, 0.5, 10),
      rowOf<&Rules::grip, &GripLimits::noGrip>("tip_share/no_grip", Group::tipShare,
                                               "no grip under this share of the head", Unit::share,
                                               kTrade, 0.01, 0.9),
      rowOf<&Rules::grip, &GripLimits::light>("tip_share/light", Group::tipShare,
                                              "light under this", Unit::share, kTrade, 0.02, 0.95),
      rowOf<&Rules::grip, &GripLimits::right>("tip_share/right", Group::tipShare,
                                              "right up to this", Unit::share, kTrade, 0.03, 0.98),
      rowOf<&Rules::grip, &GripLimits::heavy>("tip_share/heavy", Group::tipShare,
                                              "too much tip over this", Unit::share, kTrade, 0.04,
                                              1.0),
      rowOf<&Rules::grip, &GripLimits::longHeadMost>(
          "tip_share/long_head_most", Group::tipShare,
          "right up to this on a fine taper or long belly", Unit::share, kTrade, 0.01, 0.99),
      rowOf<&Rules::grip, &GripLimits::anchorLeast>(
          "anchor/least", Group::tipShare, "too little in the water under this, head to fly",
          Unit::rods, kTrade, 0.1, 3),
      rowOf<&Rules::grip, &GripLimits::anchorGood>("anchor/good", Group::tipShare,
                                                   "enough in the water from this on", Unit::rods,
                                                   kTrade, 0.1, 3),
      rowOf<&Rules::grip, &GripLimits::anchorMost>("anchor/most", Group::tipShare,
                                                   "much in the water over this", Unit::rods,
                                                   kTrade, 0.2, 6),
      rowOf<&Rules::grip, &GripLimits::flyCarries>(
          "fly/carries", Group::fly, "the tip carries a fly when it weighs this many times as much",
          Unit::ratio, kTrade, 0.2, 20),
      rowOf<&Rules::grip, &GripLimits::flyHeavy>("fly/heavy", Group::fly,
                                                 "under this the fly is too heavy for the tip",
                                                 Unit::ratio, kTrade, 0.1, 19),
      rowOf<&Rules::grip, &GripLimits::tipWindow>("fly/tip_window", Group::fly,
                                                  "line that is weighed against the fly",
                                                  Unit::feet, kOurs, 1, 40),
      rowOf<&Rules::grip, &GripLimits::nylonFree>(
          "fly/leader_free", Group::fly, "nylon longer than this is weighed against the fly too",
          Unit::feet, kOurs, 0, 20),
      rowOf<&Rules::grip, &GripLimits::leaderFine>(
          "fly/leader_fine", Group::fly,
          "such nylon carries the fly from this many times its weight on", Unit::ratio, kOurs, 0.1,
          10),
      rowOf<&Rules::grip, &GripLimits::leaderWatch>(
          "fly/leader_watch", Group::fly, "under this the fly is too heavy for the leader",
          Unit::ratio, kOurs, 0.05, 9),
      rowOf<&Rules::turnover, &TurnoverLimits::heap>(
          "turnover/heap", Group::turnover,
          "lands in a heap under this, line speed against the least that turns over", Unit::ratio,
          kOurs, 0.1, 3),
      rowOf<&Rules::turnover, &TurnoverLimits::probablyNot>(
          "turnover/probably_not", Group::turnover, "probably does not turn over under this",
          Unit::ratio, kOurs, 0.2, 4),
      rowOf<&Rules::turnover, &TurnoverLimits::toSpare>("turnover/to_spare", Group::turnover,
                                                        "speed to spare from this on", Unit::ratio,
                                                        kOurs, 0.3, 6),
      rowOf<&Rules::turnover, &TurnoverLimits::doesNotCarry>(
          "turnover/does_not_carry", Group::turnover,
          "the front does not carry under this, pull against need", Unit::ratio, kOurs, 0.05, 3),
      rowOf<&Rules::turnover, &TurnoverLimits::carries>("turnover/carries", Group::turnover,
                                                        "the front carries from this on",
                                                        Unit::ratio, kOurs, 0.1, 5),
      rowOf<&Rules::turnover, &TurnoverLimits::driveWindow>(
          "turnover/drive_window", Group::turnover, "front of the line in which that is asked",
          Unit::feet, kOurs, 2, 60),
      rowOf<&Rules::turnover, &TurnoverLimits::dies>(
          "turnover/dies", Group::turnover, "the fly dies under this share of the line speed",
          Unit::ratio, kOurs, 0.05, 2),
      rowOf<&Rules::turnover, &TurnoverLimits::firm>("turnover/firm", Group::turnover,
                                                     "it arrives firmly from this on", Unit::ratio,
                                                     kOurs, 0.1, 4),
      rowOf<&Rules::turnover, &TurnoverLimits::lively>("turnover/lively", Group::turnover,
                                                       "it arrives lively from this on",
                                                       Unit::ratio, kOurs, 0.2, 8),
      rowOf<&Rules::turnover, &TurnoverLimits::kicks>(
          "turnover/kicks", Group::turnover, "it kicks over this", Unit::ratio, kOurs, 0.3, 15),
      rowOf<&Rules::turnover, &TurnoverLimits::stepsUp>(
          "turnover/steps_up", Group::turnover,
          "behind a joint that steps up by more than this, lively is a kick", Unit::ratio, kOurs,
          1.0, 4),
      rowOf<&Rules::turnover, &TurnoverLimits::nylonKeep>(
          "turnover/nylon_keep", Group::turnover,
          "the fly is too bulky when the nylon keeps less of its speed", Unit::share, kOurs, 0.05,
          1.0),
      rowOf<&Rules::stroke, &StrokeLimits::sameLength>(
          "stroke/same_length", Group::stroke,
          "the same stroke within this change of working length", Unit::feet, kTrade, 0.1, 20),
      rowOf<&Rules::stroke, &StrokeLimits::adjustLength>(
          "stroke/adjust_length", Group::stroke, "a different cast from this change of length on",
          Unit::feet, kTrade, 0.2, 40),
      rowOf<&Rules::stroke, &StrokeLimits::sameMass>("stroke/same_mass", Group::stroke,
                                                     "the same stroke within this change of weight",
                                                     Unit::share, kTrade, 0.01, 0.9),
      rowOf<&Rules::stroke, &StrokeLimits::adjustMass>(
          "stroke/adjust_mass", Group::stroke, "a different cast from this change of weight on",
          Unit::share, kTrade, 0.02, 1.0),
      rowOf<&Rules::stroke, &StrokeLimits::slowerLift>(
          "stroke/slower_lift", Group::stroke, "a slower lift from this much more sinking line",
          Unit::grains, kOurs, 1, 500),
      rowOf<&Rules::weighShare>("weigh_in/share", Group::weighIn,
                                "a weighed part is as meant within this", Unit::share, kOurs, 0.001,
                                0.5),
      rowOf<&Rules::choice, &ChoiceGrades::dropFull>("grades/drop_full", Group::grades,
                                                     "a drop down to this ratio has the full grade",
                                                     Unit::ratio, kOurs, 0.02, 1.0),
      rowOf<&Rules::choice, &ChoiceGrades::stepGrade>("grades/step", Group::grades,
                                                      "grade where a joint starts to step up",
                                                      Unit::grade, kOurs, 0, 1),
      rowOf<&Rules::choice, &ChoiceGrades::shareBest>(
          "grades/share_best", Group::grades, "tip share of a short head with the full grade",
          Unit::share, kOurs, 0.02, 0.97),
      rowOf<&Rules::choice, &ChoiceGrades::shareEdge>(
          "grades/share_edge", Group::grades, "grade where the tip share turns light or heavy",
          Unit::grade, kOurs, 0, 1),
      rowOf<&Rules::choice, &ChoiceGrades::anchorFull>("grades/anchor_full", Group::grades,
                                                       "line from head to fly with the full grade",
                                                       Unit::rods, kOurs, 0.1, 6),
      rowOf<&Rules::choice, &ChoiceGrades::anchorEdge>("grades/anchor_edge", Group::grades,
                                                       "grade where that line turns short",
                                                       Unit::grade, kOurs, 0, 1),
      rowOf<&Rules::choice, &ChoiceGrades::bottomTouch>(
          "grades/bottom_touch", Group::grades, "wanted this near the bottom, lying on it is right",
          Unit::feet, kOurs, 0, 3),
      rowOf<&Rules::choice, &ChoiceGrades::strokeAdjust>(
          "grades/stroke_adjust", Group::grades, "grade where the stroke becomes a different cast",
          Unit::grade, kOurs, 0.01, 1),
      rowOf<&Rules::choice, &ChoiceGrades::strokeLeast>("grades/stroke_least", Group::grades,
                                                        "grade of the most different cast",
                                                        Unit::grade, kOurs, 0, 0.99),
      rowOf<&Rules::weights, &ChoiceWeights::junction>("weights/joint", Group::weights,
                                                       "weight of: the worst joint", Unit::weight,
                                                       kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::tipShare>(
          "weights/tip_share", Group::weights, "weight of: tip share", Unit::weight, kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::anchor>("weights/anchor", Group::weights,
                                                     "weight of: line from head to fly",
                                                     Unit::weight, kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::workingLength>(
          "weights/working_length", Group::weights, "weight of: working length", Unit::weight,
          kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::flyAgainstTip>(
          "weights/fly", Group::weights, "weight of: fly against tip", Unit::weight, kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::drive>("weights/drive", Group::weights,
                                                    "weight of: pull of the front", Unit::weight,
                                                    kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::reserve>("weights/reserve", Group::weights,
                                                      "weight of: line speed to spare",
                                                      Unit::weight, kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::depth>("weights/depth", Group::weights,
                                                    "weight of: depth", Unit::weight, kOurs, 0, 10),
      rowOf<&Rules::weights, &ChoiceWeights::stroke>("weights/stroke", Group::weights,
                                                     "weight of: change of the stroke",
                                                     Unit::weight, kOurs, 0, 10),
  };
}

/// Limits that must rise from one to the next.
const std::vector<std::vector<const char*>>& risingKeys() {
  static const std::vector<std::vector<const char*>> rising{
      {"joints/collapse", "joints/drop", "joints/step_up", "joints/slow", "joints/hinge"},
      {"joints/collapse", "grades/drop_full"},
      {"joints/nylon_thin", "joints/nylon_fine"},
      {"head/inside", "head/touch"},
      {"head/short_least", "head/short_from", "head/short_to", "head/short_most"},
      {"head/short_one_hand_least", "head/short_one_hand_from", "head/short_one_hand_to",
       "head/short_one_hand_most"},
      {"head/fine_least", "head/fine_from", "head/fine_to", "head/fine_most"},
      {"head/long_belly_least", "head/long_belly_from", "head/long_belly_to",
       "head/long_belly_most"},
      {"tip_share/no_grip", "tip_share/light", "grades/share_best", "tip_share/right",
       "tip_share/heavy"},
      {"tip_share/long_head_most", "tip_share/heavy"},
      {"anchor/least", "anchor/good", "grades/anchor_full", "anchor/most"},
      {"fly/heavy", "fly/carries"},
      {"fly/leader_watch", "fly/leader_fine"},
      {"turnover/heap", "turnover/probably_not", "turnover/to_spare"},
      {"turnover/does_not_carry", "turnover/carries"},
      {"turnover/dies", "turnover/firm", "turnover/lively", "turnover/kicks"},
      {"stroke/same_length", "stroke/adjust_length"},
      {"stroke/same_mass", "stroke/adjust_mass"},
      {"grades/stroke_least", "grades/stroke_adjust"},
  };
  return rising;
}

using Chain = std::vector<const RuleRow*>;

const std::vector<Chain>& risingRows() {
  static const std::vector<Chain> chains = [] {
    std::vector<Chain> all;
    for (const auto& keys : risingKeys()) {
      Chain chain;
      for (const char* key : keys) chain.push_back(ruleRow(key));
      all.push_back(std::move(chain));
    }
    return all;
  }();
  return chains;
}

bool inside(const Rules& rules, const RuleRow& row) {
  const double value = row.get(rules);
  return value >= row.low && value <= row.high;  // false for NaN
}

}  // namespace

std::string unitOf(RuleUnit unit) {
  switch (unit) {
    case RuleUnit::rods:
      return "rods";
    case RuleUnit::feet:
      return "ft";
    case RuleUnit::grains:
      return "gr";
    default:
      return "";
  }
}

const std::vector<RuleRow>& ruleRows() {
  static const std::vector<RuleRow> rows = makeRows();
  return rows;
}

const RuleRow* ruleRow(const std::string& key) {
  const auto& rows = ruleRows();
  const auto found =
      std::find_if(rows.begin(), rows.end(), [&](const RuleRow& row) { return key == row.key; });
  return found == rows.end() ? nullptr : &*found;
}

std::optional<RuleProblem> problemOf(const Rules& rules, const RuleRow& row) {
  if (!inside(rules, row)) return RuleProblem{&row};
  const double value = row.get(rules);
  for (const Chain& chain : risingRows()) {
    const auto here = std::find(chain.begin(), chain.end(), &row);
    if (here == chain.end()) continue;
    for (auto other = chain.begin(); other != chain.end(); ++other) {
      if (other < here && !(value > (*other)->get(rules))) return RuleProblem{&row, *other};
      if (other > here && !(value < (*other)->get(rules)))
        return RuleProblem{&row, nullptr, *other};
    }
  }
  return std::nullopt;
}

std::vector<RuleProblem> problemsOf(const Rules& rules) {
  std::vector<RuleProblem> problems;
  for (const RuleRow& row : ruleRows()) {
    if (const auto problem = problemOf(rules, row)) problems.push_back(*problem);
  }
  return problems;
}

Rules soundRules(Rules rules) {
  const Rules usual;
  for (const RuleRow& row : ruleRows()) {
    if (!inside(rules, row)) row.set(rules, row.get(usual));
  }
  // Putting a chain back can put it at odds with another: each round puts back more, until all is
  // usual.
  for (auto problems = problemsOf(rules); !problems.empty(); problems = problemsOf(rules)) {
    for (const RuleProblem& problem : problems) {
      for (const RuleRow* row : {problem.row, problem.over, problem.under}) {
        if (row != nullptr) row->set(rules, row->get(usual));
      }
    }
  }
  return rules;
}

}  // namespace grainwise
