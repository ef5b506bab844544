// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "ui/strip/silhouette.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// One part on the line: its silhouette true to scale, its caption where that fits inside. Takes focus,
/// is pressed, dragged and asked for its menu; what follows is the strip's to decide.
class Block : public QWidget {
  Q_OBJECT
 public:
  Block(Look* look, QWidget* parent);

  struct Picture {
    Silhouette shape;
    double pixelsPerGrain = 1;
    QString caption;          ///< drawn inside; empty when it stands elsewhere
    double captionShare = 0.5;  ///< its middle as a share of the line's length
    bool operator==(const Picture&) const = default;
  };
  void setPicture(const Picture& picture);
  [[nodiscard]] const Picture& picture() const { return m_picture; }

  /// Where the line stands in the strip, unrounded; the widget is the whole of what can be hit.
  void setLine(const QRectF& line);
  [[nodiscard]] const QRectF& line() const { return m_line; }

  void setIndex(std::size_t index);
  [[nodiscard]] std::size_t index() const { return m_index; }
  void setSelected(bool selected);
  [[nodiscard]] bool isSelected() const { return m_selected; }
  /// It is where a part in the hand would land.
  void setLanding(bool landing);
  [[nodiscard]] bool isLanding() const { return m_landing; }
  /// Name for the ear, and the words that a resting pointer brings.
  void setWords(const QString& spoken, const QString& toolTip);

  /// Asked for from outside: the context menu, the keyboard, a screen reader.
  void askToOpen() { Q_EMIT activated(m_index); }
  void askToMove(int by) { Q_EMIT moveWanted(m_index, by); }
  void askToSelect() { Q_EMIT pressed(m_index); }

 Q_SIGNALS:
  void pressed(std::size_t index);
  void focused(std::size_t index);
  void dragged(std::size_t index);
  void activated(std::size_t index);
  void moveWanted(std::size_t index, int by);
  void menuWanted(std::size_t index, const QPoint& global);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;

 private:
  void paintCaption(QPainter& p, const QRectF& line) const;
  [[nodiscard]] QRectF captionBox(const QRectF& line) const;
  void paintMarks(QPainter& p) const;

  Look* m_look;
  std::size_t m_index = 0;
  Picture m_picture;
  QRectF m_line;
  bool m_selected = false;
  bool m_landing = false;
  std::optional<QPoint> m_pressedAt;
};

}  // namespace grainwise::ui
