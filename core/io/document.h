// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/io/object_reader.h"
#include "core/io/object_writer.h"

/// What all five file formats share: reading with every check, writing, the file around the text.
/// Used by the readers and writers of this room only.
namespace grainwise::io {

/// The text of a file, or why there is none (missing, a folder, unreadable, too large).
Result<std::string> loadText(const std::filesystem::path& path);

/// The agreement of over-stated sections, for the sections in which nothing else is wrong.
Problems agreement(const Part& part, const std::string& at, const Problems& known,
                   const Unread& unread);
Problems agreement(const Rig& rig, const std::string& at, const Problems& known,
                   const Unread& unread);
Problems agreement(const Shelf& shelf, const Problems& known, const Unread& unread);
Problems agreement(const Deck& deck, const Problems& known, const Unread& unread);
inline Problems agreement(const Pools&, const Problems&, const Unread&) {
  return {};
}
inline Problems agreement(const Spools&, const Problems&, const Unread&) {
  return {};
}
inline Problems agreement(const Rig& rig, const Problems& known, const Unread& unread) {
  return agreement(rig, "", known, unread);
}
inline Problems agreement(const Part& part, const Problems& known, const Unread& unread) {
  return agreement(part, "", known, unread);
}

/// All finds in the order of the file, with lines and file name; the first kMostFinds and a word
/// that there are more where there are.
Problems inFileOrder(const JsonText& text, std::vector<JsonText::Find> finds, const Problems& rules,
                     const std::string& file);

inline Problems rulesOf(const Rig& v, const Unread& unread) {
  return check(v, "", unread);
}
inline Problems rulesOf(const Part& v, const Unread& unread) {
  return check(v, "", unread);
}
inline Problems rulesOf(const Shelf& v, const Unread& unread) {
  return check(v, unread);
}
inline Problems rulesOf(const Pools& v, const Unread& unread) {
  return check(v, unread);
}
inline Problems rulesOf(const Spools& v, const Unread& unread) {
  return check(v, unread);
}
inline Problems rulesOf(const Deck& v, const Unread& unread) {
  return check(v, unread);
}

template <class T>
inline constexpr bool kHasHeading = !std::is_same_v<T, Part>;

/// The value in a text that was parsed already. `borne`: breaks of a rule that are let pass.
template <class T>
Result<T> valueOf(const JsonText& text, const std::string& file, bool (*borne)(const T&, const Problem&) = nullptr) {
  if (text.broken) return tl::unexpected(inFileOrder(text, text.finds, {}, file));
  Reading reading{text, text.finds, {}};
  T value;
  ObjectReader reader(reading, text.root, "", value.kept);
  if constexpr (kHasHeading<T>) {
    if (!reader.heading(FormatOf<T>::kName, FormatOf<T>::kWord)) {
      return tl::unexpected(inFileOrder(text, reading.finds, {}, file));
    }
  }
  describeFields(reader, value);
  reader.keepUnknown();
  if (reading.full()) return tl::unexpected(inFileOrder(text, reading.finds, {}, file));
  Problems rules = rulesOf(value, reading.unread);
  for (Problem& p : agreement(value, rules, reading.unread)) rules.push_back(std::move(p));
  if (borne) std::erase_if(rules, [&](const Problem& p) { return borne(value, p); });
  if (reading.finds.empty() && rules.empty()) return value;
  return tl::unexpected(inFileOrder(text, std::move(reading.finds), rules, file));
}

template <class T>
Result<T> readDocument(std::string_view source, const std::string& file) {
  return valueOf<T>(parseJson(source), file);
}

template <class T>
Result<T> loadDocument(const std::filesystem::path& path) {
  const auto text = loadText(path);
  if (!text) return tl::unexpected(text.error());
  return readDocument<T>(*text, path.string());
}

template <class T>
std::string writeDocument(const T& value) {
  std::string out;
  ObjectWriter writer(out, 0, Layout::block, value.kept);
  if constexpr (kHasHeading<T>) writer.heading(FormatOf<T>::kName);
  describeFields(writer, value);
  writer.close();
  return out + "\n";
}

}  // namespace grainwise::io
