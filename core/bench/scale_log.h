// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/bench/typed.h"
#include "core/model/part.h"

namespace grainwise {

/// What a column of a scale log or a list of tips holds.
enum class LogField { none, name, mass, length, perFoot, sinkRate, sinkingLength, date };

struct LogColumn {
  LogField field = LogField::none;
  std::optional<MassUnit> mass;      ///< of bare numbers in a column of masses
  std::optional<LengthUnit> length;  ///< of bare numbers in a column of lengths
  bool operator==(const LogColumn&) const = default;
};

/// How a text is read: what parts the cells, and what the columns are. Guessed from the text; the
/// user may change every part of it before reading.
struct LogMapping {
  char separator = ',';  ///< , ; or a tab
  bool heading = true;   ///< the first line names the columns
  std::vector<LogColumn> columns;
  bool operator==(const LogMapping&) const = default;
};

/// The cells of one line: quotes as in RFC 4180, blanks around cells dropped.
std::vector<std::string> logCells(std::string_view line, char separator);

/// Tab, semicolon or comma, whichever the first lines hold (in that order of preference, so that a
/// comma beside them is a decimal comma); a heading when its first line holds no number; columns by the words in
/// the heading ("name", "mass (g)", "length_ft", "gr/ft", "in/s", "sinking ft", "date").
LogMapping guessMapping(std::string_view text);
/// The same where the separator is known.
LogMapping guessMapping(std::string_view text, char separator);

/// The cells of the first `most` lines that hold anything, as a table to choose the columns by, each
/// with its number in the text.
struct LogLine {
  int line = 0;
  std::vector<std::string> cells;
};
std::vector<LogLine> logLines(std::string_view text, char separator, std::size_t most);

struct LogRow {
  int line = 0;
  std::string name;
  std::optional<Grains> mass;
  std::optional<Feet> length;
  std::optional<GrainsPerFoot> perFoot;
  std::optional<InchesPerSecond> sinkRate;
  std::optional<Feet> sinking;
  std::optional<std::string> date;
};

/// The rows that could be read, and a problem with its line for each that could not: nothing is
/// dropped in silence, and a line that is wrong spoils no other.
struct ScaleLog {
  std::vector<LogRow> rows;
  Problems problems;
};
ScaleLog readScaleLog(std::string_view text, const LogMapping& mapping,
                      const std::string& file = {});

/// A row as a tip: level, or float/sink where a sinking length is given; its mass as weighed. Refused
/// when neither mass and length nor grains per foot and length are known, or when no file could hold
/// it. Where no sink rate is given, that of the trade's class by grains per foot stands in
/// (`rateAssumed`).
struct ImportedTip {
  Part part;
  bool rateAssumed = false;
};
tl::expected<ImportedTip, Problem> tipOf(const LogRow& row);

/// Rated sink rate that the trade goes by for level tungsten-filled line: 6 in/s at 7 gr/ft and 6.5 at
/// 8, then 1 in/s more for each 3 gr/ft, 10.5 at 20; below 7 it falls to 5 at 5. Common practice, no source.
InchesPerSecond tradeSinkRate(GrainsPerFoot mass);

}  // namespace grainwise
