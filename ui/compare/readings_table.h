// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/mass/junctions.h"
#include "ui/text/out_table.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

class CompareFeed;

/// The readings of both rigs in two columns, with their glyphs and verdicts, and the difference in
/// words beside them.
class ReadingsTable : public QWidget {
  Q_OBJECT
 public:
  ReadingsTable(Look* look, CompareFeed* feed, QWidget* parent = nullptr);

  struct Cell {
    QString number;
    QString verdict;
    std::optional<Grade> grade;
  };
  struct Row {
    QString title;
    Cell a, b;
    QString difference;
  };
  [[nodiscard]] const std::vector<Row>& rows() const { return m_rows; }
  /// The same for a file or the clipboard, in the words of this moment's locale.
  [[nodiscard]] OutTable table() const;
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  struct Columns {
    double title, a, b, difference, end;
  };
  void refresh();
  [[nodiscard]] std::vector<Row> rowsNow() const;
  [[nodiscard]] Columns columns() const;
  [[nodiscard]] int rowHeight(const Row& row) const;
  [[nodiscard]] QString cellWords(const Cell& cell) const;
  void paintCell(QPainter& p, const QRectF& box, const Cell& cell) const;

  Look* m_look;
  CompareFeed* m_feed;
  std::vector<Row> m_rows;
};

}  // namespace grainwise::ui
