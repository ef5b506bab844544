// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/model/rig.h"
#include "ui/theme/look.h"

namespace grainwise {
struct Analysis;
}

namespace grainwise::ui {

class Ruler;

/// The last six feet, magnified, so that leader, tippet and fly can be seen and grabbed while the ruler
/// stays true. Only there when the scale of the line makes it useful.
class Lens : public QWidget {
  Q_OBJECT
 public:
  Lens(Look* look, QWidget* parent);

  /// Whether a lens helps at this scale: there are short parts at the front, and feet are narrow.
  [[nodiscard]] static bool useful(const Rig& rig, const Analysis& analysis, const Ruler& ruler,
                                   const Look& look);
  void magnify(const Rig& rig, const Analysis& analysis, double pixelsPerGrain, double pixelsPerFoot);
  [[nodiscard]] int wantedWidth(double pixelsPerFoot) const;
  [[nodiscard]] int wantedHeight() const;
  /// First part that the lens shows; parts from here on have their captions in it.
  [[nodiscard]] std::size_t firstPart() const { return m_first; }
  /// Where a part stands in the lens.
  [[nodiscard]] QRectF boxOf(std::size_t part) const;
  void setSelected(std::optional<std::size_t> part);

 Q_SIGNALS:
  void pressed(std::size_t part);
  void dragged(std::size_t part);
  void activated(std::size_t part);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;

 private:
  [[nodiscard]] std::optional<std::size_t> partAt(const QPointF& at) const;
  [[nodiscard]] double x(double station_ft) const;
  void paintWords(QPainter& p, double right) const;

  Look* m_look;
  const Rig* m_rig = nullptr;
  const Analysis* m_analysis = nullptr;
  double m_pixelsPerGrain = 2;
  double m_pixelsPerFoot = 50;
  std::size_t m_first = 0;
  std::optional<std::size_t> m_selected;
  QPoint m_pressedAt;
};

}  // namespace grainwise::ui
