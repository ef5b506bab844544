// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/deck_pages.h"

#include "ui/charts/card_figures.h"
#include "ui/text/contexts.h"

namespace grainwise::ui {
namespace {

constexpr std::size_t kQuarters = 4;

QString text(const std::optional<std::string>& words) {
  return words ? QString::fromStdString(*words) : QString();
}

}  // namespace

DeckPages::DeckPages(const Deck& deck, const std::filesystem::path& folder, Form form,
                     DisplayUnits units, const Conditions& conditions)
    : m_title(QString::fromStdString(deck.title)), m_form(form), m_units(units) {
  for (const Card& card : deck.cards) {
    ShownCard shown = shownCard(card, folder, conditions);
    if (shown.missing.empty()) shown.runs = runsOf(card.show, shown.rigs, conditions);
    m_cards.push_back(std::move(shown));
  }
}

int DeckPages::count() const {
  const std::size_t each = m_form == Form::fourAPage ? kQuarters : 1;
  return std::max(1, int((m_cards.size() + each - 1) / each));
}

QStringList DeckPages::missing() const {
  QStringList lines;
  for (std::size_t i = 0; i < m_cards.size(); ++i) {
    for (const QString& what : m_cards[i].missing)
      lines.append(PaperWords::tr("card %1: %2").arg(i + 1).arg(what));
  }
  return lines;
}

void DeckPages::paint(QPainter& p, int page, QSizeF sheet) const {
  if (m_cards.empty()) {
    PageWriter w(p, sheet, m_units);
    w.title(m_title, {});
    w.paragraph(PaperWords::tr("This deck has no cards yet."));
    return;
  }
  if (m_form == Form::cardAPage) {
    paintCard(p, std::size_t(page), sheet);
    return;
  }
  PageWriter w(p, sheet, m_units);
  w.title(m_title, PaperWords::tr("page %1 of %2").arg(page + 1).arg(count()));
  const double tall = w.room() / double(kQuarters);
  for (std::size_t i = 0; i < kQuarters; ++i) {
    const std::size_t card = std::size_t(page) * kQuarters + i;
    if (card >= m_cards.size()) break;
    paintQuarter(p, card, QRectF(w.area().left(), w.y() + tall * double(i), w.area().width(), tall));
  }
  w.footer(PaperWords::tr("Depths are estimates and no guide to wading."));
}

void DeckPages::paintCard(QPainter& p, std::size_t card, QSizeF sheet) const {
  const ShownCard& shown = m_cards[card];
  PageWriter w(p, sheet, m_units);
  w.title(QString::fromStdString(shown.card.title),
          PaperWords::tr("%1, card %2 of %3").arg(m_title).arg(card + 1).arg(m_cards.size()));
  if (shown.card.show != CardShow::text || !shown.missing.empty()) {
    const double tall = w.area().height() * 0.4;
    const PictureStyle style = w.style(9.5);
    paintCardPicture(p, QRectF(w.area().left(), w.y(), w.area().width(), tall), shown, style, true);
    w.skip(tall / kPoint + 8);
  }
  w.paragraph(text(shown.card.say), 14, true);
  w.skip(4);
  w.paragraph(text(shown.card.ask), 13);
  if (shown.card.reveal) {
    w.heading(PaperWords::tr("Answer"));
    w.paragraph(text(shown.card.reveal), 13);
    for (const Figure& figure : figuresOf(shown, m_units)) w.paragraph(figureLine(figure));
  }
  if (shown.card.notes) {
    w.heading(PaperWords::tr("Notes"));
    w.paragraph(text(shown.card.notes));
  }
  w.footer(PaperWords::tr("Depths are estimates and no guide to wading."));
}

void DeckPages::paintQuarter(QPainter& p, std::size_t card, const QRectF& box) const {
  const ShownCard& shown = m_cards[card];
  p.save();
  // A page of its own, the size of the left half; the right half is for the student's notes.
  const QRectF left = box.adjusted(0, 4 * kPoint, -box.width() * 0.42, -8 * kPoint);
  const PictureStyle style = [&] {
    PictureStyle small;
    small.colours = paperColours();
    small.units = m_units;
    small.text = 6.5 * kPoint;
    small.stroke = 0.9 * kPoint;
    small.answered = false;
    return small;
  }();
  const auto write = [&](const QRectF& at, const QString& words, double points, bool bold) {
    PictureStyle type = style;
    type.text = points * kPoint;
    p.setFont(type.font(1, bold));
    p.setPen(style.colours.ink);
    QRectF taken;
    p.drawText(at, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, words, &taken);
    return taken.height();
  };
  double y = left.top();
  y += write(QRectF(left.left(), y, left.width(), 1e5),
             QStringLiteral("%1. %2").arg(card + 1).arg(QString::fromStdString(shown.card.title)), 12, true);
  y += write(QRectF(left.left(), y, left.width(), 1e5), text(shown.card.say), 10, false);
  const QString ask = text(shown.card.ask);
  PictureStyle type = style;
  type.text = 10 * kPoint;
  p.setFont(type.font());
  const double asking =
      ask.isEmpty() ? 0
                    : p.boundingRect(QRectF(0, 0, left.width(), 1e5), Qt::TextWordWrap, ask).height();
  if (shown.card.show != CardShow::text || !shown.missing.empty()) {
    paintCardPicture(p, QRectF(left.left(), y + 4 * kPoint, left.width(), left.bottom() - asking - y - 8 * kPoint),
                     shown, style, false);
  }
  if (!ask.isEmpty()) write(QRectF(left.left(), left.bottom() - asking, left.width(), 1e5), ask, 10, false);
  p.setPen(QPen(style.colours.edge, 0.6 * kPoint));
  for (double line = box.top() + 24 * kPoint; line < box.bottom() - 8 * kPoint; line += 20 * kPoint) {
    p.drawLine(QPointF(left.right() + 14 * kPoint, line), QPointF(box.right(), line));
  }
  p.setPen(QPen(style.colours.ink, 0.6 * kPoint));
  p.drawLine(box.bottomLeft(), box.bottomRight());
  p.restore();
}

}  // namespace grainwise::ui
