// SPDX-License-Identifier: GPL-3.0-or-later
// figures FOLDER: what the solvers say of every rig in FOLDER and of made-up ones, a line a group of
// figures, every digit of every double. Two builds of it are compared by same_figures.py.
#include <algorithm>
#include <cstdio>
#include <filesystem>
#include <string>
#include <vector>

#include "core/analysis/analysis.h"
#include "core/analysis/heavy_runs.h"
#include "core/io/rig_file.h"
#include "core/mass/profile.h"
#include "core/water/swing.h"
#include "tests/support/random_rig.h"
#include "tests/support/written_out.h"

namespace {

using namespace grainwise;

constexpr std::uint64_t kMadeUp = 400;
constexpr double kRun_s = 1.2;  ///< of a cast: long enough for most to turn

void say(const std::string& rig, const char* group, const std::vector<double>& values) {
  std::printf("%s|%s|%s\n", rig.c_str(), group, test::list(values).c_str());
}

void sayReadings(const std::string& name, const Analysis& a) {
  std::vector<double> mass{a.totals.mass.value(), a.totals.length.value(), a.totals.centreOfMass.feet()};
  for (const ProfileRow& row : a.rows) mass.insert(mass.end(), {row.at.feet(), row.mass.value()});
  for (const Junction& joint : a.junctions) mass.push_back(joint.ratio3ft);
  say(name, "mass", mass);
  if (a.turnover) {
    std::vector<double> loop{a.turnover->reserve};
    for (const TurnoverStation& s : a.turnover->stations) {
      loop.insert(loop.end(), {s.at.feet(), s.line.value(), s.need.value()});
    }
    say(name, "turnover", loop);
  }
  if (!a.hang) return;
  std::vector<double> hang{a.hang->fly.value()};
  for (const HangPoint& p : a.hang->shape) hang.insert(hang.end(), {p.depth.value(), p.upstream.value()});
  say(name, "hang-down", hang);
}

void sayRuns(const std::string& name, const Rig& rig) {
  const MassProfile profile = massProfile(rig);
  if (const auto water = rigInWater(rig, profile)) {
    const SwingResult run = swing(water->line, water->river, water->setup);
    std::vector<double> depths;
    for (const SwingFrame& frame : run.track) {
      depths.insert(depths.end(), {frame.line.back().depth.value(), frame.line.back().across.value()});
    }
    say(name, "swing", depths);
  }
  if (const auto model = castModel(rig, profile)) {
    CastOptions options;
    options.frameEvery = Seconds(0);
    options.until = Seconds(kRun_s);
    say(name, "cast", unroll(*model, options).angle_rad);
  }
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  std::vector<std::filesystem::path> files;
  for (const auto& entry : std::filesystem::directory_iterator(argv[1])) {
    if (entry.path().string().ends_with(".rig.json")) files.push_back(entry.path());
  }
  std::sort(files.begin(), files.end());
  for (const auto& file : files) {
    const Rig rig = loadRig(file).value();
    sayReadings(file.filename(), analyse(rig));
    sayRuns(file.filename(), rig);
  }
  test::Random random(1);
  for (std::uint64_t i = 0; i < kMadeUp; ++i) {
    sayReadings("made up " + std::to_string(i), analyse(test::randomRig(random)));
  }
  return 0;
}
