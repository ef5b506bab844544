// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/cut_sheet.h"

#include <nlohmann/json.hpp>

#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise {
namespace {

using Json = nlohmann::ordered_json;
using Rows = std::vector<std::vector<std::string>>;

std::string ft(Feet length) { return fixedText(length.value(), 2) + " ft"; }

std::string indented(const std::string& block) {
  std::string text;
  std::size_t from = 0;
  while (from < block.size()) {
    const std::size_t to = block.find('\n', from) + 1;
    text += "  " + block.substr(from, to - from);
    from = to;
  }
  return text;
}

std::string labelName(const CutSheet& sheet, const TipLabel& label) {
  return label.name.empty() ? words::nameOf(sheet.made[label.made].part) : label.name;
}

std::string spoolBlock(const CutSheet& sheet, const SpoolCuts& cuts, const Spool& spool) {
  Rows rows{{"mark", "", "cut", "finished", "for"}};
  for (const PlacedCut& placed : cuts.cuts) {
    const WantedCut& cut = sheet.cuts[placed.cut];
    rows.push_back({feetInchesText(placed.to), ft(placed.to), feetInchesText(cut.length()),
                    feetInchesText(cut.finished), cutName(sheet, cut)});
  }
  return spool.name + ", " + ft(spool.left) + ": marks from one end\n" +
         indented(alignedTable(rows, "rrrrl")) + "  left " + feetInchesText(cuts.left) + " (" +
         ft(cuts.left) + ")\n\n";
}

std::string labelsBlock(const CutSheet& sheet) {
  Rows rows{{"label", "length", "mass", "rings"}};
  for (const TipLabel& label : sheet.labels) {
    const std::string rings = label.rings ? ringText(*label.rings) : "";
    rows.push_back({labelName(sheet, label), feetInchesText(label.finished),
                    grainsText(label.mass.value()) + " gr", rings});
  }
  return "Labels (rings: a long one counts 5 gr/ft, a short one 1; behind a gap, quarters that "
         "sink)\n" +
         indented(alignedTable(rows, "lrrl"));
}

std::string planLine(const MaterialCuts& material) {
  if (material.exact || material.opened == 0) return {};
  std::string text = lineName(material.stuff) + ": " + std::to_string(material.opened) +
                     " spools opened; by the lengths alone no plan opens fewer than " +
                     std::to_string(material.leastOpened) + "\n";
  return text;
}

Json spoolJson(const CutSheet& sheet, const SpoolCuts& cuts, const Spool& spool) {
  Json entry = Json::object();
  entry["name"] = spool.name;
  entry["spool"] = cuts.spool;
  entry["feet_left_before"] = spool.left.value();
  entry["cuts"] = Json::array();
  for (const PlacedCut& placed : cuts.cuts) {
    const WantedCut& cut = sheet.cuts[placed.cut];
    entry["cuts"].push_back({{"for", cutName(sheet, cut)},
                             {"from_ft", placed.from.value()},
                             {"to_ft", placed.to.value()},
                             {"cut_ft", cut.length().value()},
                             {"finished_ft", cut.finished.value()}});
  }
  entry["feet_left"] = cuts.left.value();
  return entry;
}

Json materialJson(const CutSheet& sheet, const MaterialCuts& material) {
  Json entry = Json::object();
  entry["line"] = lineName(material.stuff);
  entry["wanted_ft"] = material.wanted.value();
  entry["there_ft"] = material.there.value();
  entry["missing_ft"] = material.missing.value();
  entry["uncut"] = Json::array();
  for (const std::size_t index : material.uncut) {
    const WantedCut& cut = sheet.cuts[index];
    entry["uncut"].push_back({{"for", cutName(sheet, cut)}, {"cut_ft", cut.length().value()}});
  }
  entry["spools_opened"] = material.opened;
  entry["least_spools"] = material.leastOpened;
  entry["exact"] = material.exact;
  return entry;
}

Json labelJson(const CutSheet& sheet, const TipLabel& label) {
  Json entry = Json::object();
  entry["name"] = labelName(sheet, label);
  entry["from"] = sheet.made[label.made].from;
  entry["length_ft"] = label.finished.value();
  entry["mass_gr"] = label.mass.value();
  if (label.perFoot) entry["gr_per_ft"] = label.perFoot->value();
  entry["sinking_ft"] = label.sinking.value();
  if (label.rings) {
    entry["rings"] = {{"long", label.rings->longRings},
                      {"short", label.rings->shortRings},
                      {"quarters", label.rings->quarters}};
  }
  return entry;
}

}  // namespace

std::string cutSheetText(const CutSheet& sheet, const Spools& spools) {
  std::string text = "Cut sheet\n\n";
  if (sheet.made.empty() && sheet.bought.empty()) {
    return text + "There is nothing to cut: no tips, leaders or tippets.\n";
  }
  for (const SpoolCuts& cuts : sheet.spools) {
    text += spoolBlock(sheet, cuts, spools.spools[cuts.spool]);
  }
  std::string notes;
  for (const MaterialCuts& material : sheet.materials) {
    notes += planLine(material);
    const std::string lacks = shortageText(sheet, material);
    if (!lacks.empty()) notes += "Short of " + lacks + "\n";
  }
  for (const MadePart& part : sheet.bought) {
    notes += words::nameOf(part.part) + ": tapered, no level spool gives it\n";
  }
  if (!notes.empty()) text += notes + "\n";
  if (!sheet.labels.empty()) text += labelsBlock(sheet);
  for (const std::string& caution : benchCautions(sheet)) text += "\n" + caution;
  if (!sheet.cuts.empty()) text += "\n";
  return text;
}

std::string cutSheetJson(const CutSheet& sheet, const Spools& spools) {
  Json root = Json::object();
  root["format"] = "grainwise-cut-sheet";
  root["version"] = 1;
  root["complete"] = sheet.complete();
  root["spools"] = Json::array();
  for (const SpoolCuts& cuts : sheet.spools) {
    root["spools"].push_back(spoolJson(sheet, cuts, spools.spools[cuts.spool]));
  }
  root["lines"] = Json::array();
  for (const MaterialCuts& material : sheet.materials) {
    root["lines"].push_back(materialJson(sheet, material));
  }
  root["labels"] = Json::array();
  for (const TipLabel& label : sheet.labels) root["labels"].push_back(labelJson(sheet, label));
  root["not_cut"] = Json::array();
  for (const MadePart& part : sheet.bought) {
    root["not_cut"].push_back({{"name", words::nameOf(part.part)}, {"why", "tapered"}});
  }
  return root.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace grainwise
