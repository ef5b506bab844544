// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>

#include "core/io/pools_file.h"
#include "core/io/shelf_file.h"

/// The shelf that is installed and the invented river of the samples, each read once.
namespace grainwise::test {

template <class Read>
auto soundFile(const std::string& path, const Read& read) {
  if (!read) throw std::runtime_error(path + ": " + describe(read.error().front()));
  return *read;
}

inline const Shelf& genericShelf() {
  static const std::string kPath = GRAINWISE_SOURCE_DIR "/resources/shelf/generic.shelf.json";
  static const Shelf kShelf = soundFile(kPath, loadShelf(kPath));
  return kShelf;
}

inline const Pools& corrow() {
  static const std::string kPath = GRAINWISE_SOURCE_DIR "/sample-rigs/corrow.pools.json";
  static const Pools kPools = soundFile(kPath, loadPools(kPath));
  return kPools;
}

}  // namespace grainwise::test
