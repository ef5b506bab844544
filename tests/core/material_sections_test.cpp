// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/material/agreement.h"
#include "core/material/rated_diameters.h"
#include "core/material/section_properties.h"
#include "core/units/si.h"

using namespace grainwise;

namespace {

// The table of the design is printed to 3-4 digits.
constexpr double kDiameterPrinted_in = 0.00005;
constexpr double kDensityPrinted = 0.005;
constexpr double kRatePrinted = 0.0005;
// Inversions end at rounding; this leaves room for the conversions around them.
constexpr double kInverse = 1e-11;

Section rated(double grPerFt, double inPerS) {
  Section s;
  s.length = Feet(10);
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(grPerFt));
  s.sinkRate = Along<InchesPerSecond>(InchesPerSecond(inPerS));
  return s;
}

Section floating(double rodEnd, double flyEnd) {
  Section s;
  s.length = Feet(10);
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(rodEnd), GrainsPerFoot(flyEnd));
  s.floats = true;
  return s;
}

Part partOf(PartKind kind, Section section) {
  Part part;
  part.kind = kind;
  part.sections.push_back(std::move(section));
  return part;
}

}  // namespace

TEST_CASE("a rated section has the diameter, density and rates of the design's table") {
  struct Row {
    double mass, rate, diameter, density, fresh10, salt10;
  };
  for (const Row& row : {Row{8, 6.5, 0.0280, 4.29, 6.419, 6.271},
                         Row{11, 7.5, 0.0309, 4.84, 7.427, 7.270},
                         Row{17, 9.5, 0.0328, 6.63, 9.432, 9.255}}) {
    CAPTURE(row.mass, row.rate);
    const auto p = sectionProperties(rated(row.mass, row.rate), PartKind::tip, 1.0);
    CHECK(p.diameterRodEnd.value() == Approx(row.diameter).margin(kDiameterPrinted_in));
    CHECK(p.densityRodEnd.value() == Approx(row.density).margin(kDensityPrinted));
    const auto rate = [&p](double salinity) {
      return sinkRates(p, {Celsius(10), GramsPerKilogram(salinity)}).rodEnd.value();
    };
    CHECK(rate(0) == Approx(row.fresh10).margin(kRatePrinted));
    CHECK(rate(35) == Approx(row.salt10).margin(kRatePrinted));
  }
}

TEST_CASE("a rated rate comes back from the diameter that it implies, over all that can be typed") {
  for (double mass : {0.05, 0.5, 3.0, 8.0, 20.0, 100.0}) {
    for (double rate : {0.01, 0.3, 1.0, 3.0, 7.5, 12.0, 20.0}) {
      CAPTURE(mass, rate);
      const auto d = diameterFromSinkRate(GrainsPerFoot(mass), InchesPerSecond(rate), kRatingWater);
      REQUIRE(d);
      const auto back = sinkRate(GrainsPerFoot(mass), *d, kRatingWater);
      // close to neutral the rate hangs on the last digits of the diameter
      CHECK(back.value() == Approx(rate).epsilon(rate < 1.0 ? 1e-7 : 1e-9));
    }
  }
}

TEST_CASE("a diameter comes back from density and rate, sinking and rising") {
  for (double density : {0.5, 0.88, 0.97, 1.14, 1.78, 4.8, 15.0}) {
    for (double d : {0.004, 0.02, 0.06, 0.2}) {
      CAPTURE(density, d);
      const double area = M_PI / 4 * std::pow(d * 0.0254, 2);
      const auto mass = si::toGrainsPerFoot(density * 1000 * area);
      const auto rate = sinkRate(mass, Inches(d), kRatingWater);
      CHECK((rate.value() > 0) == (density > 1));
      const auto back = diameterFromDensity(GramsPerCubicCentimetre(density), rate, kRatingWater);
      REQUIRE(back);
      CHECK(back->value() == Approx(d).epsilon(kInverse));
      CHECK_FALSE(diameterFromDensity(GramsPerCubicCentimetre(density), -rate, kRatingWater));
    }
  }
}

TEST_CASE("a neutral line does not sink and a rate of nothing has no diameter") {
  const double d_m = 0.03 * 0.0254;
  const auto water = waterAt(kRatingWater);
  const auto neutral = si::toGrainsPerFoot(water.rho_kg_per_m3 * M_PI / 4 * d_m * d_m);
  CHECK(std::abs(sinkRate(neutral, Inches(0.03), kRatingWater).value()) < 1e-6);
  CHECK_FALSE(diameterFromSinkRate(GrainsPerFoot(8), InchesPerSecond(0), kRatingWater));
}

TEST_CASE("a line too thin and too slow for the drag law has no diameter by its rate") {
  // Neutral at Re 1e-21, while the law starts at 1e-20: there is nothing to look for between them.
  CHECK_FALSE(diameterFromSinkRate(GrainsPerFoot(1e-16), InchesPerSecond(1e-14), kRatingWater));
  CHECK(diameterFromSinkRate(GrainsPerFoot(1e-14), InchesPerSecond(1e-12), kRatingWater));
}

TEST_CASE("a label scales the mass and keeps what was typed beside it") {
  Section byDiameter = floating(20, 10);
  byDiameter.floats.reset();
  byDiameter.diameter = Along<Inches>(Inches(0.1), Inches(0.07));
  const auto wide = sectionProperties(byDiameter, PartKind::head, 1.1);
  CHECK(wide.mass.rodEnd.value() == Approx(22.0));
  CHECK(wide.diameterRodEnd == Inches(0.1));

  const auto even = sectionProperties(floating(20, 10), PartKind::head, 1.1);
  CHECK(even.densityFlyEnd == GramsPerCubicCentimetre(0.86));
  const auto unscaled = sectionProperties(floating(20, 10), PartKind::head, 1.0);
  CHECK(even.diameterRodEnd / unscaled.diameterRodEnd == Approx(std::sqrt(1.1)));

  const auto sunk = sectionProperties(rated(10, 7), PartKind::tip, 1.1);
  CHECK(sinkRates(sunk, kRatingWater).flyEnd.value() == Approx(7.0).epsilon(1e-9));
}

TEST_CASE("between the ends each law runs as it was typed") {
  const auto even = sectionProperties(floating(20, 10), PartKind::head, 1.0);
  CHECK(even.massAt(0.5) == GrainsPerFoot(15));
  CHECK(even.diameterAt(0.5) / even.diameterAt(0) == Approx(std::sqrt(0.75)));
  CHECK(even.densityAt(0.5) == GramsPerCubicCentimetre(0.86));

  Section nylon;
  nylon.length = Feet(3);
  nylon.diameter = Along<Inches>(Inches(0.022), Inches(0.012));
  nylon.material = Material::nylon;
  const auto taper = sectionProperties(nylon, PartKind::leader, 1.0);
  CHECK(taper.mass.law == MassLaw::diameterSquared);
  CHECK(taper.diameterAt(0.5).value() == Approx(0.017));
  // a level strand: gr/ft = 2383.442 SG d^2
  CHECK(taper.massAt(0.5).value() == Approx(2383.442 * 1.14 * 0.017 * 0.017).epsilon(1e-6));
  CHECK(taper.densityAt(0.3).value() == Approx(1.14));

  Section pair = rated(11, 6);
  pair.sinkRate = Along<InchesPerSecond>(InchesPerSecond(3), InchesPerSecond(7));
  const auto graded = sectionProperties(pair, PartKind::tip, 1.0);
  CHECK(graded.diameterAt(0.5).value() ==
        Approx(0.5 * (graded.diameterRodEnd + graded.diameterFlyEnd).value()));
  CHECK(sinkRates(graded, kRatingWater).rodEnd.value() == Approx(3.0).epsilon(1e-9));
}

TEST_CASE("floats, rate, density and material tell what sinks") {
  CHECK_FALSE(sinks(floating(20, 10), PartKind::head));
  CHECK(sinks(rated(11, 7), PartKind::tip));
  Section s;
  s.length = Feet(1);
  s.diameter = Along<Inches>(Inches(0.02));
  s.material = Material::nylon;
  CHECK(sinks(s, PartKind::leader));
  s.material.reset();
  s.density = GramsPerCubicCentimetre(0.9);
  CHECK_FALSE(sinks(s, PartKind::leader));
  s.density.reset();
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(0.8));  // 0.84 g/cm3 in 0.02 in
  CHECK_FALSE(sinks(s, PartKind::tip));
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(1.1));
  CHECK(sinks(s, PartKind::tip));
}

TEST_CASE("bare nylon is decided by what the part is") {
  Section stout = floating(2.5, 2.0);
  Part leader = partOf(PartKind::leader, stout);
  CHECK(isBareNylon(leader, stout));
  leader.style = Style::coated;
  CHECK_FALSE(isBareNylon(leader, stout));
  CHECK(isBareNylon(leader, floating(1.5, 0.4)));
  CHECK(isBareNylon(partOf(PartKind::tippet, stout), stout));
  CHECK_FALSE(isBareNylon(partOf(PartKind::tip, stout), stout));
  Section mono;
  mono.length = Feet(100);
  mono.diameter = Along<Inches>(Inches(0.024));
  mono.material = Material::nylon;
  CHECK(isBareNylon(partOf(PartKind::runningLine, mono), mono));
}

TEST_CASE("over-stated sections must agree, and the problem names both statements") {
  Section s = rated(11, 7.5);
  s.diameter = Along<Inches>(Inches(0.0309));
  CHECK(checkAgreement(partOf(PartKind::tip, s)).empty());
  s.sinkRate = Along<InchesPerSecond>(InchesPerSecond(9));
  const auto problems = checkAgreement(partOf(PartKind::tip, s), "/parts/2");
  REQUIRE(problems.size() == 1);
  CHECK(problems[0].pointer == "/parts/2/sections/0/sink_in_per_s");
  CHECK(problems[0].what ==
        "sink_in_per_s says 9 in/s, but gr_per_ft with diameter_in sink at 7.5 in/s");

  Section dense;
  dense.length = Feet(3);
  dense.mass = Along<GrainsPerFoot>(GrainsPerFoot(2383.442 * 1.14 * 0.02 * 0.02 * 1.019));
  dense.diameter = Along<Inches>(Inches(0.02));
  dense.material = Material::nylon;
  CHECK(checkAgreement(partOf(PartKind::leader, dense)).empty());
  dense.mass = Along<GrainsPerFoot>(GrainsPerFoot(2383.442 * 1.14 * 0.02 * 0.02 * 1.022));
  CHECK(checkAgreement(partOf(PartKind::leader, dense)).size() == 1);
  dense.material.reset();
  dense.floats = true;
  REQUIRE(checkAgreement(partOf(PartKind::leader, dense)).size() == 1);
  CHECK(checkAgreement(partOf(PartKind::leader, dense))[0].pointer == "/sections/0/floats");

  Section both = rated(11, 7.5);
  both.floats = true;
  CHECK(checkAgreement(partOf(PartKind::tip, both)).size() == 1);
  Rig rig;
  rig.parts = {partOf(PartKind::head, floating(20, 10)), partOf(PartKind::tip, both)};
  REQUIRE(checkAgreement(rig).size() == 1);
  CHECK(checkAgreement(rig)[0].pointer == "/parts/1/sections/0/floats");
}

TEST_CASE("a derived density that no line has is a warning, not a refusal") {
  const Part heavy = partOf(PartKind::tip, rated(8, 18));
  CHECK(checkAgreement(heavy).empty());
  REQUIRE(implausible(heavy, 1.0).size() == 1);
  CHECK(implausible(heavy, 1.0)[0].text().find("follows from its mass and its sink rate") !=
        std::string::npos);
  CHECK(implausible(partOf(PartKind::tip, rated(11, 7.5)), 1.0).empty());
}

TEST_CASE("diameters that are kept for equal masses and rates are those worked out anew, bit for bit") {
  RatedDiameters kept;
  for (int turn = 0; turn < 3; ++turn) {
    for (double mass = 3; mass < 25; mass += 0.07) {
      for (const double rate : {1.5, 6.0, 6.1, 9.25}) {
        Section s = rated(mass, rate);
        s.mass = Along<GrainsPerFoot>(GrainsPerFoot(mass), GrainsPerFoot(mass - 1.4));
        REQUIRE(sectionProperties(s, PartKind::tip, 1.07, kept) == sectionProperties(s, PartKind::tip, 1.07));
      }
    }
  }
}
