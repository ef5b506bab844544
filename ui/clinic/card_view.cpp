// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_view.h"

#include <QPainter>

namespace grainwise::ui {

CardView::CardView(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setAccessibleName(tr("The card as the class sees it"));
  connect(look, &Look::changed, this, qOverload<>(&QWidget::update));
}

void CardView::setCard(std::shared_ptr<const ShownCard> card, const CardState& state) {
  m_card = std::move(card);
  m_state = state;
  QStringList words;
  if (m_card) {
    words.append(QString::fromStdString(m_card->card.title));
    if (m_card->card.say) words.append(QString::fromStdString(*m_card->card.say));
    if (m_card->card.ask) words.append(QString::fromStdString(*m_card->card.ask));
    if (state.answered && m_card->card.reveal) words.append(QString::fromStdString(*m_card->card.reveal));
  }
  setAccessibleDescription(words.join(QLatin1Char('\n')));
  update();
}

void CardView::setBlank(bool blank) {
  if (blank == m_blank) return;
  m_blank = blank;
  update();
}

void CardView::setAspect(std::optional<double> widthToHeight) {
  m_aspect = widthToHeight;
  update();
}

void CardView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  const Colours colours = coloursOf(Scheme::projector);
  if (m_blank || !m_card) {
    p.fillRect(rect(), m_blank ? QColor(Qt::black) : colours.paper);
    return;
  }
  QSizeF screen = size();
  if (m_aspect) {
    screen = QSizeF(*m_aspect, 1).scaled(screen, Qt::KeepAspectRatio);
    p.translate((width() - screen.width()) / 2, (height() - screen.height()) / 2);
  }
  paintCardPage(p, screen, *m_card, m_state, colours, m_look->units());
}

}  // namespace grainwise::ui
