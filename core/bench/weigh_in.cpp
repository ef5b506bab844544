// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/weigh_in.h"

#include <algorithm>
#include <cmath>

#include "core/bench/cut_sheet.h"
#include "core/mass/profile.h"
#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

/// A slip of the unit shows as the ratio of the two units, wider than any scale or label errs.
constexpr double kSlipSpread = 1.3;

std::optional<UnitSlip> slipOf(Grains nominal, Grains measured) {
  if (!(nominal > Grains(0))) return std::nullopt;
  const double grainsPerGram = si::toGrains(1e-3).value();
  const auto near = [](double ratio, double wanted) {
    return ratio > wanted / kSlipSpread && ratio < wanted * kSlipSpread;
  };
  const double ratio = measured / nominal;
  if (near(ratio, grainsPerGram)) return UnitSlip::grainsTakenForGrams;
  if (near(ratio, 1.0 / grainsPerGram)) return UnitSlip::gramsTakenForGrains;
  return std::nullopt;
}

}  // namespace

Grains nominalMass(const Part& part, const BenchRules& rules) {
  if (part.fly) return part.fly->dry;
  Rig rig;
  rig.parts = {withoutWeighing(part)};
  return massProfile(rig).places.front().mass() + spliceMass(part, rules);
}

Grains unstatedLoops(const Part& part, const BenchRules& rules) {
  return withProposedLoops(withoutWeighing(part), rules).loopMass() - part.loopMass();
}

tl::expected<WeighIn, Problem> weighIn(const Part& part, Grains measured,
                                       std::optional<Feet> length, const WeighRules& rules) {
  const bool isFly = part.kind == PartKind::fly;
  const auto wrong = breach(isFly ? limits::kFlyMass : limits::kWeighed, measured.value());
  if (wrong || !(measured > Grains(0))) {
    const Wording what =
        wrong ? wrong->what : Problem::tr("a mass of %1 gr is none").arg(measured.value());
    return tl::unexpected(Problem{"", 0, "", what, wrong ? wrong->fix : Problem::tr("weigh it again")});
  }
  if (!isFly && !(measured > part.loopMass())) {
    return tl::unexpected(Problem{"", 0, "",
                                  Problem::tr("%1 gr is not more than its loops, %2 gr")
                                      .arg(measured.value())
                                      .arg(part.loopMass().value()),
                                  Problem::tr("weigh it with its loops, or correct them")});
  }
  if (length) {
    if (const auto off = breach(limits::kLength, length->value())) {
      return tl::unexpected(Problem{"", 0, "", off->what, off->fix});
    }
  }
  WeighIn result;
  result.nominal = nominalMass(part, rules.bench);
  result.measured = measured;
  result.difference = measured - result.nominal;
  if (result.nominal > Grains(0)) result.share = result.difference / result.nominal;
  const Feet over = length.value_or(part.length());
  if (!isFly && over > Feet(0)) {
    const Grains splices = spliceMass(part, rules.bench);
    const Grains made = result.nominal - part.loopMass();  // line and splices, as meant
    const double line = splices > Grains(0) ? (made - splices) / made : 1.0;
    result.implied = (measured - part.loopMass()) * line / over;
  }
  result.tolerance = std::max(result.nominal * rules.share, rules.scaleStep * 0.5);
  if (result.difference > result.tolerance) result.verdict = WeighVerdict::heavy;
  if (result.difference < -result.tolerance) result.verdict = WeighVerdict::light;
  const Grains beyond = result.difference - unstatedLoops(part, rules.bench);
  result.fitsWithLoops = result.verdict == WeighVerdict::heavy && beyond <= result.tolerance && beyond >= -result.tolerance;
  if (result.verdict != WeighVerdict::fits) result.slip = slipOf(result.nominal, measured);
  return result;
}

Part weighedIn(const Part& part, Grains measured, const std::optional<std::string>& on) {
  Part result = part;
  if (part.kind == PartKind::fly) {
    Fly fly = part.fly.value_or(Fly{});
    if (fly.wet) fly.wet = measured + (*fly.wet - fly.dry);
    fly.dry = measured;
    result.fly = fly;
    return result;
  }
  Weighed weighed;
  weighed.mass = measured;
  weighed.on = on;
  result.weighed = weighed;
  return result;
}

Part withoutWeighing(const Part& part) {
  Part result = part;
  result.weighed.reset();
  return result;
}

Part withMeasuredLength(const Part& part, Feet length) {
  const Feet before = part.length();
  Part result = part;
  if (!(before > Feet(0)) || !(length > Feet(0))) return result;
  const double ratio = length / before;
  if (!std::isfinite(ratio)) return result;
  for (Section& section : result.sections) section.length = section.length * ratio;
  return result;
}

}  // namespace grainwise
