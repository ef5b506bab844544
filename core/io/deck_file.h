// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/model/deck.h"
#include "core/model/problem.h"

/// Decks of cards, `*.deck.json`.
namespace grainwise {

/// The deck in a text, or everything that is wrong with it; `file` is named in the problems.
Result<Deck> readDeck(std::string_view text, const std::string& file = {});
/// In the canonical layout: reading and writing it again changes nothing.
std::string writeDeck(const Deck& deck);
Result<Deck> loadDeck(const std::filesystem::path& path);

/// The rig of a card: the one that stands in it, or the one in the file that it names, looked for
/// from the deck's own folder on. A name that leads out of that folder, by a link too, is refused.
Result<Rig> rigOfCard(const CardRig& rig, const std::filesystem::path& deckFolder);

}  // namespace grainwise
