// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPointF>

#include "core/analysis/analysis.h"
#include "ui/theme/look.h"

/// The points that a profile is drawn through, feet along x. Straight stretches are their two ends,
/// curved ones a few points of the curve itself; both sides of a step stand at one x.
namespace grainwise::ui {

/// So many rows that the stretch between two of them is a few pixels: its curve is not seen.
bool isDense(const Analysis& analysis);

/// Mass per length, in the unit that is shown.
QList<QPointF> massPoints(const Analysis& analysis, DisplayUnits units);
/// Grains so far, point masses as steps.
QList<QPointF> grainPoints(const Analysis& analysis);

/// The same line with at most two points, its lowest and its highest, in each column of `column_ft`:
/// what more of them would draw is finer than the pen. Few points come back as they are.
QList<QPointF> thinned(const QList<QPointF>& points, double column_ft);

}  // namespace grainwise::ui
