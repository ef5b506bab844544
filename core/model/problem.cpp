// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/problem.h"

#include "core/model/utf8.h"

namespace grainwise {

Wording withFix(const Problem& problem) {
  return problem.fix.empty() ? problem.what : Problem::tr("%1; %2").arg(problem.what).arg(problem.fix);
}

Wording inPlace(const Problem& problem) {
  const auto behind = [](const Wording& place, const Wording& words) {
    return Problem::tr("%1: %2").arg(place).arg(words);
  };
  Wording words = withFix(problem);
  if (!problem.pointer.empty()) words = behind(problem.pointer, words);
  const std::string line = std::to_string(problem.line);
  if (!problem.file.empty()) return behind(problem.line > 0 ? problem.file + ":" + line : problem.file, words);
  return problem.line > 0 ? behind(Problem::tr("line %1").arg(line), words) : words;
}

std::string describe(const Problem& problem) { return printable(inPlace(problem).text()); }

}  // namespace grainwise
