// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/cast_panel.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include "core/air/air.h"
#include "core/air/cast_setup.h"
#include "core/model/edits.h"
#include "ui/charts/cast_feed.h"
#include "ui/charts/rig_tables.h"
#include "ui/charts/way_out.h"
#include "ui/document/rig_document.h"
#include "ui/panels/player_bar.h"
#include "ui/panels/slider_row.h"
#include "ui/text/quantities.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kSmallType = 14;
constexpr int kSliders = 310;
constexpr int kWords = 210;
// What the sliders offer: sane casts, well inside what a file may say.
constexpr double kSpeedLow = 20, kSpeedHigh = 110;
constexpr double kLoopLow = 1, kLoopHigh = 10;
constexpr double kLaunchLow = -5, kLaunchHigh = 25;
constexpr double kTipLow = 2, kTipHigh = 20;
constexpr double kAltitudeHigh = 12000;

QString lengthWords(double ft, DisplayUnits units) { return lengthText(Feet(ft), units); }
QString altitudeWords(double ft, DisplayUnits units) { return altitudeText(Feet(ft), units); }
QString speedWords(double ft_per_s, DisplayUnits units) {
  return speedText(FeetPerSecond(ft_per_s), units);
}
QString angleWords(double deg, DisplayUnits) { return numberText(deg, 1) + QChar(0x00b0); }
}  // namespace

CastPanel::CastPanel(Look* look, RigDocument* document, AnalysisFeed* feed, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_feed(feed) {
  setObjectName(QStringLiteral("castPanel"));
  m_casts = new CastFeed(feed, this);
  m_view = new CastView(look, this);
  (new WayOut(look, m_view))->addWidget(tr("Cast"), [this] {
    return castTable(m_picture.get(), m_look->units());
  });
  m_view->setObjectName(QStringLiteral("castView"));
  m_player = new PlayerBar(look,
                           {{tr("real time"), 1.0}, {tr("1/2"), 0.5}, {tr("1/4"), 0.25}, {tr("1/10"), 0.1}},
                           2, this);
  m_view->setSpeed(m_player->speed());
  m_result = new QLabel(this);
  m_result->setObjectName(QStringLiteral("castResult"));
  m_caution = new QLabel(tr("Where you cast for real: eyes covered, hooks and power lines far from people "
                            "and rod."),
                         this);
  m_learner = new QCheckBox(tr("A learner: 20 % less speed"), this);
  m_learner->setObjectName(QStringLiteral("learner"));
  m_reset = new QPushButton(tr("Usual cast and air"), this);
  m_reset->setObjectName(QStringLiteral("usualCast"));
  layOut();

  connect(m_player, &PlayerBar::playWanted, m_view, &CastView::setPlaying);
  connect(m_player, &PlayerBar::timeWanted, this, [this](double time_s) {
    m_view->setPlaying(false);
    m_view->setTime(time_s);
  });
  connect(m_player, &PlayerBar::speedWanted, m_view, &CastView::setSpeed);
  connect(m_view, &CastView::timeChanged, m_player, &PlayerBar::setTime);
  connect(m_view, &CastView::playingChanged, m_player, &PlayerBar::setPlaying);
  connect(m_casts, &CastFeed::started, m_view, [this] { m_view->setStale(true); });
  connect(m_casts, &CastFeed::arrived, this, &CastPanel::take);
  connect(m_reset, &QPushButton::clicked, this, &CastPanel::reset);
  connect(document, &RigDocument::rigChanged, this, &CastPanel::refresh);
  connect(look, &Look::changed, this, &CastPanel::applyLook);
  applyLook();
  refresh();
}

/// The loop, the sliders, the words: side by side, since the drawer is low.
void CastPanel::layOut() {
  auto* sliders = new QVBoxLayout;
  sliders->setSpacing(0);
  sliders->addWidget(m_player);
  addSliders(sliders);
  sliders->addStretch(1);
  auto* words = new QVBoxLayout;
  words->setSpacing(2);  // all of it stands in the drawer of a 720 line screen
  words->addWidget(m_learner);
  for (QLabel* label : {m_result, m_caution}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    words->addWidget(label);
  }
  words->addWidget(m_reset, 0, Qt::AlignLeft);
  words->addStretch(1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 0);
  row->setSpacing(16);
  row->addWidget(m_view, 1);
  row->addLayout(sliders);
  row->addLayout(words);
}

void CastPanel::addSliders(QVBoxLayout* column) {
  m_speed = new SliderRow(m_look, tr("Line speed"), kSpeedLow, kSpeedHigh, 1, speedWords, this);
  m_loop = new SliderRow(m_look, tr("Loop"), kLoopLow, kLoopHigh, 0.25, lengthWords, this);
  m_launch = new SliderRow(m_look, tr("Upwards"), kLaunchLow, kLaunchHigh, 0.5, angleWords, this);
  m_rodTip = new SliderRow(m_look, tr("Rod tip"), kTipLow, kTipHigh, 0.5, lengthWords, this);
  m_altitude = new SliderRow(m_look, tr("Altitude"), 0, kAltitudeHigh, 100, altitudeWords, this);
  bind(m_speed, "line_speed_ft_per_s", &Cast::lineSpeed, tr("Line speed"));
  bind(m_loop, "loop_ft", &Cast::loop, tr("Loop"));
  bind(m_launch, "launch_deg", &Cast::launch, tr("Launch angle"));
  bind(m_rodTip, "rod_tip_ft", &Cast::rodTip, tr("Rod tip"));
  bind(m_altitude, "air_altitude_ft", &Cast::airAltitude, tr("Altitude"));
  connect(m_learner, &QCheckBox::toggled, this, [this](bool learner) {
    Conditions conditions = m_feed->conditions();
    conditions.learner = learner;
    m_feed->setConditions(conditions);
  });
  for (SliderRow* row : {m_speed, m_loop, m_launch, m_rodTip, m_altitude}) {
    column->addWidget(row);
    connect(row, &SliderRow::gestureEnded, this, &CastPanel::playWhenLetGo);
  }
}

template <class Q>
void CastPanel::bind(SliderRow* row, const char* key, std::optional<Q> Cast::*member,
                     const QString& step) {
  row->slider()->setObjectName(QLatin1String(key));
  connect(row, &SliderRow::moved, this, [this, row, key, member, step](double value) {
    Cast cast = m_document->rig().cast.value_or(Cast{});
    cast.*member = Q(value);
    keepDigits(cast.kept, key, value, {});
    m_document->apply(step, edits::withCast(m_document->rig(), cast),
                      QStringLiteral("cast/%1/%2").arg(QLatin1String(key)).arg(row->gesture()));
  });
}

/// The rig says nothing of its cast and its air any more.
void CastPanel::reset() {
  m_document->apply(tr("Usual cast"), edits::withCast(m_document->rig(), std::nullopt));
}

void CastPanel::refresh() {
  if (!isVisible()) return;
  m_reset->setEnabled(m_document->rig().cast.has_value());
  const CastSetup cast = castSetup(*m_document->shown(), false);
  m_speed->setValue(cast.lineSpeed.value());
  m_loop->setValue(cast.loop.value());
  m_launch->setValue(cast.launch.value());
  m_rodTip->setValue(cast.rodTip.value());
  m_altitude->setValue(cast.airAltitude.value_or(kUsualAirAltitude).value());
}

void CastPanel::take(const std::shared_ptr<const CastPicture>& picture, const QString& reason) {
  m_picture = picture;
  if (!picture) {
    m_view->setReason(reason);
    m_player->setEnabled(false);
    m_result->clear();
    return;
  }
  m_player->setEnabled(true);
  m_player->setLength(picture->length_s());
  m_view->setPicture(picture);
  m_playLater = held();
  if (!m_playLater) playOnce();
  applyLook();
}

/// From its start to its end, once; with reduced motion it stands half way until somebody plays it.
void CastPanel::playOnce() {
  m_playLater = false;
  if (m_look->reduceMotion()) {
    if (m_view->time_s() == 0) m_view->setTime(m_picture->length_s() / 2);
    return;
  }
  m_view->setPlaying(false);
  m_view->setTime(0);
  m_view->setPlaying(true);
}

void CastPanel::playWhenLetGo() {
  if (m_playLater && m_picture && !m_casts->busy()) playOnce();
}

bool CastPanel::held() const {
  for (const SliderRow* row : {m_speed, m_loop, m_launch, m_rodTip, m_altitude}) {
    if (row->held()) return true;
  }
  return false;
}

namespace {

QString resultWords(const CastPicture& cast, DisplayUnits units) {
  if (!cast.turnsOver) return CastPanel::tr("The fly never comes round: the loop dies on the way.");
  if (cast.endHeight <= Feet(0)) {
    return CastPanel::tr("The line is on the water before it is out: more line speed, or aim higher.");
  }
  return CastPanel::tr("Turns over after %1 s, %2 above the water.")
      .arg(numberText(cast.length_s(), 2), roundLengthText(cast.endHeight, units));
}

}  // namespace

void CastPanel::applyLook() {
  const DisplayUnits units = m_look->units();
  m_result->setFont(m_look->font(kType));
  m_caution->setFont(m_look->font(kSmallType));
  m_learner->setFont(m_look->font(kType));
  m_reset->setFont(m_look->font(kType));
  m_reset->setToolTip(tr("Speed, loop, angle and rod tip as usual for this head, the air of %1")
                          .arg(altitudeText(kUsualAirAltitude, units)));
  m_reset->setMinimumHeight(m_look->px(26));
  QPalette quiet = m_caution->palette();
  quiet.setColor(QPalette::WindowText, m_look->colours().slate);
  m_caution->setPalette(quiet);
  m_player->setFixedWidth(m_look->px(kSliders));
  if (m_picture) m_result->setText(resultWords(*m_picture, units));
  for (QLabel* label : {m_result, m_caution}) giveRoom(label, m_look->px(kWords));
}

void CastPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
  m_casts->setActive(true);
}

void CastPanel::hideEvent(QHideEvent* event) {
  QWidget::hideEvent(event);
  m_view->setPlaying(false);
  m_casts->setActive(false);
}

}  // namespace grainwise::ui
