// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/material/section_properties.h"
#include "core/units/si.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;

namespace {

/// The definitions are exact decimals; one product of two of them rounds once.
constexpr double kOneRounding = 3e-16;

Approx exactly(double value) { return Approx(value).epsilon(kOneRounding).margin(0); }
Approx printed(double value, double digits) { return Approx(value).margin(digits / 2).epsilon(0); }

}  // namespace

// Source: International yard and pound agreement, 1959; NIST SP 811 (2008), Appendix B.
TEST_CASE("Grain, pound, foot and inch are what the agreement of 1959 says") {
  CHECK(si::kg(Grains(1)) == exactly(64.79891e-6));
  CHECK(si::kg(Grains(7000)) == exactly(0.45359237));
  CHECK(si::m(Feet(1)) == exactly(0.3048));
  CHECK(si::m(Inches(1)) == exactly(0.0254));
  CHECK(si::m(Inches(12)) == exactly(si::m(Feet(1))));
}

// Source: Declaration of the 3rd CGPM (1901).
TEST_CASE("Standard gravity is 9.80665 m/s2") { CHECK(si::kGravity_m_per_s2 == 9.80665); }

// Computed from the definitions above; GNU units agrees (tests/reference).
TEST_CASE("One grain per foot is 0.212594849 grams per metre") {
  CHECK(1e3 * si::kg_per_m(GrainsPerFoot(1)) == printed(0.212594849, 1e-9));
}

TEST_CASE("A level strand weighs 2383.442 SG d2 grains per foot") {
  // Computed: pi/4 x 0.0254^2 x 1000 x 0.3048 / 64.79891e-6 for one inch of specific gravity 1.
  Section strand;
  strand.length = Feet(1);
  strand.diameter = Along<Inches>(Inches(0.5));
  strand.density = GramsPerCubicCentimetre(1);
  const LineMass mass = lineMass(strand, PartKind::tip);
  CHECK(4 * mass.rodEnd.value() == printed(2383.442, 1e-3));
  CHECK(mass.flyEnd == mass.rodEnd);
}

// Source: X sizes d = (11 - X)/1000 in, nylon 1.14 g/cm3 (handbooks); grains computed.
TEST_CASE("Nylon of 0X and 5X weighs what its diameter says") {
  const auto grainsPerFoot = [](double x) {
    return lineMass(test::rigs::nylon(1, (11 - x) / 1000), PartKind::tippet).rodEnd.value();
  };
  CHECK(grainsPerFoot(0) == printed(0.3288, 1e-4));
  CHECK(grainsPerFoot(5) == printed(0.0978, 1e-4));
}
