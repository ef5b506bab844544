// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/kept.h"

#include <algorithm>

#include "core/model/limits.h"

namespace grainwise {

std::string digitsOf(const Kept& kept, const std::string& key) {
  for (const Kept::Entry& entry : kept.digits) {
    if (entry.key == key) return entry.text;
  }
  return {};
}

void keepDigits(Kept& kept, const std::string& key, double value, const std::string& digits) {
  std::erase_if(kept.digits, [&](const Kept::Entry& entry) { return entry.key == key; });
  if (!digits.empty() && digits != shortest(value)) kept.digits.push_back({key, digits});
}

}  // namespace grainwise
