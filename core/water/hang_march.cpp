// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/hang_march.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/material/drag.h"
#include "core/units/si.h"

namespace grainwise::hanging {
namespace {

constexpr double kSkinFriction = 0.010;  // G. I. Taylor (1952); coefficient from memory
constexpr double kFirstStep_m = 0.02;
constexpr double kGrowth = 1.35;

double longest_m(WaterPiece::Fineness fineness) {
  switch (fineness) {
    case WaterPiece::Fineness::tip:
      return 0.16;
    case WaterPiece::Fineness::head:
      return 0.2;
    case WaterPiece::Fineness::running:
      return 0.5;
  }
  return 0.16;
}

Element elementOf(const WaterPiece& piece, double from, double to, const Fluid& fluid) {
  Element e;
  e.length_m = (to - from) * piece.length_m;
  for (int k = 0; k < 3; ++k) {
    const double share = from + 0.5 * k * (to - from);
    const double d_m = piece.diameter_m(share), m = piece.mass_kg_per_m(share);
    e.diameter_m[k] = d_m;
    e.wet_n_per_m[k] =
        (m - fluid.rho_kg_per_m3 * std::numbers::pi / 4.0 * d_m * d_m) * si::kGravity_m_per_s2;
    if (k == 1) e.dry_n_per_m = m * si::kGravity_m_per_s2;
  }
  return e;
}

double loopsWet_n(const WaterPiece& piece, const Fluid& fluid) {
  const double d_m = piece.diameter_m(0.0);
  const double area_m2 = std::numbers::pi / 4.0 * d_m * d_m;
  const double sunk = 1.0 - fluid.rho_kg_per_m3 * area_m2 / piece.mass_kg_per_m(0.0);
  return piece.loopsFlyEnd_kg * sunk * si::kGravity_m_per_s2;
}

State plus(const State& a, const State& k, double h) {
  return {a.tx_n + h * k.tx_n, a.tz_n + h * k.tz_n, a.z_m + h * k.z_m, a.x_m + h * k.x_m};
}

/// The quadratic through values at 0, 1/2 and 1.
double quadratic(const double (&v)[3], double x) {
  return v[0] + x * ((4.0 * v[1] - 3.0 * v[0] - v[2]) + x * (2.0 * (v[0] + v[2]) - 4.0 * v[1]));
}

/// The share of a step at which the cubic with these end values and slopes (times h) crosses zero.
double crossing(double a, double da, double b, double db) {
  if (a <= 0.0) return 0.0;
  double low = 0.0, high = 1.0;
  for (int i = 0; i < 40; ++i) {
    const double t = 0.5 * (low + high);
    const double value = a + t * (da + t * ((3.0 * (b - a) - 2.0 * da - db) +
                                            t * (2.0 * (a - b) + da + db)));
    (value > 0.0 ? low : high) = t;
  }
  return 0.5 * (low + high);
}

double hermite(double a, double da, double b, double db, double t) {
  return a + t * (da + t * ((3.0 * (b - a) - 2.0 * da - db) + t * (2.0 * (a - b) + da + db)));
}

/// From the rod end down: `demand` is the sinking line behind that nothing has carried so far, `lift`
/// what the present floating stretch has gathered. A stretch that cannot carry its half is drawn under
/// and only lightens what lies behind it.
void markSurfacing(std::vector<Element>& all) {
  double demand_n = 0.0, lift_n = 0.0;
  for (auto e = all.rbegin(); e != all.rend(); ++e) {
    const double wet_n = e->wet_n_per_m[1] * e->length_m;
    if (wet_n > 0.0) {
      if (lift_n > 0.0) demand_n = lift_n >= 0.5 * demand_n ? 0.0 : demand_n - lift_n;
      lift_n = 0.0;
      demand_n += wet_n;
      continue;
    }
    lift_n -= wet_n;
    e->surfaces = lift_n >= 0.5 * demand_n;
  }
}

}  // namespace

std::vector<Element> elements(const WaterLine& line, const River& river) {
  std::vector<Element> all;
  all.reserve(160);
  double step_m = kFirstStep_m;
  for (const WaterPiece& piece : line.pieces) {
    const double most_m = longest_m(piece.fineness);
    double at_m = 0.0;
    bool first = true;
    while (at_m < piece.length_m) {
      step_m = std::min(step_m * kGrowth, most_m);
      double next_m = at_m + step_m;
      if (next_m > piece.length_m - 0.3 * step_m) next_m = piece.length_m;
      all.push_back(elementOf(piece, at_m / piece.length_m, next_m / piece.length_m, river.fluid));
      if (first) all.back().loopsFlyEnd_n = loopsWet_n(piece, river.fluid);
      first = false;
      at_m = next_m;
    }
  }
  markSurfacing(all);
  return all;
}

double skinDrag_n_per_m(double diameter_m, double u_m_per_s, const Fluid& fluid) {
  return 0.5 * fluid.rho_kg_per_m3 * std::numbers::pi * diameter_m * kSkinFriction * u_m_per_s *
         u_m_per_s;
}

Marcher::Marcher(const std::vector<Element>& elements, const River& river, const HangForces& forces,
                 bool toRod)
    : m_elements(elements),
      m_river(river),
      m_forces(forces),
      m_toRod(toRod),
      m_drag(dragTable()),
      m_inverseNu_s_per_m2(1.0 / river.fluid.nu_m2_per_s()),
      m_across_pa_s(0.5 * river.fluid.mu_pa_s * river.acrossDragFactor),
      m_along_pa_s(2.7 * river.fluid.mu_pa_s),
      m_skin_kg_per_m3(0.5 * river.fluid.rho_kg_per_m3 * std::numbers::pi * kSkinFriction) {}

State Marcher::slope(const State& at, double wet_n_per_m, double dry_n_per_m, double d_m) const {
  const double tension_n = std::sqrt(at.tx_n * at.tx_n + at.tz_n * at.tz_n);
  const double inverse = tension_n > 0.0 ? 1.0 / tension_n : 0.0;
  const double c = tension_n > 0.0 ? -at.tx_n * inverse : 1.0;
  const double s = at.tz_n * inverse;
  if (m_toRod && at.z_m > 0.0) return {0.0, dry_n_per_m, s, -c};
  const double u = m_river.current_m_per_s(at.z_m);
  const double across = u * std::abs(s), along = u * std::abs(c);
  const double root = std::sqrt(across * (d_m * m_inverseNu_s_per_m2));
  const double kn = m_forces.acrossCd
                        ? 0.5 * m_river.fluid.rho_kg_per_m3 * *m_forces.acrossCd * d_m * across
                        : m_across_pa_s * m_drag.gAtQ(std::sqrt(root));
  if (m_forces.along_n_per_m) {
    const double along_n = c < 0.0 ? -*m_forces.along_n_per_m : *m_forces.along_n_per_m;
    const double across_n = kn * u * s;
    return {-across_n * s - along_n * c, wet_n_per_m - across_n * c + along_n * s, s, -c};
  }
  const double kt = std::max(m_along_pa_s * root, m_skin_kg_per_m3 * d_m * along);
  return {-u * (kn * s * s + kt * c * c), wet_n_per_m - (kn - kt) * u * s * c, s, -c};
}

March Marcher::march(State state, std::size_t from, double share,
                     std::vector<PathPoint>* path) const {
  double s_m = 0.0;
  for (std::size_t i = 0; i < from; ++i) s_m += m_elements[i].length_m;
  double lowest_z_m = state.z_m;
  for (std::size_t i = from; i < m_elements.size(); ++i) {
    const Element& e = m_elements[i];
    const bool part = i == from && share > 0.0;
    const double left = part ? 1.0 - share : 1.0;
    const double h = e.length_m * left;
    if (part) s_m += e.length_m * share;
    if (!part) state.tz_n += e.loopsFlyEnd_n;
    if (path) path->push_back({s_m, state.x_m, state.z_m});
    const double w0 = part ? quadratic(e.wet_n_per_m, share) : e.wet_n_per_m[0];
    const double w1 = part ? quadratic(e.wet_n_per_m, 1.0 - 0.5 * left) : e.wet_n_per_m[1];
    const double d0 = part ? quadratic(e.diameter_m, share) : e.diameter_m[0];
    const double d1 = part ? quadratic(e.diameter_m, 1.0 - 0.5 * left) : e.diameter_m[1];
    const State k1 = slope(state, w0, e.dry_n_per_m, d0);
    const State k2 = slope(plus(state, k1, 0.5 * h), w1, e.dry_n_per_m, d1);
    const State k3 = slope(plus(state, k2, 0.5 * h), w1, e.dry_n_per_m, d1);
    const State k4 = slope(plus(state, k3, h), e.wet_n_per_m[2], e.dry_n_per_m, e.diameter_m[2]);
    State next = plus(state, k1, h / 6.0);
    next = plus(next, k2, h / 3.0);
    next = plus(next, k3, h / 3.0);
    next = plus(next, k4, h / 6.0);
    lowest_z_m = std::min(lowest_z_m, next.z_m);
    if (e.surfaces && !m_toRod && next.tz_n <= 0.0) {
      const State end = slope(next, e.wet_n_per_m[2], e.dry_n_per_m, e.diameter_m[2]);
      const double t = crossing(state.tz_n, h * k1.tz_n, next.tz_n, h * end.tz_n);
      const double z = hermite(state.z_m, h * k1.z_m, next.z_m, h * end.z_m, t);
      if (path) {
        path->push_back(
            {s_m + t * h, hermite(state.x_m, h * k1.x_m, next.x_m, h * end.x_m, t), z});
      }
      return {true, z, s_m + t * h, lowest_z_m, next};
    }
    state = next;
    s_m += h;
  }
  if (path) path->push_back({s_m, state.x_m, state.z_m});
  return {false, state.z_m, s_m, lowest_z_m, state};
}

}  // namespace grainwise::hanging
