// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/readings.h"

namespace grainwise {

std::vector<GradedReading> gradedReadings(const Analysis& analysis) {
  std::vector<GradedReading> list;
  for (std::size_t i = 0; i < analysis.junctions.size(); ++i) {
    list.push_back({Reading::junction, i, grade(analysis.junctions[i].verdict)});
  }
  const auto add = [&](Reading reading, const auto& verdict) {
    if (verdict) list.push_back({reading, std::nullopt, grade(*verdict)});
  };
  add(Reading::headOnRod, analysis.rod.headVerdict);
  add(Reading::workingLength, analysis.rod.lengthVerdict);
  add(Reading::tipShare, analysis.grip.tipShareVerdict);
  add(Reading::anchor, analysis.grip.anchorVerdict);
  add(Reading::flyAgainstTip, analysis.fly.tipToFlyVerdict);
  add(Reading::flyAgainstLeader, analysis.fly.leaderToFlyVerdict);
  if (analysis.turnover) {
    add(Reading::drive, analysis.turnover->driveVerdict);
    add(Reading::reserve, std::optional(analysis.turnover->reserveVerdict));
  }
  return list;
}

std::vector<GradedReading> faults(const Analysis& analysis) {
  std::vector<GradedReading> list = gradedReadings(analysis);
  std::erase_if(list, [](const GradedReading& r) { return r.grade != Grade::wrong; });
  return list;
}

std::optional<Reading> turnoverConcern(const Analysis& analysis) {
  if (!analysis.turnover) return std::nullopt;
  std::optional<Reading> concern;
  Grade worst = Grade::fits;
  const auto look = [&](Reading reading, const auto& verdict) {
    if (!verdict || grade(*verdict) <= worst) return;
    worst = grade(*verdict);
    concern = reading;
  };
  look(Reading::drive, analysis.turnover->driveVerdict);
  look(Reading::flyAgainstTip, analysis.fly.tipToFlyVerdict);
  look(Reading::reserve, std::optional(analysis.turnover->reserveVerdict));
  return concern;
}

}  // namespace grainwise
