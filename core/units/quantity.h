// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>

namespace grainwise {

/// A number that knows its unit. `Tag` names the unit, so feet never meet grains by accident.
/// Construction is explicit; sums and comparisons stay within one unit; the ratio of two equal
/// units is a plain number. Conversions between units live in si.h and nowhere else.
template <class Tag>
class Quantity {
 public:
  constexpr Quantity() = default;
  explicit constexpr Quantity(double value) : m_value(value) {}

  /// The bare number, in the unit that the type names.
  [[nodiscard]] constexpr double value() const { return m_value; }

  constexpr auto operator<=>(const Quantity&) const = default;
  constexpr bool operator==(const Quantity&) const = default;

  constexpr Quantity operator-() const { return Quantity(-m_value); }
  constexpr Quantity& operator+=(Quantity other) {
    m_value += other.m_value;
    return *this;
  }
  constexpr Quantity& operator-=(Quantity other) {
    m_value -= other.m_value;
    return *this;
  }
  friend constexpr Quantity operator+(Quantity a, Quantity b) {
    return Quantity(a.m_value + b.m_value);
  }
  friend constexpr Quantity operator-(Quantity a, Quantity b) {
    return Quantity(a.m_value - b.m_value);
  }
  friend constexpr Quantity operator*(Quantity a, double k) { return Quantity(a.m_value * k); }
  friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(a.m_value * k); }
  friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.m_value / k); }
  friend constexpr double operator/(Quantity a, Quantity b) { return a.m_value / b.m_value; }

 private:
  double m_value = 0.0;
};

}  // namespace grainwise
