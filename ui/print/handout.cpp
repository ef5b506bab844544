// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/handout.h"

#include <QLocale>
#include <algorithm>

#include "core/analysis/depth_table.h"
#include "core/choose/wallet.h"
#include "core/report/words.h"
#include "ui/strip/silhouette.h"
#include "ui/text/contexts.h"
#include "ui/text/measured_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

constexpr double kStrip_pt = 60;
constexpr double kLowProfile_pt = 80;
constexpr double kHighProfile_pt = 190;
constexpr double kLine_pt = 18.5;
constexpr double kLabels_pt = 12;
/// Joints beyond this many are left to the screen: the sheet has two sides.
constexpr std::size_t kMostJoints = 6;
constexpr std::size_t kMostPools = 6;
constexpr std::size_t kMostTips = 5;
/// Of the wallet, its head included: room to write is left in a short one.
constexpr int kLeastRows = 4;
/// Height of type that flies are drawn to (strip_picture.cpp).
constexpr double kFlyText = 16.0;

QString lengths(Feet value, DisplayUnits units) {
  return QLocale().toString(shownValue(value.value(), Measure::length, units), 'f', 1);
}

QString depthText(const DepthCell& cell, DisplayUnits units) {
  if (!cell.state) return PaperWords::tr("no fly yet");
  if (isOnBottom(*cell.state)) return PaperWords::tr("bottom");
  if (!cell.band)
    return *cell.state == DepthState::stillWater ? PaperWords::tr("no swing")
                                                 : PaperWords::tr("on top");
  return PaperWords::tr("%1–%2").arg(lengths(cell.band->low, units),
                                     lengths(cell.band->high, units));
}

/// As it was weighed, else as it is labelled or made up.
Grains massOf(const Part& part) {
  Rig alone;
  alone.parts = {part};
  return massProfile(alone).places.front().mass();
}

struct Line {
  std::optional<Grade> grade;
  QString name;
  QString figures;
  QString words;
};

void addRod(std::vector<Line>& lines, const RodFit& rod, DisplayUnits units) {
  if (rod.head && rod.window) {
    Line line{std::nullopt,
              PaperWords::tr("Head on rod"),
              PaperWords::tr("%1 in %2–%3")
                  .arg(massNumber(*rod.head, units), massNumber(rod.window->low, units),
                       massText(rod.window->high, units)),
              {}};
    if (rod.headVerdict) {
      line.grade = grade(*rod.headVerdict);
      line.words = headWords(rod);
    }
    lines.push_back(line);
  }
  if (rod.workingLength && rod.lengthRatio) {
    Line line{std::nullopt,
              PaperWords::tr("Working length"),
              PaperWords::tr("%1 rods").arg(numberText(*rod.lengthRatio, 2)),
              {}};
    if (rod.lengthVerdict) {
      line.grade = grade(*rod.lengthVerdict);
      line.words = lengthWords(*rod.lengthVerdict);
    }
    lines.push_back(line);
  }
}

void addGrip(std::vector<Line>& lines, const Grip& grip, DisplayUnits units) {
  if (grip.tipShare && grip.tip > Grains(0)) {
    Line line{std::nullopt, PaperWords::tr("Tip share"),
              PaperWords::tr("%1: %2 of %3")
                  .arg(percentText(*grip.tipShare), massNumber(grip.tip, units),
                       massText(grip.head, units)),
              PaperWords::tr("no rule for this style of head")};
    if (grip.tipShareVerdict) {
      line.grade = grade(*grip.tipShareVerdict);
      line.words = tipShareWords(*grip.tipShareVerdict);
    }
    lines.push_back(line);
  }
  if (grip.anchorRatio && grip.anchorVerdict) {
    lines.push_back({grade(*grip.anchorVerdict), PaperWords::tr("In the water"),
                     PaperWords::tr("%1 rods").arg(numberText(*grip.anchorRatio, 2)),
                     anchorWords(*grip.anchorVerdict)});
  }
}

void addFly(std::vector<Line>& lines, const FlyFit& fly, DisplayUnits units) {
  if (fly.tipToFly && fly.tipToFlyVerdict) {
    lines.push_back({grade(*fly.tipToFlyVerdict), PaperWords::tr("Fly against tip"),
                     PaperWords::tr("%1 ×: %2 on %3")
                         .arg(ratioText(*fly.tipToFly), massNumber(fly.tipWindow, units),
                              massText(fly.fly, units)),
                     flyWords(*fly.tipToFlyVerdict)});
  }
  if (fly.leaderToFly && fly.leaderToFlyVerdict) {
    lines.push_back({grade(*fly.leaderToFlyVerdict), PaperWords::tr("Fly against leader"),
                     PaperWords::tr("%1 ×").arg(ratioText(*fly.leaderToFly)),
                     leaderWords(*fly.leaderToFlyVerdict)});
  }
}

void addJoints(std::vector<Line>& lines, const Rig& rig, const Analysis& a, DisplayUnits units) {
  std::size_t taken = 0;
  for (const Junction& j : a.junctions) {
    if (taken++ == kMostJoints) break;
    lines.push_back(
        {grade(j.verdict),
         capital(
             PaperWords::tr("%1 to %2")
                 .arg(kindWords(rig.parts[j.rodSide].kind), kindWords(rig.parts[j.flySide].kind))),
         PaperWords::tr("%1 to %2")
             .arg(lineMassNumber(j.rodSideMean, units), lineMassText(j.flySideMean, units)),
         junctionWords(j.verdict)});
  }
}

std::vector<Line> linesOf(const Rig& rig, const Analysis& a, DisplayUnits units) {
  std::vector<Line> lines;
  addRod(lines, a.rod, units);
  addJoints(lines, rig, a, units);
  addGrip(lines, a.grip, units);
  addFly(lines, a.fly, units);
  return lines;
}

}  // namespace

Handout::Handout(const Rig& rig, std::vector<Pool> pools, DisplayUnits units,
                 const Conditions& conditions, const Shelf& shelf)
    : m_rig(rig, conditions), m_pools(std::move(pools)), m_units(units), m_conditions(conditions) {
  if (m_pools.empty()) {
    if (const auto own = poolOf(rig)) m_pools.push_back(*own);
  }
  if (m_pools.size() > kMostPools) m_pools.resize(kMostPools);
  plan(shelf);
}

QString Handout::title() const {
  return m_rig.rig->name.empty() ? PaperWords::tr("Rig") : QString::fromStdString(m_rig.rig->name);
}

void Handout::paintRig(PageWriter& w) const {
  const PictureStyle style = w.style(kLabels_pt);
  const FootRange range = rangeOf({m_rig});
  // The fly hangs on behind the end of the line: its length is kept free.
  double fly = 0;
  for (const Part& part : m_rig.rig->parts) {
    if (part.kind == PartKind::fly) fly = flyLength(silhouetteOf(part)) * style.text / kFlyText;
  }
  const QRectF area = w.area().adjusted(2.4 * style.text, 0, -fly, 0);
  w.skip(4);
  const QRectF strip(area.left(), w.y(), area.width(), kStrip_pt * kPoint);
  const Captions captions =
      captionsOf(m_rig, strip, range, style, CaptionDetail::full, w.painter().device());
  paintCaptions(w.painter(), captions, strip.center().y(), style);
  paintStrip(w.painter(), strip, m_rig, range, Setup::alone, style);
  w.skip(kStrip_pt + captions.height / kPoint + 6);
  w.paragraph(PaperWords::tr("What each foot weighs: %1, over %2 from the back of the head")
                  .arg(lineMassUnit(m_units),
                       m_units.metres ? PaperWords::tr("metres") : PaperWords::tr("feet")),
              kLabels_pt);
  // As high as the readings below it leave room for.
  const double readings = kLine_pt * double(linesOf(*m_rig.rig, *m_rig.analysis, m_units).size() + 4);
  const double tall = std::clamp(w.room() / kPoint - readings - 3 * kLabels_pt, kLowProfile_pt, kHighProfile_pt);
  const QRectF plot(area.left(), w.y() + style.text * 0.7, area.width(), tall * kPoint);
  paintProfile(w.painter(), plot, {m_rig}, range, style);
  w.skip(tall + 3 * kLabels_pt);
}

void Handout::paintReadings(PageWriter& w) const {
  const Analysis& a = *m_rig.analysis;
  w.heading(PaperWords::tr("What it says"));
  for (const Line& line : linesOf(*m_rig.rig, a, m_units)) {
    w.verdict(line.grade ? std::optional(glyphOf(*line.grade)) : std::nullopt, line.name, line.figures,
              line.words);
  }
  const QString turnover = turnoverSentence(*m_rig.rig, a);
  if (!turnover.isEmpty()) {
    const auto judged = turnoverGrade(a);
    w.verdict(judged ? std::optional(glyphOf(*judged)) : std::nullopt, PaperWords::tr("Turnover"),
              {}, turnover);
  }
  w.skip(2);
  w.paragraph(
      PaperWords::tr(
          "Circle: fits. Triangle: watch it. Square: wrong. Limits are common practice or ours."));
}

void Handout::paintDepths(PageWriter& w) const {
  w.heading(PaperWords::tr("How deep on the swing, %1, an estimate: four swings in five")
                .arg(lengthUnit(m_units)));
  if (m_pools.empty()) {
    w.paragraph(PaperWords::tr("State a pool's speed and depth to have its depths here."));
    return;
  }
  QVector<QStringList> rows{{PaperWords::tr("Pool"), PaperWords::tr("Deep"),
                             PaperWords::tr("Slower water"), PaperWords::tr("As stated"),
                             PaperWords::tr("Faster water")}};
  for (const DepthRow& row : depthTable(*m_rig.rig, m_pools, m_conditions)) {
    QStringList cells{row.pool.name.empty() ? PaperWords::tr("This water")
                                            : QString::fromStdString(row.pool.name),
                      lengthText(row.pool.depth, m_units)};
    for (const DepthCell& cell : row.cells) {
      cells.append(
          PaperWords::tr("%1: %2").arg(speedText(cell.surface, m_units), depthText(cell, m_units)));
    }
    rows.append(cells);
  }
  w.table(rows, {0.2, 0.1, 0.235, 0.23, 0.235});
  const QStringList measured = measuredLines();
  if (!measured.isEmpty()) w.paragraph(measured.join(QStringLiteral("   ")), kLabels_pt);
}

/// What stands on the sheet and was measured rather than stated: currents of its pools, rates of its tips.
QStringList Handout::measuredLines() const {
  QStringList lines;
  for (const Pool& pool : m_pools) {
    if (const CurrentFit* fit = holding(pool.measured, pool.surfaceSpeed)) {
      lines << PaperWords::tr("%1: %2").arg(QString::fromStdString(pool.name), measuredWords(*fit, m_units));
    }
  }
  for (const Part& part : m_rig.rig->parts) {
    for (const Section& section : part.sections) {
      if (const Timed* timed = timedOf(section)) {
        lines << PaperWords::tr("%1: %2").arg(partWords(part, m_units), timedWords(*timed, m_units));
      }
    }
  }
  return lines;
}

/// The tips that the day's pools ask for with this head and fly: of one length, so that the stroke
/// stays; without a shelf, or where nothing can be said, the ones that are fitted.
void Handout::plan(const Shelf& shelf) {
  WalletQuestion question;
  question.rigs = {*m_rig.rig};
  question.pools.pools = m_pools;
  question.shelf = shelf;
  question.conditions = m_conditions;
  question.oneLength = true;
  const WalletGrid grid = walletGrid(question);
  const bool usable = !grid.usable.empty() && grid.usable.front() && !m_pools.empty() && !shelf.parts.empty();
  const Wallet wallet = usable ? pack(question, grid) : Wallet{};
  for (std::size_t slot = 0; slot < wallet.tips.size(); ++slot) {
    Packed packed{shelf.parts[wallet.tips[slot]], {}};
    for (const WalletUse& use : wallet.uses) {
      if (use.served && use.slot == slot) packed.pools.append(QString::fromStdString(m_pools[use.pool].name));
    }
    m_wallet.push_back(packed);
  }
  if (!m_wallet.empty()) return;
  for (const Part& part : m_rig.rig->parts) {
    if (part.kind == PartKind::tip || part.isCoatedLeader()) m_wallet.push_back({part, {}});
  }
}

void Handout::paintWallet(PageWriter& w) const {
  w.heading(PaperWords::tr("Wallet: what I pack"));
  QVector<QStringList> rows{{PaperWords::tr("Tip"), PaperWords::tr("Weight"),
                             PaperWords::tr("For which pool"), PaperWords::tr("Packed")}};
  for (std::size_t i = 0; i < m_wallet.size() && i < kMostTips; ++i) {
    const Part& tip = m_wallet[i].tip;
    rows.append({partWords(tip, m_units), massText(massOf(tip), m_units),
                 m_wallet[i].pools.join(QStringLiteral(", ")), QString()});
  }
  while (rows.size() < kLeastRows) rows.append({QString(), QString(), QString(), QString()});
  w.table(rows, {0.36, 0.13, 0.39, 0.12}, 19);
}

void Handout::paintSafety(PageWriter& w) const {
  w.heading(PaperWords::tr("Safety"));
  for (const std::string& line : words::cautions(*m_rig.rig, *m_rig.analysis)) {
    w.paragraph(QStringLiteral("• ") + QString::fromStdString(line));
  }
  // Where a sheet is read there may be rods; the screen says it on a deck's first card.
  w.paragraph(QStringLiteral("• ") +
              PaperWords::tr("Rods conduct: keep clear of power lines, and stop in lightning."));
}

void Handout::paint(QPainter& p, int page, QSizeF sheet) const {
  PageWriter w(p, sheet, m_units);
  w.title(title(), PaperWords::tr("estimate, side %1 of 2").arg(page + 1));
  if (page == 0) {
    w.blanks({PaperWords::tr("Date"), PaperWords::tr("Teacher"), PaperWords::tr("Name")});
    w.paragraph(rodSentence(*m_rig.rig, m_units) + QStringLiteral("     ") +
                waterSentence(*m_rig.rig, m_units));
    paintRig(w);
    paintReadings(w);
  } else {
    paintDepths(w);
    w.heading(PaperWords::tr("Try in this order"));
    w.paragraph(PaperWords::tr(
        "1. Angle and slack: cast squarer, mend a second longer. It costs nothing."));
    w.paragraph(PaperWords::tr(
        "2. The fly: the same weight on a slimmer fly sinks further, then a heavier one."));
    w.paragraph(PaperWords::tr(
        "3. The tip: keep its length, let more or less of it sink; then its weight."));
    paintWallet(w);
    paintSafety(w);
    w.heading(PaperWords::tr("What I changed, and what happened"));
    w.rules(std::max(1, int((w.room() / kPoint - 6) / 22)));
  }
  w.footer(PaperWords::tr("Depths are estimates and no guide to wading."));
}

}  // namespace grainwise::ui
