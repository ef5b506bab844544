// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/text/quantities.h"

namespace grainwise::ui {

/// A unit that can be read or typed: shown = file value * perFileUnit + offset.
struct Unit {
  const char* name;  ///< as shown and typed, lower case but for the temperatures' letters
  Measure measure;
  double perFileUnit;
  double offset = 0;
  [[nodiscard]] bool isFileUnit() const { return perFileUnit == 1 && offset == 0; }
};

/// The unit that a person with these preferences reads `measure` in; nothing for a bare number.
const Unit* shownUnit(Measure measure, DisplayUnits units);
/// The unit of that measure which is typed as `name`, in any of its usual spellings.
const Unit* typedUnit(Measure measure, const QString& name);

}  // namespace grainwise::ui
