// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/bench/own_shelf.h"
#include "core/io/shelf_file.h"
#include "core/model/check.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Part named(const char* name, std::optional<std::string> id = {}, double perFoot = 11) {
  Part part = tip({sinking(10, perFoot, 7.5)});
  part.name = name;
  part.id = std::move(id);
  part.group = "Tips";
  return part;
}
Shelf shelfOf(std::vector<Part> parts) {
  Shelf shelf;
  shelf.parts = std::move(parts);
  return shelf;
}

}  // namespace

TEST_CASE("Own shelf: a part without id gets one of its own, from its name") {
  const Shelf generic = shelfOf({named("x", "ten-feet-11")});
  Part plain = named("Ten feet, 11");
  plain.group.reset();
  const Shelf own = ownShelf::with({}, plain, generic);
  CHECK(own.parts[0].id == "ten-feet-11-2");
  CHECK(own.parts[0].group == "Own parts");
  CHECK(check(own).empty());
  CHECK(ownShelf::freshId("***", generic, own) == "own");
  CHECK(ownShelf::freshId("", generic, own) == "own");
}

TEST_CASE("Own shelf: an edited generic part stands in its place until it is deleted") {
  const Shelf generic = shelfOf({named("one", "a"), named("two", "b")});
  const Shelf own = ownShelf::with({}, named("mine", "a", 12), generic);
  CHECK(merged(generic, own).parts[0].name == "mine");
  CHECK(merged(generic, own).parts.size() == 2);
  CHECK(merged(generic, ownShelf::without(own, "a")) == generic);
}

TEST_CASE("Own shelf: a copy stands behind its part with another id and name") {
  const Shelf own = shelfOf({named("one", "a"), named("two", "b")});
  const Shelf copied = ownShelf::duplicated(own, "a");
  REQUIRE(copied.parts.size() == 3);
  CHECK(copied.parts[1].id == "a-2");
  CHECK(copied.parts[1].name == "one (copy)");
  CHECK(check(copied).empty());
  CHECK(ownShelf::duplicated(own, "zz") == own);
  CHECK(ownShelf::duplicated({}, "a", own).parts.size() == 1);
}

TEST_CASE("Own shelf: importing keeps everything that is there, and importing again adds nothing") {
  const Shelf own = shelfOf({named("mine", "a", 12)});
  const Shelf other = shelfOf({named("theirs", "a", 14), named("new", "c")});
  const auto once = ownShelf::imported(own, other);
  CHECK(once.added == 2);
  CHECK(once.renamed == 1);
  CHECK(once.shelf.parts.size() == 3);
  CHECK(once.shelf.parts[0] == own.parts[0]);
  CHECK(check(once.shelf).empty());
  const auto same = ownShelf::imported(own, own);
  CHECK(same.same == 1);
  CHECK(same.shelf == own);
}

TEST_CASE("Own shelf: what is exported and read again is what was there") {
  const Shelf own = shelfOf({named("mine", "a", 12.5)});
  CHECK(readShelf(writeShelf(own)).value() == own);
}

TEST_CASE("Own shelf: a search finds every word, in any order and case") {
  const Part part = named("Winter tip", "a");
  CHECK(ownShelf::matches(part, ""));
  CHECK(ownShelf::matches(part, "  WINTER "));
  CHECK(ownShelf::matches(part, "11 gr/ft tip"));
  CHECK(ownShelf::matches(part, "sinking 10"));
  CHECK_FALSE(ownShelf::matches(part, "winter summer"));
  CHECK_FALSE(ownShelf::matches(part, "floating"));
}
