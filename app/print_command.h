// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

namespace grainwise {

/// Puts a rig or a deck on paper (ui/print).
int printCommand(const Words& words);

}  // namespace grainwise
