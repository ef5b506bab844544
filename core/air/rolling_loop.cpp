// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/rolling_loop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/numerics/ode.h"

namespace grainwise {
namespace {

using std::numbers::pi;

constexpr double kSamePlace_m = 1e-9;
constexpr double kStepShare = 0.2;      // of the length over which the speed changes e-fold
constexpr double kMostSteps = 20000;    // a fly of 0.001 gr behind the largest drag takes 4000
constexpr double kStallShare = 0.05;    // of u0 - v: below it the leg is said to have stopped
constexpr double kMostGathered = 0.05;  // of the leg, in steps taken together
constexpr std::size_t kUsualSteps = 128;  // taken together
constexpr double kMostChange = 0.2;     // of a speed in one step
constexpr double kLeastPart = 1e-3;     // of a step of the grid
constexpr double kBendShadow = 0.29;    // of D d: line of the leg that the bend already counts
constexpr double kBendForm = 0.6 / 6.0;

/// V after the loop has passed a point mass that leaves `kept` of the leg: the limit of a short
/// heavy piece, dV/ds = u - v over s = ln(1/kept)/2 with vz as it is.
double pastPointMass(double V, double vz, double v, double kept) {
  constexpr double kStep = 0.1;
  const double whole = -0.5 * std::log(kept);
  const int steps = static_cast<int>(std::ceil(whole / kStep));
  std::array<double, 1> y{V};
  for (int i = 0; i < steps; ++i) {
    y = numerics::rk4(y, whole / steps, [&](double, const std::array<double, 1>& at) {
      return std::array<double, 1>{std::sqrt(at[0] * at[0] - vz * vz) - v};
    });
  }
  return y[0];
}

}  // namespace

RollingLoop::RollingLoop(const AirLine& line, const LoopShape& shape, const LoopDrag& strongest,
                         double mark_m, double coarsestStep_m)
    : m_shape(shape), m_length_m(line.length_m()), m_nylon_m(line.nylon_m) {
  m_start_m = std::max(0.0, m_length_m - shape.rodLeg_m - pi * shape.loop_m / 4.0);
  build(line, strongest, mark_m, coarsestStep_m);
  gather();
}

RollingLoop::Node RollingLoop::nodeAt(const AirPiece& piece, double x_m, double leg_kg,
                                      double shadow_m2) const {
  return nodeAt(x_m, piece.mass_kg_per_m(x_m), piece.diameter_m(x_m), leg_kg, shadow_m2);
}

RollingLoop::Node RollingLoop::nodeAt(double x_m, double mass_kg_per_m, double diameter_m,
                                      double leg_kg, double shadow_m2) const {
  const double loop_m =
      m_shape.roundAtTheEnd ? std::min(m_shape.loop_m, 4.0 * x_m / pi) : m_shape.loop_m;
  const double bend_m2 = diameter_m * loop_m;
  const double skin_m2 = pi * std::max(0.0, shadow_m2 - kBendShadow * bend_m2);
  return {x_m, mass_kg_per_m, leg_kg, shadow_m2, skin_m2, bend_m2};
}

LoopBalance RollingLoop::balanceAt(const Node& node, const LoopDrag& drag) const {
  const double leg = 0.5 * drag.density_kg_per_m3 * (drag.fly_m2 + drag.along * node.skin_m2);
  const double bend = kBendForm * drag.density_kg_per_m3 * drag.across * node.bend_m2;
  // N for u = 1, v = 0, so c = 1/2; over (u - v)^2/4.
  return {node.x_m, node.mass_kg_per_m, 4.0 * (leg + 0.25 * bend), false, 0};
}

void RollingLoop::build(const AirLine& line, const LoopDrag& strongest, double mark_m,
                        double coarsestStep_m) {
  const double shrinks_m = pi * m_shape.loop_m / 4.0;  // where D begins to follow x
  const double least_m = m_start_m / kMostSteps;
  double leg_kg = line.fly_kg;
  double shadow_m2 = 0.0;
  std::size_t point = 0;
  m_steps.reserve(line.pieces.size() + static_cast<std::size_t>(m_start_m / coarsestStep_m));
  for (const AirPiece& piece : line.pieces) {
    const double end_m = std::min(piece.to_m, m_start_m);
    double x_m = piece.from_m;
    while (x_m < end_m - kSamePlace_m) {
      Step step{};
      for (; point < line.points.size() && line.points[point].x_m <= x_m + kSamePlace_m; ++point) {
        const double before_kg = leg_kg;
        leg_kg += line.points[point].mass_kg;
        step.massKept *= before_kg / leg_kg;
      }
      double next_m = end_m;
      for (const double stop_m : {shrinks_m, mark_m}) {
        if (stop_m > x_m + kSamePlace_m) next_m = std::min(next_m, stop_m);
      }
      if (point < line.points.size()) next_m = std::min(next_m, line.points[point].x_m);
      step.flySide = nodeAt(piece, x_m, leg_kg, shadow_m2);
      const LoopBalance b = balanceAt(step.flySide, strongest);
      const double eFold_m = 2.0 * leg_kg / (b.line_kg_per_m + b.need_kg_per_m);
      const double wanted_m = std::max(least_m, std::min(coarsestStep_m, kStepShare * eFold_m));
      const double count = std::ceil((next_m - x_m) / wanted_m);
      step.length_m = (next_m - x_m) / count;
      step.most_m = wanted_m;
      const double far_m = count > 1.0 ? x_m + step.length_m : next_m;
      const double middle_m = 0.5 * (x_m + far_m);
      step.middle = nodeAt(piece, middle_m, leg_kg + piece.massBetween_kg(x_m, middle_m),
                           shadow_m2 + piece.shadow_m2(x_m, middle_m));
      leg_kg += piece.massBetween_kg(x_m, far_m);
      shadow_m2 += piece.shadow_m2(x_m, far_m);
      step.rodSide = nodeAt(piece, far_m, leg_kg, shadow_m2);
      step.bareNylon = piece.bareNylon;
      step.part = piece.part;
      step.entersNylon = m_nylon_m > 0.0 && std::abs(x_m - m_nylon_m) <= kSamePlace_m;
      m_steps.push_back(step);
      x_m = far_m;
    }
    if (piece.to_m >= m_start_m) break;
  }
  std::reverse(m_steps.begin(), m_steps.end());
}

/// Short steps in a row become one as long as the leg hardly changes, but never across a point
/// mass, the beginning of the nylon or the place where the loop starts to shrink.
void RollingLoop::gather() {
  const double shrinks_m = pi * m_shape.loop_m / 4.0;
  m_run.reserve(std::min(m_steps.size(), kUsualSteps));
  for (std::size_t first = 0; first < m_steps.size();) {
    std::size_t last = first;
    double length_m = m_steps[first].length_m;
    while (last + 1 < m_steps.size()) {
      const Step& end = m_steps[last];
      const Step& next = m_steps[last + 1];
      if (end.massKept != 1.0 || end.entersNylon ||
          std::abs(end.flySide.x_m - shrinks_m) <= kSamePlace_m ||
          length_m + next.length_m > next.most_m ||
          m_steps[first].rodSide.leg_kg > (1.0 + kMostGathered) * next.flySide.leg_kg) {
        break;
      }
      length_m += next.length_m;
      ++last;
    }
    m_run.push_back(first == last ? m_steps[first] : together(first, last));
    first = last + 1;
  }
}

RollingLoop::Step RollingLoop::together(std::size_t first, std::size_t last) const {
  const Node& rod = m_steps[first].rodSide;
  const Node& fly = m_steps[last].flySide;
  Step step = m_steps[last];
  step.length_m = rod.x_m - fly.x_m;
  const double mass_kg_per_m = (rod.leg_kg - fly.leg_kg) / step.length_m;
  const double diameter_m = (rod.shadow_m2 - fly.shadow_m2) / step.length_m;
  const double middle_m = 0.5 * (rod.x_m + fly.x_m);
  std::size_t in = first;
  while (m_steps[in].flySide.x_m > middle_m) ++in;
  const Node& a = m_steps[in].flySide;
  const Node& b = m_steps[in].rodSide;
  const double share = (middle_m - a.x_m) / (b.x_m - a.x_m);
  step.rodSide = nodeAt(rod.x_m, mass_kg_per_m, diameter_m, rod.leg_kg, rod.shadow_m2);
  step.middle =
      nodeAt(middle_m, mass_kg_per_m, diameter_m, a.leg_kg + share * (b.leg_kg - a.leg_kg),
             a.shadow_m2 + share * (b.shadow_m2 - a.shadow_m2));
  step.flySide = nodeAt(fly.x_m, mass_kg_per_m, diameter_m, fly.leg_kg, fly.shadow_m2);
  return step;
}

RollingLoop::Node RollingLoop::Node::between(const Node& a, const Node& b, const Node& c,
                                             double share) {
  const double wa = (1.0 - share) * (1.0 - 2.0 * share);
  const double wb = 4.0 * share * (1.0 - share);
  const double wc = share * (2.0 * share - 1.0);
  const auto at = [&](double Node::*value) {
    return wa * a.*value + wb * b.*value + wc * c.*value;
  };
  return {at(&Node::x_m),       at(&Node::mass_kg_per_m), at(&Node::leg_kg),
          at(&Node::shadow_m2), at(&Node::skin_m2),       at(&Node::bend_m2)};
}

/// The leg's motion: V, vz, z and t as functions of the line that the loop has run through.
struct RollingLoop::Motion {
  using State = std::array<double, 4>;
  const LoopShape& shape;
  double v, stall;
  double skinHalf, flyHalf, bendFactor, acrossHalf, back, down;
  bool stalled = false;
  double change_per_m = 0.0;  ///< how fast speeds change, relative, at the last slope

  Motion(const LoopShape& of, double flyLeg, double rodLeg, const LoopDrag& drag)
      : shape(of),
        v(rodLeg),
        stall(rodLeg + kStallShare * (flyLeg - rodLeg)),
        skinHalf(0.5 * drag.density_kg_per_m3 * drag.along),
        flyHalf(0.5 * drag.density_kg_per_m3 * drag.fly_m2),
        bendFactor(kBendForm * drag.density_kg_per_m3 * drag.across),
        acrossHalf(0.5 * drag.density_kg_per_m3 * drag.across),
        back(of.gravity_m_per_s2 * std::sin(of.launch_rad)),
        down(of.gravity_m_per_s2 * std::cos(of.launch_rad)) {}

  [[nodiscard]] double alongSquared(const State& y) const { return y[0] * y[0] - y[1] * y[1]; }
  [[nodiscard]] bool stopped(const State& y) const { return !(alongSquared(y) > stall * stall); }

  State slope(const Node& node, const State& y) {
    if (stopped(y)) {
      stalled = true;
      return {0.0, 0.0, 0.0, 0.0};
    }
    const double vz = y[1];
    const double u2 = alongSquared(y);
    const double u = std::sqrt(u2);
    const double w = u - v;
    const double c = 0.5 * (u + v);
    const double pull = 0.25 * node.mass_kg_per_m * w * w;
    const double need =
        u2 * (flyHalf + skinHalf * node.skin_m2) + bendFactor * node.bend_m2 * c * c;
    const double inverse = 1.0 / node.leg_kg;
    const double sinking = acrossHalf * node.shadow_m2 * inverse * std::abs(vz);
    const double flySinking = flyHalf * u * inverse;
    const double az = down - (sinking + flySinking) * vz;
    const double acceleration = (pull - need) * inverse - back + (vz / u) * az;
    const double seconds = 2.0 / w;  // a metre of line
    change_per_m = seconds * (std::abs(acceleration) / u + 2.0 * sinking + flySinking);
    return {acceleration * seconds, az * seconds, vz * seconds, seconds};
  }

  /// Through one step of the grid, in parts where speeds change fast.
  void through(const Step& step, State& y) {
    double done = 0.0;
    while (done < 1.0 && !stalled) {
      const auto node = [&](double share) {
        return share <= 0.0   ? step.rodSide
               : share >= 1.0 ? step.flySide
                              : Node::between(step.rodSide, step.middle, step.flySide, share);
      };
      const State first = slope(node(done), y);
      const double sound = kMostChange / (change_per_m * step.length_m);
      const double part = done + sound < 1.0 ? std::max(sound, kLeastPart) : 1.0 - done;
      const bool whole = part >= 1.0;
      const Node middle = whole ? step.middle : node(done + 0.5 * part);
      const Node end = whole ? step.flySide : node(done + part);
      const State next = numerics::rk4(
          y, first, part * step.length_m,
          [&](double share, const State& at) { return slope(share < 1.0 ? middle : end, at); });
      if (stalled || stopped(next)) {
        stalled = true;
        return;
      }
      y = next;
      done += part;
    }
  }
};

LoopEnd RollingLoop::run(double flyLeg_m_per_s, double rodLeg_m_per_s, const LoopDrag& drag) const {
  Motion motion(m_shape, flyLeg_m_per_s, rodLeg_m_per_s, drag);
  Motion::State y{flyLeg_m_per_s, 0.0, 0.0, 0.0};
  LoopEnd end;
  double x_m = m_start_m;
  if (m_nylon_m >= m_start_m && m_nylon_m > 0.0) end.nylonSpeed_m_per_s = flyLeg_m_per_s;
  for (const Step& step : m_run) {
    motion.through(step, y);
    if (motion.stalled) break;
    x_m = step.flySide.x_m;
    if (step.massKept != 1.0) {
      y[0] = pastPointMass(y[0], y[1], rodLeg_m_per_s, step.massKept);
    }
    if (step.entersNylon) end.nylonSpeed_m_per_s = std::sqrt(motion.alongSquared(y));
  }
  end.arrives = !motion.stalled && !m_run.empty();
  end.left_m = end.arrives ? 0.0 : x_m;
  end.speed_m_per_s = end.arrives ? std::sqrt(motion.alongSquared(y)) : 0.0;
  end.fall_m = y[2];
  end.time_s = y[3];
  end.height_m = m_shape.rodTip_m + m_length_m * std::sin(m_shape.launch_rad) +
                 m_shape.loop_m * std::cos(m_shape.launch_rad) - end.fall_m;
  return end;
}

LoopBalance RollingLoop::balanceAt(const Step& step, const Node& node, const LoopDrag& drag) const {
  LoopBalance at = balanceAt(node, drag);
  at.bareNylon = step.bareNylon;
  at.part = step.part;
  return at;
}

std::optional<LoopBalance> RollingLoop::leastDrive(const LoopDrag& drag, double window_m) const {
  std::optional<LoopBalance> least;
  double leastDrive = 0.0;
  for (auto step = m_steps.rbegin(); step != m_steps.rend(); ++step) {
    if (step->flySide.x_m > window_m + kSamePlace_m) break;
    if (step->bareNylon) continue;
    for (const Node* node : {&step->flySide, &step->middle, &step->rodSide}) {
      if (node->x_m > window_m + kSamePlace_m) break;
      const LoopBalance at = balanceAt(*step, *node, drag);
      const double drive = at.drive();
      if (least && !(drive <= leastDrive)) continue;
      least = at;
      leastDrive = drive;
    }
  }
  return least;
}

std::vector<LoopBalance> RollingLoop::balance(const LoopDrag& drag) const {
  std::vector<LoopBalance> list;
  list.reserve(3 * m_steps.size());
  for (const Step& step : m_steps) {
    for (const Node* node : {&step.rodSide, &step.middle, &step.flySide})
      list.push_back(balanceAt(step, *node, drag));
  }
  return list;
}

}  // namespace grainwise
