// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "core/model/part.h"

class QMimeData;

namespace grainwise::ui {

/// Where a dragged part was taken from: which line, and its place on it.
struct PartOrigin {
  QString line;  ///< a name that no other line has, in this program or another
  std::size_t index = 0;
  bool operator==(const PartOrigin&) const = default;
};

/// A part in the hand.
struct PartPayload {
  Part part;
  std::optional<PartOrigin> origin;  ///< none when it comes from the Shelf
};

/// One self-contained format, `application/x-grainwise-part+json`: the part as files write it, and its
/// origin. A bare part is read as well; anything else is nothing.
QMimeData* mimeOf(const PartPayload& payload);
bool holdsPart(const QMimeData* data);
std::optional<PartPayload> payloadOf(const QMimeData* data);

}  // namespace grainwise::ui
