// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/river.h"

#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kSmoother = 2.0, kRougher = 1.0;

/// The exponent over a bed is one by this.
double rootOver(Bed bed) {
  switch (bed) {
    case Bed::sand:
      return 7.0;
    case Bed::gravel:
      return 6.0;
    case Bed::cobbles:
      return 5.0;
    case Bed::boulders:
      break;
  }
  return 4.0;
}

}  // namespace

CurrentProfile profileOver(Bed bed) {
  return {CurrentProfile::Law::power, 1.0 / rootOver(bed)};
}

ProfileRange profileRangeOver(Bed bed) {
  return {1.0 / (rootOver(bed) + kSmoother), 1.0 / (rootOver(bed) - kRougher)};
}

River riverOf(FeetPerSecond surface, Feet depth, const WaterState& water,
              const CurrentProfile& profile) {
  return {si::m_per_s(surface), si::m(depth), waterAt(water), profile, 1.0};
}

}  // namespace grainwise
