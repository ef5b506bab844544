// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/check_file.h"

#include "core/io/deck_file.h"
#include "core/io/document.h"

namespace grainwise {
namespace {

template <class T>
Problems problemsAs(const JsonText& text, const std::string& file) {
  const auto value = io::valueOf<T>(text, file);
  return value ? Problems{} : value.error();
}

/// The files that the cards of a sound deck name.
Problems namedRigs(const JsonText& text, const std::filesystem::path& path) {
  const auto deck = io::valueOf<Deck>(text, path.string());
  if (!deck) return deck.error();
  Problems all;
  const auto look = [&](const std::optional<CardRig>& rig, const std::string& pointer) {
    if (!rig || std::holds_alternative<Rig>(*rig)) return;
    const auto found = rigOfCard(*rig, path.parent_path());
    if (found) return;
    all.push_back({path.string(), text.nearest(pointer).line, pointer,
                   Problem::tr("the rig named here is not sound: %1").arg(describe(found.error().front())),
                   Problem::tr("name a rig file from the deck's own folder on")});
  };
  for (std::size_t i = 0; i < deck->cards.size(); ++i) {
    const std::string at = "/cards/" + std::to_string(i);
    look(deck->cards[i].rig, at + "/rig");
    look(deck->cards[i].rigB, at + "/rig_b");
  }
  return all;
}

}  // namespace

Problems checkFile(const std::filesystem::path& path) {
  const auto source = io::loadText(path);
  if (!source) return source.error();
  const std::string file = path.string();
  const JsonText text = parseJson(*source);
  if (text.broken) return io::inFileOrder(text, text.finds, {}, file);
  const JsonValue* format = text.root.find("format");
  const std::string_view name = format && format->kind == JsonKind::text ? format->text : "";
  if (name == FormatOf<Rig>::kName) return problemsAs<Rig>(text, file);
  if (name == FormatOf<Shelf>::kName) return problemsAs<Shelf>(text, file);
  if (name == FormatOf<Pools>::kName) return problemsAs<Pools>(text, file);
  if (name == FormatOf<Spools>::kName) return problemsAs<Spools>(text, file);
  if (name == FormatOf<Deck>::kName) return namedRigs(text, path);
  const JsonValue& at = format ? *format : text.root;
  Wording what = Problem::tr("%1 is missing").arg("format");
  if (format) {
    what = format->kind == JsonKind::text ? Problem::tr("the format \"%1\" is not known").arg(excerpt(name, 40))
                                          : Problem::tr("%1 is %2").arg("format").arg(wordFor(format->kind));
  }
  const std::string known = std::string(FormatOf<Rig>::kName) + ", " + FormatOf<Shelf>::kName +
                            ", " + FormatOf<Pools>::kName + ", " + FormatOf<Spools>::kName +
                            ", " + FormatOf<Deck>::kName;
  auto finds = text.finds;
  finds.push_back({{"", at.line, "/format", what, Problem::tr("give one of %1").arg(known)}, at.begin});
  return io::inFileOrder(text, finds, {}, file);
}

}  // namespace grainwise
