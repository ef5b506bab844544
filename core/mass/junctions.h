// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/mass/profile.h"

namespace grainwise {

/// What a joint does, judged by the ratio of the 3-ft means (fly side / rod side).
/// Common practice, no source; the limits are ours.
enum class JunctionVerdict {
  hinges,         ///< over 2.0
  hingesUnlessSlow,  ///< 1.55 to 2.0
  stepsUp,        ///< 1.10 to 1.55
  level,          ///< 0.90 to 1.10
  smoothDrop,     ///< 0.35 to 0.90
  collapses,      ///< under 0.35
  nylonNoRule,    ///< line to bare nylon, up to 6 ft of it
  nylonFine,      ///< longer: 0.12 and over
  nylonThin,      ///< 0.10 to 0.12
  nylonPiles,     ///< under 0.10
};

/// How good a reading is: a word and a glyph on screen, never colour alone.
enum class Grade { fits, watch, wrong };

struct JunctionLimits {
  double hinge = 2.0;
  double slow = 1.55;
  double stepUp = 1.10;
  double drop = 0.90;
  double collapse = 0.35;
  double nylonFine = 0.12;
  double nylonThin = 0.10;
  Feet nylonFree{6.0};
  Feet window{3.0};
  bool operator==(const JunctionLimits&) const = default;
};

/// A joint between two parts, up to and including line to nylon; none from nylon to nylon or to the
/// fly, none from running line to head.
struct Junction {
  Station at;
  std::size_t rodSide = 0;  ///< part index
  std::size_t flySide = 0;
  GrainsPerFoot rodSideMass;  ///< at the joint
  GrainsPerFoot flySideMass;
  double ratio = 0;           ///< flySideMass / rodSideMass
  GrainsPerFoot rodSideMean;  ///< mean of the 3 ft on that side, shorter where the line is shorter
  GrainsPerFoot flySideMean;
  double ratio3ft = 0;
  bool toNylon = false;
  Feet nylonLength;  ///< run of bare nylon from the joint on, through leaders and tippets
  JunctionVerdict verdict = JunctionVerdict::level;
  /// Small-pulse echo (1 - sqrt r)/(1 + sqrt r) and transmission 2/(1 + sqrt r) of `ratio`; for the
  /// details only, no energy loss follows from them.
  double echo = 0;
  double transmission = 0;
};

/// A ratio that lies exactly on a limit takes the milder word. Cost: linear in the spans, as far as
/// the joints' windows do not overlap.
std::vector<Junction> junctions(const Rig& rig, const MassProfile& profile,
                                const JunctionLimits& limits = {});
/// Hinges, a front that collapses and a butt that will pile are wrong; what can be cast with care is
/// to be watched.
Grade grade(JunctionVerdict verdict);
/// The worst first: by grade, then by how far the ratio is from level. Index into the list.
std::optional<std::size_t> worstJunction(const std::vector<Junction>& list);

}  // namespace grainwise
