// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/candidate.h"

#include <algorithm>

#include "core/model/edits.h"

namespace grainwise {
namespace {

DepthWay wayOf(Feet middle, const WantedWater& wanted) {
  if (middle < wanted.low) return DepthWay::tooShallow;
  return middle > wanted.high ? DepthWay::tooDeep : DepthWay::inside;
}

void judgeWanted(DepthFit& fit, const WantedWater& wanted, Feet waterDepth, Feet bottomTouch) {
  if (!fit.band) {
    const bool onTop = wanted.low <= Feet(0);
    fit.share = onTop ? 1.0 : 0.0;
    fit.way = onTop ? DepthWay::inside : DepthWay::onTop;
  } else if (isOnBottom(fit.state)) {
    const bool wantsBottom = wanted.high >= waterDepth - bottomTouch;
    fit.share = wantsBottom ? 1.0 : 0.0;
    fit.way = wantsBottom ? DepthWay::inside : DepthWay::onBottom;
  } else {
    fit.share = shareInside(*fit.band, wanted);
    fit.way = wayOf(fit.band->middle, wanted);
  }
}

}  // namespace

Rig withTip(const Rig& rig, const Part* tip) {
  Rig result = rig;
  std::erase_if(result.parts, isTipOrCoated);
  if (tip == nullptr) return result;
  const auto slots = edits::slotsFor(result, tip->kind);
  return slots ? edits::inserted(result, slots->first, *tip) : result;
}

const Part* tipOf(const Rig& rig) {
  const auto found = std::find_if(rig.parts.begin(), rig.parts.end(), isTipOrCoated);
  return found == rig.parts.end() ? nullptr : &*found;
}

TipSize tipSize(const Part& part) {
  Rig alone;
  alone.parts.push_back(part);
  const MassProfile profile = massProfile(alone);
  TipSize size;
  Feet line;
  Grains mass;
  for (const ProfileSpan& span : profile.spans) {
    size.length += span.length();
    if (span.sinks && !span.bareNylon) size.sinking += span.length();
    if (span.bareNylon) continue;
    line += span.length();
    mass += span.mass();
  }
  size.mass = profile.places.front().mass();
  if (line > Feet(0)) size.mean = mass / line;
  return size;
}

std::optional<WantedWater> wantedWater(const Pool& pool) {
  WantedWater wanted;
  if (pool.clearance) {
    wanted.low = std::max(pool.depth - pool.clearance->high, Feet(0));
    wanted.high = std::max(pool.depth - pool.clearance->low, Feet(0));
    wanted.offBottom = true;
    return wanted;
  }
  if (!pool.wantedDepth) return std::nullopt;
  wanted.low = std::min(pool.wantedDepth->low, pool.depth);
  wanted.high = std::min(pool.wantedDepth->high, pool.depth);
  return wanted;
}

double shareInside(const DepthBand& band, const WantedWater& wanted) {
  const Feet width = band.high - band.low;
  if (width <= Feet(0)) return wayOf(band.middle, wanted) == DepthWay::inside ? 1.0 : 0.0;
  const Feet inside = std::min(band.high, wanted.high) - std::max(band.low, wanted.low);
  return std::clamp(inside / width, 0.0, 1.0);
}

std::optional<DepthFit> depthFit(const Rig& rig, const MassProfile& profile,
                                 const std::optional<WantedWater>& wanted,
                                 const CurrentProfile& current, Feet bottomTouch) {
  const auto inWater = rigInWater(rig, profile, current);
  if (!inWater) return std::nullopt;
  const HangDown hang = hangDown(inWater->line, inWater->river);
  if (hang.state == DepthState::stillWater) return std::nullopt;
  DepthFit fit;
  fit.state = hang.state;
  fit.band = liveBand(hang, *rig.water->depth, currentShareOf(rig));
  if (wanted) judgeWanted(fit, *wanted, *rig.water->depth, bottomTouch);
  return fit;
}

}  // namespace grainwise
