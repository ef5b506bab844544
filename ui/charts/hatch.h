// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLineF>
#include <QPainter>
#include <QPolygonF>
#include <optional>

/// Hatching in lines of its own, cut to the shape: a brush with a pattern comes out of an SVG file as nothing, and
/// a clip is not honoured there.
namespace grainwise::ui {

/// The part of the segment from `a` to `b` that lies within a convex polygon, clockwise on screen.
std::optional<QLineF> within(const QPolygonF& convex, QPointF a, QPointF b);

/// Fills a convex shape with lines `distance` apart, rising to the right, with the painter's pen.
void hatch(QPainter& p, const QPolygonF& shape, double distance);
/// The same falling to the right.
void hatchDown(QPainter& p, const QPolygonF& shape, double distance);

}  // namespace grainwise::ui
