// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPointF>
#include <QWidget>

#include "core/units/station.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

class CompareFeed;
class Ruler;

/// What each foot weighs, of both rigs on one ruler: A solid, B dashed, the difference shaded on the
/// side of the heavier. The feet stand on its upper edge, under the two lines. The cursor is moved as
/// on the bench: Left and Right, a click or a drag.
class CompareChart : public QWidget {
  Q_OBJECT
 public:
  enum class Align { rear, fly };
  CompareChart(Look* look, CompareFeed* feed, Ruler* rulerA, Ruler* rulerB, QWidget* parent = nullptr);

  void setAlign(Align align);
  /// Which ruler is whose, after a swap.
  void setRulers(Ruler* rulerA, Ruler* rulerB);
  /// "14.0 ft: A 24.1, B 22.0 gr/ft, B 2.1 lighter".
  [[nodiscard]] QString readout() const;
  /// Shown mass per length of one rig at a pixel.
  [[nodiscard]] double massAt(bool ofB, double x) const;

  [[nodiscard]] QSize minimumSizeHint() const override;
  [[nodiscard]] QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;

 private:
  void refresh();
  [[nodiscard]] QRectF plot() const;
  [[nodiscard]] double y(double mass) const;
  [[nodiscard]] QList<QPointF> onScreen(const QList<QPointF>& points, const Ruler& ruler) const;
  void paintRule(QPainter& p) const;
  void paintGrid(QPainter& p) const;
  void paintShade(QPainter& p) const;
  void paintCursor(QPainter& p) const;
  void setCursorAt(Station station);

  Look* m_look;
  CompareFeed* m_feed;
  Ruler* m_rulerA;
  Ruler* m_rulerB;
  Align m_align = Align::rear;
  QList<QPointF> m_a, m_b;
  double m_top = 10;
};

}  // namespace grainwise::ui
