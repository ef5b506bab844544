// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/rig.h"

namespace grainwise {

std::optional<std::size_t> Rig::flyIndex() const {
  for (std::size_t i = 0; i < parts.size(); ++i) {
    if (parts[i].kind == PartKind::fly) return i;
  }
  return std::nullopt;
}

}  // namespace grainwise
