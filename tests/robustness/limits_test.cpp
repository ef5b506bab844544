// SPDX-License-Identifier: GPL-3.0-or-later
#include <regex>
#include <set>

#include "tests/support/limit_rows.h"

using namespace grainwise;
using namespace grainwise::test;

namespace {

/// One problem and no other, at its place, with its words and with advice.
void mustBlame(const Problems& problems, const std::string& pointer, const std::string& says) {
  INFO(inWords(problems));
  REQUIRE(problems.size() == 1);
  CHECK(problems.front().pointer == pointer);
  CHECK(problems.front().what.text().find(says) != std::string::npos);
  CHECK_FALSE(problems.front().fix.empty());
  // Sentences that a window can say in another language.
  CHECK(problems.front().what.form() != nullptr);
  CHECK(problems.front().fix.form() != nullptr);
}

/// A range of core/model/limits.h as it stands there.
struct Range {
  std::string what;
  double low = 0;
  double high = 0;
  bool open = false;
};

std::vector<Range> rangesInTheCode() {
  const std::string code = fileText(GRAINWISE_SOURCE_DIR "/core/model/limits.h");
  static const std::regex line(
      R"re(constexpr Limit k\w+\{"([^"]+)", "[^"]*", ([-\d.]+), ([-\d.]+)(, true)?\};)re");
  std::vector<Range> all;
  for (std::sregex_iterator it(code.begin(), code.end(), line), end; it != end; ++it) {
    const auto number = [&](std::size_t i) { return jsonNumber((*it)[i].str()).value(); };
    all.push_back({(*it)[1], number(2), number(3), (*it)[4].matched});
  }
  return all;
}

constexpr double kJust = 1e-4;  // the tables' "just outside" is never further away than this

bool triedAt(const Range& range, double end, bool above) {
  return std::any_of(kLimitRows.begin(), kLimitRows.end(), [&](const LimitRow& row) {
    if (std::string(row.says).rfind(range.what, 0) != 0) return false;
    const auto inside = jsonNumber(row.inside);
    const auto outside = jsonNumber(row.outside);
    if (!inside || !outside) return false;
    const bool opened = range.open && !above;
    const bool in = opened ? *inside > end && *inside <= end + kJust : *inside == end;
    const bool out = opened ? *outside == end
                            : (above ? *outside > end && *outside <= end + kJust
                                     : *outside < end && *outside >= end - kJust);
    return in && out;
  });
}

}  // namespace

TEST_CASE(
    "each end of each limit in the code has a row that just holds and one that just does not") {
  const std::vector<Range> ranges = rangesInTheCode();
  CHECK(ranges.size() >= 29);
  for (const Range& range : ranges) {
    if (range.what == "number of hands") continue;  // whole numbers: 0, 1, 2, 3 stand in the table
    INFO(range.what);
    const bool boundByLoops = range.what == "weighed mass";  // above its loops: another row
    CHECK((boundByLoops || triedAt(range, range.low, false)));
    CHECK(triedAt(range, range.high, true));
  }
}

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
