// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/identify.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/bench/scale_log.h"
#include "core/mass/profile.h"
#include "core/material/drag.h"
#include "core/material/sink_rate.h"
#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kPerFootScale = 0.05;
constexpr double kRateScale_in_per_s = 1.0;
constexpr double kLengthScale_ft = 1.0;
constexpr std::size_t kMostNear = 5;
constexpr std::array<double, 8> kTradeClasses{5, 7, 8, 10, 11, 14, 17, 20};

Problem refusal(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

/// Mass per foot of a level line of diameter d that sinks at w: weight = buoyancy + drag.
GrainsPerFoot perFootFrom(Inches diameter, InchesPerSecond rate, const WaterState& water) {
  const Fluid fluid = waterAt(water);
  const double d_m = si::m(diameter);
  const double w_m_per_s = si::m_per_s(rate);
  const double area_m2 = 0.25 * std::numbers::pi * d_m * d_m;
  const double re = w_m_per_s * d_m / fluid.nu_m2_per_s();
  const double drag_n_per_m = 0.5 * fluid.mu_pa_s * cylinderDrag(re).g * w_m_per_s;
  return si::toGrainsPerFoot(fluid.rho_kg_per_m3 * area_m2 +
                             drag_n_per_m / si::kGravity_m_per_s2);
}

GramsPerCubicCentimetre densityFrom(GrainsPerFoot mass, Inches diameter) {
  const double d_m = si::m(diameter);
  return si::toGramsPerCubicCentimetre(si::kg_per_m(mass) / (0.25 * std::numbers::pi * d_m * d_m));
}

std::optional<Problem> refused(const TipMeasures& measures) {
  int known = 0;
  std::optional<Problem> problem;
  const auto look = [&](const auto& measure, const Limit& limit) {
    if (!measure) return;
    ++known;
    if (const auto wrong = breach(limit, measure->value()); wrong && !problem) {
      problem = refusal(wrong->what, wrong->fix);
    }
  };
  look(measures.mass, limits::kWeighed);
  look(measures.length, limits::kLength);
  look(measures.diameter, limits::kDiameter);
  look(measures.sink, limits::kSinkRate);
  if (problem || known >= 2) return problem;
  return refusal(Problem::tr("one measure does not name a tip"),
                 Problem::tr("give two of mass, length, diameter and timed sink"));
}

std::optional<InchesPerSecond> rateOf(const Part& part) {
  for (const Section& section : part.sections) {
    if (!sinks(section, part.kind)) continue;
    if (section.sinkRate) return section.sinkRate->rodEnd;
    return sinkRates(sectionProperties(section, part.kind, scaleOf(part)), kRatingWater).rodEnd;
  }
  return std::nullopt;
}

std::vector<NearTip> nearestTips(const FoundTip& found, const std::optional<Feet>& length,
                                 const Shelf& shelf) {
  std::vector<NearTip> near;
  for (std::size_t i = 0; i < shelf.parts.size(); ++i) {
    const Part& part = shelf.parts[i];
    if (part.kind != PartKind::tip && !part.isCoatedLeader()) continue;
    Rig alone;
    alone.parts = {part};
    const GrainsPerFoot mean = massProfile(alone).places.front().line / part.length();
    const auto rate = rateOf(part);
    NearTip tip;
    tip.part = i;
    double squares = 0.0;
    const auto count = [&](double off) { squares += off * off; };
    if (found.perFoot) {
      tip.perFootOff = mean - *found.perFoot;
      count(*tip.perFootOff / *found.perFoot / kPerFootScale);
    }
    if (found.rate && !found.rateAssumed) {
      tip.rateOff = rate.value_or(InchesPerSecond(0)) - *found.rate;
      count(tip.rateOff->value() / kRateScale_in_per_s);
    }
    if (length) {
      tip.lengthOff = part.length() - *length;
      count(tip.lengthOff->value() / kLengthScale_ft);
    }
    tip.distance = std::sqrt(squares);
    near.push_back(tip);
  }
  std::stable_sort(near.begin(), near.end(),
                   [](const NearTip& a, const NearTip& b) { return a.distance < b.distance; });
  near.resize(std::min(near.size(), kMostNear));
  return near;
}

}  // namespace

tl::expected<FoundTip, Problem> findTip(const TipMeasures& measures, const Shelf& shelf) {
  if (auto problem = refused(measures)) return tl::unexpected(std::move(*problem));
  FoundTip found;
  found.diameter = measures.diameter;
  if (measures.mass && measures.length) {
    found.perFoot = *measures.mass / *measures.length;
  } else if (measures.diameter && measures.sink) {
    found.perFoot = perFootFrom(*measures.diameter, *measures.sink, measures.water);
  }
  if (found.perFoot) {
    if (const auto wrong = breach(limits::kGrainsPerFoot, found.perFoot->value())) {
      return tl::unexpected(refusal(wrong->what, wrong->fix));
    }
  }
  if (found.perFoot && !found.diameter && measures.sink) {
    found.diameter = diameterFromSinkRate(*found.perFoot, *measures.sink, measures.water);
    if (!found.diameter) {
      return tl::unexpected(refusal(Problem::tr("no line of this mass per foot sinks so fast"),
                                    Problem::tr("time it again, over a longer fall")));
    }
  }
  if (found.perFoot && found.diameter) {
    found.density = densityFrom(*found.perFoot, *found.diameter);
    found.rate = sinkRate(*found.perFoot, *found.diameter, kRatingWater);
  } else if (measures.sink) {
    found.rate = measures.sink;
  } else if (found.perFoot) {
    found.rate = tradeSinkRate(*found.perFoot);
    found.rateAssumed = true;
  }
  if (found.perFoot) {
    double nearest = kPerFootScale;
    for (const double grains : kTradeClasses) {
      const double off = std::abs(found.perFoot->value() / grains - 1.0);
      if (off > nearest) continue;
      nearest = off;
      found.tradeClass = GrainsPerFoot(grains);
    }
  }
  found.nearest = nearestTips(found, measures.length, shelf);
  return found;
}

}  // namespace grainwise
