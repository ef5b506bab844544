// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/pools_panel.h"

#include <QComboBox>
#include <QFileDialog>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "core/analysis/depth_table.h"
#include "core/choose/candidate.h"
#include "core/model/limits.h"
#include "ui/charts/way_out.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/bed_choice.h"
#include "ui/panels/panel_tables.h"
#include "ui/strip/number_field.h"
#include "ui/text/measured_words.h"
#include "ui/text/problem_words.h"

namespace grainwise::ui {
namespace {

constexpr int kListWidth = 220;
constexpr int kBedWidth = 190;
constexpr auto kFilter =
    QT_TRANSLATE_NOOP("grainwise::ui::PoolsPanel", "Pools (*.pools.json);;All files (*)");

template <class Q>
std::function<void(Pool&, std::optional<double>)> into(std::optional<Q> Pool::*member) {
  return [member](Pool& pool, std::optional<double> value) {
    pool.*member = value ? std::optional(Q(*value)) : std::nullopt;
  };
}
template <class Q>
std::function<std::optional<double>(const Pool&)> from(std::optional<Q> Pool::*member) {
  return [member](const Pool& pool) {
    return pool.*member ? std::optional((pool.*member)->value()) : std::nullopt;
  };
}
template <class Q>
std::function<void(Pool&, std::optional<double>)> into(Q Pool::*member) {
  return [member](Pool& pool, std::optional<double> value) {
    if (value) pool.*member = Q(*value);
  };
}
template <class Q>
std::function<std::optional<double>(const Pool&)> from(Q Pool::*member) {
  return [member](const Pool& pool) { return std::optional((pool.*member).value()); };
}

}  // namespace

PoolsPanel::PoolsPanel(Look* look, RigDocument* document, PoolBook* pools, QWidget* parent)
    : QWidget(parent), m_look(look), m_document(document), m_pools(pools) {
  setObjectName(QStringLiteral("poolsPanel"));
  askOpenPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Open pools"), QString(), tr(kFilter));
  };
  askSavePath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Save the pools"), QString(), tr(kFilter));
  };
  layOut();
  connect(pools, &PoolBook::changed, this, &PoolsPanel::fillList);
  connect(m_list, &QListWidget::currentRowChanged, this, [this] {
    if (!m_filling) fillFields();
  });
  connect(m_name, &QLineEdit::editingFinished, this, &PoolsPanel::editName);
  connect(m_wanted, &QComboBox::activated, this, [this] { editWanted(); });
  connect(look, &Look::changed, this, &PoolsPanel::applyLook);
  applyLook();
  fillList();
}

QPushButton* PoolsPanel::addButton(const char* name, const QString& words,
                                   std::function<void()> what) {
  auto* button = new QPushButton(words, this);
  button->setObjectName(QLatin1String(name));
  connect(button, &QPushButton::clicked, this, [what = std::move(what)] { what(); });
  m_buttons.append(button);
  return button;
}

NumberField* PoolsPanel::addField(const char* name, NumberField* field, bool optional,
                                  std::function<void(Pool&, std::optional<double>)> put,
                                  std::function<std::optional<double>(const Pool&)> get) {
  field->setObjectName(QLatin1String(name));
  field->setOptional(optional);
  field->setWidths(0, 150);
  connect(field, &NumberField::typed, this, [this, put](const Typed& number) {
    edit([&](Pool& pool) { put(pool, number.value); });
  });
  connect(field, &NumberField::cleared, this, [this, put] {
    edit([&](Pool& pool) { put(pool, std::nullopt); });
  });
  m_entries.append({field, std::move(get)});
  return field;
}

void PoolsPanel::layOut() {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 0, 4);
  row->setSpacing(16);
  m_list = new QListWidget(this);
  m_list->setObjectName(QStringLiteral("poolList"));
  m_list->setAccessibleName(tr("Pools"));
  m_list->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Ignored);
  row->addWidget(m_list);
  (new WayOut(m_look, m_list))->add(tr("Pools"), [this] { return poolsTable(m_pools->pools(), m_look->units()); });

  auto* buttons = new QGridLayout;
  buttons->setSpacing(4);
  buttons->addWidget(addButton("poolFish", tr("Fish here"), [this] {
    const auto pool = current();
    if (!pool) return;
    m_document->apply(tr("Go to %1").arg(QString::fromStdString(pool->name)),
                      inPool(m_document->rig(), *pool));
  }), 0, 0, 1, 2);
  buttons->addWidget(addButton("poolAdd", tr("Add"), [this] { add(); }), 1, 0);
  buttons->addWidget(addButton("poolRemove", tr("Remove"), [this] {
    if (m_list->currentRow() >= 0) m_pools->remove(std::size_t(m_list->currentRow()));
  }), 1, 1);
  m_takeBack = addButton("poolTakeBack", tr("Undo"), [this] { m_pools->takeBack(); });
  buttons->addWidget(m_takeBack, 2, 0, 1, 2);
  buttons->addWidget(addButton("poolOpen", tr("Open…"), [this] { openFile(); }), 3, 0);
  buttons->addWidget(addButton("poolSave", tr("Save as…"), [this] { saveFile(); }), 3, 1);
  buttons->setRowStretch(4, 1);
  row->addLayout(buttons);

  auto* fields = new QVBoxLayout;
  fields->setSpacing(4);
  row->addLayout(fields, 1);
  auto* first = new QHBoxLayout;
  first->setSpacing(12);
  m_nameLabel = new QLabel(tr("Name"), this);
  m_name = new QLineEdit(this);
  m_name->setObjectName(QStringLiteral("poolName"));
  m_name->setMaxLength(limits::kStringChars);
  m_name->setMinimumHeight(32);
  m_name->setMaximumWidth(220);
  m_nameLabel->setBuddy(m_name);
  auto* nameColumn = underLabel(m_nameLabel, m_name);
  nameColumn->addStretch(1);
  first->addLayout(nameColumn);
  const auto field = [this](const QString& words, Measure measure, const Limit& limit) {
    return new NumberField(m_look, words, measure, limit, this);
  };
  first->addWidget(addField("poolSpeed", field(tr("Surface speed"), Measure::speed, limits::kSurfaceSpeed),
                            false, into(&Pool::surfaceSpeed), from(&Pool::surfaceSpeed)));
  first->addWidget(addField("poolDepth", field(tr("Depth"), Measure::length, limits::kDepth), false,
                            into(&Pool::depth), from(&Pool::depth)));
  first->addWidget(addField("poolTemperature",
                            field(tr("Temperature"), Measure::temperature, limits::kTemperature), true,
                            into(&Pool::temperature), from(&Pool::temperature)));
  m_bedLabel = new QLabel(tr("Bed"), this);
  m_bed = new BedChoice(this);
  m_bed->setObjectName(QStringLiteral("poolBed"));
  m_bed->setAccessibleName(m_bedLabel->text());
  m_bed->setMinimumHeight(32);
  connect(m_bed, &BedChoice::chosen, this,
          [this](std::optional<Bed> bed) { edit([&](Pool& pool) { pool.bed = bed; }); });
  auto* bedColumn = underLabel(m_bedLabel, m_bed);
  bedColumn->addStretch(1);
  first->addLayout(bedColumn);
  first->addStretch(1);
  fields->addLayout(first);

  auto* second = new QHBoxLayout;
  second->setSpacing(12);
  m_wantedLabel = new QLabel(tr("The fly is wanted"), this);
  m_wanted = new QComboBox(this);
  m_wanted->setObjectName(QStringLiteral("poolWanted"));
  m_wanted->setAccessibleName(m_wantedLabel->text());
  m_wanted->addItems({tr("anywhere"), tr("off the bottom"), tr("below the surface")});
  m_wanted->setMinimumHeight(32);
  auto* wantedColumn = underLabel(m_wantedLabel, m_wanted);
  wantedColumn->addStretch(1);
  second->addLayout(wantedColumn);
  m_low = field(tr("From"), Measure::length, limits::kWantedDepth);
  m_high = field(tr("To"), Measure::length, limits::kWantedDepth);
  const auto end = [this](NumberField* f, const char* name, std::optional<double>& value) {
    f->setObjectName(QLatin1String(name));
    f->setWidths(0, 150);
    connect(f, &NumberField::typed, this, [this, &value](const Typed& number) {
      value = number.value;
      editWanted();
    });
  };
  end(m_low, "poolLow", m_typedLow);
  end(m_high, "poolHigh", m_typedHigh);
  second->addWidget(m_low);
  second->addWidget(m_high);
  second->addWidget(addField("poolAngle", field(tr("Angle, degrees"), Measure::plain, limits::kAngle), true,
                             into(&Pool::angle), from(&Pool::angle)));
  second->addWidget(addField("poolMend", field(tr("Slack, seconds"), Measure::plain, limits::kMend), true,
                             into(&Pool::mend), from(&Pool::mend)));
  second->addStretch(1);
  fields->addLayout(second);
  m_note = new QLabel(this);
  m_note->setObjectName(QStringLiteral("poolNote"));
  m_note->setTextFormat(Qt::PlainText);
  m_note->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  fields->addWidget(m_note);
  fields->addStretch(1);
}

std::optional<Pool> PoolsPanel::current() const {
  const int row = m_list->currentRow();
  const auto& list = m_pools->pools().pools;
  return row >= 0 && std::size_t(row) < list.size() ? std::optional(list[std::size_t(row)])
                                                    : std::nullopt;
}

void PoolsPanel::edit(const std::function<void(Pool&)>& change) {
  auto pool = current();
  if (!pool || m_filling) return;
  change(*pool);
  m_pools->replace(std::size_t(m_list->currentRow()), *pool);
}

void PoolsPanel::editName() {
  const QString name = m_name->text().trimmed();
  const auto pool = current();
  if (!pool || name.isEmpty() || name.toStdString() == pool->name) return;
  const std::string free = m_pools->freeName(name);
  edit([&](Pool& p) { p.name = free; });
}

void PoolsPanel::editWanted() {
  const auto wanted = Wanted(m_wanted->currentIndex());
  const double low = m_typedLow.value_or(0.5), high = m_typedHigh.value_or(low + 1.5);
  if (wanted != Wanted::nothing && low >= high) {
    m_high->setError(tr("must be more than the first"));
    return;
  }
  edit([&](Pool& pool) {
    pool.clearance.reset();
    pool.wantedDepth.reset();
    const FeetRange range{Feet(low), Feet(high)};
    if (wanted == Wanted::offBottom) pool.clearance = range;
    if (wanted == Wanted::belowSurface) pool.wantedDepth = range;
  });
}

void PoolsPanel::add() {
  Pool pool = current().value_or(Pool{});
  if (!current()) {
    pool.surfaceSpeed = FeetPerSecond(3);
    pool.depth = Feet(5);
  }
  pool.kept = {};
  pool.note.reset();
  pool.name = m_pools->freeName(tr("New pool"));
  m_pools->add(pool);
  m_list->setCurrentRow(m_list->count() - 1);
  m_name->setFocus();
  m_name->selectAll();
}

void PoolsPanel::openFile() {
  const QString path = askOpenPath();
  if (path.isEmpty()) return;
  const Problems problems = m_pools->open(path);
  if (!problems.empty()) m_note->setText(problemLine(problems.front()));
}

void PoolsPanel::saveFile() {
  const QString path = askSavePath();
  if (path.isEmpty()) return;
  const Problems problems = m_pools->saveAs(path);
  if (!problems.empty()) m_note->setText(problemLine(problems.front()));
}

void PoolsPanel::fillList() {
  m_filling = true;
  const int row = std::max(m_list->currentRow(), 0);
  const QStringList names = m_pools->names();
  QStringList shown;
  for (int i = 0; i < m_list->count(); ++i) shown << m_list->item(i)->text();
  if (shown != names) {
    m_list->clear();
    m_list->addItems(names);
    m_list->setCurrentRow(std::min(row, int(names.size()) - 1));
  }
  m_takeBack->setEnabled(m_pools->canTakeBack());
  m_filling = false;
  fillFields();
}

void PoolsPanel::fillFields() {
  const auto pool = current();
  m_filling = true;
  setEnabled(true);
  const QSignalBlocker quiet(m_wanted);
  m_name->setEnabled(pool.has_value());
  if (pool && m_name->text().trimmed() != QString::fromStdString(pool->name)) {
    m_name->setText(QString::fromStdString(pool->name));
  }
  for (const Entry& entry : m_entries) {
    entry.field->setEnabled(pool.has_value());
    entry.field->setValue(pool ? entry.get(*pool) : std::nullopt);
  }
  m_bed->setEnabled(pool.has_value());
  m_bed->setBed(pool ? pool->bed : std::nullopt);
  const auto& range = pool ? (pool->clearance ? pool->clearance : pool->wantedDepth)
                           : std::optional<FeetRange>();
  m_typedLow = range ? std::optional(range->low.value()) : std::nullopt;
  m_typedHigh = range ? std::optional(range->high.value()) : std::nullopt;
  m_wanted->setCurrentIndex(!range            ? 0
                            : pool->clearance ? int(Wanted::offBottom)
                                              : int(Wanted::belowSurface));
  for (NumberField* f : {m_low, m_high}) f->setVisible(range.has_value());
  m_low->setValue(m_typedLow);
  m_high->setValue(m_typedHigh);
  m_high->setError({});
  QStringList notes;
  const CurrentFit* fit = pool ? holding(pool->measured, pool->surfaceSpeed) : nullptr;
  if (fit) notes << measuredWords(*fit, m_look->units());
  if (pool && pool->note) notes << QString::fromStdString(*pool->note);
  m_note->setText(notes.join(QStringLiteral(". ")));
  m_filling = false;
}

void PoolsPanel::applyLook() {
  m_list->setFixedWidth(m_look->px(kListWidth));
  m_list->setFont(m_look->font(15));
  for (QLabel* label : {m_nameLabel, m_bedLabel, m_wantedLabel}) label->setFont(m_look->font(14));
  m_name->setFont(m_look->font(16));
  m_wanted->setFont(m_look->font(15));
  m_bed->setFont(m_look->font(15));
  m_bed->setFixedWidth(m_look->px(kBedWidth));
  m_note->setFont(m_look->font(14));
  for (QPushButton* button : m_buttons) {
    button->setFont(m_look->font(14));
    button->setMinimumHeight(m_look->px(30));
  }
}

}  // namespace grainwise::ui
