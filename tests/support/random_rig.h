// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>

#include "core/model/limits.h"
#include "core/model/rig.h"

/// Random rigs that `check` accepts, the same for the same seed on every machine: all kinds and
/// styles of part, every pair that fixes a section, both mass laws, loops, labels, weighed masses.
namespace grainwise::test {

/// SplitMix64 (Steele, Lea & Flood 2014): small, and not the library's to change.
class Random {
 public:
  explicit Random(std::uint64_t seed) : m_state(seed) {}

  std::uint64_t next() {
    m_state += 0x9E3779B97F4A7C15ULL;
    std::uint64_t z = m_state;
    z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
    z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
    return z ^ (z >> 31U);
  }
  /// In [0, 1).
  double unit() { return static_cast<double>(next() >> 11U) * 0x1.0p-53; }
  double between(double low, double high) { return low + (high - low) * unit(); }
  /// As a person types it: at most `decimals` places; still inside [low, high].
  double typed(double low, double high, int decimals) {
    const double scale = std::pow(10.0, decimals);
    const double rounded = std::round(between(low, high) * scale) / scale;
    return rounded < low ? low : rounded > high ? high : rounded;
  }
  std::size_t below(std::size_t n) { return static_cast<std::size_t>(next() % n); }
  std::size_t from(std::size_t low, std::size_t high) { return low + below(high - low + 1); }
  bool chance(double p) { return unit() < p; }

 private:
  std::uint64_t m_state;
};

struct RandomRigOptions {
  std::size_t mostTips = 3;
  std::size_t mostLeaders = 3;
  std::size_t mostTippets = 2;
  std::size_t mostSections = 5;
  bool complete = false;  ///< always a rod, a head with a style, a tip and a fly
  bool scaled = true;     ///< some labels and weighed masses
};

template <class Q>
Along<Q> randomAlong(Random& random, double low, double high, int decimals) {
  const Q rodEnd(random.typed(low, high, decimals));
  if (random.chance(0.4)) return Along<Q>(rodEnd);
  return Along<Q>(rodEnd, Q(random.typed(low, high, decimals)));
}

/// One section, fixed by exactly one pair of what a file may state.
inline Section randomSection(Random& random, PartKind kind) {
  Section section;
  section.length = Feet(random.chance(0.1) ? random.between(1e-3, 0.1) : random.typed(0.25, 40, 2));
  const bool nylon = kind == PartKind::leader || kind == PartKind::tippet;
  const auto mass = [&] { section.mass = randomAlong<GrainsPerFoot>(random, 0.3, 28, 3); };
  const auto diameter = [&](double low, double high) {
    section.diameter = randomAlong<Inches>(random, low, high, 4);
  };
  switch (random.below(nylon ? 9 : 6)) {
    case 0:
      mass();
      section.floats = true;
      break;
    case 1:
      mass();
      section.density = GramsPerCubicCentimetre(random.typed(0.5, 8, 2));
      break;
    case 2:
      mass();
      section.sinkRate = randomAlong<InchesPerSecond>(random, 1.0, 10, 1);
      break;
    case 3:
      mass();
      diameter(0.02, 0.1);
      break;
    case 4:
      diameter(0.02, 0.1);
      section.density = GramsPerCubicCentimetre(random.typed(0.5, 8, 2));
      break;
    default:
      diameter(0.005, 0.03);
      section.material = random.chance(0.5) ? Material::nylon : Material::fluorocarbon;
      break;
  }
  return section;
}

inline Part randomFly(Random& random) {
  Part part;
  part.kind = PartKind::fly;
  Fly fly;
  fly.dry = Grains(random.chance(0.1) ? 0.0 : random.typed(0.5, 60, 1));
  if (random.chance(0.7)) fly.wet = fly.dry + Grains(random.typed(0, 12, 1));
  if (random.chance(0.7)) fly.dragArea = SquareCentimetres(random.typed(0.2, 6, 1));
  if (random.chance(0.5)) fly.density = GramsPerCubicCentimetre(random.typed(1.1, 6, 2));
  if (random.chance(0.5)) fly.sinksHeadFirst = random.chance(0.5);
  part.fly = fly;
  return part;
}

inline void weigh(Random& random, Part& part) {
  if (random.chance(0.3)) part.label = Grains(random.typed(1, 900, 1));
  if (random.chance(0.3)) {
    part.weighed = Weighed{part.loopMass() + Grains(random.typed(1, 900, 1)), std::nullopt, {}};
  }
}

inline Part randomPart(Random& random, PartKind kind, const RandomRigOptions& options = {}) {
  if (kind == PartKind::fly) return randomFly(random);
  Part part;
  part.kind = kind;
  const auto& styles = stylesOf(kind);
  const std::size_t choices = styles.size() + (options.complete || styles.empty() ? 0 : 1);
  const std::size_t chosen = choices == 0 ? 0 : random.below(choices);
  if (chosen < styles.size()) part.style = styles[chosen];
  if (random.chance(0.5)) part.name = std::string(fileName(kind)) + " of a sort";
  const std::size_t sections = random.from(1, options.mostSections);
  for (std::size_t i = 0; i < sections; ++i) part.sections.push_back(randomSection(random, kind));
  if (random.chance(0.4)) {
    Loops loops;
    if (random.chance(0.8)) loops.rodEnd = Grains(random.typed(0, 5, 1));
    if (random.chance(0.8)) loops.flyEnd = Grains(random.typed(0, 5, 1));
    part.loops = loops;
  }
  if (options.scaled) weigh(random, part);
  return part;
}

inline Rod randomRod(Random& random, bool complete) {
  Rod rod;
  if (complete || random.chance(0.8)) rod.length = Feet(random.typed(7, 16, 1));
  if (complete || random.chance(0.8)) {
    rod.lineNumber = random.chance(0.8) ? random.typed(3, 10, 0) : random.typed(0, 16, 1);
  }
  if (random.chance(0.5)) rod.hands = random.chance(0.3) ? 1 : 2;
  const auto window = [&] {
    const double low = random.typed(150, 700, 0);
    return GrainWindow{Grains(low), Grains(low + random.typed(0, 150, 0))};
  };
  if (random.chance(0.3)) rod.window = window();
  if (random.chance(0.3)) {
    rod.windows.emplace();
    if (random.chance(0.7)) rod.windows->shortHead = window();
    if (random.chance(0.7)) rod.windows->fine = window();
    if (random.chance(0.5)) rod.windows->longBelly = window();
  }
  return rod;
}

/// From the depth that is drawn already: a draw of its own would make other rigs of all that follow.
inline std::optional<Bed> randomBed(const Water& water) {
  const auto tenths = static_cast<std::size_t>(std::lround(water.depth->value() * 10));
  if (tenths % 3 != 0) return std::nullopt;
  return allBeds()[tenths / 3 % allBeds().size()];
}

inline Water randomWater(Random& random) {
  Water water;
  water.surfaceSpeed = FeetPerSecond(random.typed(0, 8, 1));
  water.depth = Feet(random.typed(0.5, 20, 1));
  if (random.chance(0.7)) water.temperature = Celsius(random.typed(0, 35, 1));
  if (random.chance(0.3)) water.salinity = GramsPerKilogram(random.typed(0, 45, 0));
  water.bed = randomBed(water);
  return water;
}

inline void addParts(Random& random, Rig& rig, PartKind kind, std::size_t count,
                     const RandomRigOptions& options) {
  for (std::size_t i = 0; i < count; ++i) rig.parts.push_back(randomPart(random, kind, options));
}

inline Rig randomRig(Random& random, const RandomRigOptions& options = {}) {
  Rig rig;
  rig.name = "A rig of chance";
  const std::size_t least = options.complete ? 1 : 0;
  if (options.complete || random.chance(0.8)) rig.rod = randomRod(random, options.complete);
  addParts(random, rig, PartKind::runningLine, random.below(2), options);
  addParts(random, rig, PartKind::head, random.from(least, limits::kHeadPieces), options);
  addParts(random, rig, PartKind::tip, random.from(least, options.mostTips), options);
  addParts(random, rig, PartKind::leader, random.from(0, options.mostLeaders), options);
  addParts(random, rig, PartKind::tippet, random.from(0, options.mostTippets), options);
  if (options.complete || rig.parts.empty() || random.chance(0.8)) {
    rig.parts.push_back(randomFly(random));
  }
  if (random.chance(0.6)) rig.water = randomWater(random);
  return rig;
}

/// 64 parts, each line with `sections` sections: the largest rig that a file may hold at 64.
inline Rig fullRig(std::size_t sections, std::uint64_t seed = 1) {
  Random random(seed);
  RandomRigOptions options;
  options.mostSections = 1;
  Rig rig;
  rig.name = "A full house";
  rig.rod = randomRod(random, true);
  const auto add = [&](PartKind kind, std::size_t count) {
    for (std::size_t i = 0; i < count; ++i) {
      Part part = randomPart(random, kind, options);
      part.sections.clear();
      for (std::size_t k = 0; k < sections; ++k) {
        part.sections.push_back(randomSection(random, kind));
      }
      rig.parts.push_back(std::move(part));
    }
  };
  add(PartKind::runningLine, 1);
  add(PartKind::head, limits::kHeadPieces);
  add(PartKind::tip, 30);
  add(PartKind::leader, 18);
  add(PartKind::tippet, limits::kParts - 54);
  rig.parts.push_back(randomFly(random));
  return rig;
}

}  // namespace grainwise::test
