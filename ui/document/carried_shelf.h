// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/shelf.h"

namespace grainwise::ui {

/// The generic shelf that the program carries, read once; empty where it carries none.
const SharedShelf& carriedShelf();

}  // namespace grainwise::ui
