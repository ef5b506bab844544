// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/charts/profile_points.h"

#include <algorithm>
#include <cmath>

#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

/// Pieces that a curved stretch is drawn in: the chord of a parabola is then within 1/64 of its rise.
constexpr int kPieces = 8;
/// Points that are drawn well within a frame without thinning.
constexpr qsizetype kFewPoints = 600;

/// `at(station)` at the places between two rows, both left out.
template <class At>
void addBetween(QList<QPointF>& points, const ProfileRow& from, const ProfileRow& to, At at) {
  const double length_ft = (to.at - from.at).value();
  if (length_ft <= 0) return;
  for (int k = 1; k < kPieces; ++k) {
    const Station s = from.at + Feet(length_ft * k / kPieces);
    points.append({s.feet(), at(s)});
  }
}

template <class OfRow, class At>
QList<QPointF> pointsOf(const Analysis& a, OfRow ofRow, At at) {
  QList<QPointF> points;
  const bool curved = !isDense(a);
  points.reserve(static_cast<qsizetype>(a.rows.size()) * (curved ? kPieces : 1));
  for (std::size_t i = 0; i < a.rows.size(); ++i) {
    points.append({a.rows[i].at.feet(), ofRow(a.rows[i])});
    const bool level = i + 1 == a.rows.size() || a.rows[i].mass == a.rows[i + 1].mass;
    if (curved && !level) addBetween(points, a.rows[i], a.rows[i + 1], at);
  }
  return points;
}

}  // namespace

bool isDense(const Analysis& a) {
  constexpr std::size_t kManyRows = 400;
  return a.rows.size() > kManyRows;
}

QList<QPointF> massPoints(const Analysis& a, DisplayUnits units) {
  const auto shown = [units](GrainsPerFoot mass) {
    return shownValue(mass.value(), Measure::lineMass, units);
  };
  return pointsOf(
      a, [&](const ProfileRow& row) { return shown(row.mass); },
      [&](Station s) { return shown(a.profile.after(s)); });
}

QList<QPointF> grainPoints(const Analysis& a) {
  return pointsOf(
      a, [](const ProfileRow& row) { return row.soFar.value(); },
      [&](Station s) { return a.profile.soFar(s).value(); });
}

QList<QPointF> thinned(const QList<QPointF>& points, double column_ft) {
  if (points.size() <= kFewPoints || !(column_ft > 0)) return points;
  const auto lower = [](const QPointF& a, const QPointF& b) { return a.y() < b.y(); };
  QList<QPointF> few;
  few.append(points.front());
  for (auto it = points.begin(); it != points.end();) {
    const double column = std::floor(it->x() / column_ft);
    const auto end = std::find_if(
        it, points.end(), [&](const QPointF& p) { return std::floor(p.x() / column_ft) > column; });
    const auto [lowest, highest] = std::minmax_element(it, end, lower);
    few.append(lowest < highest ? *lowest : *highest);
    if (lowest != highest) few.append(lowest < highest ? *highest : *lowest);
    it = end;
  }
  few.append(points.back());
  return few;
}

}  // namespace grainwise::ui
