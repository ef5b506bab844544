// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/part.h"

namespace grainwise {

/// Level line left on a spool: by grains per foot (with a rate, or floating) or by diameter and
/// material.
struct Spool {
  std::string name;
  std::optional<GrainsPerFoot> mass;
  std::optional<Inches> diameter;
  std::optional<Material> material;
  std::optional<bool> floats;
  std::optional<InchesPerSecond> sinkRate;
  Feet left;
  Kept kept;
  bool operator==(const Spool&) const = default;
};

struct Spools {
  std::vector<Spool> spools;
  Kept kept;
  bool operator==(const Spools&) const = default;
};

}  // namespace grainwise
