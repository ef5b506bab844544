// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/carried_shelf.h"

#include <QFile>
#include <optional>

#include "core/io/shelf_file.h"

namespace grainwise::ui {

const Shelf* carriedShelf() {
  static const std::optional<Shelf> shelf = []() -> std::optional<Shelf> {
    QFile file(QStringLiteral(":/shelf/generic.shelf.json"));
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const auto read = readShelf(file.readAll().toStdString());
    return read ? std::optional(*read) : std::nullopt;
  }();
  return shelf ? &*shelf : nullptr;
}

}  // namespace grainwise::ui
