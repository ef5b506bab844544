// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/value_row.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "ui/strip/number_field.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kFieldWidth = 120;
constexpr int kUsualWidth = 176;
constexpr int kButtonRoom = 24;  ///< of both sides together, beside a button's words
}  // namespace

ValueRow::ValueRow(Look* look, const ValueSpec& spec, QWidget* parent)
    : QWidget(parent), m_look(look), m_spec(spec) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 2, 0, 2);
  row->setSpacing(12);
  m_name = new QLabel(this);
  m_usual = new QLabel(this);
  for (QLabel* label : {m_name, m_usual}) {
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
  }
  m_field = new NumberField(look, spec.name, spec.measure, spec.limit, this);
  m_field->setNameVisible(false);
  m_field->setOptional(spec.optional);
  m_field->edit()->setObjectName(spec.object);
  m_name->setBuddy(m_field->edit());
  m_reset = new QPushButton(tr("Reset"), this);
  m_reset->setObjectName(spec.object + QStringLiteral("_reset"));
  QSizePolicy keepsRoom = m_reset->sizePolicy();
  keepsRoom.setRetainSizeWhenHidden(true);
  m_reset->setSizePolicy(keepsRoom);
  m_reset->setAccessibleName(tr("Reset: %1").arg(spec.name));
  row->addWidget(m_name, 1);
  row->addWidget(m_field);
  row->addWidget(m_usual);
  row->addWidget(m_reset);
  connect(m_field, &NumberField::typed, this, [this](const Typed& number) { Q_EMIT typed(number.value); });
  connect(m_field, &NumberField::cleared, this, &ValueRow::cleared);
  connect(m_reset, &QPushButton::clicked, this, &ValueRow::resetWanted);
  connect(look, &Look::changed, this, &ValueRow::applyLook);
  applyLook();
}

void ValueRow::setValue(std::optional<double> value, const QString& usual, bool isUsual) {
  m_field->setValue(value);
  m_usual->setText(usual);
  m_reset->setVisible(!isUsual);
}

void ValueRow::refuse(const QString& why) {
  m_field->setError(why);
  m_reset->show();
}

void ValueRow::applyLook() {
  const QString unit = m_spec.measure == Measure::plain ? m_spec.unit : unitOf(m_spec.measure, m_look->units());
  m_name->setText(unit.isEmpty() ? m_spec.name : tr("%1, %2", "a name, its unit").arg(m_spec.name, unit));
  for (QWidget* widget : {static_cast<QWidget*>(m_name), static_cast<QWidget*>(m_usual),
                          static_cast<QWidget*>(m_reset)}) {
    widget->setFont(m_look->font(kType));
  }
  QPalette p = m_usual->palette();
  p.setColor(QPalette::WindowText, m_look->colours().slate);
  m_usual->setPalette(p);
  m_field->setFixedWidth(m_look->px(kFieldWidth));
  m_usual->setFixedWidth(m_look->px(kUsualWidth));
  m_reset->setMinimumWidth(QFontMetrics(m_reset->font()).horizontalAdvance(m_reset->text()) + kButtonRoom);
}

}  // namespace grainwise::ui
