// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <string>
#include <unordered_map>

#include "core/model/fields.h"
#include "core/model/problem.h"

/// Puts problems in the order in which a file holds what they blame. Used by check.cpp only.
namespace grainwise {

/// Pointer of one entry of a list.
inline std::string item(const std::string& list, std::size_t index) {
  return list + "/" + std::to_string(index);
}

/// Numbers every member in the order of the file.
struct FileOrder {
  std::unordered_map<std::string, std::size_t>& places;
  std::string at;

  void place(const std::string& pointer) { places.emplace(pointer, places.size()); }
  void member(const char* key) { place(at + "/" + key); }
  void pair(const char* key) {
    member(key);
    place(at + "/" + key + "/0");
    place(at + "/" + key + "/1");
  }
  template <class T>
  void value(const T& object, const std::string& pointer) {
    place(pointer);
    FileOrder below{places, pointer};
    describeFields(below, object);
  }
  template <class Q>
  void number(const char* key, const Q&, const Limit&, bool = true) {
    member(key);
  }
  void whole(const char* key, const std::optional<int>&, const Limit&) { member(key); }
  template <class Q>
  void along(const char* key, const Q&, const Limit&) {
    pair(key);
  }
  template <class R>
  void range(const char* key, const R&, const Limit&) {
    pair(key);
  }
  template <class S>
  void text(const char* key, const S&) {
    member(key);
  }
  void flag(const char* key, const std::optional<bool>&) { member(key); }
  template <class E, class Allowed>
  void choice(const char* key, const E&, const Allowed&) {
    member(key);
  }
  template <class T>
  void object(const char* key, const std::optional<T>& object, Layout) {
    if (object) value(*object, at + "/" + key);
  }
  template <class T>
  void list(const char* key, const std::vector<T>& values, Layout, bool) {
    member(key);
    for (std::size_t i = 0; i < values.size(); ++i) value(values[i], item(at + "/" + key, i));
  }
  void cardRig(const char* key, const std::optional<CardRig>& rig) {
    member(key);
    if (const auto* whole = rig ? std::get_if<Rig>(&*rig) : nullptr) value(*whole, at + "/" + key);
  }
  void fly(const Part& part) {
    const Fly fly = part.fly.value_or(Fly{});
    describeFly(*this, fly, true);
  }
};

template <class T>
void sortInFileOrder(Problems& problems, const T& value, const std::string& at) {
  std::unordered_map<std::string, std::size_t> places;
  FileOrder{places, at}.value(value, at);
  const auto placeOf = [&](const Problem& p) {
    const auto there = places.find(p.pointer);
    return there == places.end() ? places.size() : there->second;
  };
  std::stable_sort(problems.begin(), problems.end(),
                   [&](const Problem& a, const Problem& b) { return placeOf(a) < placeOf(b); });
}

}  // namespace grainwise
