// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>

#include "core/model/part.h"

class QMimeData;

namespace grainwise::ui {

/// What a dragged block carries: the part itself as text of our format and, when it comes from the
/// line, its index there. Self-contained: nothing points into the window it came from.
struct PartPayload {
  Part part;
  std::optional<std::size_t> origin;
};

QMimeData* mimeOf(const PartPayload& payload);
/// Nothing when the data are no part of ours.
std::optional<PartPayload> payloadOf(const QMimeData* data);
/// Whether they claim to be one, without reading them.
bool isPart(const QMimeData* data);

}  // namespace grainwise::ui
