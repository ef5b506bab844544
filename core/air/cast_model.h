// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/air/air.h"
#include "core/air/air_line.h"
#include "core/air/cast_setup.h"
#include "core/air/turnover.h"

namespace grainwise {

/// A line cut into equal links, ready to be let go; plain SI. Node 0 is the rod tip and held, node
/// N the fly. The x axis points along the launch direction, y away from the water at a right angle.
struct CastModel {
  double link_m = 0.0;
  std::vector<double> nodeMass_kg;  ///< N + 1; loops and line shared between the nearest nodes
  std::vector<double> diameter_m;   ///< N: mean of each link
  std::vector<double> bending_N_m;  ///< N: B of joint k between links k - 1 and k; 0 at the rod
  double bendingTime_s = 0.005;     ///< eta: damping couple eta B (omega_k - omega_{k-1})
  double flyDrag_m2 = 0.0;
  double airDensity_kg_per_m3 = 1.2;
  double acrossDrag = 1.1;
  double alongDrag = 0.010;
  double gravityX_m_per_s2 = 0.0, gravityY_m_per_s2 = -9.80665;
  double launch_rad = 0.0;
  double rodTip_m = 0.0;
  std::vector<double> startAngle_rad;       ///< N
  std::vector<double> startRate_rad_per_s;  ///< N

  [[nodiscard]] std::size_t links() const { return diameter_m.size(); }
};

/// The loop as it forms: one metre of straight rod leg from the rod tip along the launch direction,
/// half a circle of the loop's diameter up and back, then the straight fly leg above; the line runs
/// through the bend at c = (u - v)/2 so that the fly moves at u. Node masses keep mass and centre
/// of every piece; B = E pi d^4/64 / h, the two halves at a joint in series; E in
/// core/air/air_line.h. Nothing where the line is too short for leg and bend, or has under four
/// links.
std::optional<CastModel> castModel(const AirLine& line, const CastSetup& cast,
                                   const AirSettings& air = {}, std::size_t links = 200);

/// The same of a rig, or why there is none: the reasons of its turnover, and `tooShort`.
tl::expected<CastModel, NoTurnover> castModel(const Rig& rig, const MassProfile& profile,
                                              const TurnoverConditions& conditions = {},
                                              std::size_t links = 200);

}  // namespace grainwise
