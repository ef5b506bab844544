// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/band.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/water/depth_basis.h"

namespace grainwise {
namespace {

constexpr double kSwingOverHang = 1.12;
constexpr double kShallower = 0.20;
constexpr double kDeeper = 0.30;
constexpr Feet kLeast{0.3};
constexpr double kShallowest = 2.0 / 3.0;
constexpr double kUsualCurrentShare = 0.12;
constexpr double kDepthPower = 1.3;  // of the depth with the surface speed
constexpr double kLeastCurrentShare = 0.02;

/// A half-width of the live estimate when the speed is known to `currentShare` instead of 12 %.
double narrowed(double usual, double currentShare) {
  const double change = kUsualCurrentShare * kUsualCurrentShare - currentShare * currentShare;
  return std::sqrt(std::max(0.0, usual * usual - kDepthPower * kDepthPower * change));
}

/// How far a rated rate may be off: less where it was timed and is still the timed one.
InchesPerSecond ratingOf(const Section& s, InchesPerSecond usual) {
  const Timed* timed = timedOf(s);
  return timed && timed->plusMinus ? std::min(usual, *timed->plusMinus) : usual;
}

/// `low` and `high` no nearer to the middle than 0.3 ft, but for the surface and the bed.
DepthBand widened(Feet low, Feet middle, Feet high, Feet waterDepth) {
  DepthBand band;
  band.middle = std::min(middle, waterDepth);
  band.low = std::min(low, std::max(band.middle - kLeast, band.middle * kShallowest));
  band.high = std::min(std::max(high, band.middle + kLeast), waterDepth);
  band.low = std::max(band.low, Feet(0));
  return band;
}

/// Everything that one run of the band starts from.
struct Case {
  Rig rig;
  CurrentProfile current;
  double speed = 1.0, drag = 1.0, flyDrag = 1.0;
  Seconds mend{0.0};
  Degrees angle{0.0};
};

bool isRated(const Section& s) { return s.sinkRate && s.mass && !s.diameter && !s.density; }

template <class F>
bool anySection(const Rig& rig, F&& has) {
  for (const Part& part : rig.parts) {
    for (const Section& s : part.sections) {
      if (has(part, s)) return true;
    }
  }
  return false;
}

/// Every rated section faster (`sign` 1) or slower (-1) by what it may be off.
void rateBy(Rig& rig, InchesPerSecond usual, double sign) {
  for (Part& part : rig.parts) {
    for (Section& s : part.sections) {
      if (!isRated(s)) continue;
      const InchesPerSecond change = ratingOf(s, usual) * sign;
      const auto changed = [&](InchesPerSecond rate) {
        return std::max(rate + change, rate * 0.5);  // a slow line does not come to float
      };
      s.sinkRate->rodEnd = changed(s.sinkRate->rodEnd);
      s.sinkRate->flyEnd = changed(s.sinkRate->flyEnd);
    }
  }
}

void headAt(Rig& rig, GramsPerCubicCentimetre density) {
  for (Part& part : rig.parts) {
    if (part.kind != PartKind::head) continue;
    for (Section& s : part.sections) {
      if (floatsByDefault(s)) s.density = density;
    }
  }
}

std::optional<RigInWater> inWater(const Case& c) {
  auto water = rigInWater(c.rig, massProfile(c.rig), c.current);
  if (!water) return water;
  water->river.profile = c.current;
  water->river.surface_m_per_s *= c.speed;
  water->river.acrossDragFactor = c.drag;
  water->line.fly.dragArea_m2 *= c.flyDrag;
  return water;
}

SwingResult runOf(const Case& c, const std::stop_token& stop) {
  auto water = inWater(c);
  if (!water) return {};
  water->setup.mend = std::max(water->setup.mend + c.mend, Seconds(0));
  water->setup.angle =
      std::clamp(water->setup.angle + c.angle, Degrees(0), Degrees(89));
  SwingOptions quick;
  quick.coarse = true;
  quick.settle = false;
  quick.frameEvery = Seconds(0);
  return swing(water->line, water->river, water->setup, quick, stop);
}

/// One source at its two ends.
struct Pair {
  BandSource source;
  Case one;
  Case other;
};

std::vector<Pair> pairsOf(const Case& middle, const WaterUncertainty& u) {
  std::vector<Pair> pairs;
  const auto add = [&](BandSource source, auto&& change) {
    Pair pair{source, middle, middle};
    change(pair.one, pair.other);
    pairs.push_back(std::move(pair));
  };
  add(BandSource::current, [&](Case& a, Case& b) {
    const double share = currentShareOf(middle.rig, u.current);
    a.speed = 1.0 - share;
    b.speed = 1.0 + share;
  });
  if (anySection(middle.rig, [](const Part&, const Section& s) { return isRated(s); })) {
    add(BandSource::rating, [&](Case& a, Case& b) {
      rateBy(a.rig, u.rating, 1.0);
      rateBy(b.rig, u.rating, -1.0);
    });
  }
  add(BandSource::drag, [&](Case& a, Case& b) {
    a.drag = 1.0 - u.drag;
    b.drag = 1.0 + u.drag;
  });
  add(BandSource::flyDrag, [&](Case& a, Case& b) {
    a.flyDrag = 1.0 / u.flyDrag;
    b.flyDrag = u.flyDrag;
  });
  add(BandSource::mend, [&](Case& a, Case& b) {
    a.mend = u.mend;
    b.mend = -u.mend;
  });
  add(BandSource::angle, [&](Case& a, Case& b) {
    a.angle = -u.angle;
    b.angle = u.angle;
  });
  const auto ofHead = [](const Part& part, const Section& s) {
    return part.kind == PartKind::head && floatsByDefault(s);
  };
  if (anySection(middle.rig, ofHead)) {
    add(BandSource::headDensity, [&](Case& a, Case& b) {
      headAt(a.rig, u.headHeavy);
      headAt(b.rig, u.headLight);
    });
  }
  if (middle.current.law == CurrentProfile::Law::power) {
    add(BandSource::profile, [&](Case& a, Case& b) {
      const ProfileRange range = profileRangeOf(middle.rig, u);
      a.current.exponent = range.steep;
      b.current.exponent = range.full;
    });
  }
  return pairs;
}

/// The live estimate of a case's swing depth.
std::optional<Feet> liveDepth(const Case& c, bool* onBottom = nullptr) {
  const auto water = inWater(c);
  if (!water) return std::nullopt;
  const HangDown hang = hangDown(water->line, water->river);
  if (!hasDepth(hang.state)) return std::nullopt;
  if (onBottom) *onBottom = isOnBottom(hang.state);
  return std::min(hang.fly * kSwingOverHang, *c.rig.water->depth);
}

}  // namespace

std::optional<LiveEnds> liveEnds(const Rig& rig, const CurrentProfile& current,
                                 const WaterUncertainty& uncertainty) {
  const Case middleCase{rig, profileOf(rig, current)};
  LiveEnds live;
  const auto middle = liveDepth(middleCase, &live.onBottom);
  if (!middle) return std::nullopt;
  live.middle = *middle;
  for (const Pair& pair : pairsOf(middleCase, uncertainty)) {
    if (pair.source == BandSource::mend || pair.source == BandSource::angle) continue;
    live.ends.push_back({pair.source, liveDepth(pair.one), liveDepth(pair.other)});
  }
  return live;
}

double currentShareOf(const Rig& rig, double usual) {
  if (!rig.water) return usual;
  const CurrentFit* fit = holding(rig.water->measured, rig.water->surfaceSpeed);
  if (!fit || !fit->plusMinus || !(fit->speed.value() > 0.0)) return usual;
  return std::min(usual, std::max(kLeastCurrentShare, *fit->plusMinus / fit->speed));
}

std::optional<DepthBand> liveBand(const HangDown& hang, Feet waterDepth, double currentShare) {
  if (!hasDepth(hang.state)) return std::nullopt;
  const Feet middle = std::min(hang.fly * kSwingOverHang, waterDepth);
  return widened(middle * (1.0 - narrowed(kShallower, currentShare)), middle,
                 middle * (1.0 + narrowed(kDeeper, currentShare)), waterDepth);
}

SwingBand swingBand(const Rig& rig, const CurrentProfile& current,
                    const WaterUncertainty& uncertainty, std::stop_token stop,
                    const std::function<void(double)>& progress) {
  SwingBand result;
  const Case middleCase{rig, profileOf(rig, current)};
  const SwingResult middle = runOf(middleCase, stop);
  result.end = middle.end;
  result.runs = 1;
  if (!middle.swing || middle.end == SwingEnd::stopped) return result;
  result.middle = middle.swing;
  const auto pairs = pairsOf(middleCase, uncertainty);
  double shallower2 = 0.0, deeper2 = 0.0;
  for (std::size_t i = 0; i < pairs.size(); ++i) {
    if (progress) {
      progress((1.0 + 2.0 * static_cast<double>(i)) /
               (1.0 + 2.0 * static_cast<double>(pairs.size())));
    }
    const std::array<SwingResult, 2> ends{runOf(pairs[i].one, stop), runOf(pairs[i].other, stop)};
    BandShare share{pairs[i].source, Feet(0), Feet(0)};
    for (const SwingResult& end : ends) {
      if (stop.stop_requested()) {
        result.end = SwingEnd::stopped;
        return result;
      }
      ++result.runs;
      if (!end.swing) continue;
      share.shallower = std::max(share.shallower, *middle.swing - *end.swing);
      share.deeper = std::max(share.deeper, *end.swing - *middle.swing);
    }
    result.ends.push_back({pairs[i].source, ends[0].swing, ends[1].swing});
    shallower2 += share.shallower.value() * share.shallower.value();
    deeper2 += share.deeper.value() * share.deeper.value();
    result.shares.push_back(share);
  }
  std::stable_sort(result.shares.begin(), result.shares.end(),
                   [](const BandShare& a, const BandShare& b) {
                     return a.shallower + a.deeper > b.shallower + b.deeper;
                   });
  result.band = widened(*middle.swing - Feet(std::sqrt(shallower2)), *middle.swing,
                        *middle.swing + Feet(std::sqrt(deeper2)), *rig.water->depth);
  result.band->fromRuns = true;
  result.band->bottomShare = middle.bottomShare;
  result.band->roundAfter = middle.timeTo10deg;
  if (progress) progress(1.0);
  return result;
}

}  // namespace grainwise
