// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/cast_model.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/units/si.h"

namespace grainwise {
namespace {

using std::numbers::pi;

constexpr double kRodLeg_m = 1.0;
constexpr std::size_t kLeastLinks = 4;

/// Shares a mass at s (from the rod tip) between the nodes on either side.
void addMass(CastModel& model, double s_m, double mass_kg) {
  const double place = std::clamp(s_m / model.link_m, 0.0, static_cast<double>(model.links()));
  const auto node = std::min(static_cast<std::size_t>(place), model.links() - 1);
  const double share = place - static_cast<double>(node);
  model.nodeMass_kg[node] += (1.0 - share) * mass_kg;
  model.nodeMass_kg[node + 1] += share * mass_kg;
}

/// Sums of the line over each link: mass to its nodes, mean diameter, mean bending stiffness.
void addPieces(CastModel& model, const AirLine& line, std::vector<double>& stiffness_N_m2) {
  const double length_m = line.length_m();
  const double h = model.link_m;
  auto piece = line.pieces.rbegin();
  for (std::size_t k = 0; k < model.links(); ++k) {
    const double rodSide_m = length_m - h * static_cast<double>(k);  // x of the link's ends
    const double flySide_m = k + 1 == model.links() ? 0.0 : rodSide_m - h;
    double shadow_m2 = 0.0;
    double bending = 0.0;
    for (auto p = piece; p != line.pieces.rend() && p->to_m > flySide_m; ++p) {
      const double a_m = std::max(flySide_m, p->from_m);
      const double b_m = std::min(rodSide_m, p->to_m);
      if (b_m <= a_m) continue;
      addMass(model, length_m - p->centroid_m(a_m, b_m), p->massBetween_kg(a_m, b_m));
      shadow_m2 += p->shadow_m2(a_m, b_m);
      bending += p->stiffness_Pa * pi / 64.0 * std::pow(p->diameter_m(0.5 * (a_m + b_m)), 4.0) *
                 (b_m - a_m);
    }
    while (piece != line.pieces.rend() && piece->from_m >= flySide_m) ++piece;
    model.diameter_m[k] = shadow_m2 / h;
    stiffness_N_m2[k] = bending / h;
  }
}

/// Integral from 0 to s of the tangent's angle, which turns from 0 to pi between `from` and `to`.
double turned(double s_m, double from_m, double to_m) {
  if (s_m <= from_m) return 0.0;
  const double inBend_m = std::min(s_m, to_m) - from_m;
  return pi * inBend_m * inBend_m / (2.0 * (to_m - from_m)) + pi * std::max(0.0, s_m - to_m);
}

void setStart(CastModel& model, const CastSetup& cast) {
  const double h = model.link_m;
  const double loop_m = si::m(cast.loop);
  const double from_m = kRodLeg_m;
  const double to_m = kRodLeg_m + pi * loop_m / 2.0;
  const double u = si::m_per_s(cast.lineSpeed);
  const double c = 0.5 * (u - si::m_per_s(cast.rodLegSpeed));
  double vx = 0.0;
  double vy = 0.0;
  for (std::size_t k = 0; k < model.links(); ++k) {
    const double a_m = h * static_cast<double>(k);
    const double b_m = a_m + h;
    const double inBend_m = std::max(0.0, std::min(b_m, to_m) - std::max(a_m, from_m));
    const double angle = (turned(b_m, from_m, to_m) - turned(a_m, from_m, to_m)) / h;
    const double rate = -c / (0.5 * loop_m) * (inBend_m / h);
    model.startAngle_rad[k] = angle;
    model.startRate_rad_per_s[k] = rate;
    vx -= h * rate * std::sin(angle);
    vy += h * rate * std::cos(angle);
  }
  const double scale = u / std::hypot(vx, vy);
  for (double& rate : model.startRate_rad_per_s) rate *= scale;
}

}  // namespace

std::optional<CastModel> castModel(const AirLine& line, const CastSetup& cast,
                                   const AirSettings& air, std::size_t links) {
  const double length_m = line.length_m();
  const double bend_m = pi * si::m(cast.loop) / 2.0;
  if (links < kLeastLinks || length_m <= kRodLeg_m + bend_m) return std::nullopt;
  CastModel model;
  model.link_m = length_m / static_cast<double>(links);
  model.nodeMass_kg.assign(links + 1, 0.0);
  model.diameter_m.assign(links, 0.0);
  model.bending_N_m.assign(links, 0.0);
  model.startAngle_rad.assign(links, 0.0);
  model.startRate_rad_per_s.assign(links, 0.0);
  std::vector<double> stiffness_N_m2(links);
  addPieces(model, line, stiffness_N_m2);
  for (const AirPoint& point : line.points) addMass(model, length_m - point.x_m, point.mass_kg);
  model.nodeMass_kg[links] += line.fly_kg;
  for (std::size_t k = 1; k < links; ++k) {
    const double a = stiffness_N_m2[k - 1];
    const double b = stiffness_N_m2[k];
    if (a + b > 0.0) model.bending_N_m[k] = 2.0 * a * b / ((a + b) * model.link_m);
  }
  model.flyDrag_m2 = line.flyDrag_m2;
  model.airDensity_kg_per_m3 = air.density_kg_per_m3;
  model.acrossDrag = air.acrossDrag;
  model.alongDrag = air.alongDrag;
  model.launch_rad = si::rad(cast.launch);
  model.rodTip_m = si::m(cast.rodTip);
  model.gravityX_m_per_s2 = -si::kGravity_m_per_s2 * std::sin(model.launch_rad);
  model.gravityY_m_per_s2 = -si::kGravity_m_per_s2 * std::cos(model.launch_rad);
  setStart(model, cast);
  return model;
}

tl::expected<CastModel, NoTurnover> castModel(const Rig& rig, const MassProfile& profile,
                                              const TurnoverConditions& conditions,
                                              std::size_t links) {
  const auto flies = castLine(rig, profile, conditions.learner);
  if (!flies) return tl::unexpected(flies.error());
  auto model = castModel(flies->line, flies->cast, airAt(flies->cast.airAltitude), links);
  if (!model) return tl::unexpected(NoTurnover::tooShort);
  return std::move(*model);
}

}  // namespace grainwise
