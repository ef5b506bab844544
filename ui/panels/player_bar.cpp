// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/player_bar.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QPushButton>
#include <QSignalBlocker>
#include <QSlider>
#include <cmath>

namespace grainwise::ui {
namespace {
constexpr double kTicksPerSecond = 100;
constexpr int kType = 15;
}  // namespace

PlayerBar::PlayerBar(Look* look, const QList<Speed>& speeds, int chosen, QWidget* parent)
    : QWidget(parent), m_look(look), m_speeds(speeds) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(8);
  m_play = new QPushButton(this);
  m_play->setObjectName(QStringLiteral("play"));
  m_scrubber = new QSlider(Qt::Horizontal, this);
  m_scrubber->setObjectName(QStringLiteral("scrubber"));
  m_scrubber->setAccessibleName(tr("Time"));
  m_speed = new QComboBox(this);
  m_speed->setObjectName(QStringLiteral("playSpeed"));
  m_speed->setAccessibleName(tr("How fast it plays"));
  for (const Speed& each : speeds) m_speed->addItem(each.words);
  m_speed->setCurrentIndex(chosen);
  row->addWidget(m_play);
  row->addWidget(m_scrubber, 1);
  row->addWidget(m_speed);
  connect(m_play, &QPushButton::clicked, this, [this] { Q_EMIT playWanted(!m_playing); });
  connect(m_scrubber, &QSlider::valueChanged, this,
          [this](int at) { Q_EMIT timeWanted(at / kTicksPerSecond); });
  connect(m_speed, &QComboBox::currentIndexChanged, this, [this] { Q_EMIT speedWanted(speed()); });
  connect(look, &Look::changed, this, &PlayerBar::applyLook);
  setPlaying(false);
  applyLook();
}

void PlayerBar::setLength(double length_s) {
  const QSignalBlocker quiet(m_scrubber);
  m_scrubber->setRange(0, int(std::ceil(length_s * kTicksPerSecond)));
}

void PlayerBar::setTime(double time_s) {
  const QSignalBlocker quiet(m_scrubber);
  m_scrubber->setValue(int(std::lround(time_s * kTicksPerSecond)));
}

void PlayerBar::setPlaying(bool playing) {
  m_playing = playing;
  m_play->setText(playing ? tr("Pause") : tr("Play"));
}

double PlayerBar::speed() const { return m_speeds[m_speed->currentIndex()].times; }

void PlayerBar::applyLook() {
  m_play->setFont(m_look->font(kType));
  m_speed->setFont(m_look->font(kType));
  m_play->setMinimumSize(m_look->px(72), m_look->px(32));
  m_speed->setMinimumHeight(m_look->px(32));
}

}  // namespace grainwise::ui
