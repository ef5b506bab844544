// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/air/air_line.h"
#include "core/air/least_speed.h"
#include "core/air/rolling_loop.h"
#include "core/units/si.h"
#include "tests/support/air_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::rigs;

namespace {

/// The table's figures come from another code on the same equations and are rounded to 3 digits.
constexpr double kReference = 0.02;
constexpr double kRounded = 0.005;  // of figures given to two decimals under 1

Approx reference(double value) {
  return Approx(value).epsilon(kReference).margin(kRounded);
}

LoopDrag dragOf(const AirLine& line) {
  LoopDrag drag;
  drag.fly_m2 = line.flyDrag_m2;
  return drag;
}

/// The plain winter rig with 3 ft of overhang, cast as a short head usually is.
Turnover plain(const TurnoverConditions& conditions = {}) {
  return turnoverOf(plainWinter(), conditions).value();
}

}  // namespace

TEST_CASE("Every reference cast is met by the rolling loop") {
  for (const AirCase& c : airCases()) {
    INFO(c.name);
    const Turnover t = turnoverOf(c.rig).value();
    CHECK(t.arrives);
    CHECK(t.pace == reference(c.pace));
    CHECK(si::m_per_s(t.flySpeed) == reference(c.end_m_per_s));
    CHECK(t.time.value() == reference(c.time_s));
    CHECK(si::m(t.endHeight) == reference(c.height_m));
    CHECK(si::m_per_s(t.leastLineSpeed.value()) == reference(c.least_m_per_s));
    CHECK(t.reserve == reference(c.reserve));
    CHECK(t.drive.value() == reference(c.drive));
    CHECK(t.coast.value() == reference(c.coast_ft));
    if (!c.fails) CHECK(t.nylonKeep.value() == reference(c.keep));
  }
}

TEST_CASE("The verdicts of the reference casts follow their figures") {
  const auto cases = airCases();
  const auto of = [&](std::size_t i) { return turnoverOf(cases[i].rig).value(); };
  CHECK(of(0).reserveVerdict == ReserveVerdict::toSpare);
  CHECK(of(0).driveVerdict == DriveVerdict::carries);
  CHECK(of(0).paceVerdict == PaceVerdict::firm);
  CHECK(of(1).driveVerdict == DriveVerdict::doesNotCarry);
  CHECK(of(1).paceVerdict == PaceVerdict::soft);
  CHECK(of(3).paceVerdict == PaceVerdict::kicks);
  CHECK(of(4).driveVerdict == DriveVerdict::doesNotCarry);
  CHECK(of(5).reserveVerdict == ReserveVerdict::heap);
  CHECK(of(5).paceVerdict == PaceVerdict::dies);
  CHECK(of(6).driveVerdict == DriveVerdict::marginal);
}

TEST_CASE("The grid gives what one of 5 mm gives") {
  constexpr double kSame = 1e-4;  // promised in rolling_loop.h
  for (const AirCase& c : airCases()) {
    INFO(c.name);
    const MassProfile profile = massProfile(c.rig);
    const AirLine line = airLine(c.rig, profile, Feet(3)).value();
    LoopShape shape;
    shape.launch_rad = 0.1;
    const RollingLoop coarse(line, shape, dragOf(line));
    const RollingLoop fine(line, shape, dragOf(line), 0.0, 0.005);
    const LoopEnd a = coarse.run(22, 0, dragOf(line));
    const LoopEnd b = fine.run(22, 0, dragOf(line));
    CHECK(fine.steps() > 10 * coarse.steps());
    CHECK(a.speed_m_per_s == Approx(b.speed_m_per_s).epsilon(kSame));
    CHECK(a.time_s == Approx(b.time_s).epsilon(kSame));
    CHECK(a.height_m == Approx(b.height_m).epsilon(kSame));
    CHECK(a.nylonSpeed_m_per_s == Approx(b.nylonSpeed_m_per_s).epsilon(kSame));
  }
}

TEST_CASE("Without gravity a held loop keeps its pace whatever its speed") {
  for (const AirCase& c : airCases()) {
    const AirLine line = airLine(c.rig, massProfile(c.rig), Feet(3)).value();
    LoopShape shape;
    shape.gravity_m_per_s2 = 0.0;
    const RollingLoop loop(line, shape, dragOf(line));
    const double slow = loop.run(6, 0, dragOf(line)).speed_m_per_s / 6;
    const double fast = loop.run(60, 0, dragOf(line)).speed_m_per_s / 60;
    CHECK(slow == Approx(fast).epsilon(1e-10));
  }
}

TEST_CASE("The least speed is the one whose fly ends at the water") {
  for (const AirCase& c : airCases()) {
    INFO(c.name);
    const AirLine line = airLine(c.rig, massProfile(c.rig), Feet(3)).value();
    LoopShape shape;
    shape.launch_rad = 0.1;
    const LoopDrag drag = dragOf(line);
    const RollingLoop loop(line, shape, drag);
    const double least = leastSpeed_m_per_s(loop, 0, drag, 22).value();
    const LoopEnd above = loop.run(least * 1.0001, 0, drag);
    const LoopEnd below = loop.run(least * 0.9999, 0, drag);
    CHECK((above.arrives && above.height_m > 0));
    CHECK((!below.arrives || below.height_m < 0));
    CHECK(leastSpeed_m_per_s(loop, 0, drag, 200).value() == Approx(least).epsilon(1e-5));
    CHECK(leastSpeed_m_per_s(loop, 0, drag, 1).value() == Approx(least).epsilon(1e-5));
  }
}

TEST_CASE("A cast aimed at the water from its level never turns over, and says so in figures") {
  Rig rig = plainWinter();
  rig.cast = Cast{};
  rig.cast->launch = Degrees(-10);
  rig.cast->rodTip = Feet(0);
  const Turnover t = turnoverOf(rig).value();
  CHECK_FALSE(t.leastLineSpeed);
  CHECK(t.reserve == 0.0);
  CHECK(t.reserveVerdict == ReserveVerdict::heap);
}

TEST_CASE("A loop mass passes as a short heavy piece does") {
  Rig withLoop = plainWinter();
  withLoop.parts[2] = withLoops(withLoop.parts[2], 0, 4);
  Rig withPiece = plainWinter();  // the same 4 gr over a twentieth of an inch
  constexpr double kShort_ft = 1.0 / 240.0;
  auto& sections = withPiece.parts[2].sections;
  sections[0].length = Feet(10 - kShort_ft);
  sections.push_back(sinking(kShort_ft, 11, 7.5));
  sections[1].mass = Along<GrainsPerFoot>(GrainsPerFoot(11 + 4 / kShort_ft));
  sections[1].sinkRate.reset();
  sections[1].diameter = sections[0].diameter =
      Along<Inches>(sectionProperties(sinking(10, 11, 7.5), PartKind::tip, 1).diameterRodEnd);
  sections[0].sinkRate.reset();
  const Turnover a = turnoverOf(withLoop).value();
  const Turnover b = turnoverOf(withPiece).value();
  CHECK(a.pace == Approx(b.pace).epsilon(2e-4));
  CHECK(a.reserve == Approx(b.reserve).epsilon(2e-4));
  CHECK(a.pace != Approx(plain().pace).epsilon(2e-3));
}

TEST_CASE("The overhang is running line, as much as there is") {
  Rig rig = plainWinter();
  const auto length = [&] {
    const Turnover t = turnoverOf(rig).value();
    return (t.stations.back().at - t.stations.front().at).value();
  };
  const double usual = length();
  rig.cast = Cast{};
  rig.cast->overhang = Feet(0);
  CHECK(usual - length() == Approx(3).margin(1e-9));
  rig.cast->overhang = Feet(30);
  CHECK(length() - usual == Approx(27).margin(1e-9));
  rig.parts.erase(rig.parts.begin());
  CHECK(length() == Approx(usual - 3).margin(1e-9));
}

TEST_CASE("A usual cast fills what the rig leaves open, and a learner has a fifth less speed") {
  Rig rig = plainWinter();
  CHECK(castSetup(rig, false).lineSpeed == FeetPerSecond(55));
  CHECK(castSetup(rig, true).lineSpeed.value() == Approx(44));
  CHECK(castSetup(rig, true).loop == Feet(5));
  rig.parts[1].style = Style::fine;
  rig.cast = Cast{};
  rig.cast->loop = Feet(4.5);
  CHECK(castSetup(rig, false).lineSpeed == FeetPerSecond(65));
  CHECK(castSetup(rig, false).loop == Feet(4.5));
  rig.parts[1].style = Style::longBelly;
  CHECK(castSetup(rig, false).launch == Degrees(10));
  rig.rod->hands = 1;
  CHECK(castSetup(rig, false).rodTip == Feet(11));
  TurnoverConditions learner;
  learner.learner = true;
  CHECK(plain(learner).reserve == Approx(0.8 * plain().reserve).epsilon(1e-5));
}

TEST_CASE("A rig's own air is the standard atmosphere at its altitude, without one the usual air") {
  CHECK(airAt(std::nullopt) == AirSettings{});
  constexpr double kTenthOfAPerCent = 1e-3;  // what the usual altitude is rounded to
  CHECK(airAt(kUsualAirAltitude).density_kg_per_m3 ==
        Approx(AirSettings{}.density_kg_per_m3).epsilon(kTenthOfAPerCent));
  const auto paceAt = [](std::optional<Feet> altitude) {
    Rig rig = plainWinter();
    rig.cast = Cast{};
    rig.cast->airAltitude = altitude;
    return turnoverOf(rig).value().pace;
  };
  CHECK(paceAt(std::nullopt) == plain().pace);
  CHECK(paceAt(Feet(-1500)) < plain().pace);
  CHECK(paceAt(Feet(5000)) > plain().pace);
  CHECK(paceAt(Feet(20000)) > paceAt(Feet(5000)));
}

TEST_CASE("What cannot be computed says why") {
  const auto why = [](const Rig& rig) { return turnoverOf(rig).error(); };
  Rig rig = plainWinter();
  rig.parts[1].kind = PartKind::tip;
  CHECK(why(rig) == NoTurnover::noHead);
  rig = plainWinter();
  rig.parts.pop_back();
  CHECK(why(rig) == NoTurnover::noFly);
  CHECK(why(rigOf({})) == NoTurnover::noHead);
  rig = plainWinter();
  rig.parts.back().fly->dry = Grains(0);
  CHECK(why(rig) == NoTurnover::noFlyMass);
  rig = plainWinter();
  rig.cast = Cast{};
  rig.cast->lineSpeed = FeetPerSecond(13.1);  // 3.99 m/s
  CHECK(why(rig) == NoTurnover::tooSlow);
  rig.cast->lineSpeed = FeetPerSecond(13.2);
  CHECK(turnoverOf(rig));
  CHECK(why(rigOf({head({floating(2, 20)}), fly(10)})) == NoTurnover::tooShort);
  CHECK(turnoverOf(rigOf({head({floating(300, 20)}), fly(10)})));
  CHECK(why(rigOf({head({floating(300, 20), floating(0.1, 20)}), fly(10)})) == NoTurnover::tooLong);
}

TEST_CASE("Bare nylon is left out of the drive, and the least place is named") {
  const Turnover t = turnoverOf(airCases()[1].rig).value();
  CHECK(t.drivePart == 1);  // the tip, at its rod end, where its own skin weighs on it most
  CHECK(t.driveAt.feet() == Approx(23));
  CHECK(t.nylonKeep.value() < 1);
  CHECK(t.stations.front().at < t.stations.back().at);
  Rig rig = rigOf({head({floating(30, 15)}), fly(20)});
  CHECK_FALSE(turnoverOf(rig)->nylonKeep);
  CHECK(turnoverOf(rig)->drive);
  rig.parts[0].sections[0] = nylon(30, 0.02);
  CHECK_FALSE(turnoverOf(rig)->drive);
  CHECK(turnoverOf(rig)->coast > Feet(20));
}

TEST_CASE("A step up in mass kicks sooner than the same pace does without one") {
  const Rig rig = castRig({airShort525(), airTip(14), airTippet33(), airFly(10, 1.5)});
  const MassProfile profile = massProfile(rig);
  Junction joint;
  joint.ratio3ft = 1.6;
  const Turnover without = turnover(rig, profile, {}).value();
  const Turnover with = turnover(rig, profile, {joint}).value();
  REQUIRE(without.pace > 2.5);
  REQUIRE(without.pace < 4);
  CHECK(without.paceVerdict == PaceVerdict::lively);
  CHECK(with.paceVerdict == PaceVerdict::kicks);
  CHECK(with.pace == without.pace);
}

TEST_CASE("The range holds the reading, and names what would change the verdict") {
  for (const AirCase& c : airCases()) {
    INFO(c.name);
    const Turnover t = turnoverOf(c.rig).value();
    CHECK(t.reserveRange.low < t.reserve);
    CHECK(t.reserveRange.high > t.reserve);
    CHECK(t.driveRange.low < *t.drive);
    CHECK(t.driveRange.high > *t.drive);
    CHECK(t.paceRange.low < t.pace);
    CHECK(t.paceRange.high > t.pace);
  }
  const auto cases = airCases();
  // Reserve 2.54 stays over 1.3; drive 0.97 crosses 1 with the fly's drag; reserve 0.846 leaves
  // 0.85 with any input, and the fly's drag moves it most.
  CHECK_FALSE(turnoverOf(cases[0].rig)->reserveRange.hangsOn);
  CHECK(turnoverOf(cases[6].rig)->driveRange.hangsOn == TurnoverInput::flyDrag);
  CHECK(turnoverOf(cases[5].rig)->reserveRange.hangsOn == TurnoverInput::flyDrag);
}

TEST_CASE("A variant in the range is what the rig with that input reads") {
  Rig rig = castRig({airShort525(), airTip(8), airTippet33(), airFly(80, 10)});
  const Turnover middle = turnoverOf(rig).value();
  rig.parts.back() = airFly(80, 15);
  const Turnover bulky = turnoverOf(rig).value();
  CHECK(middle.driveRange.low == Approx(*bulky.drive).epsilon(1e-4));
  CHECK(middle.paceRange.low == Approx(bulky.pace).epsilon(1e-4));
  rig = castRig({airShort525(), airTip(8), airTippet33(), airFly(80, 10)});
  rig.cast->lineSpeed = FeetPerSecond(72.178478 * 1.15);
  CHECK(middle.reserveRange.high == Approx(turnoverOf(rig)->reserve).epsilon(1e-5));
}

TEST_CASE("The curves balance at the coast's beginning and are under the need behind it") {
  const Turnover t = turnoverOf(airCases()[1].rig).value();
  const Station begins = t.stations.back().at - t.coast;
  for (const TurnoverStation& s : t.stations) {
    if (s.at > begins + Feet(1e-6)) CHECK(s.line < s.need);
  }
  CHECK(t.stations.back().need.value() == Approx(1.13 * 10).epsilon(0.01));  // 1.13 CdA at the fly
}
