// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <vector>

#include "ui/panels/choice_list.h"

namespace grainwise::ui {

/// Every tip that has a depth as a dot: how well it carries the fly to the right, how deep it fishes
/// downwards, the wanted water as a band. Names stand wherever there is room for one, the best first, and
/// never on one another; the one under the pointer, and the one that is gone to by click or arrow key, is
/// always named. Enter takes that one.
class DepthMap : public QWidget {
  Q_OBJECT
 public:
  DepthMap(Look* look, const ChoiceList* list, QWidget* parent = nullptr);

  void setMarked(int row);
  [[nodiscard]] int marked() const { return m_marked; }
  /// Where the dot of a row stands; nothing when the row has no depth or no drive.
  [[nodiscard]] std::optional<QPointF> dotOf(int row) const;
  /// A name and where it stands.
  struct Name {
    int row = -1;
    QString words;
    QRectF box;
  };
  [[nodiscard]] std::vector<Name> names() const;
  /// What the map shows, in words.
  [[nodiscard]] QString summary() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 Q_SIGNALS:
  /// The pointer is over a dot; -1: over none any more.
  void previewed(int row);
  void chosen(int row);
  void taken(int row);
  void escaped();

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] QRectF plot() const;
  [[nodiscard]] double deepest_ft() const;
  [[nodiscard]] int rowAt(const QPointF& place) const;
  [[nodiscard]] int next(int step, bool byDepth) const;
  [[nodiscard]] QRectF dotBox(const QPointF& dot) const;
  [[nodiscard]] QString nameOf(int row) const;
  void hover(int row);
  void speak();
  void paintAxes(QPainter& p) const;
  void paintDots(QPainter& p) const;
  void paintNames(QPainter& p) const;

  Look* m_look;
  const ChoiceList* m_list;
  int m_marked = -1;
  int m_hovered = -1;
};

}  // namespace grainwise::ui
