// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <functional>
#include <numbers>
#include <vector>

#include "core/numerics/chain.h"
#include "core/numerics/ode.h"

/// Chains whose motion is known, on the solver that the unrolling loop uses.
using namespace grainwise::numerics;

namespace {

constexpr double kPi = std::numbers::pi;

/// A chain under constant forces, stepped by RK4.
struct Swinging {
  Chain chain;
  std::size_t n;
  std::vector<double> y, slope, x, height;
  Rk4 rk4;
  double time = 0.0;

  Swinging(double link, const std::vector<double>& mass)
      : chain(link, mass),
        n(mass.size() - 1),
        y(2 * n),
        slope(2 * n),
        x(n + 1),
        height(n + 1),
        rk4(2 * n) {}

  void hang(double gravity) {
    for (std::size_t i = 1; i <= n; ++i) chain.forceY_N()[i] = -gravity * chain.nodeMass_kg()[i];
  }
  void step(double h) {
    const auto f = [this](const double* s, double* d) {
      chain.move(s, s + n);
      chain.solve(s + n, d + n);
      std::copy(s + n, s + 2 * n, d);
    };
    f(y.data(), slope.data());
    double turning = 1e-9;
    for (std::size_t k = 0; k < n; ++k) turning = std::max(turning, std::abs(y[n + k]));
    h = std::min(h, 0.02 / turning);
    rk4.step(y, slope, h, f, y);
    time += h;
    chain.move(y.data(), y.data() + n);
    chain.place(x.data(), height.data());
  }
};

std::vector<double> level(std::size_t links, double total) {
  std::vector<double> mass(links + 1, total / static_cast<double>(links));
  mass.back() *= 0.5;
  return mass;
}

/// A chain of length and weight 1 folded in the middle over four links, its end let go.
Swinging folded(std::size_t links) {
  Swinging s(1.0 / static_cast<double>(links), level(links, 1.0));
  s.hang(1.0);
  const std::size_t arm = (links - 4) / 2 + links % 2;
  for (std::size_t k = 0; k < links; ++k) {
    s.y[k] = k < arm ? -kPi / 2 : k < links - arm ? 0.0 : kPi / 2;
  }
  return s;
}

/// Time to the free end's deepest point, over a free fall's through the same height.
double fallRatio(std::size_t links) {
  Swinging s = folded(links);
  s.step(1e-9);
  const double top = s.height.back();
  while (s.time < 0.3 || s.chain.velocityY_m_per_s()[links] < 0.0) s.step(1e-3);
  return s.time / std::sqrt(2.0 * (top - s.height.back()));
}

/// omega sqrt(L/g) of a chain let go in the shape of the mode at `zero`, from a quarter of a swing.
double swingRate(std::size_t links, double zero) {
  constexpr double kAmplitude = 1e-4;
  const double count = static_cast<double>(links);
  Swinging s(1.0 / count, level(links, 1.0));
  s.hang(1.0);
  const auto shape = [&](std::size_t node) {
    const double x = 1.0 - static_cast<double>(node) / count;
    return kAmplitude * std::cyl_bessel_j(0.0, 2.0 * zero * std::sqrt(std::max(0.0, x)));
  };
  for (std::size_t k = 0; k < links; ++k) {
    s.y[k] = -kPi / 2 + (shape(k + 1) - shape(k)) * count;
  }
  s.step(1e-9);
  double before = s.x.back(), timeBefore = s.time;
  while (s.x.back() > 0.0 && s.time < 9.0) {
    before = s.x.back();
    timeBefore = s.time;
    s.step(1e-3);
  }
  return kPi / 2 / (timeBefore + (s.time - timeBefore) * before / (before - s.x.back()));
}

}  // namespace

// Calkin & March (1989), Am. J. Phys. 57:154; Tomaszewski, Pieranski & Geminard (2006), Am. J.
// Phys. 74:776: a chain folded in the middle and let go at one end falls in 0.847213 of the time of
// free fall, as long as it keeps its energy. Finite links approach it from above.
TEST_CASE("A folded chain falls in 0.847213 of the time of free fall") {
  constexpr double kLimit = 0.847213;
  // Found before by another code at 58, 114 and 228 links; how wide the fold is and what counts as
  // the end of the fall differ between the two and leave this much.
  constexpr double kOtherCode = 5e-4;
  const double a = fallRatio(58), b = fallRatio(114), c = fallRatio(228);
  INFO(a << " " << b << " " << c);
  CHECK(a == Approx(0.852).margin(kOtherCode));
  CHECK(b == Approx(0.8502).margin(kOtherCode));
  CHECK(c == Approx(0.8492).margin(kOtherCode));
  CHECK(a > b);
  CHECK(b > c);
  CHECK(c > kLimit);
  CHECK(c - kLimit < 0.45 * (a - kLimit));
}

// The same: v/sqrt(gL) = sqrt(y (2 - y)/(1 - y)) with y = fall/L, 1.224745 at y = 0.5.
TEST_CASE("Half way down a folded chain's end moves at 1.224745 sqrt(gL)") {
  Swinging s = folded(228);
  s.step(1e-9);
  const double top = s.height.back();
  while (top - s.height.back() < 0.5) s.step(2e-4);
  CHECK(-s.chain.velocityY_m_per_s()[s.n] == Approx(1.224745).epsilon(0.01));
}

// Hanging chain: modes J0(2 omega sqrt(x/g)), x from the free end; omega sqrt(L/g) = half the zeros
// of J0, 1.20241, 2.76004, 4.32686 (Abramowitz & Stegun, table 9.5).
TEST_CASE("A hanging chain swings at half the zeros of J0") {
  constexpr double kFiniteLinks = 2.5e-3;  // at 200 links, for the third mode; less at 400
  for (const double zero : {1.20241, 2.76004, 4.32686}) {
    const double coarse = std::abs(swingRate(200, zero) / zero - 1.0);
    const double fine = std::abs(swingRate(400, zero) / zero - 1.0);
    INFO("off by " << coarse << " and " << fine);
    CHECK(coarse < kFiniteLinks);
    CHECK(fine < 0.8 * coarse);
  }
}

// A small pulse on a string under one tension, mass per length mu2 = 4 mu1 ahead: reflected
// (1 - 2)/(1 + 2) = -1/3, transmitted 2/(1 + 2) = 2/3 (any text on waves).
TEST_CASE("A pulse at a step to four times the mass returns -1/3 and sends on 2/3") {
  constexpr std::size_t kLinks = 800;
  constexpr double kLink = 1.0 / kLinks;
  std::vector<double> mass(kLinks + 1);
  for (std::size_t i = 0; i <= kLinks; ++i) {
    mass[i] = kLink * (i < kLinks / 2 ? 1.0 : i == kLinks / 2 ? 2.5 : 4.0);
  }
  mass.back() *= 0.5;
  Swinging s(kLink, mass);
  s.chain.forceX_N()[kLinks] = 1.0;  // tension 1: speed 1 in the light half, 1/2 in the heavy one
  constexpr double kHeight = 1e-5, kAt = 0.25, kWidth = 0.03;
  const auto pulse = [&](double x) {
    return kHeight * std::exp(-(x - kAt) * (x - kAt) / (2.0 * kWidth * kWidth));
  };
  for (std::size_t k = 0; k < kLinks; ++k) {
    const double a = static_cast<double>(k) * kLink, b = a + kLink;
    s.y[k] = (pulse(b) - pulse(a)) / kLink;
    const auto slope = [&](double x) { return -(x - kAt) / (kWidth * kWidth) * pulse(x); };
    s.y[kLinks + k] = -(slope(b) - slope(a)) / kLink;  // travels towards the step at speed 1
  }
  while (s.time < 0.4) s.step(5e-4);  // the echo is at 0.35, the rest at 0.575
  const auto middle = s.height.begin() + kLinks / 2;
  const auto echo = std::min_element(s.height.begin(), middle);
  const auto sent = std::max_element(middle, s.height.end());
  CHECK(*echo / kHeight == Approx(-1.0 / 3.0).epsilon(0.01));
  CHECK(*sent / kHeight == Approx(2.0 / 3.0).epsilon(0.01));
  CHECK(static_cast<double>(echo - s.height.begin()) * kLink == Approx(0.35).margin(0.01));
  CHECK(static_cast<double>(sent - s.height.begin()) * kLink == Approx(0.575).margin(0.01));
}
