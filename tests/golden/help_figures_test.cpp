// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <sstream>

#include "core/analysis/rules.h"
#include "core/model/limits.h"

using namespace grainwise;

namespace {

/// The sections of a help page by their titles.
std::map<std::string, std::string> sectionsOf(const char* page) {
  std::ifstream file(std::filesystem::path(GRAINWISE_SOURCE_DIR) / "resources" / "help" / page);
  if (!file) FAIL(page << " cannot be read");
  std::map<std::string, std::string> sections;
  std::string line, title;
  while (std::getline(file, line)) {
    if (line.starts_with("## ")) title = line.substr(3);
    sections[title] += line + "\n";
  }
  return sections;
}

bool says(const std::string& text, const std::string& figure) {
  const std::regex whole("(^|[^0-9.])" + std::regex_replace(figure, std::regex("[.]"), "[.]") + "($|[^0-9.]|[.][^0-9])");
  return std::regex_search(text, whole);
}

}  // namespace

TEST_CASE("The figures of the help are those of the readings") {
  const Rules by;
  const auto percent = [](double share) { return shortest(std::round(share * 1000) / 10); };
  const std::map<std::string, std::vector<std::string>> wanted{
      {"Hinge",
       {shortest(by.junctions.hinge), shortest(by.junctions.slow), shortest(by.junctions.stepUp),
        shortest(by.junctions.drop), shortest(by.junctions.collapse)}},
      {"Tip share", {percent(by.grip.light), percent(by.grip.right), percent(by.grip.noGrip), percent(by.grip.heavy)}},
      {"Head on rod", {shortest(by.rod.inside.value()), shortest(by.rod.touch.value())}},
      {"Turnover",
       {shortest(by.turnover.heap), shortest(by.turnover.probablyNot),
        shortest(by.turnover.toSpare), shortest(by.turnover.doesNotCarry),
        shortest(by.turnover.carries), shortest(by.turnover.dies),
        shortest(by.turnover.kicks), shortest(by.turnover.lively),
        shortest(by.turnover.nylonKeep), shortest(kUsualAirAltitude.value())}},
      {"Stroke", {percent(by.stroke.sameMass)}},
  };
  const auto sections = sectionsOf("2-readings.md");
  for (const auto& [title, figures] : wanted) {
    REQUIRE(sections.contains(title));
    for (const std::string& figure : figures) {
      INFO(title << ": " << figure);
      CHECK(says(sections.at(title), figure));
    }
  }
  CHECK_FALSE(says("within 15 grains, to 30", "40"));
  CHECK_FALSE(says("0.85", "5"));
}
