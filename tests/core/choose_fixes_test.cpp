// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <map>

#include "core/choose/fixes.h"
#include "core/report/choice_text.h"
#include "core/report/choice_words.h"
#include "tests/support/choice_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::choice;

namespace {

FixQuestion questionFor(const Rig& rig) { return {rig, genericShelf(), std::nullopt, std::nullopt, {}}; }

Fixes fixesOf(const std::string& sample) { return fixesFor(questionFor(sampleRig(sample))); }

std::vector<Fix> all(const Fixes& fixes) {
  std::vector<Fix> list = fixes.now;
  list.insert(list.end(), fixes.later.begin(), fixes.later.end());
  return list;
}

/// Faults of a rig as a count by reading.
std::map<Reading, int> faultsOf(const Rig& rig) {
  std::map<Reading, int> counts;
  for (const GradedReading& fault : faults(analyse(rig))) ++counts[fault.reading];
  return counts;
}

}  // namespace

TEST_CASE("each rig that is wrong on purpose has a single change that mends it") {
  const auto* sample = GENERATE("wrong-hinge", "wrong-anvil", "wrong-fat-fly", "wrong-no-grip");
  const Rig rig = sampleRig(sample);
  const Fixes fixes = fixesFor(questionFor(rig));
  CAPTURE(sample);
  REQUIRE_FALSE(fixes.faults.empty());
  REQUIRE_FALSE(fixes.now.empty());
  REQUIRE(fixes.now.size() <= 7);
  REQUIRE(fixes.later.size() <= 7);
  const auto before = faultsOf(rig);
  for (const Fix& fix : all(fixes)) {
    CAPTURE(words::changeText(fix.change));
    REQUIRE_FALSE(fix.repaired.empty());
    const auto after = faultsOf(fix.after);
    int left = 0, was = 0;
    for (const auto& [reading, count] : before) was += count;
    for (const auto& [reading, count] : after) {
      left += count;
      REQUIRE(before.contains(reading));  // none newly made
      REQUIRE(count <= before.at(reading));
    }
    REQUIRE(left < was);
  }
}

TEST_CASE("fixes are ranked by faults repaired, and stand in the list they belong to") {
  const Fixes fixes = fixesOf("wrong-anvil");
  for (const auto* list : {&fixes.now, &fixes.later}) {
    for (std::size_t i = 1; i < list->size(); ++i) {
      REQUIRE((*list)[i].repaired.size() <= (*list)[i - 1].repaired.size());
    }
  }
  for (const Fix& fix : fixes.now) REQUIRE(madeNow(fix.change.kind));
  for (const Fix& fix : fixes.later) REQUIRE_FALSE(madeNow(fix.change.kind));
}

TEST_CASE("a fix changes one thing and nothing else") {
  for (const char* sample : {"wrong-hinge", "wrong-anvil", "wrong-fat-fly"}) {
    const Rig rig = sampleRig(sample);
    for (const Fix& fix : all(fixesFor(questionFor(rig)))) {
      CAPTURE(words::changeText(fix.change));
      std::size_t differ = 0;
      const std::size_t n = rig.parts.size(), m = fix.after.parts.size();
      REQUIRE((m == n || m == n + 1 || m + 1 == n));
      if (m != n) continue;
      for (std::size_t i = 0; i < n; ++i) {
        if (!(rig.parts[i] == fix.after.parts[i])) ++differ;
      }
      // A tip that gives way to a coated leader changes two places: it is behind the leaders' slot.
      REQUIRE(differ >= 1);
      REQUIRE(differ <= 2);
      REQUIRE(rig.rod == fix.after.rod);
      REQUIRE(rig.water == fix.after.water);
    }
  }
}

TEST_CASE("a cut tip is never offered longer, whatever is wrong") {
  for (const char* sample : {"wrong-hinge", "wrong-anvil", "wrong-fat-fly", "wrong-no-grip",
                             "01-plain-winter", "03-thin-tail", "07-old-winter"}) {
    const Rig rig = sampleRig(sample);
    const Part* tip = tipOf(rig);
    std::size_t cuts = 0;
    for (const Trial& trial : trialsFor(questionFor(rig))) {
      if (trial.change.kind != ChangeKind::cutTip) continue;
      ++cuts;
      REQUIRE(trial.change.feet > 0.0);
      REQUIRE(tipOf(trial.after)->length() < tip->length());
      REQUIRE(std::abs(trial.change.feet * 2 - std::round(trial.change.feet * 2)) < 1e-9);
    }
    REQUIRE((tip == nullptr || cuts > 0));
  }
}

TEST_CASE("a part that is cut keeps its grains per foot and loses what was cut off") {
  Part part = onShelf("short head 525");
  const double before = tipSize(part).mass.value();
  for (const PartEnd end : {PartEnd::rod, PartEnd::fly}) {
    const auto cut = cutShorter(part, Feet(3), end);
    REQUIRE(cut);
    REQUIRE(cut->length().value() == Approx(part.length().value() - 3));
    Rig whole, rest;
    whole.parts = {part};
    rest.parts = {*cut};
    const MassProfile a = massProfile(whole), b = massProfile(rest);
    const Station from = end == PartEnd::rod ? Station(3) : Station(0);
    const Grains kept = a.lineBetween(from, from + cut->length());
    REQUIRE(b.places[0].line.value() == Approx(kept.value()).epsilon(1e-9));
    REQUIRE(b.places[0].scaledBy == Approx(a.places[0].scaledBy).epsilon(1e-9));
    REQUIRE(tipSize(*cut).mass.value() < before);
  }
  REQUIRE_FALSE(cutShorter(part, part.length(), PartEnd::fly));
}

TEST_CASE("a weighed part that is cut weighs less by what was cut off, its loops kept") {
  Part tip = rigs::withLoops(rigs::tip({rigs::sinking(10, 11, 7.5)}), 3, 3);
  tip.weighed = Weighed{Grains(126), std::nullopt, {}};
  const auto cut = cutShorter(tip, Feet(2.5), PartEnd::fly);
  REQUIRE(cut);
  REQUIRE(tipSize(*cut).mass.value() == Approx(126 - 30));  // (126 - 6)/10 gr/ft x 2.5 ft
}

TEST_CASE("what is in the wallet is all that is swapped now") {
  FixQuestion question = questionFor(sampleRig("wrong-fat-fly"));
  Shelf wallet;
  wallet.parts = {onShelf("10 ft, 14 gr/ft")};
  question.wallet = wallet;
  const Fixes fixes = fixesFor(question);
  REQUIRE(fixes.now.size() == 1);
  REQUIRE(fixes.now.front().change.kind == ChangeKind::swapTip);
  REQUIRE(fixes.now.front().change.part == "10 ft, 14 gr/ft");
  REQUIRE_FALSE(fixes.later.empty());
}

TEST_CASE("a sound rig has nothing to mend") {
  const Fixes fixes = fixesOf("01-plain-winter");
  REQUIRE(fixes.nothingWrong);
  REQUIRE(fixes.faults.empty());
  for (const Fix& fix : all(fixes)) REQUIRE(fix.repaired.empty());
}

TEST_CASE("a rig without a head or a fly is not called sound") {
  const Rig whole = sampleRig("01-plain-winter");
  Rig noFly = whole, noHead = whole, weightless = whole;
  std::erase_if(noHead.parts, [](const Part& p) { return p.kind == PartKind::head; });
  noFly.parts.pop_back();
  weightless.parts.back().fly = Fly{};
  const auto needOf = [](const Rig& rig) {
    const FixQuestion question = questionFor(rig);
    const Fixes fixes = fixesFor(question);
    const std::string text = fixesText(question, fixes);
    REQUIRE(text.find(words::needText(fixes.need)) != std::string::npos);
    REQUIRE((text.find(rig.name + ": nothing is wrong") == std::string::npos) ==
            (fixes.need != ChoiceNeed::none));
    return fixes.need;
  };
  REQUIRE(needOf(noFly) == ChoiceNeed::fly);
  REQUIRE(needOf(noHead) == ChoiceNeed::head);
  REQUIRE(needOf(weightless) == ChoiceNeed::flyMass);
  REQUIRE(needOf(whole) == ChoiceNeed::none);
}

TEST_CASE("where only the depth is wrong, angle, mend and line out are offered first of all") {
  // The band of the plain winter rig there, 1.6-2.5 ft, just misses 2.6-3.8 ft.
  FixQuestion question = questionFor(sampleRig("01-plain-winter"));
  question.pool = pool("Ash Ledge");
  question.pool->clearance = FeetRange{Feet(0.2), Feet(1.4)};
  const Fixes fixes = fixesFor(question);
  REQUIRE(fixes.faults == std::vector<Reading>{Reading::depth});
  REQUIRE_FALSE(fixes.now.empty());
  const ChangeKind first = fixes.now.front().change.kind;
  REQUIRE((first == ChangeKind::angle || first == ChangeKind::mend || first == ChangeKind::lineOut));
  REQUIRE(fixes.now.front().after.parts == question.rig.parts);
}

TEST_CASE("fixes take no more than three of one kind, so that different ways are seen") {
  const Fixes fixes = fixesOf("wrong-no-grip");
  for (const auto* list : {&fixes.now, &fixes.later}) {
    std::map<ChangeKind, int> kinds;
    for (const Fix& fix : *list) REQUIRE(++kinds[fix.change.kind] <= 3);
  }
}

TEST_CASE("the search for fixes stops when asked") {
  const FixQuestion question = questionFor(sampleRig("wrong-hinge"));
  std::stop_source stop;
  stop.request_stop();
  REQUIRE(fixesFor(question, stop.get_token()).stopped);
}
