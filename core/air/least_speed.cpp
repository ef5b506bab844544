// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/least_speed.h"

#include <algorithm>
#include <cmath>

namespace grainwise {

std::optional<double> leastSpeed_m_per_s(const RollingLoop& loop, double rodLeg_m_per_s,
                                         const LoopDrag& drag, double guess_m_per_s) {
  constexpr double kMost_m_per_s = 1000.0;
  constexpr double kTolerance = 1e-6;
  constexpr int kMostRuns = 80;
  constexpr double kFirstPower = -1.7;  // z goes with u^-2 without drag, u^-1 at a steady sink
  double low = std::log(rodLeg_m_per_s + 1e-3);
  double high = std::log(kMost_m_per_s);
  double at = std::clamp(std::log(guess_m_per_s), low, high);
  double power = kFirstPower;
  bool hasLast = false;
  bool highTested = false;
  double lastAt = 0.0;
  double lastMiss = 0.0;
  for (int runs = 0; runs < kMostRuns && high - low > kTolerance; ++runs) {
    const LoopEnd end = loop.run(std::exp(at), rodLeg_m_per_s, drag);
    const double allowed_m = end.height_m + end.fall_m;  // how far the leg may sink
    if (!(allowed_m > 0.0)) return std::nullopt;
    if (!end.arrives) {
      low = at;
      hasLast = false;
      at = highTested ? 0.5 * (low + high) : std::min(high, at + 0.4);
      if (at >= high) return std::nullopt;
      continue;
    }
    const double miss = std::log(end.fall_m / allowed_m);
    (miss <= 0.0 ? high : low) = at;
    highTested = highTested || miss <= 0.0;
    if (std::abs(miss) < kTolerance) return std::exp(at);
    if (hasLast && at != lastAt) power = (miss - lastMiss) / (at - lastAt);
    if (!(power < -0.1)) power = kFirstPower;
    lastAt = at;
    lastMiss = miss;
    hasLast = true;
    double next = at - miss / power;
    if (!(next > low && next < high)) next = 0.5 * (low + high);
    at = next;
  }
  if (!highTested) return std::nullopt;
  return std::exp(high);
}

}  // namespace grainwise
