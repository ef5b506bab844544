// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/compare/paired.h"

namespace grainwise {

/// A part of A and the part of B that stands for it; one of them absent: only the other rig has it.
struct PartPair {
  std::optional<std::size_t> a, b;
  bool same = false;
  bool operator==(const PartPair&) const = default;
};

/// Whether two parts are the same line or fly: what they weigh and are, not what they are called.
bool sameLine(const Rig& rigA, const MassProfile& a, std::size_t partA, const Rig& rigB,
              const MassProfile& b, std::size_t partB);

/// The parts of both from rod to fly, each pair of one kind, equal parts paired before unequal ones.
/// Method: least cost over all alignments in order. Cost: the product of the numbers of parts.
std::vector<PartPair> alignParts(const Rig& rigA, const MassProfile& a, const Rig& rigB,
                                 const MassProfile& b);

/// A figure of which two things can differ.
enum class Fact {
  style,  ///< another rule; no figures
  length,         ///< ft
  mass,           ///< gr, loops and wet fly included
  sinkingLength,  ///< ft
  sinkRate,       ///< in/s of the sinking sections, by their middle
  rodEnd,         ///< gr/ft
  flyEnd,         ///< gr/ft
  rodEndDiameter, ///< in, of bare nylon
  flyEndDiameter, ///< in, of bare nylon
  layout,         ///< the same ends, another run between them; no figures
  loops,          ///< gr
  flyDrag,        ///< cm2
  flyDensity,     ///< g/cm3
  flyAttitude,    ///< head first or flat; no figures
  rodLength,      ///< ft
  windowLow,      ///< gr
  windowHigh,     ///< gr
  lineNumber,
  surfaceSpeed,   ///< ft/s
  waterDepth,     ///< ft
  temperature,    ///< C
  salinity,       ///< g/kg
  bed,            ///< another one; no figures
  lineSpeed,      ///< ft/s
  loop,           ///< ft
  launch,         ///< degrees
  rodTip,         ///< ft
  overhang,       ///< ft
  airAltitude,    ///< ft
  lineOut,        ///< ft
  angle,          ///< degrees
  mend,           ///< s
};

struct FactPair {
  Fact fact = Fact::length;
  std::optional<double> a, b;
};

/// In what two parts differ; `pair` has both.
std::vector<FactPair> partFacts(const Rig& rigA, const Analysis& a, const Rig& rigB,
                                const Analysis& b, const PartPair& pair);
std::vector<FactPair> rodFacts(const Rig& rigA, const Analysis& a, const Rig& rigB,
                               const Analysis& b);
std::vector<FactPair> waterFacts(const Rig& rigA, const Rig& rigB);
std::vector<FactPair> castFacts(const Rig& rigA, const Rig& rigB);
std::vector<FactPair> swingFacts(const Rig& rigA, const Rig& rigB);

/// What two rigs with these pairs share.
Shared sharedBy(const Rig& rigA, const Rig& rigB, const std::vector<PartPair>& pairs);

}  // namespace grainwise
