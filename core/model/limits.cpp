// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/limits.h"

#include <array>
#include <charconv>
#include <cmath>

#include "core/model/problem.h"

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

Wording rangeWording(const Limit& limit) {
  if (*limit.unit == '\0') return Problem::tr("%1 to %2").arg(limit.low).arg(limit.high);
  const Wording form = limit.open ? Problem::tr("over %1 to %2 %3") : Problem::tr("%1 to %2 %3");
  return form.arg(limit.low).arg(limit.high).arg(limit.unit);
}

std::string rangeText(const Limit& limit) { return rangeWording(limit).text(); }

Wording giveRange(const Limit& limit) { return Problem::tr("give %1").arg(rangeWording(limit)); }

std::optional<LimitBreach> breach(const Limit& limit, double value, const std::string& typed) {
  if (limit.holds(value)) return std::nullopt;
  const Wording number = typed.empty() ? Wording(value) : Wording(typed);
  return LimitBreach{Problem::tr("%1 %2 is outside its limits").arg(Wording::sentence(limit.what)).arg(number),
                     giveRange(limit)};
}

}  // namespace grainwise
