// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/rig_file.h"

#include <catch2/catch.hpp>

#include "core/model/edits.h"

using namespace grainwise;

namespace {

/// The example of the format's own description, in the canonical layout.
const char* const kExample = R"({
  "format": "grainwise-rig",
  "version": 1,
  "name": "Winter slot, weighted leech",
  "notes": "",
  "rod": {
    "length_ft": 13.0,
    "line_number": 8,
    "hands": 2,
    "windows_gr": { "short": [525, 600], "fine": [480, 540], "long-belly": [600, 700] }
  },
  "parts": [
    {
      "kind": "running-line",
      "name": "Mono 40 lb",
      "sections": [
        { "length_ft": 100, "diameter_in": 0.024, "material": "nylon" }
      ]
    },
    {
      "kind": "head",
      "style": "short",
      "name": "Short head 525",
      "label_gr": 525,
      "sections": [
        { "length_ft": 2, "gr_per_ft": [12, 24.5], "floats": true },
        { "length_ft": 17, "gr_per_ft": [24.5, 24], "floats": true },
        { "length_ft": 4, "gr_per_ft": [24, 14.125], "floats": true }
      ]
    },
    {
      "kind": "tip",
      "style": "float-sink",
      "name": "10 ft, 3/4 sinking, 11 gr/ft",
      "sections": [
        { "length_ft": 2.5, "gr_per_ft": 11, "floats": true },
        { "length_ft": 7.5, "gr_per_ft": 11, "sink_in_per_s": 7.5 }
      ],
      "loops": { "rod_end_gr": 2.3, "fly_end_gr": 2.3 },
      "weighed": { "mass_gr": 113.5, "on": "2026-03-02" }
    },
    {
      "kind": "leader",
      "sections": [
        { "length_ft": 1.5, "diameter_in": 0.017, "material": "nylon" }
      ]
    },
    {
      "kind": "tippet",
      "sections": [
        { "length_ft": 2.5, "diameter_in": 0.013, "material": "fluorocarbon" }
      ]
    },
    {
      "kind": "fly",
      "name": "Weighted leech",
      "dry_gr": 26,
      "wet_gr": 33,
      "drag_area_cm2": 3.5,
      "density_g_cm3": 2.9,
      "sinks_head_first": true,
      "hook": "2"
    }
  ],
  "water": { "name": "Mill Run", "surface_ft_per_s": 3.0, "depth_ft": 5, "temperature_c": 7, "salinity_g_per_kg": 0 },
  "cast": { "line_speed_ft_per_s": 55, "loop_ft": 5, "launch_deg": 6, "rod_tip_ft": 13, "overhang_ft": 3 },
  "swing": { "line_out_ft": 75, "angle_deg": 45, "mend_s": 3 }
}
)";

std::string replaced(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

Rig readGood(const std::string& text) {
  const auto rig = readRig(text);
  if (!rig) FAIL(describe(rig.error().front()));
  return *rig;
}

}  // namespace

TEST_CASE("the example rig comes back byte for byte") {
  CHECK(writeRig(readGood(kExample)) == kExample);
}

TEST_CASE("every member of the example rig lands in its place") {
  const Rig rig = readGood(kExample);
  CHECK(rig.name == "Winter slot, weighted leech");
  CHECK(rig.notes == "");
  REQUIRE(rig.rod);
  CHECK(rig.rod->length == Feet(13));
  CHECK(rig.rod->lineNumber == 8);
  CHECK(rig.rod->hands == 2);
  CHECK(rig.rod->windows->shortHead->low == Grains(525));
  CHECK(rig.rod->windows->fine->high == Grains(540));
  CHECK(rig.rod->windows->longBelly->high == Grains(700));
  CHECK_FALSE(rig.rod->windows->singleHand);
  REQUIRE(rig.parts.size() == 6);
  const Part& running = rig.parts[0];
  CHECK(running.kind == PartKind::runningLine);
  CHECK(running.sections[0].diameter == Along<Inches>(Inches(0.024)));
  CHECK(running.sections[0].material == Material::nylon);
  const Part& head = rig.parts[1];
  CHECK(head.style == Style::shortHead);
  CHECK(head.label == Grains(525));
  CHECK(head.sections[2].mass == Along<GrainsPerFoot>(GrainsPerFoot(24), GrainsPerFoot(14.125)));
  const Part& tip = rig.parts[2];
  CHECK(tip.sections[0].floats == true);
  CHECK(tip.sections[1].sinkRate == Along<InchesPerSecond>(InchesPerSecond(7.5)));
  CHECK(tip.loops->flyEnd == Grains(2.3));
  CHECK(tip.weighed->mass == Grains(113.5));
  CHECK(tip.weighed->on == "2026-03-02");
  CHECK_FALSE(tip.fly);
  const Part& fly = rig.parts[5];
  REQUIRE(fly.fly);
  CHECK(fly.sections.empty());
  CHECK(fly.fly->dry == Grains(26));
  CHECK(fly.fly->wet == Grains(33));
  CHECK(fly.fly->dragArea == SquareCentimetres(3.5));
  CHECK(fly.fly->density == GramsPerCubicCentimetre(2.9));
  CHECK(fly.fly->sinksHeadFirst == true);
  CHECK(fly.fly->hook == "2");
  CHECK(rig.water->surfaceSpeed == FeetPerSecond(3));
  CHECK(rig.water->salinity == GramsPerKilogram(0));
  CHECK(rig.cast->lineSpeed == FeetPerSecond(55));
  CHECK(rig.cast->launch == Degrees(6));
  CHECK(rig.cast->overhang == Feet(3));
  CHECK(rig.swing->lineOut == Feet(75));
  CHECK(rig.swing->mend == Seconds(3));
}

TEST_CASE("members that this version does not know are written back as they stood") {
  std::string text =
      replaced(kExample, "\"mend_s\": 3 }", "\"mend_s\": 3, \"wind\": { \"from\" : [ 1.50,2 ] } }");
  text = replaced(text, "\"hook\": \"2\"\n", "\"hook\": \"2\",\n      \"tied by\": null\n");
  CHECK(readGood(text).swing->kept.unknown.front().text == "{ \"from\" : [ 1.50,2 ] }");
  CHECK(writeRig(readGood(text)) == text);
}

TEST_CASE("digits stay as typed only while the number is the same") {
  Rig rig =
      readGood(replaced(kExample, "\"gr_per_ft\": [12, 24.5]", "\"gr_per_ft\": [12.00, 2.45e1]"));
  CHECK(writeRig(rig).find("[12.00, 2.45e1]") != std::string::npos);
  rig.parts[1].sections[0].mass->rodEnd = GrainsPerFoot(13);
  CHECK(writeRig(rig).find("[13, 2.45e1]") != std::string::npos);
  keepDigits(rig.parts[1].sections[0].kept, "gr_per_ft/0", 13, "013.");  // no JSON number
  CHECK(writeRig(rig).find("[13, 2.45e1]") != std::string::npos);
}

TEST_CASE("what is absent in a file stays absent") {
  const std::string least = R"({
  "format": "grainwise-rig",
  "version": 1,
  "name": "",
  "parts": [
    {
      "kind": "fly",
      "dry_gr": 0
    }
  ]
}
)";
  CHECK(writeRig(readGood(least)) == least);
}

TEST_CASE("a part travels alone and comes back the same") {
  for (const Part& part : readGood(kExample).parts) {
    const auto back = readPart(writePart(part));
    REQUIRE(back);
    CHECK(*back == part);
  }
  CHECK_FALSE(readPart("{ \"kind\": \"tip\" }"));
  CHECK_FALSE(readPart("tip"));
}

TEST_CASE("a number that is not finite is never written") {
  Rig rig = readGood(kExample);
  rig.rod->length = Feet(std::numeric_limits<double>::quiet_NaN());
  CHECK_THROWS_AS(writeRig(rig), std::logic_error);
}
