// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <vector>

namespace grainwise::ui {

/// A mark on an axis: where it stands, in the axis's own unit, and its words.
struct AxisTick {
  double at = 0;
  QString words;
};

/// Marks at 1, 2 or 5 times a power of ten from the first at or above `low` to the last at or below
/// `high`, the nearest to 0 among them, no two of them nearer to each other than `pixels`.
std::vector<AxisTick> axisTicks(double low, double high, double pixelsPerUnit, double pixels);

/// The distance between the grid lines of a mass axis, 1, 2 or 5 times a power of ten and 0.1 at least, that gives
/// one to three of them up to `highest` (at most 1e15).
double gridStep(double highest);

}  // namespace grainwise::ui
