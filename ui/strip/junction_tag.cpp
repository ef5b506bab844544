// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/junction_tag.h"

#include <QKeyEvent>
#include <QPainter>

#include "ui/text/words.h"
#include "ui/theme/text_width.h"

namespace grainwise::ui {
namespace {
constexpr int kHeight = 24;
constexpr int kType = 14;
constexpr int kGlyph = 10;
constexpr int kGlyphAt = 10;
constexpr int kWordsAt = 27;
constexpr int kWordsEnd = 11;
}  // namespace

JunctionTag::JunctionTag(Look* look, QWidget* parent) : QWidget(parent), m_look(look) {
  setCursor(Qt::PointingHandCursor);
  setFocusPolicy(Qt::TabFocus);
}

void JunctionTag::setJunction(const Junction& junction, const QString& spoken) {
  m_junction = junction;
  const DisplayUnits units = m_look->units();
  const Said said{junction.rodSideMean, junction.flySideMean, junction.verdict, units, QLocale()};
  if (m_said != said) m_words = {junctionTag(junction, units), junctionFigures(junction, units), QString()};
  m_said = said;
  const QString& tag = words(Room::whole);
  const QString name = tr("%1, %2").arg(tag, gradeWord(grade(junction.verdict)));
  if (accessibleName() != name) setAccessibleName(name);
  if (accessibleDescription() != spoken) setAccessibleDescription(spoken);
  if (toolTip() != tag) setToolTip(tag);
  update();
}

void JunctionTag::setRoom(Room room) {
  if (room == m_room) return;
  m_room = room;
  update();
}

double JunctionTag::widthFor(Room room) const {
  if (room == Room::glyph) return heightFor(*m_look);
  const double text = textWidth(words(room), m_look->font(kType));
  return std::ceil(text) + m_look->px(kWordsAt) + m_look->px(kWordsEnd);
}

int JunctionTag::heightFor(const Look& look) { return look.px(kHeight); }

void JunctionTag::mousePressEvent(QMouseEvent*) { Q_EMIT clicked(); }

void JunctionTag::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    Q_EMIT clicked();
    return;
  }
  QWidget::keyPressEvent(event);
}

void JunctionTag::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  update();
}

void JunctionTag::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

JunctionTag::Drawn JunctionTag::toDraw() const {
  const Colours& c = m_look->colours();
  return {words(m_room), grade(m_junction.verdict), size(), m_look->font(kType), c.card, c.slate, c.river, c.ink,
          devicePixelRatioF(), hasFocus()};
}

void JunctionTag::paintEvent(QPaintEvent*) {
  QPainter(this).drawPixmap(0, 0, m_picture.of(toDraw(), [this](QPainter& p) { draw(p); }));
}

void JunctionTag::draw(QPainter& p) const {
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const double edge = hasFocus() ? 2.0 : 0.9;
  const QRectF pill = QRectF(rect()).adjusted(edge / 2 + 0.2, edge / 2 + 0.2, -edge / 2 - 0.2, -edge / 2 - 0.2);
  p.setPen(QPen(hasFocus() ? c.river : c.slate, edge));
  p.setBrush(c.card);
  p.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2);
  const double side = m_look->px(kGlyph);
  const double left = m_room == Room::glyph ? pill.center().x() - side / 2 : double(m_look->px(kGlyphAt));
  paintGlyph(p, QRectF(left, pill.center().y() - side / 2, side, side),
             glyphOf(grade(m_junction.verdict)), c);
  if (m_room == Room::glyph) return;
  p.setFont(m_look->font(kType));
  p.setPen(c.ink);
  p.drawText(QRectF(rect()).adjusted(m_look->px(kWordsAt), 0, 0, 0),
             Qt::AlignLeft | Qt::AlignVCenter | Qt::TextDontClip, words(m_room));
}

}  // namespace grainwise::ui
