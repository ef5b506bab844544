// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/limit_rows.h"

using namespace grainwise;
using namespace grainwise::test;

namespace {

/// One problem and no other, at its place, with its words and with advice.
void mustBlame(const Problems& problems, const std::string& pointer, const std::string& says) {
  INFO(inWords(problems));
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().pointer == pointer);
  CHECK(problems.front().what.find(says) != std::string::npos);
  CHECK_FALSE(problems.front().fix.empty());
}

}  // namespace

TEST_CASE("a document just inside each limit is read and one just outside is refused") {
  for (const LimitRow& row : kLimitRows) {
    INFO(row.format << " " << row.at << " inside " << row.inside << " outside " << row.outside);
    const std::string& sound = soundText(row.format);
    const Problems inside = readAny(row.format, with(sound, row.at, row.inside)).problems;
    INFO(inWords(inside));
    CHECK(inside.empty());
    const Problems outside = readAny(row.format, with(sound, row.at, row.outside)).problems;
    mustBlame(outside, *row.blamed ? row.blamed : row.at, row.says);
    CHECK(outside.front().line > 0);
  }
}

TEST_CASE("whole documents inside the limits are read and those outside are refused") {
  for (const LimitDocument& document : limitDocuments()) {
    INFO(document.format << ": " << document.about);
    const Problems problems = readAny(document.format, document.text).problems;
    if (document.blamed.empty()) {
      INFO(inWords(problems));
      CHECK(problems.empty());
    } else {
      mustBlame(problems, document.blamed == "<document>" ? "" : document.blamed, document.says);
    }
  }
}

TEST_CASE("the message of a limit says what would be right") {
  const auto wrong =
      readRig(with(kRigText, "/parts/1/sections/0/length_ft", "301.50"), "a.rig.json");
  REQUIRE_FALSE(wrong);
  CHECK(describe(wrong.error().front()) ==
        "a.rig.json:26: /parts/1/sections/0/length_ft: length 301.50 is outside its limits; give "
        "over 0 to 300 ft");
}
