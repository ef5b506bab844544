// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

#include "core/analysis/depth_table.h"
#include "ui/theme/look.h"

class QLabel;
class QTableWidget;

namespace grainwise::ui {

class AnalysisFeed;
class PoolBook;

/// How deep the rig fishes in every pool, at low, usual and high current: half a
/// foot a second slower and faster than stated.
class DepthTablePanel : public QWidget {
  Q_OBJECT
 public:
  DepthTablePanel(Look* look, AnalysisFeed* feed, const PoolBook* pools, QWidget* parent = nullptr);
  [[nodiscard]] const QTableWidget* table() const { return m_table; }

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void refresh();
  [[nodiscard]] std::vector<DepthRow> rows() const;
  [[nodiscard]] QString words(const DepthCell& cell) const;

  Look* m_look;
  AnalysisFeed* m_feed;
  const PoolBook* m_pools;
  QTableWidget* m_table;
  QLabel* m_note;
};

}  // namespace grainwise::ui
