// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/model/limits.h"
#include "core/model/problem.h"

namespace grainwise::ui {

/// A sentence of core in the person's language, its numbers in the person's way of writing.
QString wordingText(const Wording& wording);

/// The unit of a limit as a word of the person's language, where it is a word.
QString limitUnit(const Limit& limit);

/// What is wrong; what would be right.
QString whatAndFix(const Problem& problem);

/// The same with the file, the line and the place in it in front, as far as they are known.
QString problemLine(const Problem& problem);

}  // namespace grainwise::ui
