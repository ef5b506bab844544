// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>
#include <map>
#include <set>

#include "core/analysis/readings.h"
#include "core/io/rig_file.h"
#include "core/material/agreement.h"
#include "core/model/check.h"
#include "tests/support/shipped_files.h"

using namespace grainwise;
namespace fs = std::filesystem;

namespace {

const fs::path kRoot = GRAINWISE_SOURCE_DIR;
constexpr double kSum_gr = 1e-9;  // sections are given in short decimals: only rounding is left
constexpr double kWholeFeet_ft = 1e-9;  // the same for lengths

std::vector<Part> group(const std::string& name) {
  std::vector<Part> parts;
  for (const Part& part : test::genericShelf().parts) {
    if (part.group == name) parts.push_back(part);
  }
  return parts;
}

const Part& named(const std::string& name) {
  for (const Part& part : test::genericShelf().parts) {
    if (part.name == name) return part;
  }
  FAIL("the shelf holds no " << name);
  return test::genericShelf().parts.front();
}

Grains sumOf(const Part& part) {
  double sum_gr = 0;
  for (const Section& section : part.sections) {
    const auto& mass = section.mass.value();
    sum_gr += section.length.value() * (mass.rodEnd.value() + mass.flyEnd.value()) / 2;
  }
  return Grains(sum_gr);
}

Feet sinkingLength(const Part& part) {
  double feet = 0;
  for (const Section& section : part.sections) {
    if (sinks(section, part.kind)) feet += section.length.value();
  }
  return Feet(feet);
}

/// The rod end of a part's first section.
double gr_per_ft(const Part& part) { return part.sections.at(0).mass.value().rodEnd.value(); }

/// The rated sink rate of each class of level line, wherever a section of it stands in a group.
std::map<double, std::set<double>> ratesByClass(const std::string& name) {
  std::map<double, std::set<double>> rates;
  for (const Part& part : group(name)) {
    for (const Section& section : part.sections) {
      if (!section.sinkRate) continue;
      rates[section.mass.value().rodEnd.value()].insert(section.sinkRate->rodEnd.value());
    }
  }
  return rates;
}

/// The line number in a name that ends or starts with it: "single-hand line #5", "#8, 6 in/s".
int lineNumber(const Part& part) {
  return std::stoi(part.name.value().substr(part.name->find('#') + 1));
}

/// A rig with the part in its own place; an extension goes behind the head.
Rig rigWith(const Part& part) {
  Rig rig;
  rig.name = part.id.value();
  for (const char* name : {"coated running line 0.032 in", "short head 525", "10 ft, 11 gr/ft",
                           "leader 1.5 ft, 0.017 in nylon", "tippet 2.5 ft, 0.013 in fluorocarbon",
                           "Leech, lead eyes 1/24 oz"}) {
    const Part& usual = named(name);
    const bool behind = part.style == Style::extension && usual.kind == PartKind::head;
    if (behind) rig.parts.push_back(part);
    rig.parts.push_back(usual.kind == part.kind && !behind ? part : usual);
  }
  for (Part& p : rig.parts) {
    p.id.reset();
    p.group.reset();
  }
  return rig;
}

}  // namespace

TEST_CASE("Every part of the shelf makes a sound rig in its place") {
  for (const Part& part : test::genericShelf().parts) {
    INFO(part.id.value());
    const Rig rig = rigWith(part);
    Problems problems = check(rig);
    for (const Problem& p : checkAgreement(rig)) problems.push_back(p);
    for (const Problem& p : problems) UNSCOPED_INFO(describe(p));
    CHECK(problems.empty());
    const Analysis analysis = analyse(rig);
    CHECK(analysis.missing == std::vector<Missing>{Missing::rod, Missing::water});
    CHECK(analysis.warnings.empty());
  }
}

TEST_CASE("The shelf stands in groups from rod to fly, and no two parts share a name") {
  std::vector<std::string> order;
  std::set<std::string> names;
  for (const Part& part : test::genericShelf().parts) {
    INFO(part.id.value());
    REQUIRE(part.group);
    REQUIRE(part.name);
    CHECK(names.insert(*part.name).second);
    if (order.empty() || order.back() != *part.group) order.push_back(*part.group);
  }
  const std::vector<std::string> expected{
      "Running lines", "Extensions", "Short heads", "Fine-taper heads", "Long bellies",
      "Intermediate and multi-density heads", "Single-hand lines", "Level tips", "Float/sink tips",
      "Tapered tips", "Intermediate tips", "Floating fronts", "Coated leaders", "Leaders",
      "Tippets", "Flies"};
  CHECK(order == expected);
  CHECK(std::is_sorted(test::genericShelf().parts.begin(), test::genericShelf().parts.end(),
                       [](const Part& a, const Part& b) { return a.kind < b.kind; }));
}

TEST_CASE("The sections of every head on the shelf add up to its label") {
  int heads = 0;
  for (const Part& part : test::genericShelf().parts) {
    if (part.kind != PartKind::head) continue;
    ++heads;
    INFO(part.id.value());
    REQUIRE(part.label);
    REQUIRE(part.style);
    CHECK(sumOf(part).value() == Approx(part.label->value()).margin(kSum_gr));
  }
  CHECK(heads >= 60);
}

TEST_CASE("Short heads stand from 200 to 750 grains with no gap over 50") {
  const auto heads = group("Short heads");
  REQUIRE(heads.size() >= 12);
  CHECK(heads.front().label == Grains(200));
  CHECK(heads.back().label == Grains(750));
  for (std::size_t i = 1; i < heads.size(); ++i) {
    const double step = heads[i].label->value() - heads[i - 1].label->value();
    CHECK(step > 0);
    CHECK(step <= 50);
  }
}

TEST_CASE("Every two-hand line number has heads inside its window") {
  const auto served = [](const char* name, Style style, int number) {
    const auto window = defaultWindow(style, number).value();
    const auto heads = group(name);
    return std::any_of(heads.begin(), heads.end(), [&](const Part& head) {
      return head.style == style && *head.label >= window.low && *head.label <= window.high;
    });
  };
  for (int number = 3; number <= 10; ++number) {
    INFO("#" << number);
    CHECK(served("Short heads", Style::shortHead, number));
    CHECK(served("Fine-taper heads", Style::fine, number));
    if (number >= 6) CHECK(served("Long bellies", Style::longBelly, number));
  }
}

TEST_CASE("Fine tapers end at 4 to 6.5 grains per foot, long bellies take a floating front") {
  for (const Part& head : group("Fine-taper heads")) {
    const double end = head.sections.back().mass->flyEnd.value();
    CHECK(end >= 4);
    CHECK(end <= 6.5);
  }
  const auto fronts = group("Floating fronts");
  for (const Part& head : group("Long bellies")) {
    INFO(head.name.value());
    const double end = head.sections.back().mass->flyEnd.value();
    CHECK(std::any_of(fronts.begin(), fronts.end(), [&](const Part& front) {
      return front.length() == Feet(15) && gr_per_ft(front) == end &&
             sinkingLength(front) == Feet(0);
    }));
  }
}

TEST_CASE("Heads of other densities have the sinking stretch that their name says") {
  std::set<std::string> makes;
  for (const Part& head : group("Intermediate and multi-density heads")) {
    INFO(head.name.value());
    const std::string make = head.name->substr(head.name->find(", ") + 2);
    makes.insert(make);
    CHECK(sinks(head.sections.front(), head.kind) == !make.starts_with("float"));
    CHECK(sinks(head.sections.back(), head.kind));
    const double front = head.sections.back().sinkRate.value().flyEnd.value();
    CHECK(front == (make.ends_with("sink") ? 3.0 : 1.5));
  }
  CHECK(makes == std::set<std::string>{"intermediate", "float/intermediate", "intermediate/sink",
                                       "float/intermediate/sink"});
}

TEST_CASE("Single-hand lines #4 to #9 stand inside the association's limits") {
  std::set<int> numbers;
  for (const Part& part : group("Single-hand lines")) {
    INFO(part.name.value());
    const int number = lineNumber(part);
    numbers.insert(number);
    Rig rig;
    rig.rod = Rod{};
    rig.rod->hands = 1;
    rig.rod->lineNumber = number;
    rig.parts = {part};
    const Analysis a = analyse(rig);
    REQUIRE(a.totals.first30ft);
    REQUIRE(a.singleHandRow);
    CHECK(*a.totals.first30ft >= a.singleHandRow->low);
    CHECK(*a.totals.first30ft <= a.singleHandRow->high);
  }
  CHECK(numbers == std::set<int>{4, 5, 6, 7, 8, 9});
}

TEST_CASE("Level tips of every class stand at ten feet, rated as the trade rates them") {
  for (const int mass : {5, 7, 8, 10, 11, 14, 17, 20}) {
    const Part& tip = named("10 ft, " + std::to_string(mass) + " gr/ft");
    CHECK(tip.style == Style::level);
    CHECK(tip.length() == Feet(10));
    CHECK(gr_per_ft(tip) == mass);
    CHECK(sinkingLength(tip) == Feet(10));
  }
  const auto rates = ratesByClass("Level tips");
  REQUIRE(rates.size() == 8);
  double before = 0;
  for (const auto& [mass, rate] : rates) {
    INFO(mass << " gr/ft");
    REQUIRE(rate.size() == 1);
    CHECK(*rate.begin() > before);  // the denser the faster
    before = *rate.begin();
  }
  // Common practice, no source: 8 gr/ft 6-7, 11 7-8, 14 8-9, 17 9-10 in/s.
  for (const auto& [mass, low] : std::map<double, double>{{8, 6}, {11, 7}, {14, 8}, {17, 9}}) {
    CHECK(*rates.at(mass).begin() >= low);
    CHECK(*rates.at(mass).begin() <= low + 1);
  }
}

TEST_CASE("Float/sink tips keep their length and mass whatever share of them sinks") {
  const std::map<std::string, double> shares{
      {"none", 0}, {"1/4", 0.25}, {"1/2", 0.5}, {"3/4", 0.75}, {"all", 1}};
  for (const std::string length : {"10", "12.5", "15"}) {
    for (const std::string mass : {"8", "11", "14", "17"}) {
      for (const auto& [share, part] : shares) {
        const Part& tip = named(length + " ft, " + share + " sinking, " + mass + " gr/ft");
        INFO(*tip.name);
        const double feet = length == "10" ? 10 : length == "15" ? 15 : 12.5;
        CHECK(tip.style == Style::floatSink);
        CHECK(tip.length().value() == Approx(feet).margin(kWholeFeet_ft));
        CHECK(sinkingLength(tip).value() == Approx(feet * part).margin(kWholeFeet_ft));
        CHECK(sumOf(tip).value() == Approx(feet * std::stoi(mass)).margin(kSum_gr));
      }
    }
  }
  const auto level = ratesByClass("Level tips");
  for (const auto& [mass, rates] : ratesByClass("Float/sink tips")) {
    CHECK(rates == level.at(mass));
  }
}

TEST_CASE("Tapered tips #5 to #10 stand at 3, 6 and 8 in/s and weigh the same at each") {
  for (int number = 5; number <= 10; ++number) {
    std::set<double> masses;
    for (const int rate : {3, 6, 8}) {
      const Part& tip = named("#" + std::to_string(number) + ", " + std::to_string(rate) + " in/s");
      CHECK(tip.style == Style::tapered);
      CHECK(tip.sections.at(0).sinkRate->rodEnd.value() == rate);
      CHECK(tip.sections.at(0).mass->rodEnd > tip.sections.at(0).mass->flyEnd);
      masses.insert(sumOf(tip).value());
    }
    CHECK(masses.size() == 1);
  }
}

TEST_CASE("Coated leaders come light and heavy, fastest at the butt, with bare nylon in front") {
  std::map<std::string, std::set<double>> lengths, rates;
  for (const Part& leader : group("Coated leaders")) {
    INFO(leader.name.value());
    const std::string make = leader.name->find("heavy") != std::string::npos ? "heavy" : "light";
    REQUIRE(leader.isCoatedLeader());
    REQUIRE(leader.sections.size() == 2);
    const Section& coated = leader.sections.front();
    CHECK(coated.sinkRate->rodEnd > coated.sinkRate->flyEnd);
    CHECK_FALSE(isBareNylon(leader, coated));
    CHECK(isBareNylon(leader, leader.sections.back()));
    lengths[make].insert(coated.length.value());
    rates[make].insert(coated.sinkRate->rodEnd.value());
  }
  for (const char* make : {"light", "heavy"}) {
    CHECK(lengths[make].size() == 3);
    CHECK(rates[make].size() == 4);
  }
  CHECK(gr_per_ft(named("coated leader 9 ft, heavy, 5 in/s")) >
        gr_per_ft(named("coated leader 9 ft, light, 5 in/s")));
}

TEST_CASE("The rest of the trade has its rows: running lines, extensions, leaders, tippets") {
  const auto materials = [](const std::string& name, Material material) {
    const auto parts = group(name);
    return std::count_if(parts.begin(), parts.end(), [&](const Part& part) {
      return part.sections.at(0).material == material;
    });
  };
  CHECK(group("Running lines").size() >= 4);
  CHECK(materials("Running lines", Material::nylon) == 2);
  for (const Part& part : group("Extensions")) CHECK(part.style == Style::extension);
  CHECK(group("Extensions").size() >= 3);
  for (const Part& part : group("Intermediate tips")) CHECK(sinkingLength(part) == part.length());
  CHECK(group("Intermediate tips").size() >= 3);
  CHECK(materials("Leaders", Material::nylon) >= 8);
  CHECK(materials("Tippets", Material::nylon) >= 8);
  CHECK(materials("Tippets", Material::fluorocarbon) >= 6);
}

TEST_CASE("Flies run from small and light to double tungsten") {
  const auto flies = group("Flies");
  CHECK(flies.size() >= 15);
  double lightest = 1e9, heaviest = 0;
  int bigButLight = 0, small = 0;
  for (const Part& part : flies) {
    const Fly& fly = part.fly.value();
    INFO(part.name.value());
    CHECK(fly.wetMass() >= fly.dry);
    CHECK(fly.dry > Grains(0));
    lightest = std::min(lightest, fly.wetMass().value());
    heaviest = std::max(heaviest, fly.wetMass().value());
    const double area = fly.dragAreaOrDefault().value();
    if (area <= 0.6 && fly.wetMass() <= Grains(6)) ++small;
    if (area >= 2.5 && fly.wetMass() <= Grains(20)) ++bigButLight;
  }
  CHECK(lightest <= 1);
  CHECK(heaviest >= 60);
  CHECK(small >= 2);
  CHECK(bigButLight >= 2);
}

TEST_CASE("Every part of the sample rigs stands on the shelf") {
  int parts = 0;
  for (const auto& entry : fs::directory_iterator(kRoot / "sample-rigs")) {
    if (!entry.path().string().ends_with(".rig.json")) continue;
    const auto rig = loadRig(entry.path());
    REQUIRE(rig);
    for (const Part& part : rig->parts) {
      INFO(entry.path().filename() << ": " << part.name.value_or("?"));
      ++parts;
      CHECK(std::any_of(test::genericShelf().parts.begin(), test::genericShelf().parts.end(), [&](Part stock) {
        stock.id.reset();
        stock.group.reset();
        return stock == part;
      }));
    }
  }
  CHECK(parts >= 70);
}
