// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/lens.h"

#include <QApplication>
#include <QMouseEvent>
#include <QPainter>

#include "core/analysis/analysis.h"
#include "ui/strip/ruler.h"
#include "ui/strip/silhouette.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr double kFeet = 6.0;
constexpr double kMargin = 12;
constexpr double kFlyRoom = 46;
constexpr int kHeight = 52;
constexpr int kType = 14;
/// Feet at least this wide need no lens.
constexpr double kWideFoot = 60;

QString shortWords(const Part& part, DisplayUnits units) {
  if (part.kind == PartKind::fly) return partWords(part, units);
  return Lens::tr("%1 %2").arg(kindWords(part.kind), lengthText(part.length(), units));
}
}  // namespace

Lens::Lens(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setObjectName(QStringLiteral("lens"));
  setCursor(Qt::OpenHandCursor);
  setAccessibleName(tr("The last six feet, magnified"));
}

bool Lens::useful(const Rig& rig, const Analysis& analysis, const Ruler& ruler, const Look& look) {
  if (rig.parts.size() < 2 || ruler.pixelsPerFoot() >= look.px(kWideFoot)) return false;
  const PartKind last = rig.parts.back().kind;
  return last >= PartKind::leader && analysis.profile.end.feet() > 2 * kFeet;
}

int Lens::wantedWidth(double pixelsPerFoot) const {
  return int(kFeet * pixelsPerFoot + kMargin + m_look->px(kFlyRoom));
}

int Lens::wantedHeight() const { return m_look->px(kHeight); }

void Lens::magnify(const Rig& rig, const Analysis& analysis, double pixelsPerGrain, double pixelsPerFoot) {
  m_rig = &rig;
  m_analysis = &analysis;
  m_pixelsPerGrain = pixelsPerGrain;
  m_pixelsPerFoot = pixelsPerFoot;
  const double from = analysis.profile.end.feet() - kFeet;
  m_first = rig.parts.size();
  while (m_first > 0 && analysis.profile.places[m_first - 1].from.feet() >= from) --m_first;
  update();
}

double Lens::x(double station_ft) const {
  return kMargin + (station_ft - (m_analysis->profile.end.feet() - kFeet)) * m_pixelsPerFoot;
}

QRectF Lens::boxOf(std::size_t part) const {
  const PartPlace& place = m_analysis->profile.places[part];
  const double tall = m_look->px(28);
  if (m_rig->parts[part].kind == PartKind::fly) {
    return {x(place.from.feet()), 0, double(m_look->px(kFlyRoom)), tall};
  }
  return {x(place.from.feet()), 0, (place.to - place.from).value() * m_pixelsPerFoot, tall};
}

void Lens::setSelected(std::optional<std::size_t> part) {
  m_selected = part;
  update();
}

std::optional<std::size_t> Lens::partAt(const QPointF& at) const {
  if (m_rig == nullptr) return std::nullopt;
  for (std::size_t i = m_rig->parts.size(); i-- > 0;) {
    if (boxOf(i).left() <= at.x() && at.x() <= boxOf(i).right()) return i;
  }
  return std::nullopt;
}

void Lens::mousePressEvent(QMouseEvent* event) {
  m_pressedAt = event->position().toPoint();
  if (const auto part = partAt(event->position())) Q_EMIT pressed(*part);
}

void Lens::mouseMoveEvent(QMouseEvent* event) {
  if (!(event->buttons() & Qt::LeftButton)) return;
  if ((event->position().toPoint() - m_pressedAt).manhattanLength() < QApplication::startDragDistance()) {
    return;
  }
  if (const auto part = partAt(m_pressedAt)) Q_EMIT dragged(*part);
}

void Lens::mouseDoubleClickEvent(QMouseEvent* event) {
  if (const auto part = partAt(event->position())) Q_EMIT activated(*part);
}

void Lens::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF card = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  p.setPen(QPen(c.edge, 1));
  p.setBrush(c.card);
  p.drawRoundedRect(card, 8, 8);
  if (m_rig == nullptr) return;
  p.setClipRect(card.adjusted(2, 2, -2, -2));
  for (std::size_t i = 0; i < m_rig->parts.size(); ++i) {
    const QRectF box = boxOf(i);
    if (box.right() < 0 || box.left() > card.right()) continue;
    const Silhouette shape = silhouetteOf(m_rig->parts[i], m_analysis->profile, i);
    if (shape.isFly) {
      paintFly(p, box, shape, c);
    } else {
      paintLine(p, box, shape, m_pixelsPerGrain, c);
    }
    if (m_selected == i) {
      p.setPen(QPen(c.river, 1, Qt::DashLine));
      p.setBrush(Qt::NoBrush);
      p.drawRoundedRect(box.adjusted(1, 3, -1, -1), 4, 4);
    }
  }
  paintWords(p, card.right() - 8);
}

/// Under each part what it is, as far as there is room; the fly's words stand at the right edge and
/// reach back to the last words before them.
void Lens::paintWords(QPainter& p, double right) const {
  p.setFont(m_look->font(kType));
  p.setPen(m_look->colours().ink);
  const QFontMetrics metrics = p.fontMetrics();
  double taken = kMargin;
  const double top = m_look->px(28);
  for (std::size_t i = m_first; i < m_rig->parts.size(); ++i) {
    const Part& part = m_rig->parts[i];
    const bool fly = part.kind == PartKind::fly;
    const QRectF box = boxOf(i);
    const double room = fly ? right - taken - 10 : box.width();
    QString text = shortWords(part, m_look->units());
    if (metrics.horizontalAdvance(text) > room) {
      text = fly ? massText(part.fly->wetMass(), m_look->units())
                 : lengthText(part.length(), m_look->units());
    }
    const double wide = metrics.horizontalAdvance(text);
    if (wide > room) continue;
    const double left = fly ? right - wide : box.center().x() - wide / 2;
    p.drawText(QRectF(left, top, wide + 1, m_look->px(22)), Qt::AlignVCenter, text);
    taken = left + wide;
  }
}

}  // namespace grainwise::ui
