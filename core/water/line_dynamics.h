// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/numerics/block_tridiagonal.h"
#include "core/water/water_line.h"

/// The moving line of the swing, in plain SI: nodes joined by one-sided elastic elements, one implicit
/// step at a time. Inner workings of swing.h, apart so that tests can drive them.
namespace grainwise::swinging {

using numerics::Sym3;
using numerics::Vec3;

/// Lengths of elements; the finer, the slower.
struct Mesh {
  double tip_m = 0.16;
  double head_m = 0.32;
  double running_m = 0.8;
};

struct StepLimits {
  double newton_m_per_s = 5e-4;  ///< converged when no node's speed changes by more
  int mostNewton = 8;
};

/// Node 0 is the rod tip, which stands still; the last node is the fly. x downstream, y across, away
/// from the rod, z up; the surface is 0.
///
/// Law: each node carries half of either neighbour element, its weight, its buoyancy and drag times
/// the wet share clamp(1/2 - z/max(d, 3 mm), 0, 1), the drag across and along as in hang.h with the
/// element's tangent, and the water moved along across it (rho pi d^2/4). Elements pull with
/// T = EA/2 (e + sqrt(e^2 + e0^2)), e the strain, e0 = 1e-5, EA = 300 N and more where the current
/// would stretch it by a per cent. The bed pushes and rubs (0.4).
/// Method: implicit Euler, (M/dt + C + dt K) dv = -[M (v - v0)/dt - F(x0 + dt v, v)] by Newton until
/// dv is nothing; block tridiagonal 3 x 3. First order in dt, unconditionally stable.
class LineDynamics {
 public:
  LineDynamics(const WaterLine& line, const River& river, const Mesh& mesh = {},
               const StepLimits& limits = {});

  /// The line straight on the surface from below the rod tip, `angle` below straight across, moving
  /// with the water, its upper end loose.
  void land(double angle_rad);
  /// Ends the free drift: running line, straight and just tight, joins the loose end to `rodTip`.
  void tie(const Vec3& rodTip);

  /// One step of `dt_s`; false: no convergence within the limits, and nothing has changed.
  [[nodiscard]] bool step(double dt_s);

  [[nodiscard]] std::size_t nodes() const { return m_x.size(); }
  [[nodiscard]] bool tied() const { return m_tied; }
  [[nodiscard]] const std::vector<Vec3>& positions() const { return m_x; }
  [[nodiscard]] const std::vector<Vec3>& velocities() const { return m_v; }
  [[nodiscard]] const Vec3& fly() const { return m_x.back(); }
  [[nodiscard]] const Vec3& flyVelocity() const { return m_v.back(); }
  /// Largest stretch of an element over its length.
  [[nodiscard]] double stretch() const;
  /// Pull in the element between node `i` - 1 and node `i`.
  [[nodiscard]] double tension_n(std::size_t i) const;
  /// Height at which the bed carries: 3 cm above it.
  [[nodiscard]] double bed_m() const { return m_bed_m; }
  /// Newton iterations spent so far.
  [[nodiscard]] long iterations() const { return m_iterations; }
  /// Kinetic and potential energy (in the water), for the tests.
  [[nodiscard]] double energy_j() const;

 private:
  struct Element {  // between node i - 1 and node i, stored at i; halves lie at the nodes
    double length_m = 0.0, diameter_m = 0.0, half_kg = 0.0, halfVolume_m3 = 0.0;
    double loops_m3 = 0.0;  // displaced by the loops at node i
  };
  static Element elementOf(double length_m, double diameter_m, double mass_kg_per_m);
  void append(const WaterPiece& piece, const Mesh& mesh);
  void resize();
  void stiffen();
  void assemble(double dt_s);
  void addElement(std::size_t i, double dt_s);
  void addDrag(std::size_t node, const Element& e, const Vec3& along, double dt_s);
  void addBuoyancy(std::size_t node, double volume_m3, double size_m, double wet, double dt_s);
  void addBed(std::size_t node, double dt_s);
  void addFly(double dt_s);

  River m_river;
  WaterFly m_fly;
  StepLimits m_limits;
  double m_flySize_m = 0.0;
  double m_bed_m = 0.0;
  double m_stiffness_n = 0.0;  ///< EA
  bool m_tied = false;
  Element m_running;  ///< of the line that is fed, by the longest piece
  std::vector<Element> m_elements;
  std::vector<double> m_mass_kg, m_bedStiffness_n_per_m;
  std::vector<Vec3> m_x, m_v, m_x0, m_v0;
  // of the Newton step: A dv = b
  std::vector<Sym3> m_a, m_beside;
  std::vector<Vec3> m_b;
  long m_iterations = 0;
};

}  // namespace grainwise::swinging
