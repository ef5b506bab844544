// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/card_figures.h"

#include <QLocale>
#include <algorithm>
#include <array>
#include <cstdlib>

#include "core/analysis/readings.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

/// Less deep than that is on top.
constexpr Feet kOnTop{0.05};

QString plain(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }
QString lengths(Feet value, DisplayUnits units) {
  return plain(shownValue(value.value(), Measure::length, units), 1);
}

std::optional<Grade> gradeOf(const PictureRig& rig, Reading reading) {
  std::optional<Grade> worst;
  for (const GradedReading& graded : gradedReadings(*rig.analysis)) {
    if (graded.reading == reading) worst = std::max(worst.value_or(graded.grade), graded.grade);
  }
  return worst;
}

/// The reading that tells two rigs apart: the one whose grades lie furthest from each other; of one rig
/// the one that is wrong.
std::optional<Reading> tellingReading(const std::vector<PictureRig>& rigs) {
  constexpr std::array<Reading, 5> kOrder{Reading::junction, Reading::flyAgainstTip, Reading::anchor,
                                          Reading::tipShare, Reading::headOnRod};
  std::optional<Reading> telling;
  int most = 0;
  for (const Reading reading : kOrder) {
    const auto first = gradeOf(rigs[0], reading);
    int apart = first == Grade::wrong ? 1 : 0;
    if (rigs.size() > 1) {
      const auto second = gradeOf(rigs[1], reading);
      apart = std::abs(int(first.value_or(Grade::fits)) - int(second.value_or(Grade::fits)));
    }
    if (apart <= most) continue;
    most = apart;
    telling = reading;
  }
  return telling;
}

Figure junctionFigure(const Analysis& a, DisplayUnits units) {
  if (!a.worstJunction) return {};
  const Junction& j = a.junctions[*a.worstJunction];
  return {Setup::alone, junctionFigures(j, units),
          PictureWords::tr("%1: %2").arg(lineMassUnit(units), junctionWords(j.verdict))};
}

Figure readingFigure(Reading reading, const Analysis& a, DisplayUnits units) {
  switch (reading) {
    case Reading::flyAgainstTip:
      if (!a.fly.tipToFly || !a.fly.tipToFlyVerdict) return {};
      return {Setup::alone, PictureWords::tr("%1 ×").arg(ratioText(*a.fly.tipToFly)),
              flyWords(*a.fly.tipToFlyVerdict)};
    case Reading::anchor:
      if (!a.rod.lengthRatio || !a.grip.anchorVerdict) return {};
      return {Setup::alone, numberText(*a.rod.lengthRatio, 2),
              PictureWords::tr("rods of line: %1").arg(anchorWords(*a.grip.anchorVerdict))};
    case Reading::tipShare:
      if (!a.grip.tipShare || !a.grip.tipShareVerdict) return {};
      return {Setup::alone, percentText(*a.grip.tipShare),
              PictureWords::tr("of the head: %1").arg(tipShareWords(*a.grip.tipShareVerdict))};
    case Reading::headOnRod:
      if (!a.rod.head || !a.rod.window || !a.rod.headVerdict) return {};
      return {Setup::alone, massNumber(*a.rod.head, units),
              (a.rod.window->low <= *a.rod.head && *a.rod.head <= a.rod.window->high
                   ? PictureWords::tr("in %1–%2: %3")
                   : PictureWords::tr("for %1–%2: %3", "a head's grains outside the rod's window"))
                  .arg(massNumber(a.rod.window->low, units), massText(a.rod.window->high, units),
                       headWords(a.rod))};
    default:
      return junctionFigure(a, units);
  }
}

Figure flyFigure(const PictureRig& rig, DisplayUnits units) {
  const auto fly = rig.rig->flyIndex();
  if (!fly || !rig.rig->parts[*fly].fly) return {};
  return {Setup::alone, massText(rig.rig->parts[*fly].fly->wetMass(), units),
          PictureWords::tr("the wet fly")};
}

Figure depthFigure(const PictureRig& rig, DisplayUnits units) {
  const Analysis& a = *rig.analysis;
  if (!a.hang) return {};
  if (isOnBottom(a.hang->state))
    return {Setup::alone, PictureWords::tr("bottom"), PictureWords::tr("it lies on the bed")};
  if (!a.depthBand)
    return {Setup::alone, PictureWords::tr("on top", "as large as a number: a short word"), PictureWords::tr("nothing pulls it under")};
  return {
      Setup::alone,
      PictureWords::tr("%1–%2").arg(lengths(a.depthBand->low, units),
                                    lengths(a.depthBand->high, units)),
      PictureWords::tr("of %1 down, an estimate").arg(lengthText(*rig.rig->water->depth, units))};
}

/// A depth of a real swing: `words` take its unit and the depth of the water.
Figure swingFigure(const PictureRig& rig, Feet depth, const QString& words, DisplayUnits units) {
  if (depth < kOnTop) return {Setup::alone, PictureWords::tr("on top", "as large as a number: a short word"), PictureWords::tr("not yet under")};
  return {Setup::alone, lengths(depth, units),
          words.arg(lengthUnit(units), lengthText(*rig.rig->water->depth, units))};
}

/// How deep the fly is on its way across.
Figure acrossFigure(const PictureRig& rig, const SwingResult& run, DisplayUnits units) {
  if (run.onBottom())
    return {Setup::alone, PictureWords::tr("bottom"), PictureWords::tr("it lies on the bed")};
  if (!run.swing || !rig.analysis->depthBand) return depthFigure(rig, units);
  return swingFigure(rig, *run.swing, PictureWords::tr("%1 on the way across; an estimate, of %2"), units);
}

Figure underWaterFigure(const PictureRig& rig, DisplayUnits units) {
  if (!rig.analysis->hang || !rig.analysis->hang->surfacesFromFly) return {};
  const double feet = rig.analysis->hang->surfacesFromFly->value();
  return {Setup::alone, plain(shownValue(feet, Measure::length, units), 0),
          PictureWords::tr("%1 of line under water, an estimate").arg(lengthUnit(units))};
}

Figure heaviestFigure(const PictureRig& rig, DisplayUnits units) {
  GrainsPerFoot most;
  for (const ProfileRow& row : rig.analysis->rows) most = std::max(most, row.mass);
  return {Setup::alone, lineMassNumber(most, units),
          PictureWords::tr("%1: the heaviest foot").arg(lineMassUnit(units))};
}

CardFigure figureOf(Reading reading) {
  switch (reading) {
    case Reading::flyAgainstTip:
      return CardFigure::flyAgainstTip;
    case Reading::anchor:
      return CardFigure::line;
    case Reading::tipShare:
      return CardFigure::tipShare;
    case Reading::headOnRod:
      return CardFigure::head;
    default:
      return CardFigure::joint;
  }
}

/// The figure that is chosen where a card does not say.
std::optional<CardFigure> chosen(const ShownCard& shown) {
  const Card& card = shown.card;
  if (card.figure) return card.figure;
  if (card.show == CardShow::river) return shown.rigs.size() > 1 ? CardFigure::across : CardFigure::range;
  if (const auto reading = tellingReading(shown.rigs)) return figureOf(*reading);
  if (card.show == CardShow::profile && shown.rigs.size() == 1) return CardFigure::foot;
  return shown.rigs.size() > 1 ? std::optional(CardFigure::fly) : std::nullopt;
}

bool isOfRun(CardFigure figure) {
  return figure == CardFigure::drift || figure == CardFigure::deepest || figure == CardFigure::across;
}

Figure ofRun(CardFigure figure, const PictureRig& rig, const SwingResult& run, DisplayUnits units) {
  switch (figure) {
    case CardFigure::drift:
      return swingFigure(rig, run.afterMend, PictureWords::tr("%1 when the line comes tight; an estimate, of %2"),
                         units);
    case CardFigure::deepest:
      return swingFigure(rig, run.deepest, PictureWords::tr("%1 at its deepest; an estimate, of %2"), units);
    default:
      return acrossFigure(rig, run, units);
  }
}

Figure ofRig(CardFigure figure, const PictureRig& rig, DisplayUnits units) {
  const Analysis& a = *rig.analysis;
  switch (figure) {
    case CardFigure::fly:
      return flyFigure(rig, units);
    case CardFigure::foot:
      return heaviestFigure(rig, units);
    case CardFigure::joint:
      return junctionFigure(a, units);
    case CardFigure::tipShare:
      return readingFigure(Reading::tipShare, a, units);
    case CardFigure::flyAgainstTip:
      return readingFigure(Reading::flyAgainstTip, a, units);
    case CardFigure::head:
      return readingFigure(Reading::headOnRod, a, units);
    case CardFigure::line:
      return readingFigure(Reading::anchor, a, units);
    case CardFigure::underWater:
      return underWaterFigure(rig, units);
    default:
      return depthFigure(rig, units);
  }
}

/// Cards whose picture bears its own numbers, or that have none.
bool hasNone(const ShownCard& shown) {
  const CardShow show = shown.card.show;
  return shown.rigs.empty() || !shown.missing.empty() || show == CardShow::text || show == CardShow::flies ||
         show == CardShow::pools || show == CardShow::tips || shown.card.figure == CardFigure::none;
}

}  // namespace

QString figureLine(const Figure& figure) {
  return QStringLiteral("%1  %2 %3").arg(setupLetter(figure.setup), figure.number, figure.words).trimmed();
}

std::vector<Figure> figuresOf(const ShownCard& shown, DisplayUnits units) {
  std::vector<Figure> figures;
  const auto which = hasNone(shown) ? std::nullopt : chosen(shown);
  if (!which) return figures;
  for (std::size_t i = 0; i < shown.rigs.size(); ++i) {
    Figure figure;
    if (!isOfRun(*which)) {
      figure = ofRig(*which, shown.rigs[i], units);
    } else if (shown.runs && i < shown.runs->swings.size()) {
      const auto& run = shown.runs->swings[i];
      figure = run ? ofRun(*which, shown.rigs[i], *run, units) : depthFigure(shown.rigs[i], units);
    }
    figure.setup = setupOf(i, shown.rigs.size());
    if (!figure.number.isEmpty()) figures.push_back(figure);
  }
  return figures;
}

bool hasFigures(const ShownCard& shown, DisplayUnits units) {
  if (!figuresOf(shown, units).empty()) return true;
  const auto which = hasNone(shown) ? std::nullopt : chosen(shown);
  return which && isOfRun(*which) && !shown.runs && shown.card.show == CardShow::river;
}

}  // namespace grainwise::ui
