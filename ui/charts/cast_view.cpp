// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/cast_view.h"

#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/si.h"
#include "ui/charts/hatch.h"
#include "ui/text/quantities.h"
#include "ui/theme/ground.h"

namespace grainwise::ui {
namespace {
constexpr int kFrame_ms = 16;
constexpr int kEnergyHeight = 26;
constexpr int kAxisHeight = 24;
constexpr int kHeightWords = 34;   // room of the words beside the heights
constexpr int kAbove = 8;
constexpr double kDistanceEvery = 80, kHeightEvery = 26;  // pixels, at least
constexpr int kGhosts = 6;
constexpr double kThinnest = 1.6;
constexpr double kThickest = 7.0;
constexpr double kUsualRod_m = 4.0;  // where the rig says nothing of its rod
constexpr double kGrip_m = 1.2;      // above the water, of someone who wades to the knee
constexpr double kShortestBar = 140;
constexpr int kSwatch = 12;
constexpr double kHatch = 6.0;
}  // namespace

/// Metres to pixels: one scale for both directions.
struct CastView::Scale {
  QRectF box;  ///< of the picture, without the words at its axes
  double left = 0, water = 0, pixelsPerMetre = 1;
  [[nodiscard]] QPointF at(QPointF m) const {
    return {left + m.x() * pixelsPerMetre, water - m.y() * pixelsPerMetre};
  }
  [[nodiscard]] double out_m(double x) const { return (x - left) / pixelsPerMetre; }
  [[nodiscard]] double above_m(double y) const { return (water - y) / pixelsPerMetre; }
};

EnergyShares energyShares(const CastFrame& frame) {
  const double all = frame.moving_J + frame.toAir_J + frame.toFly_J;
  if (!(all > 0)) return {};
  return {frame.moving_J / all, frame.toAir_J / all, frame.toFly_J / all};
}

CastView::CastView(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setAccessibleName(tr("The cast, seen from the side"));
  m_timer.setInterval(kFrame_ms);
  m_timer.setTimerType(Qt::PreciseTimer);
  connect(&m_timer, &QTimer::timeout, this, [this] { advance(double(m_clock.restart())); });
  connect(look, &Look::changed, this, qOverload<>(&QWidget::update));
}

QSize CastView::minimumSizeHint() const { return {320, m_look->px(150)}; }

void CastView::setPicture(std::shared_ptr<const CastPicture> picture) {
  m_picture = std::move(picture);
  m_reason.clear();
  m_stale = false;
  setTime(std::min(m_time_s, m_picture ? m_picture->length_s() : 0.0));
  describe();
  update();
}

void CastView::setStale(bool stale) {
  if (stale == m_stale) return;
  m_stale = stale;
  describe();
  update();
}

void CastView::setReason(const QString& words) {
  m_reason = words;
  m_picture.reset();
  setPlaying(false);
  describe();
  update();
}

void CastView::setTime(double time_s) {
  const double end = m_picture ? m_picture->length_s() : 0;
  time_s = std::clamp(time_s, 0.0, end);
  if (time_s == m_time_s) return;
  m_time_s = time_s;
  Q_EMIT timeChanged(m_time_s);
  update();
}

void CastView::setPlaying(bool playing) {
  if (playing == m_timer.isActive()) return;
  if (playing && !m_picture) return;
  if (playing) {
    if (m_time_s >= m_picture->length_s()) setTime(0);
    m_clock.start();
    m_timer.start();
  } else {
    m_timer.stop();
  }
  Q_EMIT playingChanged(playing);
}

void CastView::advance(double wall_ms) {
  if (!m_picture) return;
  const double next = m_time_s + wall_ms * 1e-3 * m_speed;
  setTime(next);
  if (next >= m_picture->length_s()) setPlaying(false);
}

std::size_t CastView::frameAt(double time_s) const {
  const auto& frames = m_picture->frames;
  const auto after = std::upper_bound(frames.begin(), frames.end(), time_s,
                                      [](double t, const CastFrame& f) { return t < f.time_s; });
  return after == frames.begin() ? 0 : std::size_t(after - frames.begin()) - 1;
}

const CastFrame* CastView::shownFrame() const {
  if (!m_picture || m_picture->frames.empty()) return nullptr;
  return &m_picture->frames[frameAt(m_time_s)];
}

double CastView::metresPerUnit() const { return m_look->units().metres ? 1.0 : si::kMetresPerFoot; }

CastView::Scale CastView::scale() const {
  double far = 1, low = 0, high = m_picture->rodTip_m + 1;
  double near = -std::min(m_picture->rodLength_m, 2.0);
  for (const CastFrame& frame : m_picture->frames) {
    for (const QPointF& node : frame.line_m) {
      far = std::max(far, node.x());
      near = std::min(near, node.x());
      high = std::max(high, node.y());
      low = std::min(low, node.y());
    }
  }
  const double margin = m_look->px(8);
  Scale s;
  s.box = QRectF(m_look->px(kHeightWords), m_look->px(kAbove), width() - m_look->px(kHeightWords) - margin,
                 height() - m_look->px(kAbove + kAxisHeight + kEnergyHeight));
  s.pixelsPerMetre = std::min((s.box.width() - 2 * margin) / (far - near), s.box.height() / std::max(1.0, high - low));
  s.left = s.box.left() + margin - near * s.pixelsPerMetre;
  s.water = s.box.bottom() + std::min(0.0, low) * s.pixelsPerMetre;
  return s;
}

std::vector<AxisTick> CastView::distances() const {
  if (!m_picture) return {};
  const Scale s = scale();
  const double unit = metresPerUnit();
  return axisTicks(s.out_m(s.box.left()) / unit, s.out_m(s.box.right()) / unit, s.pixelsPerMetre * unit,
                   m_look->px(kDistanceEvery));
}

std::vector<AxisTick> CastView::heights() const {
  if (!m_picture) return {};
  const Scale s = scale();
  const double unit = metresPerUnit();
  return axisTicks(0, s.above_m(s.box.top()) / unit, s.pixelsPerMetre * unit, m_look->px(kHeightEvery));
}

/// Height above the water at the left, distance from the rod tip below; the unit stands at the first mark.
void CastView::paintAxes(QPainter& p, const Scale& s) const {
  const Colours& c = m_look->colours();
  p.setFont(m_look->font(14));
  const double row = m_look->px(18);
  for (const AxisTick& tick : heights()) {
    const double y = s.water - tick.at * metresPerUnit() * s.pixelsPerMetre;
    p.setPen(QPen(c.edge, 1));
    if (tick.at > 0) p.drawLine(QPointF(s.box.left(), y), QPointF(s.box.right(), y));
    p.setPen(c.slate);
    p.drawText(QRectF(0, y - row / 2, s.box.left() - 5, row), Qt::AlignRight | Qt::AlignVCenter, tick.words);
  }
  p.setPen(QPen(c.river, 1));
  p.drawLine(QPointF(s.box.left(), s.water), QPointF(s.box.right(), s.water));
  p.setPen(c.slate);
  const double half = m_look->px(40);
  for (const AxisTick& tick : distances()) {
    const double x = s.left + tick.at * metresPerUnit() * s.pixelsPerMetre;
    p.drawLine(QPointF(x, s.water), QPointF(x, s.water + 5));
    const QString unit = QLatin1Char(' ') + lengthUnit(m_look->units());
    const QRectF room(x - half, s.water + 5, 2 * half, row);
    p.drawText(room, Qt::AlignHCenter, tick.at == 0 ? tick.words + unit : tick.words);
  }
}

/// The rod as it stops, from the grip to its tip, thick to thin.
void CastView::paintRod(QPainter& p, const Scale& s) const {
  const double length_m = m_picture->rodLength_m > 0 ? m_picture->rodLength_m : kUsualRod_m;
  const double rise_m = std::min(std::abs(m_picture->rodTip_m - kGrip_m), length_m * 0.95);
  const QPointF tip_m(0, m_picture->rodTip_m);
  const QPointF grip_m(-std::sqrt(length_m * length_m - rise_m * rise_m),
                       m_picture->rodTip_m - std::copysign(rise_m, m_picture->rodTip_m - kGrip_m));
  constexpr std::array<double, 4> kThick{6, 4.5, 3, 1.8};
  for (std::size_t i = 0; i < kThick.size(); ++i) {
    const double from = double(i) / kThick.size(), to = double(i + 1) / kThick.size();
    p.setPen(QPen(m_look->colours().slate, kThick[i], Qt::SolidLine, Qt::RoundCap));
    p.drawLine(s.at(grip_m + from * (tip_m - grip_m)), s.at(grip_m + to * (tip_m - grip_m)));
  }
}

std::vector<std::size_t> CastView::ghosts() const {
  std::vector<std::size_t> at;
  if (!m_picture) return at;
  const std::size_t total = m_picture->frames.size(), now = frameAt(m_time_s);
  for (std::size_t g = 1; g <= kGhosts && total * g / (kGhosts + 1) < now; ++g) {
    at.push_back(total * g / (kGhosts + 1));
  }
  return at;
}

std::vector<double> CastView::ghosts_s() const {
  std::vector<double> times;
  for (const std::size_t at : ghosts()) times.push_back(m_picture->frames[at].time_s);
  return times;
}

void CastView::paintGhosts(QPainter& p, const Scale& s) const {
  QColor thin = m_look->colours().slate;
  thin.setAlpha(90);
  p.setPen(QPen(thin, 1));
  for (const std::size_t at : ghosts()) {
    QPolygonF path;
    for (const QPointF& node : m_picture->frames[at].line_m) path.append(s.at(node));
    p.drawPolyline(path);
  }
}

void CastView::paintLine(QPainter& p, const Scale& s, const CastFrame& frame) const {
  const Colours& c = m_look->colours();
  for (std::size_t i = 0; i + 1 < frame.line_m.size(); ++i) {
    const auto& link = m_picture->links[std::min(i, m_picture->links.size() - 1)];
    const QColor colour = link.kind == LineLooks::Kind::sinking ? c.sinkFill
                          : link.kind == LineLooks::Kind::nylon ? c.slate
                                                                  : c.river;
    const double thick = kThinnest + (kThickest - kThinnest) * link.share;
    p.setPen(QPen(colour, thick, Qt::SolidLine, Qt::RoundCap));
    p.drawLine(s.at(frame.line_m[i]), s.at(frame.line_m[i + 1]));
  }
  p.setPen(QPen(c.ink, 1));
  p.setBrush(c.flyBody);
  p.drawEllipse(s.at(frame.line_m.back()), m_look->px(6), m_look->px(4));
}

/// The three shares, each named with its figure and its hatch, the bar (where there is room for it), and
/// what the clock says.
void CastView::paintEnergy(QPainter& p, const CastFrame& frame) const {
  const Colours& c = m_look->colours();
  const EnergyShares shares = energyShares(frame);
  struct Named {
    double share;
    QColor colour;
    int hatchings;  ///< none: filled
    QString words;
  };
  const auto fill = [&p](const QRectF& box, const Named& named) {
    p.setPen(QPen(named.colour, 1));
    p.setBrush(named.hatchings == 0 ? QBrush(named.colour) : QBrush(Qt::NoBrush));
    p.drawRect(box);
    if (named.hatchings > 0) hatch(p, QPolygonF(box), kHatch);
    if (named.hatchings > 1) hatchDown(p, QPolygonF(box), kHatch);
  };
  const std::array<Named, 3> all{{{shares.moving, c.river, 0, tr("still moving")},
                                  {shares.toAir, c.slate, 1, tr("lost to the air")},
                                  {shares.toFly, c.ochreLine, 2, tr("lost to the fly")}}};
  p.setFont(m_look->font(14));
  const double row = m_look->px(kEnergyHeight);
  const double top = height() - row, swatch = m_look->px(kSwatch), gap = m_look->px(6);
  const double inset = (row - swatch) / 2;
  double x = gap;
  for (const Named& each : all) {
    fill(QRectF(x, top + inset, swatch, swatch), each);
    x += swatch + gap;
    const QString text = each.words + QLatin1Char(' ') + percentText(each.share);
    const QString widest = each.words + QLatin1Char(' ') + percentText(1);
    const double room = p.fontMetrics().horizontalAdvance(widest) + 2 * gap;
    p.setPen(c.ink);
    p.drawText(QRectF(x, top, room, row), Qt::AlignVCenter | Qt::AlignLeft, text);
    x += room;
  }
  const QString clock = tr("%1 s").arg(QLocale().toString(frame.time_s, 'f', 2));
  const double clockRoom = p.fontMetrics().horizontalAdvance(clock) + 2 * gap;
  p.setPen(c.slate);
  p.drawText(QRectF(width() - clockRoom, top, clockRoom, row), Qt::AlignCenter, clock);
  const double wide = width() - x - gap - clockRoom;
  if (wide < m_look->px(kShortestBar)) return;
  for (const Named& each : all) {
    fill(QRectF(x, top + inset, wide * each.share, swatch), each);
    x += wide * each.share;
  }
}

void CastView::describe() {
  QString words = m_reason;
  if (m_picture) {
    words = tr("An unrolling loop of %1 seconds.").arg(QLocale().toString(m_picture->length_s(), 'f', 2));
    if (m_stale) words += QLatin1Char(' ') + tr("being computed anew");
  }
  setAccessibleDescription(words);
}

void CastView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  paintGround(p, this, c.paper);
  if (!m_picture || m_picture->frames.empty()) {
    p.setFont(m_look->font(16));
    p.setPen(c.slate);
    p.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap, m_reason);
    return;
  }
  const Scale s = scale();
  const CastFrame& frame = *shownFrame();
  if (m_stale) p.setOpacity(0.4);
  paintAxes(p, s);
  paintRod(p, s);
  paintGhosts(p, s);
  paintLine(p, s, frame);
  paintEnergy(p, frame);
  p.setOpacity(1);
  if (!m_stale) return;
  p.setFont(m_look->font(14));
  p.setPen(c.slate);
  p.drawText(rect().adjusted(12, 6, -12, -6), Qt::AlignTop | Qt::AlignRight, tr("being computed anew"));
}

}  // namespace grainwise::ui
