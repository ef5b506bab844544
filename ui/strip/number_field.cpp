// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/number_field.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

namespace grainwise::ui {
namespace {
constexpr double kHalfFoot = 0.5;

/// The limit in the unit that the person types in.
QString limitWords(const Limit& limit, Measure measure, DisplayUnits units) {
  const QString unit = measure == Measure::plain ? QString::fromUtf8(limit.unit) : unitOf(measure, units);
  const QString low = editText(limit.low, measure, units);
  const QString high = editText(limit.high, measure, units);
  return limit.open ? NumberField::tr("over %1 to %2 %3").arg(low, high, unit)
                    : NumberField::tr("%1 to %2 %3").arg(low, high, unit);
}
}  // namespace

NumberField::NumberField(Look* look, const QString& name, Measure measure, Limit limit,
                         QWidget* parent)
    : QWidget(parent), m_look(look), m_nameText(name), m_measure(measure), m_limit(limit) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  m_name = new QLabel(this);
  m_edit = new QLineEdit(this);
  m_edit->setMinimumHeight(32);
  m_error = new QLabel(this);
  m_error->setTextFormat(Qt::PlainText);
  m_error->setWordWrap(true);
  m_name->setBuddy(m_edit);
  column->addWidget(m_name);
  column->addWidget(m_edit);
  column->addWidget(m_error);
  column->addStretch(1);
  m_edit->installEventFilter(this);
  connect(m_edit, &QLineEdit::textEdited, this, &NumberField::read);
  connect(look, &Look::changed, this, &NumberField::applyLook);
  setFocusProxy(m_edit);
  applyLook();
  setError({});
}

void NumberField::setValue(std::optional<double> value, const QString& digits) {
  if (value == m_value && m_edit->hasFocus()) return;
  m_value = value;
  m_digits = digits;
  refreshText();
}

void NumberField::refreshText() {
  QString text;
  if (m_value) {
    const QString plain = editText(*m_value, m_measure, m_look->units());
    const bool tradeUnit = plain == editText(*m_value, m_measure, DisplayUnits{});
    text = tradeUnit && !m_digits.isEmpty() ? localDigits(m_digits) : plain;
  }
  m_edit->setText(text);
  setError({});
}

void NumberField::setDerived(const QString& words) { m_edit->setPlaceholderText(words); }

void NumberField::setWidths(int least, int most) {
  m_least = least;
  m_most = most;
  refreshWidths();
}

void NumberField::refreshWidths() {
  const int name = m_name->sizeHint().width();
  setMinimumWidth(std::max(m_least, name));
  setMaximumWidth(std::max(m_most, name));
}

void NumberField::setNameVisible(bool visible) { m_name->setVisible(visible); }

QString NumberField::error() const { return m_error->text(); }

void NumberField::setError(const QString& words) {
  m_error->setText(words);
  m_error->setVisible(!words.isEmpty());
  m_edit->setAccessibleDescription(words);
}

void NumberField::read() {
  const QString text = m_edit->text().trimmed();
  if (text.isEmpty() && m_optional) {
    m_value.reset();
    setError({});
    Q_EMIT cleared();
    return;
  }
  const auto number = parseTyped(text, m_measure, m_look->units());
  if (!number) {
    setError(tr("This is no number here; give %1.").arg(limitWords(m_limit, m_measure, m_look->units())));
    return;
  }
  if (!m_limit.holds(number->value)) {
    setError(tr("Outside what is possible; give %1.")
                 .arg(limitWords(m_limit, m_measure, m_look->units())));
    return;
  }
  setError({});
  m_value = number->value;
  m_digits = number->digits;
  Q_EMIT typed(*number);
}

void NumberField::step(double by_ft) {
  if (!m_value) return;
  m_edit->setText(editText(*m_value + by_ft, m_measure, m_look->units()));
  read();
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == m_edit && event->type() == QEvent::KeyPress && m_measure == Measure::length) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Plus || key == Qt::Key_Minus) {
      step(key == Qt::Key_Plus ? kHalfFoot : -kHalfFoot);
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void NumberField::applyLook() {
  const QString unit = unitOf(m_measure, m_look->units());
  m_name->setText(unit.isEmpty() ? m_nameText : tr("%1, %2").arg(m_nameText, unit));
  m_edit->setAccessibleName(m_name->text());
  m_name->setFont(m_look->font(14));
  refreshWidths();
  m_edit->setFont(m_look->font(16));
  m_error->setFont(m_look->font(14));
  QPalette p = m_error->palette();
  p.setColor(QPalette::WindowText, m_look->colours().brick);
  m_error->setPalette(p);
  if (error().isEmpty()) refreshText();
}

}  // namespace grainwise::ui
