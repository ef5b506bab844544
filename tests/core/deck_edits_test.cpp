// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <stdexcept>

#include "core/model/deck_edits.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test;

namespace {

Card cardCalled(const std::string& title) {
  Card card;
  card.title = title;
  return card;
}

Deck deckOf(const std::string& titles) {
  Deck deck;
  deck.title = "Deck";
  for (const char title : titles) deck.cards.push_back(cardCalled(std::string(1, title)));
  return deck;
}

std::string titlesOf(const Deck& deck) {
  std::string titles;
  for (const Card& card : deck.cards) titles += card.title;
  return titles;
}

}  // namespace

TEST_CASE("each gesture on a deck gives another deck and leaves the first as it was") {
  const Deck deck = deckOf("abcd");
  CHECK(titlesOf(deck_edits::inserted(deck, 0, cardCalled("x"))) == "xabcd");
  CHECK(titlesOf(deck_edits::inserted(deck, 4, cardCalled("x"))) == "abcdx");
  CHECK(titlesOf(deck_edits::removed(deck, 1)) == "acd");
  CHECK(titlesOf(deck_edits::replaced(deck, 3, cardCalled("x"))) == "abcx");
  CHECK(titlesOf(deck_edits::duplicated(deck, 2)) == "abccd");
  CHECK(titlesOf(deck_edits::moved(deck, 0, 3)) == "bcda");
  CHECK(titlesOf(deck_edits::moved(deck, 3, 1)) == "adbc");
  CHECK(deck_edits::retitled(deck, "Evening").title == "Evening");
  CHECK(deck == deckOf("abcd"));
}

TEST_CASE("a gesture on a deck can be taken back by its opposite") {
  const Deck deck = deckOf("abcde");
  for (std::size_t from = 0; from < deck.cards.size(); ++from) {
    CHECK(deck_edits::inserted(deck_edits::removed(deck, from), from, deck.cards[from]) == deck);
    CHECK(deck_edits::removed(deck_edits::duplicated(deck, from), from) == deck);
    for (std::size_t to = 0; to < deck.cards.size(); ++to) {
      const Deck moved = deck_edits::moved(deck, from, to);
      CHECK(moved.cards[to] == deck.cards[from]);
      CHECK(deck_edits::moved(moved, to, from) == deck);
    }
  }
}

TEST_CASE("a card that is not there is the program's own fault") {
  const Deck deck = deckOf("ab");
  CHECK_THROWS_AS(deck_edits::inserted(deck, 3, Card{}), std::logic_error);
  CHECK_THROWS_AS(deck_edits::removed(deck, 2), std::logic_error);
  CHECK_THROWS_AS(deck_edits::replaced(deck, 2, Card{}), std::logic_error);
  CHECK_THROWS_AS(deck_edits::duplicated(deck, 2), std::logic_error);
  CHECK_THROWS_AS(deck_edits::moved(deck, 0, 2), std::logic_error);
  CHECK_THROWS_AS(deck_edits::moved(deck, 2, 0), std::logic_error);
}

TEST_CASE("a card of a rig carries the rig itself and is called like it") {
  Rig rig = rigs::plainWinter();
  rig.name = "Evening rig";
  const Card card = deck_edits::cardOf(rig, CardShow::river);
  CHECK(card.title == "Evening rig");
  CHECK(card.show == CardShow::river);
  REQUIRE(card.rig);
  CHECK(std::get<Rig>(*card.rig) == rig);
}
