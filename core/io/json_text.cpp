// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/io/json_text.h"

#include <algorithm>
#include <iterator>
#include <nlohmann/json.hpp>
#include <unordered_set>

#include "core/model/utf8.h"

namespace grainwise {
namespace {

bool isSpace(char c) {
  return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}
bool isNumberChar(char c) {
  return (c >= '0' && c <= '9') || c == '-' || c == '+' || c == '.' || c == 'e' || c == 'E';
}
bool isWordChar(char c) {
  return isNumberChar(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '_';
}

std::string lowered(std::string_view word) {
  std::string low(word);
  std::transform(low.begin(), low.end(), low.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
  return low;
}

/// How far the parser has read; shared by all copies of its iterator.
struct Progress {
  const char* seen = nullptr;
  bool atEnd = false;
};

/// Feeds the parser and counts what it consumes: its events do not say where they stand.
class Counting {
 public:
  using iterator_category = std::input_iterator_tag;
  using value_type = char;
  using difference_type = std::ptrdiff_t;
  using pointer = const char*;
  using reference = const char&;

  Counting(const char* at, Progress* progress) : m_at(at), m_progress(progress) {}
  reference operator*() const { return *m_at; }
  Counting& operator++() {
    m_progress->seen = ++m_at;
    return *this;
  }
  Counting operator++(int) {
    Counting before = *this;
    ++*this;
    return before;
  }
  bool operator==(const Counting& other) const {
    const bool same = m_at == other.m_at;
    if (same) m_progress->atEnd = true;
    return same;
  }

 private:
  const char* m_at;
  Progress* m_progress;
};

/// Builds the tree from the parser's events. Where a value stands follows from the cursor (the end
/// of the token before) and, for strings and brackets, from what the parser has consumed; numbers
/// are measured here, since the parser reads one character past them.
class Builder {
 public:
  Builder(JsonText& out, const Progress& progress, int nesting)
      : m_out(out), m_progress(progress), m_nesting(nesting) {
    if (m_out.source.starts_with("\xEF\xBB\xBF")) m_cursor = 3;
  }

  bool null() {
    literal(JsonKind::null, 4);
    return true;
  }
  bool boolean(bool value) {
    literal(JsonKind::boolean, value ? 4 : 5).boolean = value;
    return true;
  }
  bool number_integer(std::int64_t) { return number(); }
  bool number_unsigned(std::uint64_t) { return number(); }
  bool number_float(double, const std::string&) { return number(); }
  bool string(std::string& value) {
    const std::size_t begin = next();
    JsonValue& v = add(JsonKind::text, begin, consumed());
    v.text = m_out.strings.emplace_back(std::move(value));
    return true;
  }
  bool binary(std::vector<std::uint8_t>&) { return false; }
  bool start_object(std::size_t) { return open(JsonKind::object); }
  bool start_array(std::size_t) { return open(JsonKind::array); }
  bool end_object() { return close(); }
  bool end_array() { return close(); }

  bool key(std::string& value) {
    const std::size_t begin = next();
    m_key = m_out.strings.emplace_back(std::move(value));
    moveTo(consumed());
    if (!m_open.back().keys.insert(m_key).second) {
      blame(pointer() + "/" + pointerStep(m_key), begin,
            Problem::tr("the key \"%1\" stands twice in this object").arg(excerpt(m_key, 60)),
            Problem::tr("keep one of the two"));
    }
    return true;
  }

  bool parse_error(std::size_t, const std::string&, const nlohmann::detail::exception& error) {
    fail(error);
    return false;
  }

 private:
  struct Frame {
    JsonValue* value;
    std::unordered_set<std::string_view> keys;
  };

  [[nodiscard]] std::size_t consumed() const {
    return m_progress.seen ? static_cast<std::size_t>(m_progress.seen - m_out.source.data()) : 0;
  }
  /// Moves the cursor to `offset`, counting lines.
  void moveTo(std::size_t offset) {
    const auto text = m_out.source;
    m_line +=
        static_cast<int>(std::count(text.begin() + static_cast<std::ptrdiff_t>(m_cursor),
                                    text.begin() + static_cast<std::ptrdiff_t>(offset), '\n'));
    m_cursor = offset;
  }
  /// Moves to the start of the next token.
  std::size_t next() {
    std::size_t at = m_cursor;
    while (at < m_out.source.size() &&
           (isSpace(m_out.source[at]) || m_out.source[at] == ',' || m_out.source[at] == ':')) {
      ++at;
    }
    moveTo(at);
    return at;
  }

  JsonValue& add(JsonKind kind, std::size_t begin, std::size_t end) {
    JsonValue& v = m_open.empty() ? m_out.root : m_open.back().value->children.emplace_back();
    v.kind = kind;
    v.line = m_line;
    v.begin = static_cast<std::uint32_t>(begin);
    v.end = static_cast<std::uint32_t>(end);
    v.key = m_key;
    m_key = {};
    moveTo(end);
    m_complete = m_open.empty();
    return v;
  }
  JsonValue& literal(JsonKind kind, std::size_t length) {
    const std::size_t begin = next();
    return add(kind, begin, begin + length);
  }
  bool number() {
    const std::size_t begin = next();
    std::size_t end = begin;
    while (end < m_out.source.size() && isNumberChar(m_out.source[end])) ++end;
    JsonValue& v = add(JsonKind::number, begin, end);
    v.text = m_out.raw(v);
    return true;
  }
  bool open(JsonKind kind) {
    const std::size_t begin = next();
    if (static_cast<int>(m_open.size()) == m_nesting) {
      blame(pointer() + step(), begin,
            Problem::tr("objects and lists are nested deeper than %1 levels").arg(m_nesting),
            Problem::tr("keep it to %1").arg(m_nesting));
      m_out.broken = true;
      return false;
    }
    JsonValue& v = add(kind, begin, begin + 1);
    m_open.push_back({&v, {}});
    m_complete = false;
    return true;
  }
  bool close() {
    moveTo(consumed());
    m_open.back().value->end = static_cast<std::uint32_t>(m_cursor);
    m_open.pop_back();
    m_complete = m_open.empty();
    return true;
  }

  /// Pointer of the innermost open object or list.
  [[nodiscard]] std::string pointer() const {
    std::string text;
    for (std::size_t i = 0; i + 1 < m_open.size(); ++i) {
      const JsonValue& outer = *m_open[i].value;
      text += "/" + (outer.kind == JsonKind::array ? std::to_string(outer.children.size() - 1)
                                                   : pointerStep(m_open[i + 1].value->key));
    }
    return text;
  }
  /// The step below it to the value that is being read.
  [[nodiscard]] std::string step() const {
    if (m_open.empty()) return "";
    const JsonValue& in = *m_open.back().value;
    if (in.kind == JsonKind::array) return "/" + std::to_string(in.children.size());
    return m_key.data() ? "/" + pointerStep(m_key) : "";
  }

  void blame(std::string at, std::size_t offset, Wording what, Wording fix) {
    if (m_out.finds.size() > kMostFinds && !m_out.broken) return;
    m_out.finds.push_back({{"", m_line, std::move(at), std::move(what), std::move(fix)},
                           static_cast<std::uint32_t>(offset)});
  }

  void fail(const nlohmann::detail::exception& error);

  JsonText& m_out;
  const Progress& m_progress;
  int m_nesting;
  std::size_t m_cursor = 0;
  int m_line = 1;
  std::string_view m_key;
  std::vector<Frame> m_open;
  bool m_complete = false;
};

/// What to do about a place where the parser expected something else; `said` is its message.
Wording adviceFor(std::string_view said) {
  struct Advice {
    const char* part;
    Wording fix;
  };
  const Advice kAdvice[] = {
      {"control character", Problem::tr("in text, write a line break as \\n and a tab as \\t")},
      {"missing closing quote", Problem::tr("end the text with a double quote on the same line")},
      {"forbidden character after backslash", Problem::tr("in text, write a backslash as two")},
      {"surrogate", Problem::tr("write the character itself instead of \\u codes")},
      {"'\\u' must be followed", Problem::tr("write the character itself instead of \\u codes")},
      {"object key", Problem::tr("give a name in double quotes here; no comma stands before }")},
      {"object separator", Problem::tr("put a colon between the name and its value")},
      {"expected '}'", Problem::tr("put a comma before it, or close the object with } first")},
      {"expected ']'", Problem::tr("put a comma before it, or close the list with ] first")},
      {"expected end of input", Problem::tr("nothing may follow the closing brace")},
      {"invalid number", Problem::tr("write numbers as 13, 0.024 or -3.5")},
  };
  for (const Advice& a : kAdvice) {
    if (said.find(a.part) != std::string_view::npos) return a.fix;
  }
  return Problem::tr("give a number, text in double quotes, true, false, a list or an object");
}

void Builder::fail(const nlohmann::detail::exception& error) {
  m_out.broken = true;
  const std::string_view text = m_out.source;
  constexpr int kNumberOverflow = 406;
  if (error.id == kNumberOverflow) {
    const std::size_t begin = next();
    std::size_t end = begin;
    while (end < text.size() && isNumberChar(text[end])) ++end;
    return blame(pointer() + step(), begin,
                 Problem::tr("the number %1 is too large").arg(excerpt(text.substr(begin, end - begin), 40)),
                 Problem::tr("give a finite number"));
  }
  if (m_complete) {
    const std::size_t begin = next();
    return blame("", begin, Problem::tr("something follows the closing brace"),
                 Problem::tr("end the file there; one object a file"));
  }
  if (m_progress.atEnd) {
    moveTo(text.size());
    return blame(
        pointer() + step(), text.size(), Problem::tr("the text ends too early"),
        Problem::tr("the file seems cut off; close every quote, list and object, or take a whole copy"));
  }
  std::size_t begin = consumed() > 0 ? consumed() - 1 : 0;
  const bool pastNumber =
      std::string_view(error.what()).find("unexpected number") != std::string_view::npos;
  if (pastNumber && begin > 0 && !isNumberChar(text[begin])) --begin;
  std::size_t end = begin + 1;
  if (isWordChar(text[begin])) {
    while (begin > 0 && isWordChar(text[begin - 1])) --begin;
    while (end < text.size() && isWordChar(text[end])) ++end;
  }
  moveTo(std::max(m_cursor, begin));
  const std::string word(text.substr(begin, end - begin));
  const std::string low = lowered(word);
  for (const char* special : {"nan", "inf", "infinity"}) {
    if (low == special || low == std::string("-") + special || low == std::string("+") + special) {
      return blame(pointer() + step(), begin, Problem::tr("%1 is no number that JSON knows").arg(word),
                   Problem::tr("give a finite number"));
    }
  }
  const Wording shown =
      isSpace(word[0]) ? Problem::tr("a line break or tab") : Wording("'" + excerpt(word, 24) + "'");
  blame(pointer() + step(), begin, Problem::tr("this is not JSON: %1 cannot stand here").arg(shown),
        adviceFor(error.what()));
}

int lineOf(std::string_view source, std::size_t offset) {
  return 1 + static_cast<int>(std::count(
                 source.begin(), source.begin() + static_cast<std::ptrdiff_t>(offset), '\n'));
}

/// What can be said of the bytes before any parsing.
void checkBytes(JsonText& out, std::size_t mostBytes) {
  const std::string_view source = out.source;
  const auto blame = [&](std::size_t offset, Wording what, Wording fix) {
    out.broken = true;
    out.finds.push_back({{"", lineOf(source, offset), "", std::move(what), std::move(fix)},
                         static_cast<std::uint32_t>(offset)});
  };
  if (source.size() > mostBytes) {
    out.broken = true;
    out.finds.push_back(
        {{"", 0, "", Problem::tr("the file is larger than %1 bytes").arg(mostBytes),
          Problem::tr("a file of ours has at most %1 (4 MiB)").arg(mostBytes)},
         0});
    return;
  }
  if (const std::size_t nul = source.find('\0'); nul != std::string_view::npos) {
    blame(nul, Problem::tr("there is a NUL byte"), Problem::tr("take it out; the file must be plain text"));
  } else if (const auto bad = firstBadUtf8(source)) {
    blame(*bad, Problem::tr("the file is not UTF-8 text"), Problem::tr("save it as UTF-8"));
  } else if (std::all_of(source.begin(), source.end(), isSpace)) {
    blame(0, Problem::tr("the file is empty"), Problem::tr("give one JSON object, { ... }"));
  }
}

}  // namespace

JsonText parseJson(std::string_view source, int nesting, std::size_t mostBytes) {
  JsonText out;
  out.source = source;
  checkBytes(out, mostBytes);
  if (out.broken) return out;
  Progress progress;
  Builder builder(out, progress, nesting);
  const Counting first(source.data(), &progress);
  const Counting last(source.data() + source.size(), &progress);
  const bool whole = nlohmann::json::sax_parse(first, last, &builder);
  if (!whole) out.broken = true;
  if (!out.broken && out.root.kind != JsonKind::object) {
    out.broken = true;
    out.finds.push_back(
        {{"", out.root.line, "", Problem::tr("the file holds %1").arg(wordFor(out.root.kind)),
          Problem::tr("give one JSON object, { ... }")},
         out.root.begin});
  }
  return out;
}

}  // namespace grainwise
