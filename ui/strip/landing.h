// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstddef>
#include <optional>

#include "core/model/rig.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// What letting a part go would do: the rig after it and the name of the step, or why it cannot be.
struct Landing {
  std::optional<Rig> rig;
  QString step;
  QString why;
  std::size_t index = 0;  ///< of the part in the rig after it
};

/// A new part let go before the part that now is `wanted`: it snaps to the nearest place where its kind
/// may stand; a fly or running line takes the place of the one there is.
Landing landingOfNew(const Rig& rig, const Part& part, std::size_t wanted, DisplayUnits units);
/// The part at `from` let go before the part that now is `wanted`; refused where its kind cannot stand.
Landing landingOfMoved(const Rig& rig, std::size_t from, std::size_t wanted);

/// "A tip stands between the head and the leader."
QString placeWords(PartKind kind);
/// Why there is no room on the line for one more of a kind.
QString noRoomWords(const Rig& rig, PartKind kind);

}  // namespace grainwise::ui
