// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/landing.h"

#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/text/contexts.h"
#include "ui/text/words.h"

namespace grainwise::ui {

QString placeWords(PartKind kind) {
  switch (kind) {
    case PartKind::runningLine:
      return StripWords::tr("The running line stands first, behind the head.");
    case PartKind::head:
      return StripWords::tr("A head stands between the running line and the tip.");
    case PartKind::tip:
      return StripWords::tr("A tip stands between the head and the leader.");
    case PartKind::leader:
      return StripWords::tr("A leader stands between the tip and the tippet.");
    case PartKind::tippet:
      return StripWords::tr("A tippet stands between the leader and the fly.");
    case PartKind::fly:
      return StripWords::tr("The fly stands at the end of the line.");
  }
  return {};
}

QString noRoomWords(const Rig& rig, PartKind kind) {
  if (kind == PartKind::fly)
    return StripWords::tr("A line carries one fly: drop a new one on it to change it.");
  if (kind == PartKind::runningLine) {
    return StripWords::tr("A line has one running line: drop a new one on it to change it.");
  }
  if (rig.parts.size() >= limits::kParts) {
    return StripWords::tr("%1 parts are the most that a line can have: take one off first.")
        .arg(limits::kParts);
  }
  return StripWords::tr("%1 head pieces are the most that a line can have: take one off first.")
      .arg(limits::kHeadPieces);
}

Landing landingOfNew(const Rig& rig, const Part& part, std::size_t wanted, DisplayUnits units) {
  Landing landing;
  if (const auto slots = edits::slotsFor(rig, part.kind)) {
    landing.index = edits::nearestSlot(*slots, wanted);
    landing.rig = edits::inserted(rig, landing.index, part);
    landing.step = StripWords::tr("Add %1").arg(partWords(part, units));
    return landing;
  }
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const bool single = part.kind == PartKind::fly || part.kind == PartKind::runningLine;
    if (!single || rig.parts[i].kind != part.kind) continue;
    landing.index = i;
    landing.rig = edits::replaced(rig, i, part);
    landing.step = StripWords::tr("Change to %1").arg(partWords(part, units));
    return landing;
  }
  landing.why = rig.parts.size() >= limits::kParts ? noRoomWords(rig, PartKind::tip)
                                                    : noRoomWords(rig, part.kind);
  return landing;
}

Landing landingOfMoved(const Rig& rig, std::size_t from, std::size_t wanted) {
  Landing landing;
  landing.index = wanted > from ? wanted - 1 : wanted;
  const PartKind kind = rig.parts[from].kind;
  if (landing.index != from && !edits::canMove(rig, from, landing.index)) {
    landing.why = placeWords(kind);
    return landing;
  }
  landing.rig = edits::moved(rig, from, landing.index);
  landing.step = StripWords::tr("Move %1").arg(kindWords(kind));
  return landing;
}

}  // namespace grainwise::ui
