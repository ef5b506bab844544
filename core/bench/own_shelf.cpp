// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bench/own_shelf.h"

#include <algorithm>
#include <string_view>
#include <unordered_set>

#include "core/material/section_properties.h"
#include "core/model/limits.h"

namespace grainwise::ownShelf {
namespace {

constexpr const char* kOwnGroup = "Own parts";

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string lowered(std::string_view text) {
  std::string result(text);
  std::transform(result.begin(), result.end(), result.begin(), lower);
  return result;
}

template <class S>
auto find(S& shelf, const std::string& id) {
  return std::find_if(shelf.parts.begin(), shelf.parts.end(),
                      [&](const Part& part) { return part.id == id; });
}

/// The words that a search may hit.
std::string haystack(const Part& part) {
  std::string text = part.name.value_or("") + " " + part.group.value_or("") + " " +
                     fileName(part.kind) + " ";
  if (part.style) text += std::string(fileName(*part.style)) + " ";
  if (part.fly) return lowered(text + "fly " + part.fly->hook.value_or(""));
  text += shortest(part.length().value()) + " ft ";
  for (const Section& section : part.sections) {
    if (section.mass) text += shortest(section.mass->rodEnd.value()) + " gr/ft ";
    if (section.diameter) text += shortest(section.diameter->rodEnd.value()) + " in ";
    if (section.material) text += std::string(fileName(*section.material)) + " ";
    text += sinks(section, part.kind) ? "sinking " : "floating ";
  }
  return lowered(text);
}

}  // namespace

std::string freshId(std::string_view wanted, const Shelf& generic, const Shelf& own) {
  constexpr std::size_t kMost = 60;
  std::string base;
  for (const char raw : wanted) {
    const char c = lower(raw);
    const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
    if (plain && base.size() < kMost) base += c;
    if (!plain && !base.empty() && base.back() != '-') base += '-';
  }
  while (!base.empty() && base.back() == '-') base.pop_back();
  if (base.empty()) base = "own";
  std::unordered_set<std::string_view> taken;  // one look over the shelves, however many names are tried
  for (const Shelf* shelf : {&generic, &own}) {
    for (const Part& part : shelf->parts) {
      if (part.id) taken.insert(*part.id);
    }
  }
  std::string id = base;
  for (int n = 2; taken.contains(id); ++n) id = base + "-" + std::to_string(n);
  return id;
}

namespace {

void put(Shelf& own, Part kept, const Shelf& generic) {
  if (!kept.id || kept.id->empty()) {
    kept.id = freshId(kept.name.value_or(fileName(kept.kind)), generic, own);
  }
  if (!kept.group) kept.group = kOwnGroup;
  const auto there = find(own, *kept.id);
  if (there != own.parts.end()) {
    *there = std::move(kept);
  } else {
    own.parts.push_back(std::move(kept));
  }
}

}  // namespace

Shelf with(const Shelf& own, const Part& part, const Shelf& generic) {
  Shelf result = own;
  put(result, part, generic);
  return result;
}

Shelf duplicated(const Shelf& own, const std::string& id, const Shelf& generic) {
  Shelf result = own;
  const auto mine = find(own, id);
  const auto theirs = find(generic, id);
  if (mine == own.parts.end() && theirs == generic.parts.end()) return result;
  Part copy = mine != own.parts.end() ? *mine : *theirs;
  copy.id = freshId(id, generic, own);
  copy.name = copy.name.value_or(fileName(copy.kind)) + " (copy)";
  const auto at = mine != own.parts.end() ? mine - own.parts.begin() + 1
                                          : static_cast<std::ptrdiff_t>(own.parts.size());
  result.parts.insert(result.parts.begin() + at, copy);
  return result;
}

Shelf without(const Shelf& own, const std::string& id) {
  Shelf result = own;
  std::erase_if(result.parts, [&](const Part& part) { return part.id == id; });
  return result;
}

Imported imported(const Shelf& own, const Shelf& other, const Shelf& generic) {
  Imported result;
  result.shelf = own;
  for (const Part& part : other.parts) {
    const std::string id = part.id.value_or("");
    const auto mine = find(result.shelf, id);
    if (mine != result.shelf.parts.end() && *mine == part) {
      ++result.same;
      continue;
    }
    Part taken = part;
    if (mine != result.shelf.parts.end()) {
      taken.id = freshId(id, generic, result.shelf);
      ++result.renamed;
    }
    put(result.shelf, std::move(taken), generic);
    ++result.added;
  }
  return result;
}

bool matches(const Part& part, std::string_view search) {
  const std::string words = lowered(search);
  const std::string text = haystack(part);
  std::size_t at = 0;
  while (at < words.size()) {
    const std::size_t begin = words.find_first_not_of(' ', at);
    if (begin == std::string::npos) break;
    const std::size_t end = std::min(words.find(' ', begin), words.size());
    if (text.find(words.substr(begin, end - begin)) == std::string::npos) return false;
    at = end;
  }
  return true;
}

}  // namespace grainwise::ownShelf
