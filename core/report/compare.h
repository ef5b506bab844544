// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/compare/compare.h"

namespace grainwise {

/// Two rigs for a person to read: all of B against A, then each difference with what it does by itself.
/// Plain aligned text, stable and locale-free; ends with one newline.
std::string compareText(const Rig& a, const Rig& b, const Comparison& comparison);

/// The same as format `grainwise-compare`, version 1; finite numbers in full precision.
std::string compareJson(const Rig& a, const Rig& b, const Comparison& comparison);

}  // namespace grainwise
