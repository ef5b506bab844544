// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/model/deck.h"
#include "core/model/pool.h"
#include "core/model/rig.h"
#include "core/model/shelf.h"
#include "ui/print/page.h"

namespace grainwise::ui {

/// What the command line asks to have on paper.
struct PaperRun {
  std::optional<Rig> rig;    ///< a handout of it,
  std::optional<Deck> deck;  ///< or a deck, with the folder that its rigs lie in
  std::string folder;
  std::vector<Pool> pools;
  Shelf shelf;  ///< a handout's wallet is packed from it
  bool fourAPage = false;
  Paper paper = Paper::a4;
  std::string out;
};

/// What came of it: what went wrong (empty when nothing did), and a line for each card that lacks something
/// and says so on its page.
struct PaperOutcome {
  std::string problem;
  std::vector<std::string> missing;
};

/// Writes the files without a display: starts the toolkit on a platform that draws on no screen, so it is
/// to be called once, from a program that has no window.
PaperOutcome runPaper(const PaperRun& run);

}  // namespace grainwise::ui
