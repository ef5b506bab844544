// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/hatch.h"

#include <algorithm>
#include <cmath>

namespace grainwise::ui {
std::optional<QLineF> within(const QPolygonF& convex, QPointF a, QPointF b) {
  double enter = 0;
  double leave = 1;
  const QPointF way = b - a;
  for (int i = 0; i < convex.size(); ++i) {
    const QPointF from = convex[i];
    const QPointF edge = convex[(i + 1) % convex.size()] - from;
    const double outside = edge.x() * (a.y() - from.y()) - edge.y() * (a.x() - from.x());
    const double slope = edge.x() * way.y() - edge.y() * way.x();
    if (slope == 0) {
      if (outside < 0) return std::nullopt;
      continue;
    }
    const double at = -outside / slope;
    if (slope > 0) {
      enter = std::max(enter, at);
    } else {
      leave = std::min(leave, at);
    }
  }
  if (enter >= leave) return std::nullopt;
  return QLineF(a + way * enter, a + way * leave);
}

void hatch(QPainter& p, const QPolygonF& shape, double distance) {
  const QRectF box = shape.boundingRect();
  // Every hatch line lies on one grid of the whole picture, so that pieces join without a seam.
  const double first = std::floor((box.left() + box.top()) / distance) * distance;
  for (double sum = first; sum < box.right() + box.bottom(); sum += distance) {
    const QPointF low(sum - box.bottom(), box.bottom());
    const QPointF high(sum - box.top(), box.top());
    if (const auto line = within(shape, low, high)) p.drawLine(*line);
  }
}

void hatchDown(QPainter& p, const QPolygonF& shape, double distance) {
  const QRectF box = shape.boundingRect();
  const double first = std::floor((box.left() - box.bottom()) / distance) * distance;
  for (double difference = first; difference < box.right() - box.top(); difference += distance) {
    const QPointF high(difference + box.top(), box.top());
    const QPointF low(difference + box.bottom(), box.bottom());
    if (const auto line = within(shape, high, low)) p.drawLine(*line);
  }
}

}  // namespace grainwise::ui
