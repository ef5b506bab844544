// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <functional>
#include <utility>
#include <vector>

#include "ui/compare/compare_face.h"

/// The pages that a test which reads the whole window goes through.
namespace grainwise::test {

inline constexpr std::array<const char*, 9> kMakeTasks{"makeCut",  "makeSpools",  "makeWeigh", "makeLeader", "makeFly",
                                                       "makeTips", "makeMeasure", "makeParts", "makeList"};

/// Every page of Compare, by name.
inline std::vector<std::pair<const char*, std::function<void()>>> comparePages(ui::CompareFace* face) {
  return {{"differences", [=] { face->openDifferences(); }}, {"cast", [=] { face->openCast(); }},
          {"river", [=] { face->openRiver(); }},             {"shelf", [=] { face->openShelf(); }},
          {"part", [=] { face->openPart(); }},               {"rod", [=] { face->openRod(false); }},
          {"water", [=] { face->openWater(); }},             {"name", [=] { face->openName(); }}};
}

}  // namespace grainwise::test
