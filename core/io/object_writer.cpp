// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/object_writer.h"

#include <cmath>
#include <stdexcept>

namespace grainwise {

/// The digits as they were typed while they still mean `value`, else the shortest that do.
std::string ObjectWriter::typed(const std::string& key, double value) const {
  if (!std::isfinite(value)) throw std::logic_error("writing a number that is not finite: " + key);
  std::string digits = digitsOf(m_kept, key);
  if (!digits.empty() && jsonNumber(digits) == value) return digits;
  return shortest(value);
}

}  // namespace grainwise
