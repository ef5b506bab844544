// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <functional>
#include <regex>
#include <set>

#include "core/io/deck_file.h"
#include "tests/support/shipped_files.h"

using namespace grainwise;
namespace fs = std::filesystem;

namespace {

const fs::path kFolder = fs::path(GRAINWISE_SOURCE_DIR) / "sample-rigs";
const std::string kEnding = ".deck.json";
constexpr const char* kLessons[] = {"why-that-tip", "how-deep-was-i"};
constexpr const char* kLanguages[] = {"de", "nb", "es"};
// Lines of a projector: what the English decks keep to, in characters.
constexpr std::size_t kSay = 90;
constexpr std::size_t kReveal = 180;

Deck deck(const std::string& name) {
  const auto read = loadDeck(kFolder / (name + kEnding));
  if (!read) FAIL(describe(read.error().front()));
  return *read;
}

/// Every text that is there to be read by a person, whether it is there or not, and where.
using Words = std::function<void(const std::string& where, std::optional<std::string> text)>;
void eachText(const Deck& deck, const Words& say) {
  say("title", deck.title);
  for (std::size_t i = 0; i < deck.cards.size(); ++i) {
    const Card& c = deck.cards[i];
    const std::string at = "card " + std::to_string(i) + " ";
    say(at + "title", c.title);
    say(at + "say", c.say);
    say(at + "ask", c.ask);
    say(at + "reveal", c.reveal);
    say(at + "notes", c.notes);
    for (const auto* rig : {&c.rig, &c.rigB}) {
      const Rig* own = *rig ? std::get_if<Rig>(&**rig) : nullptr;
      say(at + "rig", own != nullptr ? std::optional(own->name) : std::nullopt);
    }
  }
}

std::vector<std::pair<std::string, std::optional<std::string>>> textsOf(const Deck& deck) {
  std::vector<std::pair<std::string, std::optional<std::string>>> all;
  eachText(deck, [&](const std::string& where, std::optional<std::string> text) {
    all.emplace_back(where, std::move(text));
  });
  return all;
}

Deck withoutWords(Deck deck) {
  deck.title.clear();
  for (Card& c : deck.cards) {
    c.title.clear();
    for (auto* text : {&c.say, &c.ask, &c.reveal, &c.notes}) text->reset();
    for (auto* rig : {&c.rig, &c.rigB}) {
      if (Rig* own = *rig ? std::get_if<Rig>(&**rig) : nullptr) own->name.clear();
    }
  }
  return deck;
}

/// The numbers of a text in figures, each as it stands but with a point, in order of their digits.
std::vector<std::string> numbersIn(const std::string& text, const std::string& mark) {
  const std::regex number("[0-9]+(" + mark + "[0-9]+)?");
  std::vector<std::string> found;
  for (std::sregex_iterator at(text.begin(), text.end(), number), end; at != end; ++at) {
    std::string one = at->str();
    std::replace(one.begin(), one.end(), ',', '.');
    found.push_back(one);
  }
  std::sort(found.begin(), found.end());
  return found;
}

bool hasLetter(const std::string& text) {
  return std::any_of(text.begin(), text.end(), [](unsigned char c) { return std::isalpha(c) != 0; });
}

std::size_t characters(const std::string& utf8) {
  return std::size_t(std::count_if(utf8.begin(), utf8.end(), [](char c) { return (c & 0xC0) != 0x80; }));
}

bool holds(const std::string& text, const std::string& words) { return text.find(words) != std::string::npos; }

}  // namespace

TEST_CASE("Each lesson lies there in each language beside the English one, and nothing else does") {
  std::set<std::string> there, wanted;
  for (const auto& entry : fs::directory_iterator(kFolder)) {
    const std::string name = entry.path().filename().string();
    if (holds(name, kEnding)) there.insert(name);
  }
  for (const std::string lesson : kLessons) {
    wanted.insert(lesson + kEnding);
    for (const std::string language : kLanguages) wanted.insert(lesson + "." + language + kEnding);
  }
  CHECK(there == wanted);
}

TEST_CASE("A translated lesson is the English one in all but its words") {
  for (const std::string lesson : kLessons) {
    const Deck english = withoutWords(deck(lesson));
    for (const std::string language : kLanguages) {
      INFO(lesson << " " << language);
      const Deck other = withoutWords(deck(lesson + "." + language));
      REQUIRE(other.cards.size() == english.cards.size());
      for (std::size_t i = 0; i < english.cards.size(); ++i) {
        INFO("card " << i);
        CHECK(other.cards[i] == english.cards[i]);
      }
      CHECK(other == english);
    }
  }
}

TEST_CASE("A translated lesson says all that the English one says, in other words and with the same figures") {
  int figures = 0, pools = 0;
  for (const std::string lesson : kLessons) {
    const auto english = textsOf(deck(lesson));
    for (const std::string language : kLanguages) {
      const auto other = textsOf(deck(lesson + "." + language));
      REQUIRE(other.size() == english.size());
      for (std::size_t i = 0; i < english.size(); ++i) {
        INFO(lesson << " " << language << ", " << english[i].first);
        REQUIRE(other[i].second.has_value() == english[i].second.has_value());
        if (!english[i].second) continue;
        const std::string &was = *english[i].second, &is = *other[i].second;
        INFO(was << "\n" << is);
        CHECK(is.empty() == was.empty());
        if (hasLetter(was)) CHECK(is != was);
        CHECK((was.back() == '?') == (is.back() == '?'));
        // A decimal point would be read as two numbers.
        CHECK(numbersIn(is, ",") == numbersIn(was, "\\."));
        figures += int(numbersIn(was, "\\.").size());
        for (const Pool& pool : test::corrow().pools) {
          CHECK(holds(is, pool.name) == holds(was, pool.name));
          pools += holds(was, pool.name) ? 1 : 0;
        }
      }
    }
  }
  CHECK(figures >= 250);  // or they would all be in nothing
  CHECK(pools >= 40);
}

TEST_CASE("A translated lesson has no longer lines than a projector takes") {
  for (const std::string lesson : kLessons) {
    for (const std::string language : kLanguages) {
      const Deck d = deck(lesson + "." + language);
      for (std::size_t i = 1; i < d.cards.size(); ++i) {
        INFO(lesson << " " << language << ": " << d.cards[i].title);
        CHECK(characters(d.cards[i].say.value()) <= kSay);
        CHECK(characters(d.cards[i].reveal.value()) <= kReveal);
      }
    }
  }
}

TEST_CASE("Each lesson names its dangers in its own language before anything else, and where it tells a depth") {
  struct Row {
    const char *language, *lines, *storm, *alone, *wading;
  };
  const Row rows[] = {{"de", "Stromleitungen", "Gewitter", "nie allein", "kein Maß fürs Waten"},
                      {"nb", "kraftlinjer", "tordenvær", "aldri alene", "ingen rettesnor for vading"},
                      {"es", "tendidos eléctricos", "tormenta", "nunca solos", "de guía para vadear"}};
  for (const Row& row : rows) {
    INFO(row.language);
    for (const std::string lesson : kLessons) {
      const std::string first = deck(lesson + "." + row.language).cards.front().say.value();
      CHECK(holds(first, row.lines));
      CHECK(holds(first, row.storm));
    }
    const std::string wading = deck(std::string(kLessons[1]) + "." + row.language).cards.front().say.value();
    CHECK(holds(wading, row.alone));
    CHECK(holds(wading, row.wading));
    const Deck tips = deck(std::string(kLessons[0]) + "." + row.language);
    CHECK(std::any_of(tips.cards.begin(), tips.cards.end(),
                      [&](const Card& c) { return c.reveal && holds(*c.reveal, row.wading); }));
  }
}
