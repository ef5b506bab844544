// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

#include "core/bench/loops.h"

namespace grainwise::ui {

/// The keys of the habits of the bench in the settings file: how much line each takes, in inches.
struct BenchHabit {
  const char* key;
  Inches BenchRules::*length;
};
inline constexpr std::array<BenchHabit, 6> kBenchHabits{
    {{"bench/welded_loop_in", &BenchRules::weldedLoop},
     {"bench/sleeved_loop_in", &BenchRules::sleevedLoop},
     {"bench/tied_loop_in", &BenchRules::tiedLoop},
     {"bench/splice_in", &BenchRules::splice},
     {"bench/joining_knot_in", &BenchRules::joiningKnot},
     {"bench/fly_knot_in", &BenchRules::flyKnot}}};
/// The kind of loop on tips and coated leaders, by its word (core/bench/loops.h).
inline constexpr auto kBenchLoop = "bench/loop";

}  // namespace grainwise::ui
