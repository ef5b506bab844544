// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/edits.h"
#include "core/model/rig.h"

/// Rigs that only a benchmark wants: as large as the aims name them.
namespace grainwise::bench {

inline constexpr int kParts = 64;
inline constexpr int kSections = 16;

inline Part linePart(PartKind kind, int salt) {
  Part part;
  part.kind = kind;
  if (kind == PartKind::head) part.style = Style::shortHead;
  if (kind == PartKind::tip) part.style = Style::level;
  for (int i = 0; i < kSections; ++i) {
    Section s;
    s.length = Feet(0.05 + 0.01 * ((i + salt) % 5));
    if (kind == PartKind::leader || kind == PartKind::tippet) {
      s.diameter = Along<Inches>(Inches(0.02 - 0.0005 * i), Inches(0.0195 - 0.0005 * i));
      s.material = Material::nylon;
    } else {
      s.mass = Along<GrainsPerFoot>(GrainsPerFoot(12 + (i + salt) % 3), GrainsPerFoot(11 + i % 3));
      if (kind == PartKind::tip) {
        s.sinkRate = Along<InchesPerSecond>(InchesPerSecond(6 + 0.1 * ((i + salt) % 20)));
      } else {
        s.floats = true;
      }
    }
    part.sections.push_back(s);
  }
  return part;
}

/// 64 parts of 16 sections, 53 of them tips whose diameters follow from rated sink rates.
inline Rig largestRig() {
  Rig rig;
  rig.name = "largest";
  Rod rod;
  rod.length = Feet(13);
  rod.lineNumber = 8;
  rig.rod = rod;
  for (int i = 0; i < 4; ++i) rig.parts.push_back(linePart(PartKind::head, i));
  for (int i = 4; i < kParts - 11; ++i) rig.parts.push_back(linePart(PartKind::tip, i));
  for (int i = 0; i < 10; ++i) {
    rig.parts.push_back(linePart(i < 5 ? PartKind::leader : PartKind::tippet, i));
  }
  Part fly;
  fly.kind = PartKind::fly;
  fly.fly = Fly{};
  fly.fly->dry = Grains(30);
  rig.parts.push_back(fly);
  return rig;
}

/// Another length of one section, a different one every turn.
inline Rig edited(const Rig& rig, int turn) {
  const std::size_t at = std::size_t(turn) % (rig.parts.size() - 1);
  const Part& part = rig.parts[at];
  const std::size_t section = part.sections.size() > 3 ? 3 : 0;
  Section s = part.sections[section];
  s.length = s.length * (1.0 + 0.01 * (turn % 7 - 3));
  return edits::replaced(rig, at, edits::withSection(part, section, s));
}

}  // namespace grainwise::bench
