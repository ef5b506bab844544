// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPropertyAnimation>
#include <QWidget>

#include "ui/strip/silhouette.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// One part on the line: its silhouette true to scale, its caption where it fits inside. Takes focus,
/// is pressed, dragged and asked for its menu; what follows is the strip's to decide.
class Block : public QWidget {
  Q_OBJECT
 public:
  Block(Look* look, QWidget* parent);

  struct Picture {
    Silhouette shape;
    QString caption;      ///< drawn inside when it fits there, else the strip draws it
    bool captionInside = false;
    QRectF line;          ///< where the line stands, in the strip's coordinates, unrounded
    double pixelsPerGrain = 1;
  };
  void setPicture(const Picture& picture);
  [[nodiscard]] const Picture& picture() const { return m_picture; }

  void setIndex(std::size_t index);
  [[nodiscard]] std::size_t index() const { return m_index; }
  void setSelected(bool selected);
  /// Drawn faintly: the block is in the hand just now.
  void setLifted(bool lifted);
  /// Puts the block where it belongs, sliding there when `slide`.
  void moveTo(const QRect& place, bool slide);

 Q_SIGNALS:
  void pressed(std::size_t index);
  void dragged(std::size_t index);
  void activated(std::size_t index);
  void menuWanted(std::size_t index, const QPoint& global);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  Look* m_look;
  std::size_t m_index = 0;
  Picture m_picture;
  bool m_selected = false;
  bool m_lifted = false;
  QPoint m_pressedAt;
  QPropertyAnimation* m_slide;
};

}  // namespace grainwise::ui
