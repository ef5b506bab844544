// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>
#include <functional>

#include "ui/theme/look.h"

namespace grainwise::ui {

/// Rows of a list of groups or tasks: quiet words, the chosen one on a pill like the drawer's tabs. Where the
/// keyboard is in the list, the pill has a ring.
class PillList : public QStyledItemDelegate {
 public:
  /// `height` of a row in pixels at type scale 1, never under `least`.
  PillList(Look* look, int height, int least, QObject* parent)
      : QStyledItemDelegate(parent), m_look(look), m_height(height), m_least(least) {}

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
