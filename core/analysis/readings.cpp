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

namespace {

struct Concern {
  std::optional<TurnoverConcern> what;
  Grade grade = Grade::fits;
};

Concern worstOf(const Analysis& analysis) {
  const Turnover& t = *analysis.turnover;
  Concern worst;
  const auto look = [&](TurnoverConcern what, const auto& verdict) {
    if (verdict && grade(*verdict) > worst.grade) worst = {what, grade(*verdict)};
  };
  look(TurnoverConcern::drive, t.driveVerdict);
  look(TurnoverConcern::flyAgainstTip, analysis.fly.tipToFlyVerdict);
  look(TurnoverConcern::reserve, std::optional(t.reserveVerdict));
  const bool dies = t.paceVerdict == PaceVerdict::dies;
  if (dies) look(TurnoverConcern::flyDies, std::optional(t.paceVerdict));
  look(TurnoverConcern::flyTooBulky, t.nylonVerdict);
  if (!dies) look(TurnoverConcern::flyKicks, std::optional(t.paceVerdict));
  return worst;
}

}  // namespace

std::optional<TurnoverConcern> turnoverConcern(const Analysis& analysis) {
  return analysis.turnover ? worstOf(analysis).what : std::nullopt;
}

std::optional<Grade> turnoverGrade(const Analysis& analysis) {
  return analysis.turnover ? std::optional(worstOf(analysis).grade) : std::nullopt;
}

}  // namespace grainwise
