// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/scale_log.h"

#include <algorithm>
#include <array>
#include <charconv>

#include "core/model/check.h"
#include "core/model/limits.h"

namespace grainwise {
namespace {

std::string trimmedText(std::string_view text) {
  const auto begin = text.find_first_not_of(" \t\r");
  if (begin == std::string_view::npos) return {};
  return std::string(text.substr(begin, text.find_last_not_of(" \t\r") - begin + 1));
}

std::vector<std::string_view> linesOf(std::string_view text) {
  constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
  if (text.starts_with(kByteOrderMark)) text.remove_prefix(kByteOrderMark.size());
  std::vector<std::string_view> lines;
  while (!text.empty()) {
    const auto end = std::min(text.find('\n'), text.size());
    lines.push_back(text.substr(0, end));
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

std::string lowered(std::string text) {
  std::transform(text.begin(), text.end(), text.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return text;
}

/// The words of a heading: letters only, so that "mass_gr", "Mass (gr)" and "mass [gr]" are alike.
std::vector<std::string> wordsOf(const std::string& heading) {
  std::vector<std::string> words(1);
  for (const char c : lowered(heading)) {
    if ((c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80U) {
      words.back() += c;
    } else if (!words.back().empty()) {
      words.emplace_back();
    }
  }
  if (words.back().empty()) words.pop_back();
  return words;
}

bool hasAny(const std::vector<std::string>& words, std::initializer_list<const char*> wanted) {
  return std::any_of(words.begin(), words.end(), [&](const std::string& word) {
    return std::find(wanted.begin(), wanted.end(), word) != wanted.end();
  });
}

LogColumn columnFor(const std::string& heading) {
  const auto words = wordsOf(heading);
  LogColumn column;
  for (const std::string& word : words) {
    if (!column.mass) column.mass = massUnitNamed(word);
    if (!column.length) column.length = lengthUnitNamed(word);
  }
  const bool perSecond = hasAny(words, {"s", "sec", "second"}) && column.length;
  if (hasAny(words, {"name", "tip", "label", "id", "part", "what", "piece"}) && !column.mass &&
      !column.length) {
    column.field = LogField::name;
  } else if (column.mass && column.length) {
    column.field = LogField::perFoot;
  } else if (perSecond || hasAny(words, {"rate"})) {
    column.field = LogField::sinkRate;
  } else if (hasAny(words, {"sinking", "sinks"})) {
    column.field = LogField::sinkingLength;
  } else if (column.mass || hasAny(words, {"mass", "weight", "weighs", "scale"})) {
    column.field = LogField::mass;
  } else if (column.length || hasAny(words, {"length", "long"})) {
    column.field = LogField::length;
  } else if (hasAny(words, {"date", "day", "when", "on"})) {
    column.field = LogField::date;
  }
  return column;
}

bool isNumber(const std::string& cell) { return typedNumber(cell).has_value(); }

Problem problem(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

bool looksLikeDate(const std::string& text) {
  Part dated;
  dated.kind = PartKind::tip;
  Section sound;
  sound.length = Feet(1);
  sound.mass = Along<GrainsPerFoot>(GrainsPerFoot(10));
  sound.floats = true;
  dated.sections = {sound};
  dated.weighed = Weighed{Grains(10), text, {}};
  return check(dated).empty();
}

/// A bare number of a column, within its limit; what stands behind the number is dropped when it is
/// one of `units`.
tl::expected<double, Problem> plainNumber(std::string cell, const Limit& limit,
                                          std::initializer_list<const char*> units) {
  for (const char* unit : units) {
    if (lowered(cell).ends_with(unit)) {
      cell = trimmedText(std::string_view(cell).substr(0, cell.size() - std::string(unit).size()));
      break;
    }
  }
  const auto value = typedNumber(cell);
  if (!value) {
    return tl::unexpected(problem(
        Problem::tr("\"%1\" is no %2").arg(cell.substr(0, 40)).arg(Wording::sentence(limit.what)), giveRange(limit)));
  }
  if (const auto wrong = breach(limit, *value)) {
    return tl::unexpected(problem(wrong->what, wrong->fix));
  }
  return *value;
}

/// Puts one cell into its row; the problem when it is not what its column says.
std::optional<Problem> take(LogRow& row, const LogColumn& column, const std::string& cell) {
  const auto keep = [&](auto&& read, auto& member) -> std::optional<Problem> {
    if (!read) return read.error();
    member = typename std::remove_reference_t<decltype(member)>::value_type(*read);
    return std::nullopt;
  };
  switch (column.field) {
    case LogField::name:
      row.name = cell;
      break;
    case LogField::mass:
      return keep(typedMass(cell, column.mass), row.mass);
    case LogField::length:
      return keep(typedLength(cell, column.length), row.length);
    case LogField::sinkingLength:
      if (typedNumber(cell) == 0.0) {
        row.sinking = Feet(0);
        break;
      }
      return keep(typedLength(cell, column.length), row.sinking);
    case LogField::perFoot:
      return keep(plainNumber(cell, limits::kGrainsPerFoot, {"gr/ft"}), row.perFoot);
    case LogField::sinkRate:
      return keep(plainNumber(cell, limits::kSinkRate, {"in/s"}), row.sinkRate);
    case LogField::date:
      if (!looksLikeDate(cell)) {
        return problem(Problem::tr("\"%1\" is no date").arg(cell.substr(0, 20)),
                       Problem::tr("write year-month-day, as in 2026-03-02"));
      }
      row.date = cell;
      break;
    case LogField::none:
      break;
  }
  return std::nullopt;
}

bool saysNothing(const LogRow& row) {
  return !row.mass && !row.length && !row.perFoot && !row.sinkRate;
}

}  // namespace

std::vector<std::string> logCells(std::string_view line, char separator) {
  std::vector<std::string> cells;
  std::string cell;
  bool quoted = false;
  bool wasQuoted = false;
  const auto close = [&] {
    cells.push_back(wasQuoted ? cell : trimmedText(cell));
    cell.clear();
    wasQuoted = false;
  };
  for (std::size_t i = 0; i < line.size(); ++i) {
    const char c = line[i];
    if (quoted && c == '"' && i + 1 < line.size() && line[i + 1] == '"') {
      cell += c;
      ++i;
    } else if (c == '"' && (quoted || trimmedText(cell).empty())) {
      if (!quoted) cell.clear();
      quoted = !quoted;
      wasQuoted = true;
    } else if (c == separator && !quoted) {
      close();
    } else if (c != '\r' && !(wasQuoted && !quoted && (c == ' ' || c == '\t'))) {
      cell += c;
    }
  }
  close();
  return cells;
}

std::vector<LogLine> logLines(std::string_view text, char separator, std::size_t most) {
  std::vector<LogLine> result;
  const auto lines = linesOf(text);
  for (std::size_t i = 0; i < lines.size() && result.size() < most; ++i) {
    if (trimmedText(lines[i]).empty()) continue;
    result.push_back({static_cast<int>(i) + 1, logCells(lines[i], separator)});
  }
  return result;
}

LogMapping guessMapping(std::string_view text) {
  constexpr std::size_t kLooked = 20;
  for (const char separator : {'\t', ';', ','}) {
    const auto lines = logLines(text, separator, kLooked);
    const auto with = std::count_if(lines.begin(), lines.end(),
                                    [](const LogLine& line) { return line.cells.size() > 1; });
    if (2 * static_cast<std::size_t>(with) > lines.size()) return guessMapping(text, separator);
  }
  return guessMapping(text, LogMapping{}.separator);
}

LogMapping guessMapping(std::string_view text, char separator) {
  LogMapping mapping;
  mapping.separator = separator;
  const auto lines = logLines(text, separator, 1);
  if (lines.empty()) return mapping;
  const auto& first = lines.front().cells;
  mapping.heading = std::none_of(first.begin(), first.end(), [](const std::string& cell) {
    return isNumber(cell) || typedMass(cell) || typedLength(cell);
  });
  if (mapping.heading) {
    for (const std::string& cell : first) mapping.columns.push_back(columnFor(cell));
    return mapping;
  }
  mapping.columns.resize(first.size());
  constexpr std::array<LogField, 3> usual{LogField::name, LogField::mass, LogField::length};
  for (std::size_t i = 0; i < std::min(first.size(), usual.size()); ++i) {
    mapping.columns[i].field = usual[i];
  }
  return mapping;
}

ScaleLog readScaleLog(std::string_view text, const LogMapping& mapping, const std::string& file) {
  ScaleLog log;
  const auto lines = linesOf(text);
  bool heading = mapping.heading;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (trimmedText(lines[i]).empty()) continue;
    if (std::exchange(heading, false)) continue;
    LogRow row;
    row.line = static_cast<int>(i) + 1;
    std::vector<Problem> wrong;
    const auto cells = logCells(lines[i], mapping.separator);
    for (std::size_t c = 0; c < std::min(cells.size(), mapping.columns.size()); ++c) {
      if (cells[c].empty()) continue;
      if (auto problem = take(row, mapping.columns[c], cells[c])) wrong.push_back(*problem);
    }
    if (wrong.empty() && saysNothing(row)) {
      wrong.push_back(problem(
          Problem::tr("\"%1\" holds no mass, length, gr/ft or sink rate").arg(trimmedText(lines[i]).substr(0, 40)),
          Problem::tr("check which column is which, or take the line out")));
    }
    for (Problem& each : wrong) {
      each.file = file;
      each.line = row.line;
      log.problems.push_back(std::move(each));
    }
    if (wrong.empty()) log.rows.push_back(std::move(row));
  }
  return log;
}

InchesPerSecond tradeSinkRate(GrainsPerFoot mass) {
  constexpr std::array<std::pair<double, double>, 4> rows{
      {{5.0, 5.0}, {7.0, 6.0}, {8.0, 6.5}, {20.0, 10.5}}};
  const double grains = std::clamp(mass.value(), rows.front().first, rows.back().first);
  std::size_t i = 1;
  while (i + 1 < rows.size() && grains > rows[i].first) ++i;
  const auto [lowMass, lowRate] = rows[i - 1];
  const auto [highMass, highRate] = rows[i];
  const double share = (grains - lowMass) / (highMass - lowMass);
  return InchesPerSecond(lowRate + share * (highRate - lowRate));
}

tl::expected<ImportedTip, Problem> tipOf(const LogRow& row) {
  const Wording who = row.name.empty() ? Problem::tr("this line") : Wording("\"" + row.name.substr(0, 40) + "\"");
  if (!row.length || (!row.mass && !row.perFoot)) {
    return tl::unexpected(Problem{"", row.line, "", Problem::tr("%1 lacks a length, or a mass or gr/ft").arg(who),
                                  Problem::tr("a tip needs its length and one of the two")});
  }
  const GrainsPerFoot perFoot = row.perFoot.value_or(row.mass.value_or(Grains(0)) / *row.length);
  if (const auto wrong = breach(limits::kGrainsPerFoot, perFoot.value())) {
    return tl::unexpected(Problem{"", row.line, "", Problem::tr("%1: %2").arg(who).arg(wrong->what), wrong->fix});
  }
  if (row.sinking && *row.sinking > *row.length + Feet(1e-6)) {
    return tl::unexpected(Problem{"", row.line, "", Problem::tr("%1 sinks over more than its length").arg(who),
                                  Problem::tr("give the sinking feet within its length")});
  }
  ImportedTip tip;
  tip.part.kind = PartKind::tip;
  tip.part.style = row.sinking ? Style::floatSink : Style::level;
  if (!row.name.empty()) tip.part.name = row.name;
  const Feet sinking = std::min(row.sinking.value_or(*row.length), *row.length);
  Section section;
  section.mass = Along<GrainsPerFoot>(perFoot);
  if (*row.length > sinking) {
    section.length = *row.length - sinking;
    section.floats = true;
    tip.part.sections.push_back(section);
  }
  if (sinking > Feet(0)) {
    section.length = sinking;
    section.floats.reset();
    section.sinkRate =
        Along<InchesPerSecond>(row.sinkRate.value_or(tradeSinkRate(perFoot)));
    tip.rateAssumed = !row.sinkRate;
    tip.part.sections.push_back(section);
  }
  if (row.mass) tip.part.weighed = Weighed{*row.mass, row.date, {}};
  // A name that is no UTF-8 or longer than a file may hold, whatever else the rules of a part say.
  if (const Problems wrong = check(tip.part); !wrong.empty()) {
    return tl::unexpected(
        Problem{"", row.line, "", Problem::tr("%1: %2").arg(who).arg(wrong.front().what), wrong.front().fix});
  }
  return tip;
}

}  // namespace grainwise
