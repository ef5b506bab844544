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

enum class LineEnds { replace, keep };

/// The text as it may stand on a terminal: a question mark for each control character (C0, C1, DEL,
/// line and paragraph separators, direction marks and overrides) and for each byte that is no UTF-8.
std::string printable(std::string_view text, LineEnds lineEnds = LineEnds::replace);

/// The first `most` code points for a message, printable, with "..." where something was left off.
std::string excerpt(std::string_view text, std::size_t most);

}  // namespace grainwise
