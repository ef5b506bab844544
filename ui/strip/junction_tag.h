// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/mass/junctions.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// The badge on a joint: a glyph, and as much of "17.8 to 11: smooth drop" as there is room for.
class JunctionTag : public QWidget {
  Q_OBJECT
 public:
  enum class Room { whole, figures, glyph };
  JunctionTag(Look* look, QWidget* parent);

  void setJunction(const Junction& junction, const QString& spoken);
  void setRoom(Room room);
  [[nodiscard]] Room room() const { return m_room; }
  [[nodiscard]] int widthFor(Room room) const;
  [[nodiscard]] int tagHeight() const;

 Q_SIGNALS:
  void clicked();

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;

 private:
  [[nodiscard]] QString words(Room room) const;

  Look* m_look;
  Junction m_junction;
  Room m_room = Room::whole;
};

}  // namespace grainwise::ui
