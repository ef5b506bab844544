// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <cmath>
#include <utility>

/// One root of one function in a bracket. A status instead of an exception: the caller sees what was
/// reached and decides.
namespace grainwise::numerics {

enum class RootStatus {
  converged,
  noBracket,  ///< the function has the same sign at both ends; x is the end with the smaller |f|
  stalled,    ///< the most evaluations were spent; x is the best point met
  notFinite,  ///< the function gave NaN; x is the best point before
};

struct Root {
  double x = 0.0;
  double f = 0.0;
  int evaluations = 0;
  RootStatus status = RootStatus::stalled;
  [[nodiscard]] bool ok() const { return status == RootStatus::converged; }
};

struct RootOptions {
  double xTolerance = 1e-12;  ///< half-width of the last bracket, plus rounding
  double fTolerance = 0.0;    ///< |f| at or under this is a root too
  int mostEvaluations = 100;
};

/// Brent's method: inverse quadratic or secant steps kept inside a bracket that always shrinks.
/// Source: R. P. Brent (1973), Algorithms for Minimization without Derivatives, ch. 4.
/// `f(a)` and `f(b)` are given, since callers know them. Cost: about 6-10 evaluations on smooth f.
template <class F>
Root findRoot(F&& f, double a, double fa, double b, double fb, const RootOptions& options = {}) {
  Root best{std::abs(fa) < std::abs(fb) ? a : b, std::abs(fa) < std::abs(fb) ? fa : fb, 0,
            RootStatus::stalled};
  const auto ended = [&](RootStatus status) {
    best.status = status;
    return best;
  };
  if (!std::isfinite(fa) || !std::isfinite(fb)) return ended(RootStatus::notFinite);
  if (std::abs(best.f) <= options.fTolerance) return ended(RootStatus::converged);
  if ((fa > 0.0) == (fb > 0.0)) return ended(RootStatus::noBracket);
  double c = a, fc = fa, step = b - a, before = step;
  while (true) {
    if ((fb > 0.0) == (fc > 0.0)) {
      c = a;
      fc = fa;
      step = before = b - a;
    }
    if (std::abs(fc) < std::abs(fb)) {  // b holds the best point, c the other end
      a = std::exchange(b, c);
      c = a;
      fa = std::exchange(fb, fc);
      fc = fa;
    }
    best.x = b;
    best.f = fb;
    const double least = 2.0 * 2.3e-16 * std::abs(b) + 0.5 * options.xTolerance;
    const double middle = 0.5 * (c - b);
    if (std::abs(middle) <= least || fb == 0.0 || std::abs(fb) <= options.fTolerance) {
      return ended(RootStatus::converged);
    }
    if (best.evaluations >= options.mostEvaluations) return ended(RootStatus::stalled);
    bool interpolated = false;
    if (std::abs(before) >= least && std::abs(fa) > std::abs(fb)) {
      const double s = fb / fa;
      double p, q;
      if (a == c) {
        p = 2.0 * middle * s;
        q = 1.0 - s;
      } else {
        const double r = fb / fc, t = fa / fc;
        p = s * (2.0 * middle * t * (t - r) - (b - a) * (r - 1.0));
        q = (t - 1.0) * (r - 1.0) * (s - 1.0);
      }
      if (p > 0.0) {
        q = -q;
      } else {
        p = -p;
      }
      if (2.0 * p < std::min(3.0 * middle * q - std::abs(least * q), std::abs(before * q))) {
        before = std::exchange(step, p / q);
        interpolated = true;
      }
    }
    if (!interpolated) step = before = middle;
    a = b;
    fa = fb;
    b += std::abs(step) > least ? step : std::copysign(least, middle);
    fb = f(b);
    ++best.evaluations;
    if (!std::isfinite(fb)) return ended(RootStatus::notFinite);
  }
}

template <class F>
Root findRoot(F&& f, double a, double b, const RootOptions& options = {}) {
  const double fa = f(a), fb = f(b);
  Root root = findRoot(f, a, fa, b, fb, options);
  root.evaluations += 2;
  return root;
}

/// Newton's method kept inside [a, b] of an increasing function: a step that leaves the bracket, which
/// every evaluation tightens, is replaced by its middle. `f` returns {value, slope}. Ends when a
/// step is within `xTolerance`.
template <class F>
Root findRootNewton(F&& f, double a, double b, double guess, const RootOptions& options = {}) {
  Root root{std::clamp(guess, a, b), 0.0, 0, RootStatus::stalled};
  while (root.evaluations < options.mostEvaluations) {
    const auto [value, slope] = f(root.x);
    ++root.evaluations;
    root.f = value;
    if (!std::isfinite(value)) {
      root.status = RootStatus::notFinite;
      return root;
    }
    (value > 0.0 ? b : a) = root.x;
    double next = root.x - value / slope;
    if (!(next >= a && next <= b)) next = 0.5 * (a + b);
    const double step = std::abs(next - root.x);
    root.x = next;
    if (step <= options.xTolerance || std::abs(value) <= options.fTolerance) {
      root.status = RootStatus::converged;
      return root;
    }
  }
  return root;
}

}  // namespace grainwise::numerics
