// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/pools_file.h"

#include "core/io/document.h"

namespace grainwise {

Result<Pools> readPools(std::string_view text, const std::string& file) {
  return io::readDocument<Pools>(text, file);
}

std::string writePools(const Pools& pools) {
  return io::writeDocument(pools);
}

Result<Pools> loadPools(const std::filesystem::path& path) {
  return io::loadDocument<Pools>(path);
}

}  // namespace grainwise
