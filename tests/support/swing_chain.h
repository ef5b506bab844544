// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>

#include "core/water/hang.h"
#include "core/water/line_dynamics.h"
#include "tests/support/water_cases.h"

namespace grainwise::test {

/// The longest elements of the usual mesh.
inline double longest_m(WaterPiece::Fineness fineness) {
  const swinging::Mesh usual;
  if (fineness == WaterPiece::Fineness::head) return usual.head_m;
  return fineness == WaterPiece::Fineness::running ? usual.running_m : usual.tip_m;
}

/// A reference case landed, drifted for three seconds and just tied to the rod, in about so many
/// nodes; then run on in steps of one length, halved only where one does not converge.
class SwingChain {
 public:
  SwingChain(const WaterCase& one, std::size_t nodes) : m_scale(scaleFor(one, nodes)), m_line(tied(one, m_scale)) {}

  [[nodiscard]] swinging::LineDynamics& line() { return m_line; }
  [[nodiscard]] double scale() const { return m_scale; }

  /// False where even a tiny step does not converge.
  bool run(double seconds, double step_s) {
    for (double at_s = 0.0, dt_s = step_s; at_s < seconds - 1e-9;) {
      dt_s = std::min({dt_s * kGrowth, step_s, seconds - at_s});
      while (!m_line.step(dt_s)) {
        dt_s *= 0.5;
        if (dt_s < kLeast_s) return false;
      }
      at_s += dt_s;
    }
    return true;
  }

 private:
  static constexpr double kGrowth = 1.4, kLeast_s = 1e-6, kDrift_s = 3.0, kStep_s = 0.02;

  static swinging::LineDynamics tied(const WaterCase& one, double scale) {
    const swinging::Mesh usual;
    swinging::LineDynamics line(one.line, one.river(),
                                {usual.tip_m * scale, usual.head_m * scale, usual.running_m * scale});
    line.land(3.14159265358979 / 4);
    for (double at_s = 0.0; at_s < kDrift_s - 1e-9; at_s += kStep_s) (void)line.step(kStep_s);
    line.tie({0.0, 0.0, 0.6});
    return line;
  }
  static double scaleFor(const WaterCase& one, std::size_t nodes) {
    double low = 0.02, high = 6.0;  // finer elements, more nodes
    for (int i = 0; i < 24; ++i) {
      const double middle = 0.5 * (low + high);
      (tied(one, middle).nodes() > nodes ? low : high) = middle;
    }
    return high;
  }

  double m_scale;
  swinging::LineDynamics m_line;
};

}  // namespace grainwise::test
