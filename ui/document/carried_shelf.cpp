// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/document/carried_shelf.h"

#include <QResource>

#include "core/io/shelf_file.h"

namespace grainwise::ui {

const SharedShelf& carriedShelf() {
  static const SharedShelf shelf([]() -> Shelf {
    // No QFile: a QObject made in another thread would take that one for the window's.
    const QResource resource(QStringLiteral(":/shelf/generic.shelf.json"));
    if (!resource.isValid()) return {};
    return readShelf(resource.uncompressedData().toStdString()).value_or(Shelf{});
  }());
  return shelf;
}

}  // namespace grainwise::ui
