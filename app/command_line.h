// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/model/problem.h"

/// What all commands share: their words, and how they answer.
namespace grainwise {

using Words = std::vector<std::string>;

enum ExitCode { kGood = 0, kBadInput = 1, kWrongUsage = 2 };

void complain(const std::string& what);
int wrongUsage(const std::string& what);
/// Writes all of `text` to stdout; a full disk or a closed pipe is told, never swallowed.
int print(const std::string& text, int codeWhenWritten = kGood);
void printProblems(const Problems& problems);

/// A command's words told apart: files, and options among those that it knows.
struct Line {
  Words files;
  Words options;
  [[nodiscard]] bool has(const char* option) const {
    return std::find(options.begin(), options.end(), option) != options.end();
  }
};

/// The line, or what is wrong with it.
tl::expected<Line, std::string> parse(const Words& words, const Words& known);

/// The word behind `option`, taken out of `words`; nothing when the option is not there. Empty where
/// its value is missing.
std::optional<std::string> takeValue(Words& words, const std::string& option);

}  // namespace grainwise
