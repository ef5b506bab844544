// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/deck.h"

#include <algorithm>

namespace grainwise {

bool staysInFolder(const std::string& name) {
  const bool drive = name.size() > 1 && name[1] == ':';
  if (name.empty() || name.front() == '/' || drive) return false;
  if (name.find_first_of(std::string("\\\0", 2)) != std::string::npos) return false;
  for (std::size_t from = 0; from <= name.size();) {
    const std::size_t to = std::min(name.find('/', from), name.size());
    if (name.compare(from, to - from, "..") == 0) return false;
    from = to + 1;
  }
  return true;
}

}  // namespace grainwise
