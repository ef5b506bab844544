// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/mass/line_integrals.h"
#include "core/mass/profile.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

/// Closed forms in doubles: a few last bits of some hundred grains.
constexpr double kExact = 1e-9;

Approx exactly(double value) { return Approx(value).margin(kExact).epsilon(1e-12); }

}  // namespace

TEST_CASE("A linear piece weighs its length times the mean of its ends") {
  const Grains mass =
      pieceMass(MassLaw::linear, Feet(18), GrainsPerFoot(16.32), GrainsPerFoot(6));
  CHECK(mass.value() == exactly(18 * 11.16));
}

TEST_CASE("A tapered strand weighs as a cone frustum of its diameters") {
  // d 2 to 4 in any unit, mass per foot d^2: L (4 + 8 + 16)/3.
  const Grains mass =
      pieceMass(MassLaw::diameterSquared, Feet(3), GrainsPerFoot(4), GrainsPerFoot(16));
  CHECK(mass.value() == exactly(28));
}

TEST_CASE("The centroid of a piece is that of its law") {
  CHECK(pieceCentroid(MassLaw::linear, GrainsPerFoot(0), GrainsPerFoot(5)) == exactly(2.0 / 3.0));
  CHECK(pieceCentroid(MassLaw::diameterSquared, GrainsPerFoot(0), GrainsPerFoot(5)) ==
        exactly(3.0 / 4.0));
  CHECK(pieceCentroid(MassLaw::linear, GrainsPerFoot(7), GrainsPerFoot(7)) == exactly(0.5));
  CHECK(pieceCentroid(MassLaw::diameterSquared, GrainsPerFoot(7), GrainsPerFoot(7)) ==
        exactly(0.5));
  CHECK(pieceCentroid(MassLaw::linear, GrainsPerFoot(0), GrainsPerFoot(0)) == exactly(0.5));
}

TEST_CASE("A compensated sum keeps what a plain one loses") {
  ExactSum sum;
  for (const double term : {1.0, 1e100, 1.0, -1e100}) sum += term;
  CHECK(sum.value() == 2.0);
}

TEST_CASE("Stations count from the rear of the head and the running line lies behind it") {
  const MassProfile profile = massProfile(plainWinter());
  REQUIRE(profile.places.size() == 6);
  CHECK(profile.places[0].from == Station(-100));
  CHECK(profile.places[0].to == Station(0));
  CHECK(profile.places[1].from == Station(0));
  CHECK(profile.places[2].from == Station(23));
  CHECK(profile.places[3].from == Station(33));
  CHECK(profile.end == Station(37));
  CHECK(profile.firstPart == 1);
  CHECK(profile.firstSpan == 1);
}

TEST_CASE("A running line of several sections ends exactly at the head") {
  const Part line = partOf(PartKind::runningLine, {nylon(0.1, 0.02), nylon(0.2, 0.03)});
  const MassProfile profile = massProfile(rigOf({line, short525()}));
  CHECK(profile.spans[1].to == Station(0));
  CHECK(profile.spans[0].to == profile.spans[1].from);
  CHECK(profile.places[0].from.feet() == exactly(-0.3));
}

TEST_CASE("Without a head the count begins behind the running line") {
  const MassProfile profile = massProfile(rigOf({runningLine(20), tip({sinking(10, 11, 7.5)})}));
  CHECK(profile.places[1].from == Station(0));
  CHECK(profile.end == Station(10));
}

TEST_CASE("A label scales a part to what stands on the packet") {
  Part part = short525();
  part.label = Grains(550);
  CHECK(scaleOf(part) == exactly(550.0 / 525.0));
  const MassProfile profile = massProfile(rigOf({part}));
  CHECK(profile.places[0].mass().value() == exactly(550));
  CHECK(profile.spans[1].properties.mass.rodEnd.value() == exactly(24.5 * 550 / 525));
}

TEST_CASE("A weighed mass outranks the label and has its loops taken off first") {
  Part part = withLoops(tip({sinking(10, 11, 7.5)}), 2.3, 1.2);
  part.label = Grains(200);
  part.weighed = Weighed{Grains(113.5), std::nullopt, {}};
  CHECK(scaleOf(part) == exactly(110.0 / 110.0));
  const MassProfile profile = massProfile(rigOf({part}));
  CHECK(profile.places[0].mass().value() == exactly(113.5));
  CHECK(profile.places[0].loops.value() == exactly(3.5));
}

TEST_CASE("A label scales a part given by diameters as well") {
  Part part = leader({nylon(3, 0.020, 0.010)});
  const double typed = massProfile(rigOf({part})).places[0].mass().value();
  part.label = Grains(typed * 1.25);
  CHECK(scaleOf(part) == exactly(1.25));
  CHECK(massProfile(rigOf({part})).places[0].mass().value() == exactly(typed * 1.25));
}

TEST_CASE("Grains between two stations cross sections and parts and leave point masses out") {
  const Rig rig = rigOf({withLoops(head({floating(10, 10, 20)}), 1, 2), tip({sinking(10, 8, 6)})});
  const MassProfile profile = massProfile(rig);
  // 5 ft from 15 to 20 gr/ft, then 2 ft of 8.
  CHECK(profile.lineBetween(Station(5), Station(12)).value() == exactly(87.5 + 16));
  CHECK(profile.lineBetween(Station(12), Station(5)).value() == 0.0);
  CHECK(profile.lineBetween(Station(-5), Station(50)).value() == exactly(150 + 80));
  CHECK(profile.soFar(Station(0)).value() == exactly(1));
  CHECK(profile.soFar(Station(10)).value() == exactly(153));
  CHECK(profile.soFar(Station(-1)).value() == 0.0);
}

TEST_CASE("A running line's loops count in no sum from the head on") {
  const Rig rig = rigOf({withLoops(runningLine(50), 3, 3), head({floating(10, 10)}), fly(5)});
  const MassProfile profile = massProfile(rig);
  CHECK(profile.soFar(Station(0)).value() == 0.0);
  CHECK(profile.soFar(profile.end).value() == exactly(105));
  CHECK(profileRows(profile).front().soFar == Grains(0));
}

TEST_CASE("Mass per foot has two sides at a joint and none outside the line") {
  const MassProfile profile = massProfile(rigOf({head({floating(10, 10, 20)}), tip({sinking(10, 8, 6)})}));
  CHECK(profile.before(Station(10)).value() == exactly(20));
  CHECK(profile.after(Station(10)).value() == exactly(8));
  CHECK(profile.after(Station(2.5)).value() == exactly(12.5));
  CHECK(profile.before(Station(0)).value() == 0.0);
  CHECK(profile.after(Station(20)).value() == 0.0);
}

TEST_CASE("Profile rows hold both sides of every step and every jump of a point mass") {
  const Rig rig = rigOf({withLoops(head({floating(2, 10, 20), floating(8, 20)}), 1, 2),
                         tip({sinking(10, 8, 6)}), fly(30)});
  const auto rows = profileRows(massProfile(rig));
  const std::vector<std::array<double, 3>> wanted{
      {0, 10, 0},   {0, 10, 1},   {2, 20, 31},   {10, 20, 191},
      {10, 8, 193}, {20, 8, 273}, {20, 8, 303},
  };
  REQUIRE(rows.size() == wanted.size());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    INFO("row " << i);
    CHECK(rows[i].at.feet() == exactly(wanted[i][0]));
    CHECK(rows[i].mass.value() == exactly(wanted[i][1]));
    CHECK(rows[i].soFar.value() == exactly(wanted[i][2]));
  }
}

TEST_CASE("A step between two sections of one part stands as two rows") {
  const auto rows = profileRows(massProfile(rigOf({head({floating(2, 10), floating(8, 20)})})));
  REQUIRE(rows.size() == 4);
  CHECK(rows[1].at == rows[2].at);
  CHECK(rows[1].mass == GrainsPerFoot(10));
  CHECK(rows[2].mass == GrainsPerFoot(20));
}

TEST_CASE("The centre of mass balances line, loops and fly") {
  const Rig rig = rigOf({withLoops(head({floating(10, 10)}), 0, 20), fly(30)});
  CHECK(massProfile(rig).centreOfMass().feet() == exactly((100 * 5 + 20 * 10 + 30 * 10) / 150.0));
  CHECK(massProfile(rigOf({runningLine(10)})).centreOfMass() == Station(0));
}

TEST_CASE("A rig with nothing but a fly has one point mass and no length") {
  const MassProfile profile = massProfile(rigOf({fly(12)}));
  CHECK(profile.end == profile.start);
  CHECK(profile.soFar(profile.end) == Grains(12));
  CHECK(profileRows(profile).back().soFar == Grains(12));
}

TEST_CASE("A fly of no known mass is no point mass") {
  CHECK(massProfile(rigOf({short525(), fly(0)})).points.empty());
}
