// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/hang.h"

#include <algorithm>
#include <cmath>

#include "core/numerics/root.h"
#include "core/units/si.h"
#include "core/water/hang_march.h"

namespace grainwise {
namespace {

using hanging::Element;
using hanging::March;
using hanging::Marcher;
using hanging::State;

constexpr double kClearance_m = 0.03;     // the fly's own body on the bed
constexpr double kStill_m_per_s = 0.03;   // 0.1 ft/s
constexpr double kRodTip_m = 0.6;         // above the water, as in the swing
constexpr double kTolerance_m = 1e-5;
constexpr double kNearBottom_m = 0.15;    // half a foot
constexpr double kLastStep_m = 1e-3;      // from here one more secant ends within the tolerance
constexpr int kMostSecants = 60;

class Solver {
 public:
  Solver(const WaterLine& line, const River& river, const HangForces& forces)
      : m_line(line),
        m_river(river),
        m_forces(forces),
        m_elements(hanging::elements(line, river)),
        m_flyWet_n((line.fly.mass_kg - river.fluid.rho_kg_per_m3 * line.fly.volume_m3) *
                   si::kGravity_m_per_s2),
        m_most_m(std::max(0.0, river.depth_m - kClearance_m)) {}

  HangDown solve() {
    if (m_river.surface_m_per_s < kStill_m_per_s) return none(DepthState::stillWater);
    if (m_flyWet_n < 0.0) return none(DepthState::flyFloats);
    if (m_flyWet_n == 0.0 && !anySinks()) return none(DepthState::everythingFloats);
    March top = run(m_flyWet_n, 0.0);
    if (!top.level) {
      m_held = true;
      top = run(m_flyWet_n, 0.0);
    }
    return hang(tooHigh(top));
  }

 private:
  static HangDown none(DepthState state) {
    HangDown result;
    result.state = state;
    return result;
  }
  [[nodiscard]] bool anySinks() const {
    return std::any_of(m_elements.begin(), m_elements.end(),
                       [](const Element& e) { return e.wet_n_per_m[1] > 0.0; });
  }
  [[nodiscard]] State startAt(double depth_m, double tz_n) const {
    const double u = m_river.current_m_per_s(-depth_m);
    const double drag_n = 0.5 * m_river.fluid.rho_kg_per_m3 * m_line.fly.dragArea_m2 * u * u;
    return {-drag_n, tz_n, -depth_m, 0.0};
  }
  [[nodiscard]] March run(double tz_n, double depth_m, std::size_t from = 0, double share = 0.0,
                          std::vector<Marcher::PathPoint>* path = nullptr) const {
    State start = startAt(depth_m, tz_n);
    if (from > 0 || share > 0.0) start.tx_n -= bedDrag_n(from, share);
    return Marcher(m_elements, m_river, m_forces, m_held).march(start, from, share, path);
  }
  /// How far the line's upper end comes out too high: 0 when the depth is right.
  [[nodiscard]] double tooHigh(const March& march) const {
    return m_held ? march.end_z_m - kRodTip_m : march.end_z_m;
  }
  [[nodiscard]] double tooHigh(double depth_m) const { return tooHigh(run(m_flyWet_n, depth_m)); }

  /// Drag along line that lies on the bed, taken at the clearance.
  [[nodiscard]] double bedDrag_n(std::size_t from, double share) const {
    const double u = m_river.current_m_per_s(-m_most_m);
    double drag_n = 0.0;
    for (std::size_t i = 0; i <= from; ++i) {
      const double length_m = m_elements[i].length_m * (i == from ? share : 1.0);
      drag_n += hanging::skinDrag_n_per_m(m_elements[i].diameter_m[1], u, m_river.fluid) * length_m;
    }
    return drag_n;
  }

  /// From the surface down by secants. As a rule the rise of the line grows ever faster with its depth
  /// (the current falls with it), so that a secant does not pass the upper root; a stride that gains
  /// too little is lengthened, and a root that is passed is bracketed.
  HangDown hang(double highAtTop) {
    double before = 0.0, beforeHigh = highAtTop;
    if (beforeHigh <= kTolerance_m) return finish(DepthState::hangs, m_flyWet_n, 0.0);
    double depth = std::min(beforeHigh, m_most_m);
    for (int i = 0; i < kMostSecants; ++i) {
      const double high = tooHigh(depth);
      if (std::abs(high) <= kTolerance_m) return finishFree(depth);
      if (high < 0.0) {
        const auto root =
            numerics::findRoot([this](double d) { return tooHigh(d); }, before, beforeHigh, depth,
                               high, {kTolerance_m, kTolerance_m, 60});
        return finishFree(root.x);
      }
      if (depth >= m_most_m) return onBed();
      const double fall = (beforeHigh - high) / (depth - before);
      double next = fall > 1e-3 ? depth + high / fall : m_most_m;
      if (high < kLastStep_m && fall > 0.1 && next < m_most_m) return finishFree(next);
      if (high > 0.5 * beforeHigh) next = std::max(next, depth + m_most_m / kMostSecants);
      before = depth;
      beforeHigh = high;
      depth = std::min(std::max(next, depth + kTolerance_m), m_most_m);
    }
    return finishFree(depth);
  }

  HangDown finishFree(double depth_m) {
    const bool low = m_most_m + kClearance_m - depth_m < kNearBottom_m;
    const bool settles = !low && depth_m > 0.5 * m_most_m && tooHigh(m_most_m) > kTolerance_m;
    return finish(low || settles ? DepthState::nearBottom : DepthState::hangs, m_flyWet_n,
                  depth_m);
  }

  /// The fly stands on the bed with part of its weight; if even a weightless fly leaves the line too
  /// high, line lies down until it comes out level.
  HangDown onBed() {
    const auto byPull = [this](double tz_n) { return tooHigh(run(tz_n, m_most_m)); };
    const double slack = byPull(0.0);
    if (slack <= 0.0) {
      const auto root = numerics::findRoot(byPull, 0.0, slack, m_flyWet_n, byPull(m_flyWet_n),
                                           {1e-9, kTolerance_m, 60});
      return finish(DepthState::onBottom, root.x, m_most_m);
    }
    const auto byLying = [this](double place) {
      const auto [from, share] = split(place);
      return tooHigh(run(0.0, m_most_m, from, share));
    };
    double low = 0.0, lowHigh = slack;
    double high = static_cast<double>(m_elements.size()) - 1e-6;
    for (std::size_t i = 1; i < m_elements.size(); ++i) {  // the line can lie down only as it sinks
      if (m_elements[i].wet_n_per_m[1] > 0.0) continue;
      high = static_cast<double>(i);
      break;
    }
    const double highHigh = byLying(high);
    if (highHigh < 0.0) {
      const auto root = numerics::findRoot(byLying, low, lowHigh, high, highHigh,
                                           {1e-4, 1e-4, 60});
      low = root.x;
    }
    const auto [from, share] = split(low);
    return finish(DepthState::lineOnBottom, 0.0, m_most_m, from, share);
  }
  [[nodiscard]] std::pair<std::size_t, double> split(double place) const {
    const auto from = std::min(static_cast<std::size_t>(place), m_elements.size() - 1);
    return {from, place - static_cast<double>(from)};
  }

  HangDown finish(DepthState state, double tz_n, double depth_m, std::size_t from = 0,
                  double share = 0.0) {
    HangDown result;
    result.state = state;
    result.heldByRod = m_held;
    result.fly = si::toFeet(depth_m);
    m_path.clear();
    const March end = run(tz_n, depth_m, from, share, &m_path);
    if (const double under_m = -end.lowest_z_m - m_most_m;
        under_m > kTolerance_m && !isOnBottom(state) && depth_m > 0.0) {
      // line between fly and surface would hang lower than the bed
      return finish(DepthState::lineOnBottom, tz_n, std::max(0.0, depth_m - under_m));
    }
    if (from > 0 || share > 0.0) lay(depth_m);
    if (end.level) result.surfacesFromFly = si::toFeet(end.end_s_m);
    if (const auto place = lastFloating_m(); place && *place <= end.end_s_m) {
      result.junction = si::toFeet(std::max(0.0, -heightAt(*place)));
    }
    result.shape.reserve(m_path.size());
    for (const auto& p : m_path) {
      result.shape.push_back(
          {si::toFeet(p.s_m), si::toFeet(std::min(-p.z_m, m_most_m)), si::toFeet(-p.x_m)});
    }
    return result;
  }
  /// Puts the line that lies on the bed before the path.
  void lay(double depth_m) {
    const double lying_m = m_path.front().s_m;
    for (auto& p : m_path) p.x_m -= lying_m;
    m_path.insert(m_path.begin(), {0.0, 0.0, -depth_m});
  }
  /// Where, from the fly, the last floating line ends; nothing when none floats.
  [[nodiscard]] std::optional<double> lastFloating_m() const {
    double s_m = 0.0;
    for (const Element& e : m_elements) {
      if (e.wet_n_per_m[1] < 0.0) return s_m;
      s_m += e.length_m;
    }
    return std::nullopt;
  }
  [[nodiscard]] double heightAt(double s_m) const {
    for (std::size_t i = 1; i < m_path.size(); ++i) {
      const auto& a = m_path[i - 1];
      const auto& b = m_path[i];
      if (b.s_m < s_m) continue;
      return b.s_m > a.s_m ? a.z_m + (b.z_m - a.z_m) * (s_m - a.s_m) / (b.s_m - a.s_m) : b.z_m;
    }
    return m_path.empty() ? 0.0 : m_path.back().z_m;
  }

  const WaterLine& m_line;
  const River& m_river;
  HangForces m_forces;
  std::vector<Element> m_elements;
  double m_flyWet_n;
  double m_most_m;
  bool m_held = false;
  std::vector<Marcher::PathPoint> m_path;
};

}  // namespace

HangDown hangDown(const WaterLine& line, const River& river, const HangForces& forces) {
  return Solver(line, river, forces).solve();
}

}  // namespace grainwise
