// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/bed.h"
#include "core/model/current_fit.h"
#include "core/model/part.h"

namespace grainwise {

/// A range of head grains that loads a rod, ends included.
struct GrainWindow {
  Grains low;
  Grains high;
  bool operator==(const GrainWindow&) const = default;
};

struct Rod {
  struct Windows {
    std::optional<GrainWindow> shortHead, fine, longBelly, singleHand;
    Kept kept;
    bool operator==(const Windows&) const = default;
  };
  std::optional<Feet> length;
  std::optional<double> lineNumber;
  std::optional<int> hands;             ///< 1 or 2, default 2
  std::optional<Windows> windows;       ///< by head style
  std::optional<GrainWindow> window;    ///< taken for the style that is fitted
  Kept kept;
  bool operator==(const Rod&) const = default;
};

/// The river at one place. Absent members take the defaults of core/analysis/conditions.h.
struct Water {
  std::optional<std::string> name;
  std::optional<FeetPerSecond> surfaceSpeed;
  std::optional<Feet> depth;
  std::optional<Celsius> temperature;
  std::optional<GramsPerKilogram> salinity;
  std::optional<Bed> bed;  ///< none: the usual one, as over gravel
  std::optional<CurrentFit> measured;  ///< of the surface speed
  Kept kept;
  bool operator==(const Water&) const = default;
};

struct Cast {
  std::optional<FeetPerSecond> lineSpeed;
  std::optional<Feet> loop;
  std::optional<Degrees> launch;
  std::optional<Feet> rodTip;
  std::optional<Feet> overhang;
  std::optional<Feet> airAltitude;  ///< of the river above the sea; none: the usual air
  Kept kept;
  bool operator==(const Cast&) const = default;
};

struct Swing {
  std::optional<Feet> lineOut;
  std::optional<Degrees> angle;
  std::optional<Seconds> mend;
  Kept kept;
  bool operator==(const Swing&) const = default;
};

/// Everything between the reel and the water, as one plain value. Parts stand in the order from rod
/// to fly; a rig that is not complete (no head yet, no fly yet) is valid.
struct Rig {
  std::string name;
  std::optional<std::string> notes;
  std::optional<Rod> rod;
  std::vector<Part> parts;
  std::optional<Water> water;
  std::optional<Cast> cast;
  std::optional<Swing> swing;
  Kept kept;
  bool operator==(const Rig&) const = default;

  /// Index of the fly, if there is one.
  [[nodiscard]] std::optional<std::size_t> flyIndex() const;
};

}  // namespace grainwise
