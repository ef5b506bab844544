// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/analysis/conditions.h"
#include "core/mass/profile.h"
#include "core/mass/standards.h"
#include "core/model/wording.h"
#include "core/water/band.h"

namespace grainwise {

/// Masses and lengths of the stretch from the rear of the head to the fly.
struct Totals {
  Feet length;
  Grains mass;  ///< loops and wet fly included
  Grains head;
  Grains headAndTip;  ///< heads, tips and coated leaders
  std::optional<Grains> first30ft;  ///< of the 30 ft of head nearest the fly; none when shorter
  Station centreOfMass;  ///< 0 where there is no mass
};

/// What a reading could not be computed from; words in core/report and ui/text.
enum class Missing {
  head,
  fly,
  rod,
  rodLength,
  headStyle,
  water,
  window,
  flyMass,
  tip,
  stillWater,   ///< water too slow for a depth
  nothingSinks,
  flyFloats,
  line,       ///< too little in front of the loop
  castable,   ///< over 300 ft of line
  lineSpeed,  ///< too little for a loop
};

struct Warning {
  std::size_t part = 0;
  Wording what;
};

/// Everything that the window, the commands, the compare view, the chooser and the tests show.
struct Analysis {
  MassProfile profile;
  std::vector<ProfileRow> rows;
  Totals totals;
  std::vector<Junction> junctions;
  std::optional<std::size_t> worstJunction;
  RodFit rod;
  Grip grip;
  FlyFit fly;
  std::optional<standards::SingleHandRow> singleHandRow;  ///< for a single-hand rod's line number
  std::optional<Stroke> stroke;
  std::optional<HangDown> hang;        ///< with water and a fly of known mass
  std::optional<DepthBand> depthBand;  ///< the live estimate, where `hang` has a depth
  std::optional<Turnover> turnover;
  std::optional<NoTurnover> noTurnover;  ///< why there is none
  std::vector<Missing> missing;
  std::vector<Warning> warnings;  ///< implausible derived values
};

/// Same rig and conditions, same bits: no clock, locale, random number or global is read.
/// Cost: linear in the sections, about 0.1 ms for an everyday rig, mostly its depth.
Analysis analyse(const Rig& rig, const Conditions& conditions = {});

}  // namespace grainwise
