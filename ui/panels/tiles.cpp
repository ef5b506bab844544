// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/tiles.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPainter>
#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "ui/theme/text_width.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {

/// From left to right.
constexpr std::array kReadings{Reading::depth, Reading::junction, Reading::tipShare,
                               Reading::flyAgainstTip, Reading::headOnRod};

// Pixels at type scale 1.
constexpr int kTitleType = 14;
constexpr int kNumberType = 36;
constexpr int kVerdictType = 16;
constexpr int kSide = 14;
constexpr int kTopAndBottom = 6;
constexpr int kTitleRow = 20;
constexpr int kNumberRow = 40;
constexpr int kVerdictRow = 24;
constexpr int kGlyph = 11;
constexpr int kGlyphColumn = 20;
constexpr int kBetweenWords = 12;
/// Below this a tile looks cramped even where its words are short.
constexpr int kLeastWidth = 190;
// Window pixels: margins do not grow with the type.
constexpr int kMargin = 16;
constexpr int kGap = 10;
/// Where the window is narrower, at type scale 1, the two sentences stand one below the other.
constexpr int kBothSentences = 900;

}  // namespace

Tile::Tile(Look* look, Reading reading, int place, QWidget* parent)
    : QAbstractButton(parent), m_look(look), m_reading(reading), m_place(place) {
  setObjectName(QStringLiteral("tile%1").arg(place));
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  setShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(place)));
}

QString Tile::keyHint() const { return shortcut().toString(QKeySequence::NativeText); }

void Tile::setWords(const TileWords& words) {
  const auto all = [](const TileWords& w) { return std::tie(w.title, w.number, w.from, w.verdict, w.grade); };
  if (all(words) == all(m_words)) return;
  m_words = words;
  QStringList spoken{words.title, words.number, words.from, words.verdict};
  if (words.grade) spoken.append(gradeWord(*words.grade));
  spoken.removeAll(QString());
  setAccessibleName(spoken.join(QStringLiteral(", ")));
  setAccessibleDescription(tr("opens why"));
  setToolTip(tr("%1: why? (%2)").arg(words.title, keyHint()));
  updateGeometry();
  update();
}

int Tile::wordsWidth() const {
  const auto wide = [this](int type, bool bold, const QString& text) {
    return text.isEmpty() ? 0 : int(std::ceil(textWidth(text, m_look->font(type, bold)))) + 1;
  };
  const int between = m_look->px(kBetweenWords);
  const int title =
      wide(kTitleType, false, m_words.title) + between + wide(kTitleType, false, keyHint());
  const int number =
      wide(kNumberType, true, m_words.number) + between + wide(kTitleType, false, m_words.from);
  const int glyph = m_words.grade ? m_look->px(kGlyphColumn) : 0;
  const int verdict = glyph + wide(kVerdictType, false, m_words.verdict);
  return std::max({title, number, verdict}) + 2 * (m_look->px(kSide) + 1);
}

QSize Tile::minimumSizeHint() const {
  return {m_look->px(kLeastWidth),
          m_look->px(kTitleRow + kNumberRow + kVerdictRow + 2 * kTopAndBottom)};
}

QSize Tile::sizeHint() const {
  return {std::max(wordsWidth(), minimumSizeHint().width()), minimumSizeHint().height()};
}

void Tile::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

QRectF Tile::inside() const {
  const double side = m_look->px(kSide) + 1;
  const double top = m_look->px(kTopAndBottom);
  return QRectF(rect()).adjusted(side, top, -side, -top);
}

void Tile::paintTitle(QPainter& p, const QRectF& row) const {
  p.setFont(m_look->font(kTitleType));
  p.setPen(m_look->colours().slate);
  p.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, m_words.title);
  p.drawText(row, Qt::AlignRight | Qt::AlignVCenter, keyHint());
}

/// Both on one base line: the number, and what it came from at the right.
void Tile::paintNumber(QPainter& p, const QRectF& row) const {
  const QFont numberFont = m_look->font(kNumberType, true);
  const QFontMetricsF metrics(numberFont);
  const double base = row.top() + (row.height() + metrics.capHeight()) / 2;
  p.setFont(numberFont);
  p.setPen(m_look->colours().ink);
  p.drawText(QPointF(row.left(), base), m_words.number);
  p.setFont(m_look->font(kTitleType));
  p.setPen(m_look->colours().slate);
  const double wide = QFontMetricsF(p.font()).horizontalAdvance(m_words.from);
  p.drawText(QPointF(row.right() - wide, base), m_words.from);
}

void Tile::paintVerdict(QPainter& p, const QRectF& row) const {
  QRectF room = row;
  if (m_words.grade) {
    const double side = m_look->px(kGlyph);
    paintGlyph(p, QRectF(row.left(), row.center().y() - side / 2, side, side),
               glyphOf(*m_words.grade), m_look->colours());
    room.setLeft(row.left() + m_look->px(kGlyphColumn));
  }
  p.setFont(m_look->font(kVerdictType));
  p.setPen(m_words.grade ? m_look->colours().ink : m_look->colours().slate);
  p.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, m_words.verdict);
}

void Tile::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const double line = hasFocus() ? 2 : 1;
  p.setPen(QPen(hasFocus() ? c.river : c.edge, line));
  p.setBrush(isDown() ? c.band : c.card);
  p.drawRoundedRect(QRectF(rect()).adjusted(line / 2, line / 2, -line / 2, -line / 2), 8, 8);
  QRectF row = inside();
  row.setHeight(m_look->px(kTitleRow));
  paintTitle(p, row);
  row = QRectF(row.left(), row.bottom(), row.width(), m_look->px(kNumberRow));
  paintNumber(p, row);
  paintVerdict(p, QRectF(row.left(), row.bottom(), row.width(), m_look->px(kVerdictRow)));
}

TileRow::TileRow(Look* look, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  m_grid = new QGridLayout(this);
  m_grid->setContentsMargins(kMargin, 6, kMargin, 4);
  m_grid->setSpacing(kGap);
  for (const Reading reading : kReadings) {
    auto* tile = new Tile(look, reading, static_cast<int>(m_tiles.size()) + 1, this);
    connect(tile, &Tile::clicked, this, [this, reading] { Q_EMIT whyRequested(reading); });
    m_tiles.append(tile);
  }
  connect(feed, &AnalysisFeed::analysisChanged, this, &TileRow::refresh);
  connect(feed, &AnalysisFeed::depthRefined, this, &TileRow::refresh);
  connect(look, &Look::changed, this, [this] {
    for (Tile* tile : std::as_const(m_tiles)) tile->updateGeometry();
    refresh();
    update();
  });
  refresh();
}

void TileRow::refresh() {
  for (Tile* tile : m_tiles) {
    tile->setWords(tileWords(tile->reading(), *m_feed->rig(), m_feed->analysis(), m_look->units()));
  }
  arrange();
}

/// All in one row where that fits, some wider than others if need be; else in rows as even as can be:
/// five tiles go as three and two, never as four and one.
int TileRow::columnsFor(int width) const {
  int widest = m_look->px(kLeastWidth);
  int together = 2 * kMargin - kGap;
  for (const Tile* tile : m_tiles) {
    widest = std::max(widest, tile->wordsWidth());
    together += std::max(m_look->px(kLeastWidth), tile->wordsWidth()) + kGap;
  }
  const int all = static_cast<int>(m_tiles.size());
  if (together <= width) return all;
  const int most = std::max(1, (width - 2 * kMargin + kGap) / (widest + kGap));
  const int rows = (all + most - 1) / most;
  return (all + rows - 1) / rows;
}

void TileRow::arrange() {
  const int columns = columnsFor(width());
  const int all = static_cast<int>(m_tiles.size());
  if (columns != m_columns) {
    m_columns = columns;
    for (int i = 0; i < all; ++i) {
      m_grid->removeWidget(m_tiles[i]);
      m_grid->addWidget(m_tiles[i], i / columns, i % columns);
    }
  }
  // Equal widths unless a tile's words need more than its share.
  const int share = (width() - 2 * kMargin + kGap) / columns - kGap;
  const bool equal = std::all_of(m_tiles.begin(), m_tiles.end(),
                                 [share](const Tile* tile) { return tile->wordsWidth() <= share; });
  for (int i = 0; i < all; ++i) {
    const int wide = equal || columns < all ? 1 : m_tiles[i]->wordsWidth();
    const int stretch = i < columns ? wide : 0;
    if (m_grid->columnStretch(i) != stretch) m_grid->setColumnStretch(i, stretch);
  }
}

void TileRow::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

TurnoverButton::TurnoverButton(Look* look, QWidget* parent) : QAbstractButton(parent), m_look(look) {
  setObjectName(QStringLiteral("turnover"));
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  setShortcut(QKeySequence(QStringLiteral("Alt+%1").arg(kReadings.size() + 1)));
}

void TurnoverButton::setWords(const QString& sentence, std::optional<Grade> grade) {
  if (sentence == m_sentence && grade == m_grade) return;
  m_sentence = sentence;  // no setText: that would take the key away
  m_grade = grade;
  setAccessibleName(grade ? sentence + QStringLiteral(", ") + gradeWord(*grade) : sentence);
  setAccessibleDescription(tr("opens why, and draws the drive on the chart"));
  setToolTip(tr("Turnover: why? (%1)").arg(shortcut().toString(QKeySequence::NativeText)));
  updateGeometry();
  update();
}

QSize TurnoverButton::sizeHint() const {
  const QFontMetrics metrics(m_look->font(kVerdictType));
  return {metrics.horizontalAdvance(m_sentence) + m_look->px(kGlyphColumn) + 4, metrics.height() + 4};
}

QSize TurnoverButton::minimumSizeHint() const {
  return {m_look->px(kLeastWidth), sizeHint().height()};
}

void TurnoverButton::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

void TurnoverButton::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  QRectF room(rect());
  if (m_grade) {
    const double side = m_look->px(kGlyph);
    paintGlyph(p, QRectF(2, room.center().y() - side / 2, side, side), glyphOf(*m_grade), c);
    room.setLeft(m_look->px(kGlyphColumn) + 2);
  }
  p.setFont(m_look->font(kVerdictType));
  p.setPen(m_grade ? c.ink : c.slate);
  const QString shown = QFontMetrics(p.font()).elidedText(m_sentence, Qt::ElideRight, int(room.width()));
  p.drawText(room, Qt::AlignLeft | Qt::AlignVCenter, shown);
  if (!hasFocus() && !underMouse()) return;
  const QRectF words = p.boundingRect(room, Qt::AlignLeft | Qt::AlignVCenter, shown);
  p.setPen(QPen(hasFocus() ? c.river : c.slate, hasFocus() ? 2 : 1));
  p.drawLine(words.bottomLeft(), words.bottomRight());
}

SentenceBar::SentenceBar(Look* look, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("sentences"));
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(kMargin, 0, kMargin, 6);
  row->setSpacing(kMargin);
  m_turnover = new TurnoverButton(look, this);
  m_stroke = new QLabel(this);
  m_stroke->setObjectName(QStringLiteral("strokeSentence"));
  m_stroke->setTextFormat(Qt::PlainText);
  row->addWidget(m_turnover, 1);
  row->addWidget(m_stroke, 0);
  connect(m_turnover, &QAbstractButton::clicked, this,
          [this] { Q_EMIT whyRequested(Reading::drive); });
  connect(feed, &AnalysisFeed::analysisChanged, this, &SentenceBar::refresh);
  connect(look, &Look::changed, this, [this] {
    m_turnover->updateGeometry();
    arrange();
    refresh();
    update();
  });
  refresh();
}

/// By the width, not by what the words are: the line under the tiles does not jump with an edit.
void SentenceBar::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

void SentenceBar::arrange() {
  const bool beside = width() >= m_look->px(kBothSentences);
  static_cast<QBoxLayout*>(layout())->setDirection(beside ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
  m_stroke->setAlignment((beside ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
}

void SentenceBar::refresh() {
  m_turnover->setWords(turnoverSentence(*m_feed->rig(), m_feed->analysis()),
                       turnoverGrade(m_feed->analysis()));
  const auto& stroke = m_feed->analysis().stroke;
  m_stroke->setText(stroke ? strokeSentence(*stroke) : QString());
  m_stroke->setFont(m_look->font(kVerdictType));
  m_stroke->setMinimumHeight(QFontMetrics(m_stroke->font()).height());
  QPalette colours = m_stroke->palette();
  colours.setColor(QPalette::WindowText, m_look->colours().slate);
  m_stroke->setPalette(colours);
}

}  // namespace grainwise::ui
