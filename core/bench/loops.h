// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/model/limits.h"
#include "core/model/rig.h"

namespace grainwise {

/// How a loop is made at the end of a piece of line.
enum class LoopKind { none, welded, sleeved, tied };

/// Line that loops, splices and knots use up, over the finished length (measured loop end to loop
/// end). Common practice, no source; all of them are habits that a user may change.
struct BenchRules {
  Inches weldedLoop{2.5};   ///< doubled back and welded
  Inches sleevedLoop{3.0};  ///< doubled back into a sleeve
  Inches tiedLoop{5.0};     ///< a tied loop and its tag end
  Inches splice{1.0};       ///< overlap of two pieces of line, a side
  Inches joiningKnot{3.0};  ///< nylon to nylon, a side
  Inches flyKnot{4.0};      ///< at the fly
  LoopKind lineLoop = LoopKind::welded;  ///< on tips and coated leaders
  LoopKind nylonLoop = LoopKind::tied;   ///< on the rod end of a plain leader
  bool operator==(const BenchRules&) const = default;
};

/// What a loop, splice or knot may use up; beyond it a number is a slip of the pen.
inline constexpr Limit kAllowance{"allowance", "in", 0, 24};

/// "welded", "sleeved", "tied" or "none"; nothing for another word.
std::optional<LoopKind> loopKindNamed(std::string_view word);
const char* wordOf(LoopKind loop);
/// The rule that says how much line a loop of that kind takes; nullptr for none.
Inches* lengthOf(LoopKind loop, BenchRules& rules);
/// The same for rules outside `kAllowance`, each put back to what is usual.
BenchRules withinReason(BenchRules rules);

/// Line that a loop uses up beyond the finished length.
Inches allowance(LoopKind loop, const BenchRules& rules);

/// Mass of a loop: allowance x grains per foot of the line that it is made from.
/// Common practice, no source. Threads, glue and sleeves are not counted.
Grains loopMass(LoopKind loop, GrainsPerFoot line, const BenchRules& rules);

/// What each section of `part` needs over its finished length at its two ends. `next` is the part
/// towards the fly, nullptr when none is known. Loops at the ends of tips and coated leaders, a loop
/// and knots on plain leaders and tippets; within a part a splice a side, or a knot nylon to nylon.
struct EndAllowances {
  Inches rodEnd;
  Inches flyEnd;
  bool operator==(const EndAllowances&) const = default;
};
std::vector<EndAllowances> endAllowances(const Part& part, const Part* next,
                                         const BenchRules& rules);

/// `part` with the loops that the bench would put on it, to a tenth of a grain: both ends of tips
/// and coated leaders. Other parts, and ends whose loop is given already, stay as they are.
Part withProposedLoops(const Part& part, const BenchRules& rules = {});
Rig withProposedLoops(const Rig& rig, const BenchRules& rules = {});

}  // namespace grainwise
