// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace grainwise {

/// What a file said beyond what the model understands, kept so that it is written back unchanged.
struct Kept {
  struct Entry {
    std::string key;   ///< key within its object; "gr_per_ft/0" for the first number of a pair
    std::string text;  ///< the JSON text as it stood (of an unknown value), or a number's digits
    bool operator==(const Entry&) const = default;
  };
  std::vector<Entry> unknown;  ///< members that this version does not know, in file order
  std::vector<Entry> digits;   ///< digits as typed, only where they differ from the shortest form
  bool operator==(const Kept&) const = default;
};

/// The digits that stand for `key` as they were typed; empty when the shortest form is meant.
std::string digitsOf(const Kept& kept, const std::string& key);

/// Remembers how the number of `key` was typed, or forgets it when `digits` is empty or the shortest
/// form of `value` anyway.
void keepDigits(Kept& kept, const std::string& key, double value, const std::string& digits);

}  // namespace grainwise
