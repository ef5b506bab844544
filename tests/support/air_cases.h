// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/air/turnover.h"
#include "tests/support/rig_parts.h"

/// The reference casts of the turnover model: invented heads, tips and flies, cast at 22 m/s with a
/// loop of 1 m, 6 degrees up from a rod tip 4 m high. Figures were found by an independent solution
/// of the same equations.
namespace grainwise::test {

/// A section of stated mass and diameter, each linear.
inline Section airSection(double length_ft, double rodEnd_gr, double flyEnd_gr, double rodEnd_mm,
                          double flyEnd_mm) {
  Section section;
  section.length = Feet(length_ft);
  section.mass = Along<GrainsPerFoot>(GrainsPerFoot(rodEnd_gr), GrainsPerFoot(flyEnd_gr));
  section.diameter = Along<Inches>(Inches(rodEnd_mm / 25.4), Inches(flyEnd_mm / 25.4));
  return section;
}
inline Section airSection(double length_ft, double level_gr, double level_mm) {
  return airSection(length_ft, level_gr, level_gr, level_mm, level_mm);
}

inline Part airShort525() {
  return rigs::head({airSection(3, 11.333, 24.4, 1.900, 2.788),
                     airSection(12, 24.4, 24, 2.788, 2.765), airSection(5, 24, 22, 2.765, 2.647),
                     airSection(3, 22, 2.647)});
}
inline Part airLong450() {
  return rigs::head({airSection(36, 20, 5, 2.524, 1.262)}, Style::fine);
}
inline Part airTip(double grPerFt) {
  const double d_mm = grPerFt < 11 ? 0.896 : grPerFt < 17 ? 1.185 : 1.416;
  return rigs::tip({airSection(10, grPerFt, d_mm)});
}
inline Part airCoated() {
  return rigs::leader(
      {airSection(11, 6.5, 2, 1.237, 0.686), airSection(2.5, 1.053, 0.853, 0.50, 0.45)},
      Style::coated);
}
inline Part airTippet33() {
  return rigs::tippet({airSection(4, 0.459, 0.33)});
}
inline Part airTippet28() {
  return rigs::tippet({airSection(4, 0.330, 0.28)});
}
inline Part airFly(double wet_gr, double drag_cm2) {
  Part part = rigs::fly(wet_gr);
  part.fly->dragArea = SquareCentimetres(drag_cm2);
  return part;
}

inline Cast referenceCast() {
  Cast cast;
  cast.lineSpeed = FeetPerSecond(72.178478);
  cast.loop = Feet(3.28084);
  cast.launch = Degrees(6);
  cast.rodTip = Feet(13.12336);
  return cast;
}
inline Rig castRig(std::vector<Part> parts) {
  Rig rig = rigs::rigOf(std::move(parts));
  rig.cast = referenceCast();
  return rig;
}

struct AirCase {
  std::string name;
  Rig rig;
  double pace, end_m_per_s, time_s, height_m, least_m_per_s, reserve, drive, keep, coast_ft;
  double time2d_s, end2d_m_per_s, height2d_m;
  bool fails = false;  ///< the cast does not turn over: its nylon keep is not compared
};

inline std::vector<AirCase> airCases() {
  return {
      {"short 525, tip 8, fly 20",
       castRig({airShort525(), airTip(8), airTippet33(), airFly(20, 3)}), 1.76, 38.6, 0.601, 4.85,
       8.7, 2.54, 1.61, 0.74, 4.0, 0.582, 41.8, 4.83},
      {"short 525, tip 8, fly 80",
       castRig({airShort525(), airTip(8), airTippet33(), airFly(80, 10)}), 0.74, 16.2, 0.831, 4.00,
       12.4, 1.77, 0.62, 0.74, 14.0, 0.742, 19.5, 4.23},
      {"short 525, tip 14, fly 80",
       castRig({airShort525(), airTip(14), airTippet33(), airFly(80, 10)}), 0.90, 19.8, 0.798, 4.04,
       12.2, 1.81, 1.05, 0.75, 4.0, 0.727, 23.3, 4.21},
      {"short 525, tip 20, fly 5",
       castRig({airShort525(), airTip(20), airTippet33(), airFly(5, 1)}), 4.87, 107.2, 0.568, 4.82,
       8.8, 2.50, 3.36, 0.75, 4.0, 0.563, 107.8, 4.72},
      {"short 525, coated, fly 40",
       castRig({airShort525(), airCoated(), airTippet28(), airFly(40, 5)}), 0.78, 17.2, 0.809, 4.39,
       10.9, 2.02, 0.32, 0.64, 17.5, 0.749, 19.5, 4.51},
      {"long 450, coated, fly 80",
       castRig({airLong450(), airCoated(), airTippet28(), airFly(80, 10)}), 0.23, 5.0, 2.195, -2.48,
       26.0, 0.85, 0.17, 0.52, 47.6, 1.527, 10.2, 1.04, true},
      {"long 450, tip 8, fly 20", castRig({airLong450(), airTip(8), airTippet33(), airFly(20, 3)}),
       1.22, 26.8, 1.055, 3.45, 13.5, 1.63, 0.97, 0.74, 4.0, 0.985, 33.0, 3.52},
  };
}

inline tl::expected<Turnover, NoTurnover> turnoverOf(const Rig& rig,
                                                     const TurnoverConditions& conditions = {}) {
  const MassProfile profile = massProfile(rig);
  return turnover(rig, profile, junctions(rig, profile), conditions);
}

}  // namespace grainwise::test
