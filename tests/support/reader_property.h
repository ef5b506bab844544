// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

#include "core/bench/scale_log.h"
#include "core/io/deck_file.h"
#include "core/io/pools_file.h"
#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "core/model/check.h"
#include "core/model/utf8.h"

/// What holds for every reader and any bytes: either it says what is wrong, in words, or what it
/// read is written so that it reads back as the same value and is written the same way again.
namespace grainwise::test {

template <class T>
using Reader = Result<T> (*)(std::string_view, const std::string&);
template <class T>
using Writer = std::string (*)(const T&);

/// Single parts come from the clipboard, from no file.
inline Result<Part> readPartOf(std::string_view text, const std::string&) {
  return readPart(text);
}

inline bool named(const Problem& p) {
  return p.file == "f" || p.file.empty();
}

/// What is wrong with a reader's complaint; empty when nothing is.
inline std::string faultOf(const Problems& problems) {
  if (problems.empty()) return "refused without a reason";
  for (const Problem& p : problems) {
    if (p.what.empty() || p.fix.empty()) return "a problem without words: " + describe(p);
    const std::string said = describe(p);
    if (firstBadUtf8(said)) return "a problem that is no UTF-8";
    for (const char c : said) {
      if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)
        return "a problem that moves the terminal";
    }
    if (p.line < 0) return "a problem on no line: " + describe(p);
    if (!named(p)) return "a problem in another file: " + describe(p);
  }
  return {};
}

/// What is wrong with reader and writer over `text`; empty when nothing is.
template <class T>
std::string faultOf(std::string_view text, Reader<T> read, Writer<T> write, bool* accepted) {
  const Result<T> value = read(text, "f");
  if (accepted) *accepted = value.has_value();
  if (!value) return faultOf(value.error());
  const std::string written = write(*value);
  const Result<T> back = read(written, "f");
  if (!back) return "what was written is refused: " + describe(back.error().front());
  if (!(*back == *value)) return "what was written reads back as another value";
  if (write(*back) != written) return "what was read back is written otherwise";
  return {};
}

/// A log of the scale: what is wrong is told by its line, and what becomes a tip is a sound one
/// that outlives a file.
inline std::string scaleFault(std::string_view text, bool* accepted) {
  const ScaleLog log = readScaleLog(text, guessMapping(text), "f");
  if (accepted) *accepted = !log.rows.empty();
  if (!log.problems.empty()) {
    if (std::string what = faultOf(log.problems); !what.empty()) return what;
    for (const Problem& p : log.problems) {
      if (p.line < 1) return "a problem on no line: " + describe(p);
    }
  }
  for (const LogRow& row : log.rows) {
    const auto tip = tipOf(row);
    if (!tip) {
      if (std::string what = faultOf({tip.error()}); !what.empty()) return what;
      continue;
    }
    if (const Problems wrong = check(tip->part); !wrong.empty()) {
      return "a tip that is not sound: " + describe(wrong.front());
    }
    const auto back = readPart(writePart(tip->part));
    if (!back || !(*back == tip->part)) return "a tip that does not outlive a file";
  }
  return {};
}

inline std::string readerFault(std::string_view format, std::string_view text,
                               bool* accepted = nullptr) {
  if (format == "rig") return faultOf<Rig>(text, readRig, writeRig, accepted);
  if (format == "shelf") return faultOf<Shelf>(text, readShelf, writeShelf, accepted);
  if (format == "pools") return faultOf<Pools>(text, readPools, writePools, accepted);
  if (format == "spools") return faultOf<Spools>(text, readSpools, writeSpools, accepted);
  if (format == "deck") return faultOf<Deck>(text, readDeck, writeDeck, accepted);
  if (format == "part") return faultOf<Part>(text, readPartOf, writePart, accepted);
  if (format == "scale") return scaleFault(text, accepted);
  return "no such format";
}

}  // namespace grainwise::test
