// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/silhouette.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace grainwise::ui {
namespace {
constexpr double kThinnest = 2.0;
/// Below this height an outline would hide the fill: the line is drawn as one stroke of colour.
constexpr double kStroke = 3.0;
constexpr double kOutline = 1.5;
/// Where the sides of an outline are shorter than this in the mean, smoothing them shows nothing.
constexpr double kShortSide = 4.0;
/// Hatch distance in px: from a slow 1 in/s to a fast 9 in/s.
constexpr double kWideHatch = 13.0;
constexpr double kTightHatch = 3.6;
constexpr double kSlow = 1.0;
constexpr double kFast = 9.0;
constexpr double kHatchedTogether = 24.0;
constexpr double kUnrated = 4.0;  ///< sinks by its density, no rate given: a middling hatch
constexpr double kBreakFromEnd = 34.0;
constexpr double kBreakWidth = 12.0;

double rateOf(const Section& section) {
  if (section.sinkRate) {
    return (section.sinkRate->rodEnd.value() + section.sinkRate->flyEnd.value()) / 2;
  }
  return kUnrated;
}

double hatchDistance(double rate) {
  const double share = std::clamp((rate - kSlow) / (kFast - kSlow), 0.0, 1.0);
  return kWideHatch + (kTightHatch - kWideHatch) * std::sqrt(share);
}

/// Whether `b` goes on as `a` is filled. A piece too narrow for a line of its own hatch shows none of it.
bool sameFill(const Silhouette::Piece& a, const Silhouette::Piece& b, double pixels) {
  return a.sinks == b.sinks && a.nylon == b.nylon &&
         (hatchDistance(a.rate) == hatchDistance(b.rate) || pixels * (b.to - b.from) < hatchDistance(b.rate));
}

double half(double mass, double pixelsPerGrain) {
  return std::max(kThinnest, mass * pixelsPerGrain) / 2;
}

/// The upper and lower edges of the pieces [first, last).
QPolygonF outline(const QRectF& box, const Silhouette& s, std::size_t first, std::size_t last,
                  double pixelsPerGrain) {
  QPolygonF upper;
  const double y = box.center().y();
  for (std::size_t i = first; i < last; ++i) {
    const Silhouette::Piece& piece = s.pieces[i];
    const double x0 = box.left() + box.width() * piece.from;
    const double x1 = box.left() + box.width() * piece.to;
    upper << QPointF(x0, y - half(piece.rodMass, pixelsPerGrain));
    if (piece.middleMass * 2 != piece.rodMass + piece.flyMass) {
      upper << QPointF((x0 + x1) / 2, y - half(piece.middleMass, pixelsPerGrain));
    }
    upper << QPointF(x1, y - half(piece.flyMass, pixelsPerGrain));
  }
  QPolygonF shape = upper;
  for (qsizetype i = upper.size(); i-- > 0;) shape << QPointF(upper[i].x(), 2 * y - upper[i].y());
  return shape;
}

/// The part of a 45 degree line that lies within a convex shape.
void addHatchLine(QVector<QLineF>& lines, const QPolygonF& shape, double c) {
  // Points with x + y = c; an edge from a to b crosses where its values of x + y enclose c.
  QPointF ends[2];
  int found = 0;
  for (qsizetype i = 0; i < shape.size(); ++i) {
    const QPointF a = shape[i];
    const QPointF b = shape[(i + 1) % shape.size()];
    const double da = a.x() + a.y() - c;
    const double db = b.x() + b.y() - c;
    if ((da < 0) == (db < 0)) continue;
    const QPointF at = a + (b - a) * (da / (da - db));
    if (found < 2) ends[found++] = at;
  }
  if (found == 2) lines << QLineF(ends[0], ends[1]);
}

/// What is hatched in one go: a piece, or as many narrow ones as make up the width of a few lines, as high
/// as the lowest of them. `first` moves on to the next.
QPolygonF nextToHatch(const QRectF& box, const Silhouette& s, std::size_t& first, std::size_t last,
                      double pixelsPerGrain) {
  const std::size_t begin = first++;
  const auto wide = [&](std::size_t to) { return box.width() * (s.pieces[to].to - s.pieces[begin].from); };
  double least = s.lightest(s.pieces[begin].from, s.pieces[begin].to);
  while (first < last && wide(first) < kHatchedTogether) {
    least = std::min(least, s.lightest(s.pieces[first].from, s.pieces[first].to));
    ++first;
  }
  if (first == begin + 1) return outline(box, s, begin, first, pixelsPerGrain);
  const double tall = half(least, pixelsPerGrain);
  return QPolygonF(QRectF(box.left() + box.width() * s.pieces[begin].from, box.center().y() - tall,
                          wide(first - 1), 2 * tall));
}

void hatch(QPainter& p, const QRectF& box, const Silhouette& s, std::size_t first, std::size_t last,
           double pixelsPerGrain, const Colours& colours, const QRectF& quiet) {
  QVector<QLineF> lines;
  const double step = hatchDistance(s.pieces[first].rate) * std::sqrt(2.0);
  while (first < last) {
    const QPolygonF shape = nextToHatch(box, s, first, last, pixelsPerGrain);
    const QRectF round = shape.boundingRect();
    // Lines stand at whole multiples of the step, so that hatches of neighbours meet.
    const double from = std::ceil((round.left() + round.top()) / step) * step;
    for (double c = from; c < round.right() + round.bottom(); c += step) {
      addHatchLine(lines, shape, c);
    }
  }
  p.save();
  if (!quiet.isEmpty()) {
    QPainterPath clip;
    clip.addRect(box.adjusted(-2, -2, 2, 2));
    QPainterPath words;
    words.addRoundedRect(quiet, 4, 4);
    p.setClipPath(clip.subtracted(words), Qt::IntersectClip);
  }
  p.setPen(QPen(colours.sinkHatch, 1.2));
  p.drawLines(lines);
  p.restore();
}

/// Side by side, each a line: as one long stroke the edges of a long part take many times as long to smooth.
/// Upright ones reach over the corners.
QVector<QLineF> sidesOf(const QPolygonF& shape) {
  QVector<QLineF> sides;
  sides.reserve(shape.size());
  for (qsizetype i = 0; i < shape.size(); ++i) {
    QLineF side(shape[i], shape[(i + 1) % shape.size()]);
    if (side.dx() == 0 && side.dy() != 0) {
      const QPointF over(0, std::copysign(kOutline / 2, side.dy()));
      side.setPoints(side.p1() - over, side.p2() + over);
    }
    sides << side;
  }
  return sides;
}

void paintRun(QPainter& p, const QRectF& box, const Silhouette& s, std::size_t first, std::size_t last,
              double pixelsPerGrain, const Colours& c, const QRectF& quiet) {
  const Silhouette::Piece& piece = s.pieces[first];
  const QPolygonF shape = outline(box, s, first, last, pixelsPerGrain);
  if (piece.nylon || shape.boundingRect().height() <= kStroke) {
    p.setPen(Qt::NoPen);
    p.setBrush(piece.sinks && !piece.nylon ? c.sinkFill : c.slate);
    p.drawPolygon(shape);
    return;
  }
  p.setPen(Qt::NoPen);
  p.setBrush(piece.sinks ? c.sinkFill : c.riverFill);
  p.setRenderHint(QPainter::Antialiasing, false);  // its edge lies under the outline
  p.drawPolygon(shape);
  p.setRenderHint(QPainter::Antialiasing);
  if (piece.sinks) hatch(p, box, s, first, last, pixelsPerGrain, c, quiet);
  const QColor edge = piece.sinks ? c.sinkHatch : c.river;
  if (kShortSide * double(shape.size()) > 2 * shape.boundingRect().width()) {
    p.setRenderHint(QPainter::Antialiasing, false);
    p.setPen(QPen(edge, 1));
    p.setBrush(Qt::NoBrush);
    p.drawPolygon(shape);
    p.setRenderHint(QPainter::Antialiasing);
    return;
  }
  p.setPen(QPen(edge, kOutline, Qt::SolidLine, Qt::FlatCap));
  p.drawLines(sidesOf(shape));
}

void paintRuns(QPainter& p, const QRectF& box, const Silhouette& s, double pixelsPerGrain,
               const Colours& c, const QRectF& quiet) {
  for (std::size_t first = 0; first < s.pieces.size();) {
    std::size_t last = first + 1;
    while (last < s.pieces.size() && sameFill(s.pieces[first], s.pieces[last], box.width())) ++last;
    paintRun(p, box, s, first, last, pixelsPerGrain, c, quiet);
    first = last;
  }
}

void paintLoops(QPainter& p, const QRectF& box, const Silhouette& s, const Colours& c) {
  constexpr double kWide = 4.0;
  constexpr double kTall = 3.0;
  p.setPen(QPen(c.ink, 1.3));
  p.setBrush(c.paper);
  const double y = box.center().y();
  if (s.rodLoop) p.drawEllipse(QPointF(box.left() + kWide, y), kWide, kTall);
  if (s.flyLoop) p.drawEllipse(QPointF(box.right() - kWide, y), kWide, kTall);
}

/// Far longer than its place: two strokes with a break mark between.
void paintRunningLine(QPainter& p, const QRectF& box, const Silhouette& s, double pixelsPerGrain,
                      const Colours& c) {
  const double gap = std::max(box.left() + 4, box.right() - kBreakFromEnd);
  const double y = box.center().y();
  const double tall = std::max(7.0, s.heaviest() * pixelsPerGrain / 2 + 4);
  for (const QRectF& clip : {QRectF(box.left(), box.top(), gap - box.left(), box.height()),
                             QRectF(gap + kBreakWidth, box.top(), box.right() - gap, box.height())}) {
    p.save();
    p.setClipRect(clip, Qt::IntersectClip);
    paintRuns(p, box, s, pixelsPerGrain, c, {});
    p.restore();
  }
  p.setPen(QPen(c.slate, 1.6));
  for (const double x : {gap + 2, gap + kBreakWidth - 3}) {
    p.drawLine(QPointF(x - 3, y + tall), QPointF(x + 3, y - tall));
  }
}

Silhouette flyShape(const Part& part) {
  Silhouette s;
  s.isFly = true;
  if (!part.fly) return s;
  s.flyGrains = part.fly->wetMass().value();
  s.flyBulk_cm2 = part.fly->dragAreaOrDefault().value();
  s.flyDensity = part.fly->densityOrDefault().value();
  return s;
}

double bodyLength(const Silhouette& s) {
  return std::clamp(17.0 * std::sqrt(s.flyBulk_cm2), 10.0, 54.0);
}
double headRadius(const Silhouette& s) {
  return std::clamp(2.2 + 0.72 * std::sqrt(s.flyGrains), 2.6, 11.0);
}

}  // namespace

double Silhouette::massAt(double share) const {
  for (const Piece& piece : pieces) {
    if (share > piece.to && &piece != &pieces.back()) continue;
    const double wide = piece.to - piece.from;
    const double t = wide > 0 ? std::clamp((share - piece.from) / wide, 0.0, 1.0) : 0.0;
    return t < 0.5 ? piece.rodMass + (piece.middleMass - piece.rodMass) * 2 * t
                   : piece.middleMass + (piece.flyMass - piece.middleMass) * (2 * t - 1);
  }
  return 0;
}

double Silhouette::heaviest(double from, double to) const {
  double most = std::max(massAt(from), massAt(to));
  for (const Piece& piece : pieces) {
    if (piece.to <= from || piece.from >= to) continue;
    if (piece.from >= from) most = std::max(most, piece.rodMass);
    if (piece.to <= to) most = std::max(most, piece.flyMass);
  }
  return most;
}

double Silhouette::lightest(double from, double to) const {
  double least = std::min(massAt(from), massAt(to));
  for (const Piece& piece : pieces) {
    if (piece.to <= from || piece.from >= to) continue;
    if (piece.from >= from) least = std::min(least, piece.rodMass);
    if (piece.to <= to) least = std::min(least, piece.flyMass);
  }
  return least;
}

bool Silhouette::sinksAt(double share) const {
  return std::any_of(pieces.begin(), pieces.end(), [&](const Piece& piece) {
    return piece.from <= share && share <= piece.to && piece.sinks && !piece.nylon;
  });
}

std::vector<Silhouette> silhouettesOf(const Rig& rig, const MassProfile& profile) {
  std::vector<Silhouette> all(rig.parts.size());
  for (std::size_t i = 0; i < rig.parts.size(); ++i) {
    const Part& part = rig.parts[i];
    Silhouette& s = all[i];
    if (part.kind == PartKind::fly) {
      s = flyShape(part);
      continue;
    }
    s.runsOn = part.kind == PartKind::runningLine;
    s.pieces.reserve(part.sections.size());
    s.rodLoop = part.loops && part.loops->rodEnd.value_or(Grains(0)) > Grains(0);
    s.flyLoop = part.loops && part.loops->flyEnd.value_or(Grains(0)) > Grains(0);
  }
  for (const ProfileSpan& span : profile.spans) {
    const PartPlace& place = profile.places[span.part];
    const double whole = (place.to - place.from).value();
    if (whole <= 0) continue;
    const Section& section = rig.parts[span.part].sections[span.section];
    all[span.part].pieces.push_back(
        {(span.from - place.from).value() / whole, (span.to - place.from).value() / whole,
         span.properties.mass.rodEnd.value(), span.properties.massAt(0.5).value(),
         span.properties.mass.flyEnd.value(), span.sinks, span.sinks ? rateOf(section) : 0.0,
         span.bareNylon});
  }
  return all;
}

Silhouette silhouetteOf(const Part& part) {
  Rig alone;
  alone.parts.push_back(part);
  Silhouette s = silhouettesOf(alone, massProfile(alone)).front();
  s.runsOn = false;
  return s;
}

void paintLine(QPainter& p, const QRectF& box, const Silhouette& s, double pixelsPerGrain,
               const Colours& c, const QRectF& quiet) {
  p.setRenderHint(QPainter::Antialiasing);
  if (s.runsOn) {
    paintRunningLine(p, box, s, pixelsPerGrain, c);
  } else {
    paintRuns(p, box, s, pixelsPerGrain, c, quiet);
  }
  paintLoops(p, box, s, c);
}

double flyLength(const Silhouette& s) { return headRadius(s) * 1.4 + bodyLength(s); }

void paintFly(QPainter& p, const QPointF& tie, const Silhouette& s, double zoom, const Colours& c) {
  p.setRenderHint(QPainter::Antialiasing);
  const double head = headRadius(s) * zoom;
  const double body = bodyLength(s) * zoom;
  const double tall = body * 0.42;
  const double tail = tie.x() + head * 1.4 + body;
  p.setPen(QPen(c.ink, 1));
  p.setBrush(c.flyBody);
  p.drawEllipse(QRectF(tail - body, tie.y() - tall / 2, body, tall));
  p.setBrush(c.ink);
  p.drawEllipse(QPointF(tie.x() + head, tie.y()), head, head);
}

QPixmap dragPicture(const Silhouette& s, const QString& caption, double length_ft, const Look& look,
                    double devicePixelRatio) {
  constexpr double kPixelsPerFoot = 14;
  constexpr double kPixelsPerGrain = 1.6;
  const QFontMetricsF metrics(look.font(14));
  const double words = metrics.horizontalAdvance(caption);
  const double line = s.isFly ? flyLength(s) : std::clamp(length_ft * kPixelsPerFoot, 12.0, 260.0);
  const double tall = s.isFly ? 30 : std::clamp(s.heaviest() * kPixelsPerGrain, 4.0, 60.0);
  const QSizeF size(std::max(words, line) + 16, tall + metrics.height() + 14);
  QPixmap picture((size * devicePixelRatio).toSize());
  picture.setDevicePixelRatio(devicePixelRatio);
  picture.fill(Qt::transparent);
  QPainter p(&picture);
  p.setRenderHint(QPainter::Antialiasing);
  p.setPen(QPen(look.colours().river, 1.5));
  p.setBrush(look.colours().card);
  p.drawRoundedRect(QRectF(QPointF(), size).adjusted(1, 1, -1, -1), 6, 6);
  const QRectF box((size.width() - line) / 2, 5, line, tall);
  if (s.isFly) {
    paintFly(p, QPointF(box.left(), box.center().y()), s, 1, look.colours());
  } else {
    Silhouette whole = s;
    whole.runsOn = false;
    paintLine(p, box, whole, tall / std::max(s.heaviest(), 1e-6), look.colours());
  }
  p.setFont(look.font(14));
  p.setPen(look.colours().ink);
  p.drawText(QRectF(0, tall + 7, size.width(), metrics.height()), Qt::AlignCenter, caption);
  return picture;
}

}  // namespace grainwise::ui
