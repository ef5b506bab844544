// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/model/problem.h"
#include "core/model/spool.h"

/// What is left on the spools at the bench, `*.spools.json`.
namespace grainwise {

/// The spools in a text, or everything that is wrong with it; `file` is named in the problems.
Result<Spools> readSpools(std::string_view text, const std::string& file = {});
/// In the canonical layout: reading and writing it again changes nothing.
std::string writeSpools(const Spools& spools);
Result<Spools> loadSpools(const std::filesystem::path& path);

}  // namespace grainwise
