// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/model/part.h"

namespace grainwise {

/// Parts to build rigs from. Each has an `id` (unique, stable) and a `group`.
struct Shelf {
  std::vector<Part> parts;
  Kept kept;
  bool operator==(const Shelf&) const = default;
};

/// `own` laid over `base`: where both have an id, the part of `own` stands, in the place of the
/// one it replaces; the others of `own` follow at the end.
Shelf merged(const Shelf& base, const Shelf& own);

}  // namespace grainwise
