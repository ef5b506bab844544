// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "core/compare/compare.h"
#include "core/report/compare.h"
#include "core/report/compare_words.h"
#include "tests/support/random_rig.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;
using Json = nlohmann::ordered_json;

namespace {

Comparison compared(const Rig& a, const Rig& b) {
  const Analysis analysisA = analyse(a), analysisB = analyse(b);
  return compareRigs({a, analysisA}, {b, analysisB});
}

const Consequence* find(const std::vector<Consequence>& list, Effect effect) {
  const auto found = std::find_if(list.begin(), list.end(),
                                  [&](const Consequence& c) { return c.effect == effect; });
  return found == list.end() ? nullptr : &*found;
}

std::optional<FactPair> fact(const Difference& d, Fact which) {
  for (const FactPair& f : d.facts) {
    if (f.fact == which) return f;
  }
  return std::nullopt;
}

/// The plain winter rig with another tip.
Rig withTip(Part tip) {
  Rig rig = plainWinter();
  rig.parts[2] = std::move(tip);
  return rig;
}

Section level(double length_ft, double gr_per_ft) { return floating(length_ft, gr_per_ft); }

}  // namespace

TEST_CASE("Two equal rigs have no difference, whatever they are called") {
  Rig other = plainWinter();
  other.name = "Another name";
  other.notes = "and notes";
  other.parts[2].name = "Box three, slot two";
  other.parts[2].id = "abc";
  const Comparison c = compared(plainWinter(), other);
  CHECK(c.differences.empty());
  CHECK(c.overall.empty());
  CHECK(compareText(plainWinter(), other, c).find("No difference.") != std::string::npos);
}

TEST_CASE("A heavier tip of the same length is one difference with its figures") {
  const Rig b = withTip(tip({sinking(10, 14, 7.5)}));
  const Comparison c = compared(plainWinter(), b);
  REQUIRE(c.differences.size() == 1);
  const Difference& d = c.differences.front();
  CHECK(d.what == Difference::What::part);
  CHECK(d.parts == PartPair{2, 2, false});
  CHECK_FALSE(fact(d, Fact::length));
  REQUIRE(fact(d, Fact::mass));
  CHECK(*fact(d, Fact::mass)->a == Approx(110));
  CHECK(*fact(d, Fact::mass)->b == Approx(140));
  CHECK_FALSE(fact(d, Fact::sinkRate));
  const Consequence* joint = find(d.does, Effect::junction);
  REQUIRE(joint);
  REQUIRE(joint->joint);
  CHECK(joint->joint->flySide == 2);
  CHECK(joint->b->value / joint->a->value == Approx(14.0 / 11.0).epsilon(1e-6));
  const Consequence* share = find(d.does, Effect::tipShare);
  REQUIRE(share);
  CHECK(share->a->value == Approx(110.0 / 525));
  CHECK(share->b->value == Approx(140.0 / 525));
  CHECK_FALSE(find(d.does, Effect::headOnRod));
  CHECK_FALSE(find(d.does, Effect::swingTime));
  REQUIRE(find(d.does, Effect::depth));
}

TEST_CASE("Cut down to a quarter that sinks, a tip says so and fishes shallower for certain") {
  Rig b = withTip(tip({level(7.5, 11), sinking(2.5, 11, 7.5)}));
  b.parts[2].style = Style::floatSink;
  const Comparison c = compared(plainWinter(), b);
  REQUIRE(c.differences.size() == 1);
  const auto sinks = fact(c.differences[0], Fact::sinkingLength);
  REQUIRE(sinks);
  CHECK(*sinks->a == Approx(10));
  CHECK(*sinks->b == Approx(2.5));
  CHECK_FALSE(fact(c.differences[0], Fact::mass));
  const Consequence* depth = find(c.overall, Effect::depth);
  REQUIRE(depth);
  CHECK(depth->difference->high < 0.0);
  CHECK_FALSE(depth->within);
  const Consequence* stroke = find(c.overall, Effect::stroke);
  REQUIRE(stroke);
  CHECK(stroke->stroke->verdict == StrokeVerdict::same);
  CHECK(stroke->stroke->quickerLift);
}

TEST_CASE("A depth difference in the same water is surer than either depth") {
  Rig b = plainWinter();
  b.parts.back().fly->dry = Grains(43);
  const Comparison c = compared(plainWinter(), b);
  const Consequence* depth = find(c.overall, Effect::depth);
  REQUIRE(depth);
  const double spread = depth->difference->high - depth->difference->low;
  for (const Rig& rig : {plainWinter(), b}) {
    const auto live = liveEnds(rig);
    REQUIRE(live);
    // The same live ends of one rig by themselves.
    std::vector<SourceEnds> sources;
    for (const BandEnds& e : live->ends) {
      sources.push_back({true, 0.0, 0.0, e.one->value(), e.other->value()});
    }
    const PairedDifference alone = pairedDifference(0.0, live->middle.value(), sources);
    CHECK(spread < alone.high - alone.low);
  }
  CHECK(depth->difference->middle == Approx(depth->b->value - depth->a->value));
}

TEST_CASE("In two different waters the errors do not cancel") {
  const Rig a = plainWinter();
  Rig b = withTip(tip({sinking(10, 14, 8.5)}));
  const auto spread = [](const Comparison& c) {
    const Consequence* depth = find(c.overall, Effect::depth);
    REQUIRE(depth);
    return depth->difference->high - depth->difference->low;
  };
  const double same = spread(compared(a, b));
  b.water->temperature = Celsius(11);
  CHECK(spread(compared(a, b)) > same);
}

TEST_CASE("A paired difference keeps only what does not move both alike") {
  const SourceEnds alike{true, 1.8, 2.3, 2.8, 3.3};
  const PairedDifference none = pairedDifference(2, 3, {alike});
  CHECK(none.middle == 1.0);
  CHECK(none.low == Approx(1.0));
  CHECK(none.high == Approx(1.0));
  SourceEnds apart = alike;
  apart.common = false;
  const PairedDifference both = pairedDifference(2, 3, {apart});
  CHECK(both.low == Approx(1 - std::hypot(0.2, 0.3)));
  CHECK(both.high == Approx(1 + std::hypot(0.2, 0.3)));
  CHECK(both.sure());
  CHECK_FALSE(PairedDifference{0.1, -0.1, 0.2}.sure());
  const SourceEnds onlyB{true, std::nullopt, std::nullopt, 2.5, 3.5};
  CHECK(pairedDifference(2, 3, {onlyB}).low == Approx(0.5));
}

TEST_CASE("A difference that is no more than is known says so and stands last") {
  Rig b = plainWinter();
  b.parts[2] = tip({sinking(10, 11.2, 7.5)});  // 1.8 %
  b.parts.back() = fly(60);
  const Comparison c = compared(plainWinter(), b);
  REQUIRE(c.differences.size() == 2);
  CHECK(c.differences[0].parts.a == 5);
  CHECK_FALSE(c.differences[0].within());
  CHECK(c.differences[1].parts.a == 2);
  const Consequence* share = find(c.differences[1].does, Effect::tipShare);
  REQUIRE(share);
  CHECK(share->within);
}

TEST_CASE("What makes a fault comes before what only moves a figure") {
  Rig b = plainWinter();
  b.parts[2] = tip({sinking(10, 12.5, 7.5)});
  b.rod->lineNumber = 5;  // the head is far too heavy
  const Comparison c = compared(plainWinter(), b);
  REQUIRE(c.differences.size() == 2);
  CHECK(c.differences[0].what == Difference::What::rod);
  const Consequence* head = find(c.differences[0].does, Effect::headOnRod);
  REQUIRE(head);
  CHECK(head->a->grade == Grade::fits);
  CHECK(head->b->grade == Grade::wrong);
  CHECK(&c.differences[0].does.front() == head);
}

TEST_CASE("A part that only one rig has is named so, and taken out or put in its place") {
  Rig b = plainWinter();
  b.parts.erase(b.parts.begin() + 2);
  const Comparison without = compared(plainWinter(), b);
  REQUIRE(without.differences.size() == 1);
  CHECK(without.differences[0].what == Difference::What::onlyInA);
  CHECK(without.differences[0].parts.a == 2);
  const Consequence* anchor = find(without.overall, Effect::anchor);
  REQUIRE(anchor);
  CHECK(anchor->a->grade == Grade::fits);
  CHECK(anchor->b->grade == Grade::wrong);
  const Consequence* share = find(without.overall, Effect::tipShare);
  REQUIRE(share);
  CHECK_FALSE(share->b);
  Rig both = b;
  both.parts.back() = fly(10);  // two differences: each by itself
  const Comparison back = compared(both, plainWinter());
  REQUIRE(back.differences.size() == 2);
  const auto inserted = std::find_if(back.differences.begin(), back.differences.end(), [](auto& d) {
    return d.what == Difference::What::onlyInB;
  });
  REQUIRE(inserted != back.differences.end());
  CHECK(inserted->parts.b == 2);
  Rig expected = both;
  expected.parts.insert(expected.parts.begin() + 2, plainWinter().parts[2]);
  CHECK(find(inserted->does, Effect::anchor)->b->value ==
        Approx(*analyse(expected).grip.anchorRatio));
}

TEST_CASE("Equal parts are paired before unequal ones") {
  const Part first = leader({nylon(1, 0.020)}), second = leader({nylon(2, 0.016)});
  const Rig a = rigOf({short525(), first, second, fly(10)});
  const Rig b = rigOf({short525(), second, fly(10)});
  const auto pairs = alignParts(a, massProfile(a), b, massProfile(b));
  CHECK(pairs == std::vector<PartPair>{{0, 0, true}, {1, std::nullopt, false}, {2, 1, true},
                                       {3, 2, true}});
}

TEST_CASE("Differences of rod, water, cast and swing are told apart from those of parts") {
  Rig b = plainWinter();
  b.rod->length = Feet(14);
  b.water->surfaceSpeed = FeetPerSecond(4);
  b.cast = Cast{};
  b.cast->lineSpeed = FeetPerSecond(40);
  b.swing = Swing{};
  b.swing->mend = Seconds(8);
  const Comparison c = compared(plainWinter(), b);
  CHECK(c.differences.size() == 4);
  for (const Difference& d : c.differences) {
    INFO(words::of(d.what));
    switch (d.what) {
      case Difference::What::rod:
        CHECK(find(d.does, Effect::anchor));
        break;
      case Difference::What::water:
        CHECK(find(d.does, Effect::depth)->difference->middle < 0.0);
        break;
      case Difference::What::cast:
        CHECK(find(d.does, Effect::reserve)->b->value < find(d.does, Effect::reserve)->a->value);
        break;
      case Difference::What::swing:
        CHECK(d.does.empty());  // the live estimate knows no mend
        CHECK(d.within());
        break;
      default:
        FAIL("no part differs");
    }
  }
}

TEST_CASE("Of two rigs each is cast in its own air, and the thinner air is a difference of the cast") {
  Rig high = plainWinter();
  high.cast = Cast{};
  high.cast->airAltitude = Feet(9000);
  const Comparison c = compared(plainWinter(), high);
  REQUIRE(c.differences.size() == 1);
  const Difference& d = c.differences.front();
  CHECK(d.what == Difference::What::cast);
  CHECK(fact(d, Fact::airAltitude)->b == 9000);
  const Consequence* pace = find(d.does, Effect::pace);
  REQUIRE(pace);
  CHECK(pace->a->value == analyse(plainWinter()).turnover->pace);
  CHECK(pace->b->value == analyse(high).turnover->pace);
  CHECK(pace->b->value > pace->a->value);
  CHECK(words::factsOf(d) == "air at - > 9000 ft");
}

TEST_CASE("Another bed is another water and another depth; the usual one, said or not, is no difference") {
  Rig gravel = plainWinter();
  gravel.water->bed = Bed::gravel;
  CHECK(compared(plainWinter(), gravel).differences.empty());
  Rig boulders = plainWinter();
  boulders.water->bed = Bed::boulders;
  const Comparison c = compared(plainWinter(), boulders);
  REQUIRE(c.differences.size() == 1);
  CHECK(c.differences.front().what == Difference::What::water);
  CHECK(words::factsOf(c.differences.front()) == "another bed");
  const Consequence* depth = find(c.overall, Effect::depth);
  REQUIRE(depth);
  CHECK(depth->b->value > depth->a->value);
  const Comparison same = compared(boulders, boulders);
  CHECK(same.differences.empty());
}

TEST_CASE("Real swings give the time of the swing and a depth difference of their own") {
  const Rig a = plainWinter(), b = withTip(tip({sinking(10, 14, 8.5)}));
  const Analysis analysisA = analyse(a), analysisB = analyse(b);
  const HeavyRuns heavyA = swingRuns(a), heavyB = swingRuns(b);
  const Comparison c = compareRigs({a, analysisA, &heavyA}, {b, analysisB, &heavyB});
  const Consequence* depth = find(c.overall, Effect::depth);
  REQUIRE(depth);
  CHECK(depth->fromRuns);
  CHECK(depth->a->value == heavyA.band->middle->value());
  CHECK(depth->difference->middle > 0.0);
  const double bandA = (heavyA.band->band->high - heavyA.band->band->low).value();
  CHECK(depth->difference->high - depth->difference->low < bandA);
  CHECK_FALSE(find(compared(a, b).overall, Effect::swingTime));
}

TEST_CASE("Swapping the rigs turns every difference round") {
  const Rig a = plainWinter();
  Rig b = withTip(tip({sinking(12, 14, 8.5)}));
  const Comparison there = compared(a, b), back = compared(b, a);
  for (const Consequence& c : there.overall) {
    const Consequence* other = find(back.overall, c.effect);
    if (c.stroke) continue;  // relative to its own reference
    REQUIRE(other);
    CHECK(other->a->value == c.b->value);
    CHECK(other->b->value == c.a->value);
    if (!c.difference) continue;
    CHECK(other->difference->middle == Approx(-c.difference->middle));
    CHECK(other->difference->low == Approx(-c.difference->high));
  }
}

TEST_CASE("Any two rigs compare to finite figures in order, the same every time") {
  for (std::uint64_t seed = 1; seed <= 150; ++seed) {
    INFO("seed " << seed);
    Random random(seed);
    const Rig a = randomRig(random), b = randomRig(random);
    const Comparison c = compared(a, b);
    const std::string json = compareJson(a, b, c);
    REQUIRE(json == compareJson(a, b, compared(Rig(a), Rig(b))));
    REQUIRE(json.find("null") == std::string::npos);
    REQUIRE(Json::parse(json)["differences"].size() == c.differences.size());
    const std::string text = compareText(a, b, c);
    REQUIRE(text.find("nan") == std::string::npos);
    REQUIRE(text.find("inf") == std::string::npos);
    for (std::size_t i = 1; i < c.differences.size(); ++i) {
      REQUIRE(c.differences[i - 1].weight() >= c.differences[i].weight());
    }
    std::size_t inA = 0, inB = 0;
    for (const PartPair& pair : c.pairs) {
      if (pair.a) REQUIRE(*pair.a == inA++);
      if (pair.b) REQUIRE(*pair.b == inB++);
    }
    REQUIRE(inA == a.parts.size());
    REQUIRE(inB == b.parts.size());
  }
}

TEST_CASE("The JSON of a comparison has its keys in their order") {
  const Rig b = withTip(tip({sinking(10, 14, 8.5)}));
  const Json report = Json::parse(compareJson(plainWinter(), b, compared(plainWinter(), b)));
  std::vector<std::string> keys;
  for (const auto& item : report.items()) keys.push_back(item.key());
  CHECK(keys == std::vector<std::string>{"format", "version", "a", "b", "overall", "differences"});
  CHECK(report["format"] == "grainwise-compare");
  CHECK(report["version"] == 1);
  const Json& d = report["differences"][0];
  CHECK(d["what"] == "part");
  CHECK(d["a"]["kind"] == "tip");
  CHECK(d["facts"][0]["fact"] == "mass_gr");
  CHECK(d["within_uncertainty"] == false);
  for (const Json& c : report["overall"]) {
    if (c["reading"] == "swing_ft") CHECK(c["from_runs"] == false);
  }
}
