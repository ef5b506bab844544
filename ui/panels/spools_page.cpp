// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/spools_page.h"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "core/io/spools_file.h"
#include "core/model/check.h"
#include "core/model/limits.h"
#include "core/report/cut_sheet.h"
#include "ui/charts/way_out.h"
#include "ui/document/own_store.h"
#include "ui/document/whole_file.h"
#include "ui/panels/panel_tables.h"
#include "ui/strip/number_field.h"
#include "ui/text/bench_words.h"

namespace grainwise::ui {
namespace {

enum Kind { sinking, floating, nylon, fluorocarbon };
constexpr Limit kFeet{"length on the spool", "ft", 0, 5000};

void follow(NumberField* field, std::optional<double>& typed) {
  QObject::connect(field, &NumberField::typed, field, [&typed](const Typed& t) { typed = t.value; });
  QObject::connect(field, &NumberField::cleared, field, [&typed] { typed.reset(); });
  field->setOptional(true);
  field->setWidths(0, 130);
}

}  // namespace

SpoolsPage::SpoolsPage(Look* look, OwnStore* store, QWidget* parent)
    : MakePage(look, "makeSpools", parent), m_store(store) {
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 4, 8, 4);
  row->setSpacing(16);
  m_table = new QTableWidget(0, 3, this);
  m_table->setObjectName(QStringLiteral("spoolTable"));
  m_table->setAccessibleName(tr("Spools"));
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  m_table->horizontalHeader()->setSectionResizeMode(2, QHeaderView::ResizeToContents);  // names want the room
  m_table->verticalHeader()->hide();
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
  m_table->setMinimumHeight(look->px(130));
  row->addWidget(m_table, 3);
  (new WayOut(look, m_table))->add(tr("Spools"), [this] { return spoolsTable(m_store->spools(), units()); });
  auto* right = new QVBoxLayout;
  auto* fields = new QHBoxLayout;
  m_kind = addChoice({tr("sinking"), tr("floating"), tr("nylon"), tr("fluorocarbon")},
                     tr("Kind of line"), "spoolKind");
  m_mass = new NumberField(look, tr("A foot weighs"), Measure::lineMass, limits::kGrainsPerFoot, this);
  m_rate = new NumberField(look, tr("Sinks"), Measure::rate, limits::kSinkRate, this);
  m_diameter = new NumberField(look, tr("Diameter"), Measure::diameter, limits::kDiameter, this);
  m_feet = new NumberField(look, tr("On the spool"), Measure::length, kFeet, this);
  m_mass->edit()->setObjectName(QStringLiteral("spoolMass"));
  m_rate->edit()->setObjectName(QStringLiteral("spoolRate"));
  m_diameter->edit()->setObjectName(QStringLiteral("spoolDiameter"));
  m_feet->edit()->setObjectName(QStringLiteral("spoolFeet"));
  follow(m_mass, m_massTyped);
  follow(m_rate, m_rateTyped);
  follow(m_diameter, m_diameterTyped);
  follow(m_feet, m_feetTyped);
  fields->addWidget(underName(m_kind, tr("Kind of line")));
  for (NumberField* field : {m_mass, m_rate, m_diameter, m_feet}) fields->addWidget(field);
  fields->addStretch(1);
  auto* buttons = new QHBoxLayout;
  auto* add = addButton(tr("Add this spool"), "spoolAdd");
  m_remove = addButton(tr("Remove"), "spoolRemove");
  m_undo = addButton(tr("Undo"), "spoolUndo");
  auto* read = addButton(tr("Read a list…"), "spoolRead");
  auto* write = addButton(tr("Write the list…"), "spoolWrite");
  for (QPushButton* button : {add, m_remove, m_undo, read, write}) buttons->addWidget(button);
  buttons->addStretch(1);
  m_begin = addLabel(tr("No spools yet. Say what lies on the bench: its kind, what a foot of it weighs or how thick "
                        "it is, and how much is left. Or read a list of spools."));
  m_said = addLabel({});
  right->addLayout(fields);
  right->addLayout(buttons);
  right->addWidget(m_begin);
  right->addWidget(m_said);
  right->addStretch(1);
  row->addLayout(right, 4);
  askReadPath = [this] {
    return QFileDialog::getOpenFileName(this, tr("Read a list of spools"), {},
                                        tr("Spools (*.spools.json)"));
  };
  askWritePath = [this] {
    return QFileDialog::getSaveFileName(this, tr("Write the list of spools"),
                                        tr("bench.spools.json"), tr("Spools (*.spools.json)"));
  };
  connect(m_kind, &QComboBox::currentIndexChanged, this, &SpoolsPage::showFields);
  connect(add, &QPushButton::clicked, this, &SpoolsPage::addSpool);
  connect(m_remove, &QPushButton::clicked, this, &SpoolsPage::removeSpool);
  connect(m_undo, &QPushButton::clicked, store, &OwnStore::undo);
  connect(read, &QPushButton::clicked, this, [this] {
    const QString path = askReadPath();
    if (!path.isEmpty()) m_said->setText(readFile(path));
  });
  connect(write, &QPushButton::clicked, this, &SpoolsPage::writeFile);
  connect(m_table, &QTableWidget::cellChanged, this, &SpoolsPage::edited);
  connect(store, &OwnStore::spoolsChanged, this, &SpoolsPage::refresh);
  connect(store, &OwnStore::ownChanged, this, [this] { m_undo->setEnabled(m_store->canUndo()); });
  showFields();
  restyle();
}

void SpoolsPage::showFields() {
  const int kind = m_kind->currentIndex();
  const bool line = kind == sinking || kind == floating;
  m_mass->setVisible(line);
  m_rate->setVisible(kind == sinking);
  m_diameter->setVisible(!line);
}

void SpoolsPage::refresh() {
  m_filling = true;
  const auto& spools = m_store->spools().spools;
  m_table->setHorizontalHeaderLabels({tr("name"), tr("line"), tr("left")});
  m_table->setRowCount(int(spools.size()));
  for (int i = 0; i < int(spools.size()); ++i) {
    const Spool& spool = spools[std::size_t(i)];
    auto* line = new QTableWidgetItem(lineWords(stuffOf(spool), units()));
    line->setFlags(line->flags() & ~Qt::ItemIsEditable);
    m_table->setItem(i, 0, new QTableWidgetItem(QString::fromStdString(spool.name)));
    m_table->setItem(i, 1, line);
    m_table->setItem(i, 2, new QTableWidgetItem(tapeText(spool.left, units())));
  }
  m_filling = false;
  m_begin->setVisible(spools.empty());
  m_remove->setEnabled(!spools.empty());
  m_undo->setEnabled(m_store->canUndo());
}

void SpoolsPage::edited(int row, int column) {
  if (m_filling) return;
  Spools spools = m_store->spools();
  Spool& spool = spools.spools[std::size_t(row)];
  const QString text = m_table->item(row, column)->text();
  if (column == 0) spool.name = text.toStdString();
  if (column == 2) {
    const auto typed = parseTyped(text, Measure::length, units());
    const bool none = text.trimmed() == QStringLiteral("0 in");
    if (!none && (!typed || !kFeet.holds(typed->value))) {
      m_said->setText(tr("\"%1\" is no length on a spool").arg(text));
      return refresh();
    }
    spool.left = Feet(none ? 0.0 : typed->value);
    keepDigits(spool.kept, "feet_left", spool.left.value(), {});
  }
  m_said->clear();
  m_store->setSpools(spools);
  refresh();
}

void SpoolsPage::addSpool() {
  Spool spool;
  const int kind = m_kind->currentIndex();
  const bool line = kind == sinking || kind == floating;
  if (line && m_massTyped) spool.mass = GrainsPerFoot(*m_massTyped);
  if (kind == sinking && m_rateTyped) spool.sinkRate = InchesPerSecond(*m_rateTyped);
  if (kind == floating) spool.floats = true;
  if (!line && m_diameterTyped) spool.diameter = Inches(*m_diameterTyped);
  if (kind == nylon) spool.material = Material::nylon;
  if (kind == fluorocarbon) spool.material = Material::fluorocarbon;
  Spools one;
  spool.left = Feet(m_feetTyped.value_or(0));
  one.spools = {spool};
  const bool unread = !m_mass->error().isEmpty() || !m_rate->error().isEmpty() ||
                      !m_diameter->error().isEmpty() || !m_feet->error().isEmpty();
  const bool lacks = unread || !m_feetTyped || (line ? !spool.mass : !spool.diameter) ||
                     (kind == sinking && !spool.sinkRate);
  if (lacks || !check(one).empty()) {
    m_said->setText(kind == sinking ? tr("Give what a foot weighs, how fast it sinks and what is left")
                    : line ? tr("Give what a foot weighs and what is left")
                           : tr("Give the diameter and what is left"));
    return;
  }
  spool.name = lineName(stuffOf(spool));
  Spools spools = m_store->spools();
  spools.spools.push_back(spool);
  m_said->clear();
  m_store->setSpools(spools);
}

void SpoolsPage::removeSpool() {
  const int row = m_table->currentRow();
  Spools spools = m_store->spools();
  if (row < 0 || row >= int(spools.spools.size())) {
    m_said->setText(tr("Choose a spool in the table first"));
    return;
  }
  spools.spools.erase(spools.spools.begin() + row);
  m_store->setSpools(spools);
}

QString SpoolsPage::readFile(const QString& path) {
  const auto spools = loadSpools(path.toStdString());
  if (!spools) return problemText(spools.error().front());
  m_store->setSpools(*spools);
  return tr("%1 spools read").arg(spools->spools.size());
}

void SpoolsPage::writeFile() {
  const QString path = askWritePath();
  if (path.isEmpty()) return;
  const QString why = writeWhole(path, QByteArray::fromStdString(writeSpools(m_store->spools())));
  m_said->setText(why.isEmpty() ? tr("Written") : tr("Not written: %1").arg(why));
}

void SpoolsPage::restyle() {
  MakePage::restyle();
  m_table->setFont(look()->font(15));
  m_table->horizontalHeader()->setFont(look()->font(14));
  m_table->verticalHeader()->setDefaultSectionSize(look()->px(28));
  refresh();
}

}  // namespace grainwise::ui
