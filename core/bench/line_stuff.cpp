// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/bench/cut_sheet.h"
#include "core/material/section_properties.h"

namespace grainwise {
namespace {

constexpr double kMassTolerance = 0.03;       // of grains per foot
constexpr double kDiameterTolerance_in = 0.0005;
constexpr double kRateTolerance_in_per_s = 1.0;
constexpr double kRounding = 1e-9;

/// A spool as a section of a tip, so that core/material knows what it weighs.
Section sectionOf(const Spool& spool) {
  Section section;
  section.length = Feet(1);
  if (spool.mass) section.mass = Along<GrainsPerFoot>(*spool.mass);
  if (spool.diameter) section.diameter = Along<Inches>(*spool.diameter);
  if (spool.sinkRate) section.sinkRate = Along<InchesPerSecond>(*spool.sinkRate);
  section.material = spool.material;
  section.floats = spool.floats;
  return section;
}

bool isLevel(GrainsPerFoot a, GrainsPerFoot b) {
  return std::abs(a.value() - b.value()) <= kRounding * std::abs(a.value());
}

LineStuff stuffOf(const Section& section, PartKind kind, double scale) {
  const SectionProperties is = sectionProperties(section, kind, scale);
  LineStuff stuff;
  stuff.mass = is.mass.rodEnd;
  stuff.material = section.material;
  stuff.sinks = sinks(section, kind);
  if (section.material && section.diameter) stuff.diameter = section.diameter->rodEnd;
  if (section.sinkRate) {
    stuff.rate = section.sinkRate->rodEnd;
  } else if (stuff.sinks && !section.material) {
    stuff.rate = sinkRates(is, kRatingWater).rodEnd;
  }
  return stuff;
}

}  // namespace

LineStuff stuffOf(const Spool& spool) { return stuffOf(sectionOf(spool), PartKind::tip, 1.0); }

std::optional<LineStuff> stuffOf(const Part& part, const Section& section, double scale) {
  const SectionProperties is = sectionProperties(section, part.kind, scale);
  if (!isLevel(is.mass.rodEnd, is.mass.flyEnd)) return std::nullopt;
  if (std::abs(is.diameterRodEnd.value() - is.diameterFlyEnd.value()) > kRounding) {
    return std::nullopt;
  }
  return stuffOf(section, part.kind, scale);
}

std::optional<double> mismatch(const LineStuff& wanted, const LineStuff& spool) {
  if (wanted.material != spool.material) return std::nullopt;
  if (wanted.diameter && spool.diameter) {
    const double off = std::abs(wanted.diameter->value() - spool.diameter->value());
    if (off > kDiameterTolerance_in + kRounding) return std::nullopt;
    return off / kDiameterTolerance_in;
  }
  if (wanted.sinks != spool.sinks) return std::nullopt;
  const double mass = std::abs(wanted.mass.value() / spool.mass.value() - 1.0) / kMassTolerance;
  if (!(mass <= 1.0 + kRounding)) return std::nullopt;
  if (!wanted.rate || !spool.rate) return mass;
  const double rate =
      std::abs(wanted.rate->value() - spool.rate->value()) / kRateTolerance_in_per_s;
  if (rate > 1.0 + kRounding) return std::nullopt;
  return mass + rate;
}

RingCode ringCode(GrainsPerFoot mass, double sinkingShare, bool floatSink) {
  RingCode code;
  const int grains = static_cast<int>(std::lround(mass.value()));
  code.longRings = grains / 5;
  code.shortRings = grains % 5;
  if (floatSink) code.quarters = static_cast<int>(std::lround(4.0 * sinkingShare));
  return code;
}

}  // namespace grainwise
