// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/material/drag.h"

namespace grainwise {

double cylinderDragCoefficient(double re) { return cylinderDrag(re).g / re; }

DragAt cylinderDrag(double re) {
  if (re > kMostReynolds) {
    return {cylinderDrag(kMostReynolds).g * (re / kMostReynolds), 1.0};
  }
  const double quarter = std::sqrt(std::sqrt(re));
  const double viscous = 11.0 * quarter;  // 11 Re^-0.75 times Re
  const double wake = std::exp(-1000.0 / re);
  const double turbulence = std::pow(re / 4500.0, 0.7);
  const double shear = std::exp(-turbulence);
  const double g = viscous + re * (0.9 * (1.0 - wake) + 1.2 * (1.0 - shear));
  const double rise = 0.25 * viscous + re * (0.9 * (1.0 - wake) + 1.2 * (1.0 - shear)) -
                      0.9 * 1000.0 * wake + 1.2 * 0.7 * re * turbulence * shear;
  return {g, rise / g};
}

DragTable::DragTable() : m_g{}, m_mostRe(std::pow(kCell * static_cast<double>(kCells), 4)) {
  for (std::size_t i = 1; i <= kCells; ++i) {
    const double q = kCell * static_cast<double>(i);
    m_g[i] = cylinderDrag(q * q * q * q).g;
  }
}

const DragTable& dragTable() {
  static const DragTable table;
  return table;
}

}  // namespace grainwise
