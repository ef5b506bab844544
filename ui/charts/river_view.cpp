// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/river_view.h"

#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/charts/hatch.h"
#include "ui/text/quantities.h"
#include "ui/theme/ground.h"

namespace grainwise::ui {
namespace {
constexpr int kFrame_ms = 16;
constexpr int kType = 14;
constexpr double kThinnest = 1.6;
constexpr double kThickest = 6.0;
constexpr double kPlanShare = 0.30;
constexpr int kMargin = 12;
constexpr int kDepthAxis = 44;
constexpr double kBehindFront_ft = 5;
constexpr double kAirAbove_ft = 0.8;     ///< above the surface that is shown behind a break mark
constexpr double kRodAbove_ft = 2.3;     ///< and before a rod that is drawn to scale
constexpr int kRodRoom = 76;             ///< of the rod before the break mark
constexpr double kLeftOut_ft = 8;        ///< what a break mark leaves out at least
constexpr double kRodTip = 0.86;         ///< of the air that is shown
constexpr double kTrackEvery_s = 5;
constexpr double kBed = 6;               // how tall its hatching is, and how wide

double styleWidth(const LineLooks::At& look) {
  return kThinnest + (kThickest - kThinnest) * look.share;
}

QColor styleColour(const LineLooks::At& look, const Colours& c) {
  switch (look.kind) {
    case LineLooks::Kind::sinking:
      return c.sinkFill;
    case LineLooks::Kind::nylon:
      return c.slate;
    case LineLooks::Kind::floating:
      break;
  }
  return c.river;
}

QColor between(const QColor& a, const QColor& b, double share) {
  const auto mix = [share](int x, int y) { return int(std::lround(x + (y - x) * share)); };
  return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}
}  // namespace

double RiverPoint::out_ft() const { return std::hypot(downstream_ft, across_ft); }

/// From the side: feet out and feet down to pixels, one scale for both.
struct RiverView::Side {
  QRectF box;
  double from_ft = 0, surface = 0, perFoot = 1;
  double rodRoom = 0;  ///< of the rod and the break mark behind it; 0: all is to scale
  [[nodiscard]] QPointF at(double out_ft, double depth_ft) const {
    return {box.left() + rodRoom + (out_ft - from_ft) * perFoot, surface + depth_ft * perFoot};
  }
};
/// From above: the rod at the lower left, the current to the right.
struct RiverView::Plan {
  QRectF box;
  double perFoot = 1;
  [[nodiscard]] QPointF at(const RiverPoint& point) const {
    return {box.left() + point.downstream_ft * perFoot, box.bottom() - point.across_ft * perFoot};
  }
};

RiverView::RiverView(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setAccessibleName(tr("The swing, from the side and from above"));
  m_timer.setInterval(kFrame_ms);
  m_timer.setTimerType(Qt::PreciseTimer);
  connect(&m_timer, &QTimer::timeout, this, [this] { advance(double(m_clock.restart())); });
  connect(look, &Look::changed, this, qOverload<>(&QWidget::update));
}

QSize RiverView::minimumSizeHint() const { return {420, m_look->px(150)}; }

void RiverView::setPicture(std::shared_ptr<const RiverPicture> picture) {
  m_picture = std::move(picture);
  m_reason.clear();
  m_stale = false;
  setTime(std::min(m_time_s, m_picture ? m_picture->length_s() : 0.0));
  describe();
  update();
}

void RiverView::setBand(std::optional<DepthBand> band) {
  m_band = band;
  describe();
  update();
}

void RiverView::setWanted(std::optional<FeetRange> wanted) {
  m_wanted = wanted;
  update();
}

void RiverView::setStale(bool stale) {
  if (stale == m_stale) return;
  m_stale = stale;
  describe();
  update();
}

void RiverView::setReason(const QString& words) {
  m_reason = words;
  m_picture.reset();
  setPlaying(false);
  describe();
  update();
}

void RiverView::setTime(double time_s) {
  time_s = std::clamp(time_s, 0.0, m_picture ? m_picture->length_s() : 0.0);
  if (time_s == m_time_s) return;
  m_time_s = time_s;
  Q_EMIT timeChanged(m_time_s);
  update();
}

void RiverView::setPlaying(bool playing) {
  if (playing == m_timer.isActive() || (playing && !m_picture)) return;
  if (playing) {
    if (m_time_s >= m_picture->length_s()) setTime(0);
    m_clock.start();
    m_timer.start();
  } else {
    m_timer.stop();
  }
  Q_EMIT playingChanged(playing);
}

void RiverView::advance(double wall_ms) {
  if (!m_picture) return;
  const double next = m_time_s + wall_ms * 1e-3 * m_speed;
  setTime(next);
  if (next >= m_picture->length_s()) setPlaying(false);
}

const RiverFrame* RiverView::shownFrame() const {
  if (!m_picture || m_picture->frames.empty()) return nullptr;
  const auto& frames = m_picture->frames;
  const auto after = std::upper_bound(frames.begin(), frames.end(), m_time_s,
                                      [](double t, const RiverFrame& f) { return t < f.time_s; });
  return after == frames.begin() ? &frames.front() : &*(after - 1);
}

QString RiverView::depthText(double depth_ft) const {
  return roundLengthText(Feet(depth_ft), m_look->units());
}

RiverView::Side RiverView::side() const {
  double far_ft = 1, flyNear_ft = 1e9;
  for (const RiverFrame& frame : m_picture->frames) {
    if (frame.time_s + 1e-9 < m_picture->afterMend_s) continue;
    far_ft = std::max(far_ft, frame.line.front().out_ft());
    flyNear_ft = std::min(flyNear_ft, frame.line.front().out_ft());
  }
  Side s;
  // The front of the line at its nearest, and some of the head behind it.
  s.from_ft = std::max(0.0, flyNear_ft - m_picture->front_ft - kBehindFront_ft);
  if (s.from_ft < kLeftOut_ft) s.from_ft = 0;
  s.rodRoom = s.from_ft > 0 ? m_look->px(kRodRoom) : 0;
  const double wide = width() * (1 - kPlanShare) - 2 * kMargin - m_look->px(kDepthAxis);
  const double tall = height() - m_look->px(kType + 8) - kMargin;
  const double span_ft = far_ft + 2 - s.from_ft;
  const double least_ft = s.from_ft > 0 ? kAirAbove_ft : kRodAbove_ft;
  s.perFoot = std::min((wide - s.rodRoom) / span_ft, tall / (m_picture->bed_ft + least_ft));
  const double above_ft = std::clamp(tall / s.perFoot - m_picture->bed_ft, least_ft, kRodAbove_ft);
  s.surface = m_look->px(kType + 8) + above_ft * s.perFoot;
  const double used = std::min(wide, s.rodRoom + span_ft * s.perFoot);
  s.box = QRectF(kMargin + m_look->px(kDepthAxis) + (wide - used) / 2, 0, used, height());
  return s;
}

bool RiverView::broken() const { return m_picture && side().rodRoom > 0; }

RiverView::Plan RiverView::plan() const {
  double down_ft = 1, across_ft = 1;
  for (const RiverFrame& frame : m_picture->frames) {
    for (const RiverPoint& point : frame.line) {
      down_ft = std::max(down_ft, point.downstream_ft);
      across_ft = std::max(across_ft, point.across_ft);
    }
  }
  Plan plan;
  const double left = width() * (1 - kPlanShare) + kMargin;
  const double top = m_look->px(kType + 8);
  plan.box = QRectF(left, top, width() - left - 2 * kMargin, height() - top - kMargin);
  plan.perFoot = std::min(plan.box.width() / (down_ft + 2), plan.box.height() / (across_ft + 2));
  return plan;
}

void RiverView::paintWater(QPainter& p, const Side& s) const {
  const Colours& c = m_look->colours();
  const double bed = s.at(0, m_picture->bed_ft).y();
  QColor water = c.riverFill;
  water.setAlpha(90);
  p.fillRect(QRectF(s.box.left(), s.surface, s.box.width(), bed - s.surface), water);
  p.setPen(QPen(c.river, 1));
  p.drawLine(QPointF(s.box.left(), s.surface), QPointF(s.box.right(), s.surface));
  p.setPen(QPen(c.slate, 2));
  p.drawLine(QPointF(s.box.left(), bed), QPointF(s.box.right(), bed));
  p.setPen(QPen(c.slate, 1));
  hatch(p, QPolygonF(QRectF(s.box.left(), bed + 1, s.box.width(), kBed)), kBed);
  p.setPen(c.slate);
  const double row = m_look->px(kType + 4);
  const QRectF axis(s.box.left() - m_look->px(kDepthAxis) - 4, 0, m_look->px(kDepthAxis), row);
  const auto label = [&](double y, const QString& words) {
    p.drawText(axis.translated(0, y - row / 2), Qt::AlignRight | Qt::AlignVCenter, words);
  };
  label(s.surface, depthText(0));
  label(bed, depthText(m_picture->bed_ft));
}

void RiverView::paintBand(QPainter& p, const Side& s) const {
  const Colours& c = m_look->colours();
  if (m_band) {
    QColor wash = c.river;
    wash.setAlpha(46);
    const double top = s.at(0, m_band->low.value()).y();
    const double bottom = s.at(0, m_band->high.value()).y();
    p.fillRect(QRectF(s.box.left(), top, s.box.width(), bottom - top), wash);
    p.setPen(c.ink);
    const double row = m_look->px(kType + 4);
    const double bed = s.at(0, m_picture->bed_ft).y();
    for (const double depth_ft : {m_band->low.value(), m_band->high.value()}) {
      const double y = s.at(0, depth_ft).y();
      if (y - s.surface < row || bed - y < row) continue;  // the axis says it already
      p.drawText(QRectF(s.box.left() - m_look->px(kDepthAxis) - 4, y - row / 2, m_look->px(kDepthAxis), row),
                 Qt::AlignRight | Qt::AlignVCenter, depthText(depth_ft));
    }
  }
  if (!m_wanted) return;
  p.setPen(QPen(c.alder, 2, Qt::DashLine));
  for (const Feet depth : {m_wanted->low, m_wanted->high}) {
    const double y = s.at(0, depth.value()).y();
    p.drawLine(QPointF(s.box.left(), y), QPointF(s.box.right(), y));
  }
  p.setPen(c.alder);
  p.drawText(QRectF(s.box.left(), s.at(0, m_wanted->high.value()).y() - m_look->px(20), s.box.width() - 6,
                    m_look->px(20)),
             Qt::AlignRight | Qt::AlignVCenter, tr("wanted"));
}

/// Longer arrows where the current is faster.
void RiverView::paintCurrent(QPainter& p, const Side& s) const {
  QColor colour = m_look->colours().slate;
  colour.setAlpha(150);
  p.setPen(QPen(colour, 1.2));
  const double longest = std::min(70.0, s.box.width() / 6);
  const double left = s.box.left() + s.rodRoom + s.box.width() * 0.03;
  for (const auto& current : m_picture->current) {
    const QPointF from(left, s.at(0, current.depth_ft).y());
    const QPointF to = from + QPointF(longest * current.share, 0);
    p.drawLine(from, to);
    p.drawLine(to, to + QPointF(-5, -3));
    p.drawLine(to, to + QPointF(-5, 3));
  }
}

void RiverView::paintLine(QPainter& p, const Side& s, const RiverFrame& frame) const {
  const Colours& c = m_look->colours();
  const QPolygonF room(s.box.adjusted(s.rodRoom, 0, 8, 0));
  for (std::size_t i = frame.line.size(); i-- > 1;) {
    const RiverPoint& rodSide = frame.line[i];
    const RiverPoint& flySide = frame.line[i - 1];
    p.setPen(QPen(styleColour(flySide.look, c), styleWidth(flySide.look), Qt::SolidLine, Qt::RoundCap));
    const auto piece = within(room, s.at(rodSide.out_ft(), rodSide.depth_ft), s.at(flySide.out_ft(), flySide.depth_ft));
    if (piece) p.drawLine(*piece);
  }
  const RiverPoint& fly = frame.line.front();
  const QPointF at = s.at(fly.out_ft(), fly.depth_ft);
  p.setPen(QPen(c.ink, 1));
  p.setBrush(c.flyBody);
  p.drawEllipse(at, m_look->px(6), m_look->px(4));
  p.setPen(c.ink);
  const QString words = depthText(fly.depth_ft);
  const double wide = p.fontMetrics().horizontalAdvance(words);
  // Under the fly, or over the water where the bed is too near for it.
  const double under = at.y() + m_look->px(kType) + 8;
  const double y = under < s.at(0, m_picture->bed_ft).y() ? under : s.surface - 6;
  p.drawText(QPointF(std::min(at.x() - wide - 12, s.box.right() - wide), y), words);
}

/// The rod at the left, its tip over the water. Before the break mark the line only says that it runs on,
/// from the tip once it has come tight, to where it comes in again at the mark.
void RiverView::paintRod(QPainter& p, const Side& s, const RiverFrame& frame) const {
  const Colours& c = m_look->colours();
  const bool tied = frame.time_s > m_picture->afterMend_s;
  const double air = s.surface - m_look->px(kType + 8);
  const QPointF tip = s.rodRoom > 0 ? QPointF(s.box.left() + s.rodRoom * 0.5, s.surface - kRodTip * air)
                                    : s.at(0, tied ? frame.line.back().depth_ft : -kRodAbove_ft * kRodTip);
  const QPointF butt = tip - QPointF(s.rodRoom > 0 ? s.rodRoom * 0.5 : m_look->px(kRodRoom) * 0.5, air * 0.6);
  p.setPen(QPen(c.slate, 3.5, Qt::SolidLine, Qt::RoundCap));
  p.drawLine(butt, (butt + tip) / 2);
  p.setPen(QPen(c.slate, 2, Qt::SolidLine, Qt::RoundCap));
  p.drawLine((butt + tip) / 2, tip);
  if (s.rodRoom <= 0) return;
  const double mark = s.box.left() + s.rodRoom;
  if (tied) {
    const RiverPoint* in = &frame.line.back();
    for (const RiverPoint& point : frame.line) {
      if (point.out_ft() < s.from_ft) {
        in = &point;
        break;
      }
    }
    p.setPen(QPen(styleColour(in->look, c), styleWidth(in->look), Qt::SolidLine, Qt::RoundCap));
    p.drawLine(tip, QPointF(mark - 6, std::max(s.at(0, in->depth_ft).y(), tip.y())));
  }
  p.setPen(QPen(c.slate, 1.5));
  const double half = m_look->px(9);
  for (const double x : {mark - 6.0, mark - 1.0}) {
    p.drawLine(QPointF(x - 3, s.surface + half), QPointF(x + 3, s.surface - half));
  }
}

void RiverView::paintPlan(QPainter& p, const Plan& plan, const RiverFrame& frame) const {
  const Colours& c = m_look->colours();
  p.setPen(c.slate);
  p.drawText(QRectF(plan.box.left(), 0, plan.box.width(), plan.box.top()),
             Qt::AlignLeft | Qt::AlignVCenter, tr("From above"));
  double deepest = 0.01;
  for (const RiverFrame& each : m_picture->frames) {
    deepest = std::max(deepest, each.line.front().depth_ft);
  }
  double nextDot_s = kTrackEvery_s;
  for (std::size_t i = 1; i < m_picture->frames.size(); ++i) {
    const RiverPoint& a = m_picture->frames[i - 1].line.front();
    const RiverPoint& b = m_picture->frames[i].line.front();
    const double share = std::clamp(b.depth_ft / deepest, 0.0, 1.0);
    const QColor colour = between(c.riverFill, c.river, share);
    p.setPen(QPen(colour, 1.5 + 4 * share, Qt::SolidLine, Qt::RoundCap));
    p.drawLine(plan.at(a), plan.at(b));
    if (m_picture->frames[i].time_s < nextDot_s) continue;
    nextDot_s += kTrackEvery_s;
    p.setPen(Qt::NoPen);
    p.setBrush(c.slate);
    p.drawEllipse(plan.at(b), 2, 2);
  }
  for (std::size_t i = frame.line.size(); i-- > 1;) {
    p.setPen(QPen(styleColour(frame.line[i - 1].look, c), 1.6));
    p.drawLine(plan.at(frame.line[i]), plan.at(frame.line[i - 1]));
  }
  p.setPen(QPen(c.ink, 1));
  p.setBrush(c.flyBody);
  p.drawEllipse(plan.at(frame.line.front()), 4, 3);
  p.setBrush(c.ink);
  p.drawEllipse(plan.at(RiverPoint{}), 3, 3);
}

void RiverView::describe() {
  if (!m_picture) {
    setAccessibleDescription(m_reason);
    return;
  }
  QString words = tr("A swing of %1 seconds, at the deepest %2.")
                      .arg(numberText(m_picture->length_s(), 0), depthText(m_picture->swing.deepest.value()));
  if (m_band) {
    words += QLatin1Char(' ') + tr("Four swings out of five between %1 and %2.")
                                    .arg(depthText(m_band->low.value()), depthText(m_band->high.value()));
  }
  if (m_stale) words += QLatin1Char(' ') + tr("being computed anew");
  setAccessibleDescription(words);
}

void RiverView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  paintGround(p, this, c.paper);
  const RiverFrame* frame = shownFrame();
  if (frame == nullptr || frame->line.size() < 2) {
    p.setFont(m_look->font(16));
    p.setPen(c.slate);
    p.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap, m_reason);
    return;
  }
  p.setFont(m_look->font(kType));
  if (m_stale) p.setOpacity(0.4);
  const Side s = side();
  paintWater(p, s);
  paintBand(p, s);
  paintCurrent(p, s);
  paintLine(p, s, *frame);
  paintRod(p, s, *frame);
  paintPlan(p, plan(), *frame);
  p.setOpacity(1);
  p.setPen(c.slate);
  const QString clock = frame->time_s <= m_picture->afterMend_s
                            ? tr("%1 s, drifting after the mend").arg(numberText(frame->time_s, 1))
                            : tr("%1 s, swinging").arg(numberText(frame->time_s, 1));
  const double from = s.box.left() + s.rodRoom;
  p.drawText(QRectF(from, 0, width() * (1 - kPlanShare) - kMargin - from, m_look->px(kType + 8)),
             Qt::AlignLeft | Qt::AlignVCenter, m_stale ? tr("being computed anew") : clock);
}

}  // namespace grainwise::ui
