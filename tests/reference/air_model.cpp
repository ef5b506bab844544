// SPDX-License-Identifier: GPL-3.0-or-later
#include <charconv>
#include <cstdlib>
#include <string>

#include "core/air/cast.h"
#include "core/units/si.h"
#include "tests/support/air_cases.h"
#include "tests/support/written_out.h"

/// air_model CASE LINKS SECONDS STEP_SHARE: a reference cast as a chain of links, and where this
/// program's solver has it after that time, as JSON on stdout. For air_reference.py, which solves the
/// same chain by other means; SECONDS 0 runs to the turn. Exits 2 on wrong usage.
namespace {

using namespace grainwise;
using test::list;
using test::print;
using test::text;

}  // namespace

int main(int argc, char** argv) {
  if (argc != 5) return 2;
  const auto cases = test::airCases();
  const std::size_t which = std::strtoul(argv[1], nullptr, 10);
  const std::size_t links = std::strtoul(argv[2], nullptr, 10);
  if (which >= cases.size() || links < 4) return 2;
  double seconds = 0.0, share = 1.0;
  std::from_chars(argv[3], argv[3] + std::string(argv[3]).size(), seconds);
  std::from_chars(argv[4], argv[4] + std::string(argv[4]).size(), share);
  const Rig& rig = cases[which].rig;
  const auto model = castModel(rig, massProfile(rig), {}, links);
  if (!model) return 2;
  CastOptions options;
  options.frameEvery = Seconds(0);
  options.stepShare = share;
  if (seconds > 0.0) options.until = Seconds(seconds);
  const CastResult end = unroll(*model, options);
  print({{"case", "\"" + cases[which].name + "\""},
         {"link_m", text(model->link_m)},
         {"node_mass_kg", list(model->nodeMass_kg)},
         {"diameter_m", list(model->diameter_m)},
         {"bending_N_m", list(model->bending_N_m)},
         {"bending_time_s", text(model->bendingTime_s)},
         {"fly_drag_m2", text(model->flyDrag_m2)},
         {"air_kg_per_m3", text(model->airDensity_kg_per_m3)},
         {"across_drag", text(model->acrossDrag)},
         {"along_drag", text(model->alongDrag)},
         {"gravity_m_per_s2", list({model->gravityX_m_per_s2, model->gravityY_m_per_s2})},
         {"launch_rad", text(model->launch_rad)},
         {"rod_tip_m", text(model->rodTip_m)},
         {"start_angle_rad", list(model->startAngle_rad)},
         {"start_rate_rad_per_s", list(model->startRate_rad_per_s)},
         {"turned", end.stop == CastStop::turnedOver ? "true" : "false"},
         {"time_s", text(end.time.value())},
         {"fly_speed_m_per_s", text(si::m_per_s(end.flySpeed))},
         {"end_height_m", text(si::m(end.endHeight))},
         {"end_angle_rad", list(end.angle_rad)},
         {"end_rate_rad_per_s", list(end.rate_rad_per_s)}});
}
