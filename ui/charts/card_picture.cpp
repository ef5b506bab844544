// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/card_picture.h"

#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <array>
#include <cstdlib>

#include "core/analysis/readings.h"
#include "core/io/deck_file.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

QString plain(double value, int decimals) { return QLocale().toString(value, 'f', decimals); }
QString lengths(Feet value, DisplayUnits units) {
  return plain(shownValue(value.value(), Measure::length, units), 1);
}

void addRig(ShownCard& shown, const std::optional<CardRig>& rig, const std::filesystem::path& folder,
            const Conditions& conditions) {
  if (!rig) return;
  const auto read = rigOfCard(*rig, folder);
  if (read) {
    shown.rigs.emplace_back(*read, conditions);
    return;
  }
  const auto* name = std::get_if<std::string>(&*rig);
  QString what = name ? PictureWords::tr("the rig %1").arg(QString::fromStdString(*name))
                      : PictureWords::tr("a rig");
  if (!read.error().empty()) what += QStringLiteral(": ") + QString::fromStdString(read.error().front().what);
  shown.missing.append(what);
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
              PictureWords::tr("in %1–%2: %3")
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
    return {Setup::alone, PictureWords::tr("on top"), PictureWords::tr("nothing pulls it under")};
  return {
      Setup::alone,
      PictureWords::tr("%1–%2").arg(lengths(a.depthBand->low, units),
                                    lengths(a.depthBand->high, units)),
      PictureWords::tr("of %1 down, an estimate").arg(lengthText(*rig.rig->water->depth, units))};
}

/// How deep the fly is on its way across in a real swing, with the range of the estimate.
Figure swingFigure(const PictureRig& rig, const SwingResult& run, DisplayUnits units) {
  Figure figure = depthFigure(rig, units);
  if (run.onBottom())
    return {Setup::alone, PictureWords::tr("bottom"), PictureWords::tr("it lies on the bed")};
  if (!run.swing || !rig.analysis->depthBand) return figure;
  figure.words = PictureWords::tr("%1 on the way across; an estimate, of %2")
                     .arg(lengthUnit(units), lengthText(*rig.rig->water->depth, units));
  figure.number = lengths(*run.swing, units);
  return figure;
}

Figure heaviestFigure(const PictureRig& rig, DisplayUnits units) {
  GrainsPerFoot most;
  for (const ProfileRow& row : rig.analysis->rows) most = std::max(most, row.mass);
  return {Setup::alone, lineMassNumber(most, units),
          PictureWords::tr("%1: the heaviest foot").arg(lineMassUnit(units))};
}

void paintWords(QPainter& p, const QRectF& box, const QStringList& lines, const PictureStyle& style) {
  p.setFont(style.font(1.3));
  p.setPen(style.colours.ink);
  p.drawText(box, Qt::AlignCenter | Qt::TextWordWrap, lines.join(QLatin1Char('\n')));
}

/// Where the feet run from left to right: room for labels on both sides.
QRectF plotOf(const QRectF& box, const PictureStyle& style) {
  return box.adjusted(style.text * 3.2, 0, -style.text * 1.4, 0);
}

void paintLetter(QPainter& p, const QRectF& box, double middle, Setup setup, const PictureStyle& style) {
  p.setFont(style.font(1.5, true));
  p.setPen(setup == Setup::b ? style.colours.ochreWord : style.colours.river);
  p.drawText(QRectF(box.left(), middle - style.text * 1.5, style.text * 3, style.text * 3),
             Qt::AlignVCenter | Qt::AlignLeft, setupLetter(setup));
}

void paintStrips(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                 const FootRange& range, const PictureStyle& style) {
  const double each = box.height() / double(rigs.size());
  for (std::size_t i = 0; i < rigs.size(); ++i) {
    const QRectF row(box.left(), box.top() + each * double(i), box.width(), each * 0.86);
    paintStrip(p, plotOf(row, style), rigs[i], range, setupOf(i, rigs.size()), style);
    if (rigs.size() > 1) paintLetter(p, row, row.center().y(), setupOf(i, rigs.size()), style);
  }
}

void paintLines(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                const PictureStyle& style, bool full) {
  const FootRange range = rangeOf(rigs);
  const double each = box.height() / double(rigs.size());
  for (std::size_t i = 0; i < rigs.size(); ++i) {
    const QRectF row(box.left(), box.top() + each * double(i), box.width(), each);
    const CaptionDetail detail = full ? CaptionDetail::full : CaptionDetail::brief;
    const double under = captionsOf(rigs[i], plotOf(row, style), range, style, detail, p.device()).height;
    const double most = row.width() * 0.11;
    const double tall = std::clamp(row.height() - under - style.text, style.text, most);
    const double top = row.top() + std::max(0.0, row.height() - under - tall) / 2;
    const QRectF strip(row.left(), top, row.width(), tall);
    const QRectF plot = plotOf(strip, style);
    const Captions captions = captionsOf(rigs[i], plot, range, style, detail, p.device());
    paintCaptions(p, captions, strip.center().y(), style);
    paintStrip(p, plot, rigs[i], range, setupOf(i, rigs.size()), style);
    if (rigs.size() > 1) paintLetter(p, strip, strip.center().y(), setupOf(i, rigs.size()), style);
  }
}

void paintOverProfile(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                      const PictureStyle& style, double stripShare) {
  const FootRange range = rangeOf(rigs);
  const double strips = std::min(box.height() * stripShare, box.width() * 0.1 * double(rigs.size()));
  paintStrips(p, QRectF(box.left(), box.top(), box.width(), strips), rigs, range, style);
  QRectF plot = plotOf(box, style);
  plot.setTop(box.top() + strips + style.text * 0.8);
  plot.setBottom(box.bottom() - style.text * 1.8);
  paintProfile(p, plot, rigs, range, style);
}

}  // namespace

ShownCard shownCard(const Card& card, const std::filesystem::path& folder, const Conditions& conditions) {
  ShownCard shown;
  shown.card = card;
  addRig(shown, card.rig, folder, conditions);
  addRig(shown, card.rigB, folder, conditions);
  if (card.show != CardShow::text && !card.rig)
    shown.missing.append(PictureWords::tr("this card names no rig"));
  return shown;
}

QString figureLine(const Figure& figure) {
  return QStringLiteral("%1  %2 %3").arg(setupLetter(figure.setup), figure.number, figure.words).trimmed();
}

std::vector<Figure> figuresOf(const ShownCard& shown, DisplayUnits units) {
  std::vector<Figure> figures;
  if (shown.rigs.empty() || shown.card.show == CardShow::text || !shown.missing.empty()) return figures;
  const auto reading = tellingReading(shown.rigs);
  for (std::size_t i = 0; i < shown.rigs.size(); ++i) {
    const PictureRig& rig = shown.rigs[i];
    Figure figure;
    if (shown.card.show == CardShow::river) {
      // Two rigs are compared by their swings, which know angle and slack; one has its range.
      const bool swung = shown.rigs.size() > 1 && shown.runs && shown.runs->swings[i];
      figure = swung ? swingFigure(rig, *shown.runs->swings[i], units) : depthFigure(rig, units);
    } else if (reading) {
      figure = readingFigure(*reading, *rig.analysis, units);
    } else if (shown.card.show == CardShow::profile) {
      figure = heaviestFigure(rig, units);
    } else if (shown.rigs.size() > 1) {
      figure = flyFigure(rig, units);
    } else {
      figure = readingFigure(Reading::tipShare, *rig.analysis, units);
    }
    figure.setup = setupOf(i, shown.rigs.size());
    if (!figure.number.isEmpty()) figures.push_back(figure);
  }
  return figures;
}

void paintCardPicture(QPainter& p, const QRectF& box, const ShownCard& shown, const PictureStyle& style,
                      bool full, double time_s) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  if (!shown.missing.empty()) {
    QStringList lines{PictureWords::tr("Missing here:")};
    paintWords(p, box, lines + shown.missing, style);
  } else if (!shown.rigs.empty()) {
    switch (shown.card.show) {
      case CardShow::strip:
        paintLines(p, box, shown.rigs, style, full);
        break;
      case CardShow::profile:
        paintOverProfile(p, box, shown.rigs, style, 0.3);
        break;
      case CardShow::compare:
        paintOverProfile(p, box, shown.rigs, style, 0.45);
        break;
      case CardShow::river:
        if (shown.runs && shown.runs->any()) {
          paintSwing(p, box, shown.rigs, *shown.runs, time_s, style);
        } else {
          paintRiver(p, box, shown.rigs, style);
        }
        break;
      case CardShow::cast:
        if (shown.runs) paintCast(p, box, shown.rigs, *shown.runs, time_s, style);
        break;
      case CardShow::text:
        break;
    }
  }
  p.restore();
}

}  // namespace grainwise::ui
