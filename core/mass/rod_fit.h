// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "core/mass/junctions.h"
#include "core/mass/profile.h"

namespace grainwise {

enum class HeadVerdict { fits, touchLight, touchHeavy, wrongLight, wrongHeavy };
enum class LengthVerdict { usual, shortish, longish, tooShort, tooLong };

/// Working length in rods.
struct LengthBand {
  double low, usualLow, usualHigh, high;
  bool operator==(const LengthBand&) const = default;
};

/// Common practice, no source; the tolerances of the window are ours. On two-handed rods the band of a
/// short head or a long belly is that of the head with its tip.
struct RodLimits {
  Grains inside{15.0};  ///< within this of the window: fits
  Grains touch{40.0};   ///< up to this: a touch light or heavy; beyond: wrong head for this rod
  LengthBand shortHead{2.0, 2.3, 2.9, 3.2};
  LengthBand shortOneHand{2.0, 2.2, 2.8, 3.2};  ///< a short head on a single-hand rod
  LengthBand fine{2.0, 2.3, 3.0, 3.3};
  LengthBand longBelly{3.3, 3.8, 5.0, 5.5};
  bool operator==(const RodLimits&) const = default;
};

/// The head against the rod. Absent members: the rod, the head or its style is not known.
struct RodFit {
  std::optional<GrainWindow> window;
  bool windowFromLineNumber = false;  ///< our default table, not the rod's own figure
  std::optional<Grains> head;         ///< all head pieces
  std::optional<HeadVerdict> headVerdict;
  std::optional<Feet> workingLength;  ///< heads and tips; style fine: heads alone
  std::optional<double> lengthRatio;  ///< / rod length
  /// Absent where no rule speaks: single-hand heads; short heads and long bellies without their tip.
  std::optional<LengthBand> lengthBand;
  std::optional<LengthVerdict> lengthVerdict;
};

/// The style of the head: that of its first piece which is not an extension.
std::optional<Style> headStyle(const Rig& rig);

/// Defaults from a two-hand line number alone (ours): short and fine #3-#10, long belly #6-#10.
/// Nothing outside them, for a number between two, or for single-hand heads.
std::optional<GrainWindow> defaultWindow(Style style, double lineNumber);

RodFit rodFit(const Rig& rig, const MassProfile& profile, const RodLimits& limits = {});
Grade grade(HeadVerdict verdict);
Grade grade(LengthVerdict verdict);

}  // namespace grainwise
