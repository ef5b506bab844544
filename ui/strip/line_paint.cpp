// SPDX-License-Identifier: GPL-3.0-or-later
#include <QImage>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <vector>

#include "ui/strip/silhouette.h"

/// How a line's outline is drawn.
namespace grainwise::ui {
namespace {
constexpr double kThinnest = 2.0;
/// Below this height an outline would hide the fill: the line is drawn as one stroke of colour.
constexpr double kStroke = 3.0;
constexpr double kOutline = 1.5;
/// Where the sides of an outline are shorter than this in the mean, smoothing them shows nothing: on a screen
/// such a line is drawn column by column, in a tenth of the time.
constexpr double kShortSide = 4.0;
/// Hatch distance in px: from a slow 1 in/s to a fast 9 in/s.
constexpr double kWideHatch = 13.0;
constexpr double kTightHatch = 3.6;
constexpr double kSlow = 1.0;
constexpr double kFast = 9.0;
constexpr double kHatchedTogether = 24.0;
constexpr double kBreakFromEnd = 34.0;
constexpr double kBreakWidth = 12.0;

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
  upper.reserve(3 * qsizetype(last - first));
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
  QPolygonF shape;
  shape.reserve(2 * upper.size());
  shape << upper;
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
  p.setPen(QPen(colours.sinkHatch, p.testRenderHint(QPainter::Antialiasing) ? 1.2 : 1.0));
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

bool isFine(const QPainter& p, const QPolygonF& shape) {
  return p.paintEngine()->type() == QPaintEngine::Raster &&
         kShortSide * double(shape.size()) > 2 * shape.boundingRect().width();
}

/// Half the height of the pieces [first, last) in each column of the device, from `left` on.
std::vector<double> columnHalves(const QRectF& box, const Silhouette& s, std::size_t first, std::size_t last,
                                 double pixelsPerGrain, double left, double column) {
  std::vector<double> halves;
  const double right = box.left() + box.width() * s.pieces[last - 1].to;
  for (double x = left; x < right - column / 2; x += column) {
    const double share = (x + column / 2 - box.left()) / box.width();
    while (first + 1 < last && s.pieces[first].to < share) ++first;
    halves.push_back(half(s.pieces[first].massAt(share), pixelsPerGrain));
  }
  return halves;
}

/// A picture of columns of the device, each `halves` tall to both sides of `middle`: the edge's colour, and
/// within it the fill as high as the lowest of a column and its neighbours, which leaves an edge round every
/// step. Lengths in px of the screen, `scale` of the device to one.
QImage pictureOf(const std::vector<double>& halves, double middle, double tall, double scale, QRgb edge, QRgb fill) {
  QImage picture(int(halves.size()), int(std::ceil(tall * scale)), QImage::Format_ARGB32_Premultiplied);
  picture.setDevicePixelRatio(scale);
  picture.fill(Qt::transparent);
  auto* pixels = reinterpret_cast<QRgb*>(picture.bits());
  const auto stride = picture.bytesPerLine() / qsizetype(sizeof(QRgb));
  const auto colour = [&](std::size_t i, double reach, QRgb with) {
    const int from = std::max(0, qRound((middle - reach) * scale));
    const int to = std::min(picture.height(), qRound((middle + reach) * scale));
    for (int row = from; row < to; ++row) pixels[row * stride + qsizetype(i)] = with;
  };
  for (std::size_t i = 0; i < halves.size(); ++i) {
    colour(i, halves[i], edge);
    const bool within = i > 0 && i + 1 < halves.size();
    if (within) colour(i, std::min({halves[i - 1], halves[i], halves[i + 1]}) - 1, fill);
  }
  return picture;
}

/// Column by column, in one picture: a rectangle of its own for each column was a quarter of the time of the
/// largest rig.
void paintFine(QPainter& p, const QRectF& box, const Silhouette& s, std::size_t first, std::size_t last,
               double pixelsPerGrain, const Colours& c, const QRectF& quiet) {
  const bool sinks = s.pieces[first].sinks;
  const double scale = p.device()->devicePixelRatioF();
  const double column = 1 / scale;
  const double left = std::round((box.left() + box.width() * s.pieces[first].from) / column) * column;
  const std::vector<double> halves = columnHalves(box, s, first, last, pixelsPerGrain, left, column);
  if (halves.empty()) return;
  const double y = box.center().y();
  const double most = *std::max_element(halves.begin(), halves.end());
  const double top = std::floor((y - most) * scale) / scale;
  const QImage picture = pictureOf(halves, y - top, y - top + most + column, scale,
                                   (sinks ? c.sinkHatch : c.river).rgb(), (sinks ? c.sinkFill : c.riverFill).rgb());
  p.drawImage(QPointF(left, top), picture);
  if (!sinks) return;
  p.save();  // a hatch line reaches up to a pixel past its end
  p.setRenderHint(QPainter::Antialiasing, false);
  p.setClipRect(QRectF(left, box.top(), double(halves.size()) * column, box.height()), Qt::IntersectClip);
  hatch(p, box, s, first, last, pixelsPerGrain, c, quiet);
  p.restore();
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
  if (isFine(p, shape)) return paintFine(p, box, s, first, last, pixelsPerGrain, c, quiet);
  p.setPen(Qt::NoPen);
  p.setBrush(piece.sinks ? c.sinkFill : c.riverFill);
  p.setRenderHint(QPainter::Antialiasing, false);  // its edge lies under the outline
  p.drawPolygon(shape);
  p.setRenderHint(QPainter::Antialiasing);
  if (piece.sinks) hatch(p, box, s, first, last, pixelsPerGrain, c, quiet);
  const QColor edge = piece.sinks ? c.sinkHatch : c.river;
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

}  // namespace

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

}  // namespace grainwise::ui
