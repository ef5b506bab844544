// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/shelf_file.h"

#include "core/io/document.h"

namespace grainwise {

Result<Shelf> readShelf(std::string_view text, const std::string& file) {
  return io::readDocument<Shelf>(text, file);
}

std::string writeShelf(const Shelf& shelf) {
  return io::writeDocument(shelf);
}

Result<Shelf> loadShelf(const std::filesystem::path& path) {
  return io::loadDocument<Shelf>(path);
}

}  // namespace grainwise
