// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <algorithm>
#include <set>
#include <string>

#include "core/io/json_text.h"
#include "core/model/fields.h"

/// Writes one value as a JSON object, member by member as fields.h describes them: two spaces a
/// level, short objects and pairs of numbers in one line. Used by the documents of this room only.
namespace grainwise {

class ObjectWriter {
 public:
  ObjectWriter(std::string& out, int level, Layout layout, const Kept& kept)
      : m_out(out), m_level(level), m_layout(layout), m_kept(kept) {
    m_out += "{";
  }

  template <class Q>
  void number(const char* key, const Q& value, const Limit&, bool = true) {
    member(key);
    m_out += typed(key, bare(value));
  }
  template <class Q>
  void number(const char* key, const std::optional<Q>& value, const Limit& limit) {
    if (value) {
      number(key, *value, limit);
    } else {
      m_known.insert(key);
    }
  }
  void whole(const char* key, const std::optional<int>& value, const Limit&) {
    if (present(key, value)) m_out += typed(key, *value);
  }
  template <class Q>
  void along(const char* key, const std::optional<Along<Q>>& value, const Limit&) {
    if (!present(key, value)) return;
    if (value->pair) {
      pair(key, bare(value->rodEnd), bare(value->flyEnd));
    } else {
      m_out += typed(key, bare(value->rodEnd));
    }
  }
  template <class R>
  void range(const char* key, const std::optional<R>& value, const Limit&) {
    if (present(key, value)) pair(key, bare(value->low), bare(value->high));
  }
  void text(const char* key, const std::string& value) {
    member(key);
    m_out += jsonQuoted(value);
  }
  void text(const char* key, const std::optional<std::string>& value) {
    if (present(key, value)) m_out += jsonQuoted(*value);
  }
  void flag(const char* key, const std::optional<bool>& value) {
    if (present(key, value)) m_out += *value ? "true" : "false";
  }
  template <class E>
  void choice(const char* key, const E& value, const std::vector<E>&) {
    text(key, std::string(fileName(value)));
  }
  template <class E>
  void choice(const char* key, const std::optional<E>& value, const std::vector<E>&) {
    if (present(key, value)) m_out += jsonQuoted(fileName(*value));
  }
  template <class T>
  void object(const char* key, const std::optional<T>& value, Layout layout) {
    if (present(key, value)) below(*value, m_level + 1, layout);
  }
  template <class T>
  void list(const char* key, const std::vector<T>& values, Layout layout, bool required) {
    if (values.empty() && !required) {
      m_known.insert(key);
      return;
    }
    member(key);
    if (values.empty()) {
      m_out += "[]";
      return;
    }
    m_out += "[";
    for (std::size_t i = 0; i < values.size(); ++i) {
      if (i > 0) m_out += ",";
      newLine(m_level + 2);
      below(values[i], m_level + 2, layout);
    }
    newLine(m_level + 1);
    m_out += "]";
  }
  void cardRig(const char* key, const std::optional<CardRig>& rig) {
    if (!present(key, rig)) return;
    if (const auto* name = std::get_if<std::string>(&*rig)) {
      m_out += jsonQuoted(*name);
      return;
    }
    const Rig& whole = std::get<Rig>(*rig);
    ObjectWriter writer(m_out, m_level + 1, Layout::block, whole.kept);
    writer.unknown("format");
    writer.unknown("version");
    describeFields(writer, whole);
    writer.close();
  }
  void fly(const Part& part) {
    if (part.fly) describeFly(*this, *part.fly, true);
  }

  void heading(const char* format) {
    member("format");
    m_out += jsonQuoted(format);
    member("version");
    m_out += typed("version", kFormatVersion);
  }

  /// The members that were kept, then the closing brace.
  void close() {
    for (const Kept::Entry& entry : m_kept.unknown) write(entry);
    if (m_layout == Layout::line) {
      m_out += m_first ? "}" : " }";
    } else {
      if (!m_first) newLine(m_level);
      m_out += "}";
    }
  }

 private:
  template <class T>
  void below(const T& value, int level, Layout layout) {
    const Layout here = m_layout == Layout::line ? Layout::line : layout;
    ObjectWriter writer(m_out, level, here, value.kept);
    describeFields(writer, value);
    writer.close();
  }

  void newLine(int level) {
    m_out += "\n";
    m_out.append(static_cast<std::size_t>(level) * 2, ' ');
  }
  void member(const std::string& key) {
    m_known.insert(key);
    if (!m_first) m_out += ",";
    if (m_layout == Layout::line) {
      m_out += " ";
    } else {
      newLine(m_level + 1);
    }
    m_first = false;
    m_out += jsonQuoted(key) + ": ";
  }
  template <class T>
  bool present(const char* key, const std::optional<T>& value) {
    m_known.insert(key);
    if (value) member(key);
    return value.has_value();
  }
  void pair(const std::string& key, double first, double second) {
    m_out += "[" + typed(key + "/0", first) + ", " + typed(key + "/1", second) + "]";
  }
  /// A kept member, unless one of that name is written already.
  void write(const Kept::Entry& entry) {
    if (m_known.contains(entry.key)) return;
    member(entry.key);
    m_out += entry.text;
  }
  void unknown(const std::string& key) {
    for (const Kept::Entry& entry : m_kept.unknown) {
      if (entry.key == key) write(entry);
    }
  }
  std::string typed(const std::string& key, double value) const;

  std::string& m_out;
  int m_level;
  Layout m_layout;
  const Kept& m_kept;
  bool m_first = true;
  std::set<std::string, std::less<>> m_known;
};

}  // namespace grainwise
