// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/numerics/chain.h"

#include <cassert>
#include <utility>

#include "core/numerics/sincos.h"
#include "core/numerics/tridiagonal.h"
#include "core/numerics/wide.h"

namespace grainwise::numerics {

Chain::Chain(double link_m, std::vector<double> nodeMass_kg)
    : m_links(nodeMass_kg.size() - 1),
      m_link_m(link_m),
      m_mass_kg(std::move(nodeMass_kg)),
      m_inverseMass(m_links + 1, 0.0) {
  assert(m_links >= 1 && link_m > 0.0);
  for (std::size_t i = 1; i <= m_links; ++i) {
    assert(m_mass_kg[i] > 0.0);
    m_inverseMass[i] = 1.0 / m_mass_kg[i];
  }
  for (auto* nodes : {&m_forceX, &m_forceY, &m_velocityX, &m_velocityY}) {
    nodes->assign(m_links + 1, 0.0);
  }
  for (auto* perLink : {&m_cos, &m_sin, &m_dot, &m_cross, &m_jumpX, &m_jumpY, &m_diagonal, &m_off,
                        &m_rhs, &m_tension}) {
    perLink->assign(m_links, 0.0);
  }
}

GRAINWISE_WIDE void Chain::move(const double* angle_rad, const double* rate_rad_per_s) {
  sineCosine(m_links, angle_rad, m_cos.data(), m_sin.data());
  double vx = m_velocityX[0];
  double vy = m_velocityY[0];
  for (std::size_t k = 0; k < m_links; ++k) {
    const double speed = m_link_m * rate_rad_per_s[k];
    vx -= speed * m_sin[k];
    vy += speed * m_cos[k];
    m_velocityX[k + 1] = vx;
    m_velocityY[k + 1] = vy;
  }
}

void Chain::setHeldMotion(double velocityX, double velocityY, double accelerationX,
                          double accelerationY) {
  m_velocityX[0] = velocityX;
  m_velocityY[0] = velocityY;
  m_heldX = accelerationX;
  m_heldY = accelerationY;
}

void Chain::place(double* x_m, double* y_m) const {
  x_m[0] = y_m[0] = 0.0;
  for (std::size_t k = 0; k < m_links; ++k) {
    x_m[k + 1] = x_m[k] + m_link_m * m_cos[k];
    y_m[k + 1] = y_m[k] + m_link_m * m_sin[k];
  }
}

GRAINWISE_WIDE void Chain::solve(const double* rate, double* acceleration) {
  const std::size_t n = m_links;
  const double h = m_link_m;
  const double* c = m_cos.data();
  const double* s = m_sin.data();
  const double* inverse = m_inverseMass.data();
  const double* fx = m_forceX.data();
  const double* fy = m_forceY.data();
  double* gx = m_jumpX.data();
  double* gy = m_jumpY.data();
  gx[0] = fx[1] * inverse[1] - m_heldX;
  gy[0] = fy[1] * inverse[1] - m_heldY;
  GRAINWISE_APART
  for (std::size_t k = 1; k < n; ++k) {
    gx[k] = fx[k + 1] * inverse[k + 1] - fx[k] * inverse[k];
    gy[k] = fy[k + 1] * inverse[k + 1] - fy[k] * inverse[k];
  }
  double* diagonal = m_diagonal.data();
  double* off = m_off.data();
  double* rhs = m_rhs.data();
  double* dot = m_dot.data();
  double* cross = m_cross.data();
  GRAINWISE_APART
  for (std::size_t k = 0; k < n; ++k) {
    diagonal[k] = inverse[k] + inverse[k + 1];
    rhs[k] = h * rate[k] * rate[k] + (c[k] * gx[k] + s[k] * gy[k]);
  }
  GRAINWISE_APART
  for (std::size_t k = 0; k + 1 < n; ++k) {
    dot[k] = c[k] * c[k + 1] + s[k] * s[k + 1];
    cross[k] = c[k] * s[k + 1] - s[k] * c[k + 1];  // n_k.e_{k+1} = -n_{k+1}.e_k
    off[k] = -dot[k] * inverse[k + 1];
  }
  double* tension = m_tension.data();
  solveTridiagonal(n, diagonal, off, rhs, tension);
  const double inverseLink = 1.0 / h;
  const auto own = [&](std::size_t k) { return c[k] * gy[k] - s[k] * gx[k]; };
  const auto fromNext = [&](std::size_t k) { return tension[k + 1] * cross[k] * inverse[k + 1]; };
  const auto fromLast = [&](std::size_t k) { return tension[k - 1] * cross[k - 1] * inverse[k]; };
  if (n == 1) {
    acceleration[0] = own(0) * inverseLink;
    return;
  }
  acceleration[0] = (own(0) + fromNext(0)) * inverseLink;
  GRAINWISE_APART
  for (std::size_t k = 1; k + 1 < n; ++k) {
    acceleration[k] = ((own(k) + fromNext(k)) - fromLast(k)) * inverseLink;
  }
  acceleration[n - 1] = (own(n - 1) - fromLast(n - 1)) * inverseLink;
}

double Chain::kineticEnergy_J() const {
  double sum = 0.0;
  for (std::size_t i = 1; i <= m_links; ++i) {
    const double speed2 = m_velocityX[i] * m_velocityX[i] + m_velocityY[i] * m_velocityY[i];
    sum += 0.5 * m_mass_kg[i] * speed2;
  }
  return sum;
}

}  // namespace grainwise::numerics
