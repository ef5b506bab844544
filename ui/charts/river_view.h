// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>
#include <memory>
#include <optional>
#include <vector>

#include "core/model/pool.h"
#include "core/water/band.h"
#include "core/water/swing.h"
#include "ui/charts/line_looks.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// A point of the line in the river, feet: downstream of the rod tip, across, below the surface.
struct RiverPoint {
  double downstream_ft = 0, across_ft = 0, depth_ft = 0;
  LineLooks::At look;
  [[nodiscard]] double out_ft() const;  ///< level distance from the rod tip
};
struct RiverFrame {
  double time_s = 0;
  std::vector<RiverPoint> line;  ///< from the fly to the rod tip
};
/// A whole swing to play.
struct RiverPicture {
  struct Current {
    double depth_ft = 0;
    double share = 0;  ///< of the surface's
  };
  std::vector<RiverFrame> frames;
  std::vector<Current> current;
  double bed_ft = 0;
  double afterMend_s = 0;
  double front_ft = 0;  ///< from the head to the fly
  SwingResult swing;  ///< its figures, without the track
  [[nodiscard]] double length_s() const { return frames.empty() ? 0 : frames.back().time_s; }
};

/// The swing, played: at the left from the side and true to scale, rod left (behind a break mark where the
/// whole line has no room) and fly right, with the bed, the current by depth, the line as on the strip, the depth band as a wash and the wanted water between
/// two lines; at the right from above, the fly's track drawn darker and wider the deeper it is.
class RiverView : public QWidget {
  Q_OBJECT
 public:
  explicit RiverView(Look* look, QWidget* parent = nullptr);

  void setPicture(std::shared_ptr<const RiverPicture> picture);
  void setBand(std::optional<DepthBand> band);
  /// Depths between which the fly is wanted.
  void setWanted(std::optional<FeetRange> wanted);
  void setStale(bool stale);
  void setReason(const QString& words);

  [[nodiscard]] double time_s() const { return m_time_s; }
  void setTime(double time_s);
  [[nodiscard]] bool playing() const { return m_timer.isActive(); }
  void setPlaying(bool playing);
  void setSpeed(double speed) { m_speed = speed; }
  /// Moves the swing on by wall-clock time, as the timer does; for tests.
  void advance(double wall_ms);
  /// The frame that is shown; null without a picture.
  [[nodiscard]] const RiverFrame* shownFrame() const;
  [[nodiscard]] bool stale() const { return m_stale; }
  /// Whether a break mark stands between the rod and the front of the line.
  [[nodiscard]] bool broken() const;

  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  void timeChanged(double time_s);
  void playingChanged(bool playing);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Side;
  struct Plan;
  [[nodiscard]] Side side() const;
  [[nodiscard]] Plan plan() const;
  [[nodiscard]] QString depthText(double depth_ft) const;
  void paintWater(QPainter& p, const Side& s) const;
  void paintBand(QPainter& p, const Side& s) const;
  void paintCurrent(QPainter& p, const Side& s) const;
  void paintRod(QPainter& p, const Side& s, const RiverFrame& frame) const;
  void paintLine(QPainter& p, const Side& s, const RiverFrame& frame) const;
  void paintPlan(QPainter& p, const Plan& plan, const RiverFrame& frame) const;
  void describe();

  Look* m_look;
  std::shared_ptr<const RiverPicture> m_picture;
  std::optional<DepthBand> m_band;
  std::optional<FeetRange> m_wanted;
  QString m_reason;
  bool m_stale = false;
  double m_time_s = 0;
  double m_speed = 4;
  QTimer m_timer;
  QElapsedTimer m_clock;
};

}  // namespace grainwise::ui
