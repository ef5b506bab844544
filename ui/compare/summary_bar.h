// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "core/mass/junctions.h"
#include "ui/theme/look.h"

class QHBoxLayout;

namespace grainwise::ui {

class CompareFeed;

/// One line between the lines and the pages: what B is against A, what matters most first, whichever
/// page is open; at the right end the controls of the face.
class SummaryBar : public QWidget {
  Q_OBJECT
 public:
  SummaryBar(Look* look, CompareFeed* feed, QWidget* parent = nullptr);

  void addControl(QWidget* control);
  [[nodiscard]] QString words() const;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Piece {
    QString words;
    std::optional<Grade> becomes;
  };
  void refresh();

  Look* m_look;
  CompareFeed* m_feed;
  QHBoxLayout* m_row;
  std::vector<Piece> m_pieces;
};

}  // namespace grainwise::ui
