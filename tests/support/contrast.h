// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <algorithm>
#include <cmath>

namespace grainwise::test {

/// A channel of sRGB, 0 to 1, as light. Source: WCAG 2.1 (2018), relative luminance.
inline double linearLight(double channel) {
  return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

inline double luminance(const QColor& c) {
  return 0.2126 * linearLight(c.redF()) + 0.7152 * linearLight(c.greenF()) + 0.0722 * linearLight(c.blueF());
}

/// Contrast of two colours, 1 to 21. Source: WCAG 2.1 (2018), contrast ratio.
inline double contrast(const QColor& a, const QColor& b) {
  const double x = luminance(a), y = luminance(b);
  return (std::max(x, y) + 0.05) / (std::min(x, y) + 0.05);
}

}  // namespace grainwise::test
