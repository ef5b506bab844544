// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <charconv>
#include <cstdio>
#include <string>
#include <vector>

/// Doubles digit for digit, as JSON for programs that solve the same by other means.
namespace grainwise::test {

inline std::string text(double value) {
  char buffer[40];
  const auto end = std::to_chars(buffer, buffer + sizeof buffer, value).ptr;
  return std::string(buffer, end);
}

inline std::string list(const std::vector<double>& values) {
  std::string all = "[";
  for (std::size_t i = 0; i < values.size(); ++i) all += (i > 0 ? "," : "") + text(values[i]);
  return all + "]";
}

struct Member {
  const char* key;
  std::string value;
};

inline void print(const std::vector<Member>& members) {
  for (std::size_t i = 0; i < members.size(); ++i) {
    std::printf("%s\"%s\":%s", i > 0 ? ",\n" : "{", members[i].key, members[i].value.c_str());
  }
  std::printf("}\n");
}

}  // namespace grainwise::test
