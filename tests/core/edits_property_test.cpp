// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <vector>

#include "core/bench/loops.h"
#include "core/bench/trim.h"
#include "core/bench/cut_sheet.h"
#include "core/bench/weigh_in.h"
#include "core/io/rig_file.h"
#include "core/mass/profile.h"
#include "core/material/agreement.h"
#include "core/model/check.h"
#include "core/model/edits.h"
#include "tests/support/random_rig.h"

using namespace grainwise;

namespace {

/// Sums of a few hundred doubles.
constexpr double kRounding = 1e-9;

double massOf(const Part& part) {
  Rig alone;
  alone.parts = {part};
  return massProfile(alone).places.front().mass().value();
}

bool inOrder(const Rig& rig) {
  return std::is_sorted(rig.parts.begin(), rig.parts.end(),
                        [](const Part& a, const Part& b) { return a.kind < b.kind; });
}

bool sound(const Rig& rig) { return check(rig).empty() && checkAgreement(rig).empty(); }

Section shorterOrLonger(Section section, test::Random& random) {
  section.length = Feet(std::clamp(section.length.value() * random.between(0.3, 3.0), 0.01, 300.0));
  return section;
}

/// What a gesture in the window does to one part of a rig.
Rig editedPart(const Rig& rig, std::size_t at, test::Random& random) {
  const Part& part = rig.parts[at];
  if (part.sections.empty()) return rig;
  const std::size_t section = random.below(part.sections.size());
  switch (random.below(7)) {
    case 0:
      return edits::replaced(rig, at, edits::withSection(part, section, shorterOrLonger(part.sections[section], random)));
    case 1:
      if (part.sections.size() >= limits::kSections) return rig;
      return edits::replaced(
          rig, at, edits::withSectionSplit(part, section, part.sections[section].length * random.between(0.1, 0.9)));
    case 2:
      if (part.sections.size() < 2) return rig;
      return edits::replaced(rig, at, edits::withSectionRemoved(part, section));
    case 3:
      if (part.sections.size() >= limits::kSections) return rig;
      return edits::replaced(rig, at, edits::withSectionInserted(part, section, part.sections[section]));
    case 4:
      return edits::replaced(rig, at, weighedIn(part, part.loopMass() + Grains(random.typed(1, 700, 1)), "2026-03-02"));
    case 5:
      return edits::replaced(rig, at, withProposedLoops(part));
    default: {
      const auto cut = trimmed(part, random.chance(0.5) ? PartEnd::rod : PartEnd::fly,
                               part.length() * random.between(0.05, 0.6));
      return cut ? edits::replaced(rig, at, cut->part) : rig;
    }
  }
}

/// One gesture at random, on whatever part.
Rig edited(const Rig& rig, const Rig& other, test::Random& random) {
  if (rig.parts.empty() || random.chance(0.2)) {
    if (other.parts.empty()) return rig;
    return edits::placed(rig, other.parts[random.below(other.parts.size())]);
  }
  const std::size_t at = random.below(rig.parts.size());
  switch (random.below(8)) {
    case 0:
      return edits::removed(rig, at);
    case 1:
      return edits::duplicated(rig, at);
    case 2:
      return edits::moved(rig, at, random.below(rig.parts.size()));
    case 3:
      return other.parts.empty() ? rig : edits::instead(rig, other.parts[random.below(other.parts.size())]);
    case 4:
      return edits::withWater(rig, other.water);
    default:
      return editedPart(rig, at, random);
  }
}

}  // namespace

TEST_CASE("Edits: a sound rig stays sound and in order through any run of gestures, and every state reads back") {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    test::Random random(seed);
    const Rig start = test::randomRig(random);
    const Rig other = test::randomRig(random);
    Rig rig = start;
    std::vector<Rig> before;
    for (int step = 0; step < 40; ++step) {
      const Rig next = edited(rig, other, random);
      INFO("seed " << seed << ", step " << step);
      REQUIRE(inOrder(next));
      if (!sound(next)) continue;  // the window refuses it
      before.push_back(rig);
      rig = next;
      REQUIRE(rig.parts.size() <= limits::kParts);
    }
    // A gesture changes its own copy and nothing else: the way back is the way that was gone.
    REQUIRE((before.empty() || before.front() == start));
    if (!rig.parts.empty()) REQUIRE(readRig(writeRig(rig)).value() == rig);
  }
}

TEST_CASE("Edits: of the gestures of the window hardly any is refused, so that the test above tests") {
  int taken = 0, refused = 0;
  for (std::uint64_t seed = 1; seed <= 100; ++seed) {
    test::Random random(seed);
    Rig rig = test::randomRig(random);
    const Rig other = test::randomRig(random);
    for (int step = 0; step < 40; ++step) {
      const Rig next = edited(rig, other, random);
      (sound(next) ? taken : refused) += 1;
      if (sound(next)) rig = next;
    }
  }
  CHECK(taken > 10 * refused);
}

TEST_CASE("Edits: sections split and put together again in any order weigh what the part weighed") {
  test::Random random(8);
  for (int round = 0; round < 400; ++round) {
    const Rig rig = test::randomRig(random);
    for (const Part& whole : rig.parts) {
      if (whole.sections.empty()) continue;
      const double mass = massOf(whole);
      Part part = whole;
      for (int cut = 0; cut < 6 && part.sections.size() < limits::kSections; ++cut) {
        const std::size_t at = random.below(part.sections.size());
        part = edits::withSectionSplit(part, at, part.sections[at].length * random.between(0.05, 0.95));
      }
      REQUIRE(massOf(part) == Approx(mass).epsilon(kRounding));
      REQUIRE(part.length().value() == Approx(whole.length().value()).epsilon(kRounding));
      // Together again: each piece's mass and length are in the sum, whatever their order. A label or
      // the scale's word holds for the part, so it is left out here.
      Part plain = part;
      plain.label.reset();
      plain.weighed.reset();
      const double pieces = massOf(plain);
      std::reverse(plain.sections.begin(), plain.sections.end());
      REQUIRE(massOf(plain) == Approx(pieces).epsilon(kRounding));
    }
  }
}

TEST_CASE("Edits: taking a part off and putting it back where it stood leaves the rig as it was") {
  test::Random random(9);
  for (int round = 0; round < 300; ++round) {
    const Rig rig = test::randomRig(random);
    for (std::size_t i = 0; i < rig.parts.size(); ++i) {
      const Rig without = edits::removed(rig, i);
      REQUIRE(edits::slotsFor(without, rig.parts[i].kind));
      REQUIRE(edits::inserted(without, i, rig.parts[i]) == rig);
    }
  }
}

TEST_CASE("Weigh-in: what is meant is what the profile says the part weighs, loops included, and its splices") {
  test::Random random(10);
  for (int round = 0; round < 400; ++round) {
    Rig rig = test::randomRig(random);
    for (Part& part : rig.parts) part.weighed.reset();
    const MassProfile profile = massProfile(rig);
    for (std::size_t i = 0; i < rig.parts.size(); ++i) {
      if (rig.parts[i].kind == PartKind::fly) continue;
      const Grains meant = profile.places[i].mass() + spliceMass(rig.parts[i]);
      REQUIRE(nominalMass(rig.parts[i]).value() == Approx(meant.value()).epsilon(kRounding));
      // Weighed at just that, the profile has that mass; without splices nothing changes.
      const Rig weighed = edits::replaced(rig, i, weighedIn(rig.parts[i], nominalMass(rig.parts[i]), "2026-03-02"));
      REQUIRE(massProfile(weighed).places[i].mass().value() == Approx(meant.value()).epsilon(kRounding));
    }
  }
}
