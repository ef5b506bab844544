// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <numbers>

#include "core/bench/fly.h"
#include "core/model/check.h"

using namespace grainwise;

namespace {

Approx toRounding(double value) { return Approx(value).margin(1e-9); }
constexpr double kGrainsPerGram = 1.0 / 0.06479891;
Inches mm(double value) { return Inches(value / 25.4); }

KnownWeight steel(double gr) { return {Grains(gr), Metal::steel, false}; }

/// The design's four flies; the table rounds, and its densities were reckoned with other dressings.
struct TableFly {
  FlyRecipe recipe;
  double dry, wet, density;
  bool headFirst;
};

std::vector<TableFly> tableFlies() {
  TableFly hairwing{{}, 3.2, 6, 1.42, false};
  hairwing.recipe.weights = {steel(1.8)};
  hairwing.recipe.dressing = {Grains(1.4), 2.0};
  TableFly softHackle{{}, 7.2, 14, 1.55, false};
  softHackle.recipe.weights = {steel(5.2)};
  softHackle.recipe.dressing = {Grains(2.0), 3.4};
  TableFly leech{{}, 26, 33, 2.9, true};
  leech.recipe.weights = {steel(5.2), {Grains(18.2), Metal::lead, true}};
  leech.recipe.dressing = {Grains(2.6), 2.7};
  TableFly tungsten{{}, 51, 60, 4.1, true};
  tungsten.recipe.weights = {steel(6.1)};
  tungsten.recipe.beads = {{mm(5.5), mm(1.5), Metal::sinteredTungsten, 2}};
  tungsten.recipe.dressing = {Grains(3.0), 3.0};
  return {hairwing, softHackle, leech, tungsten};
}

}  // namespace

TEST_CASE("Fly: the four flies of the samples come out as their table says") {
  for (const TableFly& fly : tableFlies()) {
    const auto figures = flyFigures(fly.recipe);
    REQUIRE(figures);
    CAPTURE(fly.wet);
    CHECK(figures->dry.value() == Approx(fly.dry).margin(0.05));
    CHECK(figures->wet.value() == Approx(fly.wet).margin(0.06));
    CHECK(figures->density.value() == Approx(fly.density).margin(0.05));  // rounded in the table
    CHECK(figures->headFirst == fly.headFirst);
  }
}

TEST_CASE("Fly: drilled bead, by hand: 5.5 mm with a 1.5 mm hole") {
  // (pi/6)(5.5^2 - 1.5^2)^1.5 = 77.576 mm3 of 17.5 g/cm3 are 1.35758 g
  const Bead bead{mm(5.5), mm(1.5), Metal::sinteredTungsten, 1};
  CHECK(massOf(bead).value() == Approx(1.35758 * kGrainsPerGram).epsilon(1e-4));
  const Bead two{mm(5.5), mm(1.5), Metal::sinteredTungsten, 2};
  CHECK(massOf(two).value() == toRounding(2 * massOf(bead).value()));
}

TEST_CASE("Fly: hook wire, dumbbell and wraps, by hand") {
  const double pi = std::numbers::pi;
  // wire 1 mm, 40 mm: pi/4 mm2 x 40 mm x 7.85 mg/mm3
  CHECK(massOf(HookWire{mm(1), mm(40)}).value() ==
        Approx(pi / 4 * 40 * 7.85e-3 * kGrainsPerGram).epsilon(1e-9));
  // two 4 mm balls of lead and a 1 mm bar of 5 mm
  const double eyes_mm3 = 2 * pi / 6 * 64 + pi / 4 * 5;
  CHECK(massOf(Dumbbell{mm(4), mm(1), mm(5), Metal::lead}).value() ==
        Approx(eyes_mm3 * 11.34e-3 * kGrainsPerGram).epsilon(1e-9));
  // 20 turns of 0.5 mm lead over 1 mm: 20 pi 1.5 mm of pi/4 0.25 mm2
  CHECK(massOf(WireWraps{20, mm(0.5), mm(1), Metal::lead}).value() ==
        Approx(20 * pi * 1.5 * pi / 4 * 0.25 * 11.34e-3 * kGrainsPerGram).epsilon(1e-9));
}

TEST_CASE("Fly: drag by its bulk, or by its silhouette when that is measured") {
  FlyRecipe recipe;
  recipe.hook = "2";
  recipe.bulk = Bulk::bulky;
  CHECK(flyFigures(recipe)->dragArea == SquareCentimetres(3.5));
  recipe.width = mm(20);
  recipe.height = mm(30);
  CHECK(flyFigures(recipe)->dragArea.value() == Approx(6.0 * kSilhouetteCd));
}

TEST_CASE("Fly: a hook by its size weighs about what the samples' do, and falls with the size") {
  CHECK(usualHookMass("2")->value() == toRounding(5.2));
  CHECK(usualHookMass("6")->value() == toRounding(1.8));
  CHECK(*usualHookMass("1/0") > *usualHookMass("2"));
  CHECK(*usualHookMass("10") < *usualHookMass("8"));
  CHECK_FALSE(usualHookMass("large"));
}

TEST_CASE("Fly: wet is never less than dry, and soaking brings the density towards water") {
  FlyRecipe recipe;
  recipe.hook = "4";
  recipe.dressing = {Grains(3), 0.0};
  double last = flyFigures(recipe)->density.value();
  for (const double soak : {0.5, 1.0, 3.0, 10.0}) {
    recipe.dressing.soak = soak;
    const auto figures = flyFigures(recipe);
    CHECK(figures->wet >= figures->dry);
    CHECK(figures->density.value() < last);
    CHECK(figures->density.value() > 1.0);
    last = figures->density.value();
  }
}

TEST_CASE("Fly: the part is sound and says what was reckoned, rounded to the bench") {
  FlyRecipe recipe = tableFlies()[2].recipe;
  recipe.name = "Leech";
  const Part part = flyPart(recipe, *flyFigures(recipe));
  CHECK(check(part).empty());
  CHECK(part.fly->dry == Grains(26.0));
  CHECK(part.fly->wet == Grains(33.0));
  CHECK(part.fly->sinksHeadFirst == true);
  CHECK(flyFigures(recipe)->lead);
}

TEST_CASE("Fly: nothing, negative measures, holes as wide as the bead and giants are refused") {
  FlyRecipe empty;
  CHECK(flyFigures(empty).error().what.text().find("nothing on this fly") != std::string::npos);
  FlyRecipe hole;
  hole.beads = {{mm(3), mm(3), Metal::brass, 1}};
  CHECK(flyFigures(hole).error().what.text().find("hole") != std::string::npos);
  FlyRecipe negative;
  negative.shanks = {{mm(-1), mm(20)}};
  CHECK_FALSE(flyFigures(negative));
  FlyRecipe giant;
  giant.beads = {{Inches(5), Inches(0), Metal::tungsten, 1}};
  CHECK(flyFigures(giant).error().what.text().find("fly mass") != std::string::npos);
  FlyRecipe wet;
  wet.dressing = {Grains(1), -1};
  CHECK_FALSE(flyFigures(wet));
  FlyRecipe hook;
  hook.hook = "huge";
  CHECK_FALSE(flyFigures(hook));
}

TEST_CASE("Fly: how far its masses may be off, by hand, and that what is known adds nothing") {
  FlyRecipe recipe;
  recipe.hook = "2";
  recipe.dressing = {Grains(2), 3.0};
  const FlyFigures figures = *flyFigures(recipe);
  const FlyRange range = flyRange(recipe, figures);
  // hook 5.2 gr +- 1.04, dressing 2 gr +- 0.5: sqrt(1.04^2 + 0.5^2) = 1.154
  CHECK((range.dryHigh - figures.dry).value() == Approx(1.154).margin(0.001));
  CHECK((figures.dry - range.dryLow).value() == Approx(1.154).margin(0.001));
  // wet: the dressing with its water 8 gr +- 2, the water 6 gr +- 1.8: sqrt(1.04^2 + 2^2 + 1.8^2) = 2.885
  CHECK((range.wetHigh - figures.wet).value() == Approx(2.885).margin(0.001));
  FlyRecipe heavier = recipe;
  heavier.weights.push_back({Grains(18), Metal::lead, true});
  const FlyFigures more = *flyFigures(heavier);
  CHECK((flyRange(heavier, more).dryHigh - more.dry).value() == Approx((range.dryHigh - figures.dry).value()));
  FlyRecipe beaded = recipe;
  beaded.beads.push_back({Inches(0.18), Inches(0.05), Metal::tungsten, 1});
  const FlyFigures bead = *flyFigures(beaded);
  CHECK(flyRange(beaded, bead).dryHigh - bead.dry > range.dryHigh - figures.dry);
}
