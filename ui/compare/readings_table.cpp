// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/readings_table.h"

#include <QPainter>
#include <algorithm>

#include "ui/compare/compare_feed.h"
#include "ui/compare/compare_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/theme/glyph.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kHead = 26;
constexpr int kLeastRow = 25;
constexpr int kGap = 14;
constexpr int kGlyph = 10;

const Consequence* differenceIn(const Comparison& c, Effect effect) {
  for (const Consequence& each : c.overall) {
    if (each.effect == effect) return &each;
  }
  return nullptr;
}

std::optional<Effect> effectOf(Reading reading) {
  switch (reading) {
    case Reading::junction:
      return Effect::junction;
    case Reading::tipShare:
      return Effect::tipShare;
    case Reading::flyAgainstTip:
      return Effect::flyAgainstTip;
    case Reading::headOnRod:
      return Effect::headOnRod;
    case Reading::depth:
      return Effect::depth;
    default:
      return std::nullopt;
  }
}

/// "B is worse", "no difference": the third column where no figure says more.
QString plainDifference(const ReadingsTable::Cell& a, const ReadingsTable::Cell& b,
                        const Consequence* c) {
  if (a.number.isEmpty() || b.number.isEmpty()) return {};
  if (a.grade && b.grade && *a.grade != *b.grade) {
    return *b.grade > *a.grade ? CompareWords::tr("A is better here")
                               : CompareWords::tr("B is better here");
  }
  if (c == nullptr) return CompareWords::tr("no difference");
  if (c->within) return CompareWords::tr("no more than is known");
  return a.grade == Grade::fits ? CompareWords::tr("both fit")
                                : CompareWords::tr("no better in either");
}

/// The range of the depth, of real swings where they have been run; words only where it lies on the bed.
void depthCell(ReadingsTable::Cell& cell, const Analysis& analysis, const HeavyRuns* runs,
               DisplayUnits units) {
  if (!analysis.depthBand || !analysis.hang) return;
  const bool real = runs != nullptr && runs->band && runs->band->band;
  const DepthBand& band = real ? *runs->band->band : *analysis.depthBand;
  const bool bottom = real && runs->swing ? runs->swing->onBottom() : isOnBottom(analysis.hang->state);
  cell.grade.reset();
  cell.verdict.clear();
  cell.number = bottom ? CompareWords::tr("on the bottom")
                       : rangeText(band.low.value(), band.high.value(), units);
}

}  // namespace

ReadingsTable::ReadingsTable(Look* look, CompareFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("readingsTable"));
  setAccessibleName(tr("Readings of A and B"));
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  setSizePolicy(policy);
  connect(feed, &CompareFeed::compared, this, &ReadingsTable::refresh);
  connect(look, &Look::changed, this, &ReadingsTable::refresh);
}

OutTable ReadingsTable::table() const {
  OutTable table;
  table.header = {tr("Reading"), tr("A"), tr("A says"), tr("B"), tr("B says"), tr("Difference")};
  for (const Row& row : rowsNow()) {
    table.rows.push_back({row.title, row.a.number, row.a.verdict, row.b.number, row.b.verdict, row.difference});
  }
  return table;
}

void ReadingsTable::refresh() {
  m_rows = rowsNow();
  QStringList spoken;
  for (const Row& row : m_rows) {
    spoken << tr("%1: A %2, B %3, %4")
                  .arg(row.title, cellWords(row.a), cellWords(row.b), row.difference);
  }
  setAccessibleDescription(spoken.join(QStringLiteral(". ")));
  updateGeometry();
  update();
}

std::vector<ReadingsTable::Row> ReadingsTable::rowsNow() const {
  std::vector<Row> rows;
  const auto rigA = m_feed->a()->rig(), rigB = m_feed->b()->rig();
  const Analysis &a = m_feed->a()->analysis(), &b = m_feed->b()->analysis();
  const DisplayUnits units = m_look->units();
  // What fits is said by its glyph: words are for what wants some.
  const auto cellOf = [](const TileWords& words) {
    const bool quiet = words.grade == Grade::fits && !words.number.isEmpty();
    return Cell{words.number, quiet ? QString() : words.verdict, words.grade};
  };
  for (const Reading reading : {Reading::depth, Reading::junction, Reading::tipShare,
                                Reading::flyAgainstTip, Reading::headOnRod}) {
    Row row;
    row.title = readingTitle(reading);
    row.a = cellOf(tileWords(reading, *rigA, a, units));
    row.b = cellOf(tileWords(reading, *rigB, b, units));
    if (reading == Reading::depth) {
      row.title = m_feed->fromRuns() ? tr("Depth") : readingTitle(reading);
      depthCell(row.a, a, m_feed->runs(false), units);
      depthCell(row.b, b, m_feed->runs(true), units);
    }
    const Consequence* c = differenceIn(m_feed->comparison(), *effectOf(reading));
    if (reading == Reading::depth && c != nullptr) {
      row.difference = depthDifferenceWords(*c, units);
    } else {
      row.difference = plainDifference(row.a, row.b, c);
    }
    rows.push_back(row);
  }
  Row turnover;
  turnover.title = tr("Turnover");
  turnover.a = {{}, turnoverSentence(*rigA, a), turnoverGrade(a)};
  turnover.b = {{}, turnoverSentence(*rigB, b), turnoverGrade(b)};
  const Consequence* reserve = differenceIn(m_feed->comparison(), Effect::reserve);
  if (reserve != nullptr && reserve->a && reserve->b) {
    turnover.difference = reserve->within                            ? tr("no more than is known")
                          : reserve->b->value > reserve->a->value ? tr("B turns over more easily")
                                                                  : tr("A turns over more easily");
  } else if (a.turnover && b.turnover) {
    turnover.difference = tr("no difference");
  }
  rows.push_back(turnover);
  if (const Consequence* time = differenceIn(m_feed->comparison(), Effect::swingTime)) {
    Row row;
    row.title = tr("Swing");
    const auto seconds = [](const std::optional<Figure>& f) {
      return Cell{f ? tr("%1 s").arg(numberText(f->value, 0)) : QString(), {}, {}};
    };
    row.a = seconds(time->a);
    row.b = seconds(time->b);
    row.difference = effectWords(*time, units).words;
    rows.push_back(row);
  }
  const Consequence* stroke = differenceIn(m_feed->comparison(), Effect::stroke);
  Row last;
  last.title = tr("Stroke");
  last.difference = stroke != nullptr ? strokeDifferenceWords(*stroke->stroke) : tr("same stroke");
  rows.push_back(last);
  return rows;
}

QString ReadingsTable::cellWords(const Cell& cell) const {
  if (cell.number.isEmpty()) return cell.verdict;
  return cell.verdict.isEmpty() ? cell.number
                                : QStringLiteral("%1, %2").arg(cell.number, cell.verdict);
}

ReadingsTable::Columns ReadingsTable::columns() const {
  const QFontMetricsF bold(m_look->font(kType, true));
  double title = 0;
  for (const Row& row : m_rows) title = std::max(title, bold.horizontalAdvance(row.title));
  const double first = title + m_look->px(kGap);
  const double rest = std::max(240.0, width() - first);
  const double third = rest * 0.345;
  return {0, first, first + third, first + 2 * third, double(width())};
}

int ReadingsTable::rowHeight(const Row& row) const {
  const Columns at = columns();
  const QFontMetricsF metrics(m_look->font(kType));
  const double glyph = m_look->px(kGlyph + 8);
  const auto tall = [&](const QString& words, double wide) {
    return metrics.boundingRect(QRectF(0, 0, std::max(60.0, wide), 10000), Qt::TextWordWrap, words)
        .height();
  };
  const double gap = m_look->px(kGap);
  const double most = std::max({tall(cellWords(row.a), at.b - at.a - gap - glyph),
                                tall(cellWords(row.b), at.difference - at.b - gap - glyph),
                                tall(row.difference, at.end - at.difference - 4)});
  return std::max(m_look->px(kLeastRow), int(std::ceil(most)) + m_look->px(5));
}

QSize ReadingsTable::sizeHint() const {
  int tall = m_look->px(kHead);
  for (const Row& row : m_rows) tall += rowHeight(row);
  return {m_look->px(560), tall};
}

QSize ReadingsTable::minimumSizeHint() const { return {m_look->px(360), sizeHint().height()}; }

void ReadingsTable::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  updateGeometry();
}

void ReadingsTable::paintCell(QPainter& p, const QRectF& box, const Cell& cell) const {
  const Colours& c = m_look->colours();
  const double side = m_look->px(kGlyph);
  const double first = QFontMetricsF(p.font()).height();
  if (cell.grade) {
    paintGlyph(p, QRectF(box.left(), box.top() + (first - side) / 2, side, side), glyphOf(*cell.grade),
               c);
  }
  p.setPen(c.ink);
  p.drawText(box.adjusted(m_look->px(kGlyph + 8), 0, 0, 0), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
             cellWords(cell));
}

void ReadingsTable::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const Columns at = columns();
  const double gap = m_look->px(kGap);
  p.setFont(m_look->font(kType, true));
  p.setPen(c.river);
  p.drawText(QRectF(at.a + m_look->px(kGlyph + 8), 0, at.b - at.a, m_look->px(kHead)), Qt::AlignVCenter,
             tr("A"));
  p.setPen(c.ochreWord);
  p.drawText(QRectF(at.b + m_look->px(kGlyph + 8), 0, at.b - at.a, m_look->px(kHead)), Qt::AlignVCenter,
             tr("B"));
  p.setPen(c.slate);
  p.setFont(m_look->font(14));
  const QString state = m_feed->fromRuns() ? tr("depths from real swings")
                        : m_feed->running() ? tr("swinging both…")
                                            : QString();
  // Over its column; words that are longer begin further left.
  const double words = std::ceil(QFontMetricsF(p.font()).horizontalAdvance(state)) + 1;
  const double left = std::min(at.difference, at.end - words);
  p.drawText(QRectF(left, 0, at.end - left, m_look->px(kHead)), Qt::AlignVCenter, state);
  double y = m_look->px(kHead);
  for (const Row& row : m_rows) {
    const double tall = rowHeight(row);
    p.setPen(QPen(c.edge, 1));
    p.drawLine(QPointF(0, y), QPointF(width(), y));
    const double top = y + m_look->px(2);
    p.setFont(m_look->font(kType, true));
    p.setPen(c.slate);
    p.drawText(QRectF(at.title, top, at.a - at.title, tall), Qt::AlignLeft | Qt::AlignTop, row.title);
    p.setFont(m_look->font(kType));
    paintCell(p, {at.a, top, at.b - at.a - gap, tall}, row.a);
    paintCell(p, {at.b, top, at.difference - at.b - gap, tall}, row.b);
    p.setPen(c.ink);
    p.drawText(QRectF(at.difference, top, at.end - at.difference - 4, tall),
               Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, row.difference);
    y += tall;
  }
}

}  // namespace grainwise::ui
