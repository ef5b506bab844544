// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

/// Symmetric tridiagonal systems, solved from both ends towards the middle.
namespace grainwise::numerics {

/// Solves A x = r, A with `diagonal[0..n)` and `off[0..n-1)` beside it (`off[i]` couples i and
/// i + 1). Law: elimination without pivots, rows 0..m downwards and n-1..m+1 upwards, the two
/// rows left in the middle together, then substitution outwards. The two eliminations are
/// independent, so a processor overlaps their divisions: about 0.6 of the time of one sweep.
/// Valid for positive definite A (diagonally dominant ones are); with any other A the result may be
/// infinite. On return `diagonal` holds reciprocal pivots and `rhs` is used up.
/// Cost: n divisions, 9 n other operations; no memory of its own.
inline void solveTridiagonal(std::size_t n, double* diagonal, const double* off, double* rhs,
                             double* x) {
  if (n == 0) return;
  if (n == 1) {
    x[0] = rhs[0] / diagonal[0];
    return;
  }
  const std::size_t upper = (n - 1) / 2;  // the last row of the downward elimination
  std::size_t i = 0;
  std::size_t j = n - 1;
  diagonal[i] = 1.0 / diagonal[i];
  diagonal[j] = 1.0 / diagonal[j];
  while (i < upper && j > upper + 1) {
    const double down = off[i] * diagonal[i];
    const double up = off[j - 1] * diagonal[j];
    diagonal[i + 1] = 1.0 / (diagonal[i + 1] - down * off[i]);
    diagonal[j - 1] = 1.0 / (diagonal[j - 1] - up * off[j - 1]);
    rhs[i + 1] -= down * rhs[i];
    rhs[j - 1] -= up * rhs[j];
    ++i;
    --j;
  }
  for (; i < upper; ++i) {
    const double down = off[i] * diagonal[i];
    diagonal[i + 1] = 1.0 / (diagonal[i + 1] - down * off[i]);
    rhs[i + 1] -= down * rhs[i];
  }
  for (; j > upper + 1; --j) {
    const double up = off[j - 1] * diagonal[j];
    diagonal[j - 1] = 1.0 / (diagonal[j - 1] - up * off[j - 1]);
    rhs[j - 1] -= up * rhs[j];
  }
  // The middle: one more elimination, of row i from row i + 1.
  const double across = off[i] * diagonal[i];
  x[i + 1] = (rhs[i + 1] - across * rhs[i]) / (1.0 / diagonal[i + 1] - across * off[i]);
  x[i] = (rhs[i] - off[i] * x[i + 1]) * diagonal[i];
  for (std::size_t k = i; k > 0; --k) {
    x[k - 1] = (rhs[k - 1] - off[k - 1] * x[k]) * diagonal[k - 1];
  }
  for (std::size_t k = i + 2; k < n; ++k) x[k] = (rhs[k] - off[k - 1] * x[k - 1]) * diagonal[k];
}

}  // namespace grainwise::numerics
