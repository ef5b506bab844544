// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "core/model/current_fit.h"
#include "core/model/part.h"
#include "ui/theme/look.h"

/// What was measured, wherever its figure stands: how sure it is, what it was before, and the day.
namespace grainwise::ui {

QString measuredWords(const CurrentFit& fit, DisplayUnits units);
QString timedWords(const Timed& timed, DisplayUnits units);

/// A figure by itself, with a word behind it where it was measured: "7.1 in/s timed", "4 ft/s measured".
QString sinkRateText(const Section& section, DisplayUnits units);  ///< of a section that has a rate
QString currentText(FeetPerSecond surface, const std::optional<CurrentFit>& measured, DisplayUnits units);

}  // namespace grainwise::ui
