// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/strip/number_field.h"

#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "ui/text/problem_words.h"

namespace grainwise::ui {
namespace {
constexpr int kLabelGap = 1;  ///< px between a field and its name
constexpr double kHalfFoot = 0.5;

/// The limit in the unit that the person types in.
QString limitWords(const Limit& limit, Measure measure, DisplayUnits units) {
  const QString unit = measure == Measure::plain ? limitUnit(limit) : unitOf(measure, units);
  const QString low = editText(limit.low, measure, units);
  const QString high = editText(limit.high, measure, units);
  return limit.open ? NumberField::tr("over %1 to %2 %3").arg(low, high, unit)
                    : NumberField::tr("%1 to %2 %3").arg(low, high, unit);
}

void paintBrick(QWidget* widget, QPalette::ColorRole role, const Look* look) {
  QPalette p = widget->palette();
  p.setColor(role, look->colours().brick);
  widget->setPalette(p);
}
}  // namespace

ErrorLine::ErrorLine(Look* look, QWidget* parent) : QLabel(parent), m_look(look) {
  setTextFormat(Qt::PlainText);
  setWordWrap(true);
  hide();
  connect(look, &Look::changed, this, &ErrorLine::applyLook);
  applyLook();
}

void ErrorLine::say(const QWidget* field, const QString& words) {
  if (words.isEmpty() && field != m_field) return;
  m_field = words.isEmpty() ? nullptr : field;
  setText(words);
  setVisible(!words.isEmpty());
}

void ErrorLine::applyLook() {
  setFont(m_look->font(15));
  paintBrick(this, QPalette::WindowText, m_look);
}

NumberField::NumberField(Look* look, const QString& name, Measure measure, Limit limit,
                         QWidget* parent)
    : QWidget(parent), m_look(look), m_nameText(name), m_measure(measure), m_limit(limit) {
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(kLabelGap);
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
  connect(m_edit, &QLineEdit::editingFinished, this, [this] { m_typing = false; });
  connect(look, &Look::changed, this, &NumberField::applyLook);
  // Not by a focus proxy: Tab would come to the edit by way of the field as well, at another place of its order.
  installEventFilter(this);
  applyLook();
  setError({});
}

void NumberField::setValue(std::optional<double> value, const QString& digits) {
  if (value == m_value && m_edit->hasFocus()) return;
  if (value != m_value) m_typing = false;
  m_value = value;
  m_digits = digits;
  refreshText();
}

void NumberField::refreshText() {
  QString text;
  if (m_value) {
    const QString plain = editText(*m_value, m_measure, m_look->units());
    // As typed, where the digits still mean the value: an edit elsewhere may have changed it.
    const auto digits = parseTyped(m_digits, m_measure, DisplayUnits{});
    const bool asTyped = digits && digits->value == *m_value &&
                         plain == editText(*m_value, m_measure, DisplayUnits{});
    text = asTyped ? localDigits(m_digits) : plain;
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

void NumberField::setError(const QString& words) {
  m_errorText = words;
  if (m_line) {
    m_line->say(this, words.isEmpty() ? words : tr("%1: %2", "a field, what is wrong").arg(m_nameText, words));
  } else {
    m_error->setText(words);
    m_error->setVisible(!words.isEmpty());
  }
  m_edit->setAccessibleDescription(words);
  m_edit->setPalette({});
  if (!words.isEmpty()) paintBrick(m_edit, QPalette::Text, m_look);
}

void NumberField::refuse(const QString& why) {
  goBack();
  setError(why);
}

void NumberField::begin() {
  if (m_typing) return;
  m_typing = true;
  m_valueBefore = m_value;
  m_digitsBefore = m_digits;
}

/// Half a number may have been taken on the way to one that cannot be: what stood before comes back.
void NumberField::goBack() {
  if (!m_typing || m_value == m_valueBefore) return;
  m_value = m_valueBefore;
  m_digits = m_digitsBefore;
  if (m_value) {
    Q_EMIT typed({*m_value, m_digits});
  } else if (m_optional) {
    Q_EMIT cleared();
  }
}

bool NumberField::escape() {
  if (!m_typing) return false;
  goBack();
  m_typing = false;
  refreshText();
  m_edit->selectAll();
  return true;
}

void NumberField::read() {
  begin();
  const QString text = m_edit->text().trimmed();
  if (text.isEmpty() && m_optional) {
    m_value.reset();
    setError({});
    Q_EMIT cleared();
    return;
  }
  const auto number = parseTyped(text, m_measure, m_look->units());
  if (!number) {
    refuse(tr("This is no number here; give %1.").arg(limitWords(m_limit, m_measure, m_look->units())));
    return;
  }
  if (!m_limit.holds(number->value)) {
    refuse(tr("Outside what is possible; give %1.").arg(limitWords(m_limit, m_measure, m_look->units())));
    return;
  }
  setError({});
  m_value = number->value;
  m_digits = number->digits;
  Q_EMIT typed(*number);
}

void NumberField::step(double by_ft) {
  if (!m_value) return;
  m_typing = false;  // a step is a whole number, not half of one
  m_edit->setText(editText(*m_value + by_ft, m_measure, m_look->units()));
  read();
}

bool NumberField::eventFilter(QObject* watched, QEvent* event) {
  if (watched == this && event->type() == QEvent::FocusIn) m_edit->setFocus(static_cast<QFocusEvent*>(event)->reason());
  // A field that is being typed in has the first word on Escape, before any shortcut of the window.
  if (watched == m_edit && event->type() == QEvent::ShortcutOverride && m_typing &&
      static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape) {
    event->accept();
    return true;
  }
  if (watched == m_edit && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape && escape()) return true;
    // What was taken is written over as a whole: that is typing anew.
    if (error().isEmpty() && m_edit->hasSelectedText() && m_edit->selectedText() == m_edit->text()) m_typing = false;
    if (m_measure == Measure::length && (key == Qt::Key_Plus || key == Qt::Key_Minus)) {
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
  m_edit->setWhatsThis(tr("%1: a number, %2. A point or a comma is the decimal sign; another unit may be written "
                          "behind it.", "name of the field, its range")
                           .arg(m_nameText, limitWords(m_limit, m_measure, m_look->units())));
  m_name->setFont(m_look->font(14));
  refreshWidths();
  m_edit->setFont(m_look->font(16));
  m_error->setFont(m_look->font(14));
  paintBrick(m_error, QPalette::WindowText, m_look);
  if (error().isEmpty()) refreshText();
}

QVBoxLayout* underLabel(QLabel* label, QWidget* field) {
  auto* column = new QVBoxLayout;
  column->setSpacing(kLabelGap);
  column->addWidget(label);
  column->addWidget(field);
  return column;
}

}  // namespace grainwise::ui
