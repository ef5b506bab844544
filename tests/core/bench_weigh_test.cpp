// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/analysis/analysis.h"
#include "core/bench/cut_sheet.h"
#include "core/bench/typed.h"
#include "core/bench/weigh_in.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "core/model/check.h"
#include "core/model/edits.h"
#include "core/report/format.h"
#include "tests/support/random_rig.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx toRounding(double value) { return Approx(value).margin(1e-9); }

Part looped11() { return withLoops(tip({sinking(10, 11, 7.5)}), 2.3, 2.3); }

double grains(const char* text, std::optional<MassUnit> bare = {}) {
  const auto mass = typedMass(text, bare);
  INFO(text << ": " << (mass ? "" : mass.error().what.text()));
  REQUIRE(mass);
  return mass->value();
}
double feet(const char* text, std::optional<LengthUnit> bare = {}) {
  const auto length = typedLength(text, bare);
  INFO(text << ": " << (length ? "" : length.error().what.text()));
  REQUIRE(length);
  return length->value();
}

}  // namespace

TEST_CASE("Weigh-in: a tip reckoned by hand against the scale") {
  const auto read = weighIn(looped11(), Grains(113.5));
  REQUIRE(read);
  CHECK(read->nominal.value() == toRounding(114.6));
  CHECK(read->difference.value() == toRounding(-1.1));
  CHECK(read->share == toRounding(-1.1 / 114.6));
  CHECK(read->implied->value() == toRounding(10.89));  // (113.5 - 4.6) / 10
  CHECK(read->tolerance.value() == toRounding(3.438));
  CHECK(read->verdict == WeighVerdict::fits);
}

TEST_CASE("Weigh-in: the tolerance is 3 % or half the scale's step, whichever is more") {
  WeighRules kitchen;
  kitchen.scaleStep = grainsOf(1, MassUnit::grams);
  const Part light = tip({sinking(10, 5, 5)});
  CHECK(weighIn(light, Grains(52))->verdict == WeighVerdict::heavy);
  CHECK(weighIn(light, Grains(52), {}, kitchen)->verdict == WeighVerdict::fits);
  CHECK(weighIn(light, Grains(52), {}, kitchen)->tolerance.value() == Approx(7.716).margin(0.001));
  CHECK(weighIn(light, Grains(48))->verdict == WeighVerdict::light);
}

TEST_CASE("Weigh-in: exactly on the tolerance still fits") {
  const Part part = tip({sinking(10, 10, 7)});
  CHECK(weighIn(part, Grains(103))->verdict == WeighVerdict::fits);
  CHECK(weighIn(part, Grains(97))->verdict == WeighVerdict::fits);
  CHECK(weighIn(part, Grains(103.01))->verdict == WeighVerdict::heavy);
}

TEST_CASE("Weigh-in: what is meant is what the label on the cut sheet says, splices and loops included") {
  // The label's loops are proposed to a tenth of a grain; here they are stated as proposed.
  Spools plenty = *loadSpools(std::string(GRAINWISE_SOURCE_DIR) + "/sample-rigs/bench.spools.json");
  for (Spool& spool : plenty.spools) spool.left = Feet(100);
  const auto family = loadShelf(std::string(GRAINWISE_SOURCE_DIR) + "/sample-rigs/five-tip-family.shelf.json");
  BenchRules wide;
  wide.splice = Inches(3);
  for (const BenchRules& bench : {BenchRules{}, wide}) {
    WeighRules rules;
    rules.bench = bench;
    for (const Part& part : family->parts) {
      const CutSheet sheet = cutSheet({{part, "", std::nullopt}}, plenty, bench);
      const Part looped = withProposedLoops(part, bench);
      INFO(part.name.value_or(""));
      REQUIRE(sheet.labels.size() == 1);
      CHECK(nominalMass(looped, bench).value() == toRounding(sheet.labels[0].mass.value()));
      CHECK((nominalMass(part, bench) + unstatedLoops(part, bench)).value() ==
            toRounding(sheet.labels[0].mass.value()));
      CHECK(weighIn(looped, sheet.labels[0].mass, {}, rules)->difference.value() == toRounding(0));
    }
  }
}

TEST_CASE("Weigh-in: a splice by hand, and that a foot of line weighs without it") {
  // 5 ft floating and 5 ft sinking of 11 gr/ft, an inch of each in the splice: 2/12 ft x 11 gr/ft
  const Part half = withLoops(tip({floating(5, 11), sinking(5, 11, 7.5)}), 2.3, 2.3);
  CHECK(spliceMass(half).value() == toRounding(11.0 / 6));
  CHECK(nominalMass(half).value() == toRounding(110 + 4.6 + 11.0 / 6));
  CHECK(weighIn(half, nominalMass(half))->implied->value() == toRounding(11));
  CHECK(unstatedLoops(half) == Grains(0));
  // What is bought whole, knotted, or of one piece has none.
  CHECK(spliceMass(tip({floating(7, 10, 9), sinking(8, 9, 6)})) == Grains(0));
  CHECK(spliceMass(leader({nylon(3, 0.020), nylon(2, 0.015)})) == Grains(0));
  CHECK(spliceMass(looped11()) == Grains(0));
  CHECK(spliceMass(plainWinter().parts[1]) == Grains(0));
  CHECK(unstatedLoops(tip({sinking(10, 11, 7.5)})).value() == toRounding(4.6));
  CHECK(unstatedLoops(plainWinter().parts[1]) == Grains(0));
}

TEST_CASE("Weigh-in: a tip that is heavy by its unstated loops alone is told as such, by hand") {
  const Part bare = tip({sinking(10, 11, 7.5)});  // 110 gr, 3.3 gr of tolerance, two loops of 2.3 gr
  CHECK(weighIn(bare, Grains(114.6))->verdict == WeighVerdict::heavy);
  CHECK(weighIn(bare, Grains(114.6))->fitsWithLoops);
  CHECK(weighIn(bare, Grains(117.8))->fitsWithLoops);
  CHECK_FALSE(weighIn(bare, Grains(118.0))->fitsWithLoops);  // 3.4 gr beyond them
  CHECK_FALSE(weighIn(bare, Grains(112))->fitsWithLoops);    // fits without
  CHECK_FALSE(weighIn(bare, Grains(105))->fitsWithLoops);
  CHECK_FALSE(weighIn(looped11(), Grains(119))->fitsWithLoops);
}

TEST_CASE("Weigh-in: a length so short that no number makes it the measured one is left as it is") {
  for (const double length_ft : {4.9e-324, 1e-310}) {
    Part part = tip({sinking(1, 11, 7.5)});
    part.sections.front().length = Feet(length_ft);
    REQUIRE(check(part).empty());
    CHECK(withMeasuredLength(part, Feet(10)) == part);
  }
  Part short_ = tip({sinking(1e-3, 11, 7.5)});
  CHECK(withMeasuredLength(short_, Feet(10)).length().value() == Approx(10));
}

TEST_CASE("Weigh-in: a measured length changes what a foot weighs, not what was meant") {
  const auto read = weighIn(looped11(), Grains(114.6), Feet(10.5));
  CHECK(read->implied->value() == toRounding(110.0 / 10.5));
  CHECK(read->share == toRounding(0));
  const Part longer = withMeasuredLength(looped11(), Feet(10.5));
  CHECK(longer.length().value() == toRounding(10.5));
}

TEST_CASE("Weigh-in: grams typed as grains are told, and nothing else is taken for that") {
  CHECK(weighIn(looped11(), Grains(7.4))->slip == UnitSlip::gramsTakenForGrains);
  CHECK(weighIn(looped11(), Grains(1768))->slip == UnitSlip::grainsTakenForGrams);
  CHECK_FALSE(weighIn(looped11(), Grains(60))->slip);
  CHECK_FALSE(weighIn(looped11(), Grains(114))->slip);
}

TEST_CASE("Weigh-in: what no part can weigh is refused in plain words") {
  CHECK_FALSE(weighIn(looped11(), Grains(0)));
  CHECK_FALSE(weighIn(looped11(), Grains(-3)));
  CHECK_FALSE(weighIn(looped11(), Grains(6000)));
  CHECK(weighIn(looped11(), Grains(4)).error().what.text().find("loops") != std::string::npos);
  CHECK_FALSE(weighIn(fly(10), Grains(501)));
  CHECK_FALSE(weighIn(looped11(), Grains(100), Feet(-1)));
}

TEST_CASE("Weigh-in: a fly keeps the water that it holds") {
  Part leech = fly(26);
  leech.fly->wet = Grains(33);
  const Part weighed = weighedIn(leech, Grains(27.5), "2026-03-02");
  CHECK(weighed.fly->dry == Grains(27.5));
  CHECK(weighed.fly->wet->value() == toRounding(34.5));
  CHECK_FALSE(weighed.weighed);
}

TEST_CASE("Weigh-in: the scale's word outranks the label, which stays below it") {
  Part labelled = looped11();
  labelled.label = Grains(112);
  const Part weighed = weighedIn(labelled, Grains(113.5), "2026-03-02");
  CHECK(weighed.label == Grains(112));
  CHECK(weighed.weighed->on == "2026-03-02");
  CHECK(check(weighed).empty());
  Rig rig = plainWinter();
  const double before = analyse(rig).grip.tip.value();
  rig.parts[2] = weighed;
  CHECK(analyse(rig).grip.tip.value() == toRounding(113.5));
  CHECK(before == toRounding(110));
}

TEST_CASE("Weigh-in: weighing and taking it back leaves every part as it was") {
  test::Random random(11);
  for (int round = 0; round < 500; ++round) {
    Rig rig = test::randomRig(random);
    for (Part& part : rig.parts) {
      if (part.kind == PartKind::fly) continue;
      part.weighed.reset();
      const Part weighed = weighedIn(part, part.loopMass() + Grains(50), "2026-03-02");
      REQUIRE(withoutWeighing(weighed) == part);
      REQUIRE(nominalMass(weighed) == nominalMass(part));
    }
  }
}

TEST_CASE("Typed mass: every usual spelling, point and comma") {
  CHECK(grains("525 gr") == toRounding(525));
  CHECK(grains("113,5 gr") == toRounding(113.5));
  CHECK(grains("113.5gr.") == toRounding(113.5));
  CHECK(grains(" 12 Grains ") == toRounding(12));
  CHECK(grains("34 g") == Approx(524.70).margin(0.01));
  CHECK(grains("34", MassUnit::grams) == grains("34 g"));
  CHECK(grains("34 gr", MassUnit::grams) == toRounding(34));
  CHECK(grains("1/2 g") == Approx(7.716).margin(0.001));
}

TEST_CASE("Typed mass: g and gr are never guessed between, and nonsense is no mass") {
  CHECK(typedMass("34").error().what.text().find("gr or g") != std::string::npos);
  for (const char* text : {"", "gr", "34 kg", "34 oz of", "1.2.3 g", "1,234.5 gr", "-3 gr", "0 gr",
                           "1e3 gr", "nan gr", "inf gr", "5001 gr", "34 g 2 gr", "12 13 gr"}) {
    INFO(text);
    CHECK_FALSE(typedMass(text));
    CHECK_FALSE(typedMass(text).error().fix.empty());
  }
}

TEST_CASE("Typed length: feet, inches, fractions and metres") {
  CHECK(feet("10.5 ft") == toRounding(10.5));
  CHECK(feet("10 ft 6 in") == toRounding(10.5));
  CHECK(feet("10'6\"") == toRounding(10.5));
  CHECK(feet("9 ft 7 1/2 in") == toRounding(9.625));
  CHECK(feet("126 in") == toRounding(10.5));
  CHECK(feet("3,2004 m") == toRounding(10.5));
  CHECK(feet("320.04 cm") == toRounding(10.5));
  CHECK(feet("3200.4 mm") == toRounding(10.5));
  CHECK(feet("10 1/2", LengthUnit::feet) == toRounding(10.5));
  for (const char* text : {"", "ft", "10", "10 gr", "6 in 10 ft", "10 ft 6 in 2 mm", "-1 ft",
                           "0 ft", "301 ft", "10 ft -6 in", "1/0 ft"}) {
    INFO(text);
    CHECK_FALSE(typedLength(text));
  }
}

TEST_CASE("Typed entry: metric and trade units agree to the last digit that is shown") {
  for (int tenths = 1; tenths < 3000; tenths += 7) {
    const double gr = tenths / 10.0 + 0.0321;  // never on the half of a shown digit
    const std::string grams = fixedText(gr * 0.06479891, 6) + " g";
    const auto metric = weighIn(looped11(), typedMass(grams).value() + Grains(5));
    const auto trade = weighIn(looped11(), Grains(gr) + Grains(5));
    INFO(grams);
    CHECK(grainsText(metric->measured.value()) == grainsText(trade->measured.value()));
    CHECK(fixedText(metric->implied->value(), 2) == fixedText(trade->implied->value(), 2));
    CHECK(metric->verdict == trade->verdict);
  }
}
