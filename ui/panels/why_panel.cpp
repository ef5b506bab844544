// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/why_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/text/why_words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kTitleType = 14;
constexpr int kTextType = 15;
constexpr int kLeastColumn = 300;  ///< at type scale 1; narrower lines are tiring to read
constexpr int kBetweenColumns = 28;
constexpr int kAside = 10;  ///< the ring of the keyboard stands clear of the words

QString paragraphs(const QStringList& lines) { return lines.join(QLatin1Char('\n')); }
}  // namespace

WhyPanel::WhyPanel(Look* look, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("whyPanel"));
  auto* inside = new QWidget;
  m_grid = new QGridLayout(inside);
  m_grid->setContentsMargins(kAside, 6, kAside, 6);
  m_grid->setHorizontalSpacing(kBetweenColumns);
  addList(tr("The figures"), inside);
  addList(tr("How they are put together"), inside);
  addList(tr("The limits, and whose they are"), inside);
  auto* scroll = new QScrollArea(this);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  scroll->setAccessibleName(tr("Why"));
  scroll->setWidget(inside);
  // A scroll area makes its widget fill itself; the drawer's ground shall show.
  inside->setAutoFillBackground(false);
  scroll->viewport()->setAutoFillBackground(false);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->addWidget(scroll);
  connect(feed, &AnalysisFeed::analysisChanged, this, &WhyPanel::refresh);
  connect(feed, &AnalysisFeed::depthRefined, this, &WhyPanel::refresh);
  connect(look, &Look::changed, this, &WhyPanel::applyLook);
  applyLook();
}

void WhyPanel::addList(const QString& title, QWidget* inside) {
  auto* heading = new QLabel(title, inside);
  heading->setTextFormat(Qt::PlainText);
  heading->setWordWrap(true);
  auto* text = new QLabel(inside);
  text->setTextFormat(Qt::PlainText);
  text->setWordWrap(true);
  text->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  text->setTextInteractionFlags(Qt::TextSelectableByMouse);
  m_titles.append(heading);
  m_texts.append(text);
}

void WhyPanel::showReading(Reading reading) {
  m_reading = reading;
  refresh();
}

void WhyPanel::refresh() {
  if (!isVisible()) return;
  const WhyWords why = whyWords(m_reading, *m_feed->rig(), m_feed->analysis(), m_feed->conditions(),
                                m_look->units());
  m_texts[0]->setText(paragraphs(why.figures));
  m_texts[1]->setText(paragraphs(why.formula));
  m_texts[2]->setText(paragraphs(why.limits));
}

void WhyPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void WhyPanel::applyLook() {
  for (QLabel* title : m_titles) title->setFont(m_look->font(kTitleType, true));
  for (QLabel* text : m_texts) text->setFont(m_look->font(kTextType));
  refresh();
  arrange();
}

void WhyPanel::arrange() {
  const int all = static_cast<int>(m_titles.size());
  const int fit = (width() - 2 * kAside + kBetweenColumns) / (m_look->px(kLeastColumn) + kBetweenColumns);
  const int columns = fit >= all ? all : 1;
  if (columns == m_columns) return;
  m_columns = columns;
  for (int i = 0; i < all; ++i) {
    const int row = 2 * (i / columns);
    m_grid->removeWidget(m_titles[i]);
    m_grid->removeWidget(m_texts[i]);
    m_grid->addWidget(m_titles[i], row, i % columns);
    m_grid->addWidget(m_texts[i], row + 1, i % columns);
    m_grid->setColumnStretch(i, i >= columns ? 0 : i == 0 ? 4 : 3);
  }
  for (int row = 0; row <= 2 * all; ++row) m_grid->setRowStretch(row, 0);
  m_grid->setRowStretch(columns == all ? 1 : 2 * all, 1);
}

void WhyPanel::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  arrange();
}

}  // namespace grainwise::ui
