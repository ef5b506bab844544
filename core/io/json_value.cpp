// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <charconv>
#include <limits>

#include "core/io/json_text.h"

namespace grainwise {

namespace {
bool isDigit(char c) {
  return c >= '0' && c <= '9';
}
}  // namespace

Wording wordFor(JsonKind kind) {
  switch (kind) {
    case JsonKind::null:
      return "null";
    case JsonKind::boolean:
      return Problem::tr("true or false");
    case JsonKind::number:
      return Problem::tr("a number");
    case JsonKind::text:
      return Problem::tr("text");
    case JsonKind::array:
      return Problem::tr("a list");
    case JsonKind::object:
      return Problem::tr("an object");
  }
  return {};
}

const JsonValue* JsonValue::find(std::string_view name) const {
  const auto there = std::find_if(children.begin(), children.end(),
                                  [&](const JsonValue& child) { return child.key == name; });
  return kind == JsonKind::object && there != children.end() ? &*there : nullptr;
}

const JsonValue& JsonText::nearest(std::string_view pointer) const {
  const JsonValue* at = &root;
  while (!pointer.empty()) {
    const std::size_t slash = std::min(pointer.find('/', 1), pointer.size());
    const std::string_view step = pointer.substr(1, slash - 1);
    pointer.remove_prefix(slash);
    const auto below =
        std::find_if(at->children.begin(), at->children.end(), [&](const JsonValue& child) {
          if (at->kind == JsonKind::object) return pointerStep(child.key) == step;
          return std::to_string(&child - at->children.data()) == step;
        });
    if (below == at->children.end()) return *at;
    at = &*below;
  }
  return *at;
}

std::optional<double> jsonNumber(std::string_view digits) {
  std::size_t i = 0;
  const auto skipDigits = [&] {
    const std::size_t from = i;
    while (i < digits.size() && isDigit(digits[i])) ++i;
    return digits.substr(from, i - from);
  };
  const bool negative = digits.starts_with('-');
  if (negative) ++i;
  const std::string_view whole = skipDigits();
  if (whole.empty() || (whole.size() > 1 && whole.front() == '0')) return std::nullopt;
  std::string_view part;
  if (i < digits.size() && digits[i] == '.') {
    ++i;
    part = skipDigits();
    if (part.empty()) return std::nullopt;
  }
  std::string_view power;
  bool powerBelow = false;
  if (i < digits.size() && (digits[i] == 'e' || digits[i] == 'E')) {
    ++i;
    powerBelow = i < digits.size() && digits[i] == '-';
    if (i < digits.size() && (digits[i] == '-' || digits[i] == '+')) ++i;
    power = skipDigits();
    if (power.empty()) return std::nullopt;
  }
  if (i != digits.size()) return std::nullopt;

  double value = 0.0;
  const auto result = std::from_chars(digits.data(), digits.data() + digits.size(), value);
  if (result.ec == std::errc()) return value;
  // Out of a double's range. The power of ten of the first digit that is not 0 tells which way.
  long exponent = 0;
  if (std::from_chars(power.data(), power.data() + power.size(), exponent).ec != std::errc() &&
      !power.empty()) {
    exponent = std::numeric_limits<int>::max();
  }
  if (powerBelow) exponent = -exponent;
  const std::size_t zeros = std::min(part.find_first_not_of('0'), part.size());
  const long first = whole == "0" ? -static_cast<long>(zeros) - 1 : static_cast<long>(whole.size());
  if (exponent + first > 0) return std::nullopt;
  return negative ? -0.0 : 0.0;
}

std::string jsonQuoted(std::string_view text) {
  static constexpr const char* kHex = "0123456789abcdef";
  std::string out = "\"";
  for (const char c : text) {
    const auto byte = static_cast<unsigned char>(c);
    switch (c) {
      case '"':
        out += "\\\"";
        break;
      case '\\':
        out += "\\\\";
        break;
      case '\n':
        out += "\\n";
        break;
      case '\t':
        out += "\\t";
        break;
      case '\r':
        out += "\\r";
        break;
      default:
        if (byte < 0x20) {
          out += std::string("\\u00") + kHex[byte >> 4] + kHex[byte & 15];
        } else {
          out += c;
        }
    }
  }
  return out + "\"";
}

std::string pointerStep(std::string_view key) {
  std::string out;
  for (const char c : key) {
    if (c == '~') {
      out += "~0";
    } else if (c == '/') {
      out += "~1";
    } else {
      out += c;
    }
  }
  return out;
}

}  // namespace grainwise
