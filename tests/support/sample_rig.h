// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>

#include "core/io/rig_file.h"

namespace grainwise::test {

inline std::string samplePath(const std::string& name) {
  return std::string(GRAINWISE_SOURCE_DIR) + "/sample-rigs/" + name + ".rig.json";
}

/// A rig of the samples, by the file's name without its ending.
inline Rig sampleRig(const std::string& name) {
  auto rig = loadRig(samplePath(name));
  if (!rig) throw std::runtime_error("sample " + name + ": " + describe(rig.error().front()));
  return *rig;
}

}  // namespace grainwise::test
