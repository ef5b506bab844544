// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/compare.h"

#include <algorithm>

namespace grainwise {
namespace {

std::ptrdiff_t offset(std::size_t i) { return static_cast<std::ptrdiff_t>(i); }

/// A rig made from A by one change, and which of its parts stand for which of A's.
struct Changed {
  Rig rig;
  std::vector<PartPair> pairs;
};

std::vector<PartPair> onesToOnes(const Rig& rig) {
  std::vector<PartPair> pairs;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) pairs.push_back({i, i, true});
  return pairs;
}

/// The index before which a part that only B has belongs in A: behind the last part before it that
/// both have.
std::size_t placeInA(const std::vector<PartPair>& pairs, std::size_t inB) {
  std::size_t at = 0;
  for (const PartPair& pair : pairs) {
    if (pair.b == inB) break;
    if (pair.a) at = *pair.a + 1;
  }
  return at;
}

Changed withPart(const Rig& a, const Rig& b, const std::vector<PartPair>& all,
                 const PartPair& pair) {
  Changed changed{a, {}};
  auto& parts = changed.rig.parts;
  if (pair.a && pair.b) {
    parts[*pair.a] = b.parts[*pair.b];
    changed.pairs = onesToOnes(a);
    changed.pairs[*pair.a].same = false;
    return changed;
  }
  const std::size_t at = pair.a ? *pair.a : placeInA(all, *pair.b);
  if (pair.a) {
    parts.erase(parts.begin() + offset(at));
  } else {
    parts.insert(parts.begin() + offset(at), b.parts[*pair.b]);
  }
  for (std::size_t i = 0; i < a.parts.size(); ++i) {
    if (i == at && pair.a) {
      changed.pairs.push_back({i, std::nullopt, false});
      continue;
    }
    if (i == at) changed.pairs.push_back({std::nullopt, at, false});
    const std::size_t inChanged = i < at ? i : (pair.a ? i - 1 : i + 1);
    changed.pairs.push_back({i, inChanged, true});
  }
  if (!pair.a && at == a.parts.size()) changed.pairs.push_back({std::nullopt, at, false});
  return changed;
}

std::vector<Difference> whatDiffers(const ComparedRig& a, const ComparedRig& b,
                                    const std::vector<PartPair>& pairs) {
  using What = Difference::What;
  std::vector<Difference> list;
  for (const PartPair& pair : pairs) {
    if (pair.same) continue;
    Difference d;
    d.parts = pair;
    if (pair.a && pair.b) {
      d.facts = partFacts(a.rig, a.analysis, b.rig, b.analysis, pair);
    } else {
      d.what = pair.a ? What::onlyInA : What::onlyInB;
    }
    list.push_back(std::move(d));
  }
  const auto add = [&](What what, std::vector<FactPair> facts) {
    if (!facts.empty()) list.push_back({what, {}, std::move(facts), {}});
  };
  add(What::rod, rodFacts(a.rig, a.analysis, b.rig, b.analysis));
  add(What::water, waterFacts(a.rig, b.rig));
  add(What::cast, castFacts(a.rig, b.rig));
  add(What::swing, swingFacts(a.rig, b.rig));
  return list;
}

Changed withThis(const Rig& a, const Rig& b, const std::vector<PartPair>& pairs,
                 const Difference& d) {
  using What = Difference::What;
  if (d.what <= What::onlyInB) return withPart(a, b, pairs, d.parts);
  Changed changed{a, onesToOnes(a)};
  if (d.what == What::rod) changed.rig.rod = b.rod;
  if (d.what == What::water) changed.rig.water = b.water;
  if (d.what == What::cast) changed.rig.cast = b.cast;
  if (d.what == What::swing) changed.rig.swing = b.swing;
  return changed;
}

}  // namespace

bool Difference::within() const {
  return std::all_of(does.begin(), does.end(), [](const Consequence& c) { return c.within; });
}

double Difference::weight() const {
  double most = 0.0, sum = 0.0;
  for (const Consequence& c : does) {
    most = std::max(most, c.weight());
    sum += c.weight();
  }
  return most + sum * 1e-3;  // the greatest decides, the others between equals
}

Comparison compareRigs(const ComparedRig& a, const ComparedRig& b, const Conditions& conditions) {
  Conditions own = conditions;
  own.strokeReference.reset();
  Comparison comparison;
  comparison.pairs = alignParts(a.rig, a.analysis.profile, b.rig, b.analysis.profile);
  const auto liveA = liveEnds(a.rig, own.current, own.waterUncertainty);
  const ComparedRig knownA{a.rig, a.analysis, a.heavy, &liveA};
  comparison.overall = consequences(knownA, b, comparison.pairs, own);
  comparison.differences = whatDiffers(a, b, comparison.pairs);
  const bool only = comparison.differences.size() == 1;
  for (Difference& d : comparison.differences) {
    if (only) {
      d.does = comparison.overall;
      break;
    }
    const Changed changed = withThis(a.rig, b.rig, comparison.pairs, d);
    const Analysis analysis = analyse(changed.rig, own);
    d.does = consequences(knownA, {changed.rig, analysis}, changed.pairs, own);
  }
  std::stable_sort(comparison.differences.begin(), comparison.differences.end(),
                   [](const Difference& p, const Difference& q) { return p.weight() > q.weight(); });
  return comparison;
}

}  // namespace grainwise
