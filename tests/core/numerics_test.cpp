// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <cmath>
#include <limits>

#include "core/numerics/block_tridiagonal.h"
#include "core/numerics/root.h"
#include "tests/support/random_rig.h"

using namespace grainwise;
using namespace grainwise::numerics;

TEST_CASE("a bracketed root is found to its tolerance in few evaluations") {
  const auto cubic = [](double x) { return (x - 1.25) * (x * x + 1.0); };
  const Root root = findRoot(cubic, -3.0, 7.0, {1e-12, 0.0, 100});
  CHECK(root.ok());
  CHECK(std::abs(root.x - 1.25) < 1e-11);
  CHECK(root.evaluations < 20);

  const auto steep = [](double x) { return std::expm1(20.0 * (x - 0.9)); };
  CHECK(std::abs(findRoot(steep, -1.0, 2.0).x - 0.9) < 1e-11);
  const auto step = [](double x) { return x < 0.3 ? -1.0 : 1.0; };
  CHECK(std::abs(findRoot(step, 0.0, 1.0).x - 0.3) < 1e-11);
}

TEST_CASE("where there is no root the status says why") {
  const auto above = [](double x) { return 1.0 + x * x; };
  CHECK(findRoot(above, -1.0, 2.0).status == RootStatus::noBracket);
  const auto broken = [](double x) { return x > 0.4 && x < 0.6 ? std::nan("") : x - 0.5; };
  CHECK(findRoot(broken, 0.0, 1.0).status == RootStatus::notFinite);
  const auto hard = [](double x) { return x < 0.3123 ? -1.0 : 1.0; };
  const Root stalled = findRoot(hard, 0.0, 1.0, {1e-15, 0.0, 5});
  CHECK(stalled.status == RootStatus::stalled);
  CHECK(std::isfinite(stalled.x));
}

TEST_CASE("Newton inside a bracket finds the root from a bad guess") {
  const auto f = [](double x) { return std::pair(std::tanh(5.0 * x) - 0.5, 5.0 / std::pow(std::cosh(5.0 * x), 2)); };
  const Root root = findRootNewton(f, -10.0, 10.0, 9.0, {1e-12, 0.0, 200});
  CHECK(root.ok());
  CHECK(root.x == Approx(std::atanh(0.5) / 5.0).epsilon(1e-12));
}

TEST_CASE("a chain of blocks is solved to rounding") {
  test::Random random(7);
  const auto vector = [&random] {
    return Vec3{random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)};
  };
  const std::size_t n = 40;
  std::vector<Sym3> diagonal(n), beside(n);
  std::vector<Vec3> expected(n), r(n);
  for (std::size_t i = 0; i < n; ++i) {
    expected[i] = vector();
    diagonal[i] = Sym3::diagonal(4.0) + Sym3::outer(1.0, vector());
    if (i > 0) beside[i] = Sym3::outer(-1.0, vector()) + Sym3::diagonal(-0.5);
  }
  for (std::size_t i = 0; i < n; ++i) {
    r[i] = diagonal[i] * expected[i];
    if (i > 0) r[i] += beside[i] * expected[i - 1];
    if (i + 1 < n) r[i] += beside[i + 1] * expected[i + 1];
  }
  solveBlockTridiagonal(diagonal, beside, r);
  for (std::size_t i = 0; i < n; ++i) CHECK((r[i] - expected[i]).norm() < 1e-12);
}
