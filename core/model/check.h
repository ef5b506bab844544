// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/model/deck.h"
#include "core/model/pool.h"
#include "core/model/problem.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "core/model/spool.h"

/// Every rule of the file formats that a value can break, except the agreement of over-stated
/// sections (core/material/agreement.h). Each function returns all problems in the order of the
/// file, with the JSON pointer below `at` ("" for the document) and no file or line. Empty: sound.
namespace grainwise {

Problems check(const Rig& rig, const std::string& at = "");
Problems check(const Part& part, const std::string& at = "");
Problems check(const Shelf& shelf);
Problems check(const Pools& pools);
Problems check(const Spools& spools);
Problems check(const Deck& deck);

}  // namespace grainwise
