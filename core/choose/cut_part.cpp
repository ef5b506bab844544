// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/choose/cut_part.h"

#include <cmath>

#include "core/model/limits.h"

namespace grainwise {
namespace {

constexpr Feet kLeast(0.5);
constexpr Feet kRounding(1e-9);

}  // namespace

std::optional<Part> cutShorter(const Part& part, Feet feet, PartEnd end) {
  if (part.length() - feet < kLeast - kRounding) return std::nullopt;
  auto cut = trimmed(part, end, feet);
  if (!cut) return std::nullopt;
  cut->part.loops = part.loops;
  return std::move(cut->part);
}

std::optional<Part> tiedLonger(const Part& part, Feet feet) {
  const Feet before = part.length();
  const Feet after = before + feet;
  if (after < kLeast - kRounding || after.value() > limits::kLength.high) return std::nullopt;
  const double ratio = after / before;
  if (!std::isfinite(ratio)) return std::nullopt;
  Part result = part;
  for (Section& section : result.sections) section.length = section.length * ratio;
  if (result.label) result.label = *result.label * ratio;
  if (result.weighed) {
    const Grains line = result.weighed->mass - result.loopMass();
    result.weighed->mass = line * ratio + result.loopMass();
  }
  return result;
}

}  // namespace grainwise
