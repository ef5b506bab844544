// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/deck_file.h"

#include "core/io/document.h"
#include "core/io/rig_file.h"

namespace grainwise {

Result<Deck> readDeck(std::string_view text, const std::string& file) {
  return io::readDocument<Deck>(text, file);
}

std::string writeDeck(const Deck& deck) {
  return io::writeDocument(deck);
}

Result<Deck> loadDeck(const std::filesystem::path& path) {
  return io::loadDocument<Deck>(path);
}

Result<Rig> rigOfCard(const CardRig& rig, const std::filesystem::path& deckFolder) {
  if (const auto* whole = std::get_if<Rig>(&rig)) return *whole;
  const std::string& name = std::get<std::string>(rig);
  if (!staysInFolder(name)) {
    return tl::unexpected(Problems{{name, 0, "", "this name does not stay in the deck's own folder",
                                    "name a rig file from that folder on"}});
  }
  return loadRig(deckFolder / name);
}

}  // namespace grainwise
