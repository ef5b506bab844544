// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFontMetricsF>
#include <algorithm>
#include <cmath>

#include "ui/charts/hatch.h"
#include "ui/charts/picture.h"
#include "ui/strip/silhouette.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

/// Feet of running line that a picture shows behind the head.
constexpr double kStub_ft = 1.6;
constexpr double kWideHatch = 11.0;
constexpr double kTightHatch = 5.0;

double hatchDistance(double rate, const PictureStyle& style) {
  const double share = std::clamp((rate - 2.0) / 8.0, 0.0, 1.0);
  return (kWideHatch + (kTightHatch - kWideHatch) * share) * style.text / 14.0;
}

/// A section between two stations as a trapezoid, clockwise on screen.
QPolygonF trapezoid(double x0, double x1, double y, double half0, double half1) {
  return QPolygonF({QPointF(x0, y - half0), QPointF(x1, y - half1), QPointF(x1, y + half1),
                    QPointF(x0, y + half0)});
}

void paintPart(QPainter& p, const QRectF& box, const Silhouette& s, double perGrain, const QPen& outline,
               const PictureStyle& style) {
  const Colours& c = style.colours;
  const double y = box.center().y();
  QPolygonF upper;
  QPolygonF lower;
  for (const Silhouette::Piece& piece : s.pieces) {
    const double x0 = box.left() + box.width() * piece.from;
    const double x1 = box.left() + box.width() * piece.to;
    const double thinnest = style.stroke / 2;
    const double half0 = std::max(thinnest, piece.rodMass * perGrain / 2);
    const double half1 = std::max(thinnest, piece.flyMass * perGrain / 2);
    const QPolygonF shape = trapezoid(x0, x1, y, half0, half1);
    p.setPen(Qt::NoPen);
    p.setBrush(piece.nylon ? outline.color() : piece.sinks ? c.sinkFill : c.riverFill);
    p.drawPolygon(shape);
    if (piece.nylon) continue;
    if (piece.sinks) {
      p.setPen(QPen(outline.color(), style.stroke * 0.45));
      hatch(p, shape, hatchDistance(piece.rate, style));
    }
    upper << shape[0] << shape[1];
    lower << shape[3] << shape[2];
  }
  if (upper.isEmpty()) return;
  std::reverse(lower.begin(), lower.end());
  p.setPen(outline);
  p.setBrush(Qt::NoBrush);
  p.drawPolygon(upper + lower);
  // Where floating line meets sinking line within a part.
  for (std::size_t i = 1; i < s.pieces.size(); ++i) {
    if (s.pieces[i].nylon || s.pieces[i].sinks == s.pieces[i - 1].sinks) continue;
    const double x = box.left() + box.width() * s.pieces[i].from;
    const double half = s.pieces[i].rodMass * perGrain / 2;
    p.drawLine(QPointF(x, y - half), QPointF(x, y + half));
  }
}

QStringList captionLines(const PictureRig& rig, std::size_t part, CaptionDetail detail,
                         const PictureStyle& style) {
  const Part& is = rig.rig->parts[part];
  const PartPlace& place = rig.analysis->profile.places[part];
  QStringList lines{partCaption(is, style.units)};
  if (is.kind == PartKind::fly || !style.numbers) return lines;
  const QString mass = massText(place.mass(), style.units);
  if (detail == CaptionDetail::brief) {
    if (is.kind == PartKind::head || is.kind == PartKind::tip) lines.append(mass);
    return lines;
  }
  // What the name says already is not said again.
  const QString length = lengthText(is.length(), style.units);
  lines.append(lines[0].contains(length) ? mass : QStringLiteral("%1, %2").arg(length, mass));
  QString perFoot;
  QString last;
  for (const ProfileSpan& span : rig.analysis->profile.spans) {
    if (span.part != part) continue;
    for (const GrainsPerFoot end : {span.properties.mass.rodEnd, span.properties.mass.flyEnd}) {
      const QString number = lineMassNumber(end, style.units);
      if (number == last) continue;
      perFoot += perFoot.isEmpty() ? number : QStringLiteral("–") + number;
      last = number;
    }
  }
  perFoot += QLatin1Char(' ') + lineMassUnit(style.units);
  if (!lines[0].contains(perFoot)) lines.append(perFoot);
  return lines;
}

/// A class needs the names of what carries and what is carried; nylon and running line are seen.
bool isNamedInBrief(const Part& part) {
  return part.kind == PartKind::head || part.kind == PartKind::tip || part.kind == PartKind::fly ||
         part.isCoatedLeader();
}

/// Where the words of a part hang from the line.
double hangsFrom(const PictureRig& rig, std::size_t part, const QRectF& plot, const FootRange& range) {
  const PartPlace& place = rig.analysis->profile.places[part];
  return range.x((std::max(place.from.feet(), range.from) + place.to.feet()) / 2, plot);
}

}  // namespace

QFont PictureStyle::font(double times, bool bold) const {
  static const QStringList families{QStringLiteral("Noto Sans"), QStringLiteral("DejaVu Sans")};
  QFont font;
  font.setFamilies(families);
  font.setPixelSize(std::max(1, int(std::lround(text * times))));
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

Colours paperColours() {
  Colours c = coloursOf(Scheme::light);
  const QColor black(0, 0, 0);
  c.paper = c.card = Qt::white;
  c.band = QColor(0xF2, 0xF2, 0xF2);
  c.edge = QColor(0xA0, 0xA0, 0xA0);
  c.ink = c.river = c.ochreLine = c.ochreWord = c.alder = c.brick = c.sinkHatch = black;
  c.onSink = c.pill = black;
  c.slate = QColor(0x45, 0x45, 0x45);
  c.riverFill = QColor(0xF6, 0xF6, 0xF6);
  c.sinkFill = QColor(0xE0, 0xE0, 0xE0);
  c.flyBody = QColor(0xC0, 0xC0, 0xC0);
  return c;
}

PictureRig::PictureRig(Rig of, const Conditions& conditions)
    : rig(std::make_shared<const Rig>(std::move(of))),
      analysis(std::make_shared<const Analysis>(analyse(*rig, conditions))) {}

QColor setupColour(Setup setup, const Colours& colours) {
  return setup == Setup::b ? colours.ochreLine : colours.river;
}

QPen setupPen(Setup setup, const PictureStyle& style) {
  QPen pen(setupColour(setup, style.colours), style.stroke);
  pen.setJoinStyle(Qt::MiterJoin);
  if (setup == Setup::b) pen.setDashPattern({3.5, 2.2});
  return pen;
}

QString setupLetter(Setup setup) {
  return setup == Setup::a ? QStringLiteral("A") : setup == Setup::b ? QStringLiteral("B") : QString();
}

Setup setupOf(std::size_t index, std::size_t count) {
  return count < 2 ? Setup::alone : index == 0 ? Setup::a : Setup::b;
}

void paintSymbol(QPainter& p, const QRectF& box, const Silhouette& part, const PictureStyle& style) {
  if (!(part.heaviest() > 0)) return;
  paintPart(p, box, part, box.height() / part.heaviest(), setupPen(Setup::alone, style), style);
}

FootRange rangeOf(const std::vector<PictureRig>& rigs) {
  FootRange range{-kStub_ft, 1, 1};
  for (const PictureRig& rig : rigs) {
    range.to = std::max(range.to, rig.analysis->profile.end.feet());
    for (const ProfileRow& row : rig.analysis->rows) {
      range.heaviest = std::max(range.heaviest, row.mass.value());
    }
  }
  range.to += 0.03 * (range.to - range.from);
  return range;
}

void paintStrip(QPainter& p, const QRectF& plot, const PictureRig& rig, const FootRange& range,
                Setup setup, const PictureStyle& style) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  const double perGrain = plot.height() / range.heaviest;
  QPen outline = setupPen(setup, style);
  const double y = plot.center().y();
  const std::vector<Silhouette> all = silhouettesOf(*rig.rig, rig.analysis->profile);
  for (std::size_t i = 0; i < rig.rig->parts.size(); ++i) {
    const Part& part = rig.rig->parts[i];
    const PartPlace& place = rig.analysis->profile.places[i];
    const Silhouette& s = all[i];
    if (part.kind == PartKind::fly) {
      paintFly(p, QPointF(range.x(place.from.feet(), plot), y), s, style.text / 16.0, style.colours);
      continue;
    }
    if (part.kind == PartKind::runningLine) {
      const double end = range.x(place.to.feet(), plot);
      const double begin = range.x(range.from, plot);
      p.setPen(QPen(outline.color(), style.stroke));
      p.drawLine(QPointF(begin, y), QPointF(end, y));
      const double half = style.text * 0.35;
      const double cut = (begin + end) / 2;
      for (const double shift : {-0.25, 0.25}) {
        const double x = cut + shift * style.text;
        p.drawLine(QPointF(x - half / 2, y + half), QPointF(x + half / 2, y - half));
      }
      continue;
    }
    const double x0 = range.x(place.from.feet(), plot);
    const double x1 = range.x(place.to.feet(), plot);
    paintPart(p, QRectF(x0, plot.top(), x1 - x0, plot.height()), s, perGrain, outline, style);
  }
  p.restore();
}

Captions captionsOf(const PictureRig& rig, const QRectF& plot, const FootRange& range,
                    const PictureStyle& style, CaptionDetail detail, QPaintDevice* device) {
  const QFontMetricsF metrics(style.font(), device);
  const double line = metrics.lineSpacing();
  Captions result;
  std::vector<double> rowEnds;  // left edge of the last caption of a row, filled from the right
  std::vector<int> rows;
  int lines = 1;
  for (std::size_t i = rig.rig->parts.size(); i-- > 0;) {
    if (detail == CaptionDetail::brief && !isNamedInBrief(rig.rig->parts[i])) continue;
    Captions::Caption caption;
    caption.lines = captionLines(rig, i, detail, style);
    lines = std::max(lines, int(caption.lines.size()));
    double wide = 0;
    for (const QString& words : caption.lines) wide = std::max(wide, metrics.horizontalAdvance(words));
    caption.x = hangsFrom(rig, i, plot, range);
    // To the right of the thread of the part before, as far as there is room.
    const double before = i > 0 ? hangsFrom(rig, i - 1, plot, range) + style.text * 0.4 : plot.left();
    const double left = std::clamp(std::max(caption.x - wide / 2, before), plot.left() - style.text,
                                   std::max(plot.left(), plot.right() + style.text - wide));
    std::size_t row = 0;
    while (row < rowEnds.size() && left + wide + style.text > rowEnds[row]) ++row;
    if (row == rowEnds.size()) rowEnds.push_back(0);
    rowEnds[row] = left;
    rows.push_back(int(row));
    caption.box = QRectF(left, 0, wide, line * double(caption.lines.size()));
    result.captions.push_back(caption);
  }
  const double rowHeight = line * lines + style.text * 0.4;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    result.captions[i].box.translate(0, plot.bottom() + style.text * 0.6 + rowHeight * rows[i]);
  }
  result.height = style.text * 0.6 + rowHeight * double(rowEnds.size());
  return result;
}

void paintCaptions(QPainter& p, const Captions& captions, double stripMiddle,
                   const PictureStyle& style) {
  p.save();
  p.setFont(style.font());
  for (const Captions::Caption& caption : captions.captions) {
    p.setPen(QPen(style.colours.slate, style.stroke * 0.3));
    const double x = std::clamp(caption.x, caption.box.left(), caption.box.right());
    p.drawLine(QPointF(caption.x, stripMiddle), QPointF(x, caption.box.top()));
  }
  for (const Captions::Caption& caption : captions.captions) {
    // Lines of captions further down end behind the words of those above.
    p.fillRect(caption.box, style.colours.paper);
    p.setPen(style.colours.ink);
    const double line = caption.box.height() / double(caption.lines.size());
    for (int i = 0; i < caption.lines.size(); ++i) {
      const QRectF at(caption.box.left() - style.text, caption.box.top() + line * i,
                      caption.box.width() + 2 * style.text, line);
      p.drawText(at, Qt::AlignCenter, caption.lines[i]);
    }
  }
  p.restore();
}

}  // namespace grainwise::ui
