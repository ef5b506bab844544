// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "core/water/river.h"
#include "ui/charts/picture.h"
#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

/// Feet of line on the surface that a picture shows behind the place where it goes under.
constexpr double kOnTop_ft = 6;

struct Water {
  double depth_ft = 0;
  double surface_ft_per_s = 0;
};

struct Scale {
  QRectF water;  ///< from the surface to the bed
  double perFoot = 1;
  double fly = 0;  ///< x of the fly
  [[nodiscard]] QPointF at(double upstream_ft, double depth_ft) const {
    return {fly - upstream_ft * perFoot, water.top() + depth_ft * perFoot};
  }
};

bool hangs(const PictureRig& rig) {
  return rig.analysis->hang && hasDepth(rig.analysis->hang->state) && rig.rig->water &&
         rig.rig->water->depth && rig.rig->water->surfaceSpeed;
}

QString whyNot(const PictureRig& rig) {
  if (!rig.rig->water || !rig.rig->water->depth || !rig.rig->water->surfaceSpeed) {
    return PictureWords::tr("No water stated: give its depth and speed.");
  }
  if (!rig.analysis->hang) return PictureWords::tr("No fly of known weight yet.");
  switch (rig.analysis->hang->state) {
    case DepthState::stillWater:
      return PictureWords::tr("Still water: there is no swing.");
    case DepthState::everythingFloats:
      return PictureWords::tr("Everything floats: it fishes on top.");
    case DepthState::flyFloats:
      return PictureWords::tr("The fly floats: it fishes on top.");
    default:
      return {};
  }
}

double reach_ft(const PictureRig& rig) {
  double most = 0;
  for (const HangPoint& point : rig.analysis->hang->shape) {
    if (point.depth.value() >= 0) most = std::max(most, point.upstream.value());
  }
  return most;
}

QString rangeText(const PictureRig& rig, DisplayUnits units) {
  const Analysis& a = *rig.analysis;
  if (isOnBottom(a.hang->state)) return PictureWords::tr("bottom");
  if (!a.depthBand) return {};
  const auto shown = [&](Feet feet) {
    return QLocale().toString(shownValue(feet.value(), Measure::length, units), 'f', 1);
  };
  return PictureWords::tr("%1–%2 %3")
      .arg(shown(a.depthBand->low), shown(a.depthBand->high), lengthUnit(units));
}

void paintCurrent(QPainter& p, const Scale& s, const Rig& rig, const PictureStyle& style) {
  const River river = *riverOf(rig);
  p.setPen(QPen(style.colours.slate, style.stroke * 0.5));
  const double left = s.water.left() + style.text * 0.8;
  const double longest = style.text * 3.2;
  for (const double share : {0.12, 0.37, 0.62, 0.87}) {
    const double speed = river.current_m_per_s(-share * river.depth_m) / river.surface_m_per_s;
    const double y = s.water.top() + share * s.water.height();
    const QPointF end(left + longest * speed, y);
    p.drawLine(QPointF(left, y), end);
    const double head = style.text * 0.3;
    p.drawLine(end, end + QPointF(-head, -head * 0.7));
    p.drawLine(end, end + QPointF(-head, head * 0.7));
  }
}

void paintBed(QPainter& p, const Scale& s, const PictureStyle& style) {
  p.setPen(QPen(style.colours.ink, style.stroke));
  p.drawLine(s.water.bottomLeft(), s.water.bottomRight());
  p.setPen(QPen(style.colours.slate, style.stroke * 0.4));
  const double step = style.text * 0.9;
  for (double x = s.water.left() + step; x < s.water.right(); x += step) {
    p.drawLine(QPointF(x, s.water.bottom()), QPointF(x - step * 0.6, s.water.bottom() + step * 0.6));
  }
}

void paintDepths(QPainter& p, const Scale& s, double depth_ft, const PictureStyle& style) {
  const double feetPerUnit = style.units.metres ? 1.0 / si::kMetresPerFoot : 1.0;
  const double room = 1.5 * style.text / s.perFoot / feetPerUnit;
  const double step = room <= 0.5 ? 0.5 : room <= 1 ? 1 : room <= 2 ? 2 : room <= 5 ? 5 : 10;
  p.setPen(style.colours.slate);
  for (int i = 0; i * step * feetPerUnit <= depth_ft + 1e-9; ++i) {
    const double y = s.water.top() + i * step * feetPerUnit * s.perFoot;
    const QString number = QLocale().toString(i * step, 'g', 3);
    const QString words = i == 0 ? QStringLiteral("0 %1").arg(lengthUnit(style.units)) : number;
    p.drawText(QRectF(s.water.left() - style.text * 5.4, y - style.text, style.text * 5, style.text * 2),
               Qt::AlignRight | Qt::AlignVCenter, words);
  }
}

void paintHanging(QPainter& p, const Scale& s, const PictureRig& rig, Setup setup, double labelY,
                  const PictureStyle& style) {
  const HangDown& hang = *rig.analysis->hang;
  QPolygonF line;
  for (const HangPoint& point : hang.shape) {
    if (point.depth.value() < 0) break;
    line << s.at(point.upstream.value(), point.depth.value());
  }
  if (line.isEmpty()) return;
  if (!hang.heldByRod) line << QPointF(s.water.left(), s.water.top());
  QPen pen = setupPen(setup, style);
  pen.setWidthF(style.stroke * 1.3);
  pen.setJoinStyle(Qt::RoundJoin);
  p.setPen(pen);
  p.setBrush(Qt::NoBrush);
  p.drawPolyline(line);
  p.setPen(Qt::NoPen);
  p.setBrush(setupColour(setup, style.colours));
  p.drawEllipse(line.front(), style.text * 0.32, style.text * 0.32);
  if (rig.analysis->depthBand && !isOnBottom(hang.state) && style.numbers) {
    const double x = line.front().x() + style.text * (setup == Setup::b ? 1.7 : 0.9);
    const double top = s.at(0, rig.analysis->depthBand->low.value()).y();
    const double low = s.at(0, rig.analysis->depthBand->high.value()).y();
    p.setPen(setupPen(setup, style));
    p.drawLine(QPointF(x, top), QPointF(x, low));
    p.setPen(QPen(setupColour(setup, style.colours), style.stroke));
    const double cap = style.text * 0.3;
    for (const double y : {top, low}) p.drawLine(QPointF(x - cap, y), QPointF(x + cap, y));
  }
  const QString words =
      (setupLetter(setup) + QLatin1Char(' ') + (style.numbers && style.answered ? rangeText(rig, style.units) : QString()))
          .trimmed();
  p.setFont(style.font(1.25, true));
  p.setPen(setup == Setup::b ? style.colours.ochreWord : style.colours.ink);
  p.drawText(QRectF(line.front().x() + style.text * 2.4, labelY - style.text * 1.2, style.text * 12,
                    style.text * 2.4),
             Qt::AlignLeft | Qt::AlignVCenter, words);
  p.setFont(style.font());
}

Water waterOf(const std::vector<PictureRig>& rigs) {
  Water water;
  for (const PictureRig& rig : rigs) {
    if (!hangs(rig)) continue;
    water.depth_ft = std::max(water.depth_ft, rig.rig->water->depth->value());
    water.surface_ft_per_s = rig.rig->water->surfaceSpeed->value();
  }
  return water;
}

/// Where the words at each fly stand: at its depth, clear of each other and of the bed.
std::vector<double> labelHeights(const std::vector<PictureRig>& rigs, const Scale& s,
                                 const PictureStyle& style) {
  std::vector<double> heights;
  for (const PictureRig& rig : rigs) {
    const double depth = hangs(rig) ? rig.analysis->hang->fly.value() : 0;
    heights.push_back(std::min(s.at(0, depth).y(), s.water.bottom() - style.text));
  }
  const double apart = style.text * 1.7;
  if (heights.size() == 2 && std::abs(heights[0] - heights[1]) < apart) {
    double& upper = heights[0] <= heights[1] ? heights[0] : heights[1];
    double& lower = heights[0] <= heights[1] ? heights[1] : heights[0];
    lower = std::min(lower + apart / 2, s.water.bottom() - style.text);
    upper = lower - apart;
  }
  return heights;
}

}  // namespace

void paintRiver(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs,
                const PictureStyle& style) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  p.setFont(style.font());
  const Water water = waterOf(rigs);
  if (water.depth_ft <= 0) {
    p.setPen(style.colours.ink);
    p.drawText(box, Qt::AlignCenter | Qt::TextWordWrap,
               rigs.empty() ? PictureWords::tr("No rig.") : whyNot(rigs.front()));
    p.restore();
    return;
  }
  double reach = 10;
  for (const PictureRig& rig : rigs) {
    if (hangs(rig)) reach = std::max(reach, reach_ft(rig));
  }
  const double left = box.left() + style.text * 4;
  const double labels = style.text * 9;
  Scale s;
  s.perFoot = std::min((box.right() - labels - left) / (reach + kOnTop_ft),
                       (box.height() - style.text * 2.4) / water.depth_ft);
  const double tall = water.depth_ft * s.perFoot;
  s.water = QRectF(left, box.top() + (box.height() - tall) / 2, box.right() - left, tall);
  s.fly = std::min(box.right() - labels, left + (reach + 2 * kOnTop_ft) * s.perFoot);
  p.setPen(Qt::NoPen);
  p.setBrush(style.colours.riverFill);
  p.drawRect(s.water);
  p.setPen(QPen(style.colours.river, style.stroke * 0.7));
  p.drawLine(s.water.topLeft(), s.water.topRight());
  paintBed(p, s, style);
  if (style.numbers) paintDepths(p, s, water.depth_ft, style);
  const std::vector<double> labels_y = labelHeights(rigs, s, style);
  for (std::size_t i = 0; i < rigs.size(); ++i) {
    if (!hangs(rigs[i])) continue;
    if (i == 0) paintCurrent(p, s, *rigs[i].rig, style);
    paintHanging(p, s, rigs[i], setupOf(i, rigs.size()), labels_y[i], style);
  }
  p.restore();
}

}  // namespace grainwise::ui
