// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>
#include <random>
#include <set>

#include "core/analysis/depth_table.h"
#include "core/analysis/rule_table.h"
#include "core/bench/weigh_in.h"
#include "core/choose/fixes.h"
#include "core/choose/judge.h"
#include "core/choose/wallet.h"
#include "core/model/limits.h"
#include "core/report/choice_text.h"
#include "core/report/json.h"
#include "tests/support/choice_cases.h"
#include "tests/support/sample_rig.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;

namespace {

constexpr double kInf = std::numeric_limits<double>::infinity();

double justOver(double value) {
  return std::nextafter(value, kInf);
}
double justUnder(double value) {
  return std::nextafter(value, -kInf);
}

/// Rules with one limit at `value`, whatever the others say.
Rules with(const RuleRow& row, double value) {
  Rules rules;
  row.set(rules, value);
  return rules;
}

/// The one problem of `row`, or nothing.
std::optional<RuleProblem> problem(const char* key, double value) {
  const RuleRow& row = *ruleRow(key);
  return problemOf(with(row, value), row);
}

/// Rigs in which every reading speaks, as they are told with all that choosing says of them.
std::vector<Rig> rigsOfAllKinds() {
  std::vector<Rig> rigs;
  for (const char* name : {"01-plain-winter", "03-thin-tail", "05-dry-line", "06-under-the-film",
                           "07-old-winter", "09-wide-water", "10-single-five", "wrong-fat-fly"}) {
    rigs.push_back(sampleRig(name));
  }
  const Part nylon9 = leader({nylon(9, 0.020, 0.009)});
  const auto nylons = leader4ft();
  const auto behindTip = [&](Part head, Part tip, double fly_gr) {
    return rigOf({std::move(head), std::move(tip), nylons[0], nylons[1], fly(fly_gr)});
  };
  rigs.push_back(onRod(rigOf({short525(), nylon9, fly(6)}), 13, 8));
  rigs.back().rod->window = GrainWindow{Grains(545), Grains(600)};  // the head is 20 gr light
  rigs.push_back(onRod(rigOf({short525(), tip({sinking(10, 11, 7.5)}), nylon9, fly(6)}), 11, 5, 1));
  // A joint that steps up, a head beside its window, little in the water.
  rigs.push_back(onRod(behindTip(short525(), tip({sinking(7.5, 20, 7.5)}), 4), 13, 9));
  // Working lengths beyond what is usual.
  rigs.push_back(onRod(behindTip(fine480(), tip({sinking(10, 6, 3)}), 20), 11, 7));
  const Part belly = head({floating(5, 8, 14), floating(50, 14, 10)}, Style::longBelly);
  rigs.push_back(onRod(behindTip(belly, tip({sinking(10, 8, 3)}), 20), 12.5, 8));
  return rigs;
}

std::string told(const Rules& rules) {
  Conditions conditions;
  conditions.rules = rules;
  const Rig reference = plainWinter();
  conditions.strokeReference = strokeBasis(reference, massProfile(reference));
  std::string text;
  for (const Rig& rig : rigsOfAllKinds()) {
    const Analysis analysis = analyse(rig, conditions);
    text += reportJson(rig, analysis);
    for (const Judged& j : judge(figuresOf(analysis), headStyle(rig), rules)) {
      text += shortest(j.grade) + " ";
    }
    if (analysis.stroke)
      text += std::to_string(int(analysis.stroke->slowerLift || analysis.stroke->quickerLift));
  }
  for (const double grains : {100.0, 113.5}) {
    text += shortest(weighIn(tip({sinking(10, 11, 7.5)}), Grains(grains), {},
                             WeighRules{rules.weighShare, Grains(0.1), {}})
                         ->tolerance.value());
  }
  return text;
}

}  // namespace

TEST_CASE("Every limit has one row, and a row moves its own limit alone") {
  // Rules hold nothing but numbers: a limit without a row would make them larger than the table.
  REQUIRE(sizeof(Rules) == ruleRows().size() * sizeof(double));
  std::set<std::string> keys;
  for (const RuleRow& row : ruleRows()) {
    INFO(row.key);
    CHECK(keys.insert(row.key).second);
    CHECK(std::string(row.what).size() > 3);
    CHECK(ruleRow(row.key) == &row);
    const Rules usual;
    Rules moved = with(row, row.high);
    if (row.get(usual) == row.high) moved = with(row, row.low);
    CHECK_FALSE(moved == usual);
    row.set(moved, row.get(usual));
    CHECK(moved == usual);
  }
  CHECK(ruleRow("joints/none") == nullptr);
}

TEST_CASE("The usual limits are sound, and nothing puts them right") {
  CHECK(problemsOf(Rules{}).empty());
  CHECK(soundRules(Rules{}) == Rules{});
}

TEST_CASE("A limit is taken at the ends of what it may be and refused just outside") {
  for (const RuleRow& row : ruleRows()) {
    INFO(row.key);
    for (const double end : {row.low, row.high}) {
      // At the end it may stand in the wrong order with others, but it is not outside.
      const auto at = problemOf(with(row, end), row);
      CHECK((!at || at->over != nullptr || at->under != nullptr));
    }
    for (const double outside : {justUnder(row.low), justOver(row.high), kInf, -kInf,
                                 std::numeric_limits<double>::quiet_NaN()}) {
      const auto beyond = problemOf(with(row, outside), row);
      REQUIRE(beyond);
      CHECK(beyond->over == nullptr);
      CHECK(beyond->under == nullptr);
      CHECK(soundRules(with(row, outside)) == Rules{});
    }
  }
}

TEST_CASE("Limits that follow each other are refused where they meet and taken just beside") {
  struct Pair {
    const char* low;
    const char* high;
  };
  // Written out once more on purpose.
  for (const Pair& pair :
       std::initializer_list<Pair>{{"joints/step_up", "joints/slow"},
                                   {"joints/slow", "joints/hinge"},
                                   {"joints/nylon_thin", "joints/nylon_fine"},
                                   {"head/inside", "head/touch"},
                                   {"head/short_least", "head/short_from"},
                                   {"head/short_from", "head/short_to"},
                                   {"head/short_to", "head/short_most"},
                                   {"head/short_one_hand_from", "head/short_one_hand_to"},
                                   {"head/fine_from", "head/fine_to"},
                                   {"head/long_belly_to", "head/long_belly_most"},
                                   {"tip_share/no_grip", "tip_share/light"},
                                   {"tip_share/right", "tip_share/heavy"},
                                   {"tip_share/light", "grades/share_best"},
                                   {"grades/share_best", "tip_share/right"},
                                   {"anchor/least", "anchor/good"},
                                   {"anchor/good", "grades/anchor_full"},
                                   {"grades/anchor_full", "anchor/most"},
                                   {"fly/heavy", "fly/carries"},
                                   {"fly/leader_watch", "fly/leader_fine"},
                                   {"turnover/heap", "turnover/probably_not"},
                                   {"turnover/probably_not", "turnover/to_spare"},
                                   {"turnover/does_not_carry", "turnover/carries"},
                                   {"turnover/dies", "turnover/firm"},
                                   {"turnover/firm", "turnover/lively"},
                                   {"turnover/lively", "turnover/kicks"},
                                   {"stroke/same_length", "stroke/adjust_length"},
                                   {"stroke/same_mass", "stroke/adjust_mass"},
                                   {"grades/stroke_least", "grades/stroke_adjust"},
                                   {"joints/collapse", "grades/drop_full"}}) {
    INFO(pair.low << " under " << pair.high);
    const Rules usual;
    const double low = ruleRow(pair.low)->get(usual), high = ruleRow(pair.high)->get(usual);
    const auto met = problem(pair.low, high);
    REQUIRE(met);
    CHECK(met->under != nullptr);
    CHECK_FALSE(problem(pair.low, justUnder(high)).has_value());
    const auto below = problem(pair.high, low);
    REQUIRE(below);
    CHECK(below->over != nullptr);
    CHECK_FALSE(problem(pair.high, justOver(low)).has_value());
  }
  // What a third limit keeps from the other side.
  CHECK(problem("joints/drop", 0.35)->over == ruleRow("joints/collapse"));
  CHECK(problem("tip_share/long_head_most", 0.33)->under == ruleRow("tip_share/heavy"));
  CHECK(problem("joints/slow", 2.0)->under == ruleRow("joints/hinge"));
  CHECK(problem("joints/slow", 1.10)->over == ruleRow("joints/step_up"));
}

TEST_CASE("Any numbers as limits are put right, and sound ones stay as they are") {
  std::mt19937_64 random(78);
  int sound = 0;
  for (int i = 0; i < 5000; ++i) {
    Rules rules;
    for (auto moves = 1 + random() % 6; moves > 0; --moves) {
      const auto& rows = ruleRows();
      const RuleRow& row = rows[random() % rows.size()];
      std::uniform_real_distribution<double> spread(row.low - 0.1 * (row.high - row.low), row.high);
      row.set(rules, spread(random));
    }
    const Rules right = soundRules(rules);
    if (!problemsOf(right).empty()) FAIL("still wrong: " << problemsOf(right).front().row->key);
    if (problemsOf(rules).empty()) {
      ++sound;
      if (!(right == rules)) FAIL("a sound one was changed");
    }
  }
  CHECK(sound > 100);
}

TEST_CASE("Every limit reaches a reading or a grade, and the usual ones change nothing") {
  const std::string usual = told(Rules{});
  CHECK(told(soundRules(Rules{})) == usual);
  for (const RuleRow& row : ruleRows()) {
    if (row.group == RuleGroup::weights || std::string(row.key) == "grades/bottom_touch") continue;
    INFO(row.key);
    CHECK((told(with(row, row.low)) != usual || told(with(row, row.high)) != usual));
  }
}

TEST_CASE("A verdict turns exactly at its limit") {
  Conditions conditions;
  const Rig rig = plainWinter();
  const Analysis plain = analyse(rig);
  const auto verdicts = [&](const char* key, double value) {
    conditions.rules = with(*ruleRow(key), value);
    return analyse(rig, conditions);
  };
  // A reading on the limit takes the milder word (core/mass/on_the_limit.h).
  constexpr double kBeside = 1e-6;
  const double share = *plain.grip.tipShare;
  CHECK(verdicts("tip_share/right", share + kBeside).grip.tipShareVerdict ==
        TipShareVerdict::right);
  CHECK(verdicts("tip_share/right", share - kBeside).grip.tipShareVerdict ==
        TipShareVerdict::heavy);
  const double fly = *plain.fly.tipToFly;
  CHECK(verdicts("fly/carries", fly - kBeside).fly.tipToFlyVerdict == FlyVerdict::carries);
  CHECK(verdicts("fly/carries", fly + kBeside).fly.tipToFlyVerdict == FlyVerdict::heavySlow);
  const double reserve = plain.turnover->reserve;
  CHECK(verdicts("turnover/to_spare", reserve - kBeside).turnover->reserveVerdict ==
        ReserveVerdict::toSpare);
  CHECK(verdicts("turnover/to_spare", reserve + kBeside).turnover->reserveVerdict ==
        ReserveVerdict::marginal);
  const double ratio = plain.junctions[0].ratio3ft;
  CHECK(verdicts("joints/drop", ratio + kBeside).junctions[0].verdict ==
        JunctionVerdict::smoothDrop);
  CHECK(verdicts("joints/drop", ratio - kBeside).junctions[0].verdict == JunctionVerdict::level);
  const double rods = *plain.rod.lengthRatio;
  CHECK(verdicts("head/short_to", rods + kBeside).rod.lengthVerdict == LengthVerdict::usual);
  CHECK(verdicts("head/short_to", rods - kBeside).rod.lengthVerdict == LengthVerdict::longish);
}

TEST_CASE("Weights shift the mean of the grades, and none leaves a criterion out") {
  const std::vector<Judged> judged{{Criterion::drive, 1.0, 0.25, Grade::fits},
                                   {Criterion::depth, 1.0, 1.0, Grade::fits}};
  CHECK(geometricMean(judged) == Approx(0.5));
  ChoiceWeights weights;
  weights.depth = 3.0;  // 0.25^(1/4)
  CHECK(geometricMean(judged, weights) == Approx(std::sqrt(0.5)));
  weights.drive = 0.0;
  CHECK(geometricMean(judged, weights) == 1.0);
  weights.depth = 0.0;
  CHECK(geometricMean(judged, weights) == 1.0);
  CHECK(geometricMean({{Criterion::drive, 0.0, 0.0, Grade::wrong}}) == 0.0);
}

TEST_CASE("The chooser, the wallet and the fixes go by the limits that they are given") {
  const Shelf& shelf = genericShelf();
  Conditions strict;
  strict.rules.grip.heavy = 0.12;
  strict.rules.grip.right = 0.115;
  strict.rules.choice.shareBest = 0.112;
  strict.rules.grip.light = 0.11;
  REQUIRE(problemsOf(strict.rules).empty() == false);  // a long head's limit lies over it now
  strict.rules.grip.longHeadMost = 0.1;
  REQUIRE(problemsOf(strict.rules).empty());
  const Rig rig = plainWinter();
  const Choice usual = chooseTip({rig, {}, shelf, {}}), hard = chooseTip({rig, {}, shelf, strict});
  CHECK(hard.count(Standing::rejected) > usual.count(Standing::rejected));
  const Fixes none = fixesFor({rig, shelf, {}, {}, {}}),
              some = fixesFor({rig, shelf, {}, {}, strict});
  CHECK(none.faults.empty());
  CHECK(some.faults == std::vector<Reading>{Reading::tipShare});
  WalletQuestion question;
  question.rigs = {rig};
  question.pools.pools.push_back(*poolOf(rig));
  question.shelf = shelf;
  const auto served = [&](const Conditions& conditions) {
    question.conditions = conditions;
    const WalletGrid grid = walletGrid(question);
    return std::count_if(grid.cells.begin(), grid.cells.end(), [](const WalletCell& cell) {
      return cell.standing != Standing::rejected;
    });
  };
  CHECK(served(strict) < served({}));
}
