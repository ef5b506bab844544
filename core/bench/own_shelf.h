// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/model/shelf.h"

/// The user's own parts: edits on a shelf as pure functions. It is laid over the generic one by
/// `merged` (core/model/shelf.h), so that an own part with a generic id stands in its place, and
/// deleting it brings the generic one back.
namespace grainwise::ownShelf {

/// An id that neither shelf has: `wanted` in small letters, digits and dashes, with a number behind
/// it where it is taken.
std::string freshId(std::string_view wanted, const Shelf& generic, const Shelf& own);

/// `part` put on the shelf: over the part of its id where there is one, else at the end. A part
/// without id gets a fresh one from its name; without a group, the group "Own parts".
Shelf with(const Shelf& own, const Part& part, const Shelf& generic = {});

/// The part of that id once more, behind it, with a fresh id and " (copy)" in its name; of a generic
/// part, an own copy at the end. Unchanged when neither shelf has it.
Shelf duplicated(const Shelf& own, const std::string& id, const Shelf& generic = {});

Shelf without(const Shelf& own, const std::string& id);

struct Imported {
  Shelf shelf;
  int added = 0;
  int same = 0;     ///< that were there already, part for part
  int renamed = 0;  ///< whose id was taken by another part: both are kept
};
/// Another shelf laid into the own one; nothing that is there is changed or lost.
Imported imported(const Shelf& own, const Shelf& other, const Shelf& generic = {});

/// Whether every word of `search` occurs in the part's name, group, kind, style, notes of mass or
/// length ("11", "10 ft"), small and capital letters alike. An empty search finds everything.
bool matches(const Part& part, std::string_view search);

}  // namespace grainwise::ownShelf
