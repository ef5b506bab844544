// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/junction_tag.h"

#include <QPainter>

#include "ui/text/words.h"

namespace grainwise::ui {
namespace {
constexpr int kHeight = 24;
constexpr int kType = 14;
}  // namespace

JunctionTag::JunctionTag(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setCursor(Qt::PointingHandCursor);
}

void JunctionTag::setJunction(const Junction& junction, const QString& spoken) {
  m_junction = junction;
  const QString tag = junctionTag(junction, m_look->units());
  setAccessibleName(tag + QStringLiteral(", ") + gradeWord(grade(junction.verdict)));
  setAccessibleDescription(spoken);
  setToolTip(tag);
  update();
}

void JunctionTag::setRoom(Room room) {
  m_room = room;
  update();
}

QString JunctionTag::words(Room room) const {
  switch (room) {
    case Room::whole:
      return junctionTag(m_junction, m_look->units());
    case Room::figures:
      return junctionFigures(m_junction, m_look->units());
    case Room::glyph:
      break;
  }
  return {};
}

int JunctionTag::widthFor(Room room) const {
  const int text = QFontMetrics(m_look->font(kType)).horizontalAdvance(words(room));
  return text == 0 ? m_look->px(kHeight) : text + m_look->px(38);
}

int JunctionTag::tagHeight() const { return m_look->px(kHeight); }

void JunctionTag::mousePressEvent(QMouseEvent*) { Q_EMIT clicked(); }

void JunctionTag::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF pill = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  p.setPen(QPen(c.slate, 0.8));
  p.setBrush(c.card);
  p.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2);
  const double side = m_look->px(9);
  const double left = m_room == Room::glyph ? pill.center().x() - side / 2 : pill.left() + m_look->px(10);
  paintGlyph(p, QRectF(left, pill.center().y() - side / 2, side, side),
             glyphOf(grade(m_junction.verdict)), c);
  if (m_room == Room::glyph) return;
  p.setFont(m_look->font(kType));
  p.setPen(c.ink);
  p.drawText(pill.adjusted(m_look->px(26), 0, -m_look->px(8), 0), Qt::AlignLeft | Qt::AlignVCenter,
             words(m_room));
}

}  // namespace grainwise::ui
