// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "core/model/rig.h"

/// Short ways to write down sections, parts and rigs in tests.
namespace grainwise::test::rigs {

inline Section floating(double length_ft, double rodEnd, double flyEnd) {
  Section section;
  section.length = Feet(length_ft);
  section.mass = Along<GrainsPerFoot>(GrainsPerFoot(rodEnd), GrainsPerFoot(flyEnd));
  section.floats = true;
  return section;
}
inline Section floating(double length_ft, double level) {
  Section section = floating(length_ft, level, level);
  section.mass = Along<GrainsPerFoot>(GrainsPerFoot(level));
  return section;
}
inline Section sinking(double length_ft, double level, double rate) {
  Section section = floating(length_ft, level);
  section.floats.reset();
  section.sinkRate = Along<InchesPerSecond>(InchesPerSecond(rate));
  return section;
}
inline Section nylon(double length_ft, double rodEnd_in, double flyEnd_in) {
  Section section;
  section.length = Feet(length_ft);
  section.diameter = Along<Inches>(Inches(rodEnd_in), Inches(flyEnd_in));
  section.material = Material::nylon;
  return section;
}
inline Section nylon(double length_ft, double level_in) {
  Section section = nylon(length_ft, level_in, level_in);
  section.diameter = Along<Inches>(Inches(level_in));
  return section;
}

inline Part partOf(PartKind kind, std::vector<Section> sections,
                   std::optional<Style> style = std::nullopt) {
  Part part;
  part.kind = kind;
  part.style = style;
  part.sections = std::move(sections);
  return part;
}
inline Part head(std::vector<Section> sections, std::optional<Style> style = Style::shortHead) {
  return partOf(PartKind::head, std::move(sections), style);
}
inline Part tip(std::vector<Section> sections) {
  return partOf(PartKind::tip, std::move(sections), Style::level);
}
inline Part leader(std::vector<Section> sections, std::optional<Style> style = std::nullopt) {
  return partOf(PartKind::leader, std::move(sections), style);
}
inline Part tippet(std::vector<Section> sections) {
  return partOf(PartKind::tippet, std::move(sections));
}
inline Part runningLine(double length_ft) {
  return partOf(PartKind::runningLine, {nylon(length_ft, 0.024)});
}
inline Part fly(double wet_gr) {
  Part part;
  part.kind = PartKind::fly;
  part.fly = Fly{};
  part.fly->dry = Grains(wet_gr);
  return part;
}
inline Part withLoops(Part part, double rodEnd_gr, double flyEnd_gr) {
  part.loops = Loops{Grains(rodEnd_gr), Grains(flyEnd_gr), {}};
  return part;
}

inline Rig rigOf(std::vector<Part> parts) {
  Rig rig;
  rig.name = "Test rig";
  rig.parts = std::move(parts);
  return rig;
}
inline Rig onRod(Rig rig, double length_ft, double lineNumber, int hands = 2) {
  rig.rod = Rod{};
  rig.rod->length = Feet(length_ft);
  rig.rod->lineNumber = lineNumber;
  rig.rod->hands = hands;
  return rig;
}

/// The invented short head of 525 gr, its leader of 4 ft and the plain winter rig built from them.
inline Part short525() {
  return head({floating(2, 12, 24.5), floating(17, 24.5, 24), floating(4, 24, 14.125)});
}
inline Part fine480() {
  return head({floating(4, 9, 16.32), floating(14, 16.32), floating(18, 16.32, 6)}, Style::fine);
}
inline std::vector<Part> leader4ft() {
  Section front = nylon(2.5, 0.013);
  front.material = Material::fluorocarbon;
  return {leader({nylon(1.5, 0.017)}), tippet({front})};
}
inline Rig plainWinter() {
  const auto nylons = leader4ft();
  Rig rig = onRod(rigOf({runningLine(100), short525(), tip({sinking(10, 11, 7.5)}), nylons[0],
                         nylons[1], fly(33)}),
                  13, 8);
  rig.water = Water{};
  rig.water->surfaceSpeed = FeetPerSecond(3);
  rig.water->depth = Feet(5);
  return rig;
}

}  // namespace grainwise::test::rigs
