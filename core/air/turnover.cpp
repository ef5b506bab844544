// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/air/turnover.h"

#include <algorithm>
#include <cmath>

#include "core/air/air_line.h"
#include "core/air/least_speed.h"
#include "core/air/rolling_loop.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr Grains kNoMass{0.001};
constexpr double kLeastParting_m_per_s = 4.0;
constexpr Feet kMostLine{300.0};
constexpr double kSamePlace_m = 1e-9;

ReserveVerdict judgeReserve(double reserve, const TurnoverLimits& limits) {
  if (reserve < limits.heap) return ReserveVerdict::heap;
  if (reserve < limits.probablyNot) return ReserveVerdict::probablyNot;
  return reserve < limits.toSpare ? ReserveVerdict::marginal : ReserveVerdict::toSpare;
}

DriveVerdict judgeDrive(double drive, const TurnoverLimits& limits) {
  if (drive < limits.doesNotCarry) return DriveVerdict::doesNotCarry;
  return drive < limits.carries ? DriveVerdict::marginal : DriveVerdict::carries;
}

PaceVerdict judgePace(double pace, bool stepsUp, const TurnoverLimits& limits) {
  if (pace < limits.dies) return PaceVerdict::dies;
  if (pace < limits.firm) return PaceVerdict::soft;
  if (pace > (stepsUp ? limits.lively : limits.kicks)) return PaceVerdict::kicks;
  return pace <= limits.lively ? PaceVerdict::firm : PaceVerdict::lively;
}

/// The x up to which the front `window` of line that is not bare nylon reaches.
double windowEnd_m(const AirLine& line, double window_m) {
  double left_m = window_m;
  double end_m = 0.0;
  for (const AirPiece& piece : line.pieces) {
    if (piece.bareNylon) continue;
    const double used_m = std::min(left_m, piece.length_m());
    end_m = piece.from_m + used_m;
    left_m -= used_m;
    if (left_m <= kSamePlace_m) break;
  }
  return end_m;
}

/// The part of line nearest the fly that is not bare nylon; the nearest part where all is nylon.
std::size_t frontPart(const AirLine& line) {
  for (const AirPiece& piece : line.pieces) {
    if (!piece.bareNylon) return piece.part;
  }
  return line.pieces.front().part;
}

bool anyStepsUp(const std::vector<Junction>& joints, double limit) {
  return std::any_of(joints.begin(), joints.end(),
                     [&](const Junction& j) { return !j.toNylon && j.ratio3ft > limit; });
}

/// x of the last point with pull >= need on the way to the fly; where the loop starts, if none.
double coast_m(const std::vector<LoopBalance>& list) {
  for (std::size_t i = list.size(); i > 0; --i) {
    const LoopBalance& here = list[i - 1];
    if (here.line_kg_per_m < here.need_kg_per_m) continue;
    if (i == list.size()) return here.x_m;
    const LoopBalance& next = list[i];
    const double over = here.line_kg_per_m - here.need_kg_per_m;
    const double under = next.need_kg_per_m - next.line_kg_per_m;
    return here.x_m - (here.x_m - next.x_m) * over / (over + under);
  }
  return list.empty() ? 0.0 : list.front().x_m;
}

/// One rig's loop with everything that its readings need; what varies is passed to each reading.
class Reader {
 public:
  Reader(const AirLine& line, const CastSetup& cast, bool stepsUp,
         const TurnoverConditions& conditions)
      : m_conditions(conditions),
        m_air(airAt(cast.airAltitude)),
        m_stepsUp(stepsUp),
        m_speed_m_per_s(si::m_per_s(cast.lineSpeed)),
        m_rodLeg_m_per_s(si::m_per_s(cast.rodLegSpeed)),
        m_windowEnd_m(windowEnd_m(line, si::m(conditions.limits.driveWindow))),
        m_drag{m_air.density_kg_per_m3, m_air.acrossDrag, m_air.alongDrag, line.flyDrag_m2},
        m_nylon_m(line.nylon_m),
        m_loop(line, shapeOf(cast), strongest(), m_windowEnd_m) {}

  [[nodiscard]] bool hasWay() const { return m_loop.start_m() > kSamePlace_m; }
  void fill(Turnover& t, Station fly) const;

 private:
  static LoopShape shapeOf(const CastSetup& cast) {
    LoopShape shape;
    shape.loop_m = si::m(cast.loop);
    shape.launch_rad = si::rad(cast.launch);
    shape.rodTip_m = si::m(cast.rodTip);
    return shape;
  }
  [[nodiscard]] LoopDrag strongest() const {
    LoopDrag drag = m_drag;
    drag.along = std::max(drag.along, m_air.alongDragHigh);
    drag.fly_m2 *= std::max(1.0, m_air.flyDragFactor);
    return drag;
  }

  void readDrive(Turnover& t, const std::vector<LoopBalance>& list, Station fly) const;
  void readRanges(Turnover& t) const;
  void vary(Turnover& t, TurnoverInput input, const LoopDrag& drag, double speed_m_per_s) const;

  const TurnoverConditions& m_conditions;
  AirSettings m_air;
  bool m_stepsUp;
  double m_speed_m_per_s, m_rodLeg_m_per_s;
  double m_windowEnd_m;
  LoopDrag m_drag;
  double m_nylon_m;
  RollingLoop m_loop;
};

/// Widens a range by a value met; notes the input when it changes the verdict and moves the reading
/// further than the one noted before.
template <class Verdict, class Judge>
void widen(TurnoverRange& range, double middle, double met, Verdict verdict, TurnoverInput input,
           double& furthest, Judge judge) {
  range.low = std::min(range.low, met);
  range.high = std::max(range.high, met);
  const double moved = std::abs(met - middle);
  if (judge(met) == verdict || moved <= furthest) return;
  furthest = moved;
  range.hangsOn = input;
}

void Reader::readDrive(Turnover& t, const std::vector<LoopBalance>& list, Station fly) const {
  t.coast = si::toFeet(coast_m(list));
  const auto least = m_loop.leastDrive(m_drag, m_windowEnd_m);
  if (!least) return;
  t.drive = least->drive();
  t.driveVerdict = judgeDrive(*t.drive, m_conditions.limits);
  t.driveAt = fly - si::toFeet(least->x_m);
  t.drivePart = least->part;
}

void Reader::readRanges(Turnover& t) const {
  const AirSettings& air = m_air;
  t.reserveRange.low = t.reserveRange.high = t.reserve;
  t.paceRange.low = t.paceRange.high = t.pace;
  t.driveRange.low = t.driveRange.high = t.drive.value_or(0.0);
  struct Variant {
    TurnoverInput input;
    double along, flyFactor, speedFactor;
    bool high;
  };
  const double factor = std::max(1.0, air.flyDragFactor);
  const Variant variants[] = {
      {TurnoverInput::skinDrag, air.alongDragLow, 1.0, 1.0, false},
      {TurnoverInput::skinDrag, air.alongDragHigh, 1.0, 1.0, true},
      {TurnoverInput::flyDrag, air.alongDrag, 1.0 / factor, 1.0, false},
      {TurnoverInput::flyDrag, air.alongDrag, factor, 1.0, true},
      {TurnoverInput::lineSpeed, air.alongDrag, 1.0, 1.0 - air.lineSpeedShare, false},
      {TurnoverInput::lineSpeed, air.alongDrag, 1.0, 1.0 + air.lineSpeedShare, true},
  };
  const TurnoverLimits& limits = m_conditions.limits;
  double furthestReserve = 0.0, furthestDrive = 0.0, furthestPace = 0.0;
  for (const Variant& v : variants) {
    LoopDrag drag = m_drag;
    drag.along = v.along;
    drag.fly_m2 *= v.flyFactor;
    const double speed = m_speed_m_per_s * v.speedFactor;
    const bool sameDrag = v.input == TurnoverInput::lineSpeed;
    const LoopEnd end = m_loop.run(speed, m_rodLeg_m_per_s, drag);
    widen(t.paceRange, t.pace, end.speed_m_per_s / speed, t.paceVerdict, v.input, furthestPace,
          [&](double pace) { return judgePace(pace, m_stepsUp, limits); });
    const double least_m_per_s = t.leastLineSpeed ? si::m_per_s(*t.leastLineSpeed) : speed;
    double reserve = t.leastLineSpeed ? speed / least_m_per_s : 0.0;
    if (!sameDrag) {
      const auto least = leastSpeed_m_per_s(m_loop, m_rodLeg_m_per_s, drag, least_m_per_s);
      reserve = least ? speed / *least : 0.0;
    }
    widen(t.reserveRange, t.reserve, reserve, t.reserveVerdict, v.input, furthestReserve,
          [&](double r) { return judgeReserve(r, limits); });
    t.ends.push_back({v.input, v.high, reserve, t.drive.value_or(0.0), end.speed_m_per_s / speed});
    if (sameDrag || !t.drive) continue;  // pull and need both go with the square of the speed
    const double drive = m_loop.leastDrive(drag, m_windowEnd_m)->drive();
    t.ends.back().drive = drive;
    widen(t.driveRange, *t.drive, drive, *t.driveVerdict, v.input, furthestDrive,
          [&](double d) { return judgeDrive(d, limits); });
  }
}

void Reader::fill(Turnover& t, Station fly) const {
  const TurnoverLimits& limits = m_conditions.limits;
  const LoopEnd end = m_loop.run(m_speed_m_per_s, m_rodLeg_m_per_s, m_drag);
  t.arrives = end.arrives;
  t.flySpeed = si::toFeetPerSecond(end.speed_m_per_s);
  t.time = Seconds(end.time_s);
  t.endHeight = si::toFeet(end.height_m);
  t.pace = end.speed_m_per_s / m_speed_m_per_s;
  t.paceVerdict = judgePace(t.pace, m_stepsUp, limits);
  if (m_nylon_m > 0.0 && end.nylonSpeed_m_per_s > 0.0) {
    t.nylonKeep = end.speed_m_per_s / end.nylonSpeed_m_per_s;
    t.nylonVerdict =
        *t.nylonKeep < limits.nylonKeep ? NylonVerdict::flyTooBulky : NylonVerdict::fine;
  }
  const auto least = leastSpeed_m_per_s(m_loop, m_rodLeg_m_per_s, m_drag, m_speed_m_per_s);
  if (least) {
    t.leastLineSpeed = si::toFeetPerSecond(*least);
    t.reserve = m_speed_m_per_s / *least;
  }
  t.reserveVerdict = judgeReserve(t.reserve, limits);
  const auto list = m_loop.balance(m_drag);
  readDrive(t, list, fly);
  t.stations.reserve(list.size());
  for (const LoopBalance& at : list) {
    t.stations.push_back({fly - si::toFeet(at.x_m), si::toGrainsPerFoot(at.line_kg_per_m),
                          si::toGrainsPerFoot(at.need_kg_per_m), at.bareNylon});
  }
  readRanges(t);
}

}  // namespace

Grade grade(ReserveVerdict verdict) {
  if (verdict == ReserveVerdict::toSpare) return Grade::fits;
  return verdict == ReserveVerdict::marginal ? Grade::watch : Grade::wrong;
}

Grade grade(DriveVerdict verdict) {
  if (verdict == DriveVerdict::carries) return Grade::fits;
  return verdict == DriveVerdict::marginal ? Grade::watch : Grade::wrong;
}

Grade grade(PaceVerdict verdict) {
  return verdict == PaceVerdict::dies || verdict == PaceVerdict::kicks ? Grade::wrong : Grade::fits;
}

Grade grade(NylonVerdict verdict) {
  return verdict == NylonVerdict::fine ? Grade::fits : Grade::wrong;
}

tl::expected<CastLine, NoTurnover> castLine(const Rig& rig, const MassProfile& profile,
                                            bool learner) {
  const bool head = std::any_of(rig.parts.begin(), rig.parts.end(),
                                [](const Part& p) { return p.kind == PartKind::head; });
  if (!head) return tl::unexpected(NoTurnover::noHead);
  const auto fly = rig.flyIndex();
  if (!fly || !rig.parts[*fly].fly) return tl::unexpected(NoTurnover::noFly);
  if (rig.parts[*fly].fly->wetMass() < kNoMass) return tl::unexpected(NoTurnover::noFlyMass);
  const CastSetup cast = castSetup(rig, learner);
  const double parting_m_per_s = si::m_per_s(cast.lineSpeed) - si::m_per_s(cast.rodLegSpeed);
  if (!(parting_m_per_s >= kLeastParting_m_per_s)) return tl::unexpected(NoTurnover::tooSlow);
  auto line = airLine(rig, profile, cast.overhang);
  if (!line) return tl::unexpected(NoTurnover::tooShort);
  if (line->length_m() > si::m(kMostLine)) return tl::unexpected(NoTurnover::tooLong);
  return CastLine{cast, std::move(*line)};
}

tl::expected<Turnover, NoTurnover> turnover(const Rig& rig, const MassProfile& profile,
                                            const std::vector<Junction>& joints,
                                            const TurnoverConditions& conditions) {
  const auto flies = castLine(rig, profile, conditions.learner);
  if (!flies) return tl::unexpected(flies.error());
  const bool stepsUp = anyStepsUp(joints, conditions.limits.stepsUp);
  const Reader reader(flies->line, flies->cast, stepsUp, conditions);
  if (!reader.hasWay()) return tl::unexpected(NoTurnover::tooShort);
  Turnover t;
  t.cast = flies->cast;
  t.frontPart = frontPart(flies->line);
  reader.fill(t, profile.end);
  return t;
}

}  // namespace grainwise
