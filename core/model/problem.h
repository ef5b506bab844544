// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/model/wording.h"

namespace grainwise {

/// One thing that is wrong with something from outside (a file, a typed number): where it is, what
/// is wrong, and what would be right. `line` is 1-based, 0 where there is no line; `pointer` is an
/// RFC 6901 JSON pointer ("" is the whole document).
struct Problem {
  std::string file;
  int line = 0;
  std::string pointer;
  Wording what;
  Wording fix;
  bool operator==(const Problem&) const = default;

  /// A sentence of a problem, for the window's translators as well.
  static Wording tr(const char* form) { return Wording::sentence(form); }
};

/// Everything that is wrong at once, in the order of the file.
using Problems = std::vector<Problem>;

template <class T>
using Result = tl::expected<T, Problems>;

/// What is wrong; what would be right.
Wording withFix(const Problem& problem);

/// The same behind the file, the line and the place in it. Parts that are not known (no file, no line,
/// the whole document) are left out with their colon.
Wording inPlace(const Problem& problem);

/// `file:line: pointer: what; fix` - the form in which `grainwise check` prints a problem.
std::string describe(const Problem& problem);

}  // namespace grainwise
