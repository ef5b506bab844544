// SPDX-License-Identifier: GPL-3.0-or-later
#include <QFontMetricsF>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "core/units/si.h"
#include "ui/charts/picture.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {

/// The step of 1, 2 or 5 times a power of ten that gives at most `most` labels.
double stepFor(double range, int most) {
  double power = std::pow(10.0, std::floor(std::log10(range / most)));
  for (const double m : {1.0, 2.0, 5.0, 10.0}) {
    if (range / (m * power) <= most) return m * power;
  }
  return 10 * power;
}

QString number(double value) { return QLocale().toString(value, 'g', 4); }

void paintFeet(QPainter& p, const QRectF& plot, const FootRange& range, const PictureStyle& style) {
  const double feetPerUnit = style.units.metres ? 1.0 / si::kMetresPerFoot : 1.0;
  const int most = std::max(2, int(plot.width() / (style.text * 5)));
  const double step = stepFor(range.to / feetPerUnit, most);
  for (int i = 0; i * step * feetPerUnit <= range.to; ++i) {
    const double x = range.x(i * step * feetPerUnit, plot);
    p.setPen(QPen(style.colours.slate, style.stroke * 0.4));
    p.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + style.text * 0.3));
    p.setPen(style.colours.slate);
    const QString label =
        i == 0 ? QStringLiteral("0 %1").arg(lengthUnit(style.units)) : number(i * step);
    p.drawText(QRectF(x - style.text * 4, plot.bottom() + style.text * 0.3, style.text * 8,
                      style.text * 1.4),
               Qt::AlignHCenter | Qt::AlignTop, label);
  }
}

void paintMass(QPainter& p, const QRectF& plot, double highest, double factor,
               const PictureStyle& style) {
  const int most = std::max(2, int(plot.height() / (style.text * 1.8)));
  const double step = stepFor(highest * factor, std::min(most, 5));
  for (int i = 0; i * step <= highest * factor; ++i) {
    const double y = plot.bottom() - i * step / (highest * factor) * plot.height();
    p.setPen(QPen(style.colours.edge, style.stroke * 0.4));
    p.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    if (!style.numbers) continue;
    p.setPen(style.colours.slate);
    p.drawText(QRectF(plot.left() - style.text * 6.4, y - style.text, style.text * 6, style.text * 2),
               Qt::AlignRight | Qt::AlignVCenter, number(i * step));
  }
}

}  // namespace

void paintProfile(QPainter& p, const QRectF& plot, const std::vector<PictureRig>& rigs,
                  const FootRange& range, const PictureStyle& style) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  p.setFont(style.font());
  const double highest = range.heaviest * 1.08;
  paintMass(p, plot, highest, shownValue(1.0, Measure::lineMass, style.units), style);
  paintFeet(p, plot, range, style);
  for (std::size_t i = 0; i < rigs.size(); ++i) {
    const Setup setup = setupOf(i, rigs.size());
    QPolygonF curve;
    for (const ProfileRow& row : rigs[i].analysis->rows) {
      curve << QPointF(range.x(row.at.feet(), plot),
                       plot.bottom() - row.mass.value() / highest * plot.height());
    }
    if (curve.isEmpty()) continue;
    if (setup == Setup::alone) {
      QPolygonF area = curve;
      area << QPointF(curve.back().x(), plot.bottom()) << QPointF(curve.front().x(), plot.bottom());
      p.setPen(Qt::NoPen);
      p.setBrush(style.colours.riverFill);
      p.drawPolygon(area);
    }
    p.setPen(setupPen(setup, style));
    p.setBrush(Qt::NoBrush);
    p.drawPolyline(curve);
  }
  p.restore();
}

}  // namespace grainwise::ui
