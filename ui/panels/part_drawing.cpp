// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/part_drawing.h"

#include <QApplication>
#include <QDrag>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <array>

#include "core/units/si.h"
#include "ui/strip/part_payload.h"
#include "ui/text/quantities.h"

namespace grainwise::ui {
namespace {
constexpr double kPad = 10;

/// A measure along the lower left of a drawing, `length` pixels long.
void paintScale(QPainter& p, const QRectF& inside, double length, const QString& words, const Look* look) {
  const double y = inside.bottom() - 3;
  p.setPen(QPen(look->colours().slate, 1.2));
  p.drawLine(QPointF(inside.left(), y), QPointF(inside.left() + length, y));
  for (const double x : {inside.left(), inside.left() + length}) p.drawLine(QPointF(x, y - 4), QPointF(x, y));
  p.setFont(look->font(14));
  p.drawText(QPointF(inside.left() + length + 6, y), words);
}

/// The shortest of the usual measures that is still easy to see at `perUnit` pixels a unit.
double roundMeasure(double perUnit) {
  constexpr double kLeast_px = 48;
  constexpr std::array<double, 7> kMeasures{0.1, 0.25, 0.5, 1, 2, 5, 10};
  const auto* found = std::find_if(kMeasures.begin(), kMeasures.end(), [&](double m) { return m * perUnit >= kLeast_px; });
  return found != kMeasures.end() ? *found : kMeasures.back();
}
}  // namespace

PartDrawing::PartDrawing(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::OpenHandCursor);
  runDrag = [](QDrag* drag) { return drag->exec(Qt::CopyAction); };
  connect(look, &Look::changed, this, qOverload<>(&QWidget::update));
}

void PartDrawing::setPart(std::optional<Part> part, const QString& spoken) {
  m_part = std::move(part);
  setAccessibleName(spoken);
  setToolTip(m_part ? tr("Drag it up onto the line, or press Enter") : QString());
  update();
}

void PartDrawing::mousePressEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton) m_pressed = event->pos();
}

void PartDrawing::mouseMoveEvent(QMouseEvent* event) {
  if (!(event->buttons() & Qt::LeftButton) || !m_part) return;
  const QPoint moved = event->pos() - m_pressed;
  if (moved.manhattanLength() < QApplication::startDragDistance()) return;
  auto* drag = new QDrag(this);
  drag->setMimeData(mimeOf({*m_part, std::nullopt}));
  runDrag(drag);
}

void PartDrawing::keyPressEvent(QKeyEvent* event) {
  const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
  if (!enter || !m_part) return QWidget::keyPressEvent(event);
  Q_EMIT placed();
}

void PartDrawing::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF card = QRectF(rect()).adjusted(1, 1, -1, -1);
  p.setPen(QPen(hasFocus() ? c.river : c.edge, hasFocus() ? 2.5 : 1));
  p.setBrush(c.card);
  p.drawRoundedRect(card, 6, 6);
  paintPart(p, card.adjusted(kPad, kPad / 2, -kPad, -kPad / 2));
}

void LeaderDrawing::setPieces(const QList<Piece>& pieces) {
  m_pieces = pieces;
  update();
}

void LeaderDrawing::paintPart(QPainter& p, const QRectF& inside) {
  double whole = 0, thickest = 0;
  for (const Piece& piece : m_pieces) {
    whole += piece.length;
    thickest = std::max(thickest, piece.diameter);
  }
  if (!(whole > 0)) return;
  const Colours& c = look()->colours();
  p.setFont(look()->font(14));
  const QFontMetricsF metrics(p.font());
  const double line = metrics.height();
  const double most = std::max(6.0, inside.height() - 4.4 * line);  // two lines above, two below
  const double perInch = std::min(most, 26.0) / thickest;
  const double perFoot = inside.width() / whole;
  const double perShown = perFoot / shownValue(1.0, Measure::length, look()->units());
  const double measure = roundMeasure(perShown);
  m_scale = tr("%1 %2; thickness × %3", "a measure, its unit, how many times the thickness is magnified")
                .arg(numberText(measure, 2), lengthUnit(look()->units()), numberText(perInch * 12 / perFoot, 0));
  paintScale(p, inside, measure * perShown, m_scale, look());
  const double middle = inside.top() + line * 2.2 + most / 2;
  double x = inside.left();
  double lastBelow = inside.left() - 1e4;
  double drop = 0;
  for (const Piece& piece : m_pieces) {
    const double width = inside.width() * piece.length / whole;
    const double thick = std::max(2.0, piece.diameter * perInch);
    const QRectF box(x, middle - thick / 2, width, thick);
    p.setPen(QPen(c.river, 1.2));
    p.setBrush(piece.fluorocarbon ? c.sinkFill : c.riverFill);
    p.drawRect(box);
    p.setPen(c.ink);
    // Words of a short piece step down a line rather than run into its neighbour's.
    const double wordsLeft = std::min(
        x, inside.right() - std::max(metrics.horizontalAdvance(piece.above),
                                     metrics.horizontalAdvance(piece.below)));
    drop = wordsLeft < lastBelow + 8 && drop == 0 ? line : 0;
    p.drawText(QPointF(wordsLeft, inside.top() + metrics.ascent() + (drop > 0 ? line * 0.95 : 0)),
               piece.above);
    p.setPen(c.slate);
    p.drawText(QPointF(wordsLeft, middle + most / 2 + metrics.ascent() + 2 + drop), piece.below);
    lastBelow = wordsLeft + std::max(metrics.horizontalAdvance(piece.above),
                                     metrics.horizontalAdvance(piece.below));
    x += width;
  }
}

void FlyDrawing::setShape(const Shape& shape) {
  m_shape = shape;
  update();
}

void FlyDrawing::paintPart(QPainter& p, const QRectF& inside) {
  const Colours& c = look()->colours();
  constexpr double kDressing = 1.25;  // of the shank: it covers the bend
  double long_mm = std::max(m_shape.shank_mm, 8.0) * kDressing;
  for (const double d : m_shape.beads_mm) long_mm += d;
  // The bend hangs down by a third of the shank; the drawing is centred on the shank.
  double high_mm = std::max({m_shape.width_mm, m_shape.shank_mm * 0.8, 4.0});
  for (const double d : m_shape.eyes_mm) high_mm = std::max(high_mm, d * 2.4);
  const double scale = std::min(inside.width() / (long_mm * 1.08), inside.height() / high_mm);
  constexpr double kBar_mm = 10;
  paintScale(p, inside, kBar_mm * scale, tr("10 mm"), look());
  const double middle = inside.center().y();
  double x = inside.center().x() - long_mm * scale / 2;
  const double shank = std::max(m_shape.shank_mm, 8.0) * scale;
  double front = x;
  for (const double d : m_shape.beads_mm) front += d * scale;
  const QRectF body(front, middle - m_shape.width_mm * scale / 2, shank * kDressing,
                    m_shape.width_mm * scale);
  p.setPen(QPen(c.slate, 1, Qt::DashLine));
  p.setBrush(c.riverFill);
  p.drawEllipse(body);
  const double gape = std::max(6.0, m_shape.shank_mm * 0.35 * scale);
  QPainterPath hook(QPointF(x, middle));
  hook.lineTo(front + shank, middle);
  hook.arcTo(QRectF(front + shank - gape / 2, middle, gape, gape), 90, -180);
  hook.lineTo(front + shank - gape * 0.6, middle + gape);
  p.setBrush(Qt::NoBrush);
  p.setPen(QPen(c.ink, std::max(1.5, m_shape.wire_mm * scale)));
  p.drawPath(hook);
  p.setPen(QPen(c.ink, 1));
  p.setBrush(c.flyBody);
  if (m_shape.wraps_mm > 0) {
    const double thick = (m_shape.wire_mm + 1.2) * scale;
    p.drawRect(QRectF(front + 2, middle - thick / 2, m_shape.wraps_mm * scale, thick));
  }
  for (const double d : m_shape.beads_mm) {
    p.drawEllipse(QRectF(x, middle - d * scale / 2, d * scale, d * scale));
    x += d * scale;
  }
  for (const double d : m_shape.eyes_mm) {
    const double r = d * scale / 2;
    p.drawEllipse(QPointF(front + r * 1.6, middle - r * 1.1), r, r);
    p.drawEllipse(QPointF(front + r * 1.6, middle + r * 1.1), r, r);
  }
}

}  // namespace grainwise::ui
