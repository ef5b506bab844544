// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/typed.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <utility>
#include <vector>

#include "core/model/limits.h"
#include "core/units/si.h"

namespace grainwise {
namespace {

constexpr std::array<std::pair<std::string_view, MassUnit>, 8> kMassWords{
    {{"gr", MassUnit::grains},
     {"grain", MassUnit::grains},
     {"grains", MassUnit::grains},
     {"grn", MassUnit::grains},
     {"g", MassUnit::grams},
     {"gram", MassUnit::grams},
     {"grams", MassUnit::grams},
     {"gramme", MassUnit::grams}}};
constexpr std::array<std::pair<std::string_view, LengthUnit>, 18> kLengthWords{
    {{"ft", LengthUnit::feet},          {"foot", LengthUnit::feet},
     {"feet", LengthUnit::feet},        {"'", LengthUnit::feet},
     {"in", LengthUnit::inches},        {"inch", LengthUnit::inches},
     {"inches", LengthUnit::inches},    {"\"", LengthUnit::inches},
     {"''", LengthUnit::inches},        {"m", LengthUnit::metres},
     {"metre", LengthUnit::metres},     {"metres", LengthUnit::metres},
     {"meter", LengthUnit::metres},     {"meters", LengthUnit::metres},
     {"cm", LengthUnit::centimetres},   {"centimetres", LengthUnit::centimetres},
     {"mm", LengthUnit::millimetres},   {"millimetres", LengthUnit::millimetres}}};

bool isDigit(char c) { return c >= '0' && c <= '9'; }
bool isBlank(char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; }
char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

template <class Words>
auto unitIn(const Words& words, std::string_view word)
    -> std::optional<typename Words::value_type::second_type> {
  std::string plain(word);
  std::transform(plain.begin(), plain.end(), plain.begin(), lower);
  while (plain.size() > 1 && plain.back() == '.') plain.pop_back();
  for (const auto& [name, unit] : words) {
    if (name == plain) return unit;
  }
  return std::nullopt;
}

/// A number and the word behind it, which may be empty.
struct Token {
  double number = 0.0;
  std::string unit;
};

bool belongsToNumber(char c) {
  return isDigit(c) || c == '.' || c == ',' || c == '-' || c == '+' || c == '/';
}

/// A fraction "1/2" or a decimal number.
std::optional<double> numberOrFraction(std::string_view text) {
  const auto slash = text.find('/');
  if (slash == std::string_view::npos) return typedNumber(text);
  const auto top = typedNumber(text.substr(0, slash));
  const auto bottom = typedNumber(text.substr(slash + 1));
  if (!top || !bottom || !(*bottom > 0.0) || *top < 0.0) return std::nullopt;
  return *top / *bottom;
}

/// The text as numbers with their units; "7 1/2" is one number. Nothing when it is something else.
std::optional<std::vector<Token>> tokensOf(std::string_view text) {
  std::vector<Token> tokens;
  std::size_t i = 0;
  while (i < text.size()) {
    if (isBlank(text[i])) {
      ++i;
      continue;
    }
    const std::size_t begin = i;
    const bool number = belongsToNumber(text[i]);
    const auto ends = [&](char c) { return isBlank(c) || belongsToNumber(c) != number; };
    while (i < text.size() && (!ends(text[i]) || (!number && text[i] == '.'))) ++i;
    const std::string_view word = text.substr(begin, i - begin);
    if (!number) {
      if (tokens.empty() || !tokens.back().unit.empty()) return std::nullopt;
      tokens.back().unit = std::string(word);
      continue;
    }
    const auto value = numberOrFraction(word);
    if (!value) return std::nullopt;
    const bool joins = !tokens.empty() && tokens.back().unit.empty();
    if (joins && word.find('/') == std::string_view::npos) return std::nullopt;
    if (joins) {
      tokens.back().number += *value;
    } else {
      tokens.push_back({*value, ""});
    }
  }
  if (tokens.empty()) return std::nullopt;
  return tokens;
}

Problem problem(Wording what, Wording fix) {
  return {"", 0, "", std::move(what), std::move(fix)};
}

std::string quoted(std::string_view text) {
  constexpr std::size_t kMost = 40;
  std::string shown(text.substr(0, kMost));
  if (text.size() > kMost) shown += "...";
  return "\"" + shown + "\"";
}

template <class Q>
tl::expected<Q, Problem> within(Q value, const Limit& limit) {
  const auto wrong = breach(limit, value.value());
  if (wrong) return tl::unexpected(problem(wrong->what, wrong->fix));
  return value;
}

}  // namespace

std::optional<double> typedNumber(std::string_view text) {
  std::string plain(text);
  if (std::count(plain.begin(), plain.end(), ',') + std::count(plain.begin(), plain.end(), '.') > 1) {
    return std::nullopt;
  }
  std::replace(plain.begin(), plain.end(), ',', '.');
  const char* begin = plain.data();
  const char* end = begin + plain.size();
  if (plain.size() > 1 && *begin == '+' && begin[1] != '-') ++begin;
  double value = 0.0;
  const auto [stop, error] = std::from_chars(begin, end, value, std::chars_format::fixed);
  const bool plainDigits = std::any_of(begin, end, isDigit);
  if (error != std::errc() || stop != end || !plainDigits) return std::nullopt;
  return value;
}

std::optional<MassUnit> massUnitNamed(std::string_view word) { return unitIn(kMassWords, word); }
std::optional<LengthUnit> lengthUnitNamed(std::string_view word) {
  return unitIn(kLengthWords, word);
}

Grains grainsOf(double number, MassUnit unit) {
  return unit == MassUnit::grains ? Grains(number) : si::toGrains(number * 1e-3);
}

Feet feetOf(double number, LengthUnit unit) {
  switch (unit) {
    case LengthUnit::feet:
      break;
    case LengthUnit::inches:
      return si::toFeet(si::m(Inches(number)));
    case LengthUnit::metres:
      return si::toFeet(number);
    case LengthUnit::centimetres:
      return si::toFeet(number * 1e-2);
    case LengthUnit::millimetres:
      return si::toFeet(number * 1e-3);
  }
  return Feet(number);
}

tl::expected<Grains, Problem> typedMass(std::string_view text, std::optional<MassUnit> bare) {
  const auto tokens = tokensOf(text);
  if (!tokens || tokens->size() != 1) {
    return tl::unexpected(problem(Problem::tr("%1 is no mass").arg(quoted(text)),
                                  Problem::tr("write it like 113.5 gr or 7.4 g")));
  }
  const Token& token = tokens->front();
  auto unit = token.unit.empty() ? bare : massUnitNamed(token.unit);
  if (!unit && token.unit.empty()) {
    return tl::unexpected(
        problem(Problem::tr("%1 does not say gr or g").arg(quoted(text)),
                Problem::tr("write gr for grains or g for grams")));
  }
  if (!unit) {
    return tl::unexpected(
        problem(Problem::tr("%1 is no unit of mass").arg(quoted(token.unit)),
                Problem::tr("write gr for grains or g for grams")));
  }
  return within(grainsOf(token.number, *unit), limits::kWeighed);
}

tl::expected<Feet, Problem> typedLength(std::string_view text, std::optional<LengthUnit> bare) {
  const auto tokens = tokensOf(text);
  if (!tokens || tokens->size() > 2) {
    return tl::unexpected(
        problem(Problem::tr("%1 is no length").arg(quoted(text)),
                Problem::tr("write it like 10.5 ft, 10 ft 6 in or 3.2 m")));
  }
  Feet sum;
  for (const Token& token : *tokens) {
    const auto unit = token.unit.empty() ? bare : lengthUnitNamed(token.unit);
    if (!unit) {
      const Wording what = token.unit.empty()
                               ? Problem::tr("%1 does not say its unit").arg(quoted(text))
                               : Problem::tr("%1 is no unit of length").arg(quoted(token.unit));
      return tl::unexpected(problem(what, Problem::tr("write ft, in, m or cm")));
    }
    if (token.number < 0.0) return within(feetOf(token.number, *unit), limits::kLength);
    sum += feetOf(token.number, *unit);
  }
  const bool feetThenInches = tokens->size() < 2 || (lengthUnitNamed(tokens->front().unit) ==
                                                         LengthUnit::feet &&
                                                     lengthUnitNamed(tokens->back().unit) ==
                                                         LengthUnit::inches);
  if (!feetThenInches) {
    return tl::unexpected(
        problem(Problem::tr("%1 is no length").arg(quoted(text)),
                Problem::tr("write feet before inches, as in 10 ft 6 in")));
  }
  return within(sum, limits::kLength);
}

}  // namespace grainwise
