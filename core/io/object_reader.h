// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <set>
#include <string>

#include "core/io/json_text.h"
#include "core/model/check.h"
#include "core/model/fields.h"
#include "core/model/utf8.h"

/// Reads the members of one JSON object into a value, as fields.h describes them. Used by the
/// documents of this room only.
namespace grainwise {

/// What one reading of a text has found so far.
struct Reading {
  const JsonText& text;
  std::vector<JsonText::Find> finds;
  Unread unread;

  /// More is wrong than will be told: the rest need not be read.
  [[nodiscard]] bool full() const { return finds.size() > kMostFinds; }
  void blame(const JsonValue& at, const std::string& pointer, Wording what, Wording fix) {
    finds.push_back({{"", at.line, pointer, std::move(what), std::move(fix)}, at.begin});
    unread.add(pointer);
  }
};

class ObjectReader {
 public:
  ObjectReader(Reading& reading, const JsonValue& object, std::string at, Kept& kept)
      : m_reading(reading), m_object(object), m_at(std::move(at)), m_kept(kept) {}

  template <class Q>
  void number(const char* key, Q& value, const Limit& limit, bool required = true) {
    const JsonValue* json = known(key);
    if (json) {
      value = Q(readNumber(*json, key, limit, required).value_or(0.0));
    } else if (required) {
      missing(key, numberAdvice(limit));
    }
  }
  template <class Q>
  void number(const char* key, std::optional<Q>& value, const Limit& limit) {
    if (const JsonValue* json = known(key)) {
      if (const auto read = readNumber(*json, key, limit, false)) value = Q(*read);
    }
  }
  void whole(const char* key, std::optional<int>& value, const Limit& limit) {
    const JsonValue* json = known(key);
    if (!json) return;
    const auto read = readNumber(*json, key, limit, false);
    if (!read) return;
    if (*read != std::floor(*read) || std::abs(*read) > 1e9) {
      return blame(*json, key, Problem::tr("%1 is %2").arg(key).arg(excerpt(json->text, 40)),
                   Problem::tr("give a whole number, %1").arg(rangeWording(limit)));
    }
    value = static_cast<int>(*read);
  }
  template <class Q>
  void along(const char* key, std::optional<Along<Q>>& value, const Limit& limit) {
    const JsonValue* json = known(key);
    if (!json) return;
    if (json->kind == JsonKind::array) {
      if (const auto two = readPair(*json, key, limit, "[rod end, fly end]")) {
        value = Along<Q>(Q(two->first), Q(two->second));
      }
    } else if (json->kind == JsonKind::number) {
      value = Along<Q>(Q(readNumber(*json, key, limit, false).value_or(0.0)));
    } else {
      wrongKind(*json, key, Problem::tr("%1, or two as [rod end, fly end]").arg(numberAdvice(limit)), false);
    }
  }
  template <class R>
  void range(const char* key, std::optional<R>& value, const Limit& limit) {
    const JsonValue* json = known(key);
    if (!json) return;
    if (json->kind != JsonKind::array) {
      return wrongKind(*json, key, Problem::tr("give two numbers, [low, high]"), false);
    }
    if (const auto two = readPair(*json, key, limit, "[low, high]")) {
      value.emplace();
      value->low = decltype(value->low)(two->first);
      value->high = decltype(value->high)(two->second);
    }
  }
  void text(const char* key, std::string& value) {
    const JsonValue* json = known(key);
    if (!json) return missing(key, Problem::tr("give text in double quotes"));
    if (const auto read = readText(*json, key, true)) value = *read;
  }
  void text(const char* key, std::optional<std::string>& value) {
    if (const JsonValue* json = known(key)) value = readText(*json, key, false);
  }
  void flag(const char* key, std::optional<bool>& value) {
    const JsonValue* json = known(key);
    if (!json) return;
    if (json->kind != JsonKind::boolean) return wrongKind(*json, key, Problem::tr("give true or false"), false);
    value = json->boolean;
  }
  template <class E>
  void choice(const char* key, E& value, const std::vector<E>& allowed) {
    std::optional<E> read;
    if (const JsonValue* json = known(key)) {
      read = readChoice(*json, key, allowed, true);
    } else {
      missing(key, choiceAdvice(allowed));
    }
    if (read) value = *read;
  }
  template <class E>
  void choice(const char* key, std::optional<E>& value, const std::vector<E>& allowed) {
    if (const JsonValue* json = known(key)) value = readChoice(*json, key, allowed, false);
  }
  template <class T>
  void object(const char* key, std::optional<T>& value, Layout) {
    const JsonValue* json = known(key);
    if (!json) return;
    if (json->kind != JsonKind::object) {
      return wrongKind(*json, key, Problem::tr("give an object, { ... }"), false);
    }
    value.emplace();
    below(*json, m_at + "/" + key, *value);
  }
  template <class T>
  void list(const char* key, std::vector<T>& values, Layout, bool required) {
    const JsonValue* json = known(key);
    if (!json) {
      if (required) missing(key, Problem::tr("give a list of objects, [ ... ]"));
      return;
    }
    if (json->kind != JsonKind::array) {
      return wrongKind(*json, key, Problem::tr("give a list of objects, [ ... ]"), required);
    }
    for (std::size_t i = 0; i < json->children.size() && !m_reading.full(); ++i) {
      const std::string pointer = m_at + "/" + key + "/" + std::to_string(i);
      const JsonValue& one = json->children[i];
      T& value = values.emplace_back();
      if (one.kind == JsonKind::object) {
        below(one, pointer, value);
      } else {
        m_reading.blame(one, pointer, Problem::tr("this entry is %1").arg(wordFor(one.kind)),
                        Problem::tr("give an object, { ... }"));
      }
    }
  }
  void cardRig(const char* key, std::optional<CardRig>& rig);
  void fly(Part& part) {
    const bool isFly = part.kind == PartKind::fly && !m_reading.unread.covers(m_at + "/kind");
    bool any = isFly;
    for (const char* key : kFlyKeys) any = any || m_object.find(key);
    if (!any) return;
    part.fly.emplace();
    describeFly(*this, *part.fly, isFly);
  }

  /// `"format"` and `"version"`; false when the rest must not be read.
  bool heading(const char* format, const char* word);

  /// Keeps the members that no description has asked for.
  void keepUnknown();

  /// Reads a whole object with everything below it.
  template <class T>
  static void readInto(Reading& reading, const JsonValue& json, const std::string& at, T& value) {
    ObjectReader reader(reading, json, at, value.kept);
    describeFields(reader, value);
    reader.keepUnknown();
  }

 private:
  template <class T>
  void below(const JsonValue& json, const std::string& at, T& value) {
    readInto(m_reading, json, at, value);
  }

  const JsonValue* known(const char* key) {
    m_known.insert(key);
    return m_object.find(key);
  }
  void blame(const JsonValue& json, const std::string& key, Wording what, Wording fix) {
    m_reading.blame(json, m_at + "/" + key, std::move(what), std::move(fix));
  }
  void missing(const char* key, Wording fix) {
    blame(m_object, key, Problem::tr("%1 is missing").arg(key), std::move(fix));
  }
  void wrongKind(const JsonValue& json, const std::string& key, Wording fix, bool required) {
    if (json.kind == JsonKind::null && !required) fix = Problem::tr("%1, or leave it out").arg(fix);
    blame(json, key, Problem::tr("%1 is %2").arg(key).arg(wordFor(json.kind)), std::move(fix));
  }

  static Wording numberAdvice(const Limit& limit) {
    return Problem::tr("give a number, %1").arg(rangeWording(limit));
  }
  template <class E>
  static Wording choiceAdvice(const std::vector<E>& allowed) {
    const std::string names = fileNames(allowed);
    if (names.empty()) return Problem::tr("leave it out");
    return Problem::tr("give one of %1").arg(names);
  }

  std::optional<double> readNumber(const JsonValue& json, const std::string& key,
                                   const Limit& limit, bool required);
  std::optional<std::pair<double, double>> readPair(const JsonValue& json, const std::string& key,
                                                    const Limit& limit, const char* form);
  std::optional<std::string> readText(const JsonValue& json, const char* key, bool required);
  template <class E>
  std::optional<E> readChoice(const JsonValue& json, const char* key, const std::vector<E>& allowed,
                              bool required) {
    if (json.kind != JsonKind::text) {
      wrongKind(json, key, choiceAdvice(allowed), required);
      return std::nullopt;
    }
    const auto read = fromFile(std::string(json.text), static_cast<const E*>(nullptr));
    if (!read) {
      blame(json, key, Problem::tr("%1 \"%2\" is not known").arg(key).arg(excerpt(json.text, 40)),
            choiceAdvice(allowed));
    }
    return read;
  }

  Reading& m_reading;
  const JsonValue& m_object;
  std::string m_at;
  Kept& m_kept;
  std::set<std::string, std::less<>> m_known;
};

}  // namespace grainwise
