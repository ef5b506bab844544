// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

/// Drag of a long smooth cylinder lying across a flow. With u the speed across, d the diameter, rho
/// the density, mu the viscosity and Re = rho u d / mu, the force per length is
/// 1/2 rho Cd(Re) d u^2 = 1/2 mu G(Re) u with G = Cd Re.
namespace grainwise {

/// Above this the boundary layer may trip (drag crisis), which the law does not know; Cd is held.
inline constexpr double kMostReynolds = 2e5;

/// Drag coefficient of a smooth cylinder across the flow.
/// Law: Cd = 11 Re^-0.75 + 0.9 (1 - exp(-1000/Re)) + 1.2 (1 - exp(-(Re/4500)^0.7)).
/// Source: N.-S. Cheng (2013), J. Hydraul. Eng. 139(6), 670-673. Valid 0.02 < Re < 2e5 (held at its end
/// value above, run on below); within 10 % of Wieselsberger's measurements
/// from Re 8 up. Lines here: Re 20-1500.
double cylinderDragCoefficient(double re);

/// G = Cd Re and its logarithmic slope d ln G / d ln Re.
struct DragAt {
  double g = 0.0;
  double slope = 0.0;
};
/// From the law itself; 60-100 ns.
DragAt cylinderDrag(double re);

/// The same law tabulated over q = Re^(1/4) in cells of 0.02, linear between: a few ns, within 7e-5
/// of the law. `slope` is the slope of the tabulated line itself, so that a
/// Newton method converges on what is computed.
class DragTable {
 public:
  DragTable();
  [[nodiscard]] DragAt at(double re) const {
    const double q = std::sqrt(std::sqrt(re));
    const double place = q * (1.0 / kCell);
    const std::size_t cell = std::min(static_cast<std::size_t>(place), kCells - 1);
    const double rise = m_g[cell + 1] - m_g[cell];
    const double g = m_g[cell] + rise * (place - static_cast<double>(cell));
    if (re > kMostReynolds) return {m_g[kCells] * (re / m_mostRe), 1.0};
    return {g, g > 0.0 ? 0.25 * rise * place / g : 0.25};
  }
  /// G alone, for marching.
  [[nodiscard]] double g(double re) const {
    if (re > kMostReynolds) return m_g[kCells] * (re / m_mostRe);
    return gAtQ(std::sqrt(std::sqrt(re)));
  }
  /// The same for a caller that has q = Re^(1/4) at hand; the last cell runs on beyond Re 2e5.
  [[nodiscard]] double gAtQ(double q) const {
    const double place = q * (1.0 / kCell);
    const std::size_t cell = std::min(static_cast<std::size_t>(place), kCells - 1);
    return m_g[cell] + (m_g[cell + 1] - m_g[cell]) * (place - static_cast<double>(cell));
  }

 private:
  static constexpr double kCell = 0.02;
  static constexpr std::size_t kCells = 1058;  // the last q is 21.16, Re just over 2e5
  std::array<double, kCells + 1> m_g;
  double m_mostRe;
};

/// The one table; built once, never changed.
const DragTable& dragTable();

}  // namespace grainwise
