// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <vector>

/// Ordinary differential equations y' = f(y), explicit, one step at a time. The caller chooses each
/// step, since only it knows what limits it (core/air/cast.cpp: tension, bending, drag, turning).
namespace grainwise::numerics {

/// The classical Runge-Kutta method of order four for a handful of unknowns.
/// y(h) = y + h (k1 + 2 k2 + 2 k3 + k4)/6; `f(share, y)` with `share` 0, 1/2 or 1 of the step.
/// Source: Hairer, Norsett & Wanner (1993), Solving ordinary differential equations I, table II.1.2
/// (from memory). Error of one step O(h^5); stable for h |lambda| < 2.78 on the negative real axis
/// and 2.82 on the imaginary one.
/// Takes `k1` = f(0, y) from a caller who needs it to choose h.
template <std::size_t N, class F>
std::array<double, N> rk4(const std::array<double, N>& y, const std::array<double, N>& k1, double h,
                          F&& f) {
  using State = std::array<double, N>;
  const auto ahead = [&](const State& slope, double by) {
    State moved;
    for (std::size_t i = 0; i < N; ++i) moved[i] = y[i] + by * slope[i];
    return moved;
  };
  const State k2 = f(0.5, ahead(k1, 0.5 * h));
  const State k3 = f(0.5, ahead(k2, 0.5 * h));
  const State k4 = f(1.0, ahead(k3, h));
  State end;
  for (std::size_t i = 0; i < N; ++i) {
    end[i] = y[i] + (h / 6.0) * ((k1[i] + k4[i]) + 2.0 * (k2[i] + k3[i]));
  }
  return end;
}

template <std::size_t N, class F>
std::array<double, N> rk4(const std::array<double, N>& y, double h, F&& f) {
  return rk4(y, f(0.0, y), h, f);
}

/// The same for many unknowns, with its own working memory and the first slope supplied by the
/// caller, who needs it to choose the step.
class Rk4 {
 public:
  explicit Rk4(std::size_t unknowns)
      : m_stage(unknowns), m_k2(unknowns), m_k3(unknowns), m_k4(unknowns) {}

  /// `to` = `from` after `h`, given `k1` = f(`from`); `f(y, slope)` takes pointers to the first
  /// unknown. `to` may be `from`.
  template <class F>
  void step(const std::vector<double>& from, const std::vector<double>& k1, double h, F&& f,
            std::vector<double>& to) {
    stage(from, k1, 0.5 * h);
    f(m_stage.data(), m_k2.data());
    stage(from, m_k2, 0.5 * h);
    f(m_stage.data(), m_k3.data());
    stage(from, m_k3, h);
    f(m_stage.data(), m_k4.data());
    const std::size_t n = m_stage.size();
    const double sixth = h / 6.0;
    for (std::size_t i = 0; i < n; ++i) {
      to[i] = from[i] + sixth * ((k1[i] + m_k4[i]) + 2.0 * (m_k2[i] + m_k3[i]));
    }
  }

 private:
  void stage(const std::vector<double>& from, const std::vector<double>& slope, double by) {
    const std::size_t n = m_stage.size();
    for (std::size_t i = 0; i < n; ++i) m_stage[i] = from[i] + by * slope[i];
  }

  std::vector<double> m_stage, m_k2, m_k3, m_k4;
};

}  // namespace grainwise::numerics
