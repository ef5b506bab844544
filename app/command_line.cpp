// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/command_line.h"

#include <cstdio>

namespace grainwise {

void complain(const std::string& what) {
  const std::string line = "grainwise: " + what + "\n";
  std::fwrite(line.data(), 1, line.size(), stderr);
}

int wrongUsage(const std::string& what) {
  complain(what);
  complain("try 'grainwise --help'");
  return kWrongUsage;
}

int print(const std::string& text, int codeWhenWritten) {
  const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
  if (written && std::fflush(stdout) == 0) return codeWhenWritten;
  complain("cannot write the output");
  return kBadInput;
}

void printProblems(const Problems& problems) {
  for (const Problem& problem : problems) {
    const std::string line = describe(problem) + "\n";
    std::fwrite(line.data(), 1, line.size(), stderr);
  }
}

tl::expected<Line, std::string> parse(const Words& words, const Words& known) {
  Line line;
  bool onlyFiles = false;
  for (const std::string& word : words) {
    if (onlyFiles || word.size() < 2 || word.front() != '-') {
      line.files.push_back(word);
    } else if (word == "--") {
      onlyFiles = true;
    } else if (std::find(known.begin(), known.end(), word) != known.end()) {
      line.options.push_back(word);
    } else {
      return tl::make_unexpected("unknown option '" + word + "'");
    }
  }
  return line;
}

std::optional<std::string> takeValue(Words& words, const std::string& option) {
  const auto end = std::find(words.begin(), words.end(), "--");
  const auto at = std::find(words.begin(), end, option);
  if (at == end) return std::nullopt;
  const auto next = std::next(at);
  const std::string value = next == end ? "" : *next;
  words.erase(at, next == end ? next : std::next(next));
  return value;
}

}  // namespace grainwise
