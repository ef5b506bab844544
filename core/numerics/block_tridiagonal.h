// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstddef>
#include <vector>

/// Vectors and symmetric matrices of three dimensions, and chains of them.
namespace grainwise::numerics {

struct Vec3 {
  double x = 0.0, y = 0.0, z = 0.0;
  Vec3& operator+=(const Vec3& o) {
    x += o.x;
    y += o.y;
    z += o.z;
    return *this;
  }
  Vec3& operator-=(const Vec3& o) {
    x -= o.x;
    y -= o.y;
    z -= o.z;
    return *this;
  }
  friend Vec3 operator+(Vec3 a, const Vec3& b) { return a += b; }
  friend Vec3 operator-(Vec3 a, const Vec3& b) { return a -= b; }
  friend Vec3 operator*(double k, const Vec3& a) { return {k * a.x, k * a.y, k * a.z}; }
  [[nodiscard]] double dot(const Vec3& o) const { return x * o.x + y * o.y + z * o.z; }
  [[nodiscard]] double norm2() const { return dot(*this); }
  [[nodiscard]] double norm() const { return std::sqrt(norm2()); }
};

/// A symmetric 3 x 3 matrix.
struct Sym3 {
  double xx = 0.0, yy = 0.0, zz = 0.0, xy = 0.0, xz = 0.0, yz = 0.0;

  static Sym3 diagonal(double k) { return {k, k, k, 0.0, 0.0, 0.0}; }
  /// k v v'
  static Sym3 outer(double k, const Vec3& v) {
    const Vec3 s = k * v;
    return {s.x * v.x, s.y * v.y, s.z * v.z, s.x * v.y, s.x * v.z, s.y * v.z};
  }
  Sym3& operator+=(const Sym3& o) {
    xx += o.xx;
    yy += o.yy;
    zz += o.zz;
    xy += o.xy;
    xz += o.xz;
    yz += o.yz;
    return *this;
  }
  Sym3& operator-=(const Sym3& o) { return *this += -1.0 * o; }
  friend Sym3 operator+(Sym3 a, const Sym3& b) { return a += b; }
  friend Sym3 operator*(double k, const Sym3& a) {
    return {k * a.xx, k * a.yy, k * a.zz, k * a.xy, k * a.xz, k * a.yz};
  }
  friend Vec3 operator*(const Sym3& a, const Vec3& v) {
    return {a.xx * v.x + a.xy * v.y + a.xz * v.z, a.xy * v.x + a.yy * v.y + a.yz * v.z,
            a.xz * v.x + a.yz * v.y + a.zz * v.z};
  }
};

/// Inverse of a positive definite matrix, by cofactors.
inline Sym3 inverse(const Sym3& a) {
  const double cxx = a.yy * a.zz - a.yz * a.yz;
  const double cxy = a.xz * a.yz - a.xy * a.zz;
  const double cxz = a.xy * a.yz - a.xz * a.yy;
  const double k = 1.0 / (a.xx * cxx + a.xy * cxy + a.xz * cxz);
  return {k * cxx,
          k * (a.xx * a.zz - a.xz * a.xz),
          k * (a.xx * a.yy - a.xy * a.xy),
          k * cxy,
          k * cxz,
          k * (a.xy * a.xz - a.xx * a.yz)};
}

/// B S B of two symmetric matrices: symmetric again.
inline Sym3 sandwich(const Sym3& b, const Sym3& s) {
  const Vec3 c1 = s * Vec3{b.xx, b.xy, b.xz};  // columns of S B
  const Vec3 c2 = s * Vec3{b.xy, b.yy, b.yz};
  const Vec3 c3 = s * Vec3{b.xz, b.yz, b.zz};
  return {b.xx * c1.x + b.xy * c1.y + b.xz * c1.z, b.xy * c2.x + b.yy * c2.y + b.yz * c2.z,
          b.xz * c3.x + b.yz * c3.y + b.zz * c3.z, b.xx * c2.x + b.xy * c2.y + b.xz * c2.z,
          b.xx * c3.x + b.xy * c3.y + b.xz * c3.z, b.xy * c3.x + b.yy * c3.y + b.yz * c3.z};
}

/// Solves A x = r for a symmetric positive definite block tridiagonal A: `diagonal[i]` on the diagonal,
/// `beside[i]` (symmetric too) between i - 1 and i; `beside[0]` is not read. `diagonal` and `r` are
/// overwritten, r by the solution. Method: block LDL' without pivoting, stable for such matrices;
/// about 50 ns a block.
inline void solveBlockTridiagonal(std::vector<Sym3>& diagonal, const std::vector<Sym3>& beside,
                                  std::vector<Vec3>& r) {
  const std::size_t n = diagonal.size();
  if (n == 0) return;
  diagonal[0] = inverse(diagonal[0]);
  for (std::size_t i = 1; i < n; ++i) {
    r[i] -= beside[i] * (diagonal[i - 1] * r[i - 1]);
    diagonal[i] -= sandwich(beside[i], diagonal[i - 1]);
    diagonal[i] = inverse(diagonal[i]);
  }
  r[n - 1] = diagonal[n - 1] * r[n - 1];
  for (std::size_t i = n - 1; i-- > 0;) r[i] = diagonal[i] * (r[i] - beside[i + 1] * r[i + 1]);
}

}  // namespace grainwise::numerics
