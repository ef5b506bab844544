// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>
#include <functional>

#include "ui/theme/look.h"

class QListWidget;

namespace grainwise::ui {

/// A press beside the rows does not take the mark off the chosen one, which is still what is shown.
void keepChosen(QListWidget* list);

/// Rows of a list of groups or tasks: quiet words, the chosen one on a pill like the drawer's tabs. Where the
/// keyboard is in the list, the pill has a ring.
class PillList : public QStyledItemDelegate {
 public:
  /// `height` of a row in pixels at type scale 1, never under `least`.
  PillList(Look* look, int height, int least, QListWidget* list);

  [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
  /// Pixels beside the words of a row, both sides together.
  static int beside();
  /// Whether the chosen row only waits, since something else is shown.
  std::function<bool()> waits;

 private:
  Look* m_look;
  int m_height;
  int m_least;
};

}  // namespace grainwise::ui
