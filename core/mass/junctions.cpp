// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/mass/junctions.h"

#include <algorithm>
#include <cmath>

#include "core/mass/on_the_limit.h"

namespace grainwise {
namespace {

/// Feet of one sort of line (nylon or not) next to span `first`, walking towards the fly (`step` 1)
/// or the rod (-1), at most `most`.
struct Run {
  Feet length;
  Grains mass;
  [[nodiscard]] GrainsPerFoot mean() const { return mass / length; }
};

Run runFrom(const MassProfile& profile, std::size_t first, int step, Feet most) {
  Run run;
  const bool nylon = profile.spans[first].bareNylon;
  for (std::size_t i = first;; i = step > 0 ? i + 1 : i - 1) {
    const ProfileSpan& span = profile.spans[i];
    const Feet left = most - run.length;
    if (span.bareNylon != nylon || left <= Feet(0)) break;
    if (span.properties.length <= left) {
      run.length += span.properties.length;
      run.mass += span.mass();
    } else {
      run.length += left;
      run.mass += step > 0 ? span.between(span.from, span.from + left)
                           : span.between(span.to - left, span.to);
    }
    const bool last = step > 0 ? i + 1 == profile.spans.size() : i == profile.firstSpan;
    if (last) break;
  }
  return run;
}

Feet nylonFrom(const MassProfile& profile, std::size_t first) {
  Feet length;
  for (std::size_t i = first; i < profile.spans.size() && profile.spans[i].bareNylon; ++i) {
    length += profile.spans[i].properties.length;
  }
  return length;
}

JunctionVerdict judge(const Junction& j, const JunctionLimits& limits) {
  const double r = j.ratio3ft;
  if (j.toNylon) {
    if (!over(j.nylonLength, limits.nylonFree)) return JunctionVerdict::nylonNoRule;
    if (!under(r, limits.nylonFine)) return JunctionVerdict::nylonFine;
    return under(r, limits.nylonThin) ? JunctionVerdict::nylonPiles : JunctionVerdict::nylonThin;
  }
  if (over(r, limits.hinge)) return JunctionVerdict::hinges;
  if (over(r, limits.slow)) return JunctionVerdict::hingesUnlessSlow;
  if (over(r, limits.stepUp)) return JunctionVerdict::stepsUp;
  if (!under(r, limits.drop)) return JunctionVerdict::level;
  return under(r, limits.collapse) ? JunctionVerdict::collapses : JunctionVerdict::smoothDrop;
}

Junction junctionAt(const MassProfile& profile, std::size_t flySpan, const JunctionLimits& limits) {
  const ProfileSpan& rod = profile.spans[flySpan - 1];
  const ProfileSpan& fly = profile.spans[flySpan];
  Junction j;
  j.at = fly.from;
  j.rodSide = rod.part;
  j.flySide = fly.part;
  j.rodSideMass = rod.properties.mass.flyEnd;
  j.flySideMass = fly.properties.mass.rodEnd;
  j.ratio = j.flySideMass / j.rodSideMass;
  j.rodSideMean = runFrom(profile, flySpan - 1, -1, limits.window).mean();
  j.flySideMean = runFrom(profile, flySpan, 1, limits.window).mean();
  j.ratio3ft = j.flySideMean / j.rodSideMean;
  j.toNylon = fly.bareNylon;
  j.nylonLength = nylonFrom(profile, flySpan);
  j.verdict = judge(j, limits);
  const double root = std::sqrt(j.ratio);
  j.echo = (1.0 - root) / (1.0 + root);
  j.transmission = 2.0 / (1.0 + root);
  return j;
}

}  // namespace

std::vector<Junction> junctions(const Rig&, const MassProfile& profile,
                                const JunctionLimits& limits) {
  std::vector<Junction> list;
  for (std::size_t i = profile.firstSpan + 1; i < profile.spans.size(); ++i) {
    const ProfileSpan& rod = profile.spans[i - 1];
    const ProfileSpan& fly = profile.spans[i];
    if (rod.part == fly.part || (rod.bareNylon && fly.bareNylon)) continue;
    list.push_back(junctionAt(profile, i, limits));
  }
  return list;
}

Grade grade(JunctionVerdict verdict) {
  switch (verdict) {
    case JunctionVerdict::hinges:
    case JunctionVerdict::collapses:
    case JunctionVerdict::nylonPiles:
      return Grade::wrong;
    case JunctionVerdict::hingesUnlessSlow:
    case JunctionVerdict::stepsUp:
    case JunctionVerdict::nylonThin:
      return Grade::watch;
    case JunctionVerdict::level:
    case JunctionVerdict::smoothDrop:
    case JunctionVerdict::nylonNoRule:
    case JunctionVerdict::nylonFine:
      break;
  }
  return Grade::fits;
}

std::optional<std::size_t> worstJunction(const std::vector<Junction>& list) {
  // A drop to nylon is as large as it is by design: among equal grades it comes after any other.
  const auto offLevel = [](const Junction& j) {
    return j.toNylon ? -1.0 : std::abs(std::log(j.ratio3ft));
  };
  const auto better = [&](const Junction& a, const Junction& b) {
    const Grade gradeA = grade(a.verdict);
    const Grade gradeB = grade(b.verdict);
    return gradeA != gradeB ? gradeA < gradeB : offLevel(a) < offLevel(b);
  };
  const auto worst = std::max_element(list.begin(), list.end(), better);
  if (worst == list.end()) return std::nullopt;
  return static_cast<std::size_t>(worst - list.begin());
}

}  // namespace grainwise
