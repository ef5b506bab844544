// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/depth_table_panel.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include "ui/charts/way_out.h"
#include "ui/document/pool_book.h"
#include "ui/panels/panel_tables.h"
#include "ui/text/measured_words.h"
#include "ui/text/quantities.h"
#include "ui/text/words.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::ui {
namespace {
constexpr int kType = 15;
constexpr int kRow = 28;
constexpr FeetPerSecond kStep(0.5);
constexpr int kLeastRows = 3;  // the table scrolls, not the page around it
}  // namespace

DepthTablePanel::DepthTablePanel(Look* look, AnalysisFeed* feed, const PoolBook* pools, QWidget* parent)
    : QWidget(parent), m_look(look), m_feed(feed), m_pools(pools) {
  setObjectName(QStringLiteral("depthTable"));
  m_table = new QTableWidget(0, 5, this);
  m_table->setAccessibleName(tr("Depths of this rig in all pools"));
  m_table->setEditTriggers(QAbstractItemView::NoEditTriggers);
  m_table->setSelectionMode(QAbstractItemView::SingleSelection);
  m_table->setFrameShape(QFrame::NoFrame);
  m_table->verticalHeader()->hide();
  m_table->horizontalHeader()->setHighlightSections(false);
  m_table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
  m_table->horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
  m_note = new QLabel(this);
  m_note->setTextFormat(Qt::PlainText);  // in one line: a height by width would give the table no less than its wish
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 4, 0, 0);
  column->addWidget(m_table, 1);
  column->addWidget(m_note);
  (new WayOut(look, m_table))->add(tr("Depths in all pools"), [this] { return depthsTable(rows(), m_look->units()); });
  connect(feed, &AnalysisFeed::analysisChanged, this, &DepthTablePanel::refresh);
  connect(pools, &PoolBook::changed, this, &DepthTablePanel::refresh);
  connect(look, &Look::changed, this, &DepthTablePanel::refresh);
}

QString DepthTablePanel::words(const DepthCell& cell) const {
  if (!cell.state) return missingWords(Missing::flyMass);
  if (!cell.band || isOnBottom(*cell.state)) return depthWords(*cell.state);
  const QString range = tr("%1\u2013%2", "a range of depth")
                            .arg(numberText(shownValue(cell.band->low.value(), Measure::length, m_look->units()), 1),
                                 roundLengthText(cell.band->high, m_look->units()));
  return *cell.state == DepthState::hangs ? range
                                                : tr("%1, %2").arg(range, depthWords(*cell.state));
}

std::vector<DepthRow> DepthTablePanel::rows() const {
  return depthTable(*m_feed->rig(), m_pools->pools().pools, m_feed->conditions(), kStep);
}

void DepthTablePanel::refresh() {
  if (!isVisible()) return;
  const auto rows = this->rows();
  m_table->setFont(m_look->font(kType));
  m_table->setMinimumHeight(m_look->px(kLeastRows * kRow));
  m_table->horizontalHeader()->setFont(m_look->font(kType, true));
  m_note->setFont(m_look->font(kType - 1));
  m_table->setHorizontalHeaderLabels(
      {tr("Pool"), tr("Water"), tr("Low current"), tr("Usual current"), tr("High current")});
  m_table->setRowCount(int(rows.size()));
  for (int i = 0; i < int(rows.size()); ++i) {
    const DepthRow& row = rows[std::size_t(i)];
    const DisplayUnits units = m_look->units();
    QStringList cells{QString::fromStdString(row.pool.name),
                      tr("%1, %2", "a pool's depth, its current")
                          .arg(lengthText(row.pool.depth, units),
                               currentText(row.pool.surfaceSpeed, row.pool.measured, units))};
    for (const DepthCell& cell : row.cells) cells << words(cell);
    for (int c = 0; c < cells.size(); ++c) m_table->setItem(i, c, new QTableWidgetItem(cells[c]));
    m_table->setRowHeight(i, m_look->px(kRow));
  }
  m_note->setText(rows.empty()
                      ? tr("No pools yet: add one under Pools.")
                      : tr("Live estimates. Low and high: %1 slower and faster than the pool states.")
                            .arg(speedText(kStep, m_look->units())));
}

void DepthTablePanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  refresh();
}

}  // namespace grainwise::ui
