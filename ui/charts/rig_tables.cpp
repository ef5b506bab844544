// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/rig_tables.h"

#include <cmath>

#include "core/units/si.h"
#include "ui/charts/picture.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr double kWide = 1100;
constexpr double kText = 14;
constexpr double kStrip = 96;
constexpr double kProfile = 300;
constexpr double kBelowProfile = 2 * kText;
/// Decimals to which lengths, masses and times are known.
constexpr int kTenths = 1;
constexpr int kHundredths = 2;
constexpr int kThousandths = 3;

OutCell feet(double ft, DisplayUnits units) {
  return figureCell(ft, Measure::length, kHundredths, units);
}
OutCell grains(Grains mass, DisplayUnits units) {
  return figureCell(mass.value(), Measure::mass, units.grams ? kHundredths : kTenths, units);
}
OutCell lineMass(GrainsPerFoot mass, DisplayUnits units) {
  return figureCell(mass.value(), Measure::lineMass, kHundredths, units);
}

PictureStyle lightStyle(DisplayUnits units) {
  PictureStyle style;
  style.colours = coloursOf(Scheme::light);
  style.colours.paper = Qt::white;
  style.units = units;
  style.text = kText;
  return style;
}

}  // namespace

OutTable partsTable(const Rig& rig, const Analysis& analysis, DisplayUnits units) {
  OutTable table;
  table.header = {PictureWords::tr("Part"),
                  PictureWords::tr("Name"),
                  headed(PictureWords::tr("From the back of the head"), lengthUnit(units)),
                  headed(PictureWords::tr("To"), lengthUnit(units)),
                  headed(PictureWords::tr("Weighs"), massUnit(units)),
                  headed(PictureWords::tr("A foot at its rod end"), lineMassUnit(units)),
                  headed(PictureWords::tr("A foot at its fly end"), lineMassUnit(units))};
  const MassProfile& profile = analysis.profile;
  for (std::size_t i = 0; i < profile.places.size(); ++i) {
    const Part& part = rig.parts[i];
    const PartPlace& place = profile.places[i];
    const bool line = part.kind != PartKind::fly;
    table.rows.push_back({kindWords(part.kind), partWords(part, units),
                          feet(place.from.feet(), units), feet(place.to.feet(), units),
                          grains(place.mass(), units),
                          line ? lineMass(profile.after(place.from), units) : OutCell::none(),
                          line ? lineMass(profile.before(place.to), units) : OutCell::none()});
  }
  return table;
}

OutTable jointsTable(const Rig& rig, const Analysis& analysis, DisplayUnits units) {
  OutTable table;
  table.header = {headed(PictureWords::tr("Joint at"), lengthUnit(units)),
                  PictureWords::tr("Rod side"),
                  PictureWords::tr("Fly side"),
                  headed(PictureWords::tr("Mean of three feet before"), lineMassUnit(units)),
                  headed(PictureWords::tr("Mean of three feet behind"), lineMassUnit(units)),
                  PictureWords::tr("Ratio"),
                  PictureWords::tr("What it does"),
                  PictureWords::tr("Verdict")};
  for (const Junction& j : analysis.junctions) {
    table.rows.push_back({feet(j.at.feet(), units), partWords(rig.parts[j.rodSide], units),
                          partWords(rig.parts[j.flySide], units), lineMass(j.rodSideMean, units),
                          lineMass(j.flySideMean, units), OutCell(j.ratio3ft, kHundredths),
                          junctionWords(j.verdict), gradeWord(grade(j.verdict))});
  }
  return table;
}

OutTable profileTable(const Analysis& analysis, DisplayUnits units) {
  OutTable table;
  table.header = {headed(PictureWords::tr("From the back of the head"), lengthUnit(units)),
                  headed(PictureWords::tr("A foot weighs"), lineMassUnit(units)),
                  headed(PictureWords::tr("So far"), massUnit(units))};
  for (const ProfileRow& row : analysis.rows) {
    table.rows.push_back(
        {feet(row.at.feet(), units), lineMass(row.mass, units), grains(row.soFar, units)});
  }
  return table;
}

OutTable readingsTable(const Rig& rig, const Analysis& analysis, DisplayUnits units) {
  OutTable table;
  table.header = {PictureWords::tr("Reading"), PictureWords::tr("Figure"), PictureWords::tr("From"),
                  PictureWords::tr("What it says"), PictureWords::tr("Verdict")};
  const auto word = [](const std::optional<Grade>& grade) {
    return grade ? gradeWord(*grade) : QString();
  };
  for (const Reading reading : {Reading::depth, Reading::junction, Reading::tipShare,
                                Reading::flyAgainstTip, Reading::headOnRod}) {
    const TileWords tile = tileWords(reading, rig, analysis, units);
    table.rows.push_back({tile.title, tile.number, tile.from, tile.verdict, word(tile.grade)});
  }
  table.rows.push_back({PictureWords::tr("Turnover"), OutCell::none(), OutCell::none(),
                        turnoverSentence(rig, analysis), OutCell::none()});
  if (analysis.stroke) {
    table.rows.push_back({PictureWords::tr("Stroke"), OutCell::none(), OutCell::none(),
                          strokeSentence(*analysis.stroke), OutCell::none()});
  }
  return table;
}

OutTable castTable(const CastPicture* picture, DisplayUnits units) {
  OutTable table;
  table.header = {headed(PictureWords::tr("Time"), QStringLiteral("s")),
                  headed(PictureWords::tr("Fly ahead of the caster"), lengthUnit(units)),
                  headed(PictureWords::tr("Fly above the water"), lengthUnit(units)),
                  headed(PictureWords::tr("Still moving"), QStringLiteral("J")),
                  headed(PictureWords::tr("Lost to the air"), QStringLiteral("J")),
                  headed(PictureWords::tr("Lost to the fly"), QStringLiteral("J"))};
  if (picture == nullptr) return table;
  for (const CastFrame& frame : picture->frames) {
    const QPointF fly = frame.line_m.back() / si::kMetresPerFoot;
    table.rows.push_back({OutCell(frame.time_s, kThousandths), feet(fly.x(), units),
                          feet(fly.y(), units), OutCell(frame.moving_J, kThousandths),
                          OutCell(frame.toAir_J, kThousandths),
                          OutCell(frame.toFly_J, kThousandths)});
  }
  return table;
}

OutTable riverTable(const RiverPicture* picture, DisplayUnits units) {
  OutTable table;
  table.header = {headed(PictureWords::tr("Time"), QStringLiteral("s")),
                  headed(PictureWords::tr("Fly downstream of the rod tip"), lengthUnit(units)),
                  headed(PictureWords::tr("Fly across"), lengthUnit(units)),
                  headed(PictureWords::tr("Fly below the surface"), lengthUnit(units))};
  if (picture == nullptr) return table;
  for (const RiverFrame& frame : picture->frames) {
    const RiverPoint& fly = frame.line.front();
    table.rows.push_back({OutCell(frame.time_s, kHundredths), feet(fly.downstream_ft, units),
                          feet(fly.across_ft, units), feet(fly.depth_ft, units)});
  }
  return table;
}

OutPicture linePicture(const Rig& rig, const Conditions& conditions, const QString& title,
                       DisplayUnits units) {
  const PictureRig shown(rig, conditions);
  const PictureStyle style = lightStyle(units);
  const FootRange range = rangeOf({shown});
  const QRectF strip(2 * kText, kText, kWide - 6 * kText, kStrip);
  const Captions captions = captionsOf(shown, strip, range, style, CaptionDetail::full, nullptr);
  return {title, QSizeF(kWide, std::ceil(strip.bottom() + captions.height + kText)), [=](QPainter& p) {
            p.setRenderHint(QPainter::Antialiasing);
            paintCaptions(p, captions, strip.center().y(), style);
            paintStrip(p, strip, shown, range, Setup::alone, style);
          }};
}

OutPicture profilePicture(const std::vector<Rig>& rigs, const Conditions& conditions,
                          const QString& title, DisplayUnits units) {
  std::vector<PictureRig> shown;
  for (const Rig& rig : rigs) shown.emplace_back(rig, conditions);
  const PictureStyle style = lightStyle(units);
  return {title, QSizeF(kWide, kProfile), [=](QPainter& p) {
            p.setRenderHint(QPainter::Antialiasing);
            p.setFont(style.font());
            p.setPen(style.colours.ink);
            p.drawText(QRectF(kText, 2, kWide, 1.6 * kText), Qt::AlignVCenter,
                       headed(title, lineMassUnit(units)));
            const QRectF plot(5 * kText, 2.4 * kText, kWide - 7 * kText,
                              kProfile - 2.4 * kText - kBelowProfile);
            paintProfile(p, plot, shown, rangeOf(shown), style);
          }};
}

}  // namespace grainwise::ui
