// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/compare/align.h"
#include "core/compare/consequence.h"

namespace grainwise {

/// One thing in which two rigs differ, and what it does by itself.
struct Difference {
  enum class What { part, onlyInA, onlyInB, rod, water, cast, swing };
  What what = What::part;
  PartPair parts;  ///< of the first three
  std::vector<FactPair> facts;
  /// A with this one thing taken from B, against A; what matters most first. Where it is the only
  /// difference this is all of B against A, the runs of the swing included.
  std::vector<Consequence> does;
  /// Nothing that it does is more than what is known.
  [[nodiscard]] bool within() const;
  [[nodiscard]] double weight() const;
};

struct Comparison {
  std::vector<PartPair> pairs;  ///< from rod to fly
  std::vector<Consequence> overall;  ///< all of B against A
  std::vector<Difference> differences;  ///< in order of consequence
};

/// Two rigs from A to B. Every difference is put into A by itself and analysed: what they do together
/// is in `overall`, and is not the sum of what they do one by one. Names and notes do not count.
/// Cost: an analysis and a dozen hang-downs a difference, about 0.7 ms each.
Comparison compareRigs(const ComparedRig& a, const ComparedRig& b, const Conditions& conditions = {});

}  // namespace grainwise
