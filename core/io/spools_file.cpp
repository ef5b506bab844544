// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/spools_file.h"

#include "core/io/document.h"

namespace grainwise {

Result<Spools> readSpools(std::string_view text, const std::string& file) {
  return io::readDocument<Spools>(text, file);
}

std::string writeSpools(const Spools& spools) {
  return io::writeDocument(spools);
}

Result<Spools> loadSpools(const std::filesystem::path& path) {
  return io::loadDocument<Spools>(path);
}

}  // namespace grainwise
