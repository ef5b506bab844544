// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

#include "core/model/deck.h"

/// Every gesture on a deck as a pure function: the deck before in, the deck after out. An index that
/// does not exist is our bug (std::logic_error).
namespace grainwise::deck_edits {

/// `card` put before index `at`, which may be the number of cards.
Deck inserted(const Deck& deck, std::size_t at, const Card& card);
Deck removed(const Deck& deck, std::size_t index);
Deck replaced(const Deck& deck, std::size_t index, const Card& card);
/// The card once more, right behind itself.
Deck duplicated(const Deck& deck, std::size_t index);
/// The card at `from` taken out and put where it then has index `to`.
Deck moved(const Deck& deck, std::size_t from, std::size_t to);
Deck retitled(const Deck& deck, const std::string& title);

/// A card of a rig as it stands on the bench, the rig itself in it.
Card cardOf(const Rig& rig, CardShow show);

}  // namespace grainwise::deck_edits
