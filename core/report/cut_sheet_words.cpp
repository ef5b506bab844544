// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "core/model/limits.h"
#include "core/report/cut_sheet.h"
#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise {
namespace {

std::string plural(int count, const char* one) { return std::to_string(count) + " " + one; }

std::string tenths(double value) {
  const std::string text = fixedText(value, 1);
  return text.ends_with(".0") ? text.substr(0, text.size() - 2) : text;
}

}  // namespace

std::string feetInchesText(Feet length) {
  constexpr long kEighthsPerFoot = 96;
  const long eighths = std::lround(std::abs(length.value()) * kEighthsPerFoot);
  const long feet = eighths / kEighthsPerFoot;
  const long inches = eighths % kEighthsPerFoot / 8;
  long top = eighths % 8;
  long bottom = 8;
  while (top != 0 && top % 2 == 0) {
    top /= 2;
    bottom /= 2;
  }
  std::string text = length.value() < 0.0 && eighths > 0 ? "-" : "";
  if (feet > 0) text += std::to_string(feet) + " ft";
  if (inches == 0 && top == 0) return feet > 0 ? text : "0 in";
  if (feet > 0) text += " ";
  if (inches > 0 || top == 0) text += std::to_string(inches);
  if (top > 0) {
    if (inches > 0) text += " ";
    text += std::to_string(top) + "/" + std::to_string(bottom);
  }
  return text + " in";
}

std::string lineName(const LineStuff& stuff) {
  if (stuff.material && stuff.diameter) {
    return std::string(fileName(*stuff.material)) + " " + fixedText(stuff.diameter->value(), 3) +
           " in";
  }
  std::string text = stuff.sinks ? "sinking " : "floating ";
  text += tenths(stuff.mass.value()) + " gr/ft";
  if (stuff.sinks && stuff.rate) text += ", " + tenths(stuff.rate->value()) + " in/s";
  return text;
}

std::string cutName(const CutSheet& sheet, const WantedCut& cut) {
  const Part& part = sheet.made[cut.made].part;
  std::string text = words::nameOf(part);
  if (part.sections.size() == 1) return text;
  const auto stuff = stuffOf(part, part.sections[cut.section], 1.0);
  if (!stuff) return text;
  if (stuff->material) return text + ", piece " + std::to_string(cut.section + 1);
  return text + (stuff->sinks ? ", sinking piece" : ", floating piece");
}

std::string ringText(const RingCode& rings) {
  std::string text;
  if (rings.longRings > 0) text = plural(rings.longRings, "long");
  if (rings.shortRings > 0) {
    if (!text.empty()) text += ", ";
    text += plural(rings.shortRings, "short");
  }
  if (rings.quarters > 0) text += ", a gap, " + plural(rings.quarters, "short");
  return text;
}

std::string shortageText(const CutSheet& sheet, const MaterialCuts& material) {
  if (material.uncut.empty()) return {};
  const std::string name = lineName(material.stuff);
  const std::string wanted = fixedText(material.wanted.value(), 2);
  std::string text = name + ": ";
  if (material.spools.empty()) {
    text += "there is no such spool; " + wanted + " ft are wanted";
  } else if (material.missing > Feet(0)) {
    text += wanted + " ft are wanted, " + fixedText(material.there.value(), 2) + " ft are there: " +
            fixedText(material.missing.value(), 2) + " ft short";
  } else {
    text += "enough in all, but no spool is long enough for every piece";
  }
  text += ". Not cut: ";
  for (std::size_t i = 0; i < material.uncut.size(); ++i) {
    const WantedCut& cut = sheet.cuts[material.uncut[i]];
    if (i > 0) text += "; ";
    text += cutName(sheet, cut) + " (" + feetInchesText(cut.length()) + ")";
  }
  return text + ".";
}

std::vector<std::string> benchCautions(const CutSheet& sheet) {
  bool line = false;
  for (const WantedCut& cut : sheet.cuts) {
    const Part& part = sheet.made[cut.made].part;
    line = line || part.kind == PartKind::tip || part.isCoatedLeader();
  }
  if (sheet.cuts.empty()) return {};
  std::vector<std::string> cautions{
      "Blades: cut away from yourself, on a board. Glasses on when you test a knot or a loop."};
  if (line) {
    cautions.emplace_back(
        "Welding: heat burns, and overheated coatings give off fumes; work with the window open.");
  }
  return cautions;
}

}  // namespace grainwise
