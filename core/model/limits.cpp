// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/limits.h"

#include <array>
#include <charconv>
#include <cmath>

namespace grainwise {

std::string shortest(double value) {
  // Plain decimals for everyday numbers, so that 0.0001 does not come out as 1e-04.
  const double size = std::abs(value);
  const auto form = (size == 0.0 || (size >= 1e-6 && size < 1e15)) ? std::chars_format::fixed
                                                                   : std::chars_format::general;
  std::array<char, 400> wide{};
  const auto end = std::to_chars(wide.data(), wide.data() + wide.size(), value, form).ptr;
  return std::string(wide.data(), end);
}

std::string rangeText(const Limit& limit) {
  std::string text = limit.open ? "over " : "";
  text += shortest(limit.low) + " to " + shortest(limit.high);
  if (*limit.unit != '\0') text += std::string(" ") + limit.unit;
  return text;
}

std::optional<LimitBreach> breach(const Limit& limit, double value, const std::string& typed) {
  if (limit.holds(value)) return std::nullopt;
  const std::string number = typed.empty() ? shortest(value) : typed;
  return LimitBreach{std::string(limit.what) + " " + number + " is outside its limits",
                     "give " + rangeText(limit)};
}

}  // namespace grainwise
