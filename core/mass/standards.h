// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "core/units/trade.h"

/// Line-number tables of the trade association (AFFTA, formerly AFTMA: Official fly line
/// specifications, single-hand and two-handed). Reference lines, never a verdict on a two-hander.
namespace grainwise::standards {

/// Single hand: grains of the first 30 ft.
struct SingleHandRow {
  int lineNumber;
  Grains low, target, high;
};
const std::vector<SingleHandRow>& singleHand();

enum class TwoHandClass { h40ft, s55ft, m65ft, l80ft };
/// Two-handed: grains at the weight point; no tolerance is published. #6 to #12.
std::optional<Grains> twoHand(TwoHandClass which, int lineNumber);
Feet weightPoint(TwoHandClass which);

/// The trade's table of tips for short heads (common practice, no source): head under 475 gr with
/// 8 gr/ft, 475-575 with 11, 575-650 with 14, 650 and over with 17.
GrainsPerFoot tipForShortHead(Grains head);

}  // namespace grainwise::standards
