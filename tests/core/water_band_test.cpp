// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/water/band.h"
#include "core/water/depth_basis.h"
#include "tests/support/water_cases.h"

using namespace grainwise;

namespace {

Section sectionOf(double feet, double rodEnd, double flyEnd) {
  Section s;
  s.length = Feet(feet);
  s.mass = Along<GrainsPerFoot>(GrainsPerFoot(rodEnd), GrainsPerFoot(flyEnd));
  return s;
}
Part partOf(PartKind kind, Section section) {
  Part part;
  part.kind = kind;
  part.sections = {std::move(section)};
  return part;
}

/// A short head, ten feet at 11 gr/ft, a nylon leader and a leech, in a pool of 3.5 ft/s by 6 ft.
Rig ordinaryRig() {
  Rig rig;
  Section head = sectionOf(24, 26, 19);
  head.floats = true;
  Section tip = sectionOf(10, 11, 11);
  tip.sinkRate = Along<InchesPerSecond>(InchesPerSecond(7.5));
  Section leader;
  leader.length = Feet(4);
  leader.diameter = Along<Inches>(Inches(0.0138));
  leader.material = Material::nylon;
  Part fly;
  fly.kind = PartKind::fly;
  fly.fly = Fly{Grains(20), {}, {}, GramsPerCubicCentimetre(2.5), {}, {}};
  rig.parts = {partOf(PartKind::head, head), partOf(PartKind::tip, tip),
               partOf(PartKind::leader, leader), fly};
  rig.water = Water{{}, FeetPerSecond(3.5), Feet(6), {}, {}, {}, {}, {}};
  return rig;
}

HangDown hanging(double feet) {
  HangDown h;
  h.fly = Feet(feet);
  return h;
}

}  // namespace

TEST_CASE("the live band widens by the fifth and the third, by 0.3 ft, and ends at the bed") {
  const auto deep = *liveBand(hanging(5), Feet(20));
  CHECK(deep.middle.value() == Approx(5.6));
  CHECK(deep.low.value() == Approx(0.8 * 5.6));
  CHECK(deep.high.value() == Approx(1.3 * 5.6));
  CHECK_FALSE(deep.fromRuns);
  const auto shallow = *liveBand(hanging(0.75 / 1.12), Feet(20));
  CHECK(shallow.low.value() == Approx(0.5));  // two thirds, not 0.45
  CHECK(shallow.high.value() == Approx(1.05));
  const auto low = *liveBand(hanging(2.9), Feet(3));
  CHECK(low.middle == Feet(3));
  CHECK(low.high == Feet(3));
  HangDown still;
  still.state = DepthState::stillWater;
  CHECK_FALSE(liveBand(still, Feet(3)));
}

TEST_CASE("the live middle is near the swing depth while the line hangs free") {
  // 1.12 times the hang-down within a tenth; the range around it is a fifth and more
  for (const auto& c : test::waterCases()) {
    CAPTURE(c.name);
    const auto band = *liveBand(hangDown(c.line, c.river()), Feet(c.depth_ft));
    CHECK(band.middle.value() == Approx(c.swing_ft).epsilon(0.10));
    CHECK(band.low.value() < c.swing_ft);
    CHECK(band.high.value() > c.swing_ft);
  }
}

TEST_CASE("the band from real swings is as wide as the live one says") {
  const SwingBand b = swingBand(ordinaryRig());
  REQUIRE(b.band);
  CHECK(b.band->fromRuns);
  CHECK(b.runs == 17);
  CHECK(b.shares.size() == 8);
  const double low = b.band->low / b.band->middle, high = b.band->high / b.band->middle;
  // the live range is rounded to the careful side
  CHECK(low == Approx(0.80).margin(0.07));
  CHECK(high > 1.15);
  CHECK(high < 1.35);
  for (std::size_t i = 1; i < b.shares.size(); ++i) {
    CHECK(b.shares[i - 1].shallower + b.shares[i - 1].deeper >=
          b.shares[i].shallower + b.shares[i].deeper);
  }
  CHECK(b.shares.front().source == BandSource::current);
  const SwingBand again = swingBand(ordinaryRig());
  CHECK(again.band == b.band);
  CHECK(b.band->bottomShare == 0.0);
  CHECK(b.band->roundAfter.has_value());
  Rig thin = ordinaryRig();
  thin.water->depth = Feet(1.2);
  const SwingBand bed = swingBand(thin);
  REQUIRE(bed.band);
  CHECK(bed.band->bottomShare > 0.05);
}

TEST_CASE("a better known current makes a narrower band") {
  WaterUncertainty known;
  known.current = 0.03;
  const SwingBand wide = swingBand(ordinaryRig());
  const SwingBand narrow = swingBand(ordinaryRig(), {}, known);
  CHECK(narrow.band->high < wide.band->high);
  CHECK(narrow.band->low > wide.band->low);
  CHECK(narrow.band->middle == wide.band->middle);
}

TEST_CASE("the rig's own bed is what its current runs over, and what the band's runs go by") {
  const Rig usual = ordinaryRig();
  const auto over = [&](Bed bed) {
    Rig rig = usual;
    rig.water->bed = bed;
    return rig;
  };
  CHECK(*swingBand(over(Bed::gravel)).middle == *swingBand(usual).middle);
  CHECK(swingBand(over(Bed::gravel)).band == swingBand(usual).band);
  double middle_ft = 0;
  for (const Bed bed : allBeds()) {
    INFO(fileName(bed));
    const SwingBand runs = swingBand(over(bed));
    CHECK(runs.middle->value() > middle_ft);  // slower water near a rougher bed
    middle_ft = runs.middle->value();
    const auto profile = std::find_if(runs.ends.begin(), runs.ends.end(), [](const BandEnds& e) {
      return e.source == BandSource::profile;
    });
    REQUIRE(profile != runs.ends.end());
    CHECK(*profile->one > *runs.middle);    // a rougher one yet
    CHECK(*profile->other < *runs.middle);  // a smoother one
    CHECK(profileRangeOver(bed).full < profileOver(bed).exponent);
    CHECK(profileRangeOver(bed).steep > profileOver(bed).exponent);
  }
  CHECK(profileOver(Bed::gravel) == CurrentProfile{});
  CHECK(profileRangeOver(Bed::gravel).full == WaterUncertainty{}.profileFull);
  CHECK(profileRangeOver(Bed::gravel).steep == WaterUncertainty{}.profileSteep);
}

TEST_CASE("what is stated is not varied") {
  Rig rig = ordinaryRig();
  rig.parts[0].sections[0].floats.reset();
  rig.parts[0].sections[0].density = GramsPerCubicCentimetre(0.86);
  rig.parts[1].sections[0].sinkRate.reset();
  rig.parts[1].sections[0].density = GramsPerCubicCentimetre(4.84);
  CHECK(swingBand(rig).runs == 13);
}

TEST_CASE("a depth rests on the density of its head and on its current half way down, and says what of that is assumed") {
  Rig rig = ordinaryRig();
  const auto basis = [&](const CurrentProfile& current = {}) { return depthBasis(rig, massProfile(rig), current); };
  const auto varies = [&](BandSource source) {
    const auto ends = swingBand(rig).ends;
    return std::any_of(ends.begin(), ends.end(), [&](const BandEnds& e) { return e.source == source; });
  };
  CHECK(basis().headLight == floatingDensity(PartKind::head));
  CHECK(basis().headHeavy == floatingDensity(PartKind::head));
  CHECK(basis().headAssumed);
  CHECK(varies(BandSource::headDensity));
  constexpr double kRound = 1e-12;  // roots of one half
  CHECK(basis().halfWay == Approx(std::pow(0.5, 1.0 / 6)).epsilon(kRound));
  CHECK(basis().halfWaySlow == Approx(std::pow(0.5, 1.0 / 5)).epsilon(kRound));
  CHECK(basis().halfWayFast == Approx(std::pow(0.5, 1.0 / 8)).epsilon(kRound));
  rig.water->bed = Bed::boulders;
  CHECK(basis().halfWay == Approx(std::pow(0.5, 1.0 / 4)).epsilon(kRound));
  CHECK(basis().halfWaySlow == Approx(std::pow(0.5, 1.0 / 3)).epsilon(kRound));
  CHECK(basis().halfWayFast == Approx(std::pow(0.5, 1.0 / 6)).epsilon(kRound));
  rig.water->bed.reset();
  const DepthBasis other = basis({CurrentProfile::Law::logarithmic, 0});
  CHECK(other.halfWaySlow == other.halfWay);
  CHECK(other.halfWayFast == other.halfWay);
  rig.parts[0].sections[0].density = GramsPerCubicCentimetre(0.8);
  rig.parts[0].sections[0].floats.reset();
  CHECK(basis().headLight == GramsPerCubicCentimetre(0.8));
  CHECK_FALSE(basis().headAssumed);
  CHECK_FALSE(varies(BandSource::headDensity));
  rig.parts.erase(rig.parts.begin());
  CHECK_FALSE(basis().headLight.has_value());
}

TEST_CASE("the band can be stopped, and costs well under two seconds") {
  std::stop_source source;
  int calls = 0;
  const SwingBand stopped = swingBand(ordinaryRig(), {}, {}, source.get_token(), [&](double) {
    if (++calls == 3) source.request_stop();
  });
  CHECK(stopped.end == SwingEnd::stopped);
  CHECK_FALSE(stopped.band);
}

TEST_CASE("without water or fly there is no band") {
  Rig rig = ordinaryRig();
  rig.parts.pop_back();
  CHECK_FALSE(swingBand(rig).band);
  rig = ordinaryRig();
  rig.water.reset();
  CHECK(swingBand(rig).runs <= 1);
}
