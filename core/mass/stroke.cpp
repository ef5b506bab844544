// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mass/stroke.h"

#include <cmath>

#include "core/mass/grip.h"
#include "core/mass/on_the_limit.h"

namespace grainwise {
namespace {

/// Relative to the reference; a reference without mass differs by the whole of what is there.
double relativeChange(Grains reference, Grains now) {
  if (reference > Grains(0)) return (now - reference) / reference;
  return now > Grains(0) ? 1.0 : 0.0;
}

StrokeVerdict judge(const Stroke& s, const StrokeLimits& limits) {
  const Feet length(std::abs(s.lengthChange.value()));
  const double mass = std::abs(s.massChange);
  const bool otherLength = over(length, limits.sameLength);
  if (!otherLength && !over(mass, limits.sameMass)) return StrokeVerdict::same;
  if (over(length, limits.adjustLength) || over(mass, limits.adjustMass)) {
    return StrokeVerdict::different;
  }
  // The length decides which way; where it stays, the mass does.
  const double way = otherLength ? s.lengthChange.value() : s.massChange;
  return way > 0.0 ? StrokeVerdict::adjustLonger : StrokeVerdict::adjustShorter;
}

}  // namespace

StrokeBasis strokeBasis(const Rig& rig, const MassProfile& profile) {
  const Grip held = grip(rig, profile);
  StrokeBasis basis;
  basis.mass = held.head + held.tip;
  basis.sinking = held.sinking;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const PartKind kind = rig.parts[i].kind;
    if (kind != PartKind::head && kind != PartKind::tip) continue;
    basis.workingLength += profile.places[i].to - profile.places[i].from;
  }
  return basis;
}

Stroke stroke(const StrokeBasis& reference, const StrokeBasis& rig, const StrokeLimits& limits) {
  Stroke s;
  s.lengthChange = rig.workingLength - reference.workingLength;
  s.massChange = relativeChange(reference.mass, rig.mass);
  s.sinkingChange = rig.sinking - reference.sinking;
  s.verdict = judge(s, limits);
  s.slowerLift = over(s.sinkingChange, limits.slowerLift);
  s.quickerLift = over(-s.sinkingChange, limits.slowerLift);
  return s;
}

}  // namespace grainwise
