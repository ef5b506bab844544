// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "ui/strip/silhouette.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// The last six feet, magnified, so that leader, tippet and fly can be seen and grabbed while the ruler
/// stays true. What is pressed, dragged or asked for here is the part itself. It shows nothing that the
/// blocks do not say, so it is no stop for the keyboard.
class Lens : public QWidget {
  Q_OBJECT
 public:
  Lens(Look* look, QWidget* parent);
  static constexpr double kFeet = 6.0;

  struct Item {
    std::size_t index = 0;
    Silhouette shape;
    double from = 0;  ///< feet from the rod end of the lens; below 0 for what begins before it
    double to = 0;
    QStringList captions;  ///< ever shorter; none for what begins before the lens
  };
  void magnify(std::vector<Item> items, double pixelsPerGrain, double pixelsPerFoot);
  [[nodiscard]] int wantedWidth(double pixelsPerFoot) const;
  [[nodiscard]] static int heightFor(const Look& look);
  /// Whether the lens shows the whole of a part, with its caption.
  [[nodiscard]] bool shows(std::size_t part) const;
  /// Where a part stands in the lens.
  [[nodiscard]] QRectF boxOf(std::size_t part) const;
  void mark(std::optional<std::size_t> selected, std::optional<std::size_t> landing);

 Q_SIGNALS:
  void pressed(std::size_t part);
  void dragged(std::size_t part);
  void activated(std::size_t part);
  void menuWanted(std::size_t part, const QPoint& global);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;

 private:
  [[nodiscard]] QRectF boxOf(const Item& item) const;
  [[nodiscard]] std::optional<std::size_t> partAt(const QPointF& at) const;
  [[nodiscard]] double lineMiddle() const;
  void paintCaptions(QPainter& p) const;

  Look* m_look;
  std::vector<Item> m_items;
  double m_pixelsPerGrain = 2;
  double m_pixelsPerFoot = 50;
  std::optional<std::size_t> m_selected;
  std::optional<std::size_t> m_landing;
  std::optional<QPointF> m_pressedAt;
};

}  // namespace grainwise::ui
