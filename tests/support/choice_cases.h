// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <catch2/catch.hpp>
#include <filesystem>
#include <string>

#include "core/choose/choose.h"
#include "core/model/edits.h"
#include "tests/support/rig_parts.h"
#include "tests/support/sample_rig.h"
#include "tests/support/shipped_files.h"

/// Rigs, pools and the carried shelf for the tests of choosing, packing and mending.
namespace grainwise::test::choice {

inline const std::filesystem::path kRoot = GRAINWISE_SOURCE_DIR;

inline Pool pool(const std::string& name) {
  for (const Pool& p : corrow().pools) {
    if (p.name == name) return p;
  }
  FAIL("no pool " << name);
  return {};
}
inline std::size_t shelfIndex(const Shelf& shelf, const std::string& name) {
  for (std::size_t i = 0; i < shelf.parts.size(); ++i) {
    if (shelf.parts[i].name == name) return i;
  }
  FAIL("nothing on the shelf is called " << name);
  return 0;
}
inline Part onShelf(const std::string& name) {
  return genericShelf().parts[shelfIndex(genericShelf(), name)];
}

inline Part fly(double wet_gr, double drag_cm2, double density = 2.0) {
  Part part = rigs::fly(wet_gr);
  part.fly->dragArea = SquareCentimetres(drag_cm2);
  part.fly->density = GramsPerCubicCentimetre(density);
  return part;
}

/// A short head of the shelf with a four-foot leader and a fly, without a tip.
inline Rig shortHeadRig(const std::string& head, double rod_ft, double lineNumber, Part withFly) {
  const auto nylons = rigs::leader4ft();
  return rigs::onRod(rigs::rigOf({rigs::runningLine(100), onShelf(head), nylons[0], nylons[1],
                                  std::move(withFly)}),
                     rod_ft, lineNumber);
}
inline Rig fineRig(Part withFly) {
  const auto nylons = rigs::leader4ft();
  return rigs::onRod(rigs::rigOf({rigs::runningLine(100), rigs::fine480(), nylons[0], nylons[1],
                                  std::move(withFly)}),
                     13, 8);
}

/// Water that asks nothing of a tip: no depth is wanted there.
inline Pool neutralPool() {
  Pool p;
  p.name = "Neutral";
  p.surfaceSpeed = FeetPerSecond(3);
  p.depth = Feet(5);
  return p;
}

inline const TipChoice& choiceOf(const Choice& choice, const Shelf& shelf,
                                 const std::string& name) {
  const std::size_t at = shelfIndex(shelf, name);
  for (const TipChoice& tip : choice.ranked) {
    if (tip.shelf == at) return tip;
  }
  FAIL(name << " was not judged");
  return choice.ranked.front();
}
/// Its place in the ranking, from 0.
inline std::size_t rankOf(const Choice& choice, const Shelf& shelf, const std::string& name) {
  const TipChoice& wanted = choiceOf(choice, shelf, name);
  return static_cast<std::size_t>(&wanted - choice.ranked.data());
}
inline bool hasZone(const TipChoice& tip, Criterion criterion, Grade zone) {
  for (const Judged& j : tip.judged) {
    if (j.criterion == criterion && j.zone == zone) return true;
  }
  return false;
}

}  // namespace grainwise::test::choice
