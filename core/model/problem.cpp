// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/problem.h"

#include "core/model/utf8.h"

namespace grainwise {

std::string describe(const Problem& problem) {
  std::string text;
  if (!problem.file.empty()) {
    text += problem.file;
    if (problem.line > 0) text += ":" + std::to_string(problem.line);
    text += ": ";
  } else if (problem.line > 0) {
    text += "line " + std::to_string(problem.line) + ": ";
  }
  if (!problem.pointer.empty()) text += problem.pointer + ": ";
  text += problem.what.text();
  if (!problem.fix.empty()) text += "; " + problem.fix.text();
  return printable(text);
}

}  // namespace grainwise
