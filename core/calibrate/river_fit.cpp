// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/calibrate/calibrate.h"
#include "core/model/limits.h"
#include "core/numerics/root.h"
#include "core/water/band.h"

namespace grainwise {
namespace {

constexpr double kLeastSpeed_ft_per_s = 0.2;
constexpr double kMostSpeed_ft_per_s = 15.0;
constexpr numerics::RootOptions kToTheHundredth{1e-4, 1e-5, 60};

Problem refusal(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

/// Depth of the fly at surface speeds; the water's depth where the fly lies on the bed.
class DepthBySpeed {
 public:
  DepthBySpeed(const Rig& rig, DepthFound found, const CurrentProfile& current)
      : m_rig(rig), m_found(found), m_current(current), m_profile(massProfile(rig)) {}

  double operator()(double speed_ft_per_s) {
    m_rig.water->surfaceSpeed = FeetPerSecond(speed_ft_per_s);
    const auto inWater = rigInWater(m_rig, m_profile, m_current);
    const HangDown hang = hangDown(inWater->line, inWater->river);
    if (!hasDepth(hang.state)) return 0.0;
    if (isOnBottom(hang.state)) return m_rig.water->depth->value();
    if (m_found == DepthFound::hangingDown) return hang.fly.value();
    return liveBand(hang, *m_rig.water->depth)->middle.value();
  }

 private:
  Rig m_rig;
  DepthFound m_found;
  CurrentProfile m_current;
  MassProfile m_profile;
};

/// The speed at which the fly stands at `depth`; nothing when no speed does.
std::optional<double> speedFor(DepthBySpeed& depthAt, double depth_ft) {
  const auto off = [&](double speed) { return depthAt(speed) - depth_ft; };
  const auto root = numerics::findRoot(off, kLeastSpeed_ft_per_s, kMostSpeed_ft_per_s,
                                       kToTheHundredth);
  constexpr double kJump_ft = 0.02;  // where the fly drops to the bed there is no such depth
  if (!root.ok() || std::abs(root.f) > kJump_ft) return std::nullopt;
  return root.x;
}

std::optional<Problem> refused(const Rig& rig, const RiverMeasure& measure) {
  if (!rig.water || !rig.water->depth || !rig.water->surfaceSpeed) {
    return refusal(Problem::tr("the water's depth and speed are not known"), Problem::tr("give them first"));
  }
  if (!rigInWater(rig, massProfile(rig))) {
    return refusal(Problem::tr("there is no fly of known mass"), Problem::tr("add the fly that was fished"));
  }
  const Feet bed = *rig.water->depth;
  if (!(measure.flyDepth > Feet(0)) || !(measure.flyDepth < bed)) {
    return refusal(Problem::tr("a fly %1 ft down in %2 ft of water says nothing about the current")
                       .arg(measure.flyDepth.value())
                       .arg(bed.value()),
                   Problem::tr("measure where the fly hangs free, above the bottom"));
  }
  if (!(measure.plusMinus >= Feet(0)) || measure.plusMinus > bed) {
    return refusal(Problem::tr("how sure the depth is, is not a depth itself"), Problem::tr("give 0 ft or a little more"));
  }
  return std::nullopt;
}

double rounded(double value) { return std::round(value * 100.0) / 100.0; }

CurrentFit fitted(const RiverFit& fit, const RiverMeasure& measure,
                  const std::optional<CurrentFit>& before, FeetPerSecond speedBefore,
                  const std::optional<std::string>& on) {
  CurrentFit result;
  result.speed = FeetPerSecond(rounded(fit.speed.value()));
  result.plusMinus = FeetPerSecond(rounded(fit.plusMinus.value()));
  result.flyDepth = measure.flyDepth;
  const bool again = before && before->speed == speedBefore && before->stated;
  result.stated = again ? *before->stated : speedBefore;
  result.on = on;
  return result;
}

}  // namespace

tl::expected<RiverFit, Problem> riverFit(const Rig& rig, const RiverMeasure& measure,
                                         const Conditions& conditions) {
  if (auto problem = refused(rig, measure)) return tl::unexpected(std::move(*problem));
  DepthBySpeed depthAt(rig, measure.found, conditions.current);
  const auto speed = speedFor(depthAt, measure.flyDepth.value());
  if (!speed) {
    return tl::unexpected(refusal(Problem::tr("no current from 0.2 to 15 ft/s puts this rig's fly there"),
                                  Problem::tr("check the depth, the rig and the depth of the water")));
  }
  const double less = measure.flyDepth.value() - measure.plusMinus.value();
  const double more = measure.flyDepth.value() + measure.plusMinus.value();
  const double fast = speedFor(depthAt, less).value_or(kMostSpeed_ft_per_s);
  const double slow = speedFor(depthAt, more).value_or(kLeastSpeed_ft_per_s);
  RiverFit fit;
  fit.speed = FeetPerSecond(*speed);
  fit.plusMinus = FeetPerSecond(0.5 * std::abs(fast - slow));
  fit.stated = *rig.water->surfaceSpeed;
  return fit;
}

Rig withFittedCurrent(const Rig& rig, const RiverFit& fit, const RiverMeasure& measure,
                      const std::optional<std::string>& on) {
  Rig result = rig;
  if (!result.water || !result.water->surfaceSpeed) return result;
  Water& water = *result.water;
  water.measured = fitted(fit, measure, water.measured, *water.surfaceSpeed, on);
  water.surfaceSpeed = water.measured->speed;
  return result;
}

Pool withFittedCurrent(const Pool& pool, const RiverFit& fit, const RiverMeasure& measure,
                       const std::optional<std::string>& on) {
  Pool result = pool;
  result.measured = fitted(fit, measure, pool.measured, pool.surfaceSpeed, on);
  result.surfaceSpeed = result.measured->speed;
  return result;
}

Rig withStatedCurrent(const Rig& rig) {
  Rig result = rig;
  if (!result.water || !result.water->measured) return result;
  Water& water = *result.water;
  const bool holds = water.surfaceSpeed == water.measured->speed;
  if (holds && water.measured->stated) water.surfaceSpeed = *water.measured->stated;
  water.measured.reset();
  return result;
}

Pool withStatedCurrent(const Pool& pool) {
  Pool result = pool;
  if (!result.measured) return result;
  const bool holds = result.surfaceSpeed == result.measured->speed;
  if (holds && result.measured->stated) result.surfaceSpeed = *result.measured->stated;
  result.measured.reset();
  return result;
}

}  // namespace grainwise
