// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/model/problem.h"
#include "core/units/trade.h"

namespace grainwise {

enum class MassUnit { grains, grams };
enum class LengthUnit { feet, inches, metres, centimetres, millimetres };

/// A mass as it is typed or pasted: "34 g", "525 gr", "113,5 gr", "34". Point and comma are both
/// decimal. `bare` is the unit of a number without one; without it such a number is refused, since
/// g and gr are never guessed between. The number must be over 0 and at most 5,000 gr.
tl::expected<Grains, Problem> typedMass(std::string_view text, std::optional<MassUnit> bare = {});

/// A length: "10.5 ft", "10 ft 6 in", "9' 7 1/2\"", "3.2 m", "90 cm". Over 0 and at most 300 ft.
tl::expected<Feet, Problem> typedLength(std::string_view text,
                                        std::optional<LengthUnit> bare = {});

/// A plain number, with point or comma.
std::optional<double> typedNumber(std::string_view text);

std::optional<MassUnit> massUnitNamed(std::string_view word);
std::optional<LengthUnit> lengthUnitNamed(std::string_view word);
Grains grainsOf(double number, MassUnit unit);
Feet feetOf(double number, LengthUnit unit);

}  // namespace grainwise
