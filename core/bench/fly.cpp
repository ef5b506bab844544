// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/fly.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/bench/strength.h"
#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kForwardShare = 1.0 / 3.0;
constexpr double kHookAt2_gr = 5.2;
constexpr double kHookAt6_gr = 1.8;

Grains grains(double volume_m3, Metal metal) {
  return si::toGrains(volume_m3 * si::kg_per_m3(densityOf(metal)));
}
double volume_m3(Grains mass, GramsPerCubicCentimetre density) {
  return si::kg(mass) / si::kg_per_m3(density);
}
double sphere_m3(double d_m) { return kPi / 6.0 * d_m * d_m * d_m; }
double rod_m3(double d_m, double length_m) { return kPi / 4.0 * d_m * d_m * length_m; }

SquareCentimetres dragOf(const FlyRecipe& recipe) {
  if (recipe.width && recipe.height) {
    return si::toSquareCentimetres(si::m(*recipe.width) * si::m(*recipe.height) * kSilhouetteCd);
  }
  switch (recipe.bulk) {
    case Bulk::sparse:
      return SquareCentimetres(0.6);
    case Bulk::medium:
      break;
    case Bulk::bulky:
      return SquareCentimetres(3.5);
  }
  return SquareCentimetres(1.5);
}

Problem refusal(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

constexpr Inches kMostMeasure{6};

bool absurd(Inches measure) { return !(measure >= Inches(0)) || measure > kMostMeasure; }

std::optional<Problem> refused(const FlyRecipe& recipe) {
  std::vector<Inches> measures;
  const auto wire = [&](const HookWire& w) { measures.insert(measures.end(), {w.wire, w.length}); };
  if (recipe.hookWire) wire(*recipe.hookWire);
  for (const HookWire& shank : recipe.shanks) wire(shank);
  for (const Bead& bead : recipe.beads) measures.insert(measures.end(), {bead.diameter, bead.hole});
  for (const Dumbbell& eye : recipe.eyes) {
    measures.insert(measures.end(), {eye.ball, eye.bar, eye.barLength});
  }
  for (const WireWraps& w : recipe.wraps) measures.insert(measures.end(), {w.wire, w.over});
  if (recipe.width) measures.push_back(*recipe.width);
  if (recipe.height) measures.push_back(*recipe.height);
  if (std::any_of(measures.begin(), measures.end(), absurd)) {
    return refusal(Problem::tr("a measure of this fly is negative or over 6 in"), Problem::tr("measure it again"));
  }
  for (const Bead& bead : recipe.beads) {
    if (bead.hole >= bead.diameter && bead.diameter > Inches(0)) {
      return refusal(Problem::tr("a bead's hole is as wide as the bead"), Problem::tr("give the hole's own diameter"));
    }
    if (bead.count < 0) return refusal(Problem::tr("a number of beads below 0"), Problem::tr("give 0 or more"));
  }
  for (const WireWraps& w : recipe.wraps) {
    if (w.turns < 0) return refusal(Problem::tr("a number of turns below 0"), Problem::tr("give 0 or more"));
  }
  const bool soak = recipe.dressing.soak >= 0.0 && recipe.dressing.soak <= 50.0;
  if (!soak || !(recipe.dressing.dry >= Grains(0))) {
    return refusal(Problem::tr("the dressing's mass or the water it holds is no such thing"),
                   Problem::tr("give 0 gr or more, and 0 to 50 times its dry mass of water"));
  }
  const bool negative = std::any_of(recipe.weights.begin(), recipe.weights.end(),
                                    [](const KnownWeight& w) { return !(w.mass >= Grains(0)); });
  if (negative) return refusal(Problem::tr("a weight below 0"), Problem::tr("give 0 gr or more"));
  if (recipe.hook && !recipe.hookWire && !hookNumber(*recipe.hook)) {
    return refusal(Problem::tr("\"%1\" is no hook size").arg(recipe.hook->substr(0, 20)),
                   Problem::tr("write it like 6 or 2/0, or give its wire"));
  }
  return std::nullopt;
}

}  // namespace

GramsPerCubicCentimetre densityOf(Metal metal) {
  switch (metal) {
    case Metal::tungsten:
      return GramsPerCubicCentimetre(19.3);
    case Metal::sinteredTungsten:
      return GramsPerCubicCentimetre(17.5);
    case Metal::lead:
      return GramsPerCubicCentimetre(11.34);
    case Metal::brass:
      return GramsPerCubicCentimetre(8.5);
    case Metal::tin:
      return GramsPerCubicCentimetre(7.28);
    case Metal::steel:
      break;
  }
  return GramsPerCubicCentimetre(7.85);
}

Grains massOf(const HookWire& wire) {
  return grains(rod_m3(si::m(wire.wire), si::m(wire.length)), Metal::steel);
}

Grains massOf(const Bead& bead) {
  const double d_m = si::m(bead.diameter);
  const double h_m = std::min(si::m(bead.hole), d_m);
  const double drilled_m3 = kPi / 6.0 * std::pow(d_m * d_m - h_m * h_m, 1.5);
  return grains(drilled_m3, bead.metal) * static_cast<double>(bead.count);
}

Grains massOf(const Dumbbell& eyes) {
  return grains(2.0 * sphere_m3(si::m(eyes.ball)) + rod_m3(si::m(eyes.bar), si::m(eyes.barLength)),
                eyes.metal);
}

Grains massOf(const WireWraps& wraps) {
  const double length_m =
      static_cast<double>(wraps.turns) * kPi * (si::m(wraps.over) + si::m(wraps.wire));
  return grains(rod_m3(si::m(wraps.wire), length_m), wraps.metal);
}

std::optional<Grains> usualHookMass(const std::string& hook) {
  const auto number = hookNumber(hook);
  if (!number) return std::nullopt;
  const double perSize = std::pow(kHookAt2_gr / kHookAt6_gr, 0.25);
  return Grains(kHookAt2_gr * std::pow(perSize, 2.0 - *number));
}

tl::expected<FlyFigures, Problem> flyFigures(const FlyRecipe& recipe) {
  if (auto problem = refused(recipe)) return tl::unexpected(std::move(*problem));
  FlyFigures figures;
  double volume = 0.0;
  Grains forward;
  const auto add = [&](Grains mass, Metal metal, bool ahead) {
    figures.metal += mass;
    volume += volume_m3(mass, densityOf(metal));
    if (ahead) forward += mass;
    figures.lead = figures.lead || (metal == Metal::lead && mass > Grains(0));
  };
  if (recipe.hookWire) {
    add(massOf(*recipe.hookWire), Metal::steel, false);
  } else if (recipe.hook) {
    add(usualHookMass(*recipe.hook).value_or(Grains(0)), Metal::steel, false);
  }
  for (const HookWire& shank : recipe.shanks) add(massOf(shank), Metal::steel, false);
  for (const Bead& bead : recipe.beads) add(massOf(bead), bead.metal, true);
  for (const Dumbbell& eyes : recipe.eyes) add(massOf(eyes), eyes.metal, true);
  for (const KnownWeight& weight : recipe.weights) add(weight.mass, weight.metal, weight.forward);
  for (const WireWraps& wraps : recipe.wraps) add(massOf(wraps), wraps.metal, false);
  const Grains water = recipe.dressing.dry * recipe.dressing.soak;
  volume += volume_m3(recipe.dressing.dry, kDressingDensity);
  volume += volume_m3(water, GramsPerCubicCentimetre(1.0));
  figures.dry = figures.metal + recipe.dressing.dry;
  figures.wet = figures.dry + water;
  if (!(figures.dry > Grains(0))) {
    return tl::unexpected(refusal(Problem::tr("there is nothing on this fly yet"), Problem::tr("add a hook or a dressing")));
  }
  if (const auto wrong = breach(limits::kFlyMass, figures.wet.value())) {
    return tl::unexpected(refusal(wrong->what, wrong->fix));
  }
  figures.density = si::toGramsPerCubicCentimetre(si::kg(figures.wet) / volume);
  figures.dragArea = dragOf(recipe);
  figures.headFirst = forward > figures.dry * kForwardShare;
  return figures;
}

FlyRange flyRange(const FlyRecipe& recipe, const FlyFigures& figures) {
  constexpr double kHookOff = 0.20;
  constexpr double kMeasureOff = 0.05;
  constexpr double kDressingOff = 0.25;
  constexpr double kSoakOff = 0.30;
  constexpr double kBeadOff_m = 0.05e-3;
  double squares = 0.0;
  const auto off = [&squares](Grains mass) { squares += mass.value() * mass.value(); };
  if (recipe.hookWire) {
    off(massOf(*recipe.hookWire) * kMeasureOff);
  } else if (recipe.hook) {
    off(usualHookMass(*recipe.hook).value_or(Grains(0)) * kHookOff);
  }
  for (const HookWire& shank : recipe.shanks) off(massOf(shank) * kMeasureOff);
  for (const Dumbbell& eyes : recipe.eyes) off(massOf(eyes) * kMeasureOff);
  for (const Bead& bead : recipe.beads) {
    Bead large = bead;
    large.diameter += si::toInches(kBeadOff_m);
    large.hole = std::max(Inches(0), bead.hole - si::toInches(kBeadOff_m));
    off(massOf(large) - massOf(bead));
  }
  for (WireWraps one : recipe.wraps) {
    one.turns = 1;
    off(massOf(one));
  }
  const Grains dressing = recipe.dressing.dry;
  const double metal = squares;
  off(dressing * kDressingOff);
  const Grains dry(std::sqrt(squares));
  squares = metal;
  off(dressing * ((1.0 + recipe.dressing.soak) * kDressingOff));
  off(dressing * (recipe.dressing.soak * kSoakOff));
  const Grains wet(std::sqrt(squares));
  return {std::max(Grains(0), figures.dry - dry), figures.dry + dry,
          std::max(Grains(0), figures.wet - wet), figures.wet + wet};
}

Part flyPart(const FlyRecipe& recipe, const FlyFigures& figures) {
  const auto to = [](double value, double perUnit) { return std::round(value * perUnit) / perUnit; };
  Part part;
  part.kind = PartKind::fly;
  part.name = recipe.name;
  Fly fly;
  fly.dry = Grains(to(figures.dry.value(), 10));
  fly.wet = Grains(std::max(to(figures.wet.value(), 10), fly.dry.value()));
  fly.density = GramsPerCubicCentimetre(to(figures.density.value(), 100));
  fly.dragArea = SquareCentimetres(std::min(to(figures.dragArea.value(), 10), 100.0));
  if (figures.headFirst) fly.sinksHeadFirst = true;
  fly.hook = recipe.hook;
  part.fly = fly;
  return part;
}

}  // namespace grainwise
