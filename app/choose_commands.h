// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/command_line.h"

/// The commands that choose, pack and mend (core/choose).
namespace grainwise {

int chooseCommand(const Words& words);
int walletCommand(const Words& words);
int fixCommand(const Words& words);

}  // namespace grainwise
