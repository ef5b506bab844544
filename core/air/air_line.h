// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/mass/profile.h"

namespace grainwise {

/// A piece of line in the air, plain SI, from its fly end to its rod end; x is the length of line
/// from a point to the fly.
struct AirPiece {
  double from_m = 0.0, to_m = 0.0;  ///< x of its fly end and of its rod end
  double massFlyEnd_kg_per_m = 0.0, massRodEnd_kg_per_m = 0.0;
  double diameterFlyEnd_m = 0.0, diameterRodEnd_m = 0.0;
  MassLaw massLaw = MassLaw::linear;
  SectionProperties::DiameterLaw diameterLaw = SectionProperties::DiameterLaw::linear;
  bool bareNylon = false;
  double stiffness_Pa = 0.0;  ///< Young's modulus: nylon 2 GPa, coated leader 0.10, line 0.05
  std::size_t part = 0;

  [[nodiscard]] double length_m() const { return to_m - from_m; }
  [[nodiscard]] double mass_kg_per_m(double x_m) const;
  [[nodiscard]] double diameter_m(double x_m) const;
  /// Mass between two places inside the piece, exact, and where its centre lies (x).
  [[nodiscard]] double massBetween_kg(double a_m, double b_m) const;
  [[nodiscard]] double centroid_m(double a_m, double b_m) const;
  /// Integral of the diameter between two places (m2): exact where it runs linearly, else three
  /// point Gauss, within 1e-7 for a taper of 4 to 1.
  [[nodiscard]] double shadow_m2(double a_m, double b_m) const;
};

/// A loop, at its x.
struct AirPoint {
  double x_m = 0.0;
  double mass_kg = 0.0;
};

/// What flies: everything from the fly up to the rod tip. Pieces and points stand in order from the
/// fly; loops right at the fly are part of its mass.
struct AirLine {
  double fly_kg = 0.0;
  double flyDrag_m2 = 0.0;
  std::vector<AirPiece> pieces;
  std::vector<AirPoint> points;
  double nylon_m = 0.0;  ///< run of bare nylon that reaches the fly, leaders and tippets together

  [[nodiscard]] double length_m() const { return pieces.empty() ? 0.0 : pieces.back().to_m; }
};

/// The line of a rig from `overhang` behind the rear of the head to the fly; with less running line
/// than that, what there is. Nothing without a fly or without line.
std::optional<AirLine> airLine(const Rig& rig, const MassProfile& profile, Feet overhang);

}  // namespace grainwise
