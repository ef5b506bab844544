// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include "core/units/station.h"

namespace grainwise::ui {

/// The one ruler of a face: feet to pixels, shared by the strip and the chart under it, so that a
/// foot above is a foot below. Both widgets span the same x range of the window. Also holds the
/// pinned cursor that stands on both.
class Ruler : public QObject {
  Q_OBJECT
 public:
  explicit Ruler(QObject* parent = nullptr) : QObject(parent) {}

  /// Station `from` stands at pixel `left`, `to` at pixel `right`.
  void setRange(Station from, Station to, double left, double right) {
    if (from == m_from && to == m_to && left == m_left && right == m_right) return;
    m_from = from;
    m_to = to;
    m_left = left;
    m_right = right;
    Q_EMIT changed();
  }
  [[nodiscard]] Station from() const { return m_from; }
  [[nodiscard]] Station to() const { return m_to; }
  [[nodiscard]] double left() const { return m_left; }
  [[nodiscard]] double right() const { return m_right; }
  [[nodiscard]] double pixelsPerFoot() const {
    return (m_right - m_left) / (m_to - m_from).value();
  }
  [[nodiscard]] double x(Station s) const {
    return m_left + (s - m_from).value() * pixelsPerFoot();
  }
  [[nodiscard]] Station station(double x) const {
    return m_from + Feet((x - m_left) / pixelsPerFoot());
  }

  [[nodiscard]] Station cursor() const { return m_cursor; }
  void setCursor(Station s) {
    if (s == m_cursor) return;
    m_cursor = s;
    Q_EMIT cursorMoved();
  }

 Q_SIGNALS:
  void changed();
  void cursorMoved();

 private:
  Station m_from{0};
  Station m_to{40};
  double m_left = 64;
  double m_right = 1340;
  Station m_cursor{10};
};

}  // namespace grainwise::ui
