// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/format.h"

#include <array>
#include <charconv>
#include <cmath>

namespace grainwise {

std::string fixedText(double value, int decimals) {
  std::array<char, 400> buffer{};
  const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value,
                                 std::chars_format::fixed, decimals)
                       .ptr;
  std::string text(buffer.data(), end);
  const bool zero = text.find_first_not_of("-0.") == std::string::npos;
  if (zero && text.front() == '-') text.erase(0, 1);
  return text;
}

std::string grainsText(double grains) { return fixedText(grains, std::abs(grains) < 99.95 ? 1 : 0); }

std::string feetText(double feet) {
  const double tenths = feet * 10.0;
  const bool finer = std::abs(tenths - std::round(tenths)) > 0.05;
  return fixedText(feet, finer ? 2 : 1);
}

std::string roundFeetText(double feet) { return fixedText(feet, 1); }

std::string ratioText(double ratio) { return fixedText(ratio, std::abs(ratio) < 9.995 ? 2 : 1); }

std::string percentText(double share) { return fixedText(share * 100.0, 0) + " %"; }

std::size_t widthOf(const std::string& text) {
  std::size_t width = 0;
  for (const char c : text) {
    if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U) ++width;
  }
  return width;
}

std::string alignedTable(const std::vector<std::vector<std::string>>& rows,
                         const std::string& align) {
  std::vector<std::size_t> widths(align.size(), 0);
  for (const auto& row : rows) {
    for (std::size_t c = 0; c < row.size(); ++c) widths[c] = std::max(widths[c], widthOf(row[c]));
  }
  std::string text;
  for (const auto& row : rows) {
    std::string line;
    for (std::size_t c = 0; c < row.size(); ++c) {
      const std::string pad(widths[c] - widthOf(row[c]), ' ');
      if (c > 0) line += "  ";
      line += align[c] == 'r' ? pad + row[c] : row[c] + pad;
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + "\n";
  }
  return text;
}

std::string onOneLine(std::string text) {
  for (char& c : text) {
    if (static_cast<unsigned char>(c) < 0x20U || c == 0x7F) c = ' ';
  }
  return text;
}

std::string indented(const std::string& block) {
  std::string text;
  std::size_t begin = 0;
  while (begin < block.size()) {
    const std::size_t end = block.find('\n', begin);
    text += "  " + block.substr(begin, end - begin) + "\n";
    begin = end + 1;
  }
  return text;
}

}  // namespace grainwise
