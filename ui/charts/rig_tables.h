// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/analysis/analysis.h"
#include "core/model/rig.h"
#include "ui/charts/cast_view.h"
#include "ui/charts/river_view.h"
#include "ui/charts/way_out_files.h"
#include "ui/text/out_table.h"
#include "ui/theme/look.h"

/// What the pictures of a rig show, as tables of the same numbers, and the pictures of the bench as they
/// leave the window. Lengths and masses in the units that are shown, named in the header.
namespace grainwise::ui {

/// Each part: where it stands, what it weighs, what a foot of it weighs at its two ends.
OutTable partsTable(const Rig& rig, const Analysis& analysis, DisplayUnits units);
/// Each joint with its two means, their ratio and what it does.
OutTable jointsTable(const Rig& rig, const Analysis& analysis, DisplayUnits units);
/// Where the line steps or bends: what a foot weighs there, and the grains so far.
OutTable profileTable(const Analysis& analysis, DisplayUnits units);
/// The readings of the tiles, the sentence about turnover and the stroke.
OutTable readingsTable(const Rig& rig, const Analysis& analysis, DisplayUnits units);
/// The fly through a cast, and where the energy is.
OutTable castTable(const CastPicture* picture, DisplayUnits units);
/// The fly through a swing.
OutTable riverTable(const RiverPicture* picture, DisplayUnits units);

/// The line true to scale with its parts named under it.
OutPicture linePicture(const Rig& rig, const Conditions& conditions, const QString& title, DisplayUnits units);
/// What each foot weighs, of one rig or of two.
OutPicture profilePicture(const std::vector<Rig>& rigs, const Conditions& conditions, const QString& title,
                          DisplayUnits units);

}  // namespace grainwise::ui
