// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/trim.h"

#include "core/mass/profile.h"
#include "core/model/edits.h"
#include "core/model/limits.h"

namespace grainwise {
namespace {

constexpr Feet kLeastLeft{0.1};

Grains lineMassOf(const Part& part, double scale) {
  Rig alone;
  alone.parts = {part};
  alone.parts.front().label.reset();
  alone.parts.front().weighed.reset();
  return massProfile(alone).places.front().line * scale;
}

/// The sections that stay when `feet` go off the rod end (`fromRod`) or the fly end.
Part shortened(Part part, bool fromRod, Feet feet) {
  while (!part.sections.empty()) {
    const std::size_t last = fromRod ? 0 : part.sections.size() - 1;
    const Feet length = part.sections[last].length;
    if (length > feet) {
      const Feet cut = fromRod ? feet : length - feet;
      // What rounding has left of the feet may be too little to change the length.
      if (cut > Feet(0) && cut < length) {
        part = edits::withSectionSplit(part, last, cut);
        part = edits::withSectionRemoved(part, fromRod ? 0 : last + 1);
      }
      return part;
    }
    feet -= length;
    part = edits::withSectionRemoved(part, last);
  }
  return part;
}

}  // namespace

tl::expected<Trimmed, Problem> trimmed(const Part& part, PartEnd end, Feet feet) {
  const Feet whole = part.length();
  if (!(feet > Feet(0)) || feet > whole - kLeastLeft) {
    return tl::unexpected(Problem{"", 0, "",
                                  Problem::tr("%1 ft cannot come off %2 ft").arg(feet.value()).arg(whole.value()),
                                  Problem::tr("give less than its length")});
  }
  const bool fromRod = end == PartEnd::rod;
  const double scale = scaleOf(part);
  Trimmed result;
  result.before = lineMassOf(part, scale);
  result.part = shortened(part, fromRod, feet);
  result.after = lineMassOf(result.part, scale);
  const Section& cut = fromRod ? result.part.sections.front() : result.part.sections.back();
  const LineMass mass = sectionProperties(cut, part.kind, scale).mass;
  result.newEnd = fromRod ? mass.rodEnd : mass.flyEnd;
  if (part.label || part.weighed) result.part.label = result.after;
  result.part.weighed.reset();
  if (part.loops) {
    auto& loop = fromRod ? result.part.loops->rodEnd : result.part.loops->flyEnd;
    result.loopLost = loop && *loop > Grains(0);
    loop.reset();
    const Loops& loops = *result.part.loops;
    if (!loops.rodEnd && !loops.flyEnd && loops.kept == Kept{}) result.part.loops.reset();
  }
  return result;
}

}  // namespace grainwise
