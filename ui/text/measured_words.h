// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/model/current_fit.h"
#include "core/model/part.h"
#include "ui/theme/look.h"

/// What was measured, wherever its figure stands: how sure it is, what it was before, and the day.
namespace grainwise::ui {

QString measuredWords(const CurrentFit& fit, DisplayUnits units);
QString timedWords(const Timed& timed, DisplayUnits units);

}  // namespace grainwise::ui
