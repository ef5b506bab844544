// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>
#include <string>

#include "core/io/deck_file.h"
#include "core/io/json_text.h"
#include "core/io/pools_file.h"
#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"

/// One sound document a format, between them with every key there is, and tools to spoil them.
namespace grainwise::test {

inline const std::string kRigText = R"({
  "format": "grainwise-rig",
  "version": 1,
  "name": "Every key",
  "notes": "two lines\nof notes",
  "rod": {
    "length_ft": 13.0,
    "line_number": 8,
    "hands": 2,
    "windows_gr": { "short": [525, 600], "fine": [480, 540], "long-belly": [600, 700], "single-hand": [130, 150] },
    "window_gr": [500, 620.50]
  },
  "parts": [
    {
      "kind": "running-line",
      "name": "mono",
      "sections": [
        { "length_ft": 100, "diameter_in": 0.0240, "material": "nylon" }
      ]
    },
    {
      "kind": "head",
      "style": "short",
      "label_gr": 525,
      "sections": [
        { "length_ft": 2, "gr_per_ft": [12, 24.5], "floats": true },
        { "length_ft": 17, "gr_per_ft": 24.0, "density_g_cm3": 0.86 },
        { "length_ft": 4, "gr_per_ft": [24, 14.125], "floats": true }
      ]
    },
    {
      "kind": "tip",
      "style": "float-sink",
      "sections": [
        { "length_ft": 2.5, "gr_per_ft": 11, "floats": true },
        { "length_ft": 7.5, "gr_per_ft": 11, "sink_in_per_s": [7.5, 7], "timed": { "in_per_s": 7.3, "plus_minus_in_per_s": 0.4, "rated_in_per_s": [7.5, 7], "on": "2026-03-02" } },
        { "length_ft": 1, "gr_per_ft": 11, "sink_in_per_s": 7.5, "floats": false }
      ],
      "loops": { "rod_end_gr": 2.3, "fly_end_gr": 2.3 },
      "weighed": { "mass_gr": 113.5, "on": "2026-03-02" }
    },
    {
      "kind": "leader",
      "style": "plain",
      "sections": [
        { "length_ft": 1.5, "diameter_in": [0.017, 0.015], "material": "nylon" },
        { "length_ft": 1.5, "diameter_in": 0.015, "density_g_cm3": 1.2 }
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
      "name": "leech",
      "dry_gr": 26,
      "wet_gr": 33,
      "drag_area_cm2": 3.5,
      "density_g_cm3": 2.9,
      "sinks_head_first": true,
      "hook": "2/0"
    }
  ],
  "water": { "name": "Mill Run", "surface_ft_per_s": 3.0, "depth_ft": 5, "temperature_c": 7, "salinity_g_per_kg": 0, "bed": "cobbles" },
  "cast": { "line_speed_ft_per_s": 55, "loop_ft": 5, "launch_deg": 6, "rod_tip_ft": 13, "overhang_ft": 3, "air_altitude_ft": 700 },
  "swing": { "line_out_ft": 75, "angle_deg": 45, "mend_s": 3 }
}
)";

inline const std::string kShelfText = R"({
  "format": "grainwise-shelf",
  "version": 1,
  "parts": [
    {
      "id": "tip-11",
      "group": "Tips",
      "kind": "tip",
      "style": "level",
      "sections": [
        { "length_ft": 10, "gr_per_ft": 11, "sink_in_per_s": 7.5 }
      ]
    },
    {
      "id": "running",
      "group": "Running lines",
      "kind": "running-line",
      "sections": [
        { "length_ft": 100, "diameter_in": 0.032, "density_g_cm3": 0.9 }
      ]
    }
  ]
}
)";

inline const std::string kPoolsText = R"({
  "format": "grainwise-pools",
  "version": 1,
  "pools": [
    {
      "name": "Mill Run",
      "surface_ft_per_s": 3.0,
      "depth_ft": 5,
      "temperature_c": 7,
      "salinity_g_per_kg": 0,
      "bed": "sand",
      "angle_deg": 45,
      "mend_s": 3,
      "clearance_ft": [0.5, 2.0],
      "note": "all round",
      "measured": { "ft_per_s": 3.0, "plus_minus_ft_per_s": 0.2, "stated_ft_per_s": 2.5, "fly_depth_ft": 3.1, "on": "2026-03-02" }
    },
    {
      "name": "Long Flat",
      "surface_ft_per_s": 2,
      "depth_ft": 6,
      "wanted_depth_ft": [0.1, 1.5]
    }
  ]
}
)";

inline const std::string kSpoolsText = R"({
  "format": "grainwise-spools",
  "version": 1,
  "spools": [
    { "name": "sinking 11", "gr_per_ft": 11, "sink_in_per_s": 7.5, "feet_left": 30 },
    { "name": "floating 8", "gr_per_ft": 8, "floats": true, "feet_left": 15.0 },
    { "name": "nylon 0.013", "diameter_in": 0.013, "material": "nylon", "feet_left": 75 }
  ]
}
)";

inline const std::string kDeckText = R"({
  "format": "grainwise-deck",
  "version": 1,
  "title": "Why that tip?",
  "cards": [
    {
      "title": "Fly first",
      "say": "Big is not heavy.",
      "ask": "Which weighs most?",
      "reveal": "The leech.",
      "notes": "hand them round",
      "show": "strip",
      "rig": {
        "name": "in the deck",
        "parts": [
          {
            "kind": "fly",
            "dry_gr": 0
          }
        ]
      },
      "rig_b": "wrong-hinge.rig.json"
    },
    {
      "title": "Which stays home?",
      "show": "tips",
      "figure": "none",
      "rig": "01-plain-winter.rig.json",
      "parts": [
        {
          "kind": "tip",
          "style": "level",
          "sections": [
            { "length_ft": 10, "gr_per_ft": 11, "sink_in_per_s": 7.5 }
          ]
        }
      ],
      "pools": [
        { "name": "Mill Run", "surface_ft_per_s": 3.0, "depth_ft": 5.0, "clearance_ft": [0.5, 2.0] }
      ]
    },
    {
      "title": "Said",
      "show": "text"
    }
  ]
}
)";

/// The text with the value at `pointer` replaced; a value that is not there fails the test.
inline std::string with(const std::string& text, const std::string& pointer,
                        const std::string& value) {
  const JsonText json = parseJson(text);
  REQUIRE_FALSE(json.broken);
  const std::string name = pointer.substr(pointer.rfind('/') + 1);
  const JsonValue& at = json.nearest(pointer);
  INFO(pointer);
  if (!pointer.empty()) {
    const JsonValue& around = json.nearest(pointer.substr(0, pointer.rfind('/')));
    REQUIRE(&at != &around);
  }
  return text.substr(0, at.begin) + value + text.substr(at.end);
}

/// The text with a member added to the object at `pointer`.
inline std::string withMember(const std::string& text, const std::string& pointer,
                              const std::string& member) {
  const JsonText json = parseJson(text);
  REQUIRE_FALSE(json.broken);
  const JsonValue& at = json.nearest(pointer);
  REQUIRE(at.kind == JsonKind::object);
  const std::string comma = at.children.empty() ? "" : ", ";
  return text.substr(0, at.begin + 1) + member + comma + text.substr(at.begin + 1);
}

/// The text with the member at `pointer` taken out of its object.
inline std::string without(const std::string& text, const std::string& pointer) {
  const JsonText json = parseJson(text);
  REQUIRE_FALSE(json.broken);
  const JsonValue& around = json.nearest(pointer.substr(0, pointer.rfind('/')));
  REQUIRE(around.kind == JsonKind::object);
  std::string inside;
  bool found = false;
  for (const JsonValue& child : around.children) {
    if (pointerStep(child.key) == pointer.substr(pointer.rfind('/') + 1)) {
      found = true;
      continue;
    }
    inside +=
        (inside.empty() ? "" : ", ") + jsonQuoted(child.key) + ": " + std::string(json.raw(child));
  }
  REQUIRE(found);
  return text.substr(0, around.begin) + "{" + inside + "}" + text.substr(around.end);
}

/// Reads a document of any format: its problems, and its canonical text when there are none.
struct ReadBack {
  Problems problems;
  std::string written;
};
template <class T>
ReadBack readBack(const Result<T>& value, std::string (*write)(const T&)) {
  if (!value) return {value.error(), ""};
  return {{}, write(*value)};
}
inline ReadBack readAny(const std::string& format, const std::string& text) {
  if (format == "rig") return readBack(readRig(text), writeRig);
  if (format == "shelf") return readBack(readShelf(text), writeShelf);
  if (format == "pools") return readBack(readPools(text), writePools);
  if (format == "spools") return readBack(readSpools(text), writeSpools);
  if (format == "deck") return readBack(readDeck(text), writeDeck);
  FAIL("no such format: " << format);
  return {};
}

struct Sound {
  std::string format;
  std::string text;
};
inline std::vector<Sound> soundDocuments() {
  return {{"rig", kRigText},
          {"shelf", kShelfText},
          {"pools", kPoolsText},
          {"spools", kSpoolsText},
          {"deck", kDeckText}};
}
inline const std::string& soundText(const std::string& format) {
  static const std::vector<Sound> all = soundDocuments();
  for (const Sound& s : all) {
    if (s.format == format) return s.text;
  }
  FAIL("no such format: " << format);
  return all.front().text;
}

inline std::string inWords(const Problems& problems) {
  std::string text;
  for (const Problem& p : problems) text += describe(p) + "\n";
  return text;
}

inline std::string fileText(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  INFO(path);
  REQUIRE(file.is_open());
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

}  // namespace grainwise::test
