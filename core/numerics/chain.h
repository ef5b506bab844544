// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <vector>

/// Planar motion of an inextensible line: a chain of rigid, massless links of equal length with
/// point masses at the nodes, node 0 held, node N free. Plain SI.
namespace grainwise::numerics {

/// The accelerations of the chain's angles under given forces. Unknowns are the link angles phi_k
/// (rad, from the x axis, counter-clockwise) and their rates omega_k, so that no link can stretch
/// and no constraint drifts. With h the link's length (m), m_i the node masses (kg), F_i the force
/// on node i without the links' (N), G_i = F_i/m_i, G_0 the acceleration of the held end (m/s2),
/// e_k = (cos phi_k, sin phi_k), n_k = (-sin phi_k, cos phi_k), T_k the tension of link k (N, pull
/// positive), v_{k+1} = v_k + h omega_k n_k, and 1/m_0 := 0, T_N := 0:
///   T_k (1/m_k + 1/m_{k+1}) - T_{k-1} (e_{k-1}.e_k)/m_k - T_{k+1} (e_k.e_{k+1})/m_{k+1}
///       = h omega_k^2 + e_k.(G_{k+1} - G_k)
///   omega_k' = n_k.[G_{k+1} - G_k + T_{k+1} e_{k+1}/m_{k+1} + T_{k-1} e_{k-1}/m_k]/h
/// Source: Newton's second law of each node with the second derivative of the length constraint
/// (derived here; the tridiagonal form is that of Tomaszewski, Pieranski & Geminard 2006, Am. J.
/// Phys. 74:776, from memory). The matrix is diagonally dominant: it always has a solution.
/// Use: `move` (angles and rates to directions and velocities), fill the forces, `solve`.
/// Cost: linear in N, about 13 ns a link for both.
class Chain {
 public:
  /// `nodeMass_kg[i]` is node i's mass, all over 0 from node 1 on; node 0's counts nothing.
  Chain(double link_m, std::vector<double> nodeMass_kg);

  [[nodiscard]] std::size_t links() const { return m_links; }
  [[nodiscard]] double link_m() const { return m_link_m; }
  [[nodiscard]] const std::vector<double>& nodeMass_kg() const { return m_mass_kg; }

  /// Directions of the links and velocities of the nodes.
  void move(const double* angle_rad, const double* rate_rad_per_s);
  /// Angular accelerations and tensions under `forceX`, `forceY`.
  void solve(const double* rate_rad_per_s, double* acceleration_rad_per_s2);
  /// Places of all N + 1 nodes, node 0 at the origin; of the angles last given to `move`.
  void place(double* x_m, double* y_m) const;

  double* forceX_N() { return m_forceX.data(); }  ///< N + 1 entries; entry 0 counts nothing
  double* forceY_N() { return m_forceY.data(); }
  /// How the held end moves: its velocity from the next `move`, its acceleration from the next
  /// `solve` on. Still at first.
  void setHeldMotion(double velocityX_m_per_s, double velocityY_m_per_s,
                     double accelerationX_m_per_s2, double accelerationY_m_per_s2);

  [[nodiscard]] const double* cosine() const { return m_cos.data(); }
  [[nodiscard]] const double* sine() const { return m_sin.data(); }
  [[nodiscard]] const double* velocityX_m_per_s() const { return m_velocityX.data(); }
  [[nodiscard]] const double* velocityY_m_per_s() const { return m_velocityY.data(); }
  [[nodiscard]] const std::vector<double>& tension_N() const { return m_tension; }

  /// Of the state last given to `move`.
  [[nodiscard]] double kineticEnergy_J() const;

 private:
  std::size_t m_links;
  double m_link_m;
  double m_heldX = 0.0, m_heldY = 0.0;                                 // acceleration of node 0
  std::vector<double> m_mass_kg, m_inverseMass;                        // N + 1
  std::vector<double> m_forceX, m_forceY, m_velocityX, m_velocityY;    // N + 1
  std::vector<double> m_cos, m_sin, m_dot, m_cross, m_jumpX, m_jumpY;  // N
  std::vector<double> m_diagonal, m_off, m_rhs, m_tension;             // N
};

}  // namespace grainwise::numerics
