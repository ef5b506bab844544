// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>

#include "core/units/quantity.h"

/// Comparing a computed reading with a limit: one that lies on the limit but for rounding counts as
/// on it, so that 9 gr/ft behind 10 is a ratio of 0.9 whatever the last bit says.
namespace grainwise {

inline constexpr double kOnTheLimit = 1e-9;  ///< relative; thousands of times the sums' rounding

inline bool over(double reading, double limit) {
  return reading > limit + kOnTheLimit * std::abs(limit);
}
inline bool under(double reading, double limit) {
  return reading < limit - kOnTheLimit * std::abs(limit);
}
template <class Tag>
bool over(Quantity<Tag> reading, Quantity<Tag> limit) {
  return over(reading.value(), limit.value());
}

}  // namespace grainwise
