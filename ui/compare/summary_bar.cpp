// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/summary_bar.h"

#include <QHBoxLayout>
#include <QPainter>

#include "ui/compare/compare_feed.h"
#include "ui/compare/compare_words.h"
#include "ui/text/words.h"
#include "ui/theme/glyph.h"
#include "ui/theme/ground.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 16;
constexpr int kLeft = 16;
constexpr int kGap = 18;
constexpr int kGlyph = 10;
}  // namespace

SummaryBar::SummaryBar(Look* look, CompareFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("compareSummary"));
  m_row = new QHBoxLayout(this);
  m_row->setContentsMargins(kLeft, 0, 8, 0);
  m_row->setSpacing(4);
  m_row->addStretch(1);
  connect(feed, &CompareFeed::compared, this, &SummaryBar::refresh);
  connect(look, &Look::changed, this, &SummaryBar::refresh);
}

void SummaryBar::addControl(QWidget* control) { m_row->addWidget(control); }

QSize SummaryBar::minimumSizeHint() const {
  return {m_row->minimumSize().width(), m_look->px(44)};
}

QString SummaryBar::words() const {
  QStringList all;
  for (const Piece& piece : m_pieces) {
    all << (piece.becomes ? QStringLiteral("%1 (%2)").arg(piece.words, gradeWord(*piece.becomes))
                          : piece.words);
  }
  return all.join(QStringLiteral(". "));
}

void SummaryBar::refresh() {
  m_pieces.clear();
  const DisplayUnits units = m_look->units();
  const Comparison& comparison = m_feed->comparison();
  for (const Consequence& c : comparison.overall) {
    if (c.within) continue;
    const EffectWords effect = effectWords(c, units);
    m_pieces.push_back({effect.words, effect.becomes});
  }
  if (m_pieces.empty()) {
    m_pieces.push_back({comparison.differences.empty() ? tr("A and B are the same line")
                                                       : tr("No more difference than is known"),
                        std::nullopt});
  }
  setToolTip(words());
  setAccessibleName(tr("B against A: %1").arg(words()));
  updateGeometry();
  update();
}

/// As many whole pieces as there is room for; the rest is in the list.
void SummaryBar::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  paintGround(p, this, c.paper);
  double right = width() - 8;
  for (int i = 0; i < m_row->count(); ++i) {
    const QWidget* control = m_row->itemAt(i)->widget();
    if (control != nullptr) right = std::min<double>(right, control->x() - 8);
  }
  p.setFont(m_look->font(kType));
  const QFontMetricsF metrics(p.font());
  const double side = m_look->px(kGlyph);
  double x = kLeft;
  for (std::size_t i = 0; i < m_pieces.size(); ++i) {
    const Piece& piece = m_pieces[i];
    const double glyph = piece.becomes ? side + m_look->px(6) : 0;
    const double wide = metrics.horizontalAdvance(piece.words);
    if (i > 0 && x + glyph + wide > right) break;
    if (piece.becomes) {
      paintGlyph(p, QRectF(x, (height() - side) / 2.0, side, side), glyphOf(*piece.becomes), c);
    }
    p.setPen(c.ink);
    const QRectF box(x + glyph, 0, std::min(wide + 1, right - x - glyph), height());
    p.drawText(box, Qt::AlignLeft | Qt::AlignVCenter,
               metrics.elidedText(piece.words, Qt::ElideRight, box.width()));
    x += glyph + wide + m_look->px(kGap);
  }
}

}  // namespace grainwise::ui
