// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/mass/junctions.h"
#include "core/mass/profile.h"

namespace grainwise {

enum class StrokeVerdict { same, adjustLonger, adjustShorter, different };

struct StrokeLimits {
  Feet sameLength{1.0}, adjustLength{3.0};
  double sameMass = 0.08, adjustMass = 0.15;
  Grains slowerLift{50.0};
  bool operator==(const StrokeLimits&) const = default;
};

/// What the stroke depends on, of one rig.
struct StrokeBasis {
  Feet workingLength;  ///< rear of head to end of tip
  Grains mass;         ///< heads, tips and coated leaders
  Grains sinking;
  bool operator==(const StrokeBasis&) const = default;
};
StrokeBasis strokeBasis(const Rig& rig, const MassProfile& profile);

/// A rig's stroke against a reference rig's. Common practice, no source; the limits are ours.
struct Stroke {
  Feet lengthChange;   ///< rig - reference
  double massChange = 0;  ///< relative to the reference
  Grains sinkingChange;
  StrokeVerdict verdict = StrokeVerdict::same;
  bool slowerLift = false;  ///< more than 50 gr change in sinking mass
  bool quickerLift = false; ///< the same change the other way
};
Stroke stroke(const StrokeBasis& reference, const StrokeBasis& rig, const StrokeLimits& limits = {});

}  // namespace grainwise
