// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/model/part.h"
#include "core/model/problem.h"

namespace grainwise {

/// Metals at the vice. Densities in g/cm3: tungsten 19.3 solid, 17.5 sintered, lead 11.34, brass 8.5,
/// tin 7.28, steel 7.85; handbook values.
enum class Metal { tungsten, sinteredTungsten, lead, brass, tin, steel };
GramsPerCubicCentimetre densityOf(Metal metal);

/// Hook wire or a shank: pi/4 d^2 L of steel.
struct HookWire {
  Inches wire;
  Inches length;
};
/// A bead or a cone of diameter D with a hole h: pi D^3/6, drilled (pi/6)(D^2 - h^2)^1.5 - exactly
/// what a cylinder through its centre leaves of a sphere.
struct Bead {
  Inches diameter;
  Inches hole;
  Metal metal = Metal::tungsten;
  int count = 1;
};
/// Eyes: two spheres and a bar between them.
struct Dumbbell {
  Inches ball;
  Inches bar;
  Inches barLength;
  Metal metal = Metal::lead;
};
/// Something whose mass is known, by the packet or the scale.
struct KnownWeight {
  Grains mass;
  Metal metal = Metal::lead;
  bool forward = true;  ///< ahead of the middle of the hook
};
/// Wire wound on a shank of diameter D: turns x pi (D + d) x pi/4 d^2.
struct WireWraps {
  int turns = 0;
  Inches wire;
  Inches over;
  Metal metal = Metal::lead;
};
/// Feather, fur, thread: dry mass and the water it holds for each part of that.
struct Dressing {
  Grains dry;
  double soak = 2.0;
};
enum class Bulk { sparse, medium, bulky };

struct FlyRecipe {
  std::optional<std::string> name;
  std::optional<std::string> hook;   ///< its size, in words
  std::optional<HookWire> hookWire;  ///< or else its usual mass by the size
  std::vector<HookWire> shanks;
  std::vector<Bead> beads;
  std::vector<Dumbbell> eyes;
  std::vector<KnownWeight> weights;
  std::vector<WireWraps> wraps;
  Dressing dressing;
  Bulk bulk = Bulk::medium;
  std::optional<Inches> width, height;  ///< of the wet silhouette, which outranks the bulk
};

/// Drag coefficient of a wet silhouette, and density of dressing. Ours (estimates).
inline constexpr double kSilhouetteCd = 1.1;
inline constexpr GramsPerCubicCentimetre kDressingDensity{1.22};

Grains massOf(const HookWire& wire);
Grains massOf(const Bead& bead);
Grains massOf(const Dumbbell& eyes);
Grains massOf(const WireWraps& wraps);
/// About what a hook of that size weighs: 5.2 gr at #2, 1.8 gr at #6, by the same factor a size
/// between and beyond. Ours (estimate). Nothing for a size that is none.
std::optional<Grains> usualHookMass(const std::string& hook);

/// What a fly comes to. Dry: metal and dressing; wet: with the water it holds; density: wet mass over
/// the volume of metal, dressing and water. Drag area: width x height x Cd, or by its bulk sparse
/// 0.6, medium 1.5, bulky 3.5 cm2 (estimates). It sinks head first when more than a third of its dry
/// mass is beads, eyes or weights ahead of the middle (ours).
struct FlyFigures {
  Grains metal;
  Grains dry;
  Grains wet;
  GramsPerCubicCentimetre density;
  SquareCentimetres dragArea;
  bool headFirst = false;
  bool lead = false;  ///< lead is used: a caution is due
};
/// Refused: no mass at all, a hole as wide as its bead, measures that are negative or absurd.
tl::expected<FlyFigures, Problem> flyFigures(const FlyRecipe& recipe);
/// How far those masses may be off: a hook by its size 20 %, wire and eyes by measure 5 %, beads 0.05 mm in
/// width and hole, wraps a turn, dressing 25 %, the water it holds 30 %; a weight that is known, nothing.
/// Independent of each other, so their squares add up. Ours (estimates); of a sound recipe only.
struct FlyRange {
  Grains dryLow, dryHigh;
  Grains wetLow, wetHigh;
};
FlyRange flyRange(const FlyRecipe& recipe, const FlyFigures& figures);
/// The fly as a part; figures rounded to what a bench scale shows (0.1 gr, 0.01 g/cm3, 0.1 cm2).
Part flyPart(const FlyRecipe& recipe, const FlyFigures& figures);

}  // namespace grainwise
