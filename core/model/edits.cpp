// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/edits.h"

#include <algorithm>
#include <stdexcept>

#include "core/model/limits.h"

namespace grainwise::edits {
namespace {

void require(bool holds, const char* what) {
  if (!holds) throw std::logic_error(what);
}

std::ptrdiff_t offset(std::size_t i) { return static_cast<std::ptrdiff_t>(i); }

bool onlyOne(PartKind kind) { return kind == PartKind::runningLine || kind == PartKind::fly; }

std::size_t countOf(const Rig& rig, PartKind kind) {
  return static_cast<std::size_t>(std::count_if(
      rig.parts.begin(), rig.parts.end(), [&](const Part& p) { return p.kind == kind; }));
}

Slots orderSlots(const std::vector<Part>& parts, PartKind kind) {
  const auto before = [&](const Part& p) { return p.kind < kind; };
  const auto upTo = [&](const Part& p) { return p.kind <= kind; };
  return {static_cast<std::size_t>(std::count_if(parts.begin(), parts.end(), before)),
          static_cast<std::size_t>(std::count_if(parts.begin(), parts.end(), upTo))};
}

}  // namespace

std::optional<Slots> slotsFor(const Rig& rig, PartKind kind) {
  const std::size_t have = countOf(rig, kind);
  if (rig.parts.size() >= limits::kParts) return std::nullopt;
  if (onlyOne(kind) && have > 0) return std::nullopt;
  if (kind == PartKind::head && have >= limits::kHeadPieces) return std::nullopt;
  return orderSlots(rig.parts, kind);
}

std::size_t nearestSlot(const Slots& slots, std::size_t wanted) {
  return std::clamp(wanted, slots.first, slots.last);
}

Rig inserted(const Rig& rig, std::size_t at, const Part& part) {
  const auto slots = slotsFor(rig, part.kind);
  require(slots && at >= slots->first && at <= slots->last, "inserted: no such place");
  Rig result = rig;
  const auto put = result.parts.insert(result.parts.begin() + offset(at), part);
  put->id.reset();
  put->group.reset();
  return result;
}

Rig placed(const Rig& rig, const Part& part) {
  if (const auto slots = slotsFor(rig, part.kind)) return inserted(rig, slots->last, part);
  if (!onlyOne(part.kind)) return rig;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    if (rig.parts[i].kind == part.kind) return replaced(rig, i, part);
  }
  return rig;
}

Rig instead(const Rig& rig, const Part& part) {
  for (std::size_t i = rig.parts.size(); i-- > 0;) {
    if (rig.parts[i].kind == part.kind) return replaced(rig, i, part);
  }
  return placed(rig, part);
}

Rig removed(const Rig& rig, std::size_t index) {
  require(index < rig.parts.size(), "removed: no such part");
  Rig result = rig;
  result.parts.erase(result.parts.begin() + offset(index));
  return result;
}

Rig replaced(const Rig& rig, std::size_t index, const Part& part) {
  require(index < rig.parts.size(), "replaced: no such part");
  Rig result = rig;
  Part& there = result.parts[index];
  there = part;
  there.id.reset();
  there.group.reset();
  return result;
}

bool canMove(const Rig& rig, std::size_t from, std::size_t to) {
  require(from < rig.parts.size(), "canMove: no such part");
  if (to == from || to >= rig.parts.size()) return false;
  std::vector<Part> rest = rig.parts;
  rest.erase(rest.begin() + offset(from));
  const Slots slots = orderSlots(rest, rig.parts[from].kind);
  return to >= slots.first && to <= slots.last;
}

Rig moved(const Rig& rig, std::size_t from, std::size_t to) {
  if (!canMove(rig, from, to)) return rig;
  Rig result = rig;
  Part part = result.parts[from];
  result.parts.erase(result.parts.begin() + offset(from));
  result.parts.insert(result.parts.begin() + offset(to), std::move(part));
  return result;
}

Rig duplicated(const Rig& rig, std::size_t index) {
  require(index < rig.parts.size(), "duplicated: no such part");
  if (!slotsFor(rig, rig.parts[index].kind)) return rig;
  return inserted(rig, index + 1, rig.parts[index]);
}

Rig renamed(const Rig& rig, const std::string& name) {
  Rig result = rig;
  result.name = name;
  return result;
}

Rig withNotes(const Rig& rig, const std::string& notes) {
  Rig result = rig;
  result.notes = notes;
  return result;
}

Rig withRod(const Rig& rig, const Rod& rod) {
  Rig result = rig;
  result.rod = rod;
  return result;
}

Rig withWater(const Rig& rig, const std::optional<Water>& water) {
  Rig result = rig;
  result.water = water;
  return result;
}

Rig withCast(const Rig& rig, const std::optional<Cast>& cast) {
  Rig result = rig;
  result.cast = cast;
  return result;
}

Rig withSwing(const Rig& rig, const std::optional<Swing>& swing) {
  Rig result = rig;
  result.swing = swing;
  return result;
}

Part withSection(const Part& part, std::size_t index, const Section& section) {
  require(index < part.sections.size(), "withSection: no such section");
  Part result = part;
  result.sections[index] = section;
  return result;
}

Part withSectionInserted(const Part& part, std::size_t at, const Section& section) {
  require(at <= part.sections.size(), "withSectionInserted: no such place");
  Part result = part;
  result.sections.insert(result.sections.begin() + offset(at), section);
  return result;
}

Part withSectionRemoved(const Part& part, std::size_t index) {
  require(index < part.sections.size(), "withSectionRemoved: no such section");
  Part result = part;
  result.sections.erase(result.sections.begin() + offset(index));
  return result;
}

namespace {

template <class Q>
void splitAlong(std::optional<Along<Q>>& rodPiece, std::optional<Along<Q>>& flyPiece, double share) {
  if (!rodPiece || !rodPiece->pair) return;
  const Q middle = rodPiece->rodEnd + (rodPiece->flyEnd - rodPiece->rodEnd) * share;
  flyPiece = Along<Q>(middle, rodPiece->flyEnd);
  rodPiece = Along<Q>(rodPiece->rodEnd, middle);
}

}  // namespace

Part withSectionSplit(const Part& part, std::size_t index, Feet distance) {
  require(index < part.sections.size(), "withSectionSplit: no such section");
  const Section& whole = part.sections[index];
  require(distance > Feet(0) && distance < whole.length, "withSectionSplit: outside the section");
  Section rodPiece = whole;
  Section flyPiece = whole;
  flyPiece.kept = {};
  rodPiece.length = distance;
  flyPiece.length = whole.length - distance;
  const double share = distance / whole.length;
  splitAlong(rodPiece.mass, flyPiece.mass, share);
  splitAlong(rodPiece.diameter, flyPiece.diameter, share);
  splitAlong(rodPiece.sinkRate, flyPiece.sinkRate, share);
  return withSectionInserted(withSection(part, index, rodPiece), index + 1, flyPiece);
}

}  // namespace grainwise::edits
