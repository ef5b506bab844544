// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "core/model/part.h"

namespace grainwise::ui {

/// Everything that a part of the Shelf can be found by: what it is called and what it is, together with
/// what the regions call its style.
QString searchText(const Part& part, const QString& name, const QString& figures);

/// Whether all of `words` begin somewhere in `text`: "11 3/4" finds "10 ft, 3/4 sinking, 11 gr/ft" and not
/// "0.011 in". Both decimal signs find the same. Whole words rank before beginnings: "10 ft" finds ten
/// feet before a tip of 105 grains.
enum class Found { no, begins, whole };
Found foundBy(const QString& text, const QString& words);

}  // namespace grainwise::ui
