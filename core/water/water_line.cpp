// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/water_line.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kLeast_m = 1e-6;
constexpr Feet kSamePlace{1e-9};
constexpr double kHeadFirst = 1.3;
constexpr double kFlat = 3.0;

WaterFly flyOf(const Fly& fly) {
  WaterFly w;
  w.mass_kg = si::kg(fly.wetMass());
  w.volume_m3 = w.mass_kg / si::kg_per_m3(fly.densityOrDefault());
  w.dragArea_m2 = si::m2(fly.dragAreaOrDefault());
  w.broadside = fly.sinksHeadFirst.value_or(false) ? kHeadFirst : kFlat;
  return w;
}

WaterPiece pieceOf(const ProfileSpan& span, PartKind kind) {
  WaterPiece piece;
  const SectionProperties& p = span.properties;
  piece.length_m = si::m(span.length());
  piece.massFlyEnd_kg_per_m = si::kg_per_m(p.mass.flyEnd);
  piece.massRodEnd_kg_per_m = si::kg_per_m(p.mass.rodEnd);
  piece.diameterFlyEnd_m = si::m(p.diameterFlyEnd);
  piece.diameterRodEnd_m = si::m(p.diameterRodEnd);
  piece.massLaw = p.mass.law;
  piece.diameterLaw = p.diameterLaw;
  if (kind == PartKind::head) piece.fineness = WaterPiece::Fineness::head;
  if (kind == PartKind::runningLine) piece.fineness = WaterPiece::Fineness::running;
  return piece;
}

WaterPiece runningLine(double length_m) {
  WaterPiece piece;
  piece.length_m = length_m;
  const double d_m = si::m(kRunningLineDiameter);
  piece.diameterFlyEnd_m = piece.diameterRodEnd_m = d_m;
  const double rho_kg_per_m3 = si::kg_per_m3(floatingDensity(PartKind::runningLine));
  piece.massFlyEnd_kg_per_m = piece.massRodEnd_kg_per_m =
      rho_kg_per_m3 * std::numbers::pi / 4.0 * d_m * d_m;
  piece.fineness = WaterPiece::Fineness::running;
  return piece;
}

/// The fly-side `length_m` of a piece.
WaterPiece flySide(const WaterPiece& whole, double length_m) {
  WaterPiece piece = whole;
  const double share = length_m / whole.length_m;
  piece.length_m = length_m;
  piece.massRodEnd_kg_per_m = whole.mass_kg_per_m(share);
  piece.diameterRodEnd_m = whole.diameter_m(share);
  return piece;
}

}  // namespace

double WaterPiece::mass_kg_per_m(double share) const {
  if (massLaw == MassLaw::linear) {
    return massFlyEnd_kg_per_m + (massRodEnd_kg_per_m - massFlyEnd_kg_per_m) * share;
  }
  const double root =
      std::sqrt(massFlyEnd_kg_per_m) * (1.0 - share) + std::sqrt(massRodEnd_kg_per_m) * share;
  return root * root;
}

double WaterPiece::diameter_m(double share) const {
  if (diameterLaw == SectionProperties::DiameterLaw::linear) {
    return diameterFlyEnd_m + (diameterRodEnd_m - diameterFlyEnd_m) * share;
  }
  return diameterFlyEnd_m * std::sqrt(mass_kg_per_m(share) / massFlyEnd_kg_per_m);
}

double WaterLine::length_m() const {
  double sum = 0.0;
  for (const WaterPiece& piece : pieces) sum += piece.length_m;
  return sum;
}

SwingSetup swingSetup(const Rig& rig) {
  SwingSetup setup;
  if (!rig.swing) return setup;
  setup.lineOut = rig.swing->lineOut.value_or(setup.lineOut);
  setup.angle = rig.swing->angle.value_or(setup.angle);
  setup.mend = rig.swing->mend.value_or(setup.mend);
  return setup;
}

WaterState waterState(const Rig& rig) {
  WaterState state;
  if (!rig.water) return state;
  state.temperature = rig.water->temperature.value_or(state.temperature);
  state.salinity = rig.water->salinity.value_or(state.salinity);
  return state;
}

CurrentProfile profileOf(const Rig& rig, const CurrentProfile& otherwise) {
  return rig.water && rig.water->bed ? profileOver(*rig.water->bed) : otherwise;
}

std::optional<River> riverOf(const Rig& rig, const CurrentProfile& profile) {
  if (!rig.water || !rig.water->surfaceSpeed || !rig.water->depth) return std::nullopt;
  return riverOf(*rig.water->surfaceSpeed, *rig.water->depth, waterState(rig),
                 profileOf(rig, profile));
}

std::optional<WaterLine> waterLine(const Rig& rig, const MassProfile& profile, Feet lineOut) {
  const auto flyIndex = rig.flyIndex();
  if (!flyIndex || !rig.parts[*flyIndex].fly) return std::nullopt;
  if (!(rig.parts[*flyIndex].fly->wetMass() > Grains(0))) return std::nullopt;
  WaterLine line;
  line.fly = flyOf(*rig.parts[*flyIndex].fly);
  line.pieces.reserve(profile.spans.size() + 1);
  double left_m = si::m(lineOut);
  auto point = profile.points.rbegin();
  for (auto span = profile.spans.rbegin(); span != profile.spans.rend() && left_m > kLeast_m;
       ++span) {
    WaterPiece piece = pieceOf(*span, rig.parts[span->part].kind);
    if (piece.length_m <= kLeast_m) continue;
    if (piece.length_m > left_m) piece = flySide(piece, left_m);
    const Station flyEnd = span->to;
    for (; point != profile.points.rend() && point->at >= flyEnd - kSamePlace; ++point) {
      if (point->kind == PointMass::Kind::loop) piece.loopsFlyEnd_kg += si::kg(point->mass);
    }
    left_m -= piece.length_m;
    line.pieces.push_back(piece);
  }
  if (left_m > kLeast_m) line.pieces.push_back(runningLine(left_m));
  return line;
}

std::optional<RigInWater> rigInWater(const Rig& rig, const MassProfile& profile,
                                     const CurrentProfile& current) {
  const SwingSetup setup = swingSetup(rig);
  auto river = riverOf(rig, current);
  if (!river) return std::nullopt;
  auto line = waterLine(rig, profile, setup.lineOut);
  if (!line) return std::nullopt;
  return RigInWater{std::move(*line), *river, setup};
}

}  // namespace grainwise
