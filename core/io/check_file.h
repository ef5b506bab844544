// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>

#include "core/model/problem.h"

namespace grainwise {

/// Everything that is wrong with a file of any of our formats, found by its `"format"`; empty when
/// it is sound. A deck is checked together with the rig files that its cards name.
Problems checkFile(const std::filesystem::path& path);

}  // namespace grainwise
