// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/material/section_properties.h"
#include "core/units/si.h"
#include "core/water/water_line.h"

/// The reference cases of the water model: two heads, a leader and two flies, invented for the
/// purpose, in plain SI. Depths were found by independent solutions of the same equations.
namespace grainwise::test {

inline WaterPiece piece(double feet, double flyEnd_gr, double rodEnd_gr, double flyEnd_in,
                        double rodEnd_in, WaterPiece::Fineness fineness) {
  WaterPiece p;
  p.length_m = si::m(Feet(feet));
  p.massFlyEnd_kg_per_m = si::kg_per_m(GrainsPerFoot(flyEnd_gr));
  p.massRodEnd_kg_per_m = si::kg_per_m(GrainsPerFoot(rodEnd_gr));
  p.diameterFlyEnd_m = si::m(Inches(flyEnd_in));
  p.diameterRodEnd_m = si::m(Inches(rodEnd_in));
  p.fineness = fineness;
  return p;
}
inline WaterPiece headOne() {
  return piece(24, 19, 26, 0.09628, 0.11262, WaterPiece::Fineness::head);
}
inline WaterPiece headTwo() {
  return piece(36, 9, 17, 0.06626, 0.09107, WaterPiece::Fineness::head);
}
inline WaterPiece fromSection(const Section& section, PartKind kind) {
  const auto p = sectionProperties(section, kind, 1.0);
  return piece(section.length.value(), p.mass.flyEnd.value(), p.mass.rodEnd.value(),
               p.diameterFlyEnd.value(), p.diameterRodEnd.value(), WaterPiece::Fineness::tip);
}
inline WaterPiece sinking(double feet, double grPerFt, double inPerS) {
  Section s;
  s.length = Feet(feet);
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(grPerFt));
  s.sinkRate = Along<InchesPerSecond>(InchesPerSecond(inPerS));
  return fromSection(s, PartKind::tip);
}
inline WaterPiece floatingTip(double feet, double grPerFt) {
  Section s;
  s.length = Feet(feet);
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(grPerFt));
  s.floats = true;
  return fromSection(s, PartKind::tip);
}
inline WaterPiece nylon(double feet, double diameter_in) {
  Section s;
  s.length = Feet(feet);
  s.diameter = Along<Inches>(Inches(diameter_in));
  s.material = Material::nylon;
  return fromSection(s, PartKind::leader);
}
inline WaterFly fly(double grains, double density, double area_cm2, double broadside) {
  const double mass_kg = si::kg(Grains(grains));
  return {mass_kg, mass_kg / (1000 * density), area_cm2 * 1e-4, broadside};
}
inline WaterFly lightFly() { return fly(10, 2.5, 1.5, 3.0); }
inline WaterFly heavyFly() { return fly(40, 5.5, 1.5, 1.3); }

/// Pieces from the fly up, running line added to 75 ft.
inline WaterLine lineOf(const WaterFly& fly, std::vector<WaterPiece> pieces,
                        double lineOut_ft = 75) {
  WaterLine line{fly, std::move(pieces)};
  const double left_ft = lineOut_ft - line.length_m() / 0.3048;
  const double d_m = si::m(kRunningLineDiameter);
  const double gr = si::toGrainsPerFoot(900 * 3.14159265358979 / 4 * d_m * d_m).value();
  line.pieces.push_back(piece(left_ft, gr, gr, kRunningLineDiameter.value(),
                              kRunningLineDiameter.value(), WaterPiece::Fineness::running));
  return line;
}

struct WaterCase {
  std::string name;
  WaterLine line;
  double surface_ft_per_s, depth_ft;
  double hangDown_ft, junction_ft, surfaces_ft;
  double afterMend_ft, deepest_ft, swing_ft, to10deg_s;
  [[nodiscard]] River river() const {
    return riverOf(FeetPerSecond(surface_ft_per_s), Feet(depth_ft), {});
  }
};

/// The eight cases with a depth; the ninth lies on the bottom (see `bottomCase`).
inline std::vector<WaterCase> waterCases() {
  const auto leader = nylon(4, 0.0138);
  const WaterLine eight = lineOf(lightFly(), {leader, sinking(10, 8, 6.5), headOne()});
  const WaterLine fourteen = lineOf(lightFly(), {leader, sinking(10, 14, 8.5), headOne()});
  const WaterLine half =
      lineOf(lightFly(), {leader, sinking(5, 11, 7.5), floatingTip(5, 10), headOne()});
  const WaterLine heavy = lineOf(heavyFly(), {leader, sinking(10, 11, 7.5), headOne()});
  const WaterLine longLeader = lineOf(heavyFly(), {leader, nylon(8, 0.017), headTwo()});
  return {{"8 gr/ft in 3 x 3", eight, 3, 3, 2.49, 0.41, 21.3, 1.11, 2.78, 2.65, 31.3},
          {"8 gr/ft in 4 x 5", eight, 4, 5, 1.56, 0.37, 23.1, 1.11, 1.92, 1.74, 23.9},
          {"14 gr/ft in 2 x 8", fourteen, 2, 8, 4.89, 1.03, 24.4, 1.09, 5.47, 5.33, 45.4},
          {"14 gr/ft in 4 x 5", fourteen, 4, 5, 2.22, 0.55, 25.5, 1.09, 2.68, 2.47, 24.2},
          {"14 gr/ft in 6 x 7", fourteen, 6, 7, 1.37, 0.45, 29.2, 1.09, 2.00, 1.54, 17.3},
          {"half floating tip in 4 x 5", half, 4, 5, 1.09, 0.46, 18.9, 1.10, 1.65, 1.25, 23.9},
          {"heavy fly in 4 x 5", heavy, 4, 5, 2.73, 0.51, 25.4, 3.46, 4.33, 3.10, 24.3},
          {"long nylon in 4 x 5", longLeader, 4, 5, 1.52, 0.24, 22.7, 3.54, 3.86, 1.70, 23.1}};
}
inline WaterCase bottomCase() {
  return {"14 gr/ft in 3 x 3",
          lineOf(lightFly(), {nylon(4, 0.0138), sinking(10, 14, 8.5), headOne()}),
          3, 3, 0, 0, 0, 0, 0, 0, 0};
}

}  // namespace grainwise::test
