// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QElapsedTimer>
#include <QPointF>
#include <QTimer>
#include <QWidget>
#include <array>
#include <vector>

#include "ui/theme/look.h"

class QLabel;
class QSlider;

namespace grainwise::ui {

class CompareFeed;
class PillButton;

/// A line through time, seen from the side: feet away from the rod and above the water, rod to fly.
struct PairTrack {
  struct Frame {
    double time_s = 0;
    std::vector<QPointF> feet;
  };
  std::vector<Frame> frames;
  QString words;  ///< how it ended
  [[nodiscard]] double length_s() const { return frames.empty() ? 0 : frames.back().time_s; }
  /// The frame at a time; the first before it begins, the last when it is over.
  [[nodiscard]] const Frame* at(double time_s) const;
};

/// Both lines in one picture, true to scale, rod left and fly right, at one time: the loops of two casts
/// let go together, or the lines of two swings that landed together. A solid, B dashed.
class PairView : public QWidget {
  Q_OBJECT
 public:
  enum class Scene { cast, river };
  PairView(Look* look, CompareFeed* feed, Scene scene, QWidget* parent = nullptr);

  [[nodiscard]] const PairTrack& track(bool ofB) const { return m_tracks[ofB ? 1 : 0]; }
  [[nodiscard]] double length_s() const;
  [[nodiscard]] double time_s() const { return m_time_s; }
  void setTime(double time_s);
  [[nodiscard]] bool playing() const { return m_timer.isActive(); }
  void setPlaying(bool playing);
  /// Moves both on by wall-clock time, as the timer does; for tests.
  void advance(double wall_ms);
  [[nodiscard]] QString summary() const;
  /// The summary, and whether it is of before the last change.
  [[nodiscard]] QString state() const;
  /// How large both are drawn.
  [[nodiscard]] double pixelsPerFoot() const;
  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

 Q_SIGNALS:
  void timeChanged();
  void playingChanged();

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Scale {
    QPointF origin;
    double pixelsPerFoot = 1;
    [[nodiscard]] QPointF at(const QPointF& feet) const {
      return {origin.x() + feet.x() * pixelsPerFoot, origin.y() - feet.y() * pixelsPerFoot};
    }
  };
  void refresh();
  [[nodiscard]] QRectF box() const;
  [[nodiscard]] Scale scale() const;
  void paintGround(QPainter& p, const Scale& s) const;
  void paintDepth(QPainter& p, double left, double y, const QString& words) const;
  void paintHeights(QPainter& p, const Scale& s) const;
  void paintFeet(QPainter& p, const Scale& s, double surface) const;
  void paintTrack(QPainter& p, const Scale& s, bool ofB) const;

  Look* m_look;
  CompareFeed* m_feed;
  Scene m_scene;
  std::array<PairTrack, 2> m_tracks;
  std::array<double, 2> m_bed_ft{};
  QRectF m_bounds;  ///< feet that both take up, y upwards
  bool m_old = false;
  bool m_begun = false;  ///< a time has been shown before
  double m_time_s = 0;
  QTimer m_timer;
  QElapsedTimer m_clock;
};

/// The picture; beside it its player, how both end, and one quiet caution.
class PairPanel : public QWidget {
  Q_OBJECT
 public:
  PairPanel(Look* look, CompareFeed* feed, PairView::Scene scene, QWidget* parent = nullptr);
  [[nodiscard]] PairView* view() const { return m_view; }

 private:
  void follow();
  void applyLook();

  Look* m_look;
  PairView* m_view;
  PillButton* m_play;
  QSlider* m_slider;
  QLabel* m_time;
  QLabel* m_words;
  QLabel* m_caution;
};

}  // namespace grainwise::ui
