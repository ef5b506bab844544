// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/card_runs.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/text/contexts.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

double endOf(const SwingResult& run) { return run.track.empty() ? 0 : run.track.back().time.value(); }
double endOf(const grainwise::CastResult& run) {
  return run.frames.empty() ? 0 : run.frames.back().time.value();
}

/// The last frame that is not after a moment; under 0: the last of all.
template <class Frame>
const Frame& frameAt(const std::vector<Frame>& frames, double time_s) {
  if (time_s < 0) return frames.back();
  const auto after = std::upper_bound(frames.begin(), frames.end(), time_s,
                                      [](double t, const Frame& f) { return t < f.time.value(); });
  return after == frames.begin() ? frames.front() : *std::prev(after);
}

double shown(double feet, const PictureStyle& style) {
  return shownValue(feet, Measure::length, style.units);
}

double niceStep(double range, int most) {
  const double power = std::pow(10.0, std::floor(std::log10(std::max(range, 1e-6) / most)));
  for (const double m : {1.0, 2.0, 5.0, 10.0}) {
    if (range / (m * power) <= most) return m * power;
  }
  return 10 * power;
}

bool swings(const CardRuns& runs, std::size_t i) {
  return i < runs.swings.size() && runs.swings[i] && runs.swings[i]->ran() && !runs.swings[i]->track.empty();
}

/// A line seen from the side: feet upstream of the fly, along a plane through rod and fly; feet down.
QPolygonF fromTheSide(const SwingFrame& frame) {
  QPolygonF line;
  const SwingPoint& fly = frame.line.back();
  for (const SwingPoint& point : frame.line) {
    const double away = std::hypot((point.downstream - fly.downstream).value(),
                                   (point.across - fly.across).value());
    line << QPointF(away, point.depth.value());
  }
  return line;
}

struct Side {
  QRectF water;
  double perFoot = 1;
  double fly = 0;
  [[nodiscard]] QPointF at(QPointF feet) const {
    return {fly - feet.x() * perFoot, water.top() + std::max(0.0, feet.y()) * perFoot};
  }
};

void paintWater(QPainter& p, const Side& s, const PictureStyle& style) {
  p.setPen(Qt::NoPen);
  p.setBrush(style.colours.riverFill);
  p.drawRect(s.water);
  p.setPen(QPen(style.colours.river, style.stroke * 0.6));
  p.drawLine(s.water.topLeft(), s.water.topRight());
  p.setPen(QPen(style.colours.ink, style.stroke * 0.7));
  p.drawLine(s.water.bottomLeft(), s.water.bottomRight());
  p.setPen(QPen(style.colours.slate, style.stroke * 0.3));
  const double step = style.text * 0.8;
  for (double x = s.water.left() + step; x < s.water.right(); x += step) {
    p.drawLine(QPointF(x, s.water.bottom()), QPointF(x - step * 0.5, s.water.bottom() + step * 0.4));
  }
}

void paintSide(QPainter& p, const QRectF& box, const CardRuns& runs, double depth_ft, double time_s,
               const PictureStyle& style) {
  double reach = 12;
  for (std::size_t i = 0; i < runs.swings.size(); ++i) {
    if (!swings(runs, i)) continue;
    const QPolygonF line = fromTheSide(frameAt(runs.swings[i]->track, time_s));
    for (const QPointF& point : line) {
      if (point.y() > 0.05) reach = std::max(reach, point.x() + 4);
    }
  }
  // One scale for a whole swing: it must not breathe while it plays.
  reach = std::max(reach, 34.0);
  Side s;
  s.perFoot = std::min(box.width() / (reach + 3), (box.height() - style.text * 0.6) / depth_ft);
  s.water = QRectF(box.left(), box.top() + style.text * 0.2, box.width(), depth_ft * s.perFoot);
  s.fly = box.right() - style.text * 2;
  paintWater(p, s, style);
  for (std::size_t i = 0; i < runs.swings.size(); ++i) {
    if (!swings(runs, i)) continue;
    const Setup setup = setupOf(i, runs.swings.size());
    QPolygonF line;
    for (const QPointF& point : fromTheSide(frameAt(runs.swings[i]->track, time_s))) {
      const QPointF there = s.at(point);
      if (there.x() >= box.left()) line << there;
    }
    QPen pen = setupPen(setup, style);
    pen.setWidthF(style.stroke * 1.2);
    pen.setJoinStyle(Qt::RoundJoin);
    p.setPen(pen);
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(line);
    if (line.isEmpty()) continue;
    p.setPen(Qt::NoPen);
    p.setBrush(setupColour(setup, style.colours));
    p.drawEllipse(line.back(), style.text * 0.32, style.text * 0.32);
    if (setup == Setup::alone) continue;
    p.setFont(style.font(1.2, true));
    p.setPen(setup == Setup::b ? style.colours.ochreWord : style.colours.river);
    const double shift = setup == Setup::a ? style.text * 0.5 : style.text * 1.2;
    p.drawText(QRectF(line.back().x() + shift, line.back().y() - style.text, style.text * 2, style.text * 2),
               Qt::AlignLeft | Qt::AlignVCenter, setupLetter(setup));
  }
}

void paintDepthAxes(QPainter& p, const QRectF& plot, double depth_ft, double end_s,
                    const PictureStyle& style) {
  p.setFont(style.font());
  const double deep = shown(depth_ft, style);
  const double step = niceStep(deep, std::max(1, int(plot.height() / (style.text * 1.7))));
  for (int i = 0; i * step <= deep * 1.0001; ++i) {
    const double y = plot.top() + i * step / deep * plot.height();
    p.setPen(QPen(style.colours.edge, style.stroke * 0.4));
    p.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    if (!style.numbers) continue;
    p.setPen(style.colours.slate);
    const QString number = QLocale().toString(i * step, 'g', 3);
    p.drawText(QRectF(plot.left() - style.text * 4.3, y - style.text, style.text * 4, style.text * 2),
               Qt::AlignRight | Qt::AlignVCenter,
               i == 0 ? QStringLiteral("0 %1").arg(lengthUnit(style.units)) : number);
  }
  const double wide = niceStep(end_s, std::max(2, int(plot.width() / (style.text * 6))));
  for (int i = 1; i * wide <= end_s; ++i) {
    const double x = plot.left() + i * wide / end_s * plot.width();
    p.setPen(style.colours.slate);
    p.drawText(QRectF(x - style.text * 4, plot.bottom() + style.text * 0.2, style.text * 8,
                      style.text * 1.4),
               Qt::AlignHCenter | Qt::AlignTop,
               PictureWords::tr("%1 s").arg(QLocale().toString(i * wide, 'g', 3)));
  }
  p.setPen(style.colours.slate);
  p.drawText(
      QRectF(plot.left(), plot.bottom() + style.text * 0.2, style.text * 8, style.text * 1.4),
      Qt::AlignLeft | Qt::AlignTop, PictureWords::tr("lands"));
}

void paintDepths(QPainter& p, const QRectF& plot, const CardRuns& runs, double depth_ft, double time_s,
                 const PictureStyle& style) {
  const double end_s = std::max(1.0, runs.length_s());
  paintDepthAxes(p, plot, depth_ft, end_s, style);
  for (std::size_t i = 0; i < runs.swings.size(); ++i) {
    if (!swings(runs, i)) continue;
    QPolygonF curve;
    const auto at = [&](const SwingFrame& frame) {
      return QPointF(plot.left() + frame.time.value() / end_s * plot.width(),
                     plot.top() + std::clamp(frame.line.back().depth.value() / depth_ft, 0.0, 1.0) *
                                      plot.height());
    };
    for (const SwingFrame& frame : runs.swings[i]->track) curve << at(frame);
    const Setup setup = setupOf(i, runs.swings.size());
    p.setPen(setupPen(setup, style));
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(curve);
    if (time_s < 0) continue;
    p.setPen(Qt::NoPen);
    p.setBrush(setupColour(setup, style.colours));
    p.drawEllipse(at(frameAt(runs.swings[i]->track, time_s)), style.text * 0.35, style.text * 0.35);
  }
  p.setPen(QPen(style.colours.ink, style.stroke * 0.7));
  p.drawLine(plot.bottomLeft(), plot.bottomRight());
}

}  // namespace

bool CardRuns::any() const {
  const auto there = [](const auto& run) { return run != nullptr; };
  return std::any_of(swings.begin(), swings.end(), there) || std::any_of(casts.begin(), casts.end(), there);
}

double CardRuns::length_s() const {
  double longest = 0;
  for (const auto& run : swings) longest = std::max(longest, run ? endOf(*run) : 0.0);
  for (const auto& run : casts) longest = std::max(longest, run ? endOf(*run) : 0.0);
  return longest;
}

std::shared_ptr<const CardRuns> runsOf(CardShow show, const std::vector<PictureRig>& rigs,
                                       const Conditions& conditions, std::stop_token stop) {
  if (show != CardShow::river && show != CardShow::cast) return nullptr;
  auto runs = std::make_shared<CardRuns>();
  for (const PictureRig& rig : rigs) {
    if (stop.stop_requested()) return nullptr;
    const MassProfile& profile = rig.analysis->profile;
    if (show == CardShow::river) {
      const auto there = rigInWater(*rig.rig, profile, conditions.current);
      const bool deep = rig.analysis->hang && hasDepth(rig.analysis->hang->state);
      runs->swings.push_back(
          there && deep
              ? std::make_shared<const SwingResult>(swing(there->line, there->river, there->setup, {}, stop))
              : nullptr);
    } else {
      const auto model = castModel(*rig.rig, profile, conditions.turnover());
      runs->casts.push_back(
          model ? std::make_shared<const grainwise::CastResult>(unroll(*model, {}, stop)) : nullptr);
    }
  }
  return stop.stop_requested() ? nullptr : runs;
}

void paintSwing(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs, const CardRuns& runs,
                double time_s, const PictureStyle& style) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  double depth_ft = 0.2;
  for (const PictureRig& rig : rigs) {
    if (rig.rig->water && rig.rig->water->depth) {
      depth_ft = std::max(depth_ft, rig.rig->water->depth->value());
    }
  }
  const double left = style.text * 4.6;
  const QRectF upper(box.left() + left, box.top(), box.width() - left, box.height() * 0.46);
  paintSide(p, upper, runs, depth_ft, time_s, style);
  QRectF plot(box.left() + left, box.top() + box.height() * 0.5, box.width() - left - style.text * 2,
              box.height() * 0.5 - style.text * 1.8);
  paintDepths(p, plot, runs, depth_ft, time_s, style);
  p.restore();
}

void paintCast(QPainter& p, const QRectF& box, const std::vector<PictureRig>& rigs, const CardRuns& runs,
               double time_s, const PictureStyle& style) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  double far = 10, back = 0;
  double high = 5;
  for (const auto& run : runs.casts) {
    if (!run) continue;
    for (const auto& frame : run->frames) {
      for (const CastPoint& point : frame.points) {
        far = std::max(far, point.forward.value());
        back = std::min(back, point.forward.value());
        high = std::max(high, point.height.value());
      }
    }
  }
  // Side by side: a loop is wider than it is high, and so has the height of the card to itself.
  const double each = box.width() / double(std::max<std::size_t>(1, rigs.size()));
  for (std::size_t i = 0; i < runs.casts.size(); ++i) {
    const QRectF row(box.left() + each * double(i), box.top(), each - style.text, box.height() - style.text * 1.8);
    const Setup setup = setupOf(i, runs.casts.size());
    if (!runs.casts[i] || runs.casts[i]->frames.empty()) {
      p.setFont(style.font(1.2));
      p.setPen(style.colours.ink);
      p.drawText(row, Qt::AlignCenter | Qt::TextWordWrap,
                 PictureWords::tr("There is no cast to show of this rig."));
      continue;
    }
    const double scale = std::min((row.width() - style.text * 4) / (far - back), row.height() / (high + 1));
    const double zero = row.left() + style.text * 2 - back * scale;
    const auto at = [&](const CastPoint& point) {
      return QPointF(zero + point.forward.value() * scale,
                     row.bottom() - point.height.value() * scale);
    };
    p.setPen(QPen(style.colours.river, style.stroke * 0.5));
    p.drawLine(row.bottomLeft(), row.bottomRight());
    p.setFont(style.font());
    p.setPen(style.colours.slate);
    const double step = niceStep(shown(far, style), int(std::max(2.0, row.width() / (style.text * 7))));
    const double perUnit = far / shown(far, style) * scale;
    for (int k = 0; k * step <= shown(far, style); ++k) {
      const QString number = QLocale().toString(k * step, 'g', 4);
      p.drawText(QRectF(zero + k * step * perUnit - style.text * 3, row.bottom() + style.text * 0.2, style.text * 6, style.text * 1.4),
                 Qt::AlignHCenter | Qt::AlignTop,
                 k == 0 ? QStringLiteral("0 %1").arg(lengthUnit(style.units)) : number);
    }
    const auto& frames = runs.casts[i]->frames;
    const auto path = [&](const grainwise::CastFrame& frame) {
      QPolygonF line;
      for (const CastPoint& point : frame.points) line << at(point);
      return line;
    };
    p.setBrush(Qt::NoBrush);
    p.setPen(QPen(style.colours.edge, style.stroke * 0.4));
    for (int ghost = 1; ghost < 6; ++ghost) {
      p.drawPolyline(path(frames[frames.size() * std::size_t(ghost) / 6]));
    }
    const QPolygonF line = path(frameAt(frames, time_s));
    QPen pen = setupPen(setup, style);
    pen.setJoinStyle(Qt::BevelJoin);  // its links turn by little; round joins cost a tenth of a frame
    p.setPen(pen);
    p.drawPolyline(line);
    p.setPen(Qt::NoPen);
    p.setBrush(setupColour(setup, style.colours));
    p.drawEllipse(line.back(), style.text * 0.35, style.text * 0.35);
    if (setup == Setup::alone) continue;
    p.setFont(style.font(1.5, true));
    p.setPen(setup == Setup::b ? style.colours.ochreWord : style.colours.river);
    p.drawText(QRectF(row.right() - style.text * 3, row.top(), style.text * 3, style.text * 2), Qt::AlignRight,
               setupLetter(setup));
  }
  p.restore();
}

}  // namespace grainwise::ui
