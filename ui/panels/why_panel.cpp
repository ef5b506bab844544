// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/why_panel.h"

#include <QGridLayout>
#include <QLabel>
#include <QScrollArea>
#include <QVBoxLayout>

#include "ui/text/why_words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {

WhyPanel::WhyPanel(Look* look, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed) {
  setObjectName(QStringLiteral("whyPanel"));
  auto* inside = new QWidget;
  auto* grid = new QGridLayout(inside);
  grid->setContentsMargins(0, 6, 0, 6);
  grid->setHorizontalSpacing(28);
  for (const QString& title : {tr("The figures"), tr("How they are put together"), tr("The limits")}) {
    const int column = int(m_titles.size());
    auto* heading = new QLabel(title, inside);
    auto* text = new QLabel(inside);
    text->setTextFormat(Qt::PlainText);
    text->setWordWrap(true);
    text->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    text->setTextInteractionFlags(Qt::TextSelectableByMouse);
    grid->addWidget(heading, 0, column);
    grid->addWidget(text, 1, column);
    grid->setColumnStretch(column, column == 0 ? 4 : 3);
    m_titles.append(heading);
    m_texts.append(text);
  }
  grid->setRowStretch(1, 1);
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
  connect(look, &Look::changed, this, &WhyPanel::applyLook);
  applyLook();
}

void WhyPanel::showReading(Reading reading) {
  m_reading = reading;
  refresh();
}

void WhyPanel::refresh() {
  if (!isVisible()) return;
  const WhyWords why = whyWords(m_reading, *m_feed->rig(), m_feed->analysis(), m_feed->conditions(),
                                m_look->units());
  const QString gap = QStringLiteral("\n");
  m_texts[0]->setText(why.figures.join(gap));
  m_texts[1]->setText(why.formula.join(gap));
  m_texts[2]->setText(why.limits.join(gap));
}

void WhyPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

void WhyPanel::applyLook() {
  for (QLabel* title : m_titles) title->setFont(m_look->font(14, true));
  for (QLabel* text : m_texts) text->setFont(m_look->font(15));
  refresh();
}

}  // namespace grainwise::ui
