// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/advice.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/analysis/depth_table.h"
#include "core/choose/two_threads.h"
#include "core/water/swing.h"

namespace grainwise {
namespace {

constexpr double kWorthTelling = 2.0 / 3.0;  // a third of the way there, or it is not said
constexpr std::array<WaterHandle, 3> kHandles{WaterHandle::angle, WaterHandle::mend,
                                              WaterHandle::lineOut};

double valueOf(const SwingSetup& setup, WaterHandle handle) {
  switch (handle) {
    case WaterHandle::angle:
      return setup.angle.value();
    case WaterHandle::mend:
      return setup.mend.value();
    case WaterHandle::lineOut:
      break;
  }
  return setup.lineOut.value();
}

SwingSetup changed(SwingSetup setup, WaterHandle handle, double to) {
  switch (handle) {
    case WaterHandle::angle:
      setup.angle = Degrees(to);
      break;
    case WaterHandle::mend:
      setup.mend = Seconds(to);
      break;
    case WaterHandle::lineOut:
      setup.lineOut = Feet(to);
      break;
  }
  return setup;
}

/// What is tried of each: as an angler would.
std::vector<double> triesOf(WaterHandle handle, double now) {
  std::vector<double> tries;
  switch (handle) {
    case WaterHandle::angle:
      tries = {25, 35, 55, 65};
      break;
    case WaterHandle::mend:
      tries = {0, 6, 9};
      break;
    case WaterHandle::lineOut:
      tries = {55, 95};
      break;
  }
  std::erase_if(tries, [&](double v) { return std::abs(v - now) < 0.1 * std::max(now, 1.0); });
  return tries;
}

struct Trial {
  WaterChange change;
  std::optional<SwingResult> result;
};

Trial trialOf(WaterHandle handle, double from, double to) {
  Trial trial;
  trial.change.handle = handle;
  trial.change.from = from;
  trial.change.to = to;
  return trial;
}

SwingResult quickSwing(const Rig& rig, const SwingSetup& setup, const CurrentProfile& current,
                       const std::stop_token& stop) {
  Rig set = rig;
  Swing own = rig.swing.value_or(Swing{});
  own.angle = setup.angle;
  own.mend = setup.mend;
  own.lineOut = setup.lineOut;
  set.swing = own;
  const auto inWater = rigInWater(set, massProfile(set), current);
  if (!inWater) return {};
  SwingOptions quick;
  quick.coarse = true;
  quick.settle = false;
  quick.frameEvery = Seconds(0);
  return swing(inWater->line, inWater->river, inWater->setup, quick, stop);
}

/// The live band moved to another middle, its ends in proportion.
DepthBand moved(const DepthBand& band, double ratio, Feet waterDepth) {
  DepthBand result = band;
  result.low = std::min(band.low * ratio, waterDepth);
  result.middle = std::min(band.middle * ratio, waterDepth);
  result.high = std::min(band.high * ratio, waterDepth);
  return result;
}

double offWanted(Feet depth, const WantedWater& wanted) {
  if (depth < wanted.low) return (wanted.low - depth).value();
  return depth > wanted.high ? (depth - wanted.high).value() : 0.0;
}

/// Of one handle's trials the least that reaches the wanted water, or the one that comes nearest.
const WaterChange* bestOf(const std::vector<Trial>& trials, WaterHandle handle,
                          const WantedWater& wanted, double offNow) {
  const WaterChange* best = nullptr;
  const auto step = [](const WaterChange& c) { return std::abs(c.to - c.from); };
  for (const Trial& trial : trials) {
    const WaterChange& c = trial.change;
    if (c.handle != handle || !trial.result || c.onBottom) continue;
    if (!c.inside && offWanted(c.depth, wanted) > kWorthTelling * offNow) continue;
    const bool better =
        best == nullptr || (c.inside && !best->inside) ||
        (c.inside == best->inside && (c.inside ? step(c) < step(*best)
                                               : offWanted(c.depth, wanted) < offWanted(best->depth, wanted)));
    if (better) best = &c;
  }
  return best;
}

}  // namespace

Rig withWaterChange(const Rig& rig, const WaterChange& change) {
  Rig result = rig;
  Swing swing = rig.swing.value_or(Swing{});
  switch (change.handle) {
    case WaterHandle::angle:
      swing.angle = Degrees(change.to);
      break;
    case WaterHandle::mend:
      swing.mend = Seconds(change.to);
      break;
    case WaterHandle::lineOut:
      swing.lineOut = Feet(change.to);
      break;
  }
  result.swing = swing;
  return result;
}

std::vector<WaterChange> waterAdvice(const Rig& rig, const WantedWater& wanted,
                                     const CurrentProfile& current, const std::stop_token& stop,
                                     const std::function<void(double)>& progress) {
  std::vector<WaterChange> advice;
  const auto now = depthFit(rig, massProfile(rig), wanted, current);
  if (!now || !now->band || now->way == DepthWay::inside) return advice;
  const SwingSetup setup = swingSetup(rig);
  std::vector<Trial> trials{trialOf(WaterHandle::angle, setup.angle.value(), setup.angle.value())};
  for (const WaterHandle handle : kHandles) {
    const double from = valueOf(setup, handle);
    for (const double to : triesOf(handle, from)) trials.push_back(trialOf(handle, from, to));
  }
  const auto run = [&](std::size_t i) {
    const WaterChange& c = trials[i].change;
    trials[i].result = quickSwing(rig, changed(setup, c.handle, c.to), current, stop);
  };
  if (!forEachOnTwo(trials.size(), run, stop, progress)) return advice;

  const std::optional<Feet> base = trials.front().result->swing;
  if (!base || *base <= Feet(0)) return advice;
  const Feet waterDepth = *rig.water->depth;
  for (Trial& trial : trials) {
    if (!trial.result->swing) {
      trial.result.reset();
      continue;
    }
    const DepthBand band = moved(*now->band, *trial.result->swing / *base, waterDepth);
    WaterChange& c = trial.change;
    c.depth = band.middle;
    c.onBottom = trial.result->onBottom();
    c.share = shareInside(band, wanted);
    c.inside = c.depth >= wanted.low && c.depth <= wanted.high;
  }
  const double offNow = offWanted(now->band->middle, wanted);
  trials.erase(trials.begin());
  for (const WaterHandle handle : kHandles) {
    if (const WaterChange* best = bestOf(trials, handle, wanted, offNow)) advice.push_back(*best);
  }
  return advice;
}

std::vector<WaterChange> adviceBeforeTip(const TipQuestion& question, const Choice& choice,
                                         const std::stop_token& stop,
                                         const std::function<void(double)>& progress) {
  if (!question.pool || !choice.wanted || !choice.asItStands) return {};
  bool depthIsOff = false;
  for (const Judged& j : choice.asItStands->judged) {
    if (j.criterion == Criterion::depth) {
      depthIsOff = j.zone != Grade::fits;
    } else if (j.zone == Grade::wrong) {
      return {};
    }
  }
  if (!depthIsOff) return {};
  return waterAdvice(inPool(question.rig, *question.pool), *choice.wanted,
                     question.conditions.current, stop, progress);
}

}  // namespace grainwise
