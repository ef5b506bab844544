// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/material/agreement.h"
#include "core/model/check.h"
#include "tests/support/random_rig.h"

using namespace grainwise;

TEST_CASE("Random rigs are rigs that the checks accept") {
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    test::Random random(seed);
    const Rig rig = test::randomRig(random);
    INFO("seed " << seed);
    for (const Problem& problem : check(rig)) FAIL_CHECK(describe(problem));
    for (const Problem& problem : checkAgreement(rig)) FAIL_CHECK(describe(problem));
  }
}

TEST_CASE("The fullest rig that a file may hold is one that the checks accept") {
  const Rig rig = test::fullRig(limits::kSections);
  CHECK(rig.parts.size() == limits::kParts);
  CHECK(check(rig).empty());
}
