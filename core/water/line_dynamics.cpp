// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/line_dynamics.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/material/drag.h"
#include "core/units/si.h"

namespace grainwise::swinging {
namespace {

constexpr double kSkinFriction = 0.010;  // G. I. Taylor (1952); coefficient from memory
constexpr double kLeastEa_n = 300.0;
constexpr double kEaPerDrag = 20.0;      // a swinging line pulls with a twentieth of its full drag
constexpr double kSoftStrain = 1e-5;     // a plain max(0, strain) makes Newton flip
constexpr double kSkinOfWater_m = 0.003;
constexpr double kClearance_m = 0.03;
constexpr double kBed_n_per_m = 40.0;
constexpr double kBedGives_m = 0.005;    // under a node's whole weight
constexpr double kBedFriction = 0.4;
constexpr double kSlow_m_per_s = 0.02;   // friction grows up to this speed
constexpr double kG = si::kGravity_m_per_s2;
constexpr double kQuarterPi = std::numbers::pi / 4.0;

double longest_m(WaterPiece::Fineness fineness, const Mesh& mesh) {
  if (fineness == WaterPiece::Fineness::head) return mesh.head_m;
  return fineness == WaterPiece::Fineness::running ? mesh.running_m : mesh.tip_m;
}

int piecesOf(double length_m, double longest_m) {
  return std::max(1, static_cast<int>(std::ceil(length_m / longest_m - 0.2)));
}

double wetShare(double z_m, double size_m) { return std::clamp(0.5 - z_m / size_m, 0.0, 1.0); }

double softTension(double stiffness_n, double strain) {
  return 0.5 * stiffness_n * (strain + std::sqrt(strain * strain + kSoftStrain * kSoftStrain));
}

}  // namespace

LineDynamics::LineDynamics(const WaterLine& line, const River& river, const Mesh& mesh,
                           const StepLimits& limits)
    : m_river(river), m_fly(line.fly), m_limits(limits) {
  m_flySize_m =
      std::max(kSkinOfWater_m, std::cbrt(6.0 / std::numbers::pi * line.fly.volume_m3));
  m_bed_m = -std::max(0.0, river.depth_m - kClearance_m);
  m_elements.resize(2);  // no element before the rod tip, none yet to the loose end
  m_mass_kg.assign(2, 0.0);
  for (auto piece = line.pieces.rbegin(); piece != line.pieces.rend(); ++piece) {
    append(*piece, mesh);
  }
  m_mass_kg.back() += m_fly.mass_kg;
  if (!line.pieces.empty()) {
    const WaterPiece& last = line.pieces.back();
    m_running = elementOf(mesh.running_m, last.diameter_m(1.0), last.mass_kg_per_m(1.0));
  }
  m_x.resize(m_mass_kg.size());
  m_v.resize(m_mass_kg.size());
  stiffen();
  resize();
}

LineDynamics::Element LineDynamics::elementOf(double length_m, double diameter_m,
                                              double mass_kg_per_m) {
  return {length_m, diameter_m, 0.5 * mass_kg_per_m * length_m,
          0.5 * kQuarterPi * diameter_m * diameter_m * length_m, 0.0};
}

void LineDynamics::append(const WaterPiece& piece, const Mesh& mesh) {
  const int n = piecesOf(piece.length_m, longest_m(piece.fineness, mesh));
  for (int k = 0; k < n; ++k) {
    const double share = 1.0 - (k + 0.5) / n;  // counted from the fly end
    const Element e =
        elementOf(piece.length_m / n, piece.diameter_m(share), piece.mass_kg_per_m(share));
    m_mass_kg.back() += e.half_kg;
    m_elements.push_back(e);
    m_mass_kg.push_back(e.half_kg);
  }
  // loops displace as much for their mass as the line they are made of
  Element& last = m_elements.back();
  m_mass_kg.back() += piece.loopsFlyEnd_kg;
  last.loops_m3 = piece.loopsFlyEnd_kg * last.halfVolume_m3 / last.half_kg;
}

void LineDynamics::stiffen() {
  const double u = m_river.surface_m_per_s;
  double area_m2 = m_fly.dragArea_m2;
  for (const Element& e : m_elements) area_m2 += e.length_m * e.diameter_m;
  const double drag_n = 0.25 * m_river.fluid.rho_kg_per_m3 * 1.2 * area_m2 * u * u;
  m_stiffness_n = std::max(kLeastEa_n, kEaPerDrag * drag_n);
}

void LineDynamics::resize() {
  m_a.resize(m_x.size());
  m_beside.resize(m_x.size());
  m_b.resize(m_x.size());
  m_bedStiffness_n_per_m.resize(m_x.size());
  for (std::size_t i = 0; i < m_x.size(); ++i) {
    m_bedStiffness_n_per_m[i] = std::max(kBed_n_per_m, m_mass_kg[i] * kG / kBedGives_m);
  }
}

void LineDynamics::land(double angle_rad) {
  const Vec3 along{std::sin(angle_rad), std::cos(angle_rad), 0.0};
  double at_m = 0.0;
  m_x[0] = m_v[0] = {};
  for (std::size_t i = 1; i < m_x.size(); ++i) {
    at_m += m_elements[i].length_m;
    m_x[i] = at_m * along;
    m_v[i] = {m_river.surface_m_per_s, 0.0, 0.0};
  }
  m_tied = false;
}

void LineDynamics::tie(const Vec3& rodTip) {
  const Vec3 end = m_x[1], drift = m_v[1];
  const double length_m = (end - rodTip).norm();
  const int n = piecesOf(length_m, m_running.length_m);
  const Element fed =
      elementOf(length_m / n, m_running.diameter_m, 2.0 * m_running.half_kg / m_running.length_m);
  const auto more = static_cast<std::size_t>(n - 1);
  m_elements[1] = fed;
  m_mass_kg[1] += fed.half_kg;
  m_elements.insert(m_elements.begin() + 1, more, fed);
  m_mass_kg.insert(m_mass_kg.begin() + 1, more, 2.0 * fed.half_kg);
  m_x.insert(m_x.begin() + 1, more, {});
  m_v.insert(m_v.begin() + 1, more, {});
  m_x[0] = rodTip;
  m_v[0] = {};
  for (std::size_t i = 1; i <= more; ++i) {
    const double share = static_cast<double>(i) / n;
    m_x[i] = rodTip + share * (end - rodTip);
    m_v[i] = share * drift;
  }
  m_tied = true;
  stiffen();
  resize();
}

double LineDynamics::stretch() const {
  double most = 0.0;
  for (std::size_t i = m_tied ? 1 : 2; i < m_x.size(); ++i) {
    most = std::max(most, (m_x[i] - m_x[i - 1]).norm() / m_elements[i].length_m - 1.0);
  }
  return most;
}

double LineDynamics::tension_n(std::size_t i) const {
  if (i < 1 || (i == 1 && !m_tied)) return 0.0;
  return softTension(m_stiffness_n, (m_x[i] - m_x[i - 1]).norm() / m_elements[i].length_m - 1.0);
}

double LineDynamics::energy_j() const {
  double sum = 0.0;
  for (std::size_t i = 1; i < m_x.size(); ++i) {
    sum += m_mass_kg[i] * (0.5 * m_v[i].norm2() + kG * m_x[i].z);
    const Element& e = m_elements[i];
    sum -= m_river.fluid.rho_kg_per_m3 * kG *
           (e.halfVolume_m3 * (m_x[i].z + m_x[i - 1].z) + e.loops_m3 * m_x[i].z);
  }
  return sum - m_river.fluid.rho_kg_per_m3 * kG * m_fly.volume_m3 * fly().z;
}

bool LineDynamics::step(double dt_s) {
  m_x0 = m_x;
  m_v0 = m_v;
  const std::size_t n = m_x.size();
  const auto follow = [&] {
    for (std::size_t k = 1; k < n; ++k) m_x[k] = m_x0[k] + dt_s * m_v[k];
  };
  for (int i = 0; i < m_limits.mostNewton; ++i) {
    follow();
    assemble(dt_s);
    numerics::solveBlockTridiagonal(m_a, m_beside, m_b);
    ++m_iterations;
    double most2 = 0.0;
    for (std::size_t k = 1; k < n; ++k) {
      most2 = std::max(most2, m_b[k].norm2());
      m_v[k] += m_b[k];
    }
    if (!std::isfinite(most2)) break;
    if (most2 >= m_limits.newton_m_per_s * m_limits.newton_m_per_s) continue;
    follow();
    return true;
  }
  m_x.swap(m_x0);
  m_v.swap(m_v0);
  return false;
}

void LineDynamics::assemble(double dt_s) {
  const std::size_t n = m_x.size();
  for (std::size_t i = 0; i < n; ++i) {
    const double perDt = m_mass_kg[i] / dt_s;
    m_a[i] = Sym3::diagonal(perDt);
    m_b[i] = -perDt * (m_v[i] - m_v0[i]);
    m_b[i].z -= m_mass_kg[i] * kG;
  }
  for (std::size_t i = m_tied ? 1 : 2; i < n; ++i) addElement(i, dt_s);
  for (std::size_t i = 1; i < n; ++i) addBed(i, dt_s);
  addFly(dt_s);
  m_beside[1] = {};  // the rod tip stands still
  m_a[0] = Sym3::diagonal(1.0);
  m_b[0] = {};
}

void LineDynamics::addElement(std::size_t i, double dt_s) {
  const Element& e = m_elements[i];
  const Vec3 r = m_x[i] - m_x[i - 1];
  const double l = r.norm();
  const Vec3 t = (1.0 / l) * r;
  const double strain = l / e.length_m - 1.0;
  const double root = std::sqrt(strain * strain + kSoftStrain * kSoftStrain);
  const double tension_n = 0.5 * m_stiffness_n * (strain + root);
  const double kt = 0.5 * m_stiffness_n / e.length_m * (1.0 + strain / root);
  const double kn = tension_n / l;
  m_b[i - 1] += tension_n * t;
  m_b[i] -= tension_n * t;
  const Sym3 k = Sym3::diagonal(dt_s * kn) + Sym3::outer(dt_s * (kt - kn), t);
  m_a[i - 1] += k;
  m_a[i] += k;
  m_beside[i] = -1.0 * k;
  addDrag(i - 1, e, t, dt_s);
  addDrag(i, e, t, dt_s);
  if (e.loops_m3 > 0.0) {
    const double size_m = std::max(e.diameter_m, kSkinOfWater_m);
    addBuoyancy(i, e.loops_m3, size_m, wetShare(m_x[i].z, size_m), dt_s);
  }
}

void LineDynamics::addBuoyancy(std::size_t node, double volume_m3, double size_m, double wet,
                               double dt_s) {
  const double whole_n = m_river.fluid.rho_kg_per_m3 * volume_m3 * kG;
  m_b[node].z += whole_n * wet;
  if (wet > 0.0 && wet < 1.0) m_a[node].zz += dt_s * whole_n / size_m;
}

void LineDynamics::addDrag(std::size_t node, const Element& e, const Vec3& along, double dt_s) {
  const double size_m = std::max(e.diameter_m, kSkinOfWater_m);
  const double z = m_x[node].z;
  const double wet = wetShare(z, size_m);
  if (wet <= 0.0) return;
  addBuoyancy(node, e.halfVolume_m3, size_m, wet, dt_s);
  const Fluid& fluid = m_river.fluid;
  Vec3 u{m_river.current_m_per_s(z), 0.0, 0.0};
  u -= m_v[node];
  const double ut = u.dot(along);
  const Vec3 un = u - ut * along;
  const double across2 = un.norm2();
  const double re = std::sqrt(across2) * e.diameter_m / fluid.nu_m2_per_s();
  const DragAt drag = dragTable().at(re);
  const double half = 0.5 * e.length_m * wet;
  const double kn = 0.5 * fluid.mu_pa_s * drag.g * m_river.acrossDragFactor * half;
  const double kt =
      half * std::max(2.7 * fluid.mu_pa_s * std::sqrt(re),
                      0.5 * fluid.rho_kg_per_m3 * std::numbers::pi * e.diameter_m *
                          kSkinFriction * std::abs(ut));
  m_b[node] += kn * un + (kt * ut) * along;
  // the water that the line moves along, across itself only
  const double added = fluid.rho_kg_per_m3 * e.halfVolume_m3 * wet / dt_s;
  const Vec3 change = m_v[node] - m_v0[node];
  m_b[node] -= added * (change - change.dot(along) * along);
  m_a[node] += Sym3::diagonal(kn + added) + Sym3::outer(kt - kn - added, along);
  if (across2 > 1e-12) m_a[node] += Sym3::outer(kn * drag.slope / across2, un);
}

void LineDynamics::addBed(std::size_t node, double dt_s) {
  const double deep_m = m_bed_m - m_x[node].z;
  if (deep_m <= 0.0) return;
  // What falls fast meets a bed that hardens, so that nothing comes through the clearance.
  const double over = std::max(0.0, deep_m / kBedGives_m - 1.0);
  const double normal_n = m_bedStiffness_n_per_m[node] * (deep_m + kBedGives_m * over * over);
  const double stiffness = m_bedStiffness_n_per_m[node] * (1.0 + 2.0 * over);
  m_b[node].z += normal_n;
  m_a[node].zz += dt_s * stiffness;
  const Vec3& v = m_v[node];
  const double speed = std::sqrt(v.x * v.x + v.y * v.y + kSlow_m_per_s * kSlow_m_per_s);
  const double drag = kBedFriction * normal_n / speed;
  const double less = drag / (speed * speed);
  m_b[node].x -= drag * v.x;
  m_b[node].y -= drag * v.y;
  m_a[node].xx += drag - less * v.x * v.x;
  m_a[node].yy += drag - less * v.y * v.y;
  m_a[node].xy -= less * v.x * v.y;
}

void LineDynamics::addFly(double dt_s) {
  const std::size_t node = m_x.size() - 1;
  const double z = m_x[node].z;
  const double wet = wetShare(z, m_flySize_m);
  if (wet <= 0.0) return;
  addBuoyancy(node, m_fly.volume_m3, m_flySize_m, wet, dt_s);
  Vec3 u{m_river.current_m_per_s(z), 0.0, 0.0};
  u -= m_v[node];
  const double speed = u.norm();
  if (speed < 1e-9) return;
  const double flat = u.z / speed;
  const double area_m2 = m_fly.dragArea_m2 * (1.0 + (m_fly.broadside - 1.0) * flat * flat);
  const double k = 0.5 * m_river.fluid.rho_kg_per_m3 * area_m2 * wet;
  m_b[node] += (k * speed) * u;
  m_a[node] += Sym3::diagonal(k * speed) + Sym3::outer(k / speed, u);
}

}  // namespace grainwise::swinging
