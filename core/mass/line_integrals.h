// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

#include "core/material/section_properties.h"

/// Closed integrals over a piece of line whose mass per foot runs by one of the two mass laws.
/// With a and b the mass per foot at the piece's ends (gr/ft) and L its length (ft):
///   linear:            mass L (a + b)/2,              centroid share (a + 2b)/(3 (a + b))
///   diameter squared:  mass L (a + sqrt(ab) + b)/3,   centroid share (a + 2 sqrt(ab) + 3b)/(4 (a + sqrt(ab) + b))
/// A part of a piece follows the same law with its own ends, so no difference of two large numbers
/// is ever taken. Source: the integrals themselves. Exact to rounding; any a, b >= 0, L >= 0.
namespace grainwise {

/// Grains of a piece of `length`.
inline Grains pieceMass(MassLaw law, Feet length, GrainsPerFoot rodEnd, GrainsPerFoot flyEnd) {
  const double a = rodEnd.value();
  const double b = flyEnd.value();
  if (law == MassLaw::linear) return Grains(length.value() * (a + b) / 2.0);
  return Grains(length.value() * (a + std::sqrt(a * b) + b) / 3.0);
}

/// Where its centre of mass lies, 0 at the rod end to 1 at the fly end; 0.5 for a piece of no mass.
inline double pieceCentroid(MassLaw law, GrainsPerFoot rodEnd, GrainsPerFoot flyEnd) {
  const double a = rodEnd.value();
  const double b = flyEnd.value();
  if (a + b <= 0.0) return 0.5;
  if (law == MassLaw::linear) return (a + 2.0 * b) / (3.0 * (a + b));
  const double mixed = std::sqrt(a * b);
  return (a + 2.0 * mixed + 3.0 * b) / (4.0 * (a + mixed + b));
}

/// A sum that carries what rounding lost (Neumaier 1974, Z. angew. Math. Mech. 54:39; from memory).
class ExactSum {
 public:
  ExactSum& operator+=(double term) {
    const double sum = m_sum + term;
    m_lost += std::abs(m_sum) >= std::abs(term) ? (m_sum - sum) + term : (term - sum) + m_sum;
    m_sum = sum;
    return *this;
  }
  [[nodiscard]] double value() const { return m_sum + m_lost; }

 private:
  double m_sum = 0.0;
  double m_lost = 0.0;
};

}  // namespace grainwise
