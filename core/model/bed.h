// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace grainwise {

/// What lies on the bottom of a river, from smooth to rough.
enum class Bed { sand, gravel, cobbles, boulders };

const char* fileName(Bed bed);
std::optional<Bed> bedFromFile(const std::string& name);
const std::vector<Bed>& allBeds();

}  // namespace grainwise
