// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <vector>

#include "core/model/part.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// A part's caption, said ever shorter: "Short head 525", "525 gr". Never empty.
QStringList captionChoices(const Part& part, Grains mass, DisplayUnits units);

/// One caption for leaders and tippets in a row that are too short for their own: "leader 4 ft".
QString nylonCaption(const std::vector<Part>& parts, std::size_t first, std::size_t last,
                     DisplayUnits units);

}  // namespace grainwise::ui
