// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "core/analysis/depth_table.h"
#include "core/choose/fixes.h"
#include "core/model/spool.h"
#include "ui/panels/choice_list.h"
#include "ui/panels/cut_drawing.h"
#include "ui/text/out_table.h"

/// What the pages of the drawer and the wallet show, as tables to copy and to save.
namespace grainwise::ui {

/// A pool a row: its water, and how deep the fly is at each of the three speeds of the water.
OutTable depthsTable(const std::vector<DepthRow>& rows, DisplayUnits units);
OutTable poolsTable(const Pools& pools, DisplayUnits units);
/// The ranked tips that are listed, and mapped.
OutTable tipsTable(const ChoiceList& list, DisplayUnits units);
OutTable fixesTable(const std::vector<Fix>& fixes, DisplayUnits units);
/// Each cut from the end of its spool.
OutTable cutsTable(const CutPicture& picture, DisplayUnits units);
OutTable spoolsTable(const Spools& spools, DisplayUnits units);

}  // namespace grainwise::ui
