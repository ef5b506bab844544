// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/air/air.h"
#include "core/air/air_line.h"

namespace grainwise {

/// Where and how the loop rolls; plain SI.
struct LoopShape {
  double loop_m = 1.0;      ///< D, leg to leg
  double launch_rad = 0.0;  ///< alpha, above level
  double rodTip_m = 4.0;    ///< H, above the water
  double rodLeg_m = 1.0;    ///< length of the rod leg as the loop forms
  double gravity_m_per_s2 = 9.80665;
  bool roundAtTheEnd = true;  ///< the loop shrinks as the line runs out: D(x) = min(D, 4x/pi)
};

/// What may be varied without a new grid.
struct LoopDrag {
  double density_kg_per_m3 = 1.2;
  double across = 1.1;   ///< Cn
  double along = 0.010;  ///< Ct
  double fly_m2 = 0.0;   ///< CdA
};

struct LoopEnd {
  bool arrives = false;        ///< false: the fly leg came to a stop at `left_m` before the fly
  double left_m = 0.0;         ///< x where it ended
  double speed_m_per_s = 0.0;  ///< u along the leg, 0 when it does not arrive
  double time_s = 0.0;
  double fall_m = 0.0;    ///< z
  double height_m = 0.0;  ///< of the fly above the water
  double nylonSpeed_m_per_s =
      0.0;  ///< u as the loop reaches the bare nylon; 0: not reached or none
};

/// What the loop needs and what the line gives at one place, as masses per length: the pull is
/// mu (u - v)^2/4 and the need N, both divided by (u - v)^2/4 with v = 0.
struct LoopBalance {
  double x_m = 0.0;
  double line_kg_per_m = 0.0;
  double need_kg_per_m = 0.0;
  bool bareNylon = false;
  std::size_t part = 0;
  [[nodiscard]] double drive() const { return line_kg_per_m / need_kg_per_m; }
};

/// A loop that rolls along a line towards its fly.
/// x = line from the loop's foremost point to the fly, u fly-leg speed, v rod-leg speed (both along
/// the line, forward positive), D loop diameter, vz sink rate of the leg (down positive),
/// V = sqrt(u^2 + vz^2), M(x) = fly and line beyond x, S(x) = integral of the diameter d,
/// D(x) = min(D, 4x/pi), c = (u + v)/2; kg, m, s:
///   pull P = mu(x) (u - v)^2/4
///   need N = 1/2 rho u^2 [CdA + pi Ct max(0, S - 0.29 D d)] + 0.6 rho Cn d D c^2/6
///   dx/dt = -(u - v)/2;  M dV/dt = P - N - M g sin(alpha) + M (vz/u) az;  dz/dt = vz
///   dvz/dt = az = g cos(alpha) - (1/2 rho Cn S/M) vz|vz| - (1/2 rho CdA u/M) vz
/// from x0 = L - rod leg - pi D/4, u = u0, vz = z = 0 to x = 0; a point mass is passed as the limit
/// of a short heavy piece; h = H + L sin(alpha) + D cos(alpha) - z.
/// Identity (v = 0, no gravity): d ln u/dx = -(mu - mu_need)/(2M).
/// Source: momentum of the two legs and the bend (derived here). Form drag of the bend: (2/3) rho
/// d R c^2 Cn along the line, R = D/2, in Gatti-Bono & Perkins (2004), J. Appl. Mech. 71:745;
/// half of it falls to the fly leg, and six tenths of that is taken, since a real bend is not round
/// (ours).
/// Not modelled: stroke, haul, water anchor, wind, stretch. Nothing was compared with a filmed
/// cast.
/// Method: RK4 in x on a grid that ends at every breakpoint and resolves M/(mu + need), pieces
/// shorter than its steps taken together at their mean; where the leg is nearly at rest, steps are
/// divided so that speeds change by no more than a fifth. Within 1e-4 of the same on a grid of 5 mm
/// for rigs as they are fished, 2e-3 for any that `check` accepts.
/// Cost: about 70 ns a step, 50-100 steps for a usual rig.
/// Ends early, without arriving, where u - v sinks to a twentieth of what it began with.
class RollingLoop {
 public:
  /// `strongest` is the largest drag that `run` will be asked for; it bounds the steps. A step ends
  /// at `mark_m`, too.
  RollingLoop(const AirLine& line, const LoopShape& shape, const LoopDrag& strongest,
              double mark_m = 0.0, double coarsestStep_m = 0.25);

  /// Line in front of the loop as it forms; 0 when the line is too short for a loop.
  [[nodiscard]] double start_m() const { return m_start_m; }
  [[nodiscard]] std::size_t steps() const { return m_run.size(); }

  [[nodiscard]] LoopEnd run(double flyLeg_m_per_s, double rodLeg_m_per_s,
                            const LoopDrag& drag) const;

  /// Line and need from the loop's start to the fly (in falling x): both ends and the middle of
  /// every step of the grid, so both sides of every step of mass.
  [[nodiscard]] std::vector<LoopBalance> balance(const LoopDrag& drag) const;
  /// The one of that list with the least drive between the fly and `window_m`, bare nylon apart; of equals
  /// the one nearest the rod. None where the window holds none of the loop's way.
  [[nodiscard]] std::optional<LoopBalance> leastDrive(const LoopDrag& drag, double window_m) const;

 private:
  /// The line at one place: what does not depend on speed or drag.
  struct Node {
    double x_m, mass_kg_per_m, leg_kg, shadow_m2, skin_m2, bend_m2;
    /// Through three of them, at `share` 0 (a), 1/2 (b), 1 (c).
    static Node between(const Node& a, const Node& b, const Node& c, double share);
  };
  struct Step {
    double length_m;
    double most_m;  ///< the longest step that resolves the leg here
    Node rodSide, middle, flySide;
    double massKept = 1.0;  ///< leg after / leg before a point mass at the fly side
    bool entersNylon = false;
    bool bareNylon = false;
    std::size_t part = 0;
  };
  struct Motion;
  void build(const AirLine& line, const LoopDrag& strongest, double mark_m, double coarsestStep_m);
  [[nodiscard]] Node nodeAt(double x_m, double mass_kg_per_m, double diameter_m, double leg_kg,
                            double shadow_m2) const;
  [[nodiscard]] Node nodeAt(const AirPiece& piece, double x_m, double leg_kg,
                            double shadow_m2) const;
  void gather();
  [[nodiscard]] Step together(std::size_t first, std::size_t last) const;
  [[nodiscard]] LoopBalance balanceAt(const Node& node, const LoopDrag& drag) const;
  [[nodiscard]] LoopBalance balanceAt(const Step& step, const Node& node, const LoopDrag& drag) const;

  LoopShape m_shape;
  double m_length_m;
  double m_nylon_m;
  double m_start_m;
  std::vector<Step> m_steps;  ///< from the loop's start to the fly, piece by piece
  std::vector<Step> m_run;    ///< the same with short pieces taken together
};

}  // namespace grainwise
