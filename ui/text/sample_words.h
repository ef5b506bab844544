// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "core/model/pool.h"
#include "core/model/rig.h"

namespace grainwise::ui {

/// Whether a sample is called so, or says so in its notes: "Plain winter".
bool isSampleText(const std::string& text);

/// A carried sample as a person gets it, an untitled copy: its name and notes in the window's language. What
/// is not a sample's stays as it is, and so do the files.
Rig spokenSample(Rig rig);
Pools spokenSample(Pools river);

}  // namespace grainwise::ui
