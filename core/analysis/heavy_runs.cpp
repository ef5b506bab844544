// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/heavy_runs.h"

namespace grainwise {

HeavyRuns swingRuns(const Rig& rig, const Conditions& conditions, std::stop_token stop,
                    const std::function<void(double)>& progress) {
  constexpr double kSwingShare = 0.2;  // of the time of both
  const auto part = [&progress](double from, double size) -> std::function<void(double)> {
    if (!progress) return {};
    return [&progress, from, size](double share) { progress(from + size * share); };
  };
  HeavyRuns runs;
  const auto inWater = rigInWater(rig, massProfile(rig), conditions.current);
  if (!inWater) return runs;
  runs.swing = swing(inWater->line, inWater->river, inWater->setup, {}, stop,
                     part(0.0, kSwingShare));
  runs.band = swingBand(rig, conditions.current, conditions.waterUncertainty, stop,
                        part(kSwingShare, 1.0 - kSwingShare));
  return runs;
}

void addCast(HeavyRuns& runs, const Rig& rig, const Conditions& conditions, std::stop_token stop,
             const std::function<void(double)>& progress) {
  runs.cast.reset();
  runs.noCast.reset();
  const auto model = castModel(rig, massProfile(rig), conditions.turnover());
  if (!model) {
    runs.noCast = model.error();
    return;
  }
  CastOptions options;
  options.frameEvery = Seconds(0);
  runs.cast = unroll(*model, options, stop, progress);
}

}  // namespace grainwise
