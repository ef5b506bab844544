// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/flow_pages.h"

#include <QFontMetricsF>
#include <algorithm>

#include "ui/text/contexts.h"

namespace grainwise::ui {
namespace {

constexpr double kMargin_pt = 42;
constexpr double kFoot_pt = 9;
constexpr int kFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;

/// What A4 and letter both hold within the margins, a line at the foot left free.
QSizeF room() {
  const QSizeF both = sizeOf(Paper::a4).boundedTo(sizeOf(Paper::letter));
  return both - QSizeF(2 * kMargin_pt, 2 * kMargin_pt + 2 * kFoot_pt) * kPoint;
}

}  // namespace

FlowPages::FlowPages(QString title, DisplayUnits units) : m_title(std::move(title)), m_units(units) {}

PictureStyle FlowPages::style(double points) const {
  PictureStyle style;
  style.colours = paperColours();
  style.units = m_units;
  style.text = points * kPoint;
  style.stroke = 1.1 * kPoint;
  return style;
}

double FlowPages::width() const { return room().width(); }

void FlowPages::add(double height, Draw draw) {
  if (m_y > 0 && m_y + height > room().height()) {
    m_pages.emplace_back();
    m_y = 0;
  }
  m_pages.back().push_back({m_y, height, std::move(draw)});
  m_y += height;
}

void FlowPages::addText(const QString& words, double points, bool bold, double indent) {
  if (words.isEmpty()) return;
  const QFont font = style(points).font(1, bold);
  const QRectF box(0, 0, width() - indent, 1e5);
  const double tall = QFontMetricsF(font).boundingRect(box, kFlags, words).height();
  const QColor ink = style(points).colours.ink;
  add(tall + 2 * kPoint, [=](QPainter& p, const QRectF& place) {
    p.setFont(font);
    p.setPen(ink);
    p.drawText(place.adjusted(indent, 0, 0, 0), kFlags, words);
  });
}

void FlowPages::skip(double points) { m_y += m_y > 0 ? points * kPoint : 0; }

void FlowPages::paint(QPainter& p, int page, QSizeF sheet) const {
  p.setRenderHint(QPainter::Antialiasing);
  const QPointF corner((sheet.width() - width()) / 2, kMargin_pt * kPoint);
  for (const Item& item : m_pages[std::size_t(page)]) {
    item.draw(p, QRectF(corner + QPointF(0, item.top), QSizeF(width(), item.height)));
  }
  if (count() < 2) return;
  p.setFont(style(kFoot_pt).font());
  p.setPen(style(kFoot_pt).colours.ink);
  p.drawText(QRectF(corner.x(), sheet.height() - kMargin_pt * kPoint, width(), 2 * kFoot_pt * kPoint),
             Qt::AlignHCenter | Qt::AlignTop,
             PaperWords::tr("%1, page %2 of %3").arg(m_title).arg(page + 1).arg(count()));
}

}  // namespace grainwise::ui
