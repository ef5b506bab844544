// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>
#include <set>

#include "core/analysis/rule_table.h"
#include "core/report/choice_text.h"
#include "core/report/choice_words.h"
#include "tests/support/choice_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::choice;
using Json = nlohmann::ordered_json;

namespace {

Change changeOf(ChangeKind kind, const std::string& part) {
  Change change;
  change.kind = kind;
  change.part = part;
  return change;
}
Change handleOf(ChangeKind kind, double from, double to) {
  Change change;
  change.kind = kind;
  change.from = from;
  change.to = to;
  return change;
}
Change cutOf(ChangeKind kind, const std::string& part, double feet, PartEnd end) {
  Change change = changeOf(kind, part);
  change.feet = feet;
  change.end = end;
  return change;
}

std::vector<std::string> keysOf(const std::vector<Reading>& readings) {
  std::vector<std::string> keys;
  for (const Reading reading : readings) keys.emplace_back(words::keyOf(reading));
  return keys;
}

}  // namespace

TEST_CASE("each kind of change has a key of its own and says what is done, to what, and from what to what") {
  struct Row {
    Change change;
    const char* key;
    const char* says;
  };
  const Row rows[] = {
      {changeOf(ChangeKind::swapTip, "10 ft"), "swap-tip", "change the tip for 10 ft"},
      {changeOf(ChangeKind::addTip, "10 ft"), "add-tip", "put on a tip: 10 ft"},
      {changeOf(ChangeKind::removeTip, "10 ft"), "remove-tip", "take off 10 ft"},
      {changeOf(ChangeKind::swapLeader, "4 ft"), "swap-leader", "change the leader for 4 ft"},
      {changeOf(ChangeKind::swapTippet, "0.013 in"), "swap-tippet", "change the tippet for 0.013 in"},
      {changeOf(ChangeKind::swapFly, "Leech"), "swap-fly", "change the fly for Leech"},
      {handleOf(ChangeKind::angle, 45, 60), "angle", "cast at 60 instead of 45 degrees"},
      {handleOf(ChangeKind::mend, 0, 3), "mend", "3 instead of 0 s of slack"},
      {handleOf(ChangeKind::lineOut, 60, 70), "line-out", "70 instead of 60 ft of line out"},
      {changeOf(ChangeKind::swapHead, "head"), "swap-head", "change the head for head"},
      {cutOf(ChangeKind::cutTip, "tip", 2.5, PartEnd::fly), "cut-tip", "cut 2.5 ft off the fly end of tip"},
      {cutOf(ChangeKind::cutTip, "tip", 1, PartEnd::rod), "cut-tip", "cut 1 ft off the rod end of tip"},
      {cutOf(ChangeKind::leaderLength, "leader", -1.5, PartEnd::fly), "leader-length", "tie leader 1.5 ft shorter"},
      {cutOf(ChangeKind::leaderLength, "leader", 2, PartEnd::fly), "leader-length", "tie leader 2 ft longer"},
      {changeOf(ChangeKind::addExtension, "5 ft"), "add-extension", "put 5 ft behind the head"},
      {changeOf(ChangeKind::removeExtension, "5 ft"), "remove-extension", "take off 5 ft"},
      {cutOf(ChangeKind::trimHead, "head", 1.5, PartEnd::rod), "trim-head", "trim 1.5 ft off the rear of head"},
      {cutOf(ChangeKind::trimHead, "head", 1, PartEnd::fly), "trim-head", "trim 1 ft off the front of head"},
      {changeOf(ChangeKind::swapTip, "two\nlines"), "swap-tip", "change the tip for two lines"},
  };
  for (const Row& row : rows) {
    CHECK(words::keyOf(row.change.kind) == std::string(row.key));
    CHECK(words::changeText(row.change) == row.says);
  }
}

TEST_CASE("each reading has a key and words of its own") {
  std::set<std::string> keys, said;
  constexpr int kReadings = 10;
  for (int i = 0; i < kReadings; ++i) {
    keys.insert(words::keyOf(Reading(i)));
    said.insert(words::of(Reading(i)));
  }
  CHECK(keys == std::set<std::string>{"anchor", "depth", "drive", "fly-against-leader", "fly-against-tip", "head-on-rod",
                                      "junction", "reserve", "tip-share", "working-length"});
  CHECK(said.size() == kReadings);
  CHECK_FALSE(said.contains(""));
}

TEST_CASE("a fix says what it repairs, or else what it eases, and what becomes of the stroke") {
  Fix fix;
  fix.stroke.verdict = StrokeVerdict::same;
  fix.repaired = {Reading::junction};
  CHECK(words::fixText(fix) == "repairs the joint; same stroke");
  fix.repaired = {Reading::junction, Reading::drive, Reading::reserve};
  fix.stroke.verdict = StrokeVerdict::adjustLonger;
  CHECK(words::fixText(fix) == "repairs the joint, the drive and the turnover; adjust: longer sweep");
  fix.repaired.clear();
  fix.eased = {Reading::headOnRod, Reading::tipShare};
  CHECK(words::fixText(fix) == "eases the head on this rod and the tip's share of the head; adjust: longer sweep");
}

TEST_CASE("each standing, need and handle on the water has a key of its own, and each need a next step") {
  std::set<std::string> keys, steps;
  const ChoiceNeed needs[] = {ChoiceNeed::none, ChoiceNeed::head, ChoiceNeed::fly,         ChoiceNeed::flyMass,
                              ChoiceNeed::shelf, ChoiceNeed::pool, ChoiceNeed::wantedWater, ChoiceNeed::nothingFits};
  for (const ChoiceNeed need : needs) {
    keys.insert(words::keyOf(need));
    steps.insert(words::needText(need));
  }
  CHECK(keys.size() == std::size(needs));
  CHECK(steps.size() == std::size(needs));
  CHECK(words::needText(ChoiceNeed::none).empty());
  CHECK(words::walletNeedText(ChoiceNeed::pool) != words::needText(ChoiceNeed::pool));
  CHECK(words::keyOf(Standing::fits) == std::string("fits"));
  CHECK(words::keyOf(Standing::watch) == std::string("watch"));
  CHECK(words::keyOf(Standing::rejected) == std::string("rejected"));
  WaterChange change;
  change.from = 45;
  change.to = 60;
  change.depth = Feet(3.21);
  CHECK(words::keyOf(change.handle) == std::string("angle"));
  CHECK(words::adviceText(change) == "cast at 60 instead of 45 degrees: about 3.2 ft down, nearer to the wanted water");
  change.handle = WaterHandle::mend;
  change.inside = true;
  CHECK(words::keyOf(change.handle) == std::string("mend"));
  CHECK(words::adviceText(change) == "60 instead of 45 s of slack: about 3.2 ft down, in the wanted water");
  change.handle = WaterHandle::lineOut;
  CHECK(words::keyOf(change.handle) == std::string("line-out"));
  CHECK(words::adviceText(change) == "60 instead of 45 ft of line out: about 3.2 ft down, in the wanted water");
}

TEST_CASE("fixes in JSON are those that were found, each with what it repairs and what it does to the stroke") {
  const FixQuestion question{sampleRig("wrong-hinge"), genericShelf(), std::nullopt, std::nullopt, {}};
  const Fixes fixes = fixesFor(question);
  const Json json = Json::parse(fixesJson(question, fixes));
  CHECK(json["format"] == "grainwise-fixes");
  CHECK(json["rig"] == question.rig.name);
  CHECK(json["faults"] == Json(keysOf(fixes.faults)));
  CHECK(json["watches"] == Json(keysOf(fixes.watches)));
  for (const auto& [name, list] : {std::pair("now", &fixes.now), std::pair("later", &fixes.later)}) {
    REQUIRE(json[name].size() == list->size());
    for (std::size_t i = 0; i < list->size(); ++i) {
      const Fix& fix = (*list)[i];
      const Json& entry = json[name][i];
      CHECK(entry["change"] == words::keyOf(fix.change.kind));
      CHECK(entry["sentence"] == words::changeText(fix.change));
      CHECK(entry["repairs"] == Json(keysOf(fix.repaired)));
      CHECK(entry["eases"] == Json(keysOf(fix.eased)));
      CHECK(entry.contains("feet") == (fix.change.feet != 0.0));
      CHECK(entry.contains("to") == (fix.change.from != fix.change.to));
      CHECK(entry["mass_change"].get<double>() == fix.stroke.massChange);
      CHECK(entry["working_length_change_ft"].get<double>() == fix.stroke.lengthChange.value());
    }
  }
  Fixes lacking;
  lacking.need = ChoiceNeed::fly;
  const Json need = Json::parse(fixesJson(question, lacking));
  CHECK(need["need"] == "fly");
  CHECK(need["next"] == words::needText(ChoiceNeed::fly));
}

TEST_CASE("a choice in JSON carries advice, needs and the limits it was judged by") {
  Rules rules;
  PoolChoice lacking;
  lacking.pool = pool("Mill Run");
  lacking.choice.need = ChoiceNeed::fly;
  WaterChange change;
  change.handle = WaterHandle::lineOut;
  change.from = 60;
  change.to = 70;
  change.depth = Feet(2.5);
  lacking.advice = {change};
  const Json json = Json::parse(choiceJson(sampleRig("01-plain-winter"), genericShelf(), {lacking}, rules));
  const Json& block = json["pools"][0];
  CHECK(block["pool"] == "Mill Run");
  CHECK(block["need"] == "fly");
  CHECK(block["next"] == words::needText(ChoiceNeed::fly));
  CHECK(block["tips"].empty());
  REQUIRE(block["advice"].size() == 1);
  CHECK(block["advice"][0]["what"] == "line-out");
  CHECK(block["advice"][0]["to"] == 70.0);
  CHECK(block["advice"][0]["depth_ft"] == 2.5);
  CHECK(block["advice"][0]["in_wanted_water"] == false);
  REQUIRE(json["limits"].size() == ruleRows().size());
  for (std::size_t i = 0; i < ruleRows().size(); ++i) {
    CHECK(json["limits"][i]["what"] == ruleRows()[i].what);
    CHECK(json["limits"][i]["value"].get<double>() == ruleRows()[i].get(rules));
  }
}

TEST_CASE("a wallet in JSON has its tips by slot and each pool and fly with what serves it, or why nothing does") {
  WalletQuestion question;
  question.rigs = {sampleRig("01-plain-winter"), sampleRig("02-slot")};
  question.pools = corrow();
  question.shelf = genericShelf();
  question.most = 1;  // so that something is left unserved
  const WalletGrid grid = walletGrid(question);
  const Wallet wallet = pack(question, grid);
  const Json json = Json::parse(walletJson(question, grid, wallet));
  CHECK(json["format"] == "grainwise-wallet");
  CHECK(json["proven"] == wallet.proven);
  REQUIRE(json["tips"].size() == wallet.tips.size());
  for (std::size_t slot = 0; slot < wallet.tips.size(); ++slot) {
    CHECK(json["tips"][slot]["slot"] == slot + 1);
    CHECK(json["tips"][slot]["name"] == words::nameOf(question.shelf, wallet.tips[slot]));
  }
  REQUIRE(json["uses"].size() == wallet.uses.size());
  std::size_t left = 0;
  for (std::size_t i = 0; i < wallet.uses.size(); ++i) {
    const WalletUse& use = wallet.uses[i];
    const Json& entry = json["uses"][i];
    CHECK(entry["pool"] == question.pools.pools[use.pool].name);
    CHECK(entry["rig"] == question.rigs[use.rig].name);
    CHECK(entry["served"] == use.served);
    if (use.served) {
      CHECK(entry["standing"] == words::keyOf(use.cell.standing));
      CHECK(entry.contains("slot") == use.slot.has_value());
    } else {
      ++left;
      CHECK(entry["reason"] == words::uncoveredText(use, question.shelf, grid));
      CHECK_FALSE(entry["reason"].get<std::string>().empty());
    }
  }
  CHECK(left == wallet.uncovered());
  CHECK(left > 0);
}
