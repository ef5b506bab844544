// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/utf8.h"

#include <algorithm>

namespace grainwise {
namespace {

unsigned byteAt(std::string_view text, std::size_t i) {
  return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
}

bool within(unsigned byte, unsigned low, unsigned high) {
  return byte >= low && byte <= high;
}

/// Bytes of the sequence that starts at `i`; 0 when there is none.
std::size_t sequenceLength(std::string_view text, std::size_t i) {
  const unsigned lead = byteAt(text, i);
  if (lead < 0x80) return 1;
  const unsigned second = byteAt(text, i + 1);
  if (within(lead, 0xC2, 0xDF)) return within(second, 0x80, 0xBF) ? 2 : 0;
  if (!within(byteAt(text, i + 2), 0x80, 0xBF)) return 0;
  if (within(lead, 0xE0, 0xEF)) {
    const unsigned low = lead == 0xE0 ? 0xA0 : 0x80;
    const unsigned high = lead == 0xED ? 0x9F : 0xBF;
    return within(second, low, high) ? 3 : 0;
  }
  if (!within(lead, 0xF0, 0xF4) || !within(byteAt(text, i + 3), 0x80, 0xBF)) return 0;
  const unsigned low = lead == 0xF0 ? 0x90 : 0x80;
  const unsigned high = lead == 0xF4 ? 0x8F : 0xBF;
  return within(second, low, high) ? 4 : 0;
}

/// Whether the sequence of `length` bytes at `i` would move a terminal's cursor, colour it or turn the
/// direction of the text: C0 and C1 controls, DEL, and the bidirectional formatting characters.
bool controls(std::string_view text, std::size_t i, std::size_t length) {
  const unsigned first = byteAt(text, i);
  if (length == 1) return first < 0x20 || first == 0x7F;
  if (length == 2) return first == 0xC2 && byteAt(text, i + 1) < 0xA0;
  if (length != 3 || first != 0xE2) return false;
  const unsigned second = byteAt(text, i + 1);
  const unsigned third = byteAt(text, i + 2);
  return (second == 0x80 && (within(third, 0x8E, 0x8F) || within(third, 0xA8, 0xAE))) ||
         (second == 0x81 && within(third, 0xA6, 0xA9));
}

}  // namespace

std::optional<std::size_t> firstBadUtf8(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t length = sequenceLength(text, i);
    if (length == 0) return i;
    i += length;
  }
  return std::nullopt;
}

std::size_t codePoints(std::string_view text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  }));
}

std::string printable(std::string_view text, LineEnds lineEnds) {
  std::string result;
  for (std::size_t i = 0; i < text.size();) {
    const std::size_t length = sequenceLength(text, i);
    const bool kept = text[i] == '\n' && lineEnds == LineEnds::keep;
    if (!kept && (length == 0 || controls(text, i, length))) {
      result += '?';
    } else {
      result += text.substr(i, length);
    }
    i += length == 0 ? 1 : length;
  }
  return result;
}

std::string excerpt(std::string_view text, std::size_t most) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < text.size(); ++count) {
    if (count == most) return printable(text.substr(0, i)) + "...";
    i += std::max<std::size_t>(sequenceLength(text, i), 1);
  }
  return printable(text);
}

}  // namespace grainwise
