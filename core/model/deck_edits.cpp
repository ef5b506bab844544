// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/deck_edits.h"

#include <stdexcept>

namespace grainwise::deck_edits {
namespace {

void require(bool holds, const char* what) {
  if (!holds) throw std::logic_error(what);
}

auto at(Deck& deck, std::size_t index) {
  return deck.cards.begin() + static_cast<std::ptrdiff_t>(index);
}

}  // namespace

Deck inserted(const Deck& deck, std::size_t index, const Card& card) {
  require(index <= deck.cards.size(), "inserted: no such place");
  Deck result = deck;
  result.cards.insert(at(result, index), card);
  return result;
}

Deck removed(const Deck& deck, std::size_t index) {
  require(index < deck.cards.size(), "removed: no such card");
  Deck result = deck;
  result.cards.erase(at(result, index));
  return result;
}

Deck replaced(const Deck& deck, std::size_t index, const Card& card) {
  require(index < deck.cards.size(), "replaced: no such card");
  Deck result = deck;
  result.cards[index] = card;
  return result;
}

Deck duplicated(const Deck& deck, std::size_t index) {
  require(index < deck.cards.size(), "duplicated: no such card");
  return inserted(deck, index + 1, deck.cards[index]);
}

Deck moved(const Deck& deck, std::size_t from, std::size_t to) {
  require(from < deck.cards.size() && to < deck.cards.size(), "moved: no such card");
  return inserted(removed(deck, from), to, deck.cards[from]);
}

Deck retitled(const Deck& deck, const std::string& title) {
  Deck result = deck;
  result.title = title;
  return result;
}

Card cardOf(const Rig& rig, CardShow show) {
  Card card;
  card.title = rig.name;
  card.show = show;
  card.rig = rig;
  return card;
}

}  // namespace grainwise::deck_edits
