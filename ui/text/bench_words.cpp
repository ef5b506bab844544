// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/bench_words.h"

#include <QCoreApplication>

#include "core/report/cut_sheet.h"
#include "ui/text/problem_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

class Bench {
  Q_DECLARE_TR_FUNCTIONS(Bench)
};

}  // namespace

QString tapeText(Feet length, DisplayUnits units) {
  if (!units.metres) return QString::fromStdString(feetInchesText(length));
  return Bench::tr("%1 m").arg(numberText(shownValue(length.value(), Measure::length, units), 3));
}

QString lineWords(const LineStuff& stuff, DisplayUnits units) {
  if (stuff.material && stuff.diameter) {
    const QString size = diameterText(*stuff.diameter, units);
    return *stuff.material == Material::nylon ? Bench::tr("nylon %1").arg(size)
                                              : Bench::tr("fluorocarbon %1").arg(size);
  }
  const QString mass = lineMassText(stuff.mass, units);
  if (!stuff.sinks) return Bench::tr("floating %1").arg(mass);
  if (!stuff.rate) return Bench::tr("sinking %1").arg(mass);
  return Bench::tr("sinking %1, %2").arg(mass, rateText(*stuff.rate, units));
}

QString cutWords(const CutSheet& sheet, const WantedCut& cut, DisplayUnits units) {
  const Part& part = sheet.made[cut.made].part;
  QString name = partWords(part, units);
  if (part.sections.size() == 1) return name;
  const auto stuff = stuffOf(part, part.sections[cut.section], 1.0);
  if (!stuff || stuff->material) return Bench::tr("%1, piece %2").arg(name).arg(cut.section + 1);
  return stuff->sinks ? Bench::tr("%1, sinking piece").arg(name)
                      : Bench::tr("%1, floating piece").arg(name);
}

QString labelWords(const CutSheet& sheet, const TipLabel& label, DisplayUnits units) {
  return partWords(sheet.made[label.made].part, units);
}

QString shortageWords(const CutSheet& sheet, const MaterialCuts& material, DisplayUnits units) {
  if (material.uncut.empty()) return {};
  QStringList pieces;
  for (const std::size_t index : material.uncut) {
    const WantedCut& cut = sheet.cuts[index];
    pieces.append(
        Bench::tr("%1 (%2)").arg(cutWords(sheet, cut, units), tapeText(cut.length(), units)));
  }
  const QString name = lineWords(material.stuff, units);
  const QString list = pieces.join(Bench::tr("; "));
  const QString wanted = tapeText(material.wanted, units);
  if (material.spools.empty()) {
    return Bench::tr("%1: no such spool, %2 wanted. Not cut: %3.").arg(name, wanted, list);
  }
  if (material.missing > Feet(0)) {
    return Bench::tr("%1: %2 short. Not cut: %3.")
        .arg(name, tapeText(material.missing, units), list);
  }
  return Bench::tr("%1: enough in all, but no spool is long enough. Not cut: %2.").arg(name, list);
}

QString weighWords(const WeighIn& read, DisplayUnits units) {
  if (read.slip == UnitSlip::gramsTakenForGrains) {
    return Bench::tr("far too light: were these grams?");
  }
  if (read.slip == UnitSlip::grainsTakenForGrams) {
    return Bench::tr("far too heavy: were these grains?");
  }
  if (read.fitsWithLoops) return Bench::tr("as it should be with its loops");
  const QString off = massText(Grains(std::abs(read.difference.value())), units);
  const QString share = percentText(std::abs(read.share));
  switch (read.verdict) {
    case WeighVerdict::light:
      return Bench::tr("%1 light, %2").arg(off, share);
    case WeighVerdict::heavy:
      return Bench::tr("%1 heavy, %2").arg(off, share);
    case WeighVerdict::fits:
      break;
  }
  return Bench::tr("as it should be, within %1").arg(massText(read.tolerance, units));
}

QString poundsText(const PoundRange& range) {
  const auto text = [](double pounds) { return numberText(pounds, pounds < 9.95 ? 1 : 0); };
  const QString low = text(range.low_lb);
  const QString high = text(range.high_lb);
  return low == high ? Bench::tr("%1 lb").arg(low) : Bench::tr("%1–%2 lb").arg(low, high);
}

QString weakestWords(const Leader& leader, DisplayUnits units) {
  const WeakestLink& weakest = leader.weakest;
  const QString holds = poundsText(weakest.holds);
  if (weakest.knot == Knot::terminal) {
    return Bench::tr("Weakest: the knot at the fly, about %1").arg(holds);
  }
  return Bench::tr("Weakest: the knot from %1 to %2, about %3")
      .arg(diameterText(leader.pieces[weakest.piece].diameter, units),
           diameterText(leader.pieces[weakest.piece + 1].diameter, units), holds);
}

QString problemText(const Problem& problem) {
  const QString text = whatAndFix(problem);
  return problem.line > 0 ? Bench::tr("line %1: %2").arg(problem.line).arg(text) : text;
}

}  // namespace grainwise::ui
