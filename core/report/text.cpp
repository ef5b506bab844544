// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/text.h"

#include <cmath>

#include "core/material/sink_rate.h"
#include "core/model/utf8.h"
#include "core/report/format.h"
#include "core/report/water_state.h"
#include "core/report/words.h"

namespace grainwise {
namespace {

using Rows = std::vector<std::vector<std::string>>;

std::string name(const Rig& rig, std::size_t part) {
  return onOneLine(words::nameOf(rig.parts[part]));
}

std::string gr(Grains mass) { return grainsText(mass.value()); }
std::string ft(Feet length) { return feetText(length.value()); }
std::string perFoot(GrainsPerFoot mass) {
  return fixedText(mass.value(), mass.value() < 2.0 ? 2 : 1);
}

/// "24.5 to 14.1", or one number where both read the same.
std::string fromTo(const std::string& rodEnd, const std::string& flyEnd) {
  return rodEnd == flyEnd ? rodEnd : rodEnd + " to " + flyEnd;
}

std::string heading(const std::string& text) { return "\n" + text + "\n"; }

std::string rodLine(const Rig& rig) {
  if (!rig.rod) return "";
  std::string text = "Rod";
  if (rig.rod->length) text += " " + ft(*rig.rod->length) + " ft";
  if (rig.rod->lineNumber) {
    const double number = *rig.rod->lineNumber;
    text += " #" + fixedText(number, std::floor(number) == number ? 0 : 1);
  }
  return text + (rig.rod->hands.value_or(2) == 1 ? ", one hand\n" : ", two hands\n");
}

std::string partsTable(const Rig& rig, const Analysis& analysis) {
  const MassProfile& profile = analysis.profile;
  Rows rows{{"part", "from ft", "length ft", "gr", "gr/ft"}};
  auto span = profile.spans.begin();
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const PartPlace& place = profile.places[i];
    std::string mass;
    if (span != profile.spans.end() && span->part == i) {
      mass = perFoot(span->properties.mass.rodEnd);
      for (; span != profile.spans.end() && span->part == i; ++span) {
        const LineMass& ends = span->properties.mass;
        const std::string begin = perFoot(ends.rodEnd);
        const std::string end = perFoot(ends.flyEnd);
        if (span->section > 0 && begin != perFoot(std::prev(span)->properties.mass.flyEnd)) {
          mass += " | " + begin;
        }
        if (begin != end) mass += " to " + end;
      }
    }
    rows.push_back({name(rig, i), feetText(place.from.feet()), ft(place.to - place.from),
                    gr(place.mass()), mass});
  }
  return alignedTable(rows, "lrrrl");
}

std::string totalsLines(const Analysis& analysis) {
  const Totals& totals = analysis.totals;
  std::string text = "Rear of head to fly: " + ft(totals.length) + " ft, " + gr(totals.mass) +
                     " gr, centre of mass at " + roundFeetText(totals.centreOfMass.feet()) + " ft\n";
  if (totals.head > Grains(0)) {
    text += "Head " + gr(totals.head) + " gr, head and tip " + gr(totals.headAndTip) + " gr\n";
  }
  return text;
}

std::string scalingLines(const Rig& rig, const Analysis& analysis) {
  constexpr double kUnseen = 5e-5;  // what four decimals of the factor would not show
  std::string text;
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const Part& part = rig.parts[i];
    const double factor = analysis.profile.places[i].scaledBy;
    if (std::abs(factor - 1.0) < kUnseen) continue;
    const bool weighed = part.weighed.has_value();
    text += "Scaled: " + name(rig, i) + " by " + fixedText(factor, 4) + " to its " +
            (weighed ? "weighed " : "label of ") + gr(weighed ? part.weighed->mass : *part.label) +
            " gr\n";
  }
  return text;
}

std::string junctionsTable(const Rig& rig, const Analysis& analysis) {
  if (analysis.junctions.empty()) return "";
  Rows rows;
  for (const Junction& j : analysis.junctions) {
    rows.push_back({feetText(j.at.feet()) + " ft", name(rig, j.rodSide) + " > " + name(rig, j.flySide),
                    perFoot(j.rodSideMean) + " to " + perFoot(j.flySideMean) + " gr/ft",
                    ratioText(j.ratio3ft), words::of(j.verdict)});
  }
  return heading("Joints, by the means of 3 ft on either side") +
         indented(alignedTable(rows, "rllrl"));
}

/// Rows of readings: what, its figure, its verdict (may be empty).
void addRodRows(Rows& rows, const RodFit& rod) {
  if (rod.head && rod.window) {
    const std::string source = rod.windowFromLineNumber ? " (by line number)" : "";
    rows.push_back({"Head on rod",
                    gr(*rod.head) + " gr on " + gr(rod.window->low) + "-" + gr(rod.window->high) +
                        source,
                    rod.headVerdict ? words::of(*rod.headVerdict) : ""});
  }
  if (rod.workingLength && rod.lengthRatio) {
    rows.push_back({"Working length",
                    ft(*rod.workingLength) + " ft, " + ratioText(*rod.lengthRatio) + " rods",
                    rod.lengthVerdict ? words::of(*rod.lengthVerdict) : ""});
  }
}

void addGripRows(Rows& rows, const Grip& grip) {
  if (grip.tipShare) {
    rows.push_back({"Tip share", percentText(*grip.tipShare) + " of the head",
                    grip.tipShareVerdict ? words::of(*grip.tipShareVerdict) : ""});
  }
  if (grip.anchorRatio) {
    rows.push_back({"Anchor", ft(grip.anchor) + " ft, " + ratioText(*grip.anchorRatio) + " rods",
                    grip.anchorVerdict ? words::of(*grip.anchorVerdict) : ""});
  }
  rows.push_back({"Lift",
                  grip.sinking > Grains(0) ? gr(grip.sinking) + " gr of sinking line" : "nothing sinks",
                  ""});
  if (grip.table) {
    rows.push_back({"Trade's table", perFoot(*grip.table) + " gr/ft goes with this head", ""});
  }
}

void addFlyRows(Rows& rows, const FlyFit& fly) {
  if (fly.tipToFly) {
    rows.push_back({"Fly against tip",
                    ratioText(*fly.tipToFly) + ", the fly is " + roundFeetText(fly.feetOfTip->value()) + " ft of tip",
                    fly.tipToFlyVerdict ? words::of(*fly.tipToFlyVerdict) : ""});
  }
  if (fly.leaderToFly) {
    rows.push_back({"Fly against leader", ratioText(*fly.leaderToFly),
                    fly.leaderToFlyVerdict ? words::of(*fly.leaderToFlyVerdict) : ""});
  }
}

/// The association's table is a reference line for single-hand rods, never a verdict.
void addReferenceRows(Rows& rows, const Analysis& analysis) {
  if (analysis.singleHandRow && analysis.totals.first30ft) {
    const auto& row = *analysis.singleHandRow;
    rows.push_back({"Line number " + std::to_string(row.lineNumber),
                    "front 30 ft " + gr(*analysis.totals.first30ft) + " gr, table " + gr(row.low) +
                        "-" + gr(row.high),
                    ""});
  }
}

std::string readings(const Analysis& analysis) {
  Rows rows;
  addRodRows(rows, analysis.rod);
  addGripRows(rows, analysis.grip);
  addFlyRows(rows, analysis.fly);
  addReferenceRows(rows, analysis);
  return heading("Readings") + indented(alignedTable(rows, "lll"));
}

std::string rangeText(const TurnoverRange& range) {
  return " (" + ratioText(range.low) + "-" + ratioText(range.high) + ")";
}

/// "hangs on the fly's drag", where the verdict does.
std::string hangsOn(const TurnoverRange& range) {
  return range.hangsOn ? std::string(", hangs on ") + words::of(*range.hangsOn) : "";
}

std::string turnoverLines(const Rig& rig, const Analysis& analysis, const HeavyRuns& heavy) {
  if (!analysis.turnover) return "";
  const Turnover& t = *analysis.turnover;
  Rows rows{{"Line speed",
             t.leastLineSpeed ? ratioText(t.reserve) + " x the least that turns it over" +
                                    rangeText(t.reserveRange)
                              : "none turns it over",
             words::of(t.reserveVerdict) + hangsOn(t.reserveRange)}};
  if (t.drive) {
    rows.push_back({"Line in the loop",
                    ratioText(*t.drive) + " x what the loop needs" + rangeText(t.driveRange) +
                        ", least at " + onOneLine(words::placeOfDrive(rig, t)),
                    words::of(*t.driveVerdict) + hangsOn(t.driveRange)});
  }
  rows.push_back({"Coast", fixedText(t.coast.value(), 1) + " ft to the fly on speed alone", ""});
  rows.push_back({"Fly at the end", ratioText(t.pace) + " x the line speed" + rangeText(t.paceRange),
                  words::of(t.paceVerdict) + hangsOn(t.paceRange)});
  if (t.nylonVerdict == NylonVerdict::flyTooBulky) {
    rows.push_back({"Nylon", percentText(*t.nylonKeep) + " of the speed is kept in it",
                    words::of(*t.nylonVerdict)});
  }
  if (heavy.cast && heavy.cast->stop == CastStop::turnedOver) {
    rows.push_back({"Unrolling loop",
                    "the fly comes to the front after " + fixedText(heavy.cast->time.value(), 2) +
                        " s, " + fixedText(heavy.cast->endHeight.value(), 0) + " ft above the water",
                    ""});
  }
  return heading("Turnover: " + words::turnoverSentence(rig, analysis)) +
         indented(alignedTable(rows, "lll"));
}

std::string sectionsTable(const Rig& rig, const Analysis& analysis) {
  const WaterState water = waterOf(rig);
  Rows rows{{"section", "ft", "diameter in", "g/cm3", "sinks in/s"}};
  const auto rate = [&](GrainsPerFoot mass, Inches diameter) {
    return fixedText(sinkRate(mass, diameter, water).value(), 1);
  };
  for (const ProfileSpan& span : analysis.profile.spans) {
    const SectionProperties& is = span.properties;
    rows.push_back({name(rig, span.part) + " " + std::to_string(span.section + 1), ft(is.length),
                    fromTo(fixedText(is.diameterRodEnd.value(), 3),
                           fixedText(is.diameterFlyEnd.value(), 3)),
                    fromTo(fixedText(is.densityRodEnd.value(), 2),
                           fixedText(is.densityFlyEnd.value(), 2)),
                    fromTo(rate(is.mass.rodEnd, is.diameterRodEnd),
                           rate(is.mass.flyEnd, is.diameterFlyEnd)) +
                        (timedOf(rig.parts[span.part].sections[span.section]) ? ", timed" : "")});
  }
  if (rows.size() == 1) return "";
  const std::string where = fixedText(water.temperature.value(), 0) + " C, " +
                            fixedText(water.salinity.value(), 0) + " g/kg salt";
  return heading("Sections, sinking (or rising, negative) in water of " + where) +
         indented(alignedTable(rows, "lrlll"));
}

std::string range(const DepthBand& band) {
  return roundFeetText(band.low.value()) + " to " + roundFeetText(band.high.value()) +
         " ft four times out of five";
}

void addHangRows(Rows& rows, const Analysis& analysis, const HeavyRuns& heavy) {
  const HangDown& hang = *analysis.hang;
  const bool bottom = isOnBottom(hang.state);
  std::string where = bottom ? "" : roundFeetText(hang.fly.value()) + " ft";
  if (hang.junction) {
    where += (bottom ? "" : ", ") + std::string("floating line ends at ") +
             roundFeetText(hang.junction->value()) + " ft";
  }
  rows.push_back({"Hang-down", where, words::of(hang.state)});
  if (hang.surfacesFromFly) {
    rows.push_back({"Line surfaces", roundFeetText(hang.surfacesFromFly->value()) + " ft from the fly",
                    ""});
  } else if (hang.heldByRod) {
    rows.push_back({"Line surfaces", "nowhere: the rod holds it", ""});
  }
  const bool real = heavy.band && heavy.band->band;
  const DepthBand& band = real ? *heavy.band->band : *analysis.depthBand;
  const bool lies = real ? band.onBottom() : bottom;
  rows.push_back({"Swing depth", lies ? "on the bottom" : range(band),
                  real ? "from real swings" : "estimate"});
}

void addSwingRows(Rows& rows, const SwingResult& swing) {
  rows.push_back({"After the mend", roundFeetText(swing.afterMend.value()) + " ft", ""});
  rows.push_back({"Deepest", roundFeetText(swing.deepest.value()) + " ft", ""});
  if (swing.swing && !swing.onBottom()) {
    rows.push_back({"Middle of the swing", roundFeetText(swing.swing->value()) + " ft", ""});
  }
  if (swing.timeTo10deg) {
    rows.push_back({"Nearly straight below", "after " + fixedText(swing.timeTo10deg->value(), 0) + " s",
                    ""});
  }
  if (swing.bottomShare > 0.005) {
    rows.push_back({"On the bottom", percentText(swing.bottomShare) + " of the way across", ""});
  }
}

/// "3.0 ft/s", and what a measured depth made of it: "4.0 ft/s (measured +-0.4, stated 3.0)".
std::string surfaceText(const Water& water) {
  std::string speed = feetText(water.surfaceSpeed->value()) + " ft/s";
  const CurrentFit* fit = holding(water.measured, water.surfaceSpeed);
  if (!fit) return speed;
  std::string words = "measured";
  if (fit->plusMinus) words += " +-" + fixedText(fit->plusMinus->value(), 1);
  if (fit->stated) words += ", stated " + feetText(fit->stated->value());
  if (fit->on) words += ", " + onOneLine(*fit->on);
  return speed + " (" + words + ")";
}

std::string waterTable(const Rig& rig, const Analysis& analysis, const HeavyRuns& heavy) {
  Rows rows;
  if (analysis.hang && analysis.depthBand) addHangRows(rows, analysis, heavy);
  if (heavy.swing && heavy.swing->ran()) addSwingRows(rows, *heavy.swing);
  if (rows.empty()) return "";
  return heading("In the water, " + surfaceText(*rig.water) + " at the surface, " + ft(*rig.water->depth) +
                 " ft deep" + (rig.water->bed ? std::string(", over ") + fileName(*rig.water->bed) : "")) +
         indented(alignedTable(rows, "lll"));
}

std::string listOf(const std::string& title, const std::vector<std::string>& lines) {
  if (lines.empty()) return "";
  std::string text = heading(title);
  for (const std::string& line : lines) text += "  " + line + "\n";
  return text;
}

std::vector<std::string> warningLines(const Rig& rig, const Analysis& analysis) {
  std::vector<std::string> lines;
  for (const Warning& warning : analysis.warnings) {
    lines.push_back(name(rig, warning.part) + ": " + onOneLine(warning.what.text()));
  }
  return lines;
}

}  // namespace

std::string reportText(const Rig& rig, const Analysis& analysis, const HeavyRuns& heavy) {
  std::string text = (rig.name.empty() ? std::string("Rig") : onOneLine(rig.name)) + "\n";
  text += rodLine(rig) + "\n";
  text += partsTable(rig, analysis) + "\n";
  text += totalsLines(analysis) + scalingLines(rig, analysis);
  text += junctionsTable(rig, analysis);
  text += readings(analysis);
  text += turnoverLines(rig, analysis, heavy);
  text += waterTable(rig, analysis, heavy);
  text += sectionsTable(rig, analysis);
  text += listOf("Warnings", warningLines(rig, analysis));
  text += listOf("Left out", words::missing(analysis, heavy));
  text += listOf("Cautions", words::cautions(rig, analysis));
  return printable(text, LineEnds::keep);
}

}  // namespace grainwise
