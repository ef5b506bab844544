// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "core/air/cast.h"
#include "core/analysis/analysis.h"
#include "core/analysis/heavy_runs.h"

/// The words that the commands print, keyed by what core found. Those of a verdict are a contract
/// of the report and never change with a language; the window has its own (ui/text).
namespace grainwise::words {

const char* of(JunctionVerdict verdict);
const char* of(HeadVerdict verdict);
const char* of(LengthVerdict verdict);
const char* of(TipShareVerdict verdict);
const char* of(AnchorVerdict verdict);
const char* of(FlyVerdict verdict);
const char* of(LeaderVerdict verdict);
const char* of(StrokeVerdict verdict);
const char* of(DepthState state);
const char* of(ReserveVerdict verdict);
const char* of(DriveVerdict verdict);
const char* of(PaceVerdict verdict);
const char* of(NylonVerdict verdict);
const char* of(TurnoverInput input);
const char* of(CastStop stop);
/// The one sentence about turnover: the worst of drive, fly against tip and reserve, and what to do;
/// empty where there is no turnover.
std::string turnoverSentence(const Rig& rig, const Analysis& analysis);
/// "23.0 ft, short head 525": where the drive is least.
std::string placeOfDrive(const Rig& rig, const Turnover& turnover);
/// What is missing and which reading is left out for it.
const char* of(Missing what);
/// All lines of what is missing, those of the heavy runs behind.
std::vector<std::string> missing(const Analysis& analysis, const HeavyRuns& heavy = {});
/// "running line", "head": a kind of part in running text.
const char* of(PartKind kind);

/// A part's name, or else its kind.
std::string nameOf(const Part& part);

/// The usual cautions about casting and wading that concern what this report shows, in order, at most five
/// with those of later blocks. Common practice, no source.
std::vector<std::string> cautions(const Rig& rig, const Analysis& analysis);

}  // namespace grainwise::words
