// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/wallet_pages.h"

#include <QCoreApplication>
#include <QDate>
#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>

#include "ui/print/paper_files.h"
#include "ui/print/print_preview.h"
#include "ui/text/choice_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

class WalletCard {
  Q_DECLARE_TR_FUNCTIONS(WalletCard)
};

constexpr double kPointsPerMillimetre = 72 / 25.4;
constexpr double kWide = 90 * kPointsPerMillimetre * kPoint;
constexpr double kHigh = 140 * kPointsPerMillimetre * kPoint;
constexpr double kInside = 5 * kPointsPerMillimetre * kPoint;
constexpr double kLargest_pt = 11, kSmallest_pt = 8, kStep_pt = 0.5;
constexpr double kTop_pt = 60;
constexpr int kFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

QFont fontOf(double points, double factor, bool bold) {
  PictureStyle style;
  style.text = points * kPoint;
  return style.font(factor, bold);
}

}  // namespace

WalletPages::WalletPages(const PackedWallet& packed, DisplayUnits units) {
  addTitle(packed);
  addSlots(packed, units);
  addUses(packed, units);
  addNothing(packed, units);
  m_lines.push_back({WalletCard::tr("Local rules on weighted lines and flies, lead, barbs and hooks decide, "
                                    "not this card. No guide to wading. Rods conduct: keep clear of power "
                                    "lines, and stop in lightning."),
                     0.9, false, 0, 0.7});
  m_points = kLargest_pt;
  m_sides = sidesAt(m_points);
  while (m_sides.size() > 1 && m_points > kSmallest_pt) {
    m_points -= kStep_pt;
    m_sides = sidesAt(m_points);
  }
}

QString WalletPages::title() const { return WalletCard::tr("Wallet"); }

void WalletPages::addTitle(const PackedWallet& packed) {
  const auto tips = packed.wallet.tips.size();
  m_lines.push_back({tips == 1 ? WalletCard::tr("Wallet: 1 tip") : WalletCard::tr("Wallet: %1 tips").arg(tips),
                     1.5, true, 0, 0});
  m_lines.push_back({WalletCard::tr("%1. Depths are estimates.")
                         .arg(QLocale().toString(QDate::currentDate(), QLocale::ShortFormat))});
}

void WalletPages::addSlots(const PackedWallet& packed, DisplayUnits units) {
  const auto& spares = packed.wallet.spares;
  for (std::size_t i = 0; i < packed.wallet.tips.size(); ++i) {
    const bool spare = std::find(spares.begin(), spares.end(), i) != spares.end();
    const QString name = choiceName(packed.question.shelf, packed.wallet.tips[i], units);
    const QString line = WalletCard::tr("%1   %2", "slot, tip").arg(i + 1).arg(name);
    m_lines.push_back({spare ? WalletCard::tr("%1   (and a spare)", "slot and tip").arg(line) : line, 1.1, true,
                       0, i == 0 ? 0.7 : 0.15});
  }
}

void WalletPages::addUses(const PackedWallet& packed, DisplayUnits units) {
  std::size_t pool = packed.question.pools.pools.size();
  for (const WalletUse& use : packed.wallet.uses) {
    if (!use.served) continue;
    if (use.pool != pool) {
      pool = use.pool;
      m_lines.push_back({QString::fromStdString(packed.question.pools.pools[pool].name), 1, true, 0, 0.5});
    }
    const Rig& rig = packed.question.rigs[use.rig];
    const QString what =
        use.slot ? WalletCard::tr("slot %1").arg(*use.slot + 1) : WalletCard::tr("no tip");
    QString line =
        WalletCard::tr("%1: %2", "fly: slot").arg(partWords(rig.parts[*rig.flyIndex()], units), what);
    const QString depth = use.cell.band ? bandWords(*use.cell.band, use.cell.onBottom, units) : QString();
    if (!depth.isEmpty()) line = WalletCard::tr("%1, %2", "fly and slot, depth").arg(line, depth);
    if (use.cell.standing == Standing::watch) line = WalletCard::tr("%1 (watch)").arg(line);
    m_lines.push_back({line, 1, false, 1});
  }
}

void WalletPages::addNothing(const PackedWallet& packed, DisplayUnits units) {
  if (packed.wallet.uncovered() == 0) return;
  m_lines.push_back({WalletCard::tr("Nothing serves"), 1, true, 0, 0.7});
  for (const WalletUse& use : packed.wallet.uses) {
    if (use.served) continue;
    const Rig& rig = packed.question.rigs[use.rig];
    m_lines.push_back({WalletCard::tr("%1, %2: %3", "pool, fly: why")
                           .arg(QString::fromStdString(packed.question.pools.pools[use.pool].name),
                                partWords(rig.parts[*rig.flyIndex()], units),
                                uncoveredWords(use, packed.question.shelf, *packed.grid, units)),
                       1, false, 1});
  }
}

double WalletPages::height(const Line& line, double points) const {
  const double indent = line.indent * points * kPoint;
  const QRectF room(0, 0, kWide - 2 * kInside - indent, 1e5);
  return QFontMetricsF(fontOf(points, line.factor, line.bold)).boundingRect(room, kFlags, line.words).height();
}

std::vector<std::vector<WalletPages::Line>> WalletPages::sidesAt(double points) const {
  std::vector<std::vector<Line>> sides(1);
  double y = 0;
  for (const Line& line : m_lines) {
    double takes = height(line, points) + (y > 0 ? line.before * points * kPoint : 0);
    if (y > 0 && y + takes > kHigh - 2 * kInside) {
      sides.emplace_back();
      y = 0;
      takes = height(line, points);
    }
    sides.back().push_back(line);
    y += takes;
  }
  return sides;
}

void WalletPages::paintSide(QPainter& p, const std::vector<Line>& side, const QRectF& frame) const {
  p.setPen(QPen(Qt::black, 0.6 * kPoint, Qt::DashLine));
  p.setBrush(Qt::NoBrush);
  p.drawRect(frame);
  p.setPen(Qt::black);
  const QRectF inside = frame.adjusted(kInside, kInside, -kInside, -kInside);
  double y = inside.top();
  for (const Line& line : side) {
    if (y > inside.top()) y += line.before * m_points * kPoint;
    const double indent = line.indent * m_points * kPoint;
    const double tall = height(line, m_points);
    p.setFont(fontOf(m_points, line.factor, line.bold));
    p.drawText(QRectF(inside.left() + indent, y, inside.width() - indent, tall), kFlags, line.words);
    y += tall;
  }
}

void WalletPages::paint(QPainter& p, int page, QSizeF sheet) const {
  p.setRenderHint(QPainter::Antialiasing);
  const std::size_t first = std::size_t(page) * 2;
  const std::size_t last = std::min(first + 2, m_sides.size());
  const double left = (sheet.width() - double(last - first) * kWide) / 2;
  p.setPen(Qt::black);
  p.setFont(fontOf(9, 1, false));
  const QString cut = last - first > 1
                          ? WalletCard::tr("Cut out along the outer line and fold along the middle: %1.")
                          : WalletCard::tr("Cut out along the line: %1.");
  p.drawText(QRectF(left, (kTop_pt - 18) * kPoint, sheet.width() - 2 * left, 18 * kPoint), kFlags,
             cut.arg(WalletCard::tr("90 x 140 mm, 3.5 x 5.5 in")));
  for (std::size_t i = first; i < last; ++i) {
    paintSide(p, m_sides[i], QRectF(left + double(i - first) * kWide, kTop_pt * kPoint, kWide, kHigh));
  }
}

WalletPaper walletPaper(QWidget* parent) {
  WalletPaper paper;
  paper.preview = [parent](const PackedWallet& packed, DisplayUnits units) {
    previewPages(std::make_shared<WalletPages>(packed, units), parent);
  };
  paper.write = [](const PackedWallet& packed, DisplayUnits units, const QString& path) {
    return writePages(WalletPages(packed, units), path, localPaper()).problem;
  };
  return paper;
}

}  // namespace grainwise::ui
