// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>

#include "core/units/si.h"
#include "core/water/hang_march.h"

/// Published values of rivers and of lines in them, the source named beside each.
using namespace grainwise;
using namespace grainwise::hanging;

namespace {

/// `steps` of level line in a uniform current of 1 m/s, with R = 1 N/m of drag across.
struct PodeLine {
  River river;
  std::vector<Element> line;
  HangForces forces;

  PodeLine(double length_m, double weight, double along, int steps = 100) {
    river = riverOf(FeetPerSecond(1 / 0.3048), Feet(1000), {});
    river.profile.exponent = 0.0;
    forces.acrossCd = 1.0 / (0.5 * river.fluid.rho_kg_per_m3 * 0.001);
    forces.along_n_per_m = along;
    for (int i = 0; i < steps; ++i) {
      Element e;
      e.length_m = length_m / steps;
      for (double& w : e.wet_n_per_m) w = weight;
      for (double& d : e.diameter_m) d = 0.001;
      line.push_back(e);
    }
  }
  /// From T = 1 N, straight up.
  [[nodiscard]] State end() const {
    return Marcher(line, river, forces, false).march({0.0, 1.0, -200.0, 0.0}).last;
  }
};

constexpr double kPodePrinted = 6e-6;
constexpr double kDegreesPrinted = 6e-4;

}  // namespace

TEST_CASE("a line in a stream follows Pode's functions") {
  // L. Pode (1951), Tables for computing the equilibrium configuration of a flexible cable in a
  // uniform stream, DTMB report 687; values computed from its functions.
  SECTION("without weight and skin drag, RL/T = 1 and 2") {
    for (const auto& [length, depth, trail] :
         {std::tuple(1.0, 0.881374, 0.414214), std::tuple(2.0, 1.443635, 1.236068)}) {
      const State end = PodeLine(length, 0.0, 0.0).end();
      CHECK(end.z_m + 200.0 == Approx(depth).margin(kPodePrinted));
      CHECK(-end.x_m == Approx(trail).margin(kPodePrinted));
    }
  }
  SECTION("f = 0.02, w = 0.1, from 90 to 45 degrees") {
    const State end = PodeLine(1.13386, 0.1, 0.02).end();
    CHECK(std::atan2(end.tz_n, -end.tx_n) * 180 / M_PI == Approx(45.0).margin(kDegreesPrinted));
    CHECK(std::hypot(end.tx_n, end.tz_n) == Approx(1.12181).margin(kPodePrinted));
    CHECK(-end.x_m == Approx(0.48720).margin(kPodePrinted));
    CHECK(end.z_m + 200.0 == Approx(0.99131).margin(kPodePrinted));
  }
  SECTION("critical angle") {
    for (const auto& [w, degrees] : {std::pair(0.1, 17.964), std::pair(1.0, 51.827)}) {
      const State end = PodeLine(500.0, w, 0.0, 2000).end();  // the angle comes in slowly
      CHECK(std::atan2(end.tz_n, -end.tx_n) * 180 / M_PI ==
            Approx(degrees).margin(kDegreesPrinted));
    }
  }
}

TEST_CASE("the wet line of stream gaging loses what the hydrographers' table says") {
  // K = 1 - asinh(tan P)/tan P for a weightless line, P the angle at the water; the table of Rantz
  // and others (1982), USGS WSP 2175, from memory: 20 deg 0.0204, 30 deg 0.0472. Within 4 %: the
  // table takes another spread of the drag over the depth.
  for (const auto& [degrees, closed, table] :
       {std::tuple(20.0, 0.0209, 0.0204), std::tuple(30.0, 0.0486, 0.0472)}) {
    const double length_m = std::tan(degrees * M_PI / 180);
    const State end = PodeLine(length_m, 0.0, 0.0).end();
    const double loss = 1.0 - (end.z_m + 200.0) / length_m;
    CHECK(loss == Approx(closed).margin(6e-5));
    CHECK(loss == Approx(table).epsilon(0.04));
  }
}

TEST_CASE("a wire in the air hangs as the textbook's catenary") {
  // Vector mechanics textbook problem: 625 ft of wire, 2 lb/ft, sag 25 ft; c 1940.625 ft,
  // span 622.330 ft, greatest pull 3931.25 lb.
  River calm;
  calm.depth_m = 1.0;
  calm.fluid = waterAt({});
  std::vector<Element> wire(50);
  for (Element& e : wire) {
    e.length_m = 312.5 / 50;
    e.dry_n_per_m = 2.0;
    for (double& d : e.diameter_m) d = 0.01;
  }
  const State low{-2.0 * 1940.625, 1e-9, 1e-9, 0.0};
  const State end = Marcher(wire, calm, {}, true).march(low).last;
  CHECK(end.z_m == Approx(25.0).epsilon(1e-6));
  CHECK(-2.0 * end.x_m == Approx(622.330).epsilon(2e-6));
  CHECK(std::hypot(end.tx_n, end.tz_n) == Approx(3931.25).epsilon(1e-8));
}

TEST_CASE("the current profile has the mean that hydrographers measure") {
  // 1/6 power law: mean/surface 6/7 (0.86 in natural channels: Rantz and others 1982, WSP 2175,
  // p. 170; range 0.84-0.90: Turnipseed and Sauer 2010, TM 3-A8), the mean at 0.60343 of the depth
  // (their 0.6-depth rule), the mean of 0.2 and 0.8 depth 1.00813 of it (their two-point rule).
  River river = riverOf(FeetPerSecond(4), Feet(5), {});
  const auto meanOf = [&river] {
    const int n = 200000;
    double sum = 0;
    for (int i = 0; i < n; ++i) sum += river.current_m_per_s(-river.depth_m * (i + 0.5) / n);
    return sum / n;
  };
  const double mean = meanOf();
  CHECK(mean / river.surface_m_per_s == Approx(0.85714).margin(1e-5));
  CHECK(river.current_m_per_s(-0.60343 * river.depth_m) == Approx(mean).epsilon(1e-5));
  const double two = 0.5 * (river.current_m_per_s(-0.2 * river.depth_m) +
                            river.current_m_per_s(-0.8 * river.depth_m));
  CHECK(two / mean == Approx(1.00813).margin(1e-5));
  for (double exponent : {1.0 / 5, 1.0 / 8}) {
    river.profile.exponent = exponent;
    CHECK(meanOf() / river.surface_m_per_s == Approx(0.86).margin(0.03));
  }
  river.profile.law = CurrentProfile::Law::logarithmic;
  CHECK(meanOf() / river.surface_m_per_s == Approx(6.0 / 7.0).margin(0.001));
}
