// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/material/sink_rate.h"
#include "core/model/part.h"

namespace grainwise {

/// How the mass per foot runs between the two ends of a section.
enum class MassLaw {
  linear,           ///< typed as gr/ft: linear from end to end
  diameterSquared,  ///< only the diameter is typed: the diameter is linear, mass per foot its square
};

/// Mass per foot along a section before a label or scale is applied. Level strand:
/// gr/ft = 2383.442 SG d^2 (d in inches, SG to 1000 kg/m3; exact constants, pi/4).
struct LineMass {
  GrainsPerFoot rodEnd;
  GrainsPerFoot flyEnd;
  MassLaw law = MassLaw::linear;
  bool operator==(const LineMass&) const = default;
};
LineMass lineMass(const Section& section, PartKind kind);

/// What a section is, all three quantities known, at its rod end and its fly end. Between the ends
/// the mass per foot runs by `mass.law`, the diameter runs by `diameterLaw`.
struct SectionProperties {
  enum class DiameterLaw {
    linear,      ///< typed, or from a rated sink rate: linear between the ends
    squareRoot,  ///< from a density: the square root of the mass per foot at each point
  };
  Feet length;
  LineMass mass;  ///< scaled by the part's factor
  Inches diameterRodEnd;
  Inches diameterFlyEnd;
  DiameterLaw diameterLaw = DiameterLaw::linear;
  GramsPerCubicCentimetre densityRodEnd;
  GramsPerCubicCentimetre densityFlyEnd;
  bool operator==(const SectionProperties&) const = default;

  /// At `share` 0 (rod end) to 1 (fly end).
  [[nodiscard]] GrainsPerFoot massAt(double share) const;
  [[nodiscard]] Inches diameterAt(double share) const;
  [[nodiscard]] GramsPerCubicCentimetre densityAt(double share) const;
};

/// `scale` is the factor of the part's label or weighed mass (core/mass/profile.h). The typed
/// companion (diameter, density, rate) stays, and the third quantity follows from the scaled mass.
/// Where only the diameter is typed (with a density or material) the diameter stays and the density
/// follows. A section that `check` refuses for saying too little is taken as a floating one of its
/// kind, so that nothing here is ever NaN.
SectionProperties sectionProperties(const Section& section, PartKind kind, double scale);

/// How fast both ends of a section sink in `water` (a rated rate holds for fresh water at 15 C only).
SinkEnds sinkRates(const SectionProperties& section, const WaterState& water);

/// Default density of a floating section by kind: running line 0.90, head 0.86, everything else 0.88.
/// Ours (estimate), not published.
GramsPerCubicCentimetre floatingDensity(PartKind kind);
/// Nylon 1.14, fluorocarbon (PVDF) 1.78 g/cm3, handbook values.
GramsPerCubicCentimetre densityOf(Material material);

/// Whether a section is bare nylon by the file format's definition: given by `material`, or any
/// section of a leader or tippet that is not coated; on a coated leader, sections given by
/// `material` or under 1.6 gr/ft (unscaled) at the rod end. Sections of other kinds: by `material`.
bool isBareNylon(const Part& part, const Section& section);

/// Whether it sinks or floats, for drawing and for the grains of sinking line: by `floats`, a sink
/// rate (sinks), or the density against 1.0 g/cm3.
bool sinks(const Section& section, PartKind kind);

}  // namespace grainwise
