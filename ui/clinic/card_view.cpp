// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_view.h"

#include <QPainter>

namespace grainwise::ui {
namespace {
constexpr int kPromptType = 18;
constexpr int kPromptMargin = 30;
}  // namespace

CardView::CardView(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setAccessibleName(tr("The card as the class sees it"));
  connect(look, &Look::changed, this, qOverload<>(&QWidget::update));
}

void CardView::setCard(std::shared_ptr<const ShownCard> card, const CardState& state) {
  if (card && card == m_card && state == m_state) return;  // the next card does not move while this one does
  m_card = std::move(card);
  m_state = state;
  QStringList words;
  if (m_card) {
    words.append(QString::fromStdString(m_card->card.title));
    if (m_card->card.say) words.append(QString::fromStdString(*m_card->card.say));
    if (m_card->card.ask) words.append(QString::fromStdString(*m_card->card.ask));
    if (state.answered && m_card->card.reveal) words.append(QString::fromStdString(*m_card->card.reveal));
  } else {
    words.append(m_prompt);
  }
  setAccessibleDescription(words.join(QLatin1Char('\n')));
  update();
}

void CardView::setBlank(bool blank) {
  if (blank == m_blank) return;
  m_blank = blank;
  update();
}

void CardView::setPrompt(const QString& words) {
  m_prompt = words;
  update();
}

void CardView::setAspect(std::optional<double> widthToHeight) {
  m_aspect = widthToHeight;
  update();
}

void CardView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  const Colours colours = coloursOf(Scheme::projector);
  if (m_blank) return p.fillRect(rect(), Qt::black);
  QSizeF screen = size();
  if (m_aspect) {
    screen = QSizeF(*m_aspect, 1).scaled(screen, Qt::KeepAspectRatio);
    p.translate((width() - screen.width()) / 2, (height() - screen.height()) / 2);
  }
  if (!m_card) {
    const QRectF card(QPointF(), screen);
    const double margin = m_look->px(kPromptMargin);
    p.fillRect(card, colours.paper);
    p.setFont(m_look->font(kPromptType));
    p.setPen(colours.slate);
    p.drawText(card.adjusted(margin, margin, -margin, -margin), Qt::AlignCenter | Qt::TextWordWrap, m_prompt);
    return;
  }
  paintCardPage(p, screen, *m_card, m_state, colours, m_look->units());
}

}  // namespace grainwise::ui
