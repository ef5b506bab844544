// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/swing.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/units/si.h"
#include "core/water/line_dynamics.h"

namespace grainwise {
namespace {

using swinging::LineDynamics;
using swinging::Mesh;
using swinging::Vec3;

constexpr double kStill_m_per_s = 0.03;    // 0.1 ft/s
constexpr double kRodTip_m = 0.6;
constexpr double kStep_s = 0.02;
constexpr double kCoarseStep_s = 0.04;
constexpr double kQuick_m_per_s = 0.9;     // slower water takes longer steps
constexpr double kSlowest = 2.0;
constexpr double kLeastStep_s = 1e-6;
constexpr double kGrowth = 1.25;
constexpr double kStraightBelow_rad = 10.0 * std::numbers::pi / 180.0;
constexpr double kMovingHome_m_per_s = 0.1;
constexpr double kOnBed_m = 0.06;
constexpr double kMiddleFrom = 0.2, kMiddleTo = 0.8;
constexpr double kLeastTravel_m = 0.3;
constexpr double kAtRest_m_per_s = 0.002;
constexpr double kRestFor_s = 3.0;
constexpr double kSettleFor_s = 30.0;      // at most, after 10 deg
constexpr double kMostCrossings = 8.0;     // times line out / current
constexpr double kMostSwing_s = 240.0;
constexpr int kMostFrames = 1500;
constexpr Mesh kFine{0.16, 0.32, 0.8};
constexpr Mesh kCoarse{0.3, 0.5, 1.2};

/// What the readings are taken from, one a step.
struct Sample {
  double t_s, across_m, depth_m, homeSpeed_m_per_s;
};

class Run {
 public:
  Run(const WaterLine& line, const River& river, const SwingSetup& setup,
      const SwingOptions& options)
      : m_line(line, river, options.coarse ? kCoarse : kFine),
        m_river(river),
        m_options(options),
        m_mend_s(setup.mend.value()),
        m_longestStep_s((options.coarse ? kCoarseStep_s : kStep_s) *
                        std::clamp(kQuick_m_per_s / river.surface_m_per_s, 1.0, kSlowest)),
        m_dt_s(m_longestStep_s),
        m_last_s(m_mend_s + std::min(kMostSwing_s, kMostCrossings * line.length_m() /
                                                       river.surface_m_per_s)) {
    m_frameEvery_s = options.frameEvery.value();
    if (m_frameEvery_s > 0.0) {
      m_frameEvery_s = std::max(m_frameEvery_s, m_last_s / kMostFrames);
    }
    m_line.land(si::rad(setup.angle));
  }

  SwingResult go(const std::stop_token& stop, const std::function<void(double)>& progress) {
    record();
    m_result.end = SwingEnd::stillGoing;
    for (int count = 1; m_t_s < m_last_s; ++count) {
      if (stop.stop_requested()) {
        m_result.end = SwingEnd::stopped;
        break;
      }
      if (!m_line.tied() && m_t_s >= m_mend_s) tie();
      if (!advance()) {
        m_result.end = SwingEnd::notConverged;
        break;
      }
      record();
      if (progress && count % 32 == 0) progress(share());
      if (isOver()) break;
    }
    frame();
    readings();
    if (progress) progress(1.0);
    return std::move(m_result);
  }

 private:
  void tie() {
    m_result.afterMend = depth();
    m_line.tie({0.0, 0.0, kRodTip_m});
    m_tieAngle_rad = angle();
  }
  [[nodiscard]] Feet depth() const { return si::toFeet(depth_m()); }
  /// The fly's depth; nothing is ever below the bed or, but for a film of water, above the surface.
  [[nodiscard]] double depth_m() const {
    return std::clamp(-m_line.fly().z, 0.0, -m_line.bed_m());
  }
  /// Of the fly from straight below the rod.
  [[nodiscard]] double angle() const {
    return std::atan2(std::abs(m_line.fly().y), m_line.fly().x);
  }

  /// One accepted step, however small; false when even the smallest does not converge.
  bool advance() {
    while (m_dt_s >= kLeastStep_s) {
      const bool toMend = !m_line.tied() && m_t_s + m_dt_s > m_mend_s - kLeastStep_s;
      const double dt_s = toMend ? m_mend_s - m_t_s : m_dt_s;
      if (dt_s <= 0.0 || m_line.step(dt_s)) {
        m_t_s = toMend ? m_mend_s : m_t_s + dt_s;
        m_dt_s = std::min(m_longestStep_s, m_dt_s * kGrowth);
        return true;
      }
      ++m_result.rejectedSteps;
      m_dt_s = 0.5 * std::min(dt_s, m_dt_s);
    }
    return false;
  }

  void record() {
    m_samples.push_back({m_t_s, m_line.fly().y, depth_m(), -m_line.flyVelocity().y});
    m_result.deepest = std::max(m_result.deepest, depth());
    m_result.stretch = std::max(m_result.stretch, m_line.stretch());
    if (m_line.tied() && !m_result.timeTo10deg && angle() < kStraightBelow_rad) {
      m_result.timeTo10deg = Seconds(m_t_s);
      m_home = m_samples.size() - 1;
    }
    if (m_line.flyVelocity().norm() > kAtRest_m_per_s) m_moved_s = m_t_s;
    if (m_frameEvery_s > 0.0 && m_t_s >= m_nextFrame_s) frame();
  }

  void frame() {
    if (m_frameEvery_s <= 0.0) return;
    if (!m_result.track.empty() && m_result.track.back().time == Seconds(m_t_s)) return;
    m_nextFrame_s = m_t_s + m_frameEvery_s;
    SwingFrame frame{Seconds(m_t_s), {}};
    frame.line.reserve(m_line.nodes());
    for (std::size_t i = m_line.tied() ? 0 : 1; i < m_line.nodes(); ++i) {
      const Vec3& x = m_line.positions()[i];
      frame.line.push_back({si::toFeet(x.x), si::toFeet(x.y), si::toFeet(-x.z)});
    }
    m_result.track.push_back(std::move(frame));
  }

  bool isOver() {
    if (!m_line.tied()) return false;
    const bool atRest = m_t_s > m_mend_s + kRestFor_s && m_t_s > m_moved_s + kRestFor_s;
    if (!m_result.timeTo10deg) {
      if (atRest) m_result.end = SwingEnd::rests;
      return atRest;
    }
    const bool done = !m_options.settle || atRest ||
                      m_t_s > m_result.timeTo10deg->value() + kSettleFor_s;
    if (done) m_result.end = SwingEnd::hangs;
    return done;
  }

  [[nodiscard]] double share() const {
    if (!m_line.tied()) return 0.1 * m_t_s / std::max(m_mend_s, kStep_s);
    if (!m_result.timeTo10deg) {
      const double left = std::clamp(angle() / std::max(m_tieAngle_rad, 1e-3), 0.0, 1.0);
      return 0.1 + 0.7 * (1.0 - left);
    }
    return std::min(1.0, 0.8 + 0.2 * (m_t_s - m_result.timeTo10deg->value()) / kSettleFor_s);
  }

  void readings() {
    m_result.hangDown = depth();
    if (!m_line.tied()) m_result.afterMend = depth();
    std::size_t from = 0;
    while (from < m_samples.size() &&
           (m_samples[from].t_s < m_mend_s ||
            m_samples[from].homeSpeed_m_per_s <= kMovingHome_m_per_s)) {
      ++from;
    }
    const std::size_t to = m_result.timeTo10deg ? m_home : m_samples.size() - 1;
    if (from >= to) return;
    const double start_m = m_samples[from].across_m;
    const double travel_m = start_m - m_samples[to].across_m;
    if (travel_m < kLeastTravel_m) return;
    m_result.travel = si::toFeet(travel_m);
    const double high_m = start_m - kMiddleFrom * travel_m;
    const double low_m = start_m - kMiddleTo * travel_m;
    double middle_m2 = 0.0, middle_m = 0.0, bed_m = 0.0, all_m = 0.0;
    for (std::size_t i = from + 1; i <= to; ++i) {
      const Sample &a = m_samples[i - 1], &b = m_samples[i];
      const double moved_m = std::abs(a.across_m - b.across_m);
      const double mean_m = 0.5 * (a.depth_m + b.depth_m);
      all_m += moved_m;
      if (mean_m > m_river.depth_m - kOnBed_m) bed_m += moved_m;
      const double at_m = 0.5 * (a.across_m + b.across_m);
      if (at_m > high_m || at_m < low_m) continue;
      middle_m2 += moved_m * mean_m;
      middle_m += moved_m;
    }
    if (middle_m > 0.0) m_result.swing = si::toFeet(middle_m2 / middle_m);
    if (all_m > 0.0) m_result.bottomShare = bed_m / all_m;
  }

  LineDynamics m_line;
  const River& m_river;
  SwingOptions m_options;
  double m_mend_s, m_longestStep_s, m_dt_s, m_last_s;
  double m_frameEvery_s = 0.0, m_nextFrame_s = 0.0;
  double m_t_s = 0.0, m_moved_s = 0.0, m_tieAngle_rad = 0.0;
  std::size_t m_home = 0;
  std::vector<Sample> m_samples;
  SwingResult m_result;
};

}  // namespace

SwingResult swing(const WaterLine& line, const River& river, const SwingSetup& setup,
                  const SwingOptions& options, std::stop_token stop,
                  const std::function<void(double)>& progress) {
  if (river.surface_m_per_s < kStill_m_per_s || line.pieces.empty()) return {};
  return Run(line, river, setup, options).go(stop, progress);
}

}  // namespace grainwise
