// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/analysis/analysis.h"
#include "core/model/rig.h"
#include "ui/theme/glyph.h"
#include "ui/theme/look.h"

/// Everything the window says, keyed by what core found: short, plain, the trade's own.
namespace grainwise::ui {

/// The readings that have a tile and a *why*.
enum class Reading { hinge, tipShare, fly, head };
QString readingTitle(Reading reading);

/// A tile: what it shows. Without a number (`number` empty) the words say what to do next.
struct TileWords {
  QString number;   ///< "17.8 to 11"
  QString from;     ///< the two it came from: "110 of 525 gr"
  QString verdict;  ///< "smooth drop"
  std::optional<Grade> grade;
};
TileWords tileWords(Reading reading, const Rig& rig, const Analysis& analysis, DisplayUnits units);

QString junctionWords(JunctionVerdict verdict);            ///< "smooth drop"
QString junctionFigures(const Junction& j, DisplayUnits units);  ///< "17.8 to 11"
QString junctionTag(const Junction& j, DisplayUnits units);      ///< "17.8 to 11: smooth drop"
/// What a joint does, for the ear: "steps down from the head by 0.58".
QString junctionSpoken(const Junction& j, const Rig& rig);

QString kindWords(PartKind kind);    ///< "running line"
QString styleWords(Style style);     ///< "short head"
/// A part in a few words: its name, else what it is: "leader 4 ft", "leech 33", "mono 0.024".
QString partWords(const Part& part, DisplayUnits units);
/// The same where there is little room: "mono 0.024 in" for a running line.
QString captionWords(const Part& part, DisplayUnits units);
/// A part for the ear: "tip, 10 feet, 11 grains a foot".
QString partSpoken(const Part& part);

QString rodSentence(const Rig& rig, DisplayUnits units);    ///< "13 ft #8, short heads 525-600"
QString waterSentence(const Rig& rig, DisplayUnits units);  ///< "Mill Run: 5 ft deep, 3 ft/s, 45 °F"
QString strokeSentence(const Stroke& stroke);

/// "fits", "watch", "wrong": the grade in a word, for the ear beside its glyph.
QString gradeWord(Grade grade);
Glyph glyphOf(Grade grade);

}  // namespace grainwise::ui
