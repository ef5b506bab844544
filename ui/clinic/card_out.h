// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/clinic/card_view.h"

namespace grainwise::ui {

/// A card of the view as a picture, dark on white, and what it shows as a table, to copy and to save.
void addWayOut(Look* look, CardView* view);

}  // namespace grainwise::ui
