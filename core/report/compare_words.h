// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/compare/compare.h"

namespace grainwise::words {

const char* of(Effect effect);
const char* of(Fact fact);
/// "ft", "gr"; empty where the fact has no unit.
const char* unitOf(Fact fact);
const char* of(Difference::What what);
/// The words of whatever verdict it is; empty when it is none.
std::string of(const AnyVerdict& verdict);

/// "short head 525 > short head 650", "only in B: 10 ft sink tip", "the water".
std::string titleOf(const Difference& difference, const Rig& a, const Rig& b);
/// "length 23.0 > 26.0 ft, mass 525 > 650 gr".
std::string factsOf(const Difference& difference);
/// "23.0 > 26.0 ft" of one fact.
std::string figuresOf(const FactPair& fact);
/// A figure with its unit: "24.5 to 11.0 gr/ft (0.62)", "21 %", "3.4 ft".
std::string figureOf(const Consequence& consequence, bool ofB);
/// "1.2 ft deeper (0.8 to 1.7)", "not more than is known"; empty where the two figures say it all.
std::string differenceOf(const Consequence& consequence);

}  // namespace grainwise::words
