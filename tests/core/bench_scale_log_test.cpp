// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/bench/scale_log.h"
#include "core/bench/weigh_in.h"
#include "core/mass/profile.h"
#include "core/material/agreement.h"
#include "core/model/check.h"

using namespace grainwise;

namespace {

ScaleLog readGuessed(const std::string& text) {
  return readScaleLog(text, guessMapping(text), "log.csv");
}

constexpr const char* kComma =
    "Tip,Mass (gr),Length (ft),Sink in/s,Date\n"
    "\"10 ft, eleven\",113.5,10,7.5,2026-03-02\n"
    "short one,59.2,5,,\n";

}  // namespace

TEST_CASE("Scale log: commas, a heading with units, and quotes") {
  const ScaleLog log = readGuessed(kComma);
  CHECK(log.problems.empty());
  REQUIRE(log.rows.size() == 2);
  CHECK(log.rows[0].name == "10 ft, eleven");
  CHECK(log.rows[0].mass == Grains(113.5));
  CHECK(log.rows[0].length == Feet(10));
  CHECK(log.rows[0].sinkRate == InchesPerSecond(7.5));
  CHECK(log.rows[0].date == "2026-03-02");
  CHECK_FALSE(log.rows[1].sinkRate);
  CHECK(log.rows[1].line == 3);
}

TEST_CASE("Scale log: semicolons with decimal commas and grams read the same tip") {
  const ScaleLog log = readGuessed(
      "\xEF\xBB\xBFname;mass_g;length_m\r\nten;7,3547;3,048\r\n\r\nfive;3,84;1,524\r\n");
  CHECK(log.problems.empty());
  REQUIRE(log.rows.size() == 2);
  CHECK(log.rows[0].mass->value() == Approx(113.5).margin(0.01));
  CHECK(log.rows[0].length->value() == Approx(10));
}

TEST_CASE("Scale log: tabs, and units in the cells instead of the heading") {
  const ScaleLog log = readGuessed("tip\tweighs\tlength\na\t34 g\t10 ft 6 in\nb\t525 gr\t7 m\n");
  CHECK(log.problems.empty());
  REQUIRE(log.rows.size() == 2);
  CHECK(log.rows[0].length->value() == Approx(10.5));
  CHECK(log.rows[1].mass == Grains(525));
}

TEST_CASE("Scale log: junk lines are told by number and spoil no other line") {
  const ScaleLog log = readGuessed(
      "name,mass gr,length ft\n"
      "good,110,10\n"
      "no unit at all,abc,10\n"
      "negative,-5,10\n"
      "--- end of page ---,,\n"
      "also good,55,5\n"
      "heavy,90000,10\n");
  REQUIRE(log.rows.size() == 2);
  CHECK(log.rows[1].name == "also good");
  REQUIRE(log.problems.size() == 4);
  CHECK(log.problems[0].line == 3);
  CHECK(log.problems[0].what == "\"abc\" is no mass");
  CHECK(log.problems[1].line == 4);
  CHECK(log.problems[2].line == 5);
  CHECK(log.problems[2].what.text().find("holds no mass") != std::string::npos);
  CHECK(log.problems[3].line == 7);
  for (const Problem& problem : log.problems) {
    CHECK(problem.file == "log.csv");
    CHECK_FALSE(problem.fix.empty());
  }
}

TEST_CASE("Scale log: a column without a unit is not guessed, until the user says which it is") {
  const std::string text = "name,mass,length ft\nten,113.5,10\n";
  LogMapping mapping = guessMapping(text);
  CHECK(readScaleLog(text, mapping).problems.size() == 1);
  mapping.columns[1].mass = MassUnit::grains;
  const ScaleLog log = readScaleLog(text, mapping);
  CHECK(log.problems.empty());
  CHECK(log.rows.front().mass == Grains(113.5));
}

TEST_CASE("Scale log: without a heading the first line counts, and columns can be given") {
  const std::string text = "ten;113,5 gr;10 ft\nfive;59,2 gr;5 ft\n";
  LogMapping mapping = guessMapping(text);
  CHECK_FALSE(mapping.heading);
  CHECK(readScaleLog(text, mapping).rows.size() == 2);
  mapping.columns[1].field = LogField::none;
  CHECK_FALSE(readScaleLog(text, mapping).rows.front().mass);
}

TEST_CASE("Scale log: nothing at all, and bytes that are no text, break nothing") {
  CHECK(readGuessed("").rows.empty());
  CHECK(readGuessed("\n\n\n").problems.empty());
  CHECK(readGuessed("\"unclosed,1,2\n").rows.empty());
  CHECK_FALSE(readGuessed(std::string("\0\xff,\x80\n1,2,3\n", 11)).problems.empty());
}

TEST_CASE("Scale log: a row becomes a sound tip that weighs what the scale said") {
  const auto log = readGuessed(kComma);
  const auto tip = tipOf(log.rows[0]);
  REQUIRE(tip);
  CHECK(check(tip->part).empty());
  CHECK(checkAgreement(tip->part).empty());
  CHECK(tip->part.weighed->mass == Grains(113.5));
  CHECK_FALSE(tip->rateAssumed);
  Rig rig;
  rig.parts = {tip->part};
  CHECK(massProfile(rig).places[0].mass().value() == Approx(113.5));
  const auto assumed = tipOf(log.rows[1]);
  CHECK(assumed->rateAssumed);
  CHECK(check(assumed->part).empty());
}

TEST_CASE("Scale log: sinking feet make a float/sink tip, within its length") {
  const auto log = readGuessed("name,gr/ft,length ft,sinking ft\na,11,10,7.5\nb,11,10,0\nc,11,10,12\n");
  REQUIRE(log.rows.size() == 3);
  const auto three = tipOf(log.rows[0]);
  REQUIRE(three);
  CHECK(three->part.style == Style::floatSink);
  REQUIRE(three->part.sections.size() == 2);
  CHECK(three->part.sections[0].length == Feet(2.5));
  CHECK(three->part.sections[0].floats == true);
  CHECK(tipOf(log.rows[1])->part.sections.size() == 1);
  CHECK(tipOf(log.rows[2]).error().what.text().find("more than its length") != std::string::npos);
}

TEST_CASE("Scale log: a row without length or mass is no tip, and says so") {
  const auto log = readGuessed("name,mass gr,length ft\na,110,\nb,,10\nc,5000,0.5\n");
  REQUIRE(log.rows.size() == 3);
  CHECK(tipOf(log.rows[0]).error().what.text().find("lacks a length") != std::string::npos);
  CHECK_FALSE(tipOf(log.rows[1]));
  CHECK(tipOf(log.rows[2]).error().what.text().find("grains per foot") != std::string::npos);
}

TEST_CASE("a tip whose name no file may hold is refused by its line") {
  for (const std::string& name : {std::string("caf\xE9"), std::string(4001, 'n')}) {
    LogRow row;
    row.line = 7;
    row.name = name;
    row.mass = Grains(110);
    row.length = Feet(10);
    const auto tip = tipOf(row);
    REQUIRE_FALSE(tip);
    CHECK(tip.error().line == 7);
    CHECK_FALSE(tip.error().fix.empty());
    row.name = "caf\xC3\xA9";
    CHECK(tipOf(row));
  }
}

TEST_CASE("Scale log: the trade's sink classes by grains per foot") {
  // Common practice, no source: 8 gr/ft about 6-7 in/s, 11 7-8, 14 8-9, 17 9-10.
  for (const auto& [mass, low, high] :
       {std::tuple{8., 6., 7.}, {11., 7., 8.}, {14., 8., 9.}, {17., 9., 10.}}) {
    const double rate = tradeSinkRate(GrainsPerFoot(mass)).value();
    CHECK(rate >= low);
    CHECK(rate <= high);
  }
  CHECK(tradeSinkRate(GrainsPerFoot(1)) == tradeSinkRate(GrainsPerFoot(5)));
}
