// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/problem.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"

namespace grainwise {

/// A first rig for a rod: the shelf's head of that style whose grains stand nearest the middle of
/// the rod's window; on a short head the ten-foot level tip that the trade's table names for it, on
/// a long belly the tip nearest a fifth of its grains, on the others none; the first running line;
/// and the shelf's plain leader nearest four feet behind a tip, else nearest the rod's length. No
/// fly: choosing it comes next.
/// Window: the rod's own for the style, or our default for its line number. Common practice, no
/// source. When there is neither, or the shelf has no such head, one problem says what is missing.
Result<Rig> startFromRod(const Rod& rod, Style style, const Shelf& shelf);

}  // namespace grainwise
