// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

#include "core/units/trade.h"

namespace grainwise {

/// A place along the rig, in feet from the rear of the head towards the fly. The running line
/// stands at negative stations. Two stations have a distance (`Feet`) but no sum.
class Station {
 public:
  constexpr Station() = default;
  explicit constexpr Station(double feet) : m_feet(feet) {}

  [[nodiscard]] constexpr double feet() const { return m_feet; }
  constexpr auto operator<=>(const Station&) const = default;
  constexpr bool operator==(const Station&) const = default;

  friend constexpr Station operator+(Station at, Feet ahead) {
    return Station(at.m_feet + ahead.value());
  }
  friend constexpr Station operator-(Station at, Feet back) {
    return Station(at.m_feet - back.value());
  }
  friend constexpr Feet operator-(Station to, Station from) {
    return Feet(to.m_feet - from.m_feet);
  }

 private:
  double m_feet = 0.0;
};

}  // namespace grainwise
