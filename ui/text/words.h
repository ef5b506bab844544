// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/analysis/analysis.h"
#include "core/analysis/readings.h"
#include "core/model/rig.h"
#include "ui/theme/glyph.h"
#include "ui/theme/look.h"

/// Everything the window says, keyed by what core found: short, plain, the trade's own. Whole
/// sentences, ready to be translated.
namespace grainwise::ui {

/// What a reading is called: "Hinge", "Tip share".
QString readingTitle(Reading reading);

/// Words as the beginning of a line.
QString capital(QString words);

/// A tile: what it shows. Without a number (`number` empty) the words say what to do next.
struct TileWords {
  QString title;    ///< of the reading that decides: "Tip share", or "Anchor" where that is worse
  QString number;   ///< "17.8 to 11"
  QString from;     ///< the two it came from: "110 of 525 gr"
  QString verdict;  ///< "smooth drop"
  std::optional<Grade> grade;
};
/// Of the readings that have a tile: `junction` (the worst joint), `tipShare` (with the anchor),
/// `flyAgainstTip` (with the leader), `headOnRod` (with the working length), `depth`; `drive` and
/// `reserve` have the one sentence. Where the reading in
/// brackets is the worse one, the tile shows that with its own numbers.
TileWords tileWords(Reading reading, const Rig& rig, const Analysis& analysis, DisplayUnits units);

QString junctionWords(JunctionVerdict verdict);                  ///< "smooth drop"
QString junctionFigures(const Junction& j, DisplayUnits units);  ///< "17.8 to 11"
QString junctionTag(const Junction& j, DisplayUnits units);      ///< "17.8 to 11: smooth drop"
/// The whole of it: "7 to 14 gr/ft: hinges here: the tip is heavier than the line behind it".
QString junctionSentence(const Junction& j, const Rig& rig, DisplayUnits units);
/// For the ear, after the name of the part on the fly's side.
QString junctionSpoken(const Junction& j, const Rig& rig);

QString headWords(const RodFit& fit);  ///< "fits, at the light end"; with a verdict only
QString lengthWords(LengthVerdict verdict);
QString tipShareWords(TipShareVerdict verdict);
QString anchorWords(AnchorVerdict verdict);
QString flyWords(FlyVerdict verdict);
QString leaderWords(LeaderVerdict verdict);
/// What is missing and what to do about it: "drop a fly on the line".
QString missingWords(Missing what);

QString kindWords(PartKind kind);  ///< "running line"
QString styleWords(Style style);   ///< "short head"
/// A part in full: its name, else what it is.
QString partWords(const Part& part, DisplayUnits units);
/// A part in two or three words, for its block: "short head 525", "10 ft, 11 gr/ft", "leader 4 ft",
/// "leech 33", "mono 0.024". A short name of its own comes first.
QString partCaption(const Part& part, DisplayUnits units);
/// `after`, which an edit made of `before`, under the name that suits it: a name that the program gave
/// goes when the figures that it tells have changed (what the part is stands in its place), and of a fly
/// follows the hook; a name that a person typed stays.
Part named(const Part& before, Part after, DisplayUnits units);
/// A part for the ear: "tip, 10 feet, 11 grains a foot".
QString partSpoken(const Part& part, DisplayUnits units = {});

QString rodSentence(const Rig& rig, DisplayUnits units);    ///< "13 ft #8, short heads 525–600"
QString waterSentence(const Rig& rig, DisplayUnits units);  ///< "Mill Run: 5 ft deep, 3 ft/s, 45 °F"
QString strokeSentence(const Stroke& stroke);
/// The one sentence about turnover: the worst of drive, fly against tip and reserve, and what to do;
/// without a turnover why there is none, empty for an empty line.
QString turnoverSentence(const Rig& rig, const Analysis& analysis);
/// Why there is no turnover to read.
QString noTurnoverWords(NoTurnover why);
/// What a depth state means on the water: "swings clear of the bottom".
QString depthWords(DepthState state);
/// What a bed is, and how rough: "rough: cobbles".
QString bedWords(Bed bed);

/// What a swing does: "Hangs at 2.2 ft, round in 24 s" or "Touches the bottom for 60 % of the swing".
QString swingSentence(const SwingResult& swing, DisplayUnits units);

/// "fits", "watch", "wrong": the grade in a word, for the ear beside its glyph.
QString gradeWord(Grade grade);
Glyph glyphOf(Grade grade);

}  // namespace grainwise::ui
