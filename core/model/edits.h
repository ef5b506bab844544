// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>

#include "core/model/rig.h"

/// Every gesture on a rig as a pure function: the rig before in, the rig after out. An index that
/// does not exist is our bug (std::logic_error). None of them checks limits: the caller refuses what
/// `check` refuses.
namespace grainwise::edits {

/// Where a part of this kind may be inserted: first and last index, both included. Nothing when
/// there is no room (a second fly or running line, a fifth head piece, a 65th part).
struct Slots {
  std::size_t first;
  std::size_t last;
};
std::optional<Slots> slotsFor(const Rig& rig, PartKind kind);

/// The index in `slots` nearest to the wanted one.
std::size_t nearestSlot(const Slots& slots, std::size_t wanted);

/// `part` inserted before index `at` (which must lie within slotsFor). A shelf's id and group do
/// not come along.
Rig inserted(const Rig& rig, std::size_t at, const Part& part);
/// `part` put where it belongs: as near the fly as its kind allows; a fly or running line takes the
/// place of the one that is there.
Rig placed(const Rig& rig, const Part& part);
/// `part` in the place of the one of its kind that is nearest the fly; `placed` where there is none.
Rig instead(const Rig& rig, const Part& part);
Rig removed(const Rig& rig, std::size_t index);
Rig replaced(const Rig& rig, std::size_t index, const Part& part);
/// The part at `from` taken out and put before what then is index `to`; unchanged when the order of
/// kinds forbids it.
Rig moved(const Rig& rig, std::size_t from, std::size_t to);
/// Whether `moved` would change anything.
bool canMove(const Rig& rig, std::size_t from, std::size_t to);
/// The part at `index` once more, right behind itself, where a second one may stand.
Rig duplicated(const Rig& rig, std::size_t index);

Rig renamed(const Rig& rig, const std::string& name);
Rig withNotes(const Rig& rig, const std::string& notes);
Rig withRod(const Rig& rig, const Rod& rod);
Rig withWater(const Rig& rig, const std::optional<Water>& water);
Rig withCast(const Rig& rig, const std::optional<Cast>& cast);
Rig withSwing(const Rig& rig, const std::optional<Swing>& swing);

/// On one part, for the part editor.
Part withSection(const Part& part, std::size_t index, const Section& section);
Part withSectionInserted(const Part& part, std::size_t at, const Section& section);
Part withSectionRemoved(const Part& part, std::size_t index);
/// One section cut in two at `distance` from its rod end; tapers are divided so that the two together
/// weigh and reach exactly what the one did.
Part withSectionSplit(const Part& part, std::size_t index, Feet distance);

}  // namespace grainwise::edits
