// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/clinic/card_page.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "ui/charts/card_figures.h"
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

/// The texts at the foot of the card, and how high they are at most before and after the answer. Where
/// figures come with the answer, the line stands in their place until then.
struct Foot {
  QString upper, lower;
  bool answer = false;
  double upperHeight = 0;
  double height = 0;
  double figures = 0;  ///< height of their place, over the rest
  QString line;        ///< that stands there before the answer
};

double figureHeight(const Sheet& s) { return s.screen.height() * kNumberShare * 1.22; }

Foot footOf(QPainter& p, const Sheet& s, const Card& card, bool answered, bool figures) {
  const QFont plain = s.font(kBodyShare);
  const QFont bold = s.font(kBodyShare, true);
  const double say = heightOf(p, plain, text(card.say), s.width());
  const double ask = heightOf(p, plain, text(card.ask), s.width());
  const double reveal = heightOf(p, bold, text(card.reveal), s.width());
  const bool asks = card.ask.has_value();
  Foot foot;
  foot.answer = answered && card.reveal.has_value();
  if (figures && asks && card.reveal) {
    foot.figures = std::max(figureHeight(s), say) + s.axes.text * 0.4;
    if (!foot.answer) foot.line = text(card.say);
    foot.upper = text(card.ask);
    foot.upperHeight = ask;
    foot.lower = foot.answer ? text(card.reveal) : QString();
    foot.height = ask + reveal;
    return foot;
  }
  if (figures) foot.figures = figureHeight(s) + s.axes.text * 0.4;
  foot.upper = foot.answer && asks ? text(card.ask) : text(card.say);
  foot.upperHeight = foot.answer && asks ? ask : say;
  foot.lower = foot.answer ? text(card.reveal) : text(card.ask);
  foot.height = std::max(say + ask, (asks ? ask : say) + reveal);
  return foot;
}

void paintFoot(QPainter& p, const Sheet& s, const Foot& foot, double top) {
  const int flags = Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignTop;
  p.setPen(foot.answer ? s.axes.colours.slate : s.axes.colours.ink);
  p.setFont(s.font(kBodyShare));
  p.drawText(QRectF(s.margin, top, s.width(), 1e6), flags, foot.upper);
  p.drawText(QRectF(s.margin, top - foot.figures, s.width(), foot.figures - s.axes.text * 0.4),
             Qt::TextWordWrap | Qt::AlignLeft | Qt::AlignBottom, foot.line);
  p.setPen(s.axes.colours.ink);
  p.setFont(s.font(kBodyShare, foot.answer));
  p.drawText(QRectF(s.margin, top + foot.upperHeight, s.width(), 1e6), flags, foot.lower);
}

/// Each number with its words at its right, in two or three lines.
void paintFigures(QPainter& p, const Sheet& s, const std::vector<Figure>& figures, double top) {
  const double each = s.width() / double(figures.size());
  const double tall = figureHeight(s);
  for (std::size_t i = 0; i < figures.size(); ++i) {
    const Figure& figure = figures[i];
    const Colours& c = s.axes.colours;
    double x = s.margin + each * double(i);
    const double end = x + each - s.axes.text;
    const auto large = [&](const QString& words, const QColor& colour, double share, double gap) {
      p.setFont(s.font(share, true));
      p.setPen(colour);
      p.drawText(QRectF(x, top, each, tall), Qt::AlignLeft | Qt::AlignVCenter, words);
      x += p.fontMetrics().horizontalAdvance(words) + s.axes.text * gap;
    };
    if (figure.setup != Setup::alone) {
      large(setupLetter(figure.setup), figure.setup == Setup::b ? c.ochreWord : c.river, kTitleShare, 0.5);
    }
    large(figure.number, c.ink, kNumberShare, 0.6);
    p.setFont(s.axes.font());
    p.setPen(c.slate);
    p.drawText(QRectF(x, top, end - x, tall), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap | Qt::TextDontClip,
               figure.words);
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
  const bool figured = hasFigures(shown, units);
  const Foot foot = footOf(p, s, shown.card, state.answered, figured);
  if (shown.card.show == CardShow::text && shown.missing.empty()) {
    paintText(p, s, foot);
    p.restore();
    return;
  }
  const double footTop = screen.height() * 0.965 - foot.height;
  const double figuresTop = footTop - foot.figures;
  const bool answered = state.answered || !shown.card.reveal;
  const std::vector<Figure> figures = figuresOf(shown, units);
  if (answered && state.numbers && !figures.empty()) paintFigures(p, s, figures, figuresTop);
  const double top = screen.height() * 0.15;
  const QRectF box(s.margin, top, s.width(), std::max(s.axes.text, figuresTop - s.axes.text * 0.4 - top));
  PictureStyle style = s.axes;
  style.answered = answered;
  paintCardPicture(p, box, shown, style, false, state.time_s);
  paintFoot(p, s, foot, footTop);
  p.restore();
}

}  // namespace grainwise::ui
