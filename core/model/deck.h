// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/model/rig.h"

namespace grainwise {

enum class CardShow { strip, profile, cast, river, compare, text };

/// A rig that stands in the deck itself, or the relative name of a rig file beside the deck.
using CardRig = std::variant<Rig, std::string>;

struct Card {
  std::string title;
  std::optional<std::string> say;
  std::optional<std::string> ask;
  std::optional<std::string> reveal;
  std::optional<std::string> notes;  ///< for the teacher's screen only
  CardShow show = CardShow::text;
  std::optional<CardRig> rig;
  std::optional<CardRig> rigB;
  Kept kept;
  bool operator==(const Card&) const = default;
};

struct Deck {
  std::string title;
  std::vector<Card> cards;
  Kept kept;
  bool operator==(const Deck&) const = default;
};

/// Whether a name leads from a folder to something in it: not empty, no absolute path, no `..`, no
/// backslash or NUL, on any system.
bool staysInFolder(const std::string& name);

const char* fileName(CardShow show);
std::optional<CardShow> cardShowFromFile(const std::string& name);

}  // namespace grainwise
