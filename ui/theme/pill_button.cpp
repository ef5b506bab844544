// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/pill_button.h"

#include <QAccessibleWidget>
#include <QPainter>
#include <cmath>

#include "ui/theme/text_width.h"

namespace grainwise::ui {
namespace {
constexpr int kTextPixels = 15;

/// Pressed from outside it does what a click does, which toggling alone would not; faces and pages are tabs.
class PillAccess : public QAccessibleWidget {
 public:
  explicit PillAccess(PillButton* pill) : QAccessibleWidget(pill), m_pill(pill) {}

  [[nodiscard]] QAccessible::Role role() const override {
    if (!m_pill->isCheckable()) return QAccessible::Button;
    return isTab() ? QAccessible::PageTab : QAccessible::CheckBox;
  }
  [[nodiscard]] QAccessible::State state() const override {
    QAccessible::State state = QAccessibleWidget::state();
    state.checkable = m_pill->isCheckable();
    state.checked = m_pill->isChecked();
    state.selectable = isTab();
    state.selected = isTab() && m_pill->isChecked();
    return state;
  }
  [[nodiscard]] QStringList actionNames() const override {
    return m_pill->isEnabled() ? QStringList{pressAction(), setFocusAction()} : QStringList();
  }
  void doAction(const QString& name) override {
    name == pressAction() ? m_pill->click() : QAccessibleWidget::doAction(name);
  }

 private:
  [[nodiscard]] bool isTab() const {
    const QString name = m_pill->objectName();
    return name.startsWith(QLatin1String("tab_")) || name.startsWith(QLatin1String("face_"));
  }

  PillButton* m_pill;
};

QAccessibleInterface* pillFactory(const QString&, QObject* object) {
  auto* pill = qobject_cast<PillButton*>(object);
  return pill != nullptr ? new PillAccess(pill) : nullptr;
}
}  // namespace

PillButton::PillButton(Look* look, Form form, const QString& text, QWidget* parent)
    : QAbstractButton(parent), m_look(look), m_form(form) {
  static const bool installed = (QAccessible::installFactory(pillFactory), true);
  Q_UNUSED(installed);
  setText(text);
  setAccessibleName(text);
  setFocusPolicy(Qt::TabFocus);
  setCursor(Qt::PointingHandCursor);
  setCheckable(form == Form::pill);
  // A sentence gives way, its words shortened, before a row grows wider than the window.
  if (form == Form::sentence) setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  connect(look, &Look::changed, this, [this] {
    updateGeometry();
    update();
  });
}

void PillButton::setGivesWay(bool gives) {
  m_givesWay = gives;
  if (gives) setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  updateGeometry();
}

QSize PillButton::sizeHint() const {
  const int words = int(std::ceil(textWidth(text(), m_look->font(kTextPixels, m_form == Form::pill))));
  const int padding = m_look->px(m_form == Form::sentence ? 20 : 28);
  return {std::max(m_look->px(44), words + padding), m_look->px(44)};
}

QSize PillButton::minimumSizeHint() const {
  const QSize full = sizeHint();
  if (m_form != Form::sentence && !m_givesWay) return full;
  return {std::min(full.width(), m_look->px(110)), full.height()};
}

void PillButton::paintText(QPainter& p, const QRectF& inside, const QColor& colour) const {
  p.setFont(m_look->font(kTextPixels, m_form == Form::pill && isChecked()));
  p.setPen(colour);
  const QString shown = p.fontMetrics().elidedText(text(), Qt::ElideRight, int(inside.width()));
  p.drawText(inside, Qt::AlignCenter, shown);
  if (m_form != Form::sentence) return;
  const double words = p.fontMetrics().horizontalAdvance(shown);
  const double left = inside.center().x() - words / 2;
  const double y = inside.center().y() + p.fontMetrics().height() / 2.0;
  QPen dots(m_look->colours().slate, 1, Qt::CustomDashLine);
  dots.setDashPattern({2, 3});
  p.setPen(dots);
  p.drawLine(QPointF(left, y), QPointF(left + words, y));
}

void PillButton::paintEvent(QPaintEvent*) {
  QPainter p(this);
  p.setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const QRectF pill = QRectF(rect()).adjusted(2, m_look->px(8), -2, -m_look->px(8));
  const double round = pill.height() / 2;
  QColor words = m_form == Form::sentence ? c.ink : c.slate;
  if (isChecked()) {
    p.setPen(Qt::NoPen);
    p.setBrush(c.pill);
    p.drawRoundedRect(pill, round, round);
    words = c.onPill;
  } else if (isEnabled() && (underMouse() || isDown())) {
    p.setPen(Qt::NoPen);
    p.setBrush(c.edge);
    p.drawRoundedRect(pill, round, round);
    words = c.ink;
  }
  if (!isEnabled()) words.setAlpha(120);
  if (hasFocus()) {
    p.setBrush(Qt::NoBrush);
    // On the dark of a chosen one the ring is in the colour of its words, a little inside.
    const double inset = isChecked() ? 3 : 1;
    p.setPen(QPen(isChecked() ? c.onPill : c.river, 2));
    p.drawRoundedRect(pill.adjusted(inset, inset, -inset, -inset), round - inset, round - inset);
  }
  paintText(p, pill.adjusted(m_look->px(4), 0, -m_look->px(4), 0), words);
}

}  // namespace grainwise::ui
