// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "tests/support/documents.h"

/// One document just inside and one just outside each limit of the file formats. The numbers are
/// those of the format's description, written out once more on purpose.
namespace grainwise::test {

/// The value at `at` in the sound document of `format` is replaced by `inside` (must be read) and
/// by `outside` (must be refused, at `blamed` or, when that is empty, at `at`, saying `says`).
struct LimitRow {
  const char* format;
  const char* at;
  const char* inside;
  const char* outside;
  const char* says;
  const char* blamed = "";
};

// clang-format off
inline const std::vector<LimitRow> kLimitRows{
  // format, pointer                            inside        outside       says
  {"rig", "/version",                           "1",          "2",          "version 2 is not known"},
  {"rig", "/version",                           "1.0",        "1.5",        "version 1.5 is not known"},
  {"rig", "/rod/length_ft",                     "0.000001",   "0",          "rod length 0"},
  {"rig", "/rod/length_ft",                     "30",         "30.000001",  "rod length 30.000001"},
  {"rig", "/rod/line_number",                   "0",          "-0.000001",  "line number"},
  {"rig", "/rod/line_number",                   "16",         "16.000001",  "line number"},
  {"rig", "/rod/hands",                         "1",          "0",          "number of hands 0"},
  {"rig", "/rod/hands",                         "2",          "3",          "number of hands 3"},
  {"rig", "/rod/hands",                         "2.0",        "1.5",        "hands is 1.5"},
  {"rig", "/rod/windows_gr/short/0",            "0",          "-0.000001",  "grain window"},
  {"rig", "/rod/windows_gr/short/1",            "5000",       "5000.00001", "grain window"},
  {"rig", "/rod/windows_gr/short",              "[525, 525]", "[525, 524]", "runs from 525 down to 524"},
  {"rig", "/rod/windows_gr/fine",               "[0, 5000]",  "[5, 4]",     "runs from 5 down"},
  {"rig", "/rod/windows_gr/long-belly",         "[0, 5000]",  "[5, 4]",     "runs from 5 down"},
  {"rig", "/rod/windows_gr/single-hand",        "[0, 5000]",  "[5, 4]",     "runs from 5 down"},
  {"rig", "/rod/window_gr/0",                   "0",          "-1",         "grain window -1"},
  {"rig", "/rod/window_gr/1",                   "5000",       "5001",       "grain window 5001"},
  {"rig", "/rod/window_gr",                     "[525, 525]", "[525, 524]", "runs from 525 down to 524"},
  {"rig", "/parts/1/label_gr",                  "0.000001",   "0",          "label mass 0"},
  {"rig", "/parts/1/label_gr",                  "5000",       "5000.00001", "label mass"},
  {"rig", "/parts/1/sections/0/length_ft",      "0.000001",   "0",          "length 0"},
  {"rig", "/parts/1/sections/0/length_ft",      "300",        "300.00001",  "length 300.00001"},
  {"rig", "/parts/1/sections/0/length_ft",      "1e-300",     "-1e-300",    "length -1e-300"},
  {"rig", "/parts/1/sections/0/gr_per_ft/0",    "0.000001",   "0",          "grains per foot 0"},
  {"rig", "/parts/1/sections/0/gr_per_ft/0",    "100",        "100.00001",  "grains per foot 100.00001"},
  {"rig", "/parts/1/sections/0/gr_per_ft/1",    "0.000001",   "0",          "grains per foot 0"},
  {"rig", "/parts/1/sections/0/gr_per_ft/1",    "100",        "100.00001",  "grains per foot 100.00001"},
  {"rig", "/parts/1/sections/1/gr_per_ft",      "0.000001",   "-0",         "grains per foot -0"},
  {"rig", "/parts/1/sections/1/gr_per_ft",      "100",        "100.00001",  "grains per foot 100.00001"},
  {"rig", "/parts/3/sections/0/diameter_in/0",  "0.001",      "0.00099999", "diameter 0.00099999"},
  {"rig", "/parts/3/sections/0/diameter_in/1",  "0.5",        "0.50000001", "diameter 0.50000001"},
  {"rig", "/parts/4/sections/0/diameter_in",    "0.001",      "0.00099999", "diameter 0.00099999"},
  {"rig", "/parts/4/sections/0/diameter_in",    "0.5",        "0.50000001", "diameter 0.50000001"},
  {"rig", "/parts/2/sections/1/sink_in_per_s/0","0.000001",   "0",          "sink rate 0"},
  {"rig", "/parts/2/sections/1/sink_in_per_s/1","20",         "20.000001",  "sink rate 20.000001"},
  {"rig", "/parts/2/sections/2/sink_in_per_s",  "0.000001",   "0",          "sink rate 0"},
  {"rig", "/parts/2/sections/2/sink_in_per_s",  "20",         "20.000001",  "sink rate 20.000001"},
  {"rig", "/parts/1/sections/1/density_g_cm3",  "0.3",        "0.29999999", "density 0.29999999"},
  {"rig", "/parts/1/sections/1/density_g_cm3",  "20",         "20.000001",  "density 20.000001"},
  {"rig", "/parts/2/loops/rod_end_gr",          "0",          "-0.000001",  "loop mass"},
  {"rig", "/parts/2/loops/rod_end_gr",          "50",         "50.000001",  "loop mass"},
  {"rig", "/parts/2/loops/fly_end_gr",          "0",          "-0.000001",  "loop mass"},
  {"rig", "/parts/2/loops/fly_end_gr",          "50",         "50.000001",  "loop mass"},
  {"rig", "/parts/2/weighed/mass_gr",           "4.7",        "4.6",        "the loops alone 4.6 gr"},
  {"rig", "/parts/2/weighed/mass_gr",           "5000",       "5000.00001", "weighed mass"},
  {"rig", "/parts/2/weighed/mass_gr",           "100",        "0",          "weighed mass 0"},
  {"rig", "/parts/2/weighed/on",                "\"2028-02-29\"", "\"2026-02-29\"", "no date"},
  {"rig", "/parts/2/weighed/on",                "\"2026-12-31\"", "\"2026-13-01\"", "no date"},
  {"rig", "/parts/2/weighed/on",                "\"2026-04-30\"", "\"2026-04-31\"", "no date"},
  {"rig", "/parts/2/weighed/on",                "\"2000-02-29\"", "\"2 March 2026\"", "no date"},
  {"rig", "/parts/2/sections/1/timed/in_per_s", "0.000001",   "0",          "sink rate 0"},
  {"rig", "/parts/2/sections/1/timed/in_per_s", "20",         "20.000001",  "sink rate 20.000001"},
  {"rig", "/parts/2/sections/1/timed/plus_minus_in_per_s", "0", "-0.000001", "uncertainty of the sink rate"},
  {"rig", "/parts/2/sections/1/timed/plus_minus_in_per_s", "20", "20.000001", "uncertainty of the sink rate"},
  {"rig", "/parts/2/sections/1/timed/rated_in_per_s/0", "20", "20.000001",  "sink rate 20.000001"},
  {"rig", "/parts/2/sections/1/timed/on",       "\"2028-02-29\"", "\"2 March\"", "no date"},
  {"pools", "/pools/0/measured/ft_per_s",       "0",          "-0.000001",  "surface speed"},
  {"pools", "/pools/0/measured/ft_per_s",       "15",         "15.000001",  "surface speed"},
  {"pools", "/pools/0/measured/plus_minus_ft_per_s", "0",     "-0.000001",  "uncertainty of the speed"},
  {"pools", "/pools/0/measured/plus_minus_ft_per_s", "15",    "15.000001",  "uncertainty of the speed"},
  {"pools", "/pools/0/measured/stated_ft_per_s", "15",        "15.000001",  "surface speed"},
  {"pools", "/pools/0/measured/fly_depth_ft",   "0.000001",   "0",          "depth of the fly"},
  {"pools", "/pools/0/measured/fly_depth_ft",   "60",         "60.000001",  "depth of the fly"},
  {"pools", "/pools/0/measured/on",             "\"2026-12-31\"", "\"2026-13-01\"", "no date"},
  {"rig", "/parts/5/dry_gr",                    "0",          "-0.000001",  "fly mass"},
  {"rig", "/parts/5/dry_gr",                    "33",         "33.000001",  "is less than dry_gr", "/parts/5/wet_gr"},
  {"rig", "/parts/5/wet_gr",                    "26",         "25.999999",  "is less than dry_gr"},
  {"rig", "/parts/5/wet_gr",                    "500",        "500.00001",  "fly mass 500.00001"},
  {"rig", "/parts/5/drag_area_cm2",             "0",          "-0.000001",  "drag area"},
  {"rig", "/parts/5/drag_area_cm2",             "100",        "100.00001",  "drag area"},
  {"rig", "/parts/5/density_g_cm3",             "0.3",        "0.29999999", "density"},
  {"rig", "/parts/5/density_g_cm3",             "20",         "20.000001",  "density"},
  {"rig", "/water/surface_ft_per_s",            "0",          "-0.000001",  "surface speed"},
  {"rig", "/water/surface_ft_per_s",            "15",         "15.000001",  "surface speed"},
  {"rig", "/water/depth_ft",                    "0.2",        "0.19999999", "depth 0.19999999"},
  {"rig", "/water/depth_ft",                    "60",         "60.000001",  "depth 60.000001"},
  {"rig", "/water/temperature_c",               "0",          "-0.000001",  "temperature"},
  {"rig", "/water/temperature_c",               "35",         "35.000001",  "temperature"},
  {"rig", "/water/salinity_g_per_kg",           "0",          "-0.000001",  "salinity"},
  {"rig", "/water/salinity_g_per_kg",           "45",         "45.000001",  "salinity"},
  {"rig", "/water/bed",                         "\"sand\"",  "\"mud\"",    "bed \"mud\" is not known"},
  {"rig", "/water/bed",                         "\"gravel\"", "\"Gravel\"", "bed \"Gravel\" is not known"},
  {"rig", "/water/bed",                         "\"cobbles\"", "5",         "bed is a number"},
  {"rig", "/water/bed",                         "\"boulders\"", "\"\"",     "bed \"\" is not known"},
  {"rig", "/cast/line_speed_ft_per_s",          "0.000001",   "0",          "line speed 0"},
  {"rig", "/cast/line_speed_ft_per_s",          "200",        "200.00001",  "line speed 200.00001"},
  {"rig", "/cast/loop_ft",                      "0.3",        "0.29999999", "loop 0.29999999"},
  {"rig", "/cast/loop_ft",                      "15",         "15.000001",  "loop 15.000001"},
  {"rig", "/cast/launch_deg",                   "-10",        "-10.000001", "launch angle"},
  {"rig", "/cast/launch_deg",                   "45",         "45.000001",  "launch angle"},
  {"rig", "/cast/rod_tip_ft",                   "0",          "-0.000001",  "rod tip height"},
  {"rig", "/cast/rod_tip_ft",                   "30",         "30.000001",  "rod tip height"},
  {"rig", "/cast/overhang_ft",                  "0",          "-0.000001",  "overhang"},
  {"rig", "/cast/overhang_ft",                  "30",         "30.000001",  "overhang"},
  {"rig", "/cast/air_altitude_ft",              "-1500",      "-1500.0001", "altitude of the air -1500.0001"},
  {"rig", "/cast/air_altitude_ft",              "20000",      "20000.0001", "altitude of the air 20000.0001"},
  {"rig", "/swing/line_out_ft",                 "10",         "9.9999999",  "line out"},
  {"rig", "/swing/line_out_ft",                 "150",        "150.00001",  "line out"},
  {"rig", "/swing/angle_deg",                   "0",          "-0.000001",  "angle"},
  {"rig", "/swing/angle_deg",                   "89",         "89.000001",  "angle"},
  {"rig", "/swing/mend_s",                      "0",          "-0.000001",  "mend"},
  {"rig", "/swing/mend_s",                      "30",         "30.000001",  "mend"},
  {"rig", "/swing/mend_s",                      "3",          "1e400",      "too large"},
  {"rig", "/swing/mend_s",                      "3",          "NaN",        "NaN is no number"},
  {"rig", "/swing/mend_s",                      "3",          "Infinity",   "Infinity is no number"},
  {"rig", "/swing/mend_s",                      "3",          "-Infinity",  "-Infinity is no number"},
  {"rig", "/swing/mend_s",                      "3",          "nan",        "nan is no number"},
  {"rig", "/parts/1/style",                     "\"fine\"",   "\"level\"",  "a head has no style \"level\""},
  {"rig", "/parts/1/style",                     "\"long-belly\"",  "\"belly\"", "style \"belly\" is not known"},
  {"rig", "/parts/1/style",                     "\"single-hand\"", "\"plain\"", "a head has no style"},
  {"rig", "/parts/1/style",                     "\"extension\"",   "\"coated\"", "a head has no style"},
  {"rig", "/parts/2/style",                     "\"level\"",  "\"short\"",  "a tip has no style \"short\""},
  {"rig", "/parts/2/style",                     "\"tapered\"", "\"coated\"", "a tip has no style"},
  {"rig", "/parts/3/style",                     "\"coated\"", "\"tapered\"", "a leader has no style"},
  {"rig", "/parts/0/kind",                      "\"head\"",   "\"hat\"",    "kind \"hat\" is not known"},
  {"rig", "/parts/0/sections/0/material",       "\"fluorocarbon\"", "\"silk\"", "material \"silk\" is not known"},
  {"rig", "/parts/2/kind",                      "\"tip\"",    "\"leader\"", "a leader has no style", "/parts/2/style"},
  {"rig", "/parts/1/sections/0/floats",         "true",       "false",      "gr_per_ft alone", "/parts/1/sections/0"},
  {"shelf", "/parts/0/id",                      "\"a\"",      "\"\"",       "id is empty"},
  {"shelf", "/parts/0/id",                      "\"Running\"", "\"running\"", "is taken", "/parts/1/id"},
  {"shelf", "/parts/0/sections/0/length_ft",    "300",        "301",        "length 301"},
  {"shelf", "/version",                         "1",          "0",          "version 0 is not known"},
  {"shelf", "/format",                          "\"grainwise-shelf\"", "\"grainwise-rig\"", "not a shelf"},
  {"pools", "/pools/0/surface_ft_per_s",        "0",          "-0.000001",  "surface speed"},
  {"pools", "/pools/0/surface_ft_per_s",        "15",         "15.000001",  "surface speed"},
  {"pools", "/pools/0/depth_ft",                "0.2",        "0.19999999", "depth"},
  {"pools", "/pools/0/depth_ft",                "60",         "60.000001",  "depth"},
  {"pools", "/pools/0/temperature_c",           "0",          "-0.000001",  "temperature"},
  {"pools", "/pools/0/temperature_c",           "35",         "35.000001",  "temperature"},
  {"pools", "/pools/0/salinity_g_per_kg",       "0",          "-0.000001",  "salinity"},
  {"pools", "/pools/0/salinity_g_per_kg",       "45",         "45.000001",  "salinity"},
  {"pools", "/pools/0/bed",                     "\"boulders\"", "\"mud\"",  "bed \"mud\" is not known"},
  {"pools", "/pools/0/angle_deg",               "0",          "-0.000001",  "angle"},
  {"pools", "/pools/0/angle_deg",               "89",         "89.000001",  "angle"},
  {"pools", "/pools/0/mend_s",                  "0",          "-0.000001",  "mend"},
  {"pools", "/pools/0/mend_s",                  "30",         "30.000001",  "mend"},
  {"pools", "/pools/0/clearance_ft/0",          "0",          "-0.000001",  "clearance"},
  {"pools", "/pools/0/clearance_ft/1",          "60",         "60.000001",  "clearance"},
  {"pools", "/pools/0/clearance_ft",            "[2, 2]",     "[2, 1.9]",   "runs from 2 down to 1.9"},
  {"pools", "/pools/1/wanted_depth_ft/0",       "0",          "-0.000001",  "wanted depth"},
  {"pools", "/pools/1/wanted_depth_ft/1",       "60",         "60.000001",  "wanted depth"},
  {"pools", "/pools/1/wanted_depth_ft",         "[2, 2]",     "[2, 1.9]",   "runs from 2 down to 1.9"},
  {"pools", "/pools/1/wanted_depth_ft",         "[2, 2]",     "[2]",        "has 1 entries"},
  {"pools", "/pools/1/wanted_depth_ft",         "[2, 2]",     "[2, 2, 3]",  "has 3 entries"},
  {"pools", "/version",                         "1",          "1e9",        "version 1e9 is not known"},
  {"spools", "/spools/0/gr_per_ft",             "0.000001",   "0",          "grains per foot"},
  {"spools", "/spools/0/gr_per_ft",             "100",        "100.00001",  "grains per foot"},
  {"spools", "/spools/2/diameter_in",           "0.001",      "0.00099999", "diameter"},
  {"spools", "/spools/2/diameter_in",           "0.5",        "0.50000001", "diameter"},
  {"spools", "/spools/0/sink_in_per_s",         "0.000001",   "0",          "sink rate"},
  {"spools", "/spools/0/sink_in_per_s",         "20",         "20.000001",  "sink rate"},
  {"spools", "/spools/0/feet_left",             "0",          "-0.000001",  "feet left"},
  {"spools", "/spools/0/feet_left",             "5000",       "5000.00001", "feet left"},
  {"spools", "/spools/2/material",              "\"nylon\"",  "\"wire\"",   "material \"wire\" is not known"},
  {"spools", "/version",                        "1",          "2",          "version 2 is not known"},
  {"deck", "/cards/0/show",                     "\"river\"",  "\"lake\"",   "show \"lake\" is not known"},
  {"deck", "/cards/0/rig_b",                    "\"a/b.rig.json\"", "\"/b.rig.json\"", "does not stay in the deck"},
  {"deck", "/cards/0/rig_b",                    "\"b\"",      "\"\"",       "is empty"},
  {"deck", "/cards/0/rig_b",                    "\"b\"",      "\"c:b\"",    "does not stay in the deck"},
  {"deck", "/cards/0/rig_b",                    "\"b\"",      "\"a\\\\b\"", "does not stay in the deck"},
  {"deck", "/cards/0/rig_b",                    "\"..b\"",    "\"..\"",     "does not stay in the deck"},
  {"deck", "/cards/0/rig_b",                    "\"a/...\"",  "\"a/../b\"", "does not stay in the deck"},
  {"deck", "/cards/0/rig/parts/0/dry_gr",       "500",        "500.00001",  "fly mass"},
  {"deck", "/version",                          "1",          "2",          "version 2 is not known"},
};
// clang-format on

/// Limits that are no single value: whole documents.
struct LimitDocument {
  std::string format;
  std::string about;
  std::string text;
  std::string blamed;  ///< empty: must be read
  std::string says;
};

inline std::string repeated(const std::string& item, int times) {
  std::string text;
  for (int i = 0; i < times; ++i) text += (i > 0 ? ", " : "") + item;
  return text;
}

/// `"xxx"` of so many characters, each of three bytes.
inline std::string longText(int characters) {
  std::string text = "\"";
  for (int i = 0; i < characters; ++i) text += "\u2020";
  return text + "\"";
}

inline std::string rigOf(const std::string& parts) {
  return R"({"format": "grainwise-rig", "version": 1, "name": "n", "parts": [)" + parts + "]}";
}

inline std::string partOf(const std::string& kind, int sections = 1) {
  if (kind == "fly") return R"({"kind": "fly", "dry_gr": 1})";
  const std::string one = R"({"length_ft": 1, "gr_per_ft": 9, "floats": true})";
  return R"({"kind": ")" + kind + R"(", "sections": [)" + repeated(one, sections) + "]}";
}

inline std::string rigOfKinds(const std::vector<std::string>& kinds) {
  std::string parts;
  for (const std::string& kind : kinds) parts += (parts.empty() ? "" : ", ") + partOf(kind);
  return rigOf(parts);
}

inline std::string nested(int levels) {
  const int lists = levels - 1;  // the outermost object is level 1
  return withMember(kRigText, "",
                    "\"deep\": " + std::string(static_cast<std::size_t>(lists), '[') +
                        std::string(static_cast<std::size_t>(lists), ']'));
}

/// A sound rig, blown up with white space to so many bytes.
inline std::string ofSize(std::size_t bytes) {
  return kRigText + std::string(bytes - kRigText.size(), ' ');
}

inline std::vector<LimitDocument> limitDocuments() {
  const auto section = [](const std::string& members) {
    return rigOf(R"({"kind": "tip", "sections": [{"length_ft": 1)" + members + "}]}");
  };
  const std::string at = "/parts/0/sections/0";
  const std::string pool = R"({"name": "p", "surface_ft_per_s": 3, "depth_ft": 5})";
  std::vector<LimitDocument> all{
      {"rig", "1 part", rigOf(repeated(partOf("tip"), 1)), "", ""},
      {"rig", "no parts", rigOf(""), "/parts", "a rig needs parts"},
      {"rig", "64 parts", rigOf(repeated(partOf("tip"), 64)), "", ""},
      {"rig", "65 parts", rigOf(repeated(partOf("tip"), 65)), "/parts", "65 parts are too many"},
      {"rig", "no sections", rigOf(partOf("tip", 0)), "/parts/0/sections", "a tip needs sections"},
      {"rig", "64 sections", rigOf(partOf("tip", 64)), "", ""},
      {"rig", "65 sections", rigOf(partOf("tip", 65)), "/parts/0/sections",
       "65 sections are too many"},
      {"rig", "4 head pieces", rigOf(repeated(partOf("head"), 4)), "", ""},
      {"rig", "5 head pieces", rigOf(repeated(partOf("head"), 5)), "/parts/4/kind",
       "head piece number 5"},
      {"rig", "all kinds in order",
       rigOfKinds({"running-line", "head", "tip", "leader", "tippet", "fly"}), "", ""},
      {"rig", "tip behind a leader", rigOfKinds({"head", "leader", "tip", "fly"}), "/parts/2/kind",
       "a tip stands after a leader"},
      {"rig", "head in front of the running line", rigOfKinds({"head", "running-line"}),
       "/parts/1/kind", "a running line stands after a head"},
      {"rig", "two running lines", rigOfKinds({"running-line", "running-line"}), "/parts/1/kind",
       "a rig has one running line"},
      {"rig", "two flies", rigOfKinds({"tip", "fly", "fly"}), "/parts/2/kind", "a rig has one fly"},
      {"rig", "tips, leaders and tippets in any number",
       rigOfKinds({"tip", "tip", "tip", "leader", "leader", "tippet", "tippet"}), "", ""},
      {"rig", "text of 4,000 characters", with(kRigText, "/name", longText(4000)), "", ""},
      {"rig", "text of 4,001 characters", with(kRigText, "/name", longText(4001)), "/name",
       "4001 characters"},
      {"rig", "notes of 4,001 characters", with(kRigText, "/notes", longText(4001)), "/notes",
       "4001 characters"},
      {"rig", "hook of 4,001 characters", with(kRigText, "/parts/5/hook", longText(4001)),
       "/parts/5/hook", "4001 characters"},
      {"rig", "a fly with sections",
       withMember(kRigText, "/parts/5",
                  R"("sections": [{"length_ft": 1, "gr_per_ft": 9, "floats": true}])"),
       "/parts/5/sections", "a fly has no sections"},
      {"rig", "a fly with a label", withMember(kRigText, "/parts/5", R"("label_gr": 3)"),
       "/parts/5/label_gr", "a fly has no label_gr"},
      {"rig", "a fly with a style", withMember(kRigText, "/parts/5", R"("style": "plain")"),
       "/parts/5/style", "a fly has no style"},
      {"rig", "a fly with loops", withMember(kRigText, "/parts/5", R"("loops": {})"),
       "/parts/5/loops", "a fly has no loops"},
      {"rig", "a weighed fly", withMember(kRigText, "/parts/5", R"("weighed": {"mass_gr": 9})"),
       "/parts/5/weighed", "a fly has no weighed"},
      {"rig", "a tippet with a style", withMember(kRigText, "/parts/4", R"("style": "plain")"),
       "/parts/4/style", "a tippet has no style"},
      {"rig", "a tip with a hook", withMember(kRigText, "/parts/2", R"("hook": "2")"),
       "/parts/2/hook", "a tip has no hook"},
      {"rig", "a leader with a dry mass", withMember(kRigText, "/parts/3", R"("dry_gr": 2)"),
       "/parts/3/dry_gr", "a leader has no dry_gr"},
      {"rig", "a section of a length alone", section(""), at, "only the length"},
      {"rig", "a section of gr_per_ft alone", section(R"(, "gr_per_ft": 9)"), at,
       "gr_per_ft alone"},
      {"rig", "a section of diameter_in alone", section(R"(, "diameter_in": 0.02)"), at,
       "diameter_in alone"},
      {"rig", "a section of material alone", section(R"(, "material": "nylon")"), at,
       "neither gr_per_ft nor diameter_in"},
      {"rig", "a section that floats and no more", section(R"(, "floats": true)"), at,
       "neither gr_per_ft nor diameter_in"},
      {"rig", "a section of gr_per_ft and diameter_in",
       section(R"(, "gr_per_ft": 1, "diameter_in": 0.02)"), "", ""},
      {"rig", "a section of gr_per_ft and density",
       section(R"(, "gr_per_ft": 9, "density_g_cm3": 2)"), "", ""},
      {"rig", "a section of gr_per_ft and rate", section(R"(, "gr_per_ft": 9, "sink_in_per_s": 6)"),
       "", ""},
      {"rig", "a section of diameter_in and density",
       section(R"(, "diameter_in": 0.02, "density_g_cm3": 1.1)"), "", ""},
      {"rig", "a section of diameter_in that floats",
       section(R"(, "diameter_in": 0.02, "floats": true)"), at, "diameter_in alone"},
      // 0.02 in of nylon weigh 2383.442 x 1.14 x 0.02^2 = 1.08685 gr/ft.
      {"rig", "statements that agree within 2 %",
       section(R"(, "diameter_in": 0.02, "material": "nylon", "gr_per_ft": 1.106)"), "", ""},
      {"rig", "statements that differ by more than 2 %",
       section(R"(, "diameter_in": 0.02, "material": "nylon", "gr_per_ft": 1.112)"),
       at + "/gr_per_ft", "diameter_in with material"},
      {"rig", "nested 32 deep", nested(32), "", ""},
      {"rig", "nested 33 deep", nested(33),
       "/deep" +
           [] {
             std::string zeros;
             for (int i = 0; i < 31; ++i) zeros += "/0";
             return zeros;
           }(),
       "nested deeper than 32"},
      {"rig", "4 MiB", ofSize(4194304), "", ""},
      {"rig", "4 MiB and a byte", ofSize(4194305), "<document>", "larger than 4194304 bytes"},
      {"pools", "clearance and wanted depth",
       withMember(kPoolsText, "/pools/0", R"("wanted_depth_ft": [1, 2])"),
       "/pools/0/wanted_depth_ft", "both say where"},
      {"pools", "no pools", with(kPoolsText, "/pools", "[]"), "", ""},
      {"pools", "note of 4,001 characters", with(kPoolsText, "/pools/0/note", longText(4001)),
       "/pools/0/note", "4001 characters"},
      {"spools", "a spool of neither mass nor diameter",
       without(kSpoolsText, "/spools/0/gr_per_ft"), "/spools/0",
       "neither gr_per_ft nor diameter_in"},
      {"spools", "a spool of a diameter alone", without(kSpoolsText, "/spools/2/material"),
       "/spools/2", "diameter_in alone"},
      {"spools", "a spool of gr_per_ft alone", without(kSpoolsText, "/spools/1/floats"),
       "/spools/1", "does not say what its line does"},
      {"spools", "a spool that floats and sinks",
       withMember(kSpoolsText, "/spools/0", R"("floats": true)"), "/spools/0/sink_in_per_s",
       "floats is true"},
      {"spools", "a spool that does not float and sinks",
       withMember(kSpoolsText, "/spools/0", R"("floats": false)"), "", ""},
      {"deck", "title of 4,000 characters", with(kDeckText, "/title", longText(4000)), "", ""},
      {"deck", "title of 4,001 characters", with(kDeckText, "/title", longText(4001)), "/title",
       "4001 characters"},
      {"deck", "a card of 12 pools", with(kDeckText, "/cards/1/pools", '[' + repeated(pool, 12) + ']'), "", ""},
      {"deck", "a card of 13 pools", with(kDeckText, "/cards/1/pools", '[' + repeated(pool, 13) + ']'), "/cards/1/pools",
       "13 are too many"},
      {"deck", "a card of 12 tips", with(kDeckText, "/cards/1/parts", '[' + repeated(partOf("tip"), 12) + ']'), "", ""},
      {"deck", "a card of 13 tips", with(kDeckText, "/cards/1/parts", '[' + repeated(partOf("tip"), 13) + ']'), "/cards/1/parts",
       "13 are too many"},
      {"deck", "a whole rig file within a card",
       withMember(kDeckText, "/cards/0/rig", R"("format": "grainwise-rig", "version": 1)"), "", ""},
      {"deck", "a rig of another version within a card",
       withMember(kDeckText, "/cards/0/rig", R"("format": "grainwise-rig", "version": 2)"),
       "/cards/0/rig/version", "version 2 is not known"},
      {"deck", "a shelf within a card",
       withMember(kDeckText, "/cards/0/rig", R"("format": "grainwise-shelf", "version": 1)"),
       "/cards/0/rig/format", "not a rig"},
  };
  return all;
}

}  // namespace grainwise::test
