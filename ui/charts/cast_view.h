// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QPointF>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <vector>

#include "ui/charts/axis_ticks.h"
#include "ui/charts/line_looks.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// One instant of an unrolling loop: nodes from the rod tip to the fly (x away from the caster, y above
/// the water, metres) and where the energy is (joules).
struct CastFrame {
  double time_s = 0;
  std::vector<QPointF> line_m;
  double moving_J = 0;
  double toAir_J = 0;
  double toFly_J = 0;
};

/// Where the energy of a cast is, as shares of all of it: they sum to 1. No share before there is energy.
struct EnergyShares {
  double moving = 0, toAir = 0, toFly = 0;
};
EnergyShares energyShares(const CastFrame& frame);

/// A whole cast to play: frames in order of time, and for each link of the line how thick it is drawn.
struct CastPicture {
  std::vector<CastFrame> frames;
  std::vector<LineLooks::At> links;
  double rodTip_m = 0;
  double rodLength_m = 0;
  bool turnsOver = false;
  Feet endHeight;          ///< of the fly above the water
  [[nodiscard]] double length_s() const { return frames.empty() ? 0 : frames.back().time_s; }
};

/// Draws a cast true to scale, rod left and fly right, and plays it: the line to its mass per foot, the
/// fly, thin ghosts of the frames before, axes of height and distance in the person's units, and under the
/// loop a bar that says where the energy is. A picture that no longer belongs to the rig is marked as old.
class CastView : public QWidget {
  Q_OBJECT
 public:
  explicit CastView(Look* look, QWidget* parent = nullptr);

  void setPicture(std::shared_ptr<const CastPicture> picture);
  void setStale(bool stale);
  [[nodiscard]] bool stale() const { return m_stale; }
  /// Words in the place of a picture: why there is none.
  void setReason(const QString& words);

  [[nodiscard]] double time_s() const { return m_time_s; }
  void setTime(double time_s);
  [[nodiscard]] bool playing() const { return m_timer.isActive(); }
  void setPlaying(bool playing);
  /// 1, 1/2, 1/4 or 1/10 of real time.
  void setSpeed(double speed) { m_speed = speed; }
  /// Moves the cast on by wall-clock time, as the timer does; for tests.
  void advance(double wall_ms);
  /// The frame that is shown; null without a picture.
  [[nodiscard]] const CastFrame* shownFrame() const;
  /// Times of the frames that are drawn thin behind the shown one, in order.
  [[nodiscard]] std::vector<double> ghosts_s() const;
  /// What stands at the axes now, in the person's unit.
  [[nodiscard]] std::vector<AxisTick> distances() const;
  [[nodiscard]] std::vector<AxisTick> heights() const;

  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  void timeChanged(double time_s);
  void playingChanged(bool playing);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Scale;
  [[nodiscard]] Scale scale() const;
  [[nodiscard]] std::size_t frameAt(double time_s) const;
  [[nodiscard]] std::vector<std::size_t> ghosts() const;
  [[nodiscard]] double metresPerUnit() const;
  void paintAxes(QPainter& p, const Scale& s) const;
  void paintRod(QPainter& p, const Scale& s) const;
  void paintGhosts(QPainter& p, const Scale& s) const;
  void paintLine(QPainter& p, const Scale& s, const CastFrame& frame) const;
  void paintEnergy(QPainter& p, const CastFrame& frame) const;
  void describe();

  Look* m_look;
  std::shared_ptr<const CastPicture> m_picture;
  QString m_reason;
  bool m_stale = false;
  double m_time_s = 0;
  double m_speed = 0.25;
  QTimer m_timer;
  QElapsedTimer m_clock;
};

}  // namespace grainwise::ui
