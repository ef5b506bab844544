// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/model/problem.h"
#include "core/model/rig.h"

/// Rigs, `*.rig.json`, and single parts as they travel by clipboard and drag.
namespace grainwise {

/// The rig in a text, or everything that is wrong with it; `file` is named in the problems.
Result<Rig> readRig(std::string_view text, const std::string& file = {});
/// In the canonical layout: reading and writing it again changes nothing.
std::string writeRig(const Rig& rig);
Result<Rig> loadRig(const std::filesystem::path& path);
/// A copy of work that was not saved: the same, or a line that has no parts yet.
Result<Rig> loadWork(const std::filesystem::path& path);

/// A single part as a bare JSON object, for clipboard and drag. It may be nested as deep as leaves
/// room for it within a rig.
Result<Part> readPart(std::string_view text);
std::string writePart(const Part& part);

}  // namespace grainwise
