// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/bench/cut_sheet.h"
#include "core/bench/leader.h"
#include "core/bench/weigh_in.h"
#include "ui/theme/look.h"

/// What the Make drawer says: cuts, marks, weighings, knots.
namespace grainwise::ui {

/// A length as a tape shows it: "10 ft 5 in", "3.175 m".
QString tapeText(Feet length, DisplayUnits units);
QString lineWords(const LineStuff& stuff, DisplayUnits units);  ///< "sinking 11 gr/ft"
QString cutWords(const CutSheet& sheet, const WantedCut& cut, DisplayUnits units);
QString labelWords(const CutSheet& sheet, const TipLabel& label, DisplayUnits units);
/// What lacks of a line, as a sentence; empty when nothing does.
QString shortageWords(const CutSheet& sheet, const MaterialCuts& material, DisplayUnits units);
QString weighWords(const WeighIn& read, DisplayUnits units);
QString poundsText(const PoundRange& range);  ///< "6-11 lb", "8 lb"
QString weakestWords(const Leader& leader, DisplayUnits units);
/// A problem of core in one line.
QString problemText(const Problem& problem);

}  // namespace grainwise::ui
