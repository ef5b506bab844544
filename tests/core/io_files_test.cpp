// SPDX-License-Identifier: GPL-3.0-or-later
#include <unistd.h>

#include <filesystem>

#include "core/io/check_file.h"
#include "tests/support/documents.h"

using namespace grainwise;
using namespace grainwise::test;
namespace fs = std::filesystem;

namespace {

/// A folder of the test's own, gone when the test ends.
class Folder {
 public:
  Folder() : m_path(fs::temp_directory_path() / ("grainwise-io-" + std::to_string(getpid()))) {
    fs::remove_all(m_path);
    fs::create_directory(m_path);
  }
  ~Folder() { fs::remove_all(m_path); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  fs::path put(const std::string& name, const std::string& text) const {
    std::ofstream(m_path / name, std::ios::binary) << text;
    return m_path / name;
  }
  fs::path path() const { return m_path; }

 private:
  fs::path m_path;
};

Problem onlyProblem(const Problems& problems) {
  INFO(inWords(problems));
  REQUIRE(problems.size() == 1);
  CHECK_FALSE(problems.front().fix.empty());
  return problems.front();
}

const std::string kBom = "\xEF\xBB\xBF";

}  // namespace

TEST_CASE("a sound document of each format comes back byte for byte") {
  for (const Sound& sound : soundDocuments()) {
    INFO(sound.format);
    const ReadBack back = readAny(sound.format, sound.text);
    INFO(inWords(back.problems));
    CHECK(back.written == sound.text);
  }
}

TEST_CASE("each sample and the shelf are sound and come back byte for byte") {
  const fs::path root = GRAINWISE_SOURCE_DIR;
  int count = 0;
  for (const char* folder : {"sample-rigs", "resources/shelf"}) {
    for (const auto& entry : fs::directory_iterator(root / folder)) {
      const std::string name = entry.path().filename().string();
      const auto stem = entry.path().stem().extension().string();
      if (entry.path().extension() != ".json" || stem.empty()) continue;
      INFO(name);
      CHECK(inWords(checkFile(entry.path())).empty());
      const std::string text = fileText(entry.path().string());
      REQUIRE_FALSE(text.empty());
      CHECK(readAny(stem.substr(1), text).written == text);
      ++count;
    }
  }
  CHECK(count >= 17);
}

TEST_CASE("keys that a version does not know survive in every object of every format") {
  for (const Sound& sound : soundDocuments()) {
    const JsonText json = parseJson(sound.text);
    std::vector<std::pair<std::string, const JsonValue*>> open{{"", &json.root}};
    while (!open.empty()) {
      const auto [at, value] = open.back();
      open.pop_back();
      for (std::size_t i = 0; i < value->children.size(); ++i) {
        const JsonValue& child = value->children[i];
        const bool list = value->kind == JsonKind::array;
        open.emplace_back(at + "/" + (list ? std::to_string(i) : std::string(child.key)), &child);
      }
      if (value->kind != JsonKind::object) continue;
      INFO(sound.format << " " << at);
      const std::string extra = "\"x-later\": { \"deep\" : [1.50, null ] }";
      const ReadBack back = readAny(sound.format, withMember(sound.text, at, extra));
      CHECK(inWords(back.problems).empty());
      CHECK(back.written.find(extra) != std::string::npos);
      CHECK(readAny(sound.format, back.written).written == back.written);
    }
  }
}

TEST_CASE("a byte-order mark is accepted and not written back") {
  CHECK(readAny("rig", kBom + kRigText).written == kRigText);
}

TEST_CASE("line ends of another system are accepted") {
  std::string text;
  for (const char c : kRigText) text += c == '\n' ? std::string("\r\n") : std::string(1, c);
  CHECK(readAny("rig", text).written == kRigText);
}

TEST_CASE("all problems of a file come at once, in its order, with lines") {
  std::string text = with(kRigText, "/swing/mend_s", "31");
  text = with(text, "/rod/hands", "\"two\"");
  text = with(text, "/parts/2/weighed/on", "7");
  text = with(text, "/parts/1/sections/1", "{ \"length_ft\": 1, \"length_ft\": 1 }");
  text = withMember(text, "/parts/4", "\"name\": null");
  text = with(text, "/parts/0/kind", "\"hat\"");
  const auto rig = readRig(text, "x.rig.json");
  REQUIRE_FALSE(rig);
  CHECK(
      inWords(rig.error()) ==
      "x.rig.json:9: /rod/hands: hands is text; give a number, 1 to 2\n"
      "x.rig.json:15: /parts/0/kind: kind \"hat\" is not known; give one of running-line, head, "
      "tip, leader, tippet, fly\n"
      "x.rig.json:27: /parts/1/sections/1: of this section only the length is known; give one of "
      "these pairs: gr_per_ft with diameter_in, density_g_cm3, sink_in_per_s or \"floats\": true; "
      "or diameter_in with density_g_cm3 or material\n"
      "x.rig.json:27: /parts/1/sections/1/length_ft: the key \"length_ft\" stands twice in this "
      "object; keep one of the two\n"
      "x.rig.json:40: /parts/2/weighed/on: on is a number; give text in double quotes\n"
      "x.rig.json:50: /parts/4/name: name is null; give text in double quotes, or leave it out\n"
      "x.rig.json:69: /swing/mend_s: mend 31 is outside its limits; give 0 to 30 s\n");
}

TEST_CASE("an unknown version is refused alone, whatever else the file holds") {
  std::string text = with(kRigText, "/version", "2");
  text = with(text, "/rod/hands", "7");
  const auto rig = readRig(text);
  REQUIRE_FALSE(rig);
  CHECK(onlyProblem(rig.error()).pointer == "/version");
}

TEST_CASE("a file of another format is refused by the reader and found by the check") {
  const auto rig = readRig(kPoolsText);
  REQUIRE_FALSE(rig);
  CHECK(onlyProblem(rig.error()).what == "this is \"grainwise-pools\", not a rig");
  const Folder folder;
  CHECK(checkFile(folder.put("odd name.txt", kPoolsText)).empty());
}

TEST_CASE("each way in which a file cannot be read has its message") {
  const Folder folder;
  const auto says = [&](const fs::path& path, const std::string& words) {
    const Problem p = onlyProblem(checkFile(path));
    CHECK(p.file == path.string());
    INFO(describe(p));
    CHECK(p.what.text().find(words) != std::string::npos);
    CHECK_FALSE(loadRig(path));
    CHECK_FALSE(loadDeck(path));
  };
  says(folder.path() / "nowhere.rig.json", "no such file");
  says(folder.path() / "no" / "folder", "no such file");
  says(folder.path(), "is a folder");
  says(folder.put("empty", ""), "is empty");
  says(folder.put("space", " \n"), "is empty");
  says(folder.put("list", "[]"), "holds a list");
  says(folder.put("format", "{\"version\": 1}"), "format is missing");
  says(folder.put("number", "{\"format\": 1}"), "format is a number");
  says(folder.put("other", "{\"format\": \"song\", \"version\": 1}"), "\"song\" is not known");
  says(folder.put("large", std::string(4194305, ' ')), "larger than");
  says(folder.put("a\nb", std::string(70000, '{')), "cannot stand here");
  if (fs::exists("/proc/self/mem")) says("/proc/self/mem", "cannot be read");
  const fs::path locked = folder.put("locked", kRigText);
  fs::permissions(locked, fs::perms::none);
  if (geteuid() != 0) says(locked, "cannot be read");  // nothing is locked for root
}

TEST_CASE("a file is loaded as it was written") {
  const Folder folder;
  const auto rig = loadRig(folder.put("a.rig.json", kRigText));
  REQUIRE(rig);
  CHECK(writeRig(*rig) == kRigText);
  CHECK(loadShelf(folder.put("a.shelf.json", kShelfText)));
  CHECK(loadPools(folder.put("a.pools.json", kPoolsText)));
  CHECK(loadSpools(folder.put("a.spools.json", kSpoolsText)));
  CHECK(loadDeck(folder.put("a.deck.json", kDeckText)));
}

TEST_CASE("a deck is checked with the rig files that its cards name") {
  const Folder folder;
  const fs::path deck = folder.put("a.deck.json", kDeckText);
  folder.put("01-plain-winter.rig.json", kRigText);  // of another card
  Problem p = onlyProblem(checkFile(deck));
  CHECK(p.pointer == "/cards/0/rig_b");
  CHECK(p.line == 22);
  CHECK(p.what.text().find("there is no such file") != std::string::npos);
  folder.put("wrong-hinge.rig.json", with(kRigText, "/swing/mend_s", "31"));
  p = onlyProblem(checkFile(deck));
  CHECK(p.what.text().find("/swing/mend_s: mend 31") != std::string::npos);
  folder.put("wrong-hinge.rig.json", kRigText);
  CHECK(checkFile(deck).empty());

  const auto read = loadDeck(deck);
  REQUIRE(read);
  const auto inside = rigOfCard(*read->cards[0].rig, folder.path());
  const auto beside = rigOfCard(*read->cards[0].rigB, folder.path());
  REQUIRE(inside);
  REQUIRE(beside);
  CHECK(inside->name == "in the deck");
  CHECK(writeRig(*beside) == kRigText);
}

TEST_CASE("a card's rig is read in the deck's own folder only, whatever links lie there") {
  const Folder folder;
  const fs::path deck = folder.path() / "deck";
  fs::create_directory(deck);
  fs::create_directory(deck / "rigs");
  folder.put("outside.rig.json", kRigText);
  folder.put("deck/inside.rig.json", kRigText);
  fs::create_symlink("../outside.rig.json", deck / "out.rig.json");
  fs::create_symlink("../..", deck / "rigs" / "up");
  fs::create_symlink("inside.rig.json", deck / "alias.rig.json");
  for (const fs::path& home : {deck, deck / ""}) {
    CHECK(rigOfCard(std::string("inside.rig.json"), home));
    CHECK(rigOfCard(std::string("alias.rig.json"), home));
    for (const std::string name : {"out.rig.json", "rigs/up/outside.rig.json"}) {
      INFO(name);
      const auto out = rigOfCard(name, home);
      REQUIRE_FALSE(out);
      CHECK(onlyProblem(out.error()).what.text().find("link out of the deck's own folder") != std::string::npos);
    }
  }
}

TEST_CASE("a rig within a deck keeps its heading in front and writes it once as a file") {
  const std::string heading = "\"format\": \"grainwise-rig\", \"version\": 1";
  const auto deck = readDeck(withMember(kDeckText, "/cards/0/rig", heading));
  REQUIRE(deck);
  const std::string text = writeDeck(*deck);
  CHECK(text.find("{\n        \"format\": \"grainwise-rig\",\n        \"version\": 1,\n"
                  "        \"name\": \"in the deck\"") != std::string::npos);
  CHECK(writeDeck(*readDeck(text)) == text);
  const auto alone = readRig(writeRig(std::get<Rig>(*deck->cards[0].rig)));
  REQUIRE(alone);
  CHECK(alone->name == "in the deck");
}

TEST_CASE("a part from the clipboard leaves room for the rig around it") {
  const auto part = [](std::size_t lists) {
    return "{\"kind\": \"fly\", \"dry_gr\": 1, \"x\": " + std::string(lists, '[') +
           std::string(lists, ']') + "}";
  };
  const auto fits = readPart(part(29));
  REQUIRE(fits);
  Rig rig;
  rig.parts = {*fits};
  CHECK(readRig(writeRig(rig)));
  CHECK_FALSE(readPart(part(30)));
}
