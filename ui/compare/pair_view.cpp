// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/compare/pair_view.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QSignalBlocker>
#include <QSlider>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "ui/compare/compare_feed.h"
#include "ui/compare/compare_words.h"
#include "ui/panels/slider_row.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/theme/pill_button.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kTick_ms = 16;
constexpr double kCastSpeed = 0.25;  // of real time
constexpr double kSwingSpeed = 4;
constexpr int kType = 14;
constexpr int kWordsType = 15;
constexpr int kBeside = 290;  // of the words beside the picture
constexpr int kLeastHeight = 96;
constexpr int kMargin = 14;
constexpr int kWordsRow = 22;
constexpr int kSliderSteps = 1000;
constexpr double kFly = 4;
constexpr int kLetter = 22;   // right of the fly
constexpr int kFigures = 34;  // left of the picture, the depth of the bed

double speedOf(PairView::Scene scene) {
  return scene == PairView::Scene::cast ? kCastSpeed : kSwingSpeed;
}

PairTrack castTrack(const std::optional<CastResult>& cast) {
  PairTrack track;
  if (!cast) {
    track.words = CompareWords::tr("no cast to show");
    return track;
  }
  for (const CastFrame& frame : cast->frames) {
    PairTrack::Frame out{frame.time.value(), {}};
    for (const CastPoint& point : frame.points) {
      out.feet.emplace_back(point.forward.value(), point.height.value());
    }
    track.frames.push_back(std::move(out));
  }
  track.words = cast->stop == CastStop::turnedOver
                    ? CompareWords::tr("the fly is round after %1 s").arg(numberText(cast->time.value(), 2))
                    : CompareWords::tr("does not turn over");
  return track;
}

PairTrack swingTrack(const std::optional<SwingResult>& swing) {
  PairTrack track;
  if (!swing || !swing->ran()) {
    track.words = CompareWords::tr("no swing to show");
    return track;
  }
  for (const SwingFrame& frame : swing->track) {
    PairTrack::Frame out{frame.time.value(), {}};
    for (const SwingPoint& point : frame.line) {
      out.feet.emplace_back(std::hypot(point.downstream.value(), point.across.value()),
                            -point.depth.value());
    }
    track.frames.push_back(std::move(out));
  }
  track.words =
      swing->timeTo10deg
          ? CompareWords::tr("straight below after %1 s").arg(numberText(swing->timeTo10deg->value(), 0))
          : CompareWords::tr("never comes straight below");
  return track;
}

}  // namespace

const PairTrack::Frame* PairTrack::at(double time_s) const {
  if (frames.empty()) return nullptr;
  const auto after = std::upper_bound(frames.begin(), frames.end(), time_s + 1e-9,
                                      [](double t, const Frame& f) { return t < f.time_s; });
  return after == frames.begin() ? &*after : &*std::prev(after);
}

PairView::PairView(Look* look, CompareFeed* feed, Scene scene, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed), m_scene(scene) {
  setObjectName(scene == Scene::cast ? QStringLiteral("bothCasts") : QStringLiteral("bothSwings"));
  setAccessibleName(scene == Scene::cast ? tr("The casts of A and B") : tr("The swings of A and B"));
  m_timer.setTimerType(Qt::PreciseTimer);
  m_timer.setInterval(kTick_ms);
  connect(&m_timer, &QTimer::timeout, this, [this] { advance(double(m_clock.restart())); });
  connect(feed, &CompareFeed::compared, this, &PairView::refresh);
  connect(look, &Look::changed, this, qOverload<>(&QWidget::update));
}

QSize PairView::minimumSizeHint() const { return {300, m_look->px(kLeastHeight)}; }

/// No more than it needs: the page rolls as soon as it gets less than what is asked for here.
QSize PairView::sizeHint() const { return {1200, m_look->px(kLeastHeight)}; }

double PairView::length_s() const { return std::max(m_tracks[0].length_s(), m_tracks[1].length_s()); }

/// What is shown stays, marked as old, until the new swings and casts are there.
void PairView::refresh() {
  m_old = !m_feed->fromRuns();
  if (!m_old) {
    m_bounds = {};
    for (const bool ofB : {false, true}) {
      const AnalysisFeed* feed = ofB ? m_feed->b() : m_feed->a();
      m_tracks[ofB ? 1 : 0] = m_scene == Scene::cast ? castTrack(m_feed->cast(ofB))
                                                     : swingTrack(m_feed->runs(ofB)->swing);
      const auto& water = feed->rig()->water;
      m_bed_ft[ofB ? 1 : 0] = water && water->depth ? water->depth->value() : 0;
      QRectF bounds(0, -m_bed_ft[ofB ? 1 : 0], 1, 1);
      bounds.setBottom(2.5);  // the rod tip, and a little air
      // A cast is drawn as large as it goes: from under its lowest point, not from the ground.
      if (m_scene == Scene::cast && !track(ofB).frames.empty()) {
        bounds = QRectF(track(ofB).frames.front().feet.front() - QPointF(1, 1), QSizeF(2, 2));
      }
      for (const PairTrack::Frame& frame : track(ofB).frames) {
        for (const QPointF& point : frame.feet) {
          bounds.setLeft(std::min(bounds.left(), point.x()));
          bounds.setRight(std::max(bounds.right(), point.x()));
          bounds.setTop(std::min(bounds.top(), point.y()));
          bounds.setBottom(std::max(bounds.bottom(), point.y()));
        }
      }
      m_bounds = m_bounds.isNull() ? bounds : m_bounds.united(bounds);
    }
    // The first picture says something: the loops half way out, the swings half way round.
    if (!m_begun && length_s() > 0) m_time_s = length_s() / 2;
    m_begun = m_begun || length_s() > 0;
    m_time_s = std::min(m_time_s, length_s());
  }
  setAccessibleDescription(summary());
  Q_EMIT timeChanged();
  update();
}

QString PairView::summary() const {
  if (length_s() <= 0 && m_old) return tr("working…");
  return tr("A: %1. B: %2").arg(track(false).words, track(true).words);
}

QString PairView::state() const {
  return m_old && length_s() > 0 ? tr("%1 (of before the change: working…)").arg(summary()) : summary();
}

void PairView::setTime(double time_s) {
  m_time_s = std::clamp(time_s, 0.0, length_s());
  Q_EMIT timeChanged();
  update();
}

void PairView::setPlaying(bool playing) {
  if (playing == m_timer.isActive()) return;
  if (playing) {
    if (m_time_s >= length_s()) m_time_s = 0;
    m_clock.start();
    m_timer.start();
  } else {
    m_timer.stop();
  }
  Q_EMIT playingChanged();
}

void PairView::advance(double wall_ms) {
  setTime(m_time_s + wall_ms / 1000.0 * speedOf(m_scene));
  if (m_time_s >= length_s() || !isVisible()) setPlaying(false);
}

QRectF PairView::box() const {
  // Under the picture stand the feet, or half of the bed's figure.
  const double foot = m_scene == Scene::cast ? m_look->px(kWordsRow) : m_look->px(kWordsRow) / 2.0;
  return QRectF(rect()).adjusted(kMargin + m_look->px(kFigures), m_look->px(kWordsRow) / 2.0,
                                 -kMargin - m_look->px(kLetter), -foot);
}

PairView::Scale PairView::scale() const {
  const QRectF inside = box();
  Scale s;
  s.pixelsPerFoot = std::max(0.1, std::min(inside.width() / std::max(1.0, m_bounds.width()),
                                           inside.height() / std::max(1.0, m_bounds.height())));
  const double used = m_bounds.width() * s.pixelsPerFoot;
  s.origin = {inside.left() + (inside.width() - used) / 2 - m_bounds.left() * s.pixelsPerFoot,
              inside.bottom() + m_bounds.top() * s.pixelsPerFoot};
  return s;
}

double PairView::pixelsPerFoot() const { return scale().pixelsPerFoot; }

void PairView::paintGround(QPainter& p, const Scale& s) const {
  const Colours& c = m_look->colours();
  const double left = s.at(m_bounds.topLeft()).x(), right = s.at(m_bounds.topRight()).x();
  if (m_scene == Scene::cast) {
    paintHeights(p, s);
    return paintFeet(p, s, s.at(m_bounds.topLeft()).y());
  }
  const double surface = s.at({0, 0}).y();
  p.setPen(QPen(c.river, 1.2));
  p.drawLine(QPointF(left, surface), QPointF(right, surface));
  paintDepth(p, left, surface, lengthText(Feet(0), m_look->units()));
  // The figures of two beds that are close stand apart.
  const double gap = s.at({0, -m_bed_ft[0]}).y() - s.at({0, -m_bed_ft[1]}).y();
  const double lacks = std::max(0.0, QFontMetricsF(m_look->font(kType)).height() - std::abs(gap)) / 2;
  const auto aside = [&](int i) {
    if (m_bed_ft[0] <= 0 || m_bed_ft[1] <= 0 || gap == 0) return 0.0;
    return (gap > 0) == (i == 0) ? lacks : -lacks;
  };
  for (const int i : {0, 1}) {
    if (m_bed_ft[std::size_t(i)] <= 0 || (i == 1 && m_bed_ft[0] == m_bed_ft[1])) continue;
    const double bed = s.at({0, -m_bed_ft[std::size_t(i)]}).y();
    p.setPen(QPen(c.slate, 2, i == 0 ? Qt::SolidLine : Qt::DashLine));
    p.drawLine(QPointF(left, bed), QPointF(right, bed));
    paintDepth(p, left, bed + aside(i), lengthText(Feet(m_bed_ft[std::size_t(i)]), m_look->units()));
  }
}

void PairView::paintDepth(QPainter& p, double left, double y, const QString& words) const {
  p.setFont(m_look->font(kType));
  p.setPen(m_look->colours().slate);
  const double tall = p.fontMetrics().height();
  p.drawText(QRectF(0, y - tall / 2, left - 5, tall), Qt::AlignRight | Qt::AlignVCenter, words);
}

/// How high above the water, every five feet or metre, across the picture.
void PairView::paintHeights(QPainter& p, const Scale& s) const {
  const DisplayUnits units = m_look->units();
  const double step_ft = units.metres ? 1 / si::kMetresPerFoot : 5;
  // No closer than two lines of words: in low places every second or fourth.
  double every = 1;
  while (every * step_ft * s.pixelsPerFoot < 1.5 * m_look->px(kWordsRow)) every *= 2;
  const double left = s.at(m_bounds.topLeft()).x(), right = s.at(m_bounds.topRight()).x();
  for (double n = std::ceil(m_bounds.top() / step_ft / every) * every; n * step_ft <= m_bounds.bottom(); n += every) {
    const double y = s.at({0, n * step_ft}).y();
    p.setPen(QPen(m_look->colours().edge, 1));
    p.drawLine(QPointF(left, y), QPointF(right, y));
    paintDepth(p, left, y, lengthText(Feet(n * step_ft), units));
  }
}

/// How far from the rod, every twenty feet or five metres, under the picture.
void PairView::paintFeet(QPainter& p, const Scale& s, double surface) const {
  const DisplayUnits units = m_look->units();
  p.setPen(QPen(m_look->colours().slate, 1));
  p.drawLine(QPointF(s.at(m_bounds.topLeft()).x(), surface), QPointF(s.at(m_bounds.topRight()).x(), surface));
  const double step = units.metres ? 5 : 20;
  const double feet = step * (units.metres ? 1 / si::kMetresPerFoot : 1);
  p.setFont(m_look->font(kType));
  p.setPen(QPen(m_look->colours().slate, 1));
  for (int i = int(std::ceil(m_bounds.left() / feet)); i * feet <= m_bounds.right(); ++i) {
    const double x = s.at({i * feet, 0}).x();
    p.drawLine(QPointF(x, surface), QPointF(x, surface + 4));
    const QString number = numberText(i * step, 0);
    const QString words = i != 0 ? number : QStringLiteral("%1 %2").arg(number, lengthUnit(units));
    p.drawText(QRectF(x - 40, surface + 5, 80, m_look->px(16)), Qt::AlignCenter, words);
  }
}

void PairView::paintTrack(QPainter& p, const Scale& s, bool ofB) const {
  const PairTrack::Frame* frame = track(ofB).at(m_time_s);
  if (frame == nullptr || frame->feet.empty()) return;
  const Colours& c = m_look->colours();
  QPolygonF line;
  for (const QPointF& point : frame->feet) line.append(s.at(point));
  QPen pen(ofB ? c.ochreLine : c.river, 2.4, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
  if (ofB) {
    pen.setStyle(Qt::CustomDashLine);
    pen.setDashPattern({4, 2.5});
  }
  p.setBrush(Qt::NoBrush);
  p.setPen(pen);
  p.drawPolyline(line);
  p.setPen(Qt::NoPen);
  p.setBrush(ofB ? c.ochreLine : c.river);
  p.drawEllipse(line.back(), kFly, kFly);
  p.setFont(m_look->font(kType, true));
  p.setPen(ofB ? c.ochreWord : c.river);
  // The letters of flies that are close stand apart: the upper one above, the lower one below.
  const PairTrack::Frame* other = track(!ofB).at(m_time_s);
  const double gap = other == nullptr || other->feet.empty() ? 0 : line.back().y() - s.at(other->feet.back()).y();
  const bool below = gap > 0 || (gap == 0 && ofB);
  p.drawText(line.back() + QPointF(kFly + 3, below ? m_look->px(13) : -3),
             ofB ? QStringLiteral("B") : QStringLiteral("A"));
}

void PairView::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  if (length_s() <= 0) return;
  if (m_old) p.setOpacity(0.45);
  const Scale s = scale();
  paintGround(p, s);
  paintTrack(p, s, false);
  paintTrack(p, s, true);
}

PairPanel::PairPanel(Look* look, CompareFeed* feed, PairView::Scene scene, QWidget* parent)
    : QWidget(parent), m_look(look) {
  const bool cast = scene == PairView::Scene::cast;
  m_view = new PairView(look, feed, scene, this);
  m_play = new PillButton(look, PillButton::Form::plain, tr("Play"), this);
  m_play->setObjectName(cast ? QStringLiteral("playCasts") : QStringLiteral("playSwings"));
  m_play->setToolTip(cast ? tr("Lets both go together, at a quarter of real time")
                          : tr("Both swing together, four times as fast as on the water"));
  m_slider = new QSlider(Qt::Horizontal, this);
  m_slider->setObjectName(cast ? QStringLiteral("castTime") : QStringLiteral("swingTime"));
  m_slider->setAccessibleName(tr("Time"));
  m_slider->setRange(0, kSliderSteps);
  m_time = new QLabel(this);
  m_words = new QLabel(this);
  m_words->setObjectName(cast ? QStringLiteral("castWords") : QStringLiteral("swingWords"));
  m_caution = new QLabel(cast ? tr("A model of the loop, without stroke, wind or stretch. Keep everyone out "
                                   "of the space behind you.")
                              : tr("Figures for the line, no guide to wading."),
                         this);
  for (QLabel* label : {m_time, m_words, m_caution}) label->setTextFormat(Qt::PlainText);
  for (QLabel* label : {m_words, m_caution}) label->setWordWrap(true);
  // Beside the picture, since the page is low and wide.
  auto* player = new QHBoxLayout;
  player->addWidget(m_play);
  player->addWidget(m_slider, 1);
  player->addWidget(m_time);
  auto* column = new QVBoxLayout;
  column->setSpacing(2);
  column->addLayout(player);
  column->addWidget(m_words);
  column->addWidget(m_caution);
  column->addStretch(1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(16);
  row->addWidget(m_view, 1);
  row->addLayout(column);
  connect(m_play, &PillButton::clicked, this, [this] { m_view->setPlaying(!m_view->playing()); });
  connect(m_slider, &QSlider::valueChanged, this, [this](int value) {
    m_view->setPlaying(false);
    m_view->setTime(m_view->length_s() * value / kSliderSteps);
  });
  connect(m_view, &PairView::timeChanged, this, &PairPanel::follow);
  connect(m_view, &PairView::playingChanged, this, &PairPanel::follow);
  connect(look, &Look::changed, this, &PairPanel::applyLook);
  applyLook();
}

void PairPanel::follow() {
  const QSignalBlocker quiet(m_slider);
  const double length = m_view->length_s();
  m_slider->setValue(length > 0 ? int(std::lround(m_view->time_s() / length * kSliderSteps)) : 0);
  m_slider->setEnabled(length > 0);
  m_play->setEnabled(length > 0);
  m_play->setText(m_view->playing() ? tr("Pause") : tr("Play"));
  m_play->setAccessibleName(m_play->text());
  if (m_words->text() != m_view->state()) {
    m_words->setText(m_view->state());
    giveRoom(m_words, m_look->px(kBeside));
  }
  m_time->setText(tr("%1 s").arg(numberText(m_view->time_s(), length < 10 ? 2 : 0)));
}

void PairPanel::applyLook() {
  m_time->setFont(m_look->font(kType));
  m_time->setMinimumWidth(m_look->px(56));
  m_words->setFont(m_look->font(kWordsType));
  m_caution->setFont(m_look->font(kType));
  QPalette p = m_caution->palette();
  p.setColor(QPalette::WindowText, m_look->colours().slate);
  m_caution->setPalette(p);
  follow();
  for (QLabel* label : {m_words, m_caution}) giveRoom(label, m_look->px(kBeside));
}

}  // namespace grainwise::ui
