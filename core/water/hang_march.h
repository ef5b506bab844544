// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/material/drag.h"
#include "core/water/hang.h"

/// The steady line as an initial-value problem from the fly upstream, in plain SI. Inner workings
/// of hang.h, apart so that tests can march against closed forms.
namespace grainwise::hanging {

/// A step of line with what RK4 needs at its fly end, middle and rod end.
struct Element {
  double length_m = 0.0;
  double wet_n_per_m[3] = {0, 0, 0};  ///< w' = (m - rho A) g
  double dry_n_per_m = 0.0;           ///< m g of its middle, above the surface
  double diameter_m[3] = {0, 0, 0};
  double loopsFlyEnd_n = 0.0;         ///< wet weight of the loops at its fly end
  /// Line that is level here stays at the surface: it floats, and from here on it can carry half of
  /// the sinking line behind it. Otherwise that line draws it under again.
  bool surfaces = false;
};

/// Cuts the line into steps: 0.02 m at the fly (or at `fromPiece`), growing to 0.16 m, 0.2 m in the
/// head, 0.5 m in the running line; ends of sections are ends of steps.
std::vector<Element> elements(const WaterLine& line, const River& river);

/// Drag along a line that lies along a current of `u_m_per_s`, in N/m.
double skinDrag_n_per_m(double diameter_m, double u_m_per_s, const Fluid& fluid);

struct State {
  double tx_n = 0.0;  ///< pull on the fly side, downstream positive
  double tz_n = 0.0;  ///< upwards positive
  double z_m = 0.0;
  double x_m = 0.0;
};

struct March {
  bool level = false;  ///< Tz fell to 0 where the line can stay at the surface
  double end_z_m = 0.0;  ///< there, or at the end of the line
  double end_s_m = 0.0;
  double lowest_z_m = 0.0;
  State last;  ///< at the end of the last whole step
};

class Marcher {
 public:
  /// `toRod`: the line never stays at the surface but leads up to the rod, through air above z = 0.
  Marcher(const std::vector<Element>& elements, const River& river, const HangForces& forces,
          bool toRod);

  /// From `state` at the fly end of element `from`, `share` of it left out (lying on the bed), until
  /// the line stays at the surface or ends. `path`, when given, receives a point a step.
  struct PathPoint {
    double s_m, x_m, z_m;
  };
  March march(State state, std::size_t from = 0, double share = 0.0,
              std::vector<PathPoint>* path = nullptr) const;

 private:
  [[nodiscard]] State slope(const State& at, double wet_n_per_m, double dry_n_per_m,
                            double d_m) const;
  const std::vector<Element>& m_elements;
  const River& m_river;
  HangForces m_forces;
  bool m_toRod;
  const DragTable& m_drag;
  // What every slope multiplies by.
  double m_inverseNu_s_per_m2, m_across_pa_s, m_along_pa_s, m_skin_kg_per_m3;
};

}  // namespace grainwise::hanging
