// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/flow_row.h"

#include <algorithm>

namespace grainwise::ui {

FlowRow::FlowRow(int gap) : m_gap(gap) { setContentsMargins(0, 0, 0, 0); }

FlowRow::~FlowRow() { qDeleteAll(m_items); }

void FlowRow::addItem(QLayoutItem* item) {
  m_items.append(item);
  invalidate();
}

QLayoutItem* FlowRow::itemAt(int index) const { return m_items.value(index, nullptr); }

QLayoutItem* FlowRow::takeAt(int index) {
  return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

int FlowRow::heightForWidth(int width) const { return layOut({0, 0, width, 0}, false); }

QSize FlowRow::minimumSize() const {
  QSize most;
  for (const QLayoutItem* item : m_items) {
    if (!item->isEmpty()) most = most.expandedTo(item->minimumSize());
  }
  return most;
}

QSize FlowRow::sizeHint() const {
  QSize all;
  for (const QLayoutItem* item : m_items) {
    if (item->isEmpty()) continue;
    const QSize hint = item->sizeHint();
    all = {all.width() + hint.width() + (all.width() > 0 ? m_gap : 0), std::max(all.height(), hint.height())};
  }
  return all;
}

void FlowRow::setGeometry(const QRect& rect) {
  QLayout::setGeometry(rect);
  layOut(rect, true);
}

int FlowRow::layOut(const QRect& rect, bool place) const {
  int y = rect.y();
  int used = 0;
  for (int from = 0; from < m_items.size();) {
    // What stands in this row, and how tall it is.
    int x = rect.x(), tall = 0, to = from;
    for (; to < m_items.size(); ++to) {
      if (m_items[to]->isEmpty()) continue;
      const QSize hint = m_items[to]->sizeHint();
      if (x > rect.x() && x + hint.width() > rect.x() + rect.width()) break;
      x += hint.width() + m_gap;
      tall = std::max(tall, hint.height());
    }
    x = rect.x();
    for (int i = from; place && i < to; ++i) {
      if (m_items[i]->isEmpty()) continue;
      const QSize hint = m_items[i]->sizeHint();
      const int wide = std::min(hint.width(), rect.width());
      m_items[i]->setGeometry({x, y + tall - hint.height(), wide, hint.height()});
      x += hint.width() + m_gap;
    }
    if (tall > 0) used = y + tall - rect.y();
    if (tall > 0) y += tall + m_gap;
    from = to;
  }
  return used;
}

}  // namespace grainwise::ui
