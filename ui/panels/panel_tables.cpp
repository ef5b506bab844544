// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/panel_tables.h"

#include "core/report/cut_sheet.h"
#include "ui/text/bench_words.h"
#include "ui/text/choice_words.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr int kTenths = 1;
constexpr int kHundredths = 2;

OutCell length(Feet value, DisplayUnits units) {
  return figureCell(value.value(), Measure::length, kHundredths, units);
}

/// Depths of a band, to a tenth and no finer; empty without one.
OutCell depth(const DepthBand* band, Feet DepthBand::*which, DisplayUnits units) {
  return band != nullptr ? figureCell((band->*which).value(), Measure::length, kTenths, units)
                         : OutCell::none();
}

const DepthBand* bandOf(const std::optional<DepthBand>& band) {
  return band ? &*band : nullptr;
}

}  // namespace

OutTable depthsTable(const std::vector<DepthRow>& rows, DisplayUnits units) {
  const QString unit = lengthUnit(units);
  OutTable table;
  table.header = {PictureWords::tr("Pool"), headed(PictureWords::tr("Water"), unit)};
  for (const QString& current : {PictureWords::tr("Low current"), PictureWords::tr("Usual current"),
                                 PictureWords::tr("High current")}) {
    table.header << headed(current, unitOf(Measure::speed, units))
                 << headed(PictureWords::tr("%1: fly from").arg(current), unit)
                 << headed(PictureWords::tr("%1: to").arg(current), unit)
                 << PictureWords::tr("%1: what it does").arg(current);
  }
  for (const DepthRow& row : rows) {
    std::vector<OutCell> cells{QString::fromStdString(row.pool.name),
                               length(row.pool.depth, units)};
    for (const DepthCell& cell : row.cells) {
      cells.push_back(figureCell(cell.surface.value(), Measure::speed, kHundredths, units));
      cells.push_back(depth(bandOf(cell.band), &DepthBand::low, units));
      cells.push_back(depth(bandOf(cell.band), &DepthBand::high, units));
      cells.emplace_back(cell.state ? depthWords(*cell.state) : missingWords(Missing::flyMass));
    }
    table.rows.push_back(std::move(cells));
  }
  return table;
}

OutTable poolsTable(const Pools& pools, DisplayUnits units) {
  OutTable table;
  table.header = {PictureWords::tr("Pool"), headed(PictureWords::tr("Water"), lengthUnit(units)),
                  headed(PictureWords::tr("Current on top"), unitOf(Measure::speed, units)),
                  headed(PictureWords::tr("Temperature"), unitOf(Measure::temperature, units)),
                  PictureWords::tr("Bed")};
  for (const Pool& pool : pools.pools) {
    table.rows.push_back(
        {QString::fromStdString(pool.name), length(pool.depth, units),
         figureCell(pool.surfaceSpeed.value(), Measure::speed, kHundredths, units),
         pool.temperature
             ? figureCell(pool.temperature->value(), Measure::temperature, kTenths, units)
             : OutCell::none(),
         bedWords(pool.bed.value_or(Bed::gravel))});
  }
  return table;
}

OutTable tipsTable(const ChoiceList& list, DisplayUnits units) {
  const QString unit = lengthUnit(units);
  OutTable table;
  table.header = {PictureWords::tr("Tip"),
                  PictureWords::tr("Verdict"),
                  headed(PictureWords::tr("Fly from"), unit),
                  headed(PictureWords::tr("Fly to"), unit),
                  PictureWords::tr("How well it carries the fly (1: just)"),
                  PictureWords::tr("What it says")};
  for (int row = 0; row < list.rowCount(); ++row) {
    const TipChoice& tip = list.choice(row);
    const DepthBand* band = tip.figures.depth ? bandOf(tip.figures.depth->band) : nullptr;
    table.rows.push_back({list.name(row), gradeWord(gradeOf(tip.standing)),
                          depth(band, &DepthBand::low, units), depth(band, &DepthBand::high, units),
                          OutCell::maybe(tip.figures.drive, kHundredths), list.sentence(row)});
  }
  return table;
}

OutTable fixesTable(const std::vector<Fix>& fixes, DisplayUnits units) {
  OutTable table;
  table.header = {PictureWords::tr("Change"), PictureWords::tr("What it repairs")};
  for (const Fix& fix : fixes)
    table.rows.push_back({changeWords(fix.change, units), fixWords(fix)});
  return table;
}

OutTable cutsTable(const CutPicture& picture, DisplayUnits units) {
  const QString unit = lengthUnit(units);
  OutTable table;
  table.header = {PictureWords::tr("Spool"), PictureWords::tr("Cut"),
                  headed(PictureWords::tr("From its end"), unit),
                  headed(PictureWords::tr("To"), unit)};
  for (const CutPicture::Spool& spool : picture.spools) {
    for (const CutPicture::Cut& cut : spool.cuts) {
      table.rows.push_back(
          {spool.title, cut.name, length(Feet(cut.from), units), length(Feet(cut.to), units)});
    }
  }
  return table;
}

OutTable spoolsTable(const Spools& spools, DisplayUnits units) {
  OutTable table;
  table.header = {PictureWords::tr("Spool"), PictureWords::tr("Line"),
                  headed(PictureWords::tr("Left"), lengthUnit(units))};
  for (const Spool& spool : spools.spools) {
    table.rows.push_back({QString::fromStdString(spool.name), lineWords(stuffOf(spool), units),
                          length(spool.left, units)});
  }
  return table;
}

}  // namespace grainwise::ui
