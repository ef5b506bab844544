// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/bench/loops.h"
#include "core/bench/strength.h"
#include "core/model/problem.h"
#include "core/model/spool.h"

namespace grainwise {

/// A level strand that leaders are tied from.
struct LeaderStock {
  std::string name;
  Inches diameter;
  Material material = Material::nylon;
  Feet left;
  std::optional<double> packetPounds;  ///< the packet's figure outranks the reckoned one
};
/// The spools that are nylon or fluorocarbon by diameter.
std::vector<LeaderStock> leaderStock(const Spools& spools);

/// What the leader is tied to.
enum class LeaderLine { singleHand, twoHand, sinkTip };

struct LeaderWish {
  LeaderLine line = LeaderLine::twoHand;
  std::optional<Inches> lineTip;               ///< diameter of the line's tip, single-hand lines
  std::optional<GrainsPerFoot> lineTipMass;    ///< or what it weighs; then it floats
  Feet length{9};
  Inches tippet{0.013};
  std::optional<Material> tippetMaterial;      ///< either when not stated
  int pieces = 2;                              ///< on a sink tip: 1 or 2
};

/// Diameters that suit as a butt: 60-75 % of the line's tip (single-hand, floating), 0.022-0.026 in
/// (two-hand, never over 0.028). Common practice, no source. Nothing without the line's tip.
struct ButtRange {
  Inches thin;
  Inches thick;
};
std::optional<ButtRange> buttRange(const LeaderWish& wish);
/// Diameter of a floating line by its mass per foot, at the density of floating heads.
Inches floatingDiameter(GrainsPerFoot mass);

struct LeaderPiece {
  std::size_t stock = 0;
  Inches diameter;
  Material material = Material::nylon;
  Feet finished;
  Feet cut;  ///< with its knots
  GrainsPerFoot mass;
  PoundRange strength;  ///< of the strand
  bool byPacket = false;
};

/// The weakest place: the knot behind piece `piece` (at the fly when it is the last).
struct WeakestLink {
  std::size_t piece = 0;
  Knot knot = Knot::joining;
  PoundRange holds;
};

struct Leader {
  std::vector<LeaderPiece> pieces;  ///< from the line to the fly
  WeakestLink weakest;
  Grains mass;
  bool longForSinkTip = false;   ///< outside the 3-5 ft that suit a sink tip
  bool shortForSinkTip = false;
  bool notEnoughLeft = false;    ///< a spool holds less than the leader takes
};

/// A leader from `stock`. On floating lines butt, step-down and tippet are 60, 20 and 20 % of the
/// length; knots step down at most 0.004 in, the last two at most 0.002, and no diameter is less than
/// 2/3 of the one before; of all ways the one with fewest knots, then the butt nearest to the
/// middle of its range, then the evenest steps. On a sink tip one piece, or two of 3/8 and 5/8. Body
/// of nylon where there is any. Common practice, no source.
/// Exact: every chain of the stock is considered (dynamic programming from the tippet up).
/// Refused, saying which diameters would do: no such tippet, no butt, a step too far.
tl::expected<Leader, Problem> buildLeader(const LeaderWish& wish,
                                          const std::vector<LeaderStock>& stock,
                                          const BenchRules& rules = {});

/// What the leader may weigh: nylon is drawn to about 0.0005 in, and its mass goes by the square of that.
/// Ours (estimate).
struct GrainsRange {
  Grains low;
  Grains high;
};
GrainsRange massRange(const Leader& leader);

/// As parts: all but the last piece a leader, the last one a tippet.
std::vector<Part> partsOf(const Leader& leader);
/// `rig` with this leader in place of its plain leaders and tippets.
Rig withLeader(const Rig& rig, const Leader& leader);

}  // namespace grainwise
