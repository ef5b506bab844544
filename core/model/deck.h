// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/model/pool.h"
#include "core/model/rig.h"

namespace grainwise {

enum class CardShow {
  strip,
  profile,
  cast,
  river,
  compare,
  flies,  ///< flies side by side, to one scale
  pools,  ///< one rig in several pools
  tips,   ///< several tips on one rig, in one pool or more
  text
};

/// The reading whose figures stand large with a card's answer.
enum class CardFigure {
  none,
  fly,            ///< the wet fly's mass
  foot,           ///< the heaviest foot of the line
  joint,          ///< grains a foot either side of the worst joint
  tipShare,       ///< of the head
  flyAgainstTip,  ///< how many times its weight the tip is
  head,           ///< in the rod's window
  line,           ///< rods of working line
  range,          ///< of the depth, four swings in five
  drift,          ///< how deep the fly is when the line comes tight
  deepest,        ///< of one swing
  across,         ///< how deep the fly is on its way across
  underWater      ///< feet of line under water on the hang-down
};

/// A rig that stands in the deck itself, or the relative name of a rig file beside the deck.
using CardRig = std::variant<Rig, std::string>;

/// Flies or tips, and pools, side by side on one card.
inline constexpr std::size_t kMostOnCard = 12;

struct Card {
  std::string title;
  std::optional<std::string> say;
  std::optional<std::string> ask;
  std::optional<std::string> reveal;
  std::optional<std::string> notes;  ///< for the teacher's screen only
  CardShow show = CardShow::text;
  std::optional<CardFigure> figure;  ///< none: the one in which the rigs differ
  std::optional<CardRig> rig;
  std::optional<CardRig> rigB;
  std::vector<Part> parts;  ///< the flies or the tips of such a card
  std::vector<Pool> pools;  ///< those of such a card
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
const char* fileName(CardFigure figure);
std::optional<CardFigure> cardFigureFromFile(const std::string& name);

}  // namespace grainwise
