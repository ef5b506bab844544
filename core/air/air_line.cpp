// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/air_line.h"

#include <algorithm>
#include <cmath>

#include "core/mass/line_integrals.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kNoLength_m = 1e-9;  // of a rest left by rounding

// Young's moduli, estimates: common practice, no source.
constexpr double kLine_Pa = 0.05e9;
constexpr double kCoated_Pa = 0.10e9;
constexpr double kNylon_Pa = 2.0e9;

double stiffnessOf(const ProfileSpan& span, const Part& part) {
  if (span.bareNylon) return kNylon_Pa;
  return part.isCoatedLeader() ? kCoated_Pa : kLine_Pa;
}

AirPiece pieceOf(const ProfileSpan& span, const Part& part, Station fly) {
  const SectionProperties& is = span.properties;
  AirPiece piece;
  piece.from_m = si::m(fly - span.to);
  piece.to_m = si::m(fly - span.from);
  piece.massFlyEnd_kg_per_m = si::kg_per_m(is.mass.flyEnd);
  piece.massRodEnd_kg_per_m = si::kg_per_m(is.mass.rodEnd);
  piece.diameterFlyEnd_m = si::m(is.diameterFlyEnd);
  piece.diameterRodEnd_m = si::m(is.diameterRodEnd);
  piece.massLaw = is.mass.law;
  piece.diameterLaw = is.diameterLaw;
  piece.bareNylon = span.bareNylon;
  piece.stiffness_Pa = stiffnessOf(span, part);
  piece.part = span.part;
  return piece;
}

/// The piece as far as `to_m` only.
AirPiece cutAt(const AirPiece& whole, double to_m) {
  AirPiece piece = whole;
  piece.massRodEnd_kg_per_m = whole.mass_kg_per_m(to_m);
  piece.diameterRodEnd_m = whole.diameter_m(to_m);
  piece.to_m = to_m;
  return piece;
}

double shareAt(const AirPiece& piece, double x_m) {
  return std::clamp((x_m - piece.from_m) / piece.length_m(), 0.0, 1.0);
}

}  // namespace

double AirPiece::mass_kg_per_m(double x_m) const {
  const double share = shareAt(*this, x_m);
  if (massLaw == MassLaw::linear) {
    return massFlyEnd_kg_per_m + (massRodEnd_kg_per_m - massFlyEnd_kg_per_m) * share;
  }
  const double root =
      std::sqrt(massFlyEnd_kg_per_m) * (1.0 - share) + std::sqrt(massRodEnd_kg_per_m) * share;
  return root * root;
}

double AirPiece::diameter_m(double x_m) const {
  if (diameterLaw == SectionProperties::DiameterLaw::linear) {
    return diameterFlyEnd_m + (diameterRodEnd_m - diameterFlyEnd_m) * shareAt(*this, x_m);
  }
  return diameterFlyEnd_m * std::sqrt(mass_kg_per_m(x_m) / massFlyEnd_kg_per_m);
}

double AirPiece::massBetween_kg(double a_m, double b_m) const {
  return si::kg(pieceMass(massLaw, si::toFeet(b_m - a_m), si::toGrainsPerFoot(mass_kg_per_m(a_m)),
                          si::toGrainsPerFoot(mass_kg_per_m(b_m))));
}

double AirPiece::centroid_m(double a_m, double b_m) const {
  return a_m + (b_m - a_m) * pieceCentroid(massLaw, si::toGrainsPerFoot(mass_kg_per_m(a_m)),
                                           si::toGrainsPerFoot(mass_kg_per_m(b_m)));
}

double AirPiece::shadow_m2(double a_m, double b_m) const {
  const double middle = 0.5 * (a_m + b_m);
  if (diameterLaw == SectionProperties::DiameterLaw::linear) {
    return diameter_m(middle) * (b_m - a_m);
  }
  const double reach = 0.5 * (b_m - a_m) * 0.77459666924148337704;  // sqrt(3/5)
  return (b_m - a_m) / 18.0 *
         (5.0 * (diameter_m(middle - reach) + diameter_m(middle + reach)) +
          8.0 * diameter_m(middle));
}

std::optional<AirLine> airLine(const Rig& rig, const MassProfile& profile, Feet overhang) {
  const auto flyIndex = rig.flyIndex();
  if (!flyIndex || !rig.parts[*flyIndex].fly) return std::nullopt;
  const Fly& fly = *rig.parts[*flyIndex].fly;
  AirLine line;
  line.fly_kg = si::kg(fly.wetMass());
  line.flyDrag_m2 = si::m2(fly.dragAreaOrDefault());
  const double end_m = si::m(profile.end - profile.start) + si::m(overhang);
  line.pieces.reserve(profile.spans.size());
  for (auto span = profile.spans.rbegin(); span != profile.spans.rend(); ++span) {
    AirPiece piece = pieceOf(*span, rig.parts[span->part], profile.end);
    if (piece.length_m() <= kNoLength_m || piece.from_m >= end_m - kNoLength_m) continue;
    if (piece.to_m > end_m) piece = cutAt(piece, end_m);
    line.pieces.push_back(piece);
  }
  if (line.pieces.empty()) return std::nullopt;
  for (const AirPiece& piece : line.pieces) {
    if (!piece.bareNylon) break;
    line.nylon_m = piece.to_m;
  }
  for (auto point = profile.points.rbegin(); point != profile.points.rend(); ++point) {
    const double x_m = si::m(profile.end - point->at);
    if (point->kind != PointMass::Kind::loop || x_m > line.length_m()) continue;
    if (x_m <= kNoLength_m) {
      line.fly_kg += si::kg(point->mass);
    } else {
      line.points.push_back({x_m, si::kg(point->mass)});
    }
  }
  return line;
}

}  // namespace grainwise
