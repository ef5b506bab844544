// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/bench/cut_sheet.h"

namespace grainwise {

/// "10 ft 5 in", "7 ft 9 1/2 in": to the nearest eighth of an inch, as a tape shows it.
std::string feetInchesText(Feet length);

/// The name of a line ("sinking 11 gr/ft", "nylon 0.017 in").
std::string lineName(const LineStuff& stuff);

/// What is cut: "10 ft, 3/4 sinking (sinking part)".
std::string cutName(const CutSheet& sheet, const WantedCut& cut);

/// The rings of a label in words: "2 long, 1 short", and "then 3 short".
std::string ringText(const RingCode& rings);

/// What lacks of a line and what would do, as one sentence; empty when nothing lacks.
std::string shortageText(const CutSheet& sheet, const MaterialCuts& material);

/// The cut sheet for reading: a block a spool with its marks from one end, what lacks, the labels.
std::string cutSheetText(const CutSheet& sheet, const Spools& spools);

/// The same in the format `grainwise-cut-sheet`, version 1, numbers in full precision.
std::string cutSheetJson(const CutSheet& sheet, const Spools& spools);

/// The usual cautions of the bench that concern what is being made here. Common practice, no source.
std::vector<std::string> benchCautions(const CutSheet& sheet);

}  // namespace grainwise
