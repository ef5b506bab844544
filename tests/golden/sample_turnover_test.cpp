// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <filesystem>

#include "core/air/turnover.h"
#include "core/io/rig_file.h"

using namespace grainwise;
namespace fs = std::filesystem;

namespace {

const fs::path kFolder = fs::path(GRAINWISE_SOURCE_DIR) / "sample-rigs";

Turnover turnoverOf(const std::string& name) {
  INFO(name);
  const auto rig = loadRig(kFolder / (name + ".rig.json"));
  REQUIRE(rig);
  const MassProfile profile = massProfile(*rig);
  const auto read = turnover(*rig, profile, junctions(*rig, profile));
  REQUIRE(read);
  return *read;
}

/// Readings of the cast that are wrong, in words.
std::vector<std::string> faultsOf(const Turnover& t) {
  std::vector<std::string> found;
  if (grade(t.reserveVerdict) == Grade::wrong) found.emplace_back("reserve");
  if (t.driveVerdict && grade(*t.driveVerdict) == Grade::wrong) found.emplace_back("drive");
  if (grade(t.paceVerdict) == Grade::wrong) found.emplace_back("pace");
  if (t.nylonVerdict && grade(*t.nylonVerdict) == Grade::wrong) found.emplace_back("nylon");
  return found;
}

}  // namespace

TEST_CASE("Every sound sample rig turns its fly over with speed to spare and is carried") {
  int sound = 0;
  for (const auto& entry : fs::directory_iterator(kFolder)) {
    const std::string file = entry.path().filename().string();
    if (!file.ends_with(".rig.json") || file.starts_with("wrong-")) continue;
    INFO(file);
    ++sound;
    const Turnover t = turnoverOf(file.substr(0, file.size() - std::string(".rig.json").size()));
    CHECK(faultsOf(t).empty());
    CHECK(t.reserveVerdict == ReserveVerdict::toSpare);
    CHECK(t.driveVerdict == DriveVerdict::carries);
  }
  CHECK(sound == 10);
}

TEST_CASE("In the air the wrong rigs show no fault but what their own fault brings with it") {
  CHECK(faultsOf(turnoverOf("wrong-hinge")).empty());
  CHECK(faultsOf(turnoverOf("wrong-fat-fly")).empty());
  CHECK(faultsOf(turnoverOf("wrong-no-grip")).empty());
  // A tip that weighs half of the head, with a fly of six grains: it kicks as well.
  const Turnover anvil = turnoverOf("wrong-anvil");
  CHECK(faultsOf(anvil) == std::vector<std::string>{"pace"});
  CHECK(anvil.paceVerdict == PaceVerdict::kicks);
}
