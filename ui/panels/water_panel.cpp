// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/water_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <cmath>

#include "core/model/edits.h"
#include "core/model/limits.h"
#include "ui/document/rig_document.h"
#include "ui/strip/number_field.h"
#include "ui/text/measured_words.h"

namespace grainwise::ui {
namespace {
constexpr Limit kLeafWay{"way of the leaf", "ft", 0, 300, true};
constexpr Limit kLeafTime{"time of the leaf", "s", 0, 600, true};
}  // namespace

WaterPanel::WaterPanel(Look* look, RigDocument* document, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document) {
  setObjectName(QStringLiteral("waterPanel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 8, 0, 8);
  m_nameLabel = new QLabel(tr("Name of the water"), this);
  m_name = new QLineEdit(this);
  m_name->setMinimumHeight(32);
  m_name->setMaximumWidth(420);
  m_name->setMaxLength(limits::kStringChars);
  m_name->setAccessibleName(m_nameLabel->text());
  m_nameLabel->setBuddy(m_name);
  column->addWidget(m_nameLabel);
  column->addWidget(m_name);
  auto* row = new QHBoxLayout;
  row->setSpacing(16);
  column->addLayout(row);
  addField(row, new NumberField(look, tr("Surface speed"), Measure::speed, limits::kSurfaceSpeed, this),
           "surface_ft_per_s", &Water::surfaceSpeed);
  addField(row, new NumberField(look, tr("Depth"), Measure::length, limits::kDepth, this), "depth_ft",
           &Water::depth);
  addField(row,
           new NumberField(look, tr("Temperature"), Measure::temperature, limits::kTemperature, this),
           "temperature_c", &Water::temperature);
  addField(row, new NumberField(look, tr("Salt, g/kg"), Measure::plain, limits::kSalinity, this),
           "salinity_g_per_kg", &Water::salinity);
  addLeaf(row);
  row->addStretch(1);
  m_measured = new QLabel(this);
  m_measured->setObjectName(QStringLiteral("waterMeasured"));
  m_measured->setTextFormat(Qt::PlainText);
  column->addWidget(m_measured);
  m_caution = new QLabel(tr("Figures for the line, no guide to wading."), this);
  m_caution->setTextFormat(Qt::PlainText);
  column->addWidget(m_caution);
  column->addStretch(1);
  connect(m_name, &QLineEdit::textEdited, this, [this](const QString& text) {
    Water w = water();
    w.name = text.isEmpty() ? std::nullopt : std::optional(text.toStdString());
    edit("name", w);
  });
  connect(document, &RigDocument::rigChanged, this, &WaterPanel::refresh);
  connect(look, &Look::changed, this, &WaterPanel::applyLook);
  applyLook();
}

template <class Q>
void WaterPanel::addField(QHBoxLayout* row, NumberField* field, const char* key,
                          std::optional<Q> Water::*member) {
  field->setOptional(true);
  field->setWidths(130, 180);
  row->addWidget(field);
  m_entries.append({field, key, [member](const Water& w) {
                      return w.*member ? std::optional((w.*member)->value()) : std::nullopt;
                    }});
  connect(field, &NumberField::typed, this, [this, key, member](const Typed& t) {
    Water w = water();
    w.*member = Q(t.value);
    keepDigits(w.kept, key, t.value, t.digits.toStdString());
    edit(key, w);
  });
  connect(field, &NumberField::cleared, this, [this, key, member] {
    Water w = water();
    (w.*member).reset();
    keepDigits(w.kept, key, 0, {});
    edit(key, w);
  });
}

/// A leaf over a paced stretch is the plainest gauge of the surface there is.
void WaterPanel::addLeaf(QHBoxLayout* row) {
  m_leafWay = new NumberField(m_look, tr("or: a leaf drifts"), Measure::length, kLeafWay, this);
  m_leafTime = new NumberField(m_look, tr("in seconds"), Measure::plain, kLeafTime, this);
  m_leafWay->edit()->setObjectName(QStringLiteral("leafWay"));
  m_leafTime->edit()->setObjectName(QStringLiteral("leafTime"));
  for (NumberField* field : {m_leafWay, m_leafTime}) {
    field->setOptional(true);
    field->setWidths(110, 150);
    row->addWidget(field);
  }
  const auto bind = [this](NumberField* field, std::optional<double> WaterPanel::*figure) {
    connect(field, &NumberField::typed, this, [this, figure](const Typed& t) {
      this->*figure = t.value;
      timeLeaf();
    });
    connect(field, &NumberField::cleared, this, [this, figure] { (this->*figure).reset(); });
  };
  bind(m_leafWay, &WaterPanel::m_way_ft);
  bind(m_leafTime, &WaterPanel::m_time_s);
}

void WaterPanel::timeLeaf() {
  if (!m_way_ft || !m_time_s) return;
  const double speed = *m_way_ft / *m_time_s;
  if (!limits::kSurfaceSpeed.holds(speed)) {
    m_leafTime->setError(tr("That would be over 15 ft/s: check the seconds."));
    return;
  }
  m_leafTime->setError({});
  Water w = water();
  w.surfaceSpeed = FeetPerSecond(std::round(speed * 100) / 100);
  keepDigits(w.kept, "surface_ft_per_s", w.surfaceSpeed->value(), {});
  edit("surface_ft_per_s", w);
}

Water WaterPanel::water() const { return m_document->rig().water.value_or(Water{}); }

void WaterPanel::edit(const char* key, const Water& water) {
  const std::optional<Water> after = water == Water{} ? std::nullopt : std::optional(water);
  m_document->apply(tr("Change the water"), edits::withWater(m_document->rig(), after),
                    QStringLiteral("water/") + QLatin1String(key));
}

void WaterPanel::refresh() {
  const Water w = m_document->shown()->water.value_or(Water{});
  const QString name = QString::fromStdString(w.name.value_or(std::string()));
  if (m_name->text() != name) m_name->setText(name);
  for (const Entry& entry : m_entries) {
    entry.field->setValue(entry.get(w), QString::fromStdString(digitsOf(w.kept, entry.key)));
  }
  const CurrentFit* fit = holding(w.measured, w.surfaceSpeed);
  m_measured->setText(fit ? measuredWords(*fit, m_look->units()) : QString());
  m_measured->setVisible(fit != nullptr);
}

void WaterPanel::applyLook() {
  m_nameLabel->setFont(m_look->font(14));
  m_name->setFont(m_look->font(16));
  m_caution->setFont(m_look->font(14));
  m_measured->setFont(m_look->font(14));
  refresh();
}

}  // namespace grainwise::ui
