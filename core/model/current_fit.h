// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/model/kept.h"
#include "core/units/trade.h"

namespace grainwise {

/// What a measured depth of the fly said of a current. It holds as long as the surface speed beside
/// it is `speed`; a speed typed over it makes it history. What was stated before is never lost.
struct CurrentFit {
  FeetPerSecond speed;                     ///< at the surface, explains the measured depth
  std::optional<FeetPerSecond> plusMinus;  ///< four times out of five
  std::optional<FeetPerSecond> stated;     ///< before it was measured
  std::optional<Feet> flyDepth;            ///< as measured
  std::optional<std::string> on;           ///< ISO 8601 date
  Kept kept;
  bool operator==(const CurrentFit&) const = default;
};

/// What was measured, as long as it holds beside this surface speed; else null.
inline const CurrentFit* holding(const std::optional<CurrentFit>& fit,
                                 const std::optional<FeetPerSecond>& surface) {
  return fit && surface && fit->speed == *surface ? &*fit : nullptr;
}

}  // namespace grainwise
