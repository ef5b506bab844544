// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_page.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "ui/text/contexts.h"

namespace grainwise::ui {
namespace {

constexpr double kTitleShare = 1.0 / 15;
constexpr double kMarginShare = 0.045;  // of the width

QString text(const std::optional<std::string>& words) {
  return words ? QString::fromStdString(*words) : QString();
}

/// Sizes of one screen.
struct Sheet {
  QSizeF screen;
  PictureStyle axes;
  double margin;
  [[nodiscard]] QFont font(double share, bool bold = false) const {
    QFont font = axes.font(1, bold);
    font.setPixelSize(std::max(1, int(std::ceil(screen.height() * share))));
    return font;
  }
  [[nodiscard]] double width() const { return screen.width() - 2 * margin; }
};

double heightOf(QPainter& p, const QFont& font, const QString& words, double width) {
  if (words.isEmpty()) return 0;
  p.setFont(font);
  return p.boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, words).height();
}

void paintTitle(QPainter& p, const Sheet& s, const ShownCard& shown, const CardState& state) {
  const double top = s.screen.height() * 0.035;
  const double tall = s.screen.height() * 0.1;
  const QString counter = CardWords::tr("%1 of %2").arg(state.index + 1).arg(state.count);
  p.setFont(s.axes.font());
  p.setPen(s.axes.colours.slate);
  const double side = p.fontMetrics().horizontalAdvance(counter) + s.axes.text;
  p.drawText(QRectF(s.margin, top, s.width(), tall), Qt::AlignRight | Qt::AlignVCenter, counter);
  QFont font = s.font(kTitleShare, true);
  const QString title = QString::fromStdString(shown.card.title);
  const double room = s.width() - side;
  const double wide = QFontMetricsF(font).horizontalAdvance(title);
  if (wide > room) {
    const double least = s.screen.height() * kBodyShare;
    font.setPixelSize(int(std::ceil(std::max(least, font.pixelSize() * room / wide))));
  }
  p.setFont(font);
  p.setPen(s.axes.colours.ink);
  p.drawText(QRectF(s.margin, top, room, tall), Qt::AlignLeft | Qt::AlignVCenter,
             p.fontMetrics().elidedText(title, Qt::ElideRight, int(room)));
}

/// The two texts at the foot of the card, and how high they are at most before and after the answer.
struct Foot {
  QString upper, lower;
  bool answer = false;
  double upperHeight = 0;
  double height = 0;
};

Foot footOf(QPainter& p, const Sheet& s, const Card& card, bool answered) {
  const QFont plain = s.font(kBodyShare);
  const QFont bold = s.font(kBodyShare, true);
  const double say = heightOf(p, plain, text(card.say), s.width());
  const double ask = heightOf(p, plain, text(card.ask), s.width());
  const double reveal = heightOf(p, bold, text(card.reveal), s.width());
  Foot foot;
  foot.answer = answered && card.reveal.has_value();
  const bool asks = card.ask.has_value();
  foot.upper = foot.answer && asks ? text(card.ask) : text(card.say);
  foot.upperHeight = foot.answer && asks ? ask : say;
  foot.lower = foot.answer ? text(card.reveal) : text(card.ask);
  foot.height = std::max(say + ask, (asks ? ask : say) + reveal);
  return foot;
}

void paintFoot(QPainter& p, const Sheet& s, const Foot& foot, double top) {
  p.setPen(foot.answer ? s.axes.colours.slate : s.axes.colours.ink);
  p.setFont(s.font(kBodyShare));
  p.drawText(QRectF(s.margin, top, s.width(), 1e6), Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, foot.upper);
  p.setPen(s.axes.colours.ink);
  p.setFont(s.font(kBodyShare, foot.answer));
  p.drawText(QRectF(s.margin, top + foot.upperHeight, s.width(), 1e6),
             Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop, foot.lower);
}

double figureHeight(const Sheet& s) { return s.screen.height() * (kNumberShare + kAxisShare) * 1.22; }

void paintFigures(QPainter& p, const Sheet& s, const std::vector<Figure>& figures, double top) {
  const double each = s.width() / double(figures.size());
  for (std::size_t i = 0; i < figures.size(); ++i) {
    const Figure& figure = figures[i];
    const double x = s.margin + each * double(i);
    const Colours& c = s.axes.colours;
    const double tall = s.screen.height() * kNumberShare * 1.22;
    double number = x;
    p.setFont(s.font(kNumberShare, true));
    if (figure.setup != Setup::alone) {
      p.setPen(figure.setup == Setup::b ? c.ochreWord : c.river);
      const QString letter = setupLetter(figure.setup);
      p.drawText(QRectF(x, top, each, tall), Qt::AlignLeft | Qt::AlignVCenter, letter);
      number += p.fontMetrics().horizontalAdvance(letter) + s.axes.text * 0.7;
    }
    p.setPen(c.ink);
    p.drawText(QRectF(number, top, x + each - number, tall), Qt::AlignLeft | Qt::AlignVCenter, figure.number);
    p.setFont(s.axes.font());
    p.setPen(c.slate);
    p.drawText(QRectF(x, top + tall, each - s.axes.text, s.axes.text * 1.5), Qt::AlignLeft | Qt::AlignTop,
               p.fontMetrics().elidedText(figure.words, Qt::ElideRight, int(each - s.axes.text)));
  }
}

void paintText(QPainter& p, const Sheet& s, const Foot& foot) {
  const double top = s.screen.height() * 0.16;
  const double room = s.screen.height() * 0.92 - top;
  paintFoot(p, s, foot, top + std::max(0.0, (room - foot.height) / 2.6));
}

}  // namespace

void paintCardPage(QPainter& p, QSizeF screen, const ShownCard& shown, const CardState& state,
                   const Colours& colours, DisplayUnits units) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  p.fillRect(QRectF(QPointF(0, 0), screen), colours.paper);
  Sheet s;
  s.screen = screen;
  s.margin = screen.width() * kMarginShare;
  s.axes.colours = colours;
  s.axes.units = units;
  s.axes.text = std::ceil(screen.height() * kAxisShare);
  s.axes.stroke = screen.height() * kStrokeShare;
  s.axes.numbers = state.numbers;
  paintTitle(p, s, shown, state);
  const Foot foot = footOf(p, s, shown.card, state.answered);
  if (shown.card.show == CardShow::text && shown.missing.empty()) {
    paintText(p, s, foot);
    p.restore();
    return;
  }
  const double bottom = screen.height() * 0.965;
  const double footTop = bottom - foot.height;
  const std::vector<Figure> figures = figuresOf(shown, units);
  const double figuresTop = footTop - (figures.empty() ? 0 : figureHeight(s));
  const bool answered = state.answered || !shown.card.reveal;
  if (answered && state.numbers && !figures.empty()) paintFigures(p, s, figures, figuresTop);
  const double top = screen.height() * 0.15;
  const QRectF box(s.margin, top, s.width(), std::max(s.axes.text, figuresTop - s.axes.text * 0.4 - top));
  PictureStyle style = s.axes;
  // Until the answer the numbers at the flies of a river would give it away.
  paintCardPicture(p, box, shown, style, false, state.time_s);
  paintFoot(p, s, foot, footTop);
  p.restore();
}

}  // namespace grainwise::ui
