// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/check.h"

#include <catch2/catch.hpp>
#include <cmath>

#include "core/model/utf8.h"

using namespace grainwise;

namespace {

Section floating(double feet) {
  Section s;
  s.length = Feet(feet);
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(11));
  s.floats = true;
  return s;
}

Part tip() {
  Part part;
  part.kind = PartKind::tip;
  part.sections = {floating(10)};
  return part;
}

Part fly() {
  Part part;
  part.kind = PartKind::fly;
  part.fly = Fly{};
  return part;
}

std::vector<std::string> pointers(const Problems& problems) {
  std::vector<std::string> all;
  for (const Problem& p : problems) all.push_back(p.pointer);
  return all;
}

using Pointers = std::vector<std::string>;

}  // namespace

TEST_CASE("a sound value has no problems") {
  Rig rig;
  rig.parts = {tip(), fly()};
  CHECK(check(rig).empty());
  CHECK(check(tip()).empty());
}

TEST_CASE("all problems of a value come at once, in the order of the file") {
  Rig rig;
  rig.name = std::string(4001, 'x');
  rig.rod = Rod{};
  rig.rod->windows = Rod::Windows{};
  rig.rod->windows->fine = GrainWindow{Grains(9), Grains(8)};
  rig.rod->length = Feet(31);
  Part bad = tip();
  bad.style = Style::coated;
  bad.sections.push_back(floating(301));
  bad.sections.back().mass->rodEnd = GrainsPerFoot(101);
  bad.sections.push_back(Section{});
  bad.weighed = Weighed{Grains(3), "yesterday", {}};
  bad.loops = Loops{Grains(2), Grains(2), {}};
  rig.parts = {fly(), bad};
  rig.swing = Swing{Feet(5), std::nullopt, std::nullopt, {}};
  CHECK(pointers(check(rig)) ==
        Pointers{"/name", "/rod/length_ft", "/rod/windows_gr/fine", "/parts/1/kind",
                 "/parts/1/style", "/parts/1/sections/1/length_ft", "/parts/1/sections/1/gr_per_ft",
                 "/parts/1/sections/2", "/parts/1/sections/2/length_ft", "/parts/1/weighed/mass_gr",
                 "/parts/1/weighed/on", "/swing/line_out_ft"});
}

TEST_CASE("pointers stand below the place of the value") {
  Part bad = tip();
  bad.sections[0].length = Feet(0);
  CHECK(pointers(check(bad)) == Pointers{"/sections/0/length_ft"});
  CHECK(pointers(check(bad, "/parts/7")) == Pointers{"/parts/7/sections/0/length_ft"});
}

TEST_CASE("numbers that are not finite are outside every limit") {
  Part bad = tip();
  bad.sections[0].length = Feet(std::nan(""));
  bad.label = Grains(INFINITY);
  CHECK(pointers(check(bad)) == Pointers{"/label_gr", "/sections/0/length_ft"});
}

TEST_CASE("the message names the number as it was typed") {
  Part bad = tip();
  bad.sections[0].length = Feet(301);
  keepDigits(bad.sections[0].kept, "length_ft", 301, "301.00");
  CHECK(check(bad).front().what == "length 301.00 is outside its limits");
}

TEST_CASE("a fly needs its mass and a fly's figures need a fly") {
  Part bare = fly();
  bare.fly.reset();
  CHECK(pointers(check(bare)) == Pointers{"/dry_gr"});
  Part odd = tip();
  odd.fly = Fly{};
  odd.fly->wet = Grains(0);
  CHECK(pointers(check(odd)) == Pointers{"/wet_gr"});
}

TEST_CASE("rules that lean on something unread are left out, the others are not") {
  Rig rig;
  Part odd = tip();
  odd.style = Style::coated;
  odd.sections[0].floats.reset();
  odd.sections[0].length = Feet(301);
  rig.parts = {odd};
  Unread unread;
  CHECK(pointers(check(rig, "", unread)) ==
        Pointers{"/parts/0/style", "/parts/0/sections/0", "/parts/0/sections/0/length_ft"});
  unread.add("/parts/0/kind");
  CHECK(pointers(check(rig, "", unread)) ==
        Pointers{"/parts/0/sections/0", "/parts/0/sections/0/length_ft"});
  unread.add("/parts/0/sections/0/floats");
  CHECK(pointers(check(rig, "", unread)) == Pointers{"/parts/0/sections/0/length_ft"});
  unread.add("/parts/0/sections");
  CHECK(check(rig, "", unread).empty());
}

TEST_CASE("unread covers what is below it and touches what is above it") {
  Unread unread;
  CHECK_FALSE(unread.touches(""));
  unread.add("/a/1/b");
  CHECK(unread.covers("/a/1/b"));
  CHECK(unread.covers("/a/1/b/0"));
  CHECK_FALSE(unread.covers("/a/1/bc"));
  CHECK_FALSE(unread.covers("/a/1"));
  CHECK(unread.touches("/a/1"));
  CHECK(unread.touches(""));
  CHECK_FALSE(unread.touches("/a/10"));
  CHECK_FALSE(unread.touches("/a/1/a"));
}

TEST_CASE("text in the model must be UTF-8") {
  Rig rig;
  rig.parts = {tip()};
  rig.notes = "\xFF";
  CHECK(pointers(check(rig)) == Pointers{"/notes"});
}

TEST_CASE("characters are code points") {
  CHECK(codePoints("a\u00e9\u2020\U0001F41F") == 4);
  CHECK_FALSE(firstBadUtf8("a\u00e9\u2020\U0001F41F"));
  CHECK(firstBadUtf8("ab\xE2\x80") == 2u);
  CHECK(excerpt("\u2020\u2020\u2020", 2) == "\u2020\u2020...");
  CHECK(excerpt("a\nb\xFF", 9) == "a?b?");
}

TEST_CASE("no text of others moves the terminal that it is shown on") {
  CHECK(printable("plain \u00FC \u2020 \U0001F600") == "plain \u00FC \u2020 \U0001F600");
  CHECK(printable("a\x1B[31mb") == "a?[31mb");
  CHECK(printable("a\x7F\tb\nc") == "a??b?c");
  CHECK(printable("a\tb\nc", LineEnds::keep) == "a?b\nc");
  CHECK(printable("a\u009B" "31m") == "a?31m");       // C1: the control sequence introducer
  CHECK(printable("a\u202E" "b\u2066" "c") == "a?b?c");  // right-to-left override, isolate
  CHECK(printable("\u00A0\u2027\u202F\u2065") == "\u00A0\u2027\u202F\u2065");  // their neighbours
  CHECK(printable("\xC3(") == "?(");
  CHECK(describe({"a\x1B.rig.json", 3, "/k\u009B", "bad", "good"}) == "a?.rig.json:3: /k?: bad; good");
}

TEST_CASE("ids on a shelf are unique and no part lacks one") {
  Shelf shelf;
  shelf.parts = {tip(), tip(), tip()};
  for (Part& part : shelf.parts) part.group = "Tips";
  shelf.parts[0].id = "a";
  shelf.parts[1].id = "a";
  shelf.parts[2].group.reset();
  CHECK(pointers(check(shelf)) == Pointers{"/parts/1/id", "/parts/2/id", "/parts/2/group"});
}
