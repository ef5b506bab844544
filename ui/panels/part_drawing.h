// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPoint>
#include <QWidget>
#include <functional>
#include <optional>

#include "core/model/part.h"
#include "ui/theme/look.h"

class QDrag;

namespace grainwise::ui {

/// A drawing of something being made that is dragged up onto the line, or placed with Enter.
class PartDrawing : public QWidget {
  Q_OBJECT
 public:
  PartDrawing(Look* look, QWidget* parent);

  void setPart(std::optional<Part> part, const QString& spoken);
  [[nodiscard]] const std::optional<Part>& part() const { return m_part; }
  std::function<Qt::DropAction(QDrag*)> runDrag;

 Q_SIGNALS:
  void placed();

 protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  /// Draws the part in `inside`; the card and its focus are drawn already.
  virtual void paintPart(QPainter& p, const QRectF& inside) = 0;
  [[nodiscard]] Look* look() const { return m_look; }

 private:
  Look* m_look;
  std::optional<Part> m_part;
  QPoint m_pressed;
};

/// A leader: its pieces to scale along their length, thickness magnified, with diameter and cut under
/// each.
class LeaderDrawing : public PartDrawing {
  Q_OBJECT
 public:
  using PartDrawing::PartDrawing;
  struct Piece {
    double length = 0;
    double diameter = 0;
    QString above;
    QString below;
    bool fluorocarbon = false;
  };
  void setPieces(const QList<Piece>& pieces);
  /// What the measure below the drawing says; empty until it has been drawn.
  [[nodiscard]] QString scale() const { return m_scale; }

 protected:
  void paintPart(QPainter& p, const QRectF& inside) override;

 private:
  QList<Piece> m_pieces;
  QString m_scale;
};

/// A fly: what it is made of, to one scale: shank, beads, eyes, wraps, the dressing around them.
class FlyDrawing : public PartDrawing {
  Q_OBJECT
 public:
  using PartDrawing::PartDrawing;
  struct Shape {
    double shank_mm = 0;
    double wire_mm = 1;
    double width_mm = 0;   ///< of the dressing
    QList<double> beads_mm;
    QList<double> eyes_mm;
    double wraps_mm = 0;   ///< how far they reach along the shank
  };
  void setShape(const Shape& shape);

 protected:
  void paintPart(QPainter& p, const QRectF& inside) override;

 private:
  Shape m_shape;
};

}  // namespace grainwise::ui
