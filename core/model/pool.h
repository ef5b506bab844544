// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/bed.h"
#include "core/model/current_fit.h"
#include "core/model/kept.h"
#include "core/units/trade.h"

namespace grainwise {

struct FeetRange {
  Feet low;
  Feet high;
  bool operator==(const FeetRange&) const = default;
};

/// A place on a river and where the fly is wanted there: above the bottom (`clearance`) or below
/// the surface (`wantedDepth`), one of the two or neither.
struct Pool {
  std::string name;
  FeetPerSecond surfaceSpeed;
  Feet depth;
  std::optional<Celsius> temperature;
  std::optional<GramsPerKilogram> salinity;
  std::optional<Bed> bed;
  std::optional<Degrees> angle;
  std::optional<Seconds> mend;
  std::optional<FeetRange> clearance;
  std::optional<FeetRange> wantedDepth;
  std::optional<std::string> note;
  std::optional<CurrentFit> measured;  ///< of the surface speed
  Kept kept;
  bool operator==(const Pool&) const = default;
};

struct Pools {
  std::vector<Pool> pools;
  Kept kept;
  bool operator==(const Pools&) const = default;
};

}  // namespace grainwise
