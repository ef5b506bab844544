// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <random>

#include "tests/support/documents.h"

using namespace grainwise;
using namespace grainwise::test;

namespace {

struct Place {
  std::string pointer;
  JsonKind kind;
  bool member;  ///< of an object, not an entry of a list
};

void collect(const JsonValue& value, const std::string& at, bool member, std::vector<Place>& all) {
  all.push_back({at, value.kind, member});
  for (std::size_t i = 0; i < value.children.size(); ++i) {
    const bool list = value.kind == JsonKind::array;
    const JsonValue& child = value.children[i];
    collect(child, at + "/" + (list ? std::to_string(i) : pointerStep(child.key)), !list, all);
  }
}

std::vector<Place> places(const std::string& text) {
  std::vector<Place> all;
  collect(parseJson(text).root, "", false, all);
  return all;
}

bool isWithin(const std::string& pointer, const std::string& around) {
  return pointer == around || pointer.starts_with(around + "/");
}

/// Whether what was accepted is written so that it reads back as the same value and text.
template <class T>
bool survives(const std::string& text, Result<T> (*read)(std::string_view, const std::string&),
              std::string (*write)(const T&)) {
  const auto value = read(text, "");
  if (!value) return false;
  const std::string written = write(*value);
  const auto back = read(written, "");
  INFO("read:\n" << text << "\nwritten:\n" << written);
  if (!back) FAIL(inWords(back.error()));
  if (!(*back == *value) || write(*back) != written) FAIL("what was written reads back otherwise");
  return true;
}

bool survivesAs(const std::string& format, const std::string& text) {
  if (format == "rig") return survives<Rig>(text, readRig, writeRig);
  if (format == "shelf") return survives<Shelf>(text, readShelf, writeShelf);
  if (format == "pools") return survives<Pools>(text, readPools, writePools);
  if (format == "spools") return survives<Spools>(text, readSpools, writeSpools);
  return survives<Deck>(text, readDeck, writeDeck);
}

/// Spoils a text at random, with bytes that matter to JSON and pieces of its own.
class Spoiler {
 public:
  explicit Spoiler(std::uint64_t seed) : m_random(seed) {}

  std::string spoil(std::string text) {
    const std::size_t times = 1 + below(3);
    for (std::size_t i = 0; i < times; ++i) spoilOnce(text);
    return text;
  }

 private:
  std::size_t below(std::size_t end) { return end == 0 ? 0 : m_random() % end; }
  char byte() {
    static const std::string kBytes = "{}[]\",:0123456789.-+eE \n\\/tfnu\0\xEF\xBB\xBF\xC3\x80z";
    return below(4) == 0 ? static_cast<char>(below(256)) : kBytes[below(kBytes.size())];
  }
  void spoilOnce(std::string& text) {
    const std::size_t at = below(text.size());
    switch (below(6)) {
      case 0:
        if (!text.empty()) text[at] = byte();
        break;
      case 1:
        text.insert(text.begin() + static_cast<std::ptrdiff_t>(at), byte());
        break;
      case 2:
        text.erase(at, 1 + below(3));
        break;
      case 3:
        text.erase(at, below(text.size() - at));
        break;
      case 4:
        text.insert(below(text.size()), text.substr(at, below(60)));
        break;
      default:
        digit(text, at);
    }
  }
  /// Changes the next digit, which often leaves the document sound.
  void digit(std::string& text, std::size_t from) {
    const std::size_t at = text.find_first_of("0123456789", from);
    if (at != std::string::npos) text[at] = static_cast<char>('0' + below(10));
  }

  std::mt19937_64 m_random;
};

}  // namespace

TEST_CASE("a document cut off at any byte is refused with a line") {
  for (const Sound& sound : soundDocuments()) {
    for (std::size_t length = 0; length + 1 < sound.text.size(); ++length) {
      const Problems problems = readAny(sound.format, sound.text.substr(0, length)).problems;
      if (problems.empty() || problems.front().line < 1 || problems.front().fix.empty()) {
        FAIL(sound.format << " cut off after " << length << " bytes: " << inWords(problems));
      }
    }
    CHECK(readAny(sound.format, sound.text.substr(0, sound.text.size() - 1)).problems.empty());
  }
}

TEST_CASE("a value of the wrong type is refused at its own place, for every key") {
  struct Other {
    JsonKind kind;
    const char* text;
  };
  const std::vector<Other> others{{JsonKind::null, "null"},         {JsonKind::boolean, "true"},
                                  {JsonKind::number, "1"},          {JsonKind::text, "\"x\""},
                                  {JsonKind::array, "[]"},          {JsonKind::object, "{}"},
                                  {JsonKind::array, "[null, null]"}};
  int tried = 0;
  for (const Sound& sound : soundDocuments()) {
    for (const Place& place : places(sound.text)) {
      for (const Other& other : others) {
        const bool rigName = isWithin(place.pointer, "/cards/0/rig") && place.pointer.size() == 12;
        const bool along = place.kind == JsonKind::array && other.kind == JsonKind::number &&
                           isWithin(place.pointer, "/parts");
        if (other.kind == place.kind || (rigName && other.kind == JsonKind::text)) continue;
        const std::string text = with(sound.text, place.pointer, other.text);
        const Problems problems = readAny(sound.format, text).problems;
        INFO(sound.format << " " << place.pointer << " as " << other.text << "\n"
                          << inWords(problems));
        if (along && problems.empty()) continue;  // a taper that is one number is level
        REQUIRE_FALSE(problems.empty());
        for (const Problem& p : problems) {
          CHECK(isWithin(p.pointer, place.pointer));
          CHECK(p.line > 0);
          CHECK_FALSE(p.what.empty());
          CHECK_FALSE(p.fix.empty());
        }
        ++tried;
      }
    }
  }
  CHECK(tried > 1000);
}

TEST_CASE("a missing key is refused where it is required and nowhere else") {
  // By the name of the key; a section or spool that is no longer fixed is blamed as a whole.
  const std::vector<std::string> required{
      "format",   "version", "parts", "kind",  "length_ft", "dry_gr", "pools", "surface_ft_per_s",
      "depth_ft", "spools",  "cards", "title", "show",      "id",     "group", "feet_left",
      "sections", "mass_gr", "in_per_s", "ft_per_s"};
  const std::vector<std::string> fixing{"gr_per_ft", "diameter_in",   "density_g_cm3",
                                        "floats",    "sink_in_per_s", "material"};
  const std::vector<std::string> optionalIn{"/rod/length_ft", "/water/surface_ft_per_s",
                                            "/water/depth_ft", "/cards/1/parts",
                                            "/cards/1/pools"};
  const auto contains = [](const std::vector<std::string>& all, const std::string& one) {
    return std::find(all.begin(), all.end(), one) != all.end();
  };
  for (const Sound& sound : soundDocuments()) {
    for (const Place& place : places(sound.text)) {
      if (!place.member) continue;
      const std::string key = place.pointer.substr(place.pointer.rfind('/') + 1);
      const std::string around = place.pointer.substr(0, place.pointer.rfind('/'));
      const bool part = around.find("/parts/") != std::string::npos;
      const bool name = key == "name" && !part && around != "/water";
      const bool must = (name || contains(required, key)) && !contains(optionalIn, place.pointer);
      const Problems problems = readAny(sound.format, without(sound.text, place.pointer)).problems;
      INFO(sound.format << " without " << place.pointer << "\n" << inWords(problems));
      if (must) {
        REQUIRE(problems.size() == 1);
        CHECK(problems.front().pointer == place.pointer);
        CHECK(problems.front().line > 0);
      } else if (!problems.empty()) {
        CHECK(contains(fixing, key));
        CHECK(problems.front().pointer == around);
      }
    }
  }
}

TEST_CASE("a key given twice is refused at its own place, for every key") {
  for (const Sound& sound : soundDocuments()) {
    for (const Place& place : places(sound.text)) {
      if (!place.member) continue;
      const JsonText json = parseJson(sound.text);
      const std::string around = place.pointer.substr(0, place.pointer.rfind('/'));
      const std::string key = place.pointer.substr(place.pointer.rfind('/') + 1);
      const std::string value(json.raw(json.nearest(place.pointer)));
      const Problems problems =
          readAny(sound.format, withMember(sound.text, around, "\"" + key + "\": " + value))
              .problems;
      INFO(sound.format << " " << place.pointer << "\n" << inWords(problems));
      REQUIRE(problems.size() == 1);
      CHECK(problems.front().pointer == place.pointer);
      CHECK(problems.front().what.text().find("stands twice") != std::string::npos);
    }
  }
}

TEST_CASE("of a text with countless problems the first thousand are told") {
  std::string sevens = "7";
  std::string empties = "{}";
  std::string twice = "\"x\": 1";
  for (int i = 0; i < 5000; ++i) {
    sevens += ", 7";
    empties += ", {}";
    twice += ", \"x\": 1";
  }
  for (const std::string& text :
       {with(kRigText, "/parts", "[" + sevens + "]"),
        with(kShelfText, "/parts", "[" + empties + "]"), withMember(kRigText, "", twice)}) {
    const Problems problems =
        readAny(text.find("-rig") < text.find("-shelf") ? "rig" : "shelf", text).problems;
    REQUIRE(problems.size() == kMostFinds + 1);
    CHECK(problems.back().what == "more is wrong than these 1000 problems");
  }
}

namespace {

std::vector<Sound> documentsToSpoil() {
  std::vector<Sound> documents = soundDocuments();
  const std::string root = GRAINWISE_SOURCE_DIR;
  documents.push_back({"rig", fileText(root + "/sample-rigs/01-plain-winter.rig.json")});
  documents.push_back({"pools", fileText(root + "/sample-rigs/corrow.pools.json")});
  return documents;
}

/// Reads a spoiled document: every problem must be told in full, and what is accepted must come
/// back the same. Returns whether it was accepted.
bool readSpoiled(const std::string& format, const std::string& text) {
  const Problems problems = readAny(format, text).problems;
  for (const Problem& p : problems) {
    if (p.line < 1 || p.what.empty() || p.fix.empty()) FAIL(describe(p) << "\n" << text);
  }
  return problems.empty() && survivesAs(format, text);
}

/// A number from the environment, or what stands for it.
std::uint64_t setting(const char* name, std::uint64_t otherwise) {
  const char* text = std::getenv(name);
  return text ? std::strtoull(text, nullptr, 10) : otherwise;
}

}  // namespace

TEST_CASE("20,000 spoiled documents are refused or read, and what is read comes back the same") {
  constexpr int kRuns = 20000;
  const std::vector<Sound> documents = documentsToSpoil();
  Spoiler spoiler(20260302);
  int accepted = 0;
  for (int i = 0; i < kRuns; ++i) {
    const Sound& sound = documents[static_cast<std::size_t>(i) % documents.size()];
    accepted += readSpoiled(sound.format, spoiler.spoil(sound.text)) ? 1 : 0;
  }
  CHECK(accepted > kRuns / 20);  // spoiling leaves some sound, or this tests nothing
  CHECK(accepted < kRuns / 2);
}

TEST_CASE("no spoiled document does harm for as long as one looks", "[.fuzz]") {
  // GRAINWISE_FUZZ_SECONDS of it, from GRAINWISE_FUZZ_SEED on.
  const auto end = std::chrono::steady_clock::now() +
                   std::chrono::seconds(setting("GRAINWISE_FUZZ_SECONDS", 10));
  const std::vector<Sound> documents = documentsToSpoil();
  std::uint64_t seed = setting("GRAINWISE_FUZZ_SEED", 1);
  std::uint64_t accepted = 0;
  for (; std::chrono::steady_clock::now() < end; ++seed) {
    const Sound& sound = documents[seed % documents.size()];
    Spoiler spoiler(seed);
    INFO("seed " << seed);
    accepted += readSpoiled(sound.format, spoiler.spoil(sound.text)) ? 1 : 0;
  }
  WARN("next seed " << seed << ", accepted " << accepted);
  CHECK(accepted > 0);
}
