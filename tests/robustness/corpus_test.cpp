// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <filesystem>

#include "tests/robustness/fuzz/json_mutator.h"
#include "tests/support/documents.h"
#include "tests/support/reader_property.h"

using namespace grainwise;
using namespace grainwise::test;

namespace {

constexpr int kChangesPerDocument = 400;

struct Entry {
  std::string format;
  std::string name;
  std::string text;
};

/// What the fuzz targets start from, and what they once found.
std::vector<Entry> corpus() {
  std::vector<Entry> all;
  const std::string folder = GRAINWISE_SOURCE_DIR "/tests/robustness/corpus";
  for (const auto& file : std::filesystem::recursive_directory_iterator(folder)) {
    if (!file.is_regular_file()) continue;
    all.push_back({file.path().parent_path().filename().string(), file.path().filename().string(),
                   fileText(file.path().string())});
  }
  return all;
}

}  // namespace

TEST_CASE("each document of the fuzz corpus is refused in words or reads back as it was read") {
  const std::vector<Entry> all = corpus();
  CHECK(all.size() >= 15);
  for (const Entry& entry : all) {
    INFO(entry.format << "/" << entry.name);
    CHECK(readerFault(entry.format, entry.text) == "");
  }
}

TEST_CASE("documents whose values were exchanged are refused in words or read back as read") {
  int accepted = 0;
  int tried = 0;
  for (const Entry& entry : corpus()) {
    std::string text = entry.text;
    for (int i = 0; i < kChangesPerDocument; ++i, ++tried) {
      if (i % 8 == 0) text = entry.text;  // up to eight changes on top of each other
      text = JsonMutator(static_cast<unsigned>(tried)).mutate(text);
      bool sound = false;
      const std::string fault = readerFault(entry.format, text, &sound);
      if (!fault.empty()) FAIL(entry.format << ": " << fault << "\n" << text);
      accepted += sound ? 1 : 0;
    }
  }
  INFO(accepted << " of " << tried << " were accepted");
  CHECK(accepted > tried / 20);  // or only refusals are tried
  CHECK(accepted < tried);
}
