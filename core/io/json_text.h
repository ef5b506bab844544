// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/limits.h"
#include "core/model/problem.h"

/// JSON as our files need it: a small tree that still knows where each value stands and how it was
/// typed. Every file of ours is read through this and nothing else.
namespace grainwise {

/// Of one text at most so many problems are told; a hostile one could hold millions.
inline constexpr std::size_t kMostFinds = 1000;

enum class JsonKind : std::uint8_t { null, boolean, number, text, array, object };

/// "a number", "text", "a list": what the user calls it.
Wording wordFor(JsonKind kind);

/// One value. The views point into the text that was parsed (`digits`) or into the JsonText.
struct JsonValue {
  JsonKind kind = JsonKind::null;
  bool boolean = false;
  int line = 0;             ///< 1-based
  std::uint32_t begin = 0;  ///< offsets of the value's own text, [begin, end)
  std::uint32_t end = 0;
  std::string_view key;   ///< decoded; empty for list items
  std::string_view text;  ///< a string decoded, or a number's digits as typed
  std::vector<JsonValue> children;

  /// The first member of that name; nullptr when there is none.
  [[nodiscard]] const JsonValue* find(std::string_view name) const;
};

/// What was read, and what is wrong with it. `broken` says that the text is no JSON of ours at all
/// (syntax, depth, size, encoding): then `root` must not be used. Duplicate keys leave it usable.
struct JsonText {
  struct Find {
    Problem problem;
    std::uint32_t offset = 0;  ///< where it stands, to put all of a file's problems in order
  };
  JsonText() = default;
  JsonText(JsonText&&) = default;
  JsonText& operator=(JsonText&&) = default;
  JsonText(const JsonText&) = delete;  // the views would point into the other one
  JsonText& operator=(const JsonText&) = delete;

  std::string_view source;
  JsonValue root;
  std::vector<Find> finds;
  bool broken = false;

  /// The text of a value as it stands in the file.
  [[nodiscard]] std::string_view raw(const JsonValue& value) const {
    return source.substr(value.begin, value.end - value.begin);
  }
  /// The value at `pointer`, or the nearest one around it that exists.
  [[nodiscard]] const JsonValue& nearest(std::string_view pointer) const;

  std::deque<std::string> strings;  ///< owns the decoded strings
};

/// Reads one JSON object. `source` must outlive the result. At most `mostBytes` bytes and `nesting`
/// levels (the outermost object is level 1); UTF-8 with or without a byte-order mark; keys unique
/// within their object; no NUL byte; nothing but white space after the closing brace.
JsonText parseJson(std::string_view source, int nesting = limits::kNesting,
                   std::size_t mostBytes = limits::kFileBytes);

/// The double nearest to a JSON number as typed (below the least double: 0); nothing when `digits`
/// is no JSON number or is too large for a double.
std::optional<double> jsonNumber(std::string_view digits);

/// `text` as a JSON string, quotes included; only quotes, backslashes and control characters are
/// escaped.
std::string jsonQuoted(std::string_view text);

/// A key as a step of a JSON pointer (RFC 6901: ~0 for ~, ~1 for /).
std::string pointerStep(std::string_view key);

}  // namespace grainwise
