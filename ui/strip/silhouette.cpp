// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/silhouette.h"

#include <QHash>
#include <QPainter>
#include <QPixmap>
#include <algorithm>
#include <cmath>

namespace grainwise::ui {
namespace {
constexpr double kThinnest = 2.0;
constexpr double kLoopWidth = 5.0;
constexpr double kNarrow = 6.0;
/// Hatch distance in px: from a slow 2 in/s to a fast 10 in/s.
constexpr double kWideHatch = 10.0;
constexpr double kTightHatch = 4.0;

double rateOf(const Section& section) {
  if (section.sinkRate) return (section.sinkRate->rodEnd.value() + section.sinkRate->flyEnd.value()) / 2;
  return 4.0;  // sinks by its density, unrated: a middling hatch
}

double hatchDistance(double rate) {
  const double share = std::clamp((rate - 2.0) / 8.0, 0.0, 1.0);
  return kWideHatch + (kTightHatch - kWideHatch) * share;
}

/// Pieces in a row that are drawn as one: same kind of filling, no step between them.
bool continues(const Silhouette::Piece& a, const Silhouette::Piece& b) {
  return a.sinks == b.sinks && a.rate == b.rate && a.nylon == b.nylon &&
         std::abs(a.flyMass - b.rodMass) < 1e-6 * (1 + a.flyMass);
}

QPolygonF outline(const QRectF& box, const Silhouette& s, std::size_t first, std::size_t last,
                  double pixelsPerGrain) {
  QPolygonF upper;
  QPolygonF lower;
  const double y = box.center().y();
  const auto add = [&](double share, double mass) {
    const double x = box.left() + box.width() * share;
    const double half = std::max(kThinnest, mass * pixelsPerGrain) / 2;
    upper.append(QPointF(x, y - half));
    lower.prepend(QPointF(x, y + half));
  };
  for (std::size_t i = first; i <= last; ++i) {
    add(s.pieces[i].from, s.pieces[i].rodMass);
    add(s.pieces[i].to, s.pieces[i].flyMass);
  }
  return upper + lower;
}

/// A tile of slanting lines that repeats without a seam; one is made for each distance and scheme.
QBrush hatchBrush(double rate, const Colours& colours) {
  static QHash<QPair<int, QRgb>, QPixmap> made;
  const int step = int(std::lround(hatchDistance(rate)));
  const QPair<int, QRgb> key(step, colours.sinkHatch.rgb() ^ colours.sinkFill.rgb() << 1);
  auto found = made.find(key);
  if (found == made.end()) {
    QPixmap tile(step, step);
    tile.fill(colours.sinkFill);
    QPainter p(&tile);
    p.setRenderHint(QPainter::Antialiasing);
    p.setPen(QPen(colours.sinkHatch, 1.4));
    for (const int shift : {-step, 0, step}) {
      p.drawLine(QPointF(shift - 2, step + 2), QPointF(shift + step + 2, -2));
    }
    found = made.insert(key, tile);
  }
  return QBrush(*found);
}

void addSections(Silhouette& s, const Part& part, const std::vector<const ProfileSpan*>& spans) {
  const double whole = part.length().value();
  double done = 0;
  for (const ProfileSpan* span : spans) {
    const Section& section = part.sections[span->section];
    const double next = done + section.length.value() / whole;
    s.pieces.push_back({done, next, span->properties.mass.rodEnd.value(),
                        span->properties.mass.flyEnd.value(), span->sinks, rateOf(section),
                        span->bareNylon});
    done = next;
  }
}

}  // namespace

bool Silhouette::operator==(const Silhouette& o) const {
  const auto same = [](const Piece& a, const Piece& b) {
    return a.from == b.from && a.to == b.to && a.rodMass == b.rodMass && a.flyMass == b.flyMass &&
           a.sinks == b.sinks && a.rate == b.rate && a.nylon == b.nylon;
  };
  return rodLoop == o.rodLoop && flyLoop == o.flyLoop && isFly == o.isFly && flyGrains == o.flyGrains &&
         flyBulk_cm2 == o.flyBulk_cm2 &&
         std::equal(pieces.begin(), pieces.end(), o.pieces.begin(), o.pieces.end(), same);
}

double Silhouette::heaviest() const {
  double most = 0;
  for (const Piece& piece : pieces) most = std::max({most, piece.rodMass, piece.flyMass});
  return most;
}

Silhouette silhouetteOf(const Part& part, const MassProfile& profile, std::size_t index) {
  Silhouette s;
  if (part.kind == PartKind::fly) {
    s.isFly = true;
    s.flyGrains = part.fly ? part.fly->wetMass().value() : 0;
    s.flyBulk_cm2 = part.fly ? part.fly->dragAreaOrDefault().value() : 0;
    return s;
  }
  std::vector<const ProfileSpan*> spans;
  const auto first = std::find_if(profile.spans.begin(), profile.spans.end(),
                                  [&](const ProfileSpan& span) { return span.part == index; });
  for (auto it = first; it != profile.spans.end() && it->part == index; ++it) spans.push_back(&*it);
  addSections(s, part, spans);
  s.rodLoop = part.loops && part.loops->rodEnd.value_or(Grains(0)) > Grains(0);
  s.flyLoop = part.loops && part.loops->flyEnd.value_or(Grains(0)) > Grains(0);
  return s;
}

Silhouette silhouetteOf(const Part& part) {
  Rig alone;
  alone.parts.push_back(part);
  return silhouetteOf(part, massProfile(alone), 0);
}

void paintLine(QPainter& p, const QRectF& box, const Silhouette& s, double pixelsPerGrain,
               const Colours& c) {
  p.setRenderHint(QPainter::Antialiasing);
  for (std::size_t first = 0; first < s.pieces.size();) {
    std::size_t last = first;
    while (last + 1 < s.pieces.size() && continues(s.pieces[last], s.pieces[last + 1])) ++last;
    const Silhouette::Piece& piece = s.pieces[first];
    const QPolygonF shape = outline(box, s, first, last, pixelsPerGrain);
    first = last + 1;
    if (piece.nylon) {
      p.setPen(Qt::NoPen);
      p.setBrush(c.slate);
      p.drawPolygon(shape);
      continue;
    }
    // Pieces narrower than their outline would be all outline.
    const bool narrow = shape.boundingRect().width() < kNarrow;
    p.setPen(narrow ? QPen(Qt::NoPen) : QPen(piece.sinks ? c.sinkHatch : c.river, 1.5));
    p.setBrush(piece.sinks ? hatchBrush(piece.rate, c) : QBrush(c.riverFill));
    p.drawPolygon(shape);
  }
  p.setPen(QPen(c.slate, 1.5));
  p.setBrush(Qt::NoBrush);
  const double y = box.center().y();
  if (s.rodLoop) p.drawEllipse(QPointF(box.left() + kLoopWidth, y), kLoopWidth, 2.5);
  if (s.flyLoop) p.drawEllipse(QPointF(box.right() - kLoopWidth, y), kLoopWidth, 2.5);
}

void paintFly(QPainter& p, const QRectF& box, const Silhouette& s, const Colours& c) {
  p.setRenderHint(QPainter::Antialiasing);
  // Bulk gives the body, mass the eye: a big light fly is a large body with a small dark head.
  const double bulk = std::clamp(8.0 + 4.0 * std::sqrt(s.flyBulk_cm2), 9.0, 22.0);
  const double eye = std::clamp(2.0 + 0.75 * std::sqrt(s.flyGrains), 2.5, 8.0);
  const QPointF middle = box.center();
  p.setPen(QPen(c.ink, 1));
  p.setBrush(c.flyBody);
  p.drawEllipse(middle + QPointF(eye * 0.6, 0), bulk, bulk * 0.42);
  p.setBrush(c.ink);
  p.drawEllipse(middle - QPointF(bulk * 0.85, 0), eye, eye);
}

}  // namespace grainwise::ui
