// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/shelf.h"

#include <algorithm>

namespace grainwise {

Shelf merged(const Shelf& base, const Shelf& own) {
  Shelf result = base;
  for (const Part& part : own.parts) {
    const auto same = std::find_if(result.parts.begin(), result.parts.end(), [&](const Part& p) {
      return p.id && part.id && *p.id == *part.id;
    });
    if (same != result.parts.end()) {
      *same = part;
    } else {
      result.parts.push_back(part);
    }
  }
  return result;
}

}  // namespace grainwise
