// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/model/problem.h"
#include "core/model/shelf.h"

/// Shelves of parts, `*.shelf.json`.
namespace grainwise {

/// The shelf in a text, or everything that is wrong with it; `file` is named in the problems.
Result<Shelf> readShelf(std::string_view text, const std::string& file = {});
/// In the canonical layout: reading and writing it again changes nothing.
std::string writeShelf(const Shelf& shelf);
Result<Shelf> loadShelf(const std::filesystem::path& path);

}  // namespace grainwise
