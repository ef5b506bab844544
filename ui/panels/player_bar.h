// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/theme/look.h"

class QComboBox;
class QPushButton;
class QSlider;

namespace grainwise::ui {

/// Play and pause, a scrubber over time, and how fast: real time, 1/2, 1/4 or 1/10 of it (or, for a
/// swing, faster).
class PlayerBar : public QWidget {
  Q_OBJECT
 public:
  struct Speed {
    QString words;
    double times;
  };
  PlayerBar(Look* look, const QList<Speed>& speeds, int chosen, QWidget* parent = nullptr);

  void setLength(double length_s);
  void setTime(double time_s);
  void setPlaying(bool playing);
  [[nodiscard]] double speed() const;
  [[nodiscard]] QPushButton* play() const { return m_play; }
  [[nodiscard]] QSlider* scrubber() const { return m_scrubber; }

 Q_SIGNALS:
  void playWanted(bool play);
  void timeWanted(double time_s);
  void speedWanted(double times);

 private:
  void applyLook();

  Look* m_look;
  QList<Speed> m_speeds;
  QPushButton* m_play;
  QSlider* m_scrubber;
  QComboBox* m_speed;
  bool m_playing = false;
};

}  // namespace grainwise::ui
