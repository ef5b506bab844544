// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include "core/material/sink_rate.h"
#include "core/model/check.h"
#include "core/model/limits.h"
#include "core/report/csv.h"
#include "core/report/format.h"
#include "core/report/json.h"
#include "core/report/text.h"
#include "core/report/words.h"
#include "tests/support/random_rig.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;
using Json = nlohmann::ordered_json;

namespace {

Json jsonOf(const Rig& rig) { return Json::parse(reportJson(rig, analyse(rig))); }

std::vector<std::string> keysOf(const Json& object) {
  std::vector<std::string> keys;
  for (const auto& item : object.items()) keys.push_back(item.key());
  return keys;
}

std::vector<std::string> linesOf(const std::string& text, const std::string& end) {
  std::vector<std::string> lines;
  std::size_t begin = 0;
  for (std::size_t at = text.find(end); at != std::string::npos; at = text.find(end, begin)) {
    lines.push_back(text.substr(begin, at - begin));
    begin = at + end.size();
  }
  CHECK(begin == text.size());  // one line end at the very end
  return lines;
}

}  // namespace

TEST_CASE("The JSON report has its keys in their order") {
  const Json report = jsonOf(plainWinter());
  CHECK(keysOf(report) ==
        std::vector<std::string>{"format", "version", "name", "totals", "parts", "profile",
                                 "junctions", "rod", "grip", "fly", "turnover", "sections",
                                 "depth", "missing", "cautions"});
  CHECK(report["format"] == "grainwise-report");
  CHECK(report["version"] == 1);
  CHECK(report["name"] == "Test rig");
  CHECK(keysOf(report["totals"]) ==
        std::vector<std::string>{"length_ft", "mass_gr", "head_gr", "head_and_tip_gr",
                                 "center_of_mass_ft"});
  CHECK(keysOf(report["parts"][1]) ==
        std::vector<std::string>{"kind", "name", "start_ft", "length_ft", "mass_gr",
                                 "rod_end_gr_per_ft", "fly_end_gr_per_ft", "scaled_by"});
  CHECK(keysOf(report["profile"][0]) ==
        std::vector<std::string>{"at_ft", "gr_per_ft", "cumulative_gr"});
  CHECK(keysOf(report["junctions"][0]) ==
        std::vector<std::string>{"at_ft", "rod_side", "fly_side", "rod_side_gr_per_ft",
                                 "fly_side_gr_per_ft", "ratio", "ratio_3ft", "verdict"});
  CHECK(keysOf(report["rod"]) ==
        std::vector<std::string>{"window_gr", "head_verdict", "working_length_ft", "length_ratio",
                                 "length_verdict"});
  CHECK(keysOf(report["grip"]) ==
        std::vector<std::string>{"tip_share", "tip_share_verdict", "anchor_ratio",
                                 "anchor_verdict", "sinking_gr", "table_gr_per_ft"});
  CHECK(keysOf(report["fly"]) ==
        std::vector<std::string>{"tip_to_fly", "tip_to_fly_verdict", "feet_of_tip"});
  CHECK(keysOf(report["sections"][0]) ==
        std::vector<std::string>{"part", "section", "diameter_in", "density_g_cm3",
                                 "sink_in_per_s"});
}

TEST_CASE("The depth block has its keys, and the swing block only with its runs") {
  const Rig rig = plainWinter();
  const Json depth = jsonOf(rig)["depth"];
  CHECK(keysOf(depth) ==
        std::vector<std::string>{"hang_down_ft", "junction_ft", "surfaces_ft_from_fly", "on_bottom",
                                 "state", "held_by_rod", "swing_ft", "swing_low_ft",
                                 "swing_high_ft", "shape"});
  CHECK(depth["on_bottom"] == false);
  CHECK(depth["state"] == "hangs free");
  CHECK(depth["shape"].front()[0] == 0.0);
  CHECK(depth["shape"].front()[1] == depth["hang_down_ft"]);
  CHECK(depth["swing_ft"].get<double>() ==
        Approx(1.12 * depth["hang_down_ft"].get<double>()));
  const HeavyRuns runs = swingRuns(rig);
  const Json heavy = Json::parse(reportJson(rig, analyse(rig), runs));
  CHECK(keysOf(heavy["swing"]) ==
        std::vector<std::string>{"after_mend_ft", "deepest_ft", "swing_ft", "hang_down_ft",
                                 "to_10_deg_s", "bottom_share"});
  CHECK(heavy["depth"]["swing_ft"] == depth["swing_ft"]);
  CHECK(heavy["depth"]["swing_low_ft"].get<double>() == runs.band->band->low.value());
  CHECK(heavy["missing"] == Json::array());
}

TEST_CASE("A swing that never comes round says so where its time is left out") {
  Rig rig = plainWinter();
  HeavyRuns runs;
  runs.swing.emplace();
  runs.swing->end = SwingEnd::rests;
  runs.swing->swing = Feet(4);
  const Json report = Json::parse(reportJson(rig, analyse(rig), runs));
  CHECK_FALSE(report["swing"].contains("to_10_deg_s"));
  REQUIRE(report["missing"].size() == 1);
  CHECK(report["missing"][0].get<std::string>().find("straight below") != std::string::npos);
  rig.water->surfaceSpeed = FeetPerSecond(0);
  const Json still = jsonOf(rig);
  CHECK_FALSE(still.contains("depth"));
  CHECK(still["missing"][0] == "still water, under 0.1 ft/s: depth is left out");
}

TEST_CASE("The JSON report says what the analysis says") {
  const Rig rig = plainWinter();
  const Analysis analysis = analyse(rig);
  const Json report = jsonOf(rig);
  CHECK(report["totals"]["mass_gr"].get<double>() == analysis.totals.mass.value());
  CHECK(report["parts"].size() == rig.parts.size());
  CHECK(report["parts"][0]["kind"] == "running-line");
  CHECK(report["parts"][0]["start_ft"] == -100.0);
  CHECK(report["parts"][5]["kind"] == "fly");
  CHECK(report["parts"][5]["mass_gr"] == 33.0);
  CHECK(report["profile"].size() == analysis.rows.size());
  CHECK(report["profile"].back()["cumulative_gr"].get<double>() == analysis.totals.mass.value());
  CHECK(report["junctions"][0]["verdict"] == "smooth drop");
  CHECK(report["rod"]["head_verdict"] == "fits");
  CHECK(report["rod"]["window_gr"] == Json::array({525.0, 600.0}));
  CHECK(report["grip"]["tip_share_verdict"] == "right");
  CHECK(report["grip"]["anchor_verdict"] == "good");
  CHECK(report["grip"]["table_gr_per_ft"] == 11.0);
  CHECK(report["fly"]["tip_to_fly_verdict"] == "carries it");
  CHECK(report["missing"] == Json::array());
}

TEST_CASE("What cannot be computed is left out of the report with a line in missing") {
  Rig rig = plainWinter();
  rig.rod.reset();
  rig.parts.pop_back();
  const Json report = jsonOf(rig);
  CHECK_FALSE(report.contains("fly"));
  CHECK_FALSE(report["rod"].contains("window_gr"));
  CHECK_FALSE(report["grip"].contains("anchor_ratio"));
  CHECK(report["missing"].size() == 2);
  CHECK_FALSE(report.contains("turnover"));
  CHECK_FALSE(report.contains("depth"));
}

TEST_CASE("Section rates are in the rig's own water, 10 C and fresh when it states none") {
  Rig rig = plainWinter();
  const auto rateOfTip = [&] { return jsonOf(rig)["sections"][4]["sink_in_per_s"][0].get<double>(); };
  const auto rateIn = [&](const WaterState& water) {
    const SectionProperties is = massProfile(rig).spans[4].properties;
    return sinkRate(is.mass.rodEnd, is.diameterRodEnd, water).value();
  };
  CHECK(rateOfTip() == rateIn({Celsius(10), GramsPerKilogram(0)}));
  rig.water = Water{};
  rig.water->temperature = Celsius(2);
  rig.water->salinity = GramsPerKilogram(30);
  CHECK(rateOfTip() == rateIn({Celsius(2), GramsPerKilogram(30)}));
}

TEST_CASE("Every report of a random rig is valid JSON with finite numbers and stable bytes") {
  for (std::uint64_t seed = 1; seed <= 200; ++seed) {
    Random random(seed);
    const Rig rig = randomRig(random);
    INFO("seed " << seed);
    const std::string text = reportJson(rig, analyse(rig));
    REQUIRE(text == reportJson(Rig(rig), analyse(rig)));
    REQUIRE(text.find("null") == std::string::npos);
    const Json report = Json::parse(text);
    REQUIRE(report["missing"].is_array());
    REQUIRE(report["parts"].size() == rig.parts.size());
    REQUIRE(report["cautions"].size() <= 5);
    for (const std::string& plain : {reportText(rig, analyse(rig)), reportCsv(rig, analyse(rig))}) {
      REQUIRE(plain.find("nan") == std::string::npos);
      REQUIRE(plain.find("inf") == std::string::npos);
    }
  }
}

TEST_CASE("Rigs at the corners of the limits report finite numbers") {
  for (std::uint64_t seed = 1; seed <= 300; ++seed) {
    Random random(seed);
    const auto corner = [&](const Limit& limit) {
      const double low = limit.open ? std::max(limit.low, limit.high * 1e-12) : limit.low;
      const std::size_t pick = random.below(3);
      return pick == 0 ? low : pick == 1 ? limit.high : random.between(low, limit.high);
    };
    Rig rig = randomRig(random);
    for (Part& part : rig.parts) {
      for (Section& section : part.sections) {
        section.length = Feet(corner(limits::kLength));
        const auto set = [&](auto& along, const Limit& limit) {
          if (!along) return;
          using Q = decltype(along->rodEnd);
          *along = {Q(corner(limit)), Q(corner(limit))};
        };
        set(section.mass, limits::kGrainsPerFoot);
        set(section.diameter, limits::kDiameter);
        set(section.sinkRate, limits::kSinkRate);
        if (section.density) section.density = GramsPerCubicCentimetre(corner(limits::kDensity));
      }
      if (part.label) part.label = Grains(corner(limits::kLabel));
    }
    INFO("seed " << seed);
    for (const Problem& problem : check(rig)) FAIL_CHECK(describe(problem));
    const std::string text = reportJson(rig, analyse(rig));
    REQUIRE(text.find("null") == std::string::npos);
    const Json report = Json::parse(text);
    for (const Json& section : report["sections"]) {
      CHECK(section.contains("diameter_in"));
      CHECK(section.contains("density_g_cm3"));
      CHECK(section.contains("sink_in_per_s"));
    }
    for (const Json& joint : report["junctions"]) CHECK(joint.contains("ratio_3ft"));
  }
}

TEST_CASE("Numbers of the JSON report read back as the same doubles") {
  Rig rig = plainWinter();
  rig.parts[1].label = Grains(523.1);
  const Analysis analysis = analyse(rig);
  const Json report = jsonOf(rig);
  for (std::size_t i = 0; i < analysis.rows.size(); ++i) {
    CHECK(report["profile"][i]["cumulative_gr"].get<double>() == analysis.rows[i].soFar.value());
  }
  CHECK(report["parts"][1]["scaled_by"].get<double>() == scaleOf(rig.parts[1]));
}

TEST_CASE("A name with quotes, line breaks or broken UTF-8 cannot break a report") {
  Rig rig = plainWinter();
  rig.name = "one \"two\"\nthree\x1b[31m";
  rig.parts[1].name = "broken \xff name, with a comma";
  const Json report = jsonOf(rig);
  CHECK(report["name"] == rig.name);
  const std::string text = reportText(rig, analyse(rig));
  CHECK(text.rfind("one \"two\" three [31m\n", 0) == 0);
  CHECK(text.find('\x1b') == std::string::npos);
}

TEST_CASE("The CSV report has a block of totals, an empty line, and the profile") {
  const Analysis analysis = analyse(plainWinter());
  const auto lines = linesOf(reportCsv(plainWinter(), analysis), "\r\n");
  REQUIRE(lines.size() == 1 + 5 + 1 + 1 + analysis.rows.size());
  CHECK(lines[0] == "name,value,unit");
  CHECK(lines[1] == "length,37,ft");
  CHECK(lines[3] == "head,525,gr");
  CHECK(lines[6].empty());
  CHECK(lines[7] == "at_ft,gr_per_ft,cumulative_gr");
  CHECK(lines[8] == "0,12,0");
  CHECK(lines.back() == "37," + shortest(analysis.rows.back().mass.value()) + "," +
                            shortest(analysis.totals.mass.value()));
}

TEST_CASE("No field of the CSV report can be a spreadsheet's formula, whatever a file is called") {
  Rig rig = plainWinter();
  rig.name = "=cmd()";
  for (Part& part : rig.parts) part.name = "@SUM(A1)\t+1";
  const std::string text = reportCsv(rig, analyse(rig));
  CHECK(text.find("cmd") == std::string::npos);
  CHECK(text.find("SUM") == std::string::npos);
  int fields = 0;
  for (const std::string& line : linesOf(text, "\r\n")) {
    for (const std::string& field : linesOf(line + ",", ",")) {
      INFO(field);
      const bool number = field.find_first_not_of("0123456789.e+-") == std::string::npos;
      CHECK((number || field.find_first_not_of("abcdefghijklmnopqrstuvwxyz_0123456789") ==
                           std::string::npos));
      if (!field.empty()) CHECK(std::string("=+@\t").find(field[0]) == std::string::npos);
      ++fields;
    }
  }
  CHECK(fields > 30);
}

TEST_CASE("The text report names every reading with its verdict") {
  const std::string text = reportText(plainWinter(), analyse(plainWinter()));
  for (const char* wanted :
       {"Rod 13.0 ft #8, two hands", "525 gr on 525-600", "fits", "33.0 ft, 2.54 rods", "usual",
        "21 % of the head", "right", "14.0 ft, 1.08 rods", "good", "110 gr of sinking line",
        "3.33, the fly is 3.0 ft of tip", "carries it", "smooth drop", "no rule",
        "37.0 ft, 671 gr", "Cautions"}) {
    INFO(wanted << " in\n" << text);
    CHECK(text.find(wanted) != std::string::npos);
  }
  CHECK(text.find("Left out") == std::string::npos);
  CHECK(text.find("Scaled") == std::string::npos);
  for (const std::string& line : linesOf(text, "\n")) {
    CHECK((line.empty() || line.back() != ' '));
  }
}

TEST_CASE("The text report says what was scaled and by how much") {
  Rig rig = plainWinter();
  rig.parts[1].label = Grains(530);
  rig.parts[2].weighed = Weighed{Grains(112.2), std::nullopt, {}};
  rig.parts[2].name = "Ten feet";
  const std::string text = reportText(rig, analyse(rig));
  CHECK(text.find("Scaled: head by 1.0095 to its label of 530 gr\n") != std::string::npos);
  CHECK(text.find("Scaled: Ten feet by 1.0200 to its weighed 112 gr\n") != std::string::npos);
}

TEST_CASE("The text report says which figures were measured") {
  Rig rig = plainWinter();
  CHECK(reportText(rig, analyse(rig)).find("measured") == std::string::npos);
  CHECK(reportText(rig, analyse(rig)).find("timed") == std::string::npos);
  rig.water->measured = CurrentFit{FeetPerSecond(3), FeetPerSecond(0.4), FeetPerSecond(4), {}, "2026-10-02", {}};
  Section& tip = rig.parts[2].sections[0];
  tip.timed = Timed{tip.sinkRate->rodEnd, {}, {}, {}, {}};
  const std::string text = reportText(rig, analyse(rig));
  CHECK(text.find("3.0 ft/s (measured +-0.4, stated 4.0, 2026-10-02) at the surface") !=
        std::string::npos);
  CHECK(text.find(", timed\n") != std::string::npos);
  rig.water->surfaceSpeed = FeetPerSecond(3.5);  // typed since: no longer what was measured
  tip.sinkRate = Along<InchesPerSecond>(InchesPerSecond(7));
  CHECK(reportText(rig, analyse(rig)).find("measured") == std::string::npos);
  CHECK(reportText(rig, analyse(rig)).find("timed") == std::string::npos);
}

TEST_CASE("The front thirty feet are spoken of in text only where the line-number table speaks") {
  Rig rig = onRod(rigOf({head({floating(30, 4.8)}, Style::singleHand), fly(1)}), 9, 5, 1);
  CHECK(reportText(rig, analyse(rig)).find("front 30 ft 144 gr, table 134-146") !=
        std::string::npos);
  rig.rod->hands = 2;
  CHECK(reportText(rig, analyse(rig)).find("front 30 ft") == std::string::npos);
}

TEST_CASE("A caution about a heavy tip stands only where something sinks") {
  const auto count = [](const Rig& rig) { return words::cautions(rig, analyse(rig)).size(); };
  CHECK(count(plainWinter()) == 5);  // and one about wading beside the depth
  CHECK(count(rigOf({fine480(), leader({nylon(9, 0.02)})})) == 3);
}

TEST_CASE("Numbers for people are rounded, with a point and without a minus zero") {
  CHECK(fixedText(-0.04, 1) == "0.0");
  CHECK(fixedText(-0.06, 1) == "-0.1");
  CHECK(fixedText(1e22, 0) == "10000000000000000000000");
  CHECK(grainsText(99.94) == "99.9");
  CHECK(grainsText(99.96) == "100");
  CHECK(feetText(2.5) == "2.5");
  CHECK(feetText(2.25) == "2.25");
  CHECK(roundFeetText(2.26) == "2.3");
  CHECK(ratioText(9.994) == "9.99");
  CHECK(ratioText(9.996) == "10.0");
  CHECK(percentText(0.2095) == "21 %");
}

TEST_CASE("A table's columns line up whatever the alphabet") {
  CHECK(alignedTable({{"\xc3\xa9\xc3\xa9", "1"}, {"abc", "22"}}, "lr") ==
        "\xc3\xa9\xc3\xa9    1\nabc  22\n");
}

TEST_CASE("The turnover block has the keys and words of the format, and --cast adds its own") {
  const Rig rig = plainWinter();
  const Analysis analysis = analyse(rig);
  HeavyRuns runs;
  addCast(runs, rig);
  const Json report = Json::parse(reportJson(rig, analysis, runs));
  const Json& turnover = report["turnover"];
  CHECK(keysOf(turnover) ==
        std::vector<std::string>{"reserve", "reserve_verdict", "reserve_range", "drive", "drive_at",
                                 "drive_verdict", "drive_range", "coast_ft", "pace", "pace_verdict",
                                 "pace_range", "fly_speed_m_per_s", "time_s", "end_height_m",
                                 "least_line_speed_m_per_s", "nylon_keep", "sentence"});
  CHECK(turnover["reserve_verdict"] == "turns over with speed to spare");
  CHECK(turnover["drive_verdict"] == "carries");
  CHECK(turnover["pace_verdict"] == "firm");
  CHECK(turnover["sentence"] == "the tip carries it and turns over with speed to spare");
  CHECK(turnover["drive_at"].get<std::string>().find(" ft, ") != std::string::npos);
  CHECK(turnover["fly_speed_m_per_s"].get<double>() / (55 * 0.3048) ==
        Approx(turnover["pace"].get<double>()));
  CHECK(keysOf(report["cast"]) ==
        std::vector<std::string>{"time_s", "fly_speed_m_per_s", "end_height_m"});
  CHECK(report["cast"]["time_s"].get<double>() ==
        Approx(turnover["time_s"].get<double>()).epsilon(0.1));
  CHECK_FALSE(jsonOf(rig).contains("cast"));
}

TEST_CASE("A cast that was asked for and cannot be run is missing") {
  Rig rig = plainWinter();
  rig.parts.pop_back();
  const Analysis analysis = analyse(rig);
  HeavyRuns runs;
  addCast(runs, rig);
  const Json report = Json::parse(reportJson(rig, analysis, runs));
  CHECK_FALSE(report.contains("cast"));
  CHECK(report["missing"].size() == analysis.missing.size() + 1);
  CHECK(reportText(rig, analysis, runs).find("the cast is left out") != std::string::npos);
}

TEST_CASE("Every turnover sentence says what to do when something is amiss") {
  Rig rig = plainWinter();
  const auto sentence = [&] { return words::turnoverSentence(rig, analyse(rig)); };
  rig.parts.back() = fly(45);  // 2.4 times the tip
  CHECK(sentence() == "the fly is heavy for this tip: a slow, open stroke");
  rig.parts.back() = fly(80);
  CHECK(sentence() == "the fly is too heavy for this tip: a denser tip or a lighter fly");
  rig.parts.back() = fly(33);
  rig.parts.back().fly->dragArea = SquareCentimetres(9);
  CHECK(sentence() == "the tip only just carries the fly: a smaller fly or a denser tip makes it sure");
  rig.parts.back().fly->dragArea = SquareCentimetres(20);
  CHECK(sentence() ==
        "the tip does not carry the fly: more mass per foot there, or a smaller fly");
  rig.parts.back() = fly(10);
  const FeetPerSecond least = analyse(rig).turnover->leastLineSpeed.value();
  rig.cast = Cast{};
  rig.cast->lineSpeed = least * 0.92;
  CHECK(sentence().rfind("probably will not turn over: ", 0) == 0);
  rig.cast->lineSpeed = least * 0.8;
  CHECK(sentence().rfind("will land in a heap: ", 0) == 0);
  rig.parts.pop_back();
  CHECK(sentence().empty());
}
