// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/tiles.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <array>

#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr std::array kReadings{Reading::hinge, Reading::tipShare, Reading::fly, Reading::head};
constexpr int kTitle = 14;
constexpr int kNumber = 36;
constexpr int kVerdict = 16;
constexpr int kSide = 14;
constexpr int kHeight = 100;
constexpr int kGap = 10;
constexpr int kLeastWidth = 250;

QString keyHint(int index) { return QStringLiteral("Alt+%1").arg(index + 1); }
int indexOf(Reading reading) { return int(reading); }
}  // namespace

Tile::Tile(Look* look, Reading reading, QWidget* parent)
    : QAbstractButton(parent), m_look(look), m_reading(reading) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setObjectName(QStringLiteral("tile%1").arg(indexOf(reading) + 1));
  setShortcut(QKeySequence(keyHint(indexOf(reading))));
  setToolTip(tr("%1: why? (%2)").arg(readingTitle(reading), keyHint(indexOf(reading))));
}

void Tile::setWords(const TileWords& words) {
  m_words = words;
  QStringList spoken{readingTitle(m_reading), words.number, words.from, words.verdict};
  if (words.grade) spoken.append(gradeWord(*words.grade));
  spoken.removeAll(QString());
  setAccessibleName(spoken.join(QStringLiteral(", ")));
  updateGeometry();
  update();
}

int Tile::wordsWidth() const {
  const int side = m_look->px(kSide);
  const int number = QFontMetrics(m_look->font(kNumber, true)).horizontalAdvance(m_words.number) +
                     QFontMetrics(m_look->font(kTitle)).horizontalAdvance(m_words.from) +
                     (m_words.from.isEmpty() ? 0 : side);
  const int glyph = m_words.grade ? m_look->px(20) : 0;
  const int verdict =
      QFontMetrics(m_look->font(kVerdict)).horizontalAdvance(m_words.verdict) + glyph;
  return std::max(number, verdict) + 2 * side + 2;
}

bool Tile::fits() const { return wordsWidth() <= width(); }

QSize Tile::sizeHint() const { return {wordsWidth(), m_look->px(kHeight)}; }

QSize Tile::minimumSizeHint() const { return {m_look->px(200), m_look->px(kHeight)}; }

void Tile::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void Tile::paintVerdict(QPainter& p, const QRectF& row) const {
  const Colours& c = m_look->colours();
  double left = row.left();
  if (m_words.grade) {
    const double side = m_look->px(11);
    paintGlyph(p, QRectF(left, row.center().y() - side / 2, side, side), glyphOf(*m_words.grade), c);
    left += m_look->px(20);
  }
  p.setFont(m_look->font(kVerdict));
  p.setPen(m_words.number.isEmpty() ? c.slate : c.ink);
  const QRectF room(left, row.top(), row.right() - left, row.height());
  p.drawText(room, Qt::AlignLeft | Qt::AlignVCenter,
             p.fontMetrics().elidedText(m_words.verdict, Qt::ElideRight, int(room.width())));
}

void Tile::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF card = QRectF(rect()).adjusted(1, 1, -1, -1);
  p.setPen(QPen(hasFocus() ? c.river : c.edge, hasFocus() ? 2 : 1));
  p.setBrush(c.card);
  p.drawRoundedRect(card, 8, 8);
  const double side = m_look->px(kSide);
  const QRectF inside = card.adjusted(side, m_look->px(8), -side, -m_look->px(8));
  p.setFont(m_look->font(kTitle));
  p.setPen(c.slate);
  const QRectF title(inside.left(), inside.top(), inside.width(), m_look->px(20));
  p.drawText(title, Qt::AlignLeft | Qt::AlignVCenter, readingTitle(m_reading));
  p.drawText(title, Qt::AlignRight | Qt::AlignVCenter, keyHint(indexOf(m_reading)));
  const QRectF number(inside.left(), title.bottom(), inside.width(), m_look->px(40));
  p.drawText(number.adjusted(0, m_look->px(8), 0, 0), Qt::AlignRight | Qt::AlignVCenter, m_words.from);
  p.setFont(m_look->font(kNumber, true));
  p.setPen(c.ink);
  p.drawText(number, Qt::AlignLeft | Qt::AlignVCenter, m_words.number);
  paintVerdict(p, QRectF(inside.left(), number.bottom(), inside.width(), m_look->px(24)));
}

TileRow::TileRow(Look* look, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  m_grid = new QGridLayout(this);
  m_grid->setContentsMargins(16, 8, 16, 4);
  m_grid->setSpacing(kGap);
  for (const Reading reading : kReadings) {
    auto* tile = new Tile(look, reading, this);
    connect(tile, &Tile::clicked, this, [this, reading] { Q_EMIT whyRequested(reading); });
    m_tiles.append(tile);
  }
  connect(feed, &AnalysisFeed::analysisChanged, this, &TileRow::refresh);
  connect(look, &Look::changed, this, [this] {
    refresh();
    arrange();
  });
  refresh();
  arrange();
}

void TileRow::refresh() {
  for (Tile* tile : m_tiles) {
    tile->setWords(tileWords(tile->reading(), *m_feed->rig(), m_feed->analysis(), m_look->units()));
  }
}

void TileRow::arrange() {
  const int all = int(m_tiles.size());
  const int room = width() - 32 + kGap;
  const int columns = room >= all * (m_look->px(kLeastWidth) + kGap) ? all : (all + 1) / 2;
  if (columns == m_columns) return;
  m_columns = columns;
  for (int i = 0; i < all; ++i) {
    m_grid->removeWidget(m_tiles[i]);
    m_grid->addWidget(m_tiles[i], i / columns, i % columns);
  }
  for (int i = 0; i < all; ++i) m_grid->setColumnStretch(i, i < columns ? 1 : 0);
}

void TileRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

SentenceBar::SentenceBar(Look* look, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("sentences"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(16, 0, 16, 6);
  m_right = new QLabel(this);
  m_right->setTextFormat(Qt::PlainText);
  row->addStretch(1);
  row->addWidget(m_right);
  connect(feed, &AnalysisFeed::analysisChanged, this, &SentenceBar::refresh);
  connect(look, &Look::changed, this, &SentenceBar::refresh);
  refresh();
}

void SentenceBar::refresh() {
  const auto& stroke = m_feed->analysis().stroke;
  m_right->setText(stroke ? strokeSentence(*stroke) : QString());
  m_right->setFont(m_look->font(16));
}

}  // namespace grainwise::ui
