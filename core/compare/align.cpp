// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/compare/align.h"

#include <algorithm>
#include <cmath>

#include "core/water/water_line.h"

namespace grainwise {
namespace {

constexpr double kRounding = 1e-9;  // sums of typed decimals, scaled to a label

bool near(double a, double b) {
  return std::abs(a - b) <= kRounding * std::max({1.0, std::abs(a), std::abs(b)});
}
template <class Tag>
bool near(Quantity<Tag> a, Quantity<Tag> b) {
  return near(a.value(), b.value());
}

struct SpanRange {
  std::vector<ProfileSpan>::const_iterator first, last;
  [[nodiscard]] std::ptrdiff_t size() const { return last - first; }
};

SpanRange spansOf(const MassProfile& profile, std::size_t part) {
  const auto before = [](const ProfileSpan& s, std::size_t p) { return s.part < p; };
  const auto first = std::lower_bound(profile.spans.begin(), profile.spans.end(), part, before);
  return {first, std::lower_bound(first, profile.spans.end(), part + 1, before)};
}

bool sameSpan(const ProfileSpan& a, const ProfileSpan& b) {
  const SectionProperties &p = a.properties, &q = b.properties;
  return near(p.length, q.length) && near(p.mass.rodEnd, q.mass.rodEnd) &&
         near(p.mass.flyEnd, q.mass.flyEnd) && p.mass.law == q.mass.law &&
         near(p.diameterRodEnd, q.diameterRodEnd) && near(p.diameterFlyEnd, q.diameterFlyEnd) &&
         near(p.densityRodEnd, q.densityRodEnd) && near(p.densityFlyEnd, q.densityFlyEnd) &&
         a.sinks == b.sinks && a.bareNylon == b.bareNylon;
}

bool sameFly(const std::optional<Fly>& a, const std::optional<Fly>& b) {
  if (!a || !b) return a.has_value() == b.has_value();
  return near(a->wetMass(), b->wetMass()) && near(a->dragAreaOrDefault(), b->dragAreaOrDefault()) &&
         near(a->densityOrDefault(), b->densityOrDefault()) &&
         a->sinksHeadFirst.value_or(false) == b->sinksHeadFirst.value_or(false);
}

bool sameLoops(const Part& a, const Part& b) {
  const Loops p = a.loops.value_or(Loops{}), q = b.loops.value_or(Loops{});
  return near(p.rodEnd.value_or(Grains(0)), q.rodEnd.value_or(Grains(0))) &&
         near(p.flyEnd.value_or(Grains(0)), q.flyEnd.value_or(Grains(0)));
}

/// Feet that sink, and their rate by the middle of each section.
struct Sinking {
  Feet length;
  std::optional<double> rate_in_per_s;
};

Sinking sinkingOf(const MassProfile& profile, std::size_t part) {
  Sinking sinking;
  double sum = 0.0;
  const SpanRange spans = spansOf(profile, part);
  for (auto s = spans.first; s != spans.last; ++s) {
    if (!s->sinks || s->bareNylon) continue;
    sinking.length += s->length();
    const SinkEnds ends = sinkRates(s->properties, kRatingWater);
    sum += s->length().value() * (ends.rodEnd.value() + ends.flyEnd.value()) / 2.0;
  }
  if (sinking.length > Feet(0)) sinking.rate_in_per_s = sum / sinking.length.value();
  return sinking;
}

/// Facts with their figures, those that are the same left out.
class Facts {
 public:
  void add(Fact fact, std::optional<double> a, std::optional<double> b) {
    if (a.has_value() == b.has_value() && (!a || near(*a, *b))) return;
    list.push_back({fact, a, b});
  }
  template <class Tag>
  void add(Fact fact, Quantity<Tag> a, Quantity<Tag> b) {
    add(fact, a.value(), b.value());
  }
  template <class Tag>
  void add(Fact fact, const std::optional<Quantity<Tag>>& a, const std::optional<Quantity<Tag>>& b) {
    add(fact, a ? std::optional(a->value()) : std::nullopt,
        b ? std::optional(b->value()) : std::nullopt);
  }
  void note(bool differs, Fact fact) {
    if (differs) list.push_back({fact, std::nullopt, std::nullopt});
  }
  std::vector<FactPair> list;
};

void addLineFacts(Facts& facts, const Part& partA, const MassProfile& a, std::size_t indexA,
                  const MassProfile& b, std::size_t indexB) {
  const PartPlace &placeA = a.places[indexA], &placeB = b.places[indexB];
  facts.add(Fact::length, placeA.to - placeA.from, placeB.to - placeB.from);
  facts.add(Fact::mass, placeA.mass(), placeB.mass());
  const SpanRange spansA = spansOf(a, indexA), spansB = spansOf(b, indexB);
  const Sinking sinkA = sinkingOf(a, indexA), sinkB = sinkingOf(b, indexB);
  facts.add(Fact::sinkingLength, sinkA.length, sinkB.length);
  if (sinkA.rate_in_per_s && sinkB.rate_in_per_s) {
    facts.add(Fact::sinkRate, sinkA.rate_in_per_s, sinkB.rate_in_per_s);
  }
  if (spansA.size() == 0 || spansB.size() == 0) return;
  const SectionProperties &rodA = spansA.first->properties, &rodB = spansB.first->properties;
  const SectionProperties &flyA = std::prev(spansA.last)->properties,
                          &flyB = std::prev(spansB.last)->properties;
  if (partA.kind >= PartKind::leader && spansA.first->bareNylon && spansB.first->bareNylon) {
    facts.add(Fact::rodEndDiameter, rodA.diameterRodEnd, rodB.diameterRodEnd);
    facts.add(Fact::flyEndDiameter, flyA.diameterFlyEnd, flyB.diameterFlyEnd);
    return;
  }
  facts.add(Fact::rodEnd, rodA.mass.rodEnd, rodB.mass.rodEnd);
  facts.add(Fact::flyEnd, flyA.mass.flyEnd, flyB.mass.flyEnd);
}

}  // namespace

bool sameLine(const Rig& rigA, const MassProfile& a, std::size_t partA, const Rig& rigB,
              const MassProfile& b, std::size_t partB) {
  const Part &p = rigA.parts[partA], &q = rigB.parts[partB];
  if (p.kind != q.kind || p.style != q.style || !sameLoops(p, q) || !sameFly(p.fly, q.fly)) {
    return false;
  }
  const SpanRange spansA = spansOf(a, partA), spansB = spansOf(b, partB);
  return std::equal(spansA.first, spansA.last, spansB.first, spansB.last, sameSpan);
}

std::vector<PartPair> alignParts(const Rig& rigA, const MassProfile& a, const Rig& rigB,
                                 const MassProfile& b) {
  constexpr double kAlone = 0.9, kOther = 1.0;  // two left alone cost more than one pair
  const std::size_t n = rigA.parts.size(), m = rigB.parts.size(), width = m + 1;
  std::vector<double> cost((n + 1) * width, 0.0);
  std::vector<char> same(n * m, 0);
  const auto pairCost = [&](std::size_t i, std::size_t j) {
    if (rigA.parts[i].kind != rigB.parts[j].kind) return 3.0;
    return same[i * m + j] != 0 ? 0.0 : kOther;
  };
  for (std::size_t i = n + 1; i-- > 0;) {
    for (std::size_t j = m + 1; j-- > 0;) {
      if (i < n && j < m) same[i * m + j] = sameLine(rigA, a, i, rigB, b, j) ? 1 : 0;
      double least = i == n && j == m ? 0.0 : 1e9;
      if (i < n) least = std::min(least, kAlone + cost[(i + 1) * width + j]);
      if (j < m) least = std::min(least, kAlone + cost[i * width + j + 1]);
      if (i < n && j < m) least = std::min(least, pairCost(i, j) + cost[(i + 1) * width + j + 1]);
      cost[i * width + j] = least;
    }
  }
  std::vector<PartPair> pairs;
  std::size_t i = 0, j = 0;
  while (i < n || j < m) {
    const double here = cost[i * width + j];
    if (i < n && j < m && near(here, pairCost(i, j) + cost[(i + 1) * width + j + 1])) {
      pairs.push_back({i, j, same[i * m + j] != 0});
      ++i;
      ++j;
    } else if (i < n && near(here, kAlone + cost[(i + 1) * width + j])) {
      pairs.push_back({i++, std::nullopt, false});
    } else {
      pairs.push_back({std::nullopt, j++, false});
    }
  }
  return pairs;
}

std::vector<FactPair> partFacts(const Rig& rigA, const Analysis& a, const Rig& rigB,
                                const Analysis& b, const PartPair& pair) {
  const Part &partA = rigA.parts[*pair.a], &partB = rigB.parts[*pair.b];
  Facts facts;
  facts.note(partA.style != partB.style, Fact::style);
  addLineFacts(facts, partA, a.profile, *pair.a, b.profile, *pair.b);
  facts.add(Fact::loops, partA.loopMass(), partB.loopMass());
  if (partA.fly && partB.fly) {
    facts.add(Fact::flyDrag, partA.fly->dragAreaOrDefault(), partB.fly->dragAreaOrDefault());
    facts.add(Fact::flyDensity, partA.fly->densityOrDefault(), partB.fly->densityOrDefault());
    facts.note(partA.fly->sinksHeadFirst.value_or(false) != partB.fly->sinksHeadFirst.value_or(false),
               Fact::flyAttitude);
  }
  facts.note(facts.list.empty() && !pair.same, Fact::layout);
  return facts.list;
}

std::vector<FactPair> rodFacts(const Rig& rigA, const Analysis& a, const Rig& rigB,
                               const Analysis& b) {
  Facts facts;
  const Rod rodA = rigA.rod.value_or(Rod{}), rodB = rigB.rod.value_or(Rod{});
  facts.add(Fact::rodLength, rodA.length, rodB.length);
  facts.add(Fact::lineNumber, rodA.lineNumber, rodB.lineNumber);
  // A window goes with the head's style: of two styles the part's own difference tells.
  if (headStyle(rigA) == headStyle(rigB)) {
    const auto low = [](const Analysis& of) {
      return of.rod.window ? std::optional(of.rod.window->low) : std::nullopt;
    };
    const auto high = [](const Analysis& of) {
      return of.rod.window ? std::optional(of.rod.window->high) : std::nullopt;
    };
    facts.add(Fact::windowLow, low(a), low(b));
    facts.add(Fact::windowHigh, high(a), high(b));
  }
  return facts.list;
}

std::vector<FactPair> waterFacts(const Rig& rigA, const Rig& rigB) {
  Facts facts;
  const Water a = rigA.water.value_or(Water{}), b = rigB.water.value_or(Water{});
  facts.add(Fact::surfaceSpeed, a.surfaceSpeed, b.surfaceSpeed);
  facts.add(Fact::waterDepth, a.depth, b.depth);
  const WaterState stateA = waterState(rigA), stateB = waterState(rigB);
  facts.add(Fact::temperature, stateA.temperature, stateB.temperature);
  facts.add(Fact::salinity, stateA.salinity, stateB.salinity);
  facts.note(profileOf(rigA) != profileOf(rigB), Fact::bed);
  return facts.list;
}

std::vector<FactPair> castFacts(const Rig& rigA, const Rig& rigB) {
  // What was left open follows the head's style, and belongs to the head's difference.
  Facts facts;
  const Cast a = rigA.cast.value_or(Cast{}), b = rigB.cast.value_or(Cast{});
  facts.add(Fact::lineSpeed, a.lineSpeed, b.lineSpeed);
  facts.add(Fact::loop, a.loop, b.loop);
  facts.add(Fact::launch, a.launch, b.launch);
  facts.add(Fact::rodTip, a.rodTip, b.rodTip);
  facts.add(Fact::overhang, a.overhang, b.overhang);
  facts.add(Fact::airAltitude, a.airAltitude, b.airAltitude);
  return facts.list;
}

std::vector<FactPair> swingFacts(const Rig& rigA, const Rig& rigB) {
  Facts facts;
  const SwingSetup a = swingSetup(rigA), b = swingSetup(rigB);
  facts.add(Fact::lineOut, a.lineOut, b.lineOut);
  facts.add(Fact::angle, a.angle, b.angle);
  facts.add(Fact::mend, a.mend, b.mend);
  return facts.list;
}

Shared sharedBy(const Rig& rigA, const Rig& rigB, const std::vector<PartPair>& pairs) {
  Shared shared;
  shared.water = waterFacts(rigA, rigB).empty();
  shared.swing = swingFacts(rigA, rigB).empty();
  // One caster: who is slow with one line is slow with the other, unless the rigs say otherwise.
  shared.cast = castFacts(rigA, rigB).empty();
  const auto allSame = [&](auto&& counts) {
    return std::all_of(pairs.begin(), pairs.end(), [&](const PartPair& pair) {
      const bool mattersA = pair.a && counts(rigA.parts[*pair.a]);
      const bool mattersB = pair.b && counts(rigB.parts[*pair.b]);
      return pair.same || (!mattersA && !mattersB);
    });
  };
  shared.fly = allSame([](const Part& part) { return part.kind == PartKind::fly; });
  shared.head = allSame([](const Part& part) { return part.kind == PartKind::head; });
  shared.lines = allSame([](const Part& part) {
    return std::any_of(part.sections.begin(), part.sections.end(),
                       [](const Section& s) { return s.sinkRate.has_value(); });
  });
  return shared;
}

}  // namespace grainwise
