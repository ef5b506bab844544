// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/panels/choice_list.h"

namespace grainwise::ui {

/// Every tip that has a depth as a dot: how well it carries the fly to the right, how deep it fishes
/// downwards, the wanted water as a band. Those that fit best, and the one that is on, have names. A
/// click on a dot chooses it in the list.
class DepthMap : public QWidget {
  Q_OBJECT
 public:
  DepthMap(Look* look, const ChoiceList* list, QWidget* parent = nullptr);

  void setMarked(int row);
  /// Where the dot of a row stands; nothing when the row has no depth or no drive.
  [[nodiscard]] std::optional<QPointF> dotOf(int row) const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  void chosen(int row);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;

 private:
  [[nodiscard]] QRectF plot() const;
  [[nodiscard]] double deepest_ft() const;
  void paintAxes(QPainter& p) const;
  void paintDots(QPainter& p) const;
  void paintName(QPainter& p, int row, QList<QRectF>& taken) const;
  void paintNames(QPainter& p) const;

  Look* m_look;
  const ChoiceList* m_list;
  int m_marked = -1;
};

}  // namespace grainwise::ui
