// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/model/part.h"

#include <array>
#include <utility>

#include "core/model/deck.h"

namespace grainwise {
namespace {

template <class E, std::size_t N>
using Names = std::array<std::pair<E, const char*>, N>;

constexpr Names<PartKind, 6> kKinds{{{PartKind::runningLine, "running-line"},
                                     {PartKind::head, "head"},
                                     {PartKind::tip, "tip"},
                                     {PartKind::leader, "leader"},
                                     {PartKind::tippet, "tippet"},
                                     {PartKind::fly, "fly"}}};
constexpr Names<Style, 10> kStyles{{{Style::shortHead, "short"},
                                    {Style::fine, "fine"},
                                    {Style::longBelly, "long-belly"},
                                    {Style::singleHand, "single-hand"},
                                    {Style::extension, "extension"},
                                    {Style::level, "level"},
                                    {Style::floatSink, "float-sink"},
                                    {Style::tapered, "tapered"},
                                    {Style::plain, "plain"},
                                    {Style::coated, "coated"}}};
constexpr Names<Material, 2> kMaterials{
    {{Material::nylon, "nylon"}, {Material::fluorocarbon, "fluorocarbon"}}};
constexpr Names<CardShow, 9> kShows{{{CardShow::strip, "strip"},
                                     {CardShow::profile, "profile"},
                                     {CardShow::cast, "cast"},
                                     {CardShow::river, "river"},
                                     {CardShow::compare, "compare"},
                                     {CardShow::flies, "flies"},
                                     {CardShow::pools, "pools"},
                                     {CardShow::tips, "tips"},
                                     {CardShow::text, "text"}}};
constexpr Names<CardFigure, 13> kFigures{{{CardFigure::none, "none"},
                                          {CardFigure::fly, "fly"},
                                          {CardFigure::foot, "foot"},
                                          {CardFigure::joint, "joint"},
                                          {CardFigure::tipShare, "tip-share"},
                                          {CardFigure::flyAgainstTip, "fly-against-tip"},
                                          {CardFigure::head, "head"},
                                          {CardFigure::line, "line"},
                                          {CardFigure::range, "range"},
                                          {CardFigure::drift, "drift"},
                                          {CardFigure::deepest, "deepest"},
                                          {CardFigure::across, "across"},
                                          {CardFigure::underWater, "under-water"}}};

template <class E, std::size_t N>
const char* nameIn(const Names<E, N>& names, E value) {
  for (const auto& [e, name] : names) {
    if (e == value) return name;
  }
  return "";
}

template <class E, std::size_t N>
std::optional<E> findIn(const Names<E, N>& names, const std::string& wanted) {
  for (const auto& [e, name] : names) {
    if (wanted == name) return e;
  }
  return std::nullopt;
}

}  // namespace

const char* fileName(PartKind kind) { return nameIn(kKinds, kind); }
const char* fileName(Style style) { return nameIn(kStyles, style); }
const char* fileName(Material material) { return nameIn(kMaterials, material); }
const char* fileName(CardShow show) { return nameIn(kShows, show); }
const char* fileName(CardFigure figure) { return nameIn(kFigures, figure); }
std::optional<PartKind> partKindFromFile(const std::string& name) { return findIn(kKinds, name); }
std::optional<Style> styleFromFile(const std::string& name) { return findIn(kStyles, name); }
std::optional<Material> materialFromFile(const std::string& name) {
  return findIn(kMaterials, name);
}
std::optional<CardShow> cardShowFromFile(const std::string& name) { return findIn(kShows, name); }
std::optional<CardFigure> cardFigureFromFile(const std::string& name) {
  return findIn(kFigures, name);
}

const std::vector<Style>& stylesOf(PartKind kind) {
  static const std::vector<Style> heads{Style::shortHead, Style::fine, Style::longBelly,
                                        Style::singleHand, Style::extension};
  static const std::vector<Style> tips{Style::level, Style::floatSink, Style::tapered};
  static const std::vector<Style> leaders{Style::plain, Style::coated};
  static const std::vector<Style> none;
  switch (kind) {
    case PartKind::head:
      return heads;
    case PartKind::tip:
      return tips;
    case PartKind::leader:
      return leaders;
    default:
      return none;
  }
}

Feet Part::length() const {
  Feet sum;
  for (const Section& s : sections) sum += s.length;
  return sum;
}

Grains Part::loopMass() const {
  if (!loops) return Grains(0);
  return loops->rodEnd.value_or(Grains(0)) + loops->flyEnd.value_or(Grains(0));
}

}  // namespace grainwise
