// SPDX-License-Identifier: GPL-3.0-or-later
#include <array>
#include <catch2/catch.hpp>
#include <cmath>
#include <vector>

#include "core/numerics/chain.h"
#include "core/numerics/ode.h"
#include "core/numerics/sincos.h"
#include "core/numerics/tridiagonal.h"
#include "tests/support/random_rig.h"

using namespace grainwise::numerics;
using grainwise::test::Random;

TEST_CASE("RK4 is of order four, in both its forms") {
  // y' = (-y1, y0): a circle; error after 1 rad.
  const auto error = [](int steps) {
    std::array<double, 2> y{1.0, 0.0};
    for (int i = 0; i < steps; ++i) {
      y = rk4(y, 1.0 / steps, [](double, const auto& s) { return std::array{-s[1], s[0]}; });
    }
    return std::hypot(y[0] - std::cos(1.0), y[1] - std::sin(1.0));
  };
  CHECK(error(10) / error(20) == Approx(16).epsilon(0.1));
  CHECK(error(20) / error(40) == Approx(16).epsilon(0.05));

  const auto circle = [](const double* s, double* d) {
    d[0] = -s[1];
    d[1] = s[0];
  };
  std::vector<double> y{1.0, 0.0};
  std::vector<double> slope(2);
  Rk4 steps(2);
  for (int i = 0; i < 20; ++i) {
    circle(y.data(), slope.data());
    steps.step(y, slope, 1.0 / 20, circle, y);
  }
  CHECK(std::hypot(y[0] - std::cos(1.0), y[1] - std::sin(1.0)) == Approx(error(20)).epsilon(1e-6));
}

TEST_CASE("A tridiagonal system solved from both ends satisfies its equations") {
  Random random(4);
  for (std::size_t n = 1; n <= 40; ++n) {
    std::vector<double> diagonal(n), off(n), rhs(n), x(n);
    for (std::size_t i = 0; i < n; ++i) {
      diagonal[i] = random.between(2.0, 4.0);
      off[i] = random.between(-1.0, 1.0);
      rhs[i] = random.between(-1.0, 1.0);
    }
    auto pivots = diagonal;
    auto used = rhs;
    solveTridiagonal(n, pivots.data(), off.data(), used.data(), x.data());
    for (std::size_t i = 0; i < n; ++i) {
      const double before = i > 0 ? off[i - 1] * x[i - 1] : 0.0;
      const double after = i + 1 < n ? off[i] * x[i + 1] : 0.0;
      CHECK(before + diagonal[i] * x[i] + after == Approx(rhs[i]).margin(1e-14));
    }
  }
}

TEST_CASE("Sine and cosine agree with the library to the last bits over many turns") {
  constexpr double kError = 4e-16;  // promised in sincos.h
  Random random(7);
  std::vector<double> angle{0.0, 1e-300, 1.5707963267948966, -1.5707963267948966, 3.141592653589793,
                            1e5, -1e5};
  for (int i = 0; i < 20000; ++i) angle.push_back(random.between(-50.0, 50.0));
  for (int i = 0; i < 20000; ++i) angle.push_back(random.between(-1e5, 1e5));
  std::vector<double> c(angle.size()), s(angle.size());
  sineCosine(angle.size(), angle.data(), c.data(), s.data());
  double worst = 0.0;
  for (std::size_t i = 0; i < angle.size(); ++i) {
    worst =
        std::max({worst, std::abs(c[i] - std::cos(angle[i])), std::abs(s[i] - std::sin(angle[i]))});
  }
  CHECK(worst < kError);
}

TEST_CASE("The chain's accelerations keep every link's length and obey Newton at every node") {
  Random random(11);
  for (std::size_t n : {1U, 2U, 3U, 17U}) {
    const double h = 0.1;
    std::vector<double> mass(n + 1), angle(n), rate(n), acceleration(n);
    for (double& m : mass) m = random.between(1e-4, 1e-2);
    for (double& a : angle) a = random.between(-4.0, 4.0);
    for (double& w : rate) w = random.between(-9.0, 9.0);
    Chain chain(h, mass);
    chain.setHeldMotion(0.3, -0.2, 1.5, 2.5);
    chain.move(angle.data(), rate.data());
    std::vector<double> fx(n + 1), fy(n + 1);
    for (std::size_t i = 1; i <= n; ++i) {
      chain.forceX_N()[i] = fx[i] = random.between(-1.0, 1.0);
      chain.forceY_N()[i] = fy[i] = random.between(-1.0, 1.0);
    }
    chain.solve(rate.data(), acceleration.data());
    const auto& tension = chain.tension_N();
    double ax = 1.5, ay = 2.5, vx = 0.3, vy = -0.2;
    for (std::size_t k = 0; k < n; ++k) {  // kinematics from the held end out
      const double c = std::cos(angle[k]), s = std::sin(angle[k]);
      ax += h * (-acceleration[k] * s - rate[k] * rate[k] * c);
      ay += h * (acceleration[k] * c - rate[k] * rate[k] * s);
      vx -= h * rate[k] * s;
      vy += h * rate[k] * c;
      const double next = k + 1 < n ? tension[k + 1] : 0.0;
      const double c2 = k + 1 < n ? std::cos(angle[k + 1]) : 0.0;
      const double s2 = k + 1 < n ? std::sin(angle[k + 1]) : 0.0;
      const double scale = std::abs(tension[k]) + std::abs(next) + 1.0;
      CHECK(std::abs(fx[k + 1] - tension[k] * c + next * c2 - mass[k + 1] * ax) < 1e-11 * scale);
      CHECK(std::abs(fy[k + 1] - tension[k] * s + next * s2 - mass[k + 1] * ay) < 1e-11 * scale);
      CHECK(chain.velocityX_m_per_s()[k + 1] == Approx(vx).margin(1e-13));
      CHECK(chain.velocityY_m_per_s()[k + 1] == Approx(vy).margin(1e-13));
    }
  }
}
