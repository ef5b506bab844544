// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/depth_basis.h"

#include <algorithm>

#include "core/water/water_line.h"

namespace grainwise {
namespace {

double halfWayDown(const CurrentProfile& profile) {
  River river;
  river.surface_m_per_s = 1.0;
  river.depth_m = 1.0;
  river.profile = profile;
  return river.current_m_per_s(-0.5);
}

}  // namespace

bool floatsByDefault(const Section& section) {
  return section.floats.value_or(false) && section.mass && !section.diameter && !section.density;
}

ProfileRange profileRangeOf(const Rig& rig, const WaterUncertainty& uncertainty) {
  if (rig.water && rig.water->bed) return profileRangeOver(*rig.water->bed);
  return {uncertainty.profileFull, uncertainty.profileSteep};
}

DepthBasis depthBasis(const Rig& rig, const MassProfile& profile, const CurrentProfile& current,
                      const WaterUncertainty& uncertainty) {
  DepthBasis basis;
  for (const ProfileSpan& span : profile.spans) {
    const Part& part = rig.parts[span.part];
    if (part.kind != PartKind::head) continue;
    const auto [light, heavy] = std::minmax(span.properties.densityRodEnd, span.properties.densityFlyEnd);
    basis.headLight = std::min(basis.headLight.value_or(light), light);
    basis.headHeavy = std::max(basis.headHeavy.value_or(heavy), heavy);
    basis.headAssumed = basis.headAssumed || floatsByDefault(part.sections[span.section]);
  }
  const CurrentProfile there = profileOf(rig, current);
  basis.halfWay = basis.halfWaySlow = basis.halfWayFast = halfWayDown(there);
  if (there.law == CurrentProfile::Law::power) {
    const ProfileRange range = profileRangeOf(rig, uncertainty);
    basis.halfWaySlow = halfWayDown({there.law, range.steep});
    basis.halfWayFast = halfWayDown({there.law, range.full});
  }
  return basis;
}

}  // namespace grainwise
