// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "core/model/wording.h"

/// Every limit on what may be typed, in the unit of the file key. Ends are included unless the
/// lower one is `open` ("over 0"). The limits bind what is typed, never what is derived.
namespace grainwise {

struct Limit {
  const char* what;  ///< what the user calls it: "length", "sink rate"
  const char* unit;  ///< as in "0 to 20 in/s"; "" for a bare number
  double low;
  double high;
  bool open = false;

  [[nodiscard]] constexpr bool holds(double v) const {
    return (open ? v > low : v >= low) && v <= high;  // false for NaN
  }
};

namespace limits {
inline constexpr Limit kLength{"length", "ft", 0, 300, true};
inline constexpr Limit kGrainsPerFoot{"grains per foot", "gr/ft", 0, 100, true};
inline constexpr Limit kDiameter{"diameter", "in", 0.001, 0.5};
inline constexpr Limit kSinkRate{"sink rate", "in/s", 0, 20, true};
inline constexpr Limit kRateOff{"uncertainty of the sink rate", "in/s", 0, 20};
inline constexpr Limit kDensity{"density", "g/cm3", 0.3, 20};
inline constexpr Limit kLabel{"label mass", "gr", 0, 5000, true};
inline constexpr Limit kWeighed{"weighed mass", "gr", 0, 5000, true};
inline constexpr Limit kLoop{"loop mass", "gr", 0, 50};
inline constexpr Limit kFlyMass{"fly mass", "gr", 0, 500};
inline constexpr Limit kDragArea{"drag area", "cm2", 0, 100};
inline constexpr Limit kRodLength{"rod length", "ft", 0, 30, true};
inline constexpr Limit kLineNumber{"line number", "", 0, 16};
inline constexpr Limit kHands{"number of hands", "", 1, 2};
inline constexpr Limit kWindow{"grain window", "gr", 0, 5000};
inline constexpr Limit kSurfaceSpeed{"surface speed", "ft/s", 0, 15};
inline constexpr Limit kSpeedOff{"uncertainty of the speed", "ft/s", 0, 15};
inline constexpr Limit kFlyDepth{"depth of the fly", "ft", 0, 60, true};
inline constexpr Limit kDepth{"depth", "ft", 0.2, 60};
inline constexpr Limit kTemperature{"temperature", "C", 0, 35};
inline constexpr Limit kSalinity{"salinity", "g/kg", 0, 45};
inline constexpr Limit kLineSpeed{"line speed", "ft/s", 0, 200, true};
inline constexpr Limit kCastLoop{"loop", "ft", 0.3, 15};
inline constexpr Limit kLaunch{"launch angle", "deg", -10, 45};
inline constexpr Limit kRodTip{"rod tip height", "ft", 0, 30};
inline constexpr Limit kOverhang{"overhang", "ft", 0, 30};
inline constexpr Limit kAirAltitude{"altitude of the air", "ft", -1500, 20000};
inline constexpr Limit kLineOut{"line out", "ft", 10, 150};
inline constexpr Limit kAngle{"angle", "deg", 0, 89};
inline constexpr Limit kMend{"mend", "s", 0, 30};
inline constexpr Limit kClearance{"clearance", "ft", 0, 60};
inline constexpr Limit kWantedDepth{"wanted depth", "ft", 0, 60};
inline constexpr Limit kFeetLeft{"feet left", "ft", 0, 5000};

inline constexpr int kParts = 64;
inline constexpr int kSections = 64;
inline constexpr int kHeadPieces = 4;
inline constexpr int kStringChars = 4000;
inline constexpr int kFileBytes = 4 * 1024 * 1024;
inline constexpr int kNesting = 32;
}  // namespace limits

/// "over 0 to 300 ft", "0.3 to 20 g/cm3": the range in words.
std::string rangeText(const Limit& limit);
Wording rangeWording(const Limit& limit);
/// "give over 0 to 300 ft".
Wording giveRange(const Limit& limit);

/// The message for a number outside its limit: what is wrong and what would be right; nothing when
/// it is inside. `typed` is the number as it was typed.
struct LimitBreach {
  Wording what;
  Wording fix;
};
std::optional<LimitBreach> breach(const Limit& limit, double value, const std::string& typed = {});

/// Shortest decimal text that reads back as the same double ("13", "0.024"); locale-free.
std::string shortest(double value);

}  // namespace grainwise
