// SPDX-License-Identifier: GPL-3.0-or-later
#include <cstdio>
#include <cstdlib>
#include <string>
#include <vector>

#include "core/model/limits.h"
#include "core/units/si.h"
#include "tests/support/swing_chain.h"
#include "tests/support/written_out.h"

/// water_model CASE NODES SECONDS STEP_SECONDS: a reference case of the water as a chain of so many
/// nodes just tied to the rod, and where this program's solver has the fly from there on, with its
/// hang-down, as JSON on stdout. For solvers of other makes. `water_model water`: density and viscosity
/// over the range of water that a rig may state. Exits 2 on wrong usage.
namespace {

using namespace grainwise;
using test::list;
using test::text;

using Of = double (*)(const WaterPiece&);
std::string each(const WaterLine& line, Of of) {
  std::vector<double> all;
  for (const WaterPiece& piece : line.pieces) all.push_back(of(piece));
  return list(all);
}

std::string points(const std::vector<numerics::Vec3>& all) {
  std::vector<double> flat;
  for (const numerics::Vec3& p : all) flat.insert(flat.end(), {p.x, p.y, p.z});
  return list(flat);
}

/// A grid of waters over the limits of the file.
int printWaters() {
  constexpr double kWarmer_c = 5.0, kSaltier_g_per_kg = 15.0;
  std::vector<double> t, s, rho, mu;
  for (double warm = limits::kTemperature.low; warm <= limits::kTemperature.high; warm += kWarmer_c) {
    for (double salt = limits::kSalinity.low; salt <= limits::kSalinity.high; salt += kSaltier_g_per_kg) {
      const Fluid fluid = waterAt({Celsius(warm), GramsPerKilogram(salt)});
      t.push_back(warm);
      s.push_back(salt);
      rho.push_back(fluid.rho_kg_per_m3);
      mu.push_back(fluid.mu_pa_s);
    }
  }
  test::print({{"temperature_c", list(t)}, {"salinity_g_per_kg", list(s)}, {"rho", list(rho)}, {"mu", list(mu)}});
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc == 2 && std::string(argv[1]) == "water") return printWaters();
  if (argc != 5) return 2;
  const auto cases = test::waterCases();
  const std::size_t which = std::strtoul(argv[1], nullptr, 10);
  if (which >= cases.size()) return 2;
  const test::WaterCase& one = cases[which];
  const River river = one.river();
  test::SwingChain chain(one, std::strtoul(argv[2], nullptr, 10));
  const auto start = chain.line().positions(), speed = chain.line().velocities();
  const double step_s = std::strtod(argv[4], nullptr);
  if (!chain.run(std::strtod(argv[3], nullptr), step_s)) return 1;
  const HangDown hang = hangDown(one.line, river);
  test::print({{"case", "\"" + one.name + "\""},
               {"length_m", each(one.line, [](const WaterPiece& p) { return p.length_m; })},
               {"mass_fly_end", each(one.line, [](const WaterPiece& p) { return p.massFlyEnd_kg_per_m; })},
               {"mass_rod_end", each(one.line, [](const WaterPiece& p) { return p.massRodEnd_kg_per_m; })},
               {"diameter_fly_end", each(one.line, [](const WaterPiece& p) { return p.diameterFlyEnd_m; })},
               {"diameter_rod_end", each(one.line, [](const WaterPiece& p) { return p.diameterRodEnd_m; })},
               {"longest_m", each(one.line, [](const WaterPiece& p) { return test::longest_m(p.fineness); })},
               {"mesh_scale", text(chain.scale())},
               {"fly", list({one.line.fly.mass_kg, one.line.fly.volume_m3, one.line.fly.dragArea_m2,
                             one.line.fly.broadside})},
               {"surface_m_per_s", text(river.surface_m_per_s)},
               {"depth_m", text(river.depth_m)},
               {"rho", text(river.fluid.rho_kg_per_m3)},
               {"mu", text(river.fluid.mu_pa_s)},
               {"start_m", points(start)},
               {"start_m_per_s", points(speed)},
               {"end_m", points(chain.line().positions())},
               {"hang_m", text(si::m(hang.fly))}});
}
