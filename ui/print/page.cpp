// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/page.h"

#include <QFontMetricsF>
#include <algorithm>

namespace grainwise::ui {
namespace {
constexpr double kMargin_pt = 42;
constexpr double kTitle_pt = 18;
constexpr double kHeading_pt = 13;
constexpr double kBody_pt = 12;
constexpr double kFoot_pt = 9;
constexpr double kRule_pt = 0.6;
}  // namespace

QSizeF sizeOf(Paper paper) {
  // ISO 216: 210 x 297 mm; US letter: 8.5 x 11 in.
  return paper == Paper::letter ? QSizeF(6120, 7920) : QSizeF(5953, 8419);
}

PageWriter::PageWriter(QPainter& painter, QSizeF sheet, DisplayUnits units)
    : m_painter(painter),
      m_area(QRectF(QPointF(0, 0), sheet).adjusted(kMargin_pt * kPoint, kMargin_pt * kPoint,
                                                   -kMargin_pt * kPoint, -kMargin_pt * kPoint)),
      m_units(units),
      m_colours(paperColours()),
      m_y(m_area.top()) {
  painter.setRenderHint(QPainter::Antialiasing);
}

PictureStyle PageWriter::style(double points) const {
  PictureStyle style;
  style.colours = m_colours;
  style.units = m_units;
  style.text = points * kPoint;
  style.stroke = 1.1 * kPoint;
  return style;
}

double PageWriter::write(const QRectF& box, const QString& words, double points, bool bold, int flags) {
  m_painter.setFont(style(points).font(1, bold));
  m_painter.setPen(m_colours.ink);
  QRectF taken;
  m_painter.drawText(box, flags | Qt::TextWordWrap, words, &taken);
  return taken.height();
}

void PageWriter::title(const QString& words, const QString& atRight) {
  const double room = m_area.width() * 0.66;
  const double tall = write(QRectF(m_area.left(), m_y, room, 1e5), words, kTitle_pt, true,
                            Qt::AlignLeft | Qt::AlignTop);
  write(QRectF(m_area.left() + room, m_y + 4 * kPoint, m_area.width() - room, 1e5), atRight, kFoot_pt,
        false, Qt::AlignRight | Qt::AlignTop);
  m_y += tall + 6 * kPoint;
}

void PageWriter::heading(const QString& words) {
  m_y += 9 * kPoint;
  m_y += write(QRectF(m_area.left(), m_y, m_area.width(), 1e5), words, kHeading_pt, true,
               Qt::AlignLeft | Qt::AlignTop);
  m_painter.setPen(QPen(m_colours.ink, kRule_pt * kPoint));
  m_painter.drawLine(QPointF(m_area.left(), m_y), QPointF(m_area.right(), m_y));
  m_y += 4 * kPoint;
}

void PageWriter::paragraph(const QString& words, double points, bool bold) {
  if (words.isEmpty()) return;
  m_y += write(QRectF(m_area.left(), m_y, m_area.width(), 1e5), words, points, bold,
               Qt::AlignLeft | Qt::AlignTop) +
         2 * kPoint;
}

void PageWriter::verdict(std::optional<Glyph> glyph, const QString& name, const QString& figures,
                         const QString& words) {
  const double size = 8 * kPoint;
  const double text = m_area.left() + 16 * kPoint;
  const double nameRoom = 108 * kPoint;
  const double figureRoom = 150 * kPoint;
  if (glyph) {
    paintGlyph(m_painter, QRectF(m_area.left(), m_y + 4 * kPoint, size, size), *glyph, m_colours);
  }
  const int flags = Qt::AlignLeft | Qt::AlignTop;
  double tall = write(QRectF(text, m_y, nameRoom, 1e5), name, kBody_pt, false, flags);
  double from = text + nameRoom;
  if (!figures.isEmpty()) {
    tall = std::max(tall, write(QRectF(from, m_y, figureRoom - 4 * kPoint, 1e5), figures, kBody_pt, true,
                                flags));
    from += figureRoom;
  }
  tall = std::max(tall, write(QRectF(from, m_y, m_area.right() - from, 1e5), words, kBody_pt, false, flags));
  m_y += tall + 2 * kPoint;
}

void PageWriter::blanks(const QStringList& words) {
  const double each = m_area.width() / double(words.size());
  for (int i = 0; i < words.size(); ++i) {
    const double x = m_area.left() + each * i;
    write(QRectF(x, m_y, each, 1e5), words[i], kBody_pt, false, Qt::AlignLeft | Qt::AlignTop);
    const double from = x + m_painter.fontMetrics().horizontalAdvance(words[i]) + 5 * kPoint;
    m_painter.setPen(QPen(m_colours.slate, kRule_pt * kPoint));
    const double y = m_y + 14 * kPoint;
    m_painter.drawLine(QPointF(from, y), QPointF(x + each - 10 * kPoint, y));
  }
  m_y += 22 * kPoint;
}

void PageWriter::table(const QVector<QStringList>& rows, const QVector<double>& shares,
                       double rowPoints) {
  for (int row = 0; row < rows.size(); ++row) {
    double x = m_area.left();
    double tall = rowPoints * kPoint;
    for (int column = 0; column < rows[row].size(); ++column) {
      const double wide = m_area.width() * shares[column];
      const QRectF cell(x, m_y + 2 * kPoint, wide - 6 * kPoint, 1e5);
      tall = std::max(tall, write(cell, rows[row][column], kBody_pt, row == 0, Qt::AlignLeft | Qt::AlignTop) +
                                4 * kPoint);
      x += wide;
    }
    m_y += tall;
    m_painter.setPen(QPen(row == 0 ? m_colours.ink : m_colours.edge, kRule_pt * kPoint));
    m_painter.drawLine(QPointF(m_area.left(), m_y), QPointF(m_area.right(), m_y));
  }
  m_y += 3 * kPoint;
}

void PageWriter::rules(int count, double apartPoints) {
  m_painter.setPen(QPen(m_colours.edge, kRule_pt * kPoint));
  for (int i = 0; i < count; ++i) {
    m_y += apartPoints * kPoint;
    m_painter.drawLine(QPointF(m_area.left(), m_y), QPointF(m_area.right(), m_y));
  }
}

void PageWriter::footer(const QString& words) {
  const QRectF foot(m_area.left(), m_area.bottom() + 6 * kPoint, m_area.width(), 14 * kPoint);
  write(foot, words, kFoot_pt, false, Qt::AlignHCenter | Qt::AlignTop);
}

}  // namespace grainwise::ui
