// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/deck_file.h"

#include <algorithm>

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

namespace {

/// Whether the file is in the folder or below it, links followed.
bool liesBelow(const std::filesystem::path& file, const std::filesystem::path& folder) {
  std::error_code error;
  const auto real = std::filesystem::weakly_canonical(file, error);
  if (error) return false;
  const auto home = std::filesystem::weakly_canonical(folder.empty() ? "." : folder, error);
  if (error) return false;
  return std::mismatch(home.begin(), home.end(), real.begin(), real.end()).first == home.end();
}

}  // namespace

Result<Rig> rigOfCard(const CardRig& rig, const std::filesystem::path& deckFolder) {
  if (const auto* whole = std::get_if<Rig>(&rig)) return *whole;
  const std::string& name = std::get<std::string>(rig);
  if (!staysInFolder(name)) {
    return tl::unexpected(Problems{{name, 0, "", Problem::tr("this name does not stay in the deck's own folder"),
                                    Problem::tr("name a rig file from the deck's own folder on")}});
  }
  if (!liesBelow(deckFolder / name, deckFolder)) {
    return tl::unexpected(Problems{{name, 0, "", Problem::tr("this name is a link out of the deck's own folder"),
                                    Problem::tr("put the rig file itself into that folder")}});
  }
  return loadRig(deckFolder / name);
}

}  // namespace grainwise
