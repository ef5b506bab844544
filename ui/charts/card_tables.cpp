// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/card_tables.h"

#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "ui/strip/silhouette.h"
#include "ui/text/contexts.h"
#include "ui/text/measured_words.h"
#include "ui/text/quantities.h"
#include "ui/text/shelf_words.h"
#include "ui/text/words.h"
#include "ui/theme/glyph.h"

namespace grainwise::ui {
namespace {

/// Numbers that answer, over the type on the axes: a tenth of the screen's height over a 28th.
constexpr double kLarge = 2.8;
constexpr double kCellNumber = 1.3;

QString lengths(Feet value, DisplayUnits units) {
  return QLocale().toString(shownValue(value.value(), Measure::length, units), 'f', 1);
}

QString bandText(const std::optional<DepthBand>& band, bool onBottom, DisplayUnits units) {
  if (onBottom) return PictureWords::tr("bottom");
  return band ? lengths(band->middle, units) : PictureWords::tr("on top", "as large as a number: a short word");
}

void write(QPainter& p, const QRectF& box, int flags, const QString& words, const QFont& font,
           const QColor& colour) {
  p.setFont(font);
  p.setPen(colour);
  p.drawText(box, flags, words);
}

QString wantedText(const Pool& pool, DisplayUnits units) {
  const auto wanted = wantedWater(pool);
  if (!wanted) return {};
  const auto shown = [&](Feet feet) {
    const double value = shownValue(feet.value(), Measure::length, units);
    return QLocale().toString(std::round(value * 10) / 10, 'g', 4);
  };
  return PictureWords::tr("%1–%2").arg(shown(wanted->low), shown(wanted->high));
}

Glyph glyphOf(Standing standing) {
  return standing == Standing::fits    ? Glyph::circle
         : standing == Standing::watch ? Glyph::triangle
                                       : Glyph::square;
}

/// Where the columns of a table of tips stand.
struct Columns {
  QRectF names, tips;
  double left = 0, each = 0;
  [[nodiscard]] QRectF pool(std::size_t i, double top, double tall) const {
    return {left + each * double(i), top, each, tall};
  }
};

Columns columnsOf(const QRectF& box, const TipTable& table, const PictureStyle& style) {
  const QFontMetricsF metrics(style.font());
  double names = 0;
  for (const Part& tip : table.tips) {
    names = std::max(names, metrics.horizontalAdvance(partWords(tip, style.units)));
  }
  names = std::min(names + style.text * 0.8, box.width() * 0.36);
  const double pools = box.width() * std::min(0.57, 0.2 * double(table.pools.size()));
  Columns c;
  c.names = QRectF(box.left(), box.top(), names, box.height());
  c.left = box.right() - pools;
  c.each = pools / double(std::max<std::size_t>(1, table.pools.size()));
  c.tips = QRectF(c.names.right(), box.top(), c.left - c.names.right() - style.text, box.height());
  return c;
}

/// What a fly is called, without its weight: that is asked for.
QString flyName(const Part& fly) {
  return fly.name && !fly.name->empty() ? shelfName(QString::fromStdString(*fly.name)) : kindWords(PartKind::fly);
}

/// A pool's name, its words under each other, and where the fly is wanted there.
void paintPoolHead(QPainter& p, const QRectF& box, const Pool& pool, const PictureStyle& style) {
  const QString wanted = style.numbers ? wantedText(pool, style.units) : QString();
  const QFontMetricsF metrics(style.font());
  const double line = metrics.lineSpacing();
  write(p, box.adjusted(0, 0, 0, -line), Qt::AlignHCenter | Qt::AlignBottom | Qt::TextWordWrap,
        QString::fromStdString(pool.name), style.font(1, true), style.colours.ink);
  QFont font = style.font();
  write(p, QRectF(box.left(), box.bottom() - line, box.width(), line), Qt::AlignCenter, wanted, font,
        style.colours.slate);
}

void paintTip(QPainter& p, const QRectF& box, const Part& tip, double longest_ft, double perGrain,
              const PictureStyle& style) {
  const Silhouette shape = silhouetteOf(tip);
  const double wide = box.width() * tip.length().value() / longest_ft;
  paintLine(p, QRectF(box.left(), box.top(), wide, box.height()), shape, perGrain, style.colours);
}

void paintCell(QPainter& p, const QRectF& box, const WalletCell& cell, const PictureStyle& style) {
  const double glyph = style.text * 0.7;
  const QString words = style.numbers ? depthIn(cell, style.units) : QString();
  const bool number = cell.band && !cell.onBottom;
  const QFont font = number ? style.font(kCellNumber, true) : style.font();
  const double wide = QFontMetricsF(font).horizontalAdvance(words) + glyph * 1.4;
  const double left = box.center().x() - wide / 2;
  paintGlyph(p, QRectF(left, box.center().y() - glyph / 2, glyph, glyph), glyphOf(cell.standing), style.colours);
  write(p, QRectF(left + glyph * 1.4, box.top(), box.width(), box.height()), Qt::AlignLeft | Qt::AlignVCenter,
        words, font, style.colours.ink);
}

/// Depths at the left of the pools, from the surface that they all share.
void paintScale(QPainter& p, double x, double top, double perFoot, double deepest_ft, const PictureStyle& style) {
  const double feetPerUnit = style.units.metres ? 1.0 / si::kMetresPerFoot : 1.0;
  const double room = 1.6 * style.text / perFoot / feetPerUnit;
  const double step = room <= 0.5 ? 0.5 : room <= 1 ? 1 : room <= 2 ? 2 : room <= 5 ? 5 : 10;
  for (int i = 0; i * step * feetPerUnit <= deepest_ft + 1e-9; ++i) {
    const QString number = QLocale().toString(i * step, 'g', 3);
    write(p, QRectF(x - style.text * 5, top + i * step * feetPerUnit * perFoot - style.text, style.text * 4.6,
                    style.text * 2),
          Qt::AlignRight | Qt::AlignVCenter, i == 0 ? QStringLiteral("0 %1").arg(lengthUnit(style.units)) : number,
          style.font(), style.colours.slate);
  }
}

void paintPool(QPainter& p, const QRectF& box, double top, double perFoot, const DepthRow& row,
               const PictureStyle& style) {
  const Colours& c = style.colours;
  const QRectF water(box.left(), top, box.width() * 0.34, row.pool.depth.value() * perFoot);
  p.setPen(QPen(c.edge, style.stroke * 0.4));
  p.setBrush(c.riverFill);
  p.drawRect(water);
  p.setPen(QPen(c.river, style.stroke * 0.7));
  p.drawLine(water.topLeft(), water.topRight());
  p.setPen(QPen(c.ink, style.stroke));
  p.drawLine(water.bottomLeft(), water.bottomRight());
  const DepthCell& cell = row.cells[1];
  if (!style.answered || !cell.state) return;
  const bool bottom = isOnBottom(*cell.state);
  const double depth_ft = bottom ? row.pool.depth.value() : cell.band ? cell.band->middle.value() : 0;
  const QPointF fly(water.center().x(), top + depth_ft * perFoot);
  p.setPen(QPen(c.river, style.stroke));
  p.drawLine(QPointF(fly.x(), top), fly);
  p.setPen(Qt::NoPen);
  p.setBrush(c.ink);
  p.drawEllipse(fly, style.text * 0.4, style.text * 0.4);
  if (!style.numbers) return;
  const double tall = style.text * kLarge * 1.3;
  const double at = std::max(top - style.text * 0.4, std::min(fly.y() - tall / 2, box.bottom() - tall));
  const QString words = depthIn(row, style.units);
  QFont font = style.font(kLarge, true);
  const double room = box.right() - water.right() - style.text * 0.5;
  const double wide = QFontMetricsF(font).horizontalAdvance(words);
  if (wide > room) font.setPixelSize(int(font.pixelSize() * room / wide));
  write(p, QRectF(water.right() + style.text * 0.5, at, room, tall), Qt::AlignLeft | Qt::AlignVCenter, words, font,
        c.ink);
}

}  // namespace

TipTable tipTable(const Rig& rig, const std::vector<Part>& tips, const std::vector<Pool>& pools,
                  const Conditions& conditions) {
  WalletQuestion question;
  question.rigs = {rig};
  question.pools.pools = pools;
  question.shelf.parts = tips;
  question.conditions = conditions;
  const WalletGrid grid = walletGrid(question);
  TipTable table{tips, pools, {}};
  for (std::size_t tip = 0; tip < tips.size(); ++tip) {
    const auto row = std::find(grid.tips.begin(), grid.tips.end(), std::optional(tip));
    for (std::size_t pool = 0; pool < pools.size(); ++pool) {
      const bool there = row != grid.tips.end();
      table.cells.push_back(there ? grid.at(std::size_t(row - grid.tips.begin()), 0, pool) : WalletCell{});
    }
  }
  return table;
}

QString depthIn(const DepthRow& row, DisplayUnits units) {
  const DepthCell& cell = row.cells[1];
  return cell.state ? bandText(cell.band, isOnBottom(*cell.state), units) : QString();
}

QString depthIn(const WalletCell& cell, DisplayUnits units) {
  return bandText(cell.band, cell.onBottom, units);
}

void paintFlies(QPainter& p, const QRectF& box, const std::vector<Part>& flies, const PictureStyle& style) {
  if (flies.empty()) return;
  p.save();
  const double each = box.width() / double(flies.size());
  const double line = QFontMetricsF(style.font()).lineSpacing();
  const double words = 3 * line;
  const double number = style.text * kLarge * 1.3;
  const double above = box.height() - words - number;
  double longest = 1;
  for (const Part& fly : flies) longest = std::max(longest, flyLength(silhouetteOf(fly)));
  const double zoom = std::min(each * 0.72, above * 2) / longest;
  for (std::size_t i = 0; i < flies.size(); ++i) {
    const QRectF column(box.left() + each * double(i), box.top(), each, box.height());
    const Silhouette shape = silhouetteOf(flies[i]);
    const double wide = flyLength(shape) * zoom;
    paintFly(p, QPointF(column.center().x() - wide / 2, box.top() + above / 2), shape, zoom, style.colours);
    const QRectF name(column.left() + style.text * 0.4, box.top() + above, each - style.text * 0.8, words);
    write(p, name, Qt::AlignHCenter | Qt::AlignTop | Qt::TextWordWrap, flyName(flies[i]), style.font(), style.colours.ink);
    if (!style.answered || !style.numbers || !flies[i].fly) continue;
    write(p, QRectF(column.left(), name.bottom(), each, number), Qt::AlignCenter,
          massText(flies[i].fly->wetMass(), style.units), style.font(kLarge, true), style.colours.ink);
  }
  p.restore();
}

void paintPools(QPainter& p, const QRectF& box, const std::vector<DepthRow>& pools, const PictureStyle& style) {
  if (pools.empty()) return;
  p.save();
  const double line = QFontMetricsF(style.font()).lineSpacing();
  double deepest_ft = 0;
  for (const DepthRow& row : pools) deepest_ft = std::max(deepest_ft, row.pool.depth.value());
  const double top = box.top() + 2.4 * line;
  const double perFoot = (box.bottom() - style.text * 0.5 - top) / deepest_ft;
  const double left = box.left() + style.text * 4;
  const double each = (box.right() - left) / double(pools.size());
  if (style.numbers) paintScale(p, left, top, perFoot, deepest_ft, style);
  for (std::size_t i = 0; i < pools.size(); ++i) {
    const QRectF column(left + each * double(i) + style.text * 0.4, box.top(), each - style.text * 0.8, box.height());
    write(p, QRectF(column.left(), column.top(), column.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
          QString::fromStdString(pools[i].pool.name), style.font(1, true), style.colours.ink);
    if (style.numbers) {
      write(p, QRectF(column.left(), column.top() + line, column.width(), line), Qt::AlignLeft | Qt::AlignVCenter,
            currentText(pools[i].pool.surfaceSpeed, pools[i].pool.measured, style.units), style.font(), style.colours.slate);
    }
    paintPool(p, column, top, perFoot, pools[i], style);
  }
  p.restore();
}

void paintTips(QPainter& p, const QRectF& box, const TipTable& table, const PictureStyle& style) {
  if (table.tips.empty()) return;
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  const double head = 3.2 * QFontMetricsF(style.font(1, true)).lineSpacing();
  const double each = std::min((box.height() - head) / double(table.tips.size()), style.text * 3.2);
  const Columns columns = columnsOf(box, table, style);
  for (std::size_t i = 0; i < table.pools.size(); ++i) {
    paintPoolHead(p, columns.pool(i, box.top(), head - style.text * 0.3), table.pools[i], style);
  }
  const double line = QFontMetricsF(style.font()).lineSpacing();
  if (style.numbers) {
    write(p, QRectF(box.left(), box.top() + head - style.text * 0.3 - line, columns.tips.right() - box.left(), line),
          Qt::AlignRight | Qt::AlignVCenter, PictureWords::tr("wanted, %1").arg(lengthUnit(style.units)), style.font(),
          style.colours.slate);
  }
  double longest_ft = 0.1, heaviest = 0.1;
  for (const Part& tip : table.tips) {
    longest_ft = std::max(longest_ft, tip.length().value());
    heaviest = std::max(heaviest, silhouetteOf(tip).heaviest());
  }
  for (std::size_t tip = 0; tip < table.tips.size(); ++tip) {
    const double top = box.top() + head + each * double(tip);
    p.setPen(QPen(style.colours.edge, style.stroke * 0.4));
    p.drawLine(QPointF(box.left(), top), QPointF(box.right(), top));
    const QRectF name(columns.names.left(), top, columns.names.width() - style.text * 0.4, each);
    write(p, name, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, partWords(table.tips[tip], style.units),
          style.font(), style.colours.ink);
    const double tall = each * 0.5;
    paintTip(p, QRectF(columns.tips.left(), top + (each - tall) / 2, columns.tips.width(), tall), table.tips[tip],
             longest_ft, tall / heaviest, style);
    for (std::size_t pool = 0; style.answered && pool < table.pools.size(); ++pool) {
      paintCell(p, columns.pool(pool, top, each), table.at(tip, pool), style);
    }
  }
  p.restore();
}

}  // namespace grainwise::ui
