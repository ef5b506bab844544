// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/object_reader.h"

namespace grainwise {

std::optional<double> ObjectReader::readNumber(const JsonValue& json, const std::string& key,
                                               const Limit& limit, bool required) {
  if (json.kind != JsonKind::number) {
    wrongKind(json, key, numberAdvice(limit), required);
    return std::nullopt;
  }
  const auto value = jsonNumber(json.text);
  if (!value) {  // the parser refuses such numbers before
    blame(json, key, Problem::tr("the number %1 cannot be held").arg(excerpt(json.text, 40)),
          numberAdvice(limit));
    return std::nullopt;
  }
  keepDigits(m_kept, key, *value, std::string(json.text));
  return value;
}

std::optional<std::pair<double, double>> ObjectReader::readPair(const JsonValue& json,
                                                                const std::string& key,
                                                                const Limit& limit,
                                                                const char* form) {
  if (json.children.size() != 2) {
    blame(json, key, Problem::tr("%1 has %2 entries").arg(key).arg(json.children.size()),
          Problem::tr("give two numbers, %1").arg(form));
    return std::nullopt;
  }
  const auto first = readNumber(json.children[0], key + "/0", limit, true);
  const auto second = readNumber(json.children[1], key + "/1", limit, true);
  return std::pair(first.value_or(0.0), second.value_or(0.0));
}

std::optional<std::string> ObjectReader::readText(const JsonValue& json, const char* key,
                                                  bool required) {
  if (json.kind == JsonKind::text) return std::string(json.text);
  wrongKind(json, key, Problem::tr("give text in double quotes"), required);
  return std::nullopt;
}

void ObjectReader::cardRig(const char* key, std::optional<CardRig>& rig) {
  const JsonValue* json = known(key);
  if (!json) return;
  if (json->kind == JsonKind::text) {
    rig = std::string(json->text);
  } else if (json->kind == JsonKind::object) {
    Rig whole;
    const std::string at = m_at + "/" + key;
    // A rig that was put here from a file may still say what it is; it need not.
    Kept none;
    ObjectReader top(m_reading, *json, at, none);
    const bool says = json->find("format") || json->find("version");
    if (!says || top.heading(FormatOf<Rig>::kName, FormatOf<Rig>::kWord)) {
      below(*json, at, whole);
    } else {
      m_reading.unread.add(at);
    }
    rig = std::move(whole);
  } else {
    wrongKind(*json, key, Problem::tr("give a rig, { ... }, or the relative name of a rig file"), false);
  }
}

bool ObjectReader::heading(const char* format, const char* word) {
  const std::string quoted = jsonQuoted(format);
  const Wording what = Wording::sentence(word);
  const JsonValue* name = known("format");
  if (!name) {
    missing("format", Problem::tr("%1 starts with %2").arg(what).arg("\"format\": " + quoted));
  } else if (name->kind != JsonKind::text) {
    wrongKind(*name, "format", Problem::tr("give %1").arg(quoted), true);
  } else if (name->text != format) {
    blame(*name, "format", Problem::tr("this is \"%1\", not %2").arg(excerpt(name->text, 40)).arg(what),
          Problem::tr("%1 has the format %2").arg(what).arg(quoted));
    return false;
  }
  const JsonValue* version = known("version");
  const std::string ours = std::to_string(kFormatVersion);
  if (!version) {
    missing("version", Problem::tr("give %1").arg("\"version\": " + ours));
    return false;
  }
  if (version->kind != JsonKind::number) {
    wrongKind(*version, "version", Problem::tr("give %1").arg(ours), true);
    return false;
  }
  const auto number = jsonNumber(version->text);
  if (!number || *number != kFormatVersion) {
    blame(*version, "version", Problem::tr("version %1 is not known here").arg(excerpt(version->text, 40)),
          Problem::tr("this program reads version %1; a newer one may be needed").arg(ours));
    return false;
  }
  keepDigits(m_kept, "version", *number, std::string(version->text));
  return name && name->kind == JsonKind::text;
}

void ObjectReader::keepUnknown() {
  for (const JsonValue& member : m_object.children) {
    if (m_known.contains(member.key)) continue;
    m_kept.unknown.push_back({std::string(member.key), std::string(m_reading.text.raw(member))});
  }
}

}  // namespace grainwise
