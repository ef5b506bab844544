// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/theme/look.h"

class QScrollBar;

namespace grainwise::ui {

/// A scroll bar that is only a thumb on the drawer's ground, wide enough to take.
void quieten(QScrollBar* bar, const Look& look);

}  // namespace grainwise::ui
