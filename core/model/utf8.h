// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace grainwise {

/// Offset of the first byte that is no part of well-formed UTF-8 (Unicode 15, table 3-7: no
/// overlong forms, no surrogates, nothing over U+10FFFF); nothing when the whole text is sound.
std::optional<std::size_t> firstBadUtf8(std::string_view text);

/// Number of code points in sound UTF-8.
std::size_t codePoints(std::string_view text);

/// The first `most` code points for a message, with "..." where something was left off and a
/// question mark for each control character.
std::string excerpt(std::string_view text, std::size_t most);

}  // namespace grainwise
