// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/compare.h"

#include <cmath>
#include <nlohmann/json.hpp>

#include "core/report/compare_words.h"
#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise {
namespace {

using Json = nlohmann::ordered_json;
using Rows = std::vector<std::vector<std::string>>;

std::string nameOf(const Rig& rig) {
  std::string name = rig.name.empty() ? "Rig" : rig.name;
  for (char& c : name) {
    if (static_cast<unsigned char>(c) < 0x20U || c == 0x7F) c = ' ';
  }
  return name;
}

std::string withVerdict(const Consequence& c, bool ofB) {
  const std::string figure = words::figureOf(c, ofB);
  const auto& f = ofB ? c.b : c.a;
  const std::string verdict = f ? words::of(f->verdict) : "";
  return verdict.empty() ? figure : figure + ", " + verdict;
}

std::string table(const std::vector<Consequence>& list, const std::string& indent) {
  Rows rows;
  for (const Consequence& c : list) {
    if (c.stroke) {
      rows.push_back({words::of(c.effect), words::differenceOf(c), "", ""});
    } else {
      rows.push_back({words::of(c.effect), withVerdict(c, false), "> " + withVerdict(c, true),
                      words::differenceOf(c)});
    }
  }
  const std::string block = alignedTable(rows, "llll");
  std::string text;
  std::size_t begin = 0;
  while (begin < block.size()) {
    const std::size_t end = block.find('\n', begin);
    text += indent + block.substr(begin, end - begin) + "\n";
    begin = end + 1;
  }
  return text;
}

void put(Json& object, const char* key, const std::optional<double>& value) {
  if (value && std::isfinite(*value)) object[key] = *value;
}

void putFigure(Json& entry, const char* key, const char* verdictKey,
               const std::optional<Figure>& figure) {
  if (!figure) return;
  put(entry, key, figure->value);
  const std::string verdict = words::of(figure->verdict);
  if (!verdict.empty()) entry[verdictKey] = verdict;
}

const char* keyOf(Effect effect) {
  switch (effect) {
    case Effect::junction:
      return "junction";
    case Effect::headOnRod:
      return "head_gr";
    case Effect::workingLength:
      return "length_ratio";
    case Effect::tipShare:
      return "tip_share";
    case Effect::anchor:
      return "anchor_ratio";
    case Effect::flyAgainstTip:
      return "tip_to_fly";
    case Effect::flyAgainstLeader:
      return "leader_to_fly";
    case Effect::drive:
      return "drive";
    case Effect::reserve:
      return "reserve";
    case Effect::pace:
      return "pace";
    case Effect::depth:
      return "swing_ft";
    case Effect::swingTime:
      return "to_10_deg_s";
    case Effect::stroke:
      return "stroke";
  }
  return "";
}

Json strokeJson(const Stroke& stroke) {
  Json object = Json::object();
  object["verdict"] = words::of(stroke.verdict);
  object["length_ft"] = stroke.lengthChange.value();
  object["mass_share"] = stroke.massChange;
  object["sinking_gr"] = stroke.sinkingChange.value();
  object["slower_lift"] = stroke.slowerLift;
  object["quicker_lift"] = stroke.quickerLift;
  return object;
}

Json consequencesJson(const std::vector<Consequence>& list) {
  Json array = Json::array();
  for (const Consequence& c : list) {
    Json entry = Json::object();
    entry["reading"] = keyOf(c.effect);
    if (c.stroke) {
      entry["stroke"] = strokeJson(*c.stroke);
      array.push_back(std::move(entry));
      continue;
    }
    putFigure(entry, "a", "a_verdict", c.a);
    putFigure(entry, "b", "b_verdict", c.b);
    if (c.joint) entry["a_at_ft"] = c.joint->at.feet();
    if (c.jointB) entry["b_at_ft"] = c.jointB->at.feet();
    if (c.difference) {
      put(entry, "difference", c.difference->middle);
      put(entry, "difference_low", c.difference->low);
      put(entry, "difference_high", c.difference->high);
    }
    if (c.effect == Effect::depth) entry["from_runs"] = c.fromRuns;
    entry["within_uncertainty"] = c.within;
    array.push_back(std::move(entry));
  }
  return array;
}

Json partJson(const Rig& rig, std::size_t part) {
  Json object = Json::object();
  object["part"] = part;
  object["kind"] = fileName(rig.parts[part].kind);
  object["name"] = words::nameOf(rig.parts[part]);
  return object;
}

/// A fact's key in the file: its figure's name with the unit.
std::string factKey(Fact fact) {
  std::string key = words::of(fact);
  const std::string unit = words::unitOf(fact);
  if (!unit.empty()) key += " " + unit;
  for (char& c : key) {
    if (c == ' ' || c == '/') c = '_';
  }
  return key;
}

Json differenceJson(const Rig& a, const Rig& b, const Difference& d) {
  Json entry = Json::object();
  entry["what"] = words::of(d.what);
  if (d.parts.a) entry["a"] = partJson(a, *d.parts.a);
  if (d.parts.b) entry["b"] = partJson(b, *d.parts.b);
  Json facts = Json::array();
  for (const FactPair& fact : d.facts) {
    Json item = Json::object();
    item["fact"] = factKey(fact.fact);
    put(item, "a", fact.a);
    put(item, "b", fact.b);
    facts.push_back(std::move(item));
  }
  entry["facts"] = std::move(facts);
  entry["within_uncertainty"] = d.within();
  entry["does"] = consequencesJson(d.does);
  return entry;
}

}  // namespace

std::string compareText(const Rig& a, const Rig& b, const Comparison& comparison) {
  std::string text = "A  " + nameOf(a) + "\nB  " + nameOf(b) + "\n";
  if (comparison.differences.empty()) return text + "\nNo difference.\n";
  text += "\nAll of B against A\n";
  text += comparison.overall.empty() ? "  every reading is the same\n"
                                     : table(comparison.overall, "  ");
  text += "\nEach difference by itself, what matters most first\n";
  std::size_t number = 0;
  for (const Difference& d : comparison.differences) {
    text += "  " + std::to_string(++number) + ". " + words::titleOf(d, a, b);
    const std::string facts = words::factsOf(d);
    text += (facts.empty() ? "" : ": " + facts) + "\n";
    if (d.does.empty()) {
      text += "       changes no reading\n";
    } else if (d.within()) {
      text += "       no more than is known:\n";
    }
    text += table(d.does, "       ");
  }
  return text;
}

std::string compareJson(const Rig& a, const Rig& b, const Comparison& comparison) {
  Json report = Json::object();
  report["format"] = "grainwise-compare";
  report["version"] = 1;
  report["a"] = a.name;
  report["b"] = b.name;
  report["overall"] = consequencesJson(comparison.overall);
  Json list = Json::array();
  for (const Difference& d : comparison.differences) list.push_back(differenceJson(a, b, d));
  report["differences"] = std::move(list);
  return report.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace grainwise
