// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace grainwise {

/// A number with `decimals` places, a decimal point in any locale, and never "-0".
std::string fixedText(double value, int decimals);

/// Rounded to what is known: whole grains from 100 on, tenths below; lengths to a tenth of a foot
/// or as typed when finer; ratios to
/// hundredths, from 10 on to tenths.
std::string grainsText(double grains);
std::string feetText(double feet);
std::string roundFeetText(double feet);  ///< of what was computed: always to a tenth
std::string ratioText(double ratio);
std::string percentText(double share);

/// Code points in a UTF-8 text: its width in a plain table.
std::size_t widthOf(const std::string& text);

/// Rows of cells as aligned columns: `align` has a letter a column, 'l' or 'r'. No trailing blanks.
std::string alignedTable(const std::vector<std::vector<std::string>>& rows,
                         const std::string& align);

/// A name on one line: control characters become blanks.
std::string onOneLine(std::string text);

/// Every line of the block two blanks to the right; the block ends with a line feed.
std::string indented(const std::string& block);

}  // namespace grainwise
