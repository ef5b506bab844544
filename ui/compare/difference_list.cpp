// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/difference_list.h"

#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "ui/compare/compare_feed.h"
#include "ui/compare/compare_words.h"
#include "ui/text/words.h"
#include "ui/theme/glyph.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kTitleType = 16;
constexpr int kType = 15;
constexpr int kSmallType = 14;
constexpr int kIndent = 28;
constexpr int kMargin = 6;
constexpr int kGlyph = 10;
}  // namespace

DifferenceCard::DifferenceCard(Look* look, QWidget* parent) : QAbstractButton(parent), m_look(look) {
  setObjectName(QStringLiteral("differenceCard"));
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

void DifferenceCard::setWords(int number, const QString& title, const QString& facts,
                              const QList<Line>& lines) {
  m_number = number;
  m_title = title;
  m_facts = facts;
  m_lines = lines;
  setAccessibleName(words());
  setToolTip(CompareWords::tr("Choose it on the lines"));
  updateGeometry();
  update();
}

QString DifferenceCard::words() const {
  QStringList all{m_title};
  if (!m_facts.isEmpty()) all << m_facts;
  for (const Line& line : m_lines) {
    all << (line.becomes ? QStringLiteral("%1 (%2)").arg(line.words, gradeWord(*line.becomes))
                         : line.words);
  }
  return all.join(QStringLiteral(". "));
}

/// Draws, or only measures without a painter; the height.
double DifferenceCard::layOut(QPainter* p, double width) const {
  const Colours& c = m_look->colours();
  const double indent = m_look->px(kIndent);
  const double room = std::max(80.0, width - indent - m_look->px(kMargin));
  double y = m_look->px(kMargin);
  const auto put = [&](const QString& words, const QFont& font, const QColor& colour, double left,
                       double wide) {
    const QRectF box = QFontMetricsF(font).boundingRect(QRectF(0, 0, wide, 10000), Qt::TextWordWrap,
                                                        words);
    if (p != nullptr) {
      p->setFont(font);
      p->setPen(colour);
      p->drawText(QRectF(left, y, wide, box.height() + 2), Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap,
                  words);
    }
    y += std::ceil(box.height());
  };
  const double top = y;
  put(m_title, m_look->font(kTitleType, true), c.ink, indent, room);
  if (p != nullptr) {
    p->setFont(m_look->font(kTitleType));
    p->setPen(c.slate);
    p->drawText(QRectF(0, top, indent - m_look->px(8), QFontMetricsF(p->font()).height()),
                Qt::AlignRight | Qt::AlignTop, QString::number(m_number));
  }
  if (!m_facts.isEmpty()) put(m_facts, m_look->font(kSmallType), c.slate, indent, room);
  for (const Line& line : m_lines) {
    y += m_look->px(1);
    const QFont font = m_look->font(line.quiet ? kSmallType : kType);
    const double glyph = line.becomes ? m_look->px(kGlyph + 6) : 0;
    if (p != nullptr && line.becomes) {
      const double side = m_look->px(kGlyph);
      paintGlyph(*p, QRectF(indent, y + (QFontMetricsF(font).height() - side) / 2, side, side),
                 glyphOf(*line.becomes), c);
    }
    put(line.words, font, line.quiet ? c.slate : c.ink, indent + glyph, room - glyph);
  }
  return y + m_look->px(kMargin);
}

int DifferenceCard::heightForWidth(int width) const {
  return std::max(m_look->px(44), int(std::ceil(layOut(nullptr, width))));
}

QSize DifferenceCard::sizeHint() const {
  const int wide = width() > 100 ? width() : m_look->px(360);
  return {m_look->px(360), heightForWidth(wide)};
}

QSize DifferenceCard::minimumSizeHint() const { return {m_look->px(200), m_look->px(44)}; }

void DifferenceCard::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  if (underMouse() || isDown()) p.fillRect(rect(), c.card);
  p.setPen(QPen(c.edge, 1));
  p.drawLine(QPointF(0, 0.5), QPointF(width(), 0.5));
  (void)layOut(&p, width());
  if (!hasFocus()) return;
  p.setBrush(Qt::NoBrush);
  p.setPen(QPen(c.river, 2));
  p.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 4, 4);
}

DifferenceList::DifferenceList(Look* look, CompareFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("differenceList"));
  setAccessibleName(tr("In what B differs from A"));
  m_column = new QVBoxLayout(this);
  m_column->setContentsMargins(0, 0, 0, 0);
  m_column->setSpacing(0);
  m_none = new QLabel(this);
  m_none->setObjectName(QStringLiteral("noDifference"));
  m_none->setTextFormat(Qt::PlainText);
  m_none->setWordWrap(true);
  m_none->setText(tr("A and B are the same line. Change one of them, drag a part across, try a part "
                     "from the Shelf, or open another rig: samples are in Menu, Help."));
  m_column->addWidget(m_none);
  m_column->addStretch(1);
  connect(feed, &CompareFeed::compared, this, &DifferenceList::refresh);
  connect(look, &Look::changed, this, &DifferenceList::refresh);
}

void DifferenceList::refresh() {
  const auto& list = m_feed->comparison().differences;
  m_none->setVisible(list.empty());
  m_none->setFont(m_look->font(16));
  while (m_cards.size() < qsizetype(list.size())) {
    auto* card = new DifferenceCard(m_look, this);
    const qsizetype at = m_cards.size();
    connect(card, &DifferenceCard::clicked, this, [this, at] {
      const auto& now = m_feed->comparison().differences;
      if (std::size_t(at) < now.size()) Q_EMIT chosen(now[std::size_t(at)].parts);
    });
    m_column->insertWidget(m_column->count() - 1, card);
    m_cards.append(card);
  }
  while (m_cards.size() > qsizetype(list.size())) m_cards.takeLast()->deleteLater();
  for (std::size_t i = 0; i < list.size(); ++i) fill(m_cards[qsizetype(i)], int(i) + 1, list[i]);
}

OutTable DifferenceList::table() const {
  OutTable table;
  table.header = {tr("Difference"), tr("Facts"), tr("What it does by itself")};
  const DisplayUnits units = m_look->units();
  for (const Difference& d : m_feed->comparison().differences) {
    QStringList does;
    for (const DifferenceCard::Line& line : linesOf(d)) does << line.words;
    table.rows.push_back({differenceTitle(d, m_feed->rigOf(false), m_feed->rigOf(true), units),
                          differenceFacts(d, units), does.join(QStringLiteral("; "))});
  }
  return table;
}

QList<DifferenceCard::Line> DifferenceList::linesOf(const Difference& d) const {
  const DisplayUnits units = m_look->units();
  QList<DifferenceCard::Line> lines;
  for (const Consequence& c : d.does) {
    if (c.within) continue;
    const EffectWords words = effectWords(c, units);
    lines.append({words.words, words.becomes, false});
  }
  if (lines.isEmpty()) {
    lines.append({d.does.empty() ? tr("Changes no reading by itself")
                                 : tr("By itself no more than is known"),
                  std::nullopt, true});
  } else if (const QString within = withinWords(d.does); !within.isEmpty()) {
    lines.append({within, std::nullopt, true});
  }
  return lines;
}

void DifferenceList::fill(DifferenceCard* card, int number, const Difference& d) const {
  const Rig &a = m_feed->rigOf(false), &b = m_feed->rigOf(true);
  const DisplayUnits units = m_look->units();
  card->setWords(number, differenceTitle(d, a, b, units), differenceFacts(d, units), linesOf(d));
}

}  // namespace grainwise::ui
