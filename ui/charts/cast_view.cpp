// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/cast_view.h"

#include <QLocale>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/units/si.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {
constexpr int kFrame_ms = 16;
constexpr int kEnergyHeight = 44;
constexpr int kAxisHeight = 22;
constexpr int kGhosts = 6;
constexpr double kThinnest = 1.6;
constexpr double kThickest = 7.0;

/// 1, 2 or 5 times a power of ten, so that a label stands about every `pixels`.
double niceStep(double unitsPerPixel, double pixels) {
  const double raw = unitsPerPixel * pixels;
  const double power = std::pow(10.0, std::floor(std::log10(raw)));
  for (const double m : {1.0, 2.0, 5.0}) {
    if (m * power >= raw) return m * power;
  }
  return 10.0 * power;
}
}  // namespace

/// Metres to pixels: one scale for both directions.
struct CastView::Scale {
  double left = 0, water = 0, pixelsPerMetre = 1;
  [[nodiscard]] QPointF at(QPointF m) const {
    return {left + m.x() * pixelsPerMetre, water - m.y() * pixelsPerMetre};
  }
};

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
  const double margin = m_look->px(24);
  const double tall = height() - m_look->px(kEnergyHeight + kAxisHeight + 16);
  Scale s;
  s.pixelsPerMetre =
      std::min((width() - 2 * margin) / (far - near), tall / std::max(1.0, high - low));
  s.left = margin - near * s.pixelsPerMetre;
  s.water = m_look->px(8) + tall + std::min(0.0, low) * s.pixelsPerMetre;
  return s;
}

void CastView::paintGround(QPainter& p, const Scale& s) const {
  const Colours& c = m_look->colours();
  p.setPen(QPen(c.river, 1));
  p.drawLine(QPointF(0, s.water), QPointF(width(), s.water));
  const DisplayUnits units = m_look->units();
  const double metresPerUnit = units.metres ? 1.0 : si::kMetresPerFoot;
  const double step = niceStep(1 / (s.pixelsPerMetre * metresPerUnit), m_look->px(90));
  p.setFont(m_look->font(14));
  p.setPen(c.slate);
  const double last = (width() - s.left) / (s.pixelsPerMetre * metresPerUnit);
  for (int i = 0; i * step < last - 0.3 * step; ++i) {
    const double x = s.left + i * step * metresPerUnit * s.pixelsPerMetre;
    p.drawLine(QPointF(x, s.water), QPointF(x, s.water + 5));
    const QString number = QLocale().toString(i * step, 'g', 4);
    const QString label = i == 0 ? number + QLatin1Char(' ') + lengthUnit(units) : number;
    p.drawText(QRectF(x - 40, s.water + 5, 80, m_look->px(kAxisHeight - 4)), Qt::AlignHCenter, label);
  }
  // The rod, from the grip at about a person's chest to its tip.
  const QPointF tip = s.at({0, m_picture->rodTip_m});
  const double run = std::min(m_picture->rodLength_m * 0.55, 2.0);
  p.setPen(QPen(c.slate, 3, Qt::SolidLine, Qt::RoundCap));
  p.drawLine(tip, s.at({-run, std::max(0.0, m_picture->rodTip_m - m_picture->rodLength_m * 0.8)}));
}

void CastView::paintGhosts(QPainter& p, const Scale& s, std::size_t now) const {
  QColor thin = m_look->colours().slate;
  thin.setAlpha(90);
  p.setPen(QPen(thin, 1));
  const std::size_t total = m_picture->frames.size();
  for (int g = 1; g <= kGhosts; ++g) {
    const std::size_t at = total * std::size_t(g) / (kGhosts + 1);
    if (at >= now) break;
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

void CastView::paintEnergy(QPainter& p, const CastFrame& frame) const {
  const Colours& c = m_look->colours();
  const double total = frame.moving_J + frame.toAir_J + frame.toFly_J;
  if (total <= 0) return;
  struct Share {
    double joules;
    QColor colour;
    Qt::BrushStyle style;
    QString words;
  };
  const std::array<Share, 3> shares{{{frame.moving_J, c.river, Qt::SolidPattern, tr("still moving")},
                                     {frame.toAir_J, c.slate, Qt::BDiagPattern, tr("lost to the air")},
                                     {frame.toFly_J, c.ochreLine, Qt::DiagCrossPattern,
                                      tr("lost to the fly")}}};
  const double margin = m_look->px(16);
  const double wide = width() - 2 * margin;
  const double top = height() - m_look->px(kEnergyHeight) + m_look->px(4);
  p.setFont(m_look->font(14));
  double x = margin;
  double words = margin;
  for (const Share& share : shares) {
    const double w = wide * share.joules / total;
    p.setPen(QPen(share.colour, 1));
    p.setBrush(QBrush(share.colour, share.style));
    p.drawRect(QRectF(x, top, w, m_look->px(12)));
    const QString text = QStringLiteral("%1 %2 %").arg(share.words).arg(std::lround(100 * share.joules / total));
    const QRectF swatch(words, top + m_look->px(20), m_look->px(12), m_look->px(12));
    p.drawRect(swatch);
    p.setPen(c.ink);
    const double room = p.fontMetrics().horizontalAdvance(text) + m_look->px(32);
    p.drawText(QRectF(swatch.right() + m_look->px(6), top + m_look->px(15), room, m_look->px(22)),
               Qt::AlignVCenter | Qt::AlignLeft, text);
    words += swatch.width() + room;
    x += w;
  }
}

void CastView::describe() {
  setAccessibleDescription(
      m_picture ? tr("An unrolling loop of %1 seconds.").arg(QLocale().toString(m_picture->length_s(), 'f', 2))
                : m_reason);
}

void CastView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  p.fillRect(rect(), c.paper);
  if (!m_picture || m_picture->frames.empty()) {
    p.setFont(m_look->font(16));
    p.setPen(c.slate);
    p.drawText(rect().adjusted(16, 16, -16, -16), Qt::AlignCenter | Qt::TextWordWrap, m_reason);
    return;
  }
  const Scale s = scale();
  const std::size_t now = frameAt(m_time_s);
  const CastFrame& frame = m_picture->frames[now];
  if (m_stale) p.setOpacity(0.4);
  paintGround(p, s);
  paintGhosts(p, s, now);
  paintLine(p, s, frame);
  paintEnergy(p, frame);
  p.setOpacity(1);
  p.setFont(m_look->font(14));
  p.setPen(c.slate);
  const QString clock = tr("%1 s").arg(QLocale().toString(frame.time_s, 'f', 2));
  p.drawText(rect().adjusted(12, 6, -12, -6), Qt::AlignTop | Qt::AlignRight,
             m_stale ? tr("being computed anew") : clock);
}

}  // namespace grainwise::ui
