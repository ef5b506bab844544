// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <stop_token>
#include <vector>

#include "core/air/cast_model.h"

namespace grainwise {

/// A point of the line, seen from the side: forward of the rod tip, above the water.
struct CastPoint {
  Feet forward;
  Feet height;
};

/// Where the energy is, and where it went since the loop was let go (J).
struct CastEnergy {
  double moving_J = 0.0;
  double lifted_J = 0.0;  ///< against gravity, 0 at the rod tip
  double bent_J = 0.0;    ///< held by bending
  double toLineDrag_J = 0.0;
  double toFlyDrag_J = 0.0;
  double toBending_J = 0.0;
  [[nodiscard]] double total_J() const {
    return moving_J + lifted_J + bent_J + toLineDrag_J + toFlyDrag_J + toBending_J;
  }
};

/// One picture of the line.
struct CastFrame {
  Seconds time;
  std::vector<CastPoint> points;  ///< rod tip to fly, evenly along the line
  FeetPerSecond flySpeed;
  CastEnergy energy;
  std::vector<double> tension_N;  ///< a link; empty unless asked for
};

enum class CastStop {
  turnedOver,  ///< the fly became the foremost point
  noTurn,      ///< it did not in `longest`
  cancelled,
  timeReached,  ///< `until` is over
  notFinite,    ///< a figure overflowed: nothing of the run is to be used
};

struct CastOptions {
  Seconds longest{6.0};
  std::optional<Seconds> until;  ///< stop there whatever the fly does, instead of at the turn
  Seconds frameEvery{0.01};      ///< 0: no frames
  bool tensions = false;
  double stepShare = 1.0;  ///< of the steps that stability and accuracy allow
};

/// The end of a run: the moment of turning, when it turned.
struct CastResult {
  CastStop stop = CastStop::noTurn;
  Seconds time;
  FeetPerSecond flySpeed;  ///< its magnitude
  Feet endHeight;          ///< of the fly above the water
  CastEnergy start, end;
  std::vector<CastFrame> frames;                  ///< the first at 0, the last at the end
  std::vector<double> angle_rad, rate_rad_per_s;  ///< of the links at the end
  std::size_t steps = 0;
};

/// Called now and then with the share of the line that the loop has run through, 0 to 1.
using CastProgress = std::function<void(double share)>;

/// Lets the line go and follows it in its plane until the fly turns over.
/// Equations of the links: core/numerics/chain.h; forces, SI, a link of length h:
///   drag across -1/2 rho Cn d |v_n| v_n and along -1/2 rho pi d Ct |v_t| v_t a metre, integrated
///   over the link (two Gauss points, since v_n runs linearly); of the fly -1/2 rho CdA |v| v;
///   gravity, tilted by the launch angle;
///   bending couples B_k (phi_k - phi_{k-1}) + eta B_k (omega_k - omega_{k-1}).
/// Source: Newton's laws of the nodes; drag as in Gatti-Bono & Perkins (2004), J. Appl. Mech.
/// 71:745.
/// Method: RK4, dt = min(1 ms, 1.45/w_max, 1.6/l_max, 0.07/max|omega|),
///   w_max^2 = max_i [2 (T_{i-1} + T_i)/h + 16 B_i/h^2]/m_i,
///   l_max = max_i [rho Cn d h |v| (+ rho CdA |v| at the fly) + 16 eta B_i/h^2]/m_i.
/// Error of the time steps at 200 links under 1e-5 m up to the turn. Of the links themselves, 200
/// against 800: 1-2.5 % in time, up to 3 % in the speed of a kick.
/// Cost: linear in the links a step; 15-40 ms for a usual cast.
/// Cancelling is looked at every step, a tenth of a millisecond.
/// Not modelled: stroke, haul, water anchor, wind, stretch; nothing after the turn is to be judged.
CastResult unroll(const CastModel& model, const CastOptions& options = {},
                  const std::stop_token& stop = {}, const CastProgress& progress = {});

}  // namespace grainwise
