// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/model/pool.h"
#include "core/model/problem.h"

/// Pools of a river, `*.pools.json`.
namespace grainwise {

/// The pools in a text, or everything that is wrong with it; `file` is named in the problems.
Result<Pools> readPools(std::string_view text, const std::string& file = {});
/// In the canonical layout: reading and writing it again changes nothing.
std::string writePools(const Pools& pools);
Result<Pools> loadPools(const std::filesystem::path& path);

}  // namespace grainwise
