// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/silhouette.h"

#include <QFontMetrics>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>

namespace grainwise::ui {
namespace {
constexpr double kUnrated = 4.0;  ///< sinks by its density, no rate given: a middling hatch

double rateOf(const Section& section) {
  if (section.sinkRate) {
    return (section.sinkRate->rodEnd.value() + section.sinkRate->flyEnd.value()) / 2;
  }
  return kUnrated;
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

double Silhouette::Piece::massAt(double share) const {
  const double wide = to - from;
  const double t = wide > 0 ? std::clamp((share - from) / wide, 0.0, 1.0) : 0.0;
  return t < 0.5 ? rodMass + (middleMass - rodMass) * 2 * t
                 : middleMass + (flyMass - middleMass) * (2 * t - 1);
}

double Silhouette::massAt(double share) const {
  for (const Piece& piece : pieces) {
    if (share <= piece.to || &piece == &pieces.back()) return piece.massAt(share);
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
