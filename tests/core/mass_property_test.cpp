// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/analysis/analysis.h"
#include "core/model/edits.h"
#include "tests/support/random_rig.h"

using namespace grainwise;

namespace {

constexpr std::uint64_t kSeeds = 400;
/// Sums of up to a few hundred terms of rounding error 1e-16 each, relative.
constexpr double kRounding = 1e-12;

Approx near(Grains mass) { return Approx(mass.value()).epsilon(kRounding).margin(1e-11); }

template <class F>
void forRandomRigs(F&& f) {
  for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
    test::Random random(seed);
    const Rig rig = test::randomRig(random);
    INFO("seed " << seed);
    f(rig, random);
  }
}

}  // namespace

TEST_CASE("The mass of a rig is the sum of its parts however it is added up") {
  forRandomRigs([](const Rig& rig, test::Random&) {
    const Analysis analysis = analyse(rig);
    const MassProfile& profile = analysis.profile;
    Grains parts;
    for (std::size_t i = profile.firstPart; i < profile.places.size(); ++i) {
      parts += profile.places[i].mass();
    }
    REQUIRE(analysis.totals.mass.value() == near(parts));
    REQUIRE(profile.soFar(profile.end).value() == near(parts));
    if (!analysis.rows.empty()) REQUIRE(analysis.rows.back().soFar.value() == near(parts));
  });
}

TEST_CASE("A part weighs what its label or the scale says") {
  forRandomRigs([](const Rig& rig, test::Random&) {
    const MassProfile profile = massProfile(rig);
    for (std::size_t i = 0; i < rig.parts.size(); ++i) {
      const Part& part = rig.parts[i];
      if (part.weighed) {
        REQUIRE(profile.places[i].mass().value() == near(part.weighed->mass));
      } else if (part.label) {
        REQUIRE(profile.places[i].line.value() == near(*part.label));
      } else {
        REQUIRE(profile.places[i].scaledBy == 1.0);
      }
    }
  });
}

TEST_CASE("Cumulative mass never falls and stations never run back") {
  forRandomRigs([](const Rig& rig, test::Random&) {
    const auto rows = profileRows(massProfile(rig));
    for (std::size_t i = 1; i < rows.size(); ++i) {
      REQUIRE(rows[i].at >= rows[i - 1].at);
      REQUIRE(rows[i].soFar >= rows[i - 1].soFar);
    }
  });
}

TEST_CASE("Grains between stations add up wherever the line is cut") {
  forRandomRigs([](const Rig& rig, test::Random& random) {
    const MassProfile profile = massProfile(rig);
    const double end = profile.end.feet();
    const Station a(random.between(0, end));
    const Station b(random.between(0, end));
    const Station low = std::min(a, b);
    const Station high = std::max(a, b);
    const Grains whole = profile.lineBetween(profile.start, profile.end);
    const Grains pieces = profile.lineBetween(profile.start, low) + profile.lineBetween(low, high) +
                          profile.lineBetween(high, profile.end);
    REQUIRE(pieces.value() == near(whole));
  });
}

TEST_CASE("A section cut in two weighs, balances and joins as the whole did") {
  forRandomRigs([](const Rig& rig, test::Random& random) {
    const std::size_t index = random.below(rig.parts.size());
    const Part& part = rig.parts[index];
    // A coated leader's nylon is told by its weight at each section's rod end: cutting such a
    // section can move where the nylon begins.
    if (part.sections.empty() || part.isCoatedLeader()) return;
    const std::size_t section = random.below(part.sections.size());
    const Feet length = part.sections[section].length;
    const Part split =
        edits::withSectionSplit(part, section, length * random.between(0.05, 0.95));
    const Analysis before = analyse(rig);
    const Analysis after = analyse(edits::replaced(rig, index, split));
    REQUIRE(after.totals.mass.value() == near(before.totals.mass));
    REQUIRE(after.totals.centreOfMass.feet() ==
            Approx(before.totals.centreOfMass.feet()).epsilon(1e-11).margin(1e-11));
    REQUIRE(after.junctions.size() == before.junctions.size());
    for (std::size_t i = 0; i < before.junctions.size(); ++i) {
      REQUIRE(after.junctions[i].ratio3ft == Approx(before.junctions[i].ratio3ft).epsilon(1e-9));
    }
  });
}

TEST_CASE("The same rig gives the same bits") {
  forRandomRigs([](const Rig& rig, test::Random&) {
    const Analysis a = analyse(rig);
    const Rig copy = rig;
    const Analysis b = analyse(copy);
    REQUIRE(a.totals.mass == b.totals.mass);
    REQUIRE(a.totals.centreOfMass == b.totals.centreOfMass);
    REQUIRE(a.rows.size() == b.rows.size());
    for (std::size_t i = 0; i < a.rows.size(); ++i) REQUIRE(a.rows[i].soFar == b.rows[i].soFar);
  });
}

TEST_CASE("The centre of mass lies on the line") {
  forRandomRigs([](const Rig& rig, test::Random&) {
    const Analysis analysis = analyse(rig);
    REQUIRE(analysis.totals.centreOfMass.feet() >= 0.0);
    REQUIRE(analysis.totals.centreOfMass.feet() <= analysis.totals.length.value() * (1 + kRounding));
  });
}
