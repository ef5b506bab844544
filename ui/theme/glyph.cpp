// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/glyph.h"

#include <QPolygonF>

namespace grainwise::ui {

void paintGlyph(QPainter& p, const QRectF& box, Glyph glyph, const Colours& colours) {
  p.save();
  p.setRenderHint(QPainter::Antialiasing);
  p.setPen(Qt::NoPen);
  switch (glyph) {
    case Glyph::circle:
      p.setBrush(colours.alder);
      p.drawEllipse(box);
      break;
    case Glyph::triangle:
      p.setBrush(colours.ochreLine);
      p.drawPolygon(QPolygonF({QPointF(box.center().x(), box.top() - 1),
                               QPointF(box.right() + 1, box.bottom()),
                               QPointF(box.left() - 1, box.bottom())}));
      break;
    case Glyph::square:
      p.setBrush(colours.brick);
      p.drawRect(box);
      break;
  }
  p.restore();
}

}  // namespace grainwise::ui
