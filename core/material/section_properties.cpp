// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/material/section_properties.h"

#include <bit>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "core/material/rated_diameters.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kQuarterPi = std::numbers::pi / 4.0;
constexpr GramsPerCubicCentimetre kNeutral{1.0};

GrainsPerFoot massOf(GramsPerCubicCentimetre density, Inches diameter) {
  const double d_m = si::m(diameter);
  return si::toGrainsPerFoot(si::kg_per_m3(density) * kQuarterPi * d_m * d_m);
}

Inches diameterOf(GrainsPerFoot mass, GramsPerCubicCentimetre density) {
  return si::toInches(std::sqrt(si::kg_per_m(mass) / (kQuarterPi * si::kg_per_m3(density))));
}

GramsPerCubicCentimetre densityFrom(GrainsPerFoot mass, Inches diameter) {
  const double d_m = si::m(diameter);
  return si::toGramsPerCubicCentimetre(si::kg_per_m(mass) / (kQuarterPi * d_m * d_m));
}

/// The density that a section states or, when it states none, has by default.
GramsPerCubicCentimetre statedDensity(const Section& section, PartKind kind) {
  if (section.density) return *section.density;
  if (section.material) return densityOf(*section.material);
  return floatingDensity(kind);
}

/// A rated rate fixes the diameter. Where none lies in the range of the drag law (only far outside
/// the limits of what can be typed) the widest, neutral line is taken.
Inches ratedDiameter(GrainsPerFoot mass, InchesPerSecond rate) {
  const auto d = diameterFromSinkRate(mass, rate, kRatingWater);
  return d ? *d : diameterOf(mass, kNeutral);
}

bool isLevel(const LineMass& mass) { return mass.rodEnd == mass.flyEnd; }

template <class Q>
Q between(Q a, Q b, double share) {
  return a + (b - a) * share;
}

/// `rated(mass, rate)` is the diameter that both fix.
template <class Rated>
SectionProperties propertiesOf(const Section& section, PartKind kind, double scale, Rated&& rated) {
  using Law = SectionProperties::DiameterLaw;
  SectionProperties p;
  p.length = section.length;
  p.mass = lineMass(section, kind);
  p.mass.rodEnd = p.mass.rodEnd * scale;
  p.mass.flyEnd = p.mass.flyEnd * scale;
  const bool level = isLevel(p.mass);
  if (section.diameter) {
    p.diameterRodEnd = section.diameter->rodEnd;
    p.diameterFlyEnd = section.diameter->flyEnd;
  } else if (section.sinkRate && !section.density) {
    const auto& rate = *section.sinkRate;
    p.diameterRodEnd = rated(p.mass.rodEnd, rate.rodEnd);
    p.diameterFlyEnd = level && rate.rodEnd == rate.flyEnd ? p.diameterRodEnd : rated(p.mass.flyEnd, rate.flyEnd);
  } else {
    const GramsPerCubicCentimetre density = statedDensity(section, kind);
    p.diameterRodEnd = diameterOf(p.mass.rodEnd, density);
    p.diameterFlyEnd = level ? p.diameterRodEnd : diameterOf(p.mass.flyEnd, density);
    p.diameterLaw = Law::squareRoot;
    p.densityRodEnd = p.densityFlyEnd = density;
    return p;
  }
  p.densityRodEnd = densityFrom(p.mass.rodEnd, p.diameterRodEnd);
  p.densityFlyEnd = densityFrom(p.mass.flyEnd, p.diameterFlyEnd);
  return p;
}

}  // namespace

Inches RatedDiameters::at(GrainsPerFoot mass, InchesPerSecond rate) {
  constexpr std::uint64_t kSpread = 0x9e3779b97f4a7c15;  // 2^64 over the golden ratio
  constexpr int kIndexBits = std::countr_zero(kPlaces);
  const std::uint64_t mixed =
      (std::bit_cast<std::uint64_t>(mass.value()) * kSpread) ^ std::bit_cast<std::uint64_t>(rate.value());
  Kept& kept = m_kept[(mixed * kSpread) >> (64 - kIndexBits)];
  if (kept.mass != mass || kept.rate != rate) kept = {mass, rate, ratedDiameter(mass, rate)};
  return kept.diameter;
}

LineMass lineMass(const Section& section, PartKind kind) {
  if (section.mass) return {section.mass->rodEnd, section.mass->flyEnd, MassLaw::linear};
  if (!section.diameter) return {};
  const GramsPerCubicCentimetre density = statedDensity(section, kind);
  const GrainsPerFoot rodEnd = massOf(density, section.diameter->rodEnd);
  if (!section.diameter->pair) return {rodEnd, rodEnd, MassLaw::diameterSquared};
  return {rodEnd, massOf(density, section.diameter->flyEnd), MassLaw::diameterSquared};
}

SectionProperties sectionProperties(const Section& section, PartKind kind, double scale) {
  return propertiesOf(section, kind, scale, ratedDiameter);
}

SectionProperties sectionProperties(const Section& section, PartKind kind, double scale, RatedDiameters& rated) {
  return propertiesOf(section, kind, scale,
                      [&rated](GrainsPerFoot mass, InchesPerSecond rate) { return rated.at(mass, rate); });
}

GrainsPerFoot SectionProperties::massAt(double share) const {
  if (mass.law == MassLaw::linear) return between(mass.rodEnd, mass.flyEnd, share);
  const double root =
      std::sqrt(mass.rodEnd.value()) * (1.0 - share) + std::sqrt(mass.flyEnd.value()) * share;
  return GrainsPerFoot(root * root);
}

Inches SectionProperties::diameterAt(double share) const {
  if (diameterLaw == DiameterLaw::linear) return between(diameterRodEnd, diameterFlyEnd, share);
  return diameterOf(massAt(share), densityRodEnd);
}

GramsPerCubicCentimetre SectionProperties::densityAt(double share) const {
  if (diameterLaw == DiameterLaw::squareRoot) return densityRodEnd;
  return densityFrom(massAt(share), diameterAt(share));
}

SinkEnds sinkRates(const SectionProperties& section, const WaterState& water) {
  SinkEnds ends;
  ends.rodEnd = sinkRate(section.mass.rodEnd, section.diameterRodEnd, water);
  const bool same = isLevel(section.mass) && section.diameterRodEnd == section.diameterFlyEnd;
  ends.flyEnd = same ? ends.rodEnd : sinkRate(section.mass.flyEnd, section.diameterFlyEnd, water);
  return ends;
}

GramsPerCubicCentimetre floatingDensity(PartKind kind) {
  if (kind == PartKind::runningLine) return GramsPerCubicCentimetre(0.90);
  if (kind == PartKind::head) return GramsPerCubicCentimetre(0.86);
  return GramsPerCubicCentimetre(0.88);
}

GramsPerCubicCentimetre densityOf(Material material) {
  return GramsPerCubicCentimetre(material == Material::nylon ? 1.14 : 1.78);
}

bool isBareNylon(const Part& part, const Section& section) {
  if (section.material) return true;
  if (part.kind == PartKind::tippet) return true;
  if (part.kind != PartKind::leader) return false;
  if (part.style != Style::coated) return true;
  return lineMass(section, part.kind).rodEnd < GrainsPerFoot(1.6);
}

bool sinks(const Section& section, PartKind kind) {
  if (section.floats) return !*section.floats;
  if (section.sinkRate) return true;
  if (section.density) return *section.density > kNeutral;
  if (section.material) return true;
  return sectionProperties(section, kind, 1.0).densityRodEnd > kNeutral;
}

}  // namespace grainwise
