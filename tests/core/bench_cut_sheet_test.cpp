// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "core/bench/cut_sheet.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "core/report/cut_sheet.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

const std::string kSamples = std::string(GRAINWISE_SOURCE_DIR) + "/sample-rigs/";

Approx toRounding(double value) { return Approx(value).margin(1e-9); }

Spools bench() { return *loadSpools(kSamples + "bench.spools.json"); }

std::vector<MadePart> family() {
  std::vector<MadePart> parts;
  const auto shelf = loadShelf(kSamples + "five-tip-family.shelf.json");
  for (const Part& part : shelf->parts) parts.push_back({part, "family", std::nullopt});
  return parts;
}

Spool levelSpool(double perFoot, double left_ft) {
  Spool spool;
  spool.name = "spool";
  spool.mass = GrainsPerFoot(perFoot);
  spool.sinkRate = InchesPerSecond(7.5);
  spool.left = Feet(left_ft);
  return spool;
}

const MaterialCuts& material(const CutSheet& sheet, const std::string& name) {
  for (const MaterialCuts& m : sheet.materials) {
    if (lineName(m.stuff) == name) return m;
  }
  FAIL("no line " << name);
  return sheet.materials.front();
}

}  // namespace

TEST_CASE("Cut sheet: the five-tip family takes 26.29 ft of each line, as reckoned by hand") {
  const CutSheet sheet = cutSheet(family(), bench());
  const MaterialCuts& sinking = material(sheet, "sinking 11 gr/ft, 7.5 in/s");
  const MaterialCuts& floats = material(sheet, "floating 11 gr/ft");
  // 10 ft and two loops of 2.5 in; 7.5, 5 and 2.5 ft with a loop and a splice side of 1 in each
  const double byHand = (120 + 5 + 90 + 3.5 + 60 + 3.5 + 30 + 3.5) / 12.0;
  CHECK(sinking.wanted.value() == toRounding(byHand));
  CHECK(floats.wanted.value() == toRounding(byHand));
  CHECK(byHand == Approx(26.29).margin(0.005));
  CHECK(sinking.uncut.empty());
  CHECK(floats.missing.value() == toRounding(byHand - 25.0));
  CHECK(floats.missing.value() == Approx(1.29).margin(0.005));
  CHECK_FALSE(sheet.complete());
  const std::string says = shortageText(sheet, floats);
  CHECK(says.find("1.29 ft short") != std::string::npos);
  CHECK(says.find("3/4 sinking, 11 gr/ft, floating piece (2 ft 9 1/2 in)") != std::string::npos);
}

TEST_CASE("Cut sheet: the sinking family comes off the 30 ft spool and leaves 3.71 ft") {
  const CutSheet sheet = cutSheet(family(), bench());
  const SpoolCuts& first = sheet.spools.front();
  CHECK(bench().spools[first.spool].left.value() == 30.0);
  REQUIRE(first.cuts.size() == 4);
  CHECK(first.left.value() == Approx(3.71).margin(0.005));
}

TEST_CASE("Cut sheet: cuts and what is left make the spool, and marks run on from one end") {
  const CutSheet sheet = cutSheet(family(), bench());
  for (const SpoolCuts& spool : sheet.spools) {
    Feet at;
    for (const PlacedCut& placed : spool.cuts) {
      CHECK(placed.from.value() == toRounding(at.value()));
      CHECK((placed.to - placed.from).value() == toRounding(sheet.cuts[placed.cut].length().value()));
      at = placed.to;
    }
    CHECK((at + spool.left).value() == toRounding(bench().spools[spool.spool].left.value()));
  }
}

TEST_CASE("Cut sheet: a loop weighs its allowance of the line, and stands in the label") {
  const Part plain = tip({sinking(10, 11, 7.5)});
  CHECK(loopMass(LoopKind::welded, GrainsPerFoot(11), {}).value() == toRounding(11 * 2.5 / 12));
  const Part looped = withProposedLoops(plain);
  CHECK(looped.loops->rodEnd == Grains(2.3));
  CHECK(looped.loops->flyEnd == Grains(2.3));
  CHECK(withProposedLoops(looped) == looped);
  const CutSheet sheet = cutSheet({{plain, "", std::nullopt}}, bench());
  CHECK(sheet.labels.front().mass.value() == toRounding(114.6));
}

TEST_CASE("Cut sheet: a label's grains are all that is cut for the tip, splices included") {
  // Loops are put on a tip to a tenth of a grain, two of them a tip.
  constexpr double kLoopsToTenths_gr = 0.1;
  Spools plenty = bench();
  for (Spool& spool : plenty.spools) spool.left = Feet(100);
  const CutSheet sheet = cutSheet(family(), plenty);
  REQUIRE(sheet.complete());
  REQUIRE(sheet.labels.size() == 5);
  for (const TipLabel& label : sheet.labels) {
    double cut_gr = 0;
    for (const WantedCut& cut : sheet.cuts) {
      if (cut.made == label.made) cut_gr += cut.length().value() * 11;
    }
    CHECK(label.mass.value() == Approx(cut_gr).margin(kLoopsToTenths_gr));
  }
  // 10 ft, two loops of 2.5 in, a splice with 1 in a side: 10 ft 7 in of 11 gr/ft
  CHECK(sheet.labels[2].mass.value() == Approx(116.4).margin(kLoopsToTenths_gr));
  BenchRules wide;
  wide.splice = Inches(3);
  CHECK(cutSheet(family(), plenty, wide).labels[2].mass.value() ==
        Approx(116.4 + 11 * 4 / 12.0).margin(kLoopsToTenths_gr));
}

TEST_CASE("Cut sheet: a tip that cannot be cut whole gets no label") {
  const CutSheet sheet = cutSheet(family(), bench());
  REQUIRE_FALSE(sheet.complete());
  CHECK(sheet.labels.size() == 4);
  for (const TipLabel& label : sheet.labels) {
    CHECK(label.name != "10 ft, 3/4 sinking, 11 gr/ft");
  }
  CHECK(cutSheet(family(), Spools{}).labels.empty());
}

TEST_CASE("Cut sheet: loops and knots are cut as the bench makes them") {
  BenchRules rules;
  rules.lineLoop = *loopKindNamed("sleeved");
  *lengthOf(rules.lineLoop, rules) = Inches(4);
  const CutSheet sheet = cutSheet({{tip({sinking(10, 11, 7.5)}), "", std::nullopt}}, bench(), rules);
  CHECK(sheet.cuts.front().length().value() == toRounding(10 + 8.0 / 12));
  CHECK_FALSE(loopKindNamed("glued"));
  rules.lineLoop = LoopKind::none;
  CHECK(lengthOf(rules.lineLoop, rules) == nullptr);
  CHECK(allowance(rules.lineLoop, rules) == Inches(0));
  rules.splice = Inches(-1);
  rules.flyKnot = Inches(25);
  CHECK(withinReason(rules).splice == Inches(1));
  CHECK(withinReason(rules).flyKnot == Inches(4));
  CHECK(withinReason(rules).sleevedLoop == Inches(4));
}

TEST_CASE("Cut sheet: loops that are stated stay, and a leader's knots follow what it is tied to") {
  const Part stated = withLoops(tip({sinking(10, 11, 7.5)}), 0, 4);
  CHECK(withProposedLoops(stated) == stated);
  BenchRules rules;
  rules.flyKnot = Inches(6);
  const Part front = leader({nylon(4, 0.013)});
  const Part hook = test::rigs::fly(10);
  CHECK(endAllowances(front, &hook, rules).front().flyEnd == Inches(6));
  CHECK(endAllowances(front, nullptr, rules).front().flyEnd == rules.joiningKnot);
  CHECK(endAllowances(front, &hook, rules).front().rodEnd == rules.tiedLoop);
}

TEST_CASE("Cut sheet: a spool of another line is never cut") {
  Spools spools;
  spools.spools = {levelSpool(11.5, 100), levelSpool(11, 3)};
  spools.spools[0].sinkRate = InchesPerSecond(7.5);
  const CutSheet sheet = cutSheet({{tip({sinking(10, 11, 7.5)}), "", std::nullopt}}, spools);
  CHECK(sheet.spools.empty());
  REQUIRE(sheet.materials.size() == 1);
  CHECK(sheet.materials[0].there == Feet(3));
  CHECK(sheet.materials[0].uncut.size() == 1);
  CHECK(cutSheetText(sheet, spools).find("7.42 ft short") != std::string::npos);
}

TEST_CASE("Cut sheet: a tapered tip is named as bought whole, not cut") {
  const Part tapered = tip({floating(15, 10, 8)});
  const CutSheet sheet = cutSheet({{tapered, "", std::nullopt}}, bench());
  CHECK(sheet.cuts.empty());
  CHECK(sheet.bought.size() == 1);
  CHECK(cutSheetText(sheet, bench()).find("tapered, no level spool gives it") != std::string::npos);
}

TEST_CASE("Cut sheet: without any spool every piece is named with its length") {
  const CutSheet sheet = cutSheet(partsToMake(plainWinter()), Spools{});
  CHECK(sheet.spools.empty());
  CHECK(sheet.cuts.size() == 3);
  const std::string text = cutSheetText(sheet, Spools{});
  CHECK(text.find("there is no such spool; 10.42 ft are wanted") != std::string::npos);
  CHECK(text.find("(10 ft 5 in)") != std::string::npos);
}

TEST_CASE("Cut sheet: the JSON says what the sheet holds") {
  const CutSheet sheet = cutSheet(family(), bench());
  const auto json = nlohmann::json::parse(cutSheetJson(sheet, bench()));
  CHECK(json["format"] == "grainwise-cut-sheet");
  CHECK(json["version"] == 1);
  CHECK(json["complete"] == false);
  CHECK(json["spools"].size() == sheet.spools.size());
  CHECK(json["spools"][0]["cuts"][0]["to_ft"].get<double>() == toRounding(10.0 + 5.0 / 12.0));
  CHECK(json["labels"].size() == 4);  // 3/4 sinking lacks its floating piece
  CHECK(json["labels"][1]["rings"]["quarters"] == 1);
  CHECK(json["labels"][1]["rings"]["long"] == 2);
  CHECK(json["labels"][1]["rings"]["short"] == 1);
}

TEST_CASE("Divide a spool: 30 ft into three tips gives 9 ft 7 in each, cut at 10 ft") {
  const auto three = divideEqually(levelSpool(11, 30), 3);
  REQUIRE(three);
  CHECK(three->cut.value() == toRounding(10));
  CHECK(feetInchesText(three->finished) == "9 ft 7 in");
  CHECK(three->left.value() == toRounding(0));
  CHECK(three->mass.value() == toRounding(110));
}

TEST_CASE("Divide a spool: as many tips of a length as it gives, never one more") {
  const auto ten = divideBy(levelSpool(11, 30), Feet(10));
  REQUIRE(ten);
  CHECK(ten->count == 2);
  CHECK(ten->left.value() == toRounding(30 - 2 * (10 + 5.0 / 12)));
  const auto exact = divideBy(levelSpool(11, 31.25), Feet(10));
  CHECK(exact->count == 3);
}

TEST_CASE("Divide a spool: what cannot be is refused in plain words") {
  CHECK(divideEqually(levelSpool(11, 30), 0).error().what.text().find("0 tips") != std::string::npos);
  const auto loopsOnly = divideEqually(levelSpool(11, 2), 5);
  REQUIRE_FALSE(loopsOnly);
  CHECK(loopsOnly.error().what.text().find("loops of 5 tips use up") != std::string::npos);
  BenchRules bare;
  bare.lineLoop = LoopKind::none;
  const auto crumbs = divideBy(levelSpool(11, 300), Feet(1e-8), bare);  // more than an int counts
  REQUIRE_FALSE(crumbs);
  CHECK(crumbs.error().fix.text() == "ask for fewer tips");
  const auto tooShort = divideBy(levelSpool(11, 8), Feet(10));
  REQUIRE_FALSE(tooShort);
  CHECK(tooShort.error().what.text().find("2.5 ft short") != std::string::npos);
  CHECK_FALSE(divideBy(levelSpool(11, 8), Feet(-1)));
}

TEST_CASE("Feet and inches: to the nearest eighth, carried over, never 12 in") {
  CHECK(feetInchesText(Feet(10 + 5.0 / 12)) == "10 ft 5 in");
  CHECK(feetInchesText(Feet(7.0 + 9.5 / 12)) == "7 ft 9 1/2 in");
  CHECK(feetInchesText(Feet(2.999)) == "3 ft");
  CHECK(feetInchesText(Feet(0)) == "0 in");
  CHECK(feetInchesText(Feet(0.25 / 12)) == "1/4 in");
  CHECK(feetInchesText(Feet(5)) == "5 ft");
}

TEST_CASE("Rings: long ones count five, short ones one") {
  CHECK(ringCode(GrainsPerFoot(17), 1, false) == RingCode{3, 2, 0});
  CHECK(ringCode(GrainsPerFoot(8), 0.75, true) == RingCode{1, 3, 3});
  CHECK(ringText({3, 2, 0}) == "3 long, 2 short");
  CHECK(ringText({1, 3, 3}) == "1 long, 3 short, a gap, 3 short");
}
