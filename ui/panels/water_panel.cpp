// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/water_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

#include "core/analysis/depth_table.h"
#include "core/model/edits.h"
#include "core/model/limits.h"
#include "core/water/water_line.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/bed_choice.h"
#include "ui/strip/number_field.h"
#include "ui/text/measured_words.h"

namespace grainwise::ui {
namespace {
constexpr Limit kLeafWay{"way of the leaf", "ft", 0, 300, true};
constexpr Limit kLeafTime{"time of the leaf", "s", 0, 600, true};
constexpr int kNameWidth = 240, kPoolWidth = 230, kBedWidth = 220;
}  // namespace

WaterPanel::WaterPanel(Look* look, RigDocument* document, const PoolBook* pools, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_pools(pools) {
  setObjectName(QStringLiteral("waterPanel"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 8, 0, 8);
  m_first = new QHBoxLayout;
  m_first->setSpacing(16);
  column->addLayout(m_first);
  m_name = new QLineEdit(this);
  m_name->setMinimumHeight(32);
  m_name->setMaximumWidth(kNameWidth);
  m_name->setMaxLength(limits::kStringChars);
  addNamed(tr("Name of the water"), m_name);
  m_pool = new ElidedChoice(this);
  m_pool->setObjectName(QStringLiteral("waterPool"));
  addChoice(tr("Or a pool of yours"), m_pool, kPoolWidth);
  connect(m_pool, &QComboBox::activated, this, &WaterPanel::takePool);
  connect(pools, &PoolBook::changed, this, &WaterPanel::fillPools);
  m_bed = new BedChoice(this);
  m_bed->setObjectName(QStringLiteral("waterBed"));
  addChoice(tr("Bed"), m_bed, kBedWidth);
  connect(m_bed, &BedChoice::chosen, this, [this](std::optional<Bed> bed) {
    Water w = water();
    w.bed = bed;
    edit(nullptr, w);
  });
  m_angle = new NumberField(look, tr("Angle, degrees"), Measure::plain, limits::kAngle, this);
  m_angle->setToolTip(tr("Of the landed line below straight across"));
  m_mend = new NumberField(look, tr("Mend, seconds"), Measure::plain, limits::kMend, this);
  m_mend->setToolTip(tr("How long the line drifts free before it comes tight"));
  addFishing(m_first, m_angle, "angle_deg", &Swing::angle);
  addFishing(m_first, m_mend, "mend_s", &Swing::mend);
  m_first->addStretch(1);
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

template <class Q>
void WaterPanel::addFishing(QHBoxLayout* row, NumberField* field, const char* key,
                            std::optional<Q> Swing::*member) {
  field->setOptional(true);
  field->setWidths(110, 150);
  field->edit()->setObjectName(QStringLiteral("water_") + QLatin1String(key));
  row->addWidget(field);
  const auto put = [this, key, member](std::optional<Q> value, const std::string& digits) {
    Swing swing = m_document->rig().swing.value_or(Swing{});
    swing.*member = value;
    keepDigits(swing.kept, key, value ? value->value() : 0, digits);
    const auto after = swing == Swing{} ? std::nullopt : std::optional(swing);
    m_document->apply(WaterPanel::tr("Change how it is fished"), edits::withSwing(m_document->rig(), after),
                      QStringLiteral("water/") + QLatin1String(key));
  };
  connect(field, &NumberField::typed, this,
          [put](const Typed& t) { put(Q(t.value), t.digits.toStdString()); });
  connect(field, &NumberField::cleared, this, [put] { put(std::nullopt, {}); });
}

/// A control under its name, behind those that came before it.
void WaterPanel::addNamed(const QString& name, QWidget* control) {
  auto* label = new QLabel(name, this);
  label->setTextFormat(Qt::PlainText);
  label->setBuddy(control);
  control->setAccessibleName(name);
  auto* column = new QVBoxLayout;
  column->setSpacing(2);
  column->addWidget(label);
  column->addWidget(control);
  column->addStretch(1);
  m_first->addLayout(column);
  m_labels << label;
}

void WaterPanel::addChoice(const QString& name, QComboBox* choice, int width) {
  choice->setMinimumHeight(32);
  choice->setFixedWidth(m_look->px(width));
  addNamed(name, choice);
}

/// The pool that the rig stands in as the book has it is the chosen one, else none is.
void WaterPanel::fillPools() {
  const QSignalBlocker quiet(m_pool);
  m_pool->clear();
  m_pool->addItem(tr("choose a pool\u2026"));
  m_pool->addItems(m_pools->names());
  const auto here = poolOf(*m_document->shown());
  const auto& all = m_pools->pools().pools;
  for (int i = 0; here && i < int(all.size()); ++i) {
    const Pool& pool = all[std::size_t(i)];
    const bool same = pool.name == here->name && pool.surfaceSpeed == here->surfaceSpeed &&
                      pool.depth == here->depth && pool.temperature == here->temperature &&
                      pool.salinity == here->salinity && pool.bed == here->bed;
    if (same) m_pool->setCurrentIndex(i + 1);
  }
}

void WaterPanel::takePool(int index) {
  const auto& all = m_pools->pools().pools;
  if (index < 1 || index > int(all.size())) return;
  const Pool pool = all[std::size_t(index - 1)];
  Q_EMIT goingTo(pool);
  m_document->apply(tr("Go to %1").arg(QString::fromStdString(pool.name)), inPool(m_document->rig(), pool));
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
    m_leafTime->setError(tr("That would be over %1: check the seconds.")
                             .arg(speedText(FeetPerSecond(limits::kSurfaceSpeed.high), m_look->units())));
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
                    key != nullptr ? QStringLiteral("water/") + QLatin1String(key) : QString());
}

void WaterPanel::refresh() {
  const Water w = m_document->shown()->water.value_or(Water{});
  const QString name = QString::fromStdString(w.name.value_or(std::string()));
  if (m_name->text() != name) m_name->setText(name);
  for (const Entry& entry : m_entries) {
    entry.field->setValue(entry.get(w), QString::fromStdString(digitsOf(w.kept, entry.key)));
  }
  const Swing fished = m_document->shown()->swing.value_or(Swing{});
  const SwingSetup usual;
  m_angle->setValue(fished.angle ? std::optional(fished.angle->value()) : std::nullopt,
                    QString::fromStdString(digitsOf(fished.kept, "angle_deg")));
  m_mend->setValue(fished.mend ? std::optional(fished.mend->value()) : std::nullopt,
                   QString::fromStdString(digitsOf(fished.kept, "mend_s")));
  m_angle->setDerived(numberText(usual.angle.value(), 0));
  m_mend->setDerived(numberText(usual.mend.value(), 0));
  fillPools();
  m_bed->setBed(w.bed);
  const CurrentFit* fit = holding(w.measured, w.surfaceSpeed);
  m_measured->setText(fit ? measuredWords(*fit, m_look->units()) : QString());
  m_measured->setVisible(fit != nullptr);
}

void WaterPanel::applyLook() {
  for (QLabel* label : m_labels) label->setFont(m_look->font(14));
  m_pool->setFont(m_look->font(16));
  m_bed->setFont(m_look->font(16));
  m_name->setFont(m_look->font(16));
  m_caution->setFont(m_look->font(14));
  m_measured->setFont(m_look->font(14));
  refresh();
}

}  // namespace grainwise::ui
