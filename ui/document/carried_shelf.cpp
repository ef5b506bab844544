// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/carried_shelf.h"

#include <QResource>
#include <optional>

#include "core/io/shelf_file.h"

namespace grainwise::ui {

const Shelf* carriedShelf() {
  static const std::optional<Shelf> shelf = []() -> std::optional<Shelf> {
    // No QFile: a QObject made in another thread would take that one for the window's.
    const QResource resource(QStringLiteral(":/shelf/generic.shelf.json"));
    if (!resource.isValid()) return std::nullopt;
    const auto read = readShelf(resource.uncompressedData().toStdString());
    return read ? std::optional(*read) : std::nullopt;
  }();
  return shelf ? &*shelf : nullptr;
}

}  // namespace grainwise::ui
