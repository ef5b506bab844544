// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <optional>

#include "core/mass/profile.h"
#include "core/model/pool.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "core/water/band.h"
#include "core/water/hang.h"

namespace grainwise {

/// What can stand between head and leader: a tip or a coated leader.
inline bool isTipOrCoated(const Part& part) {
  return part.kind == PartKind::tip || part.isCoatedLeader();
}

inline bool hasTips(const Shelf& shelf) {
  return std::any_of(shelf.parts.begin(), shelf.parts.end(), isTipOrCoated);
}

/// The rig with its tips and coated leaders taken out and `tip` between head and leader; nullptr: no
/// tip at all.
Rig withTip(const Rig& rig, const Part* tip);
/// The rig's first tip or coated leader.
const Part* tipOf(const Rig& rig);

/// What a tip is, for lists and families.
struct TipSize {
  Feet length;
  Feet sinking;        ///< of the length
  GrainsPerFoot mean;  ///< over its line that is not bare nylon
  Grains mass;
};
TipSize tipSize(const Part& part);

/// Where the fly is wanted, below the surface.
struct WantedWater {
  Feet low;  ///< the shallow end
  Feet high;
  bool offBottom = false;  ///< stated off the bottom
};
/// Nothing where a pool does not say.
std::optional<WantedWater> wantedWater(const Pool& pool);

enum class DepthWay { inside, tooShallow, tooDeep, onBottom, onTop };

/// A depth against the wanted water.
struct DepthFit {
  DepthState state = DepthState::hangs;
  std::optional<DepthBand> band;  ///< where there is a depth
  std::optional<double> share;    ///< of the band inside the wanted water; none: nothing is wanted
  DepthWay way = DepthWay::inside;  ///< of its middle
};

/// The live estimate of a rig in its own water (core/water/band.h), and the share of its band, taken
/// as evenly spread, that lies in the wanted water. A fly that lies on the bottom has a share of 1
/// where the bottom is wanted (within `bottomTouch`) and else of 0; one that stays on top likewise.
/// Nothing without water, in still water, or without a fly of known mass. Cost: about 50 us.
std::optional<DepthFit> depthFit(const Rig& rig, const MassProfile& profile,
                                 const std::optional<WantedWater>& wanted,
                                 const CurrentProfile& current = {}, Feet bottomTouch = Feet(0.1));

/// The share of a band in the wanted water.
double shareInside(const DepthBand& band, const WantedWater& wanted);

}  // namespace grainwise
