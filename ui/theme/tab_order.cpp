// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/tab_order.h"

#include <QGridLayout>
#include <QScrollArea>
#include <QWidget>
#include <algorithm>

namespace grainwise::ui {
namespace {

class Stops {
 public:
  void add(QWidget* widget) {
    if (widget == nullptr || widget->isWindow()) return;
    const bool stop = (widget->focusPolicy() & Qt::TabFocus) && widget->focusProxy() == nullptr;
    if (stop && !m_found.contains(widget)) m_found.append(widget);
    if (const auto* area = qobject_cast<const QScrollArea*>(widget)) return add(area->widget());
    if (widget->layout() != nullptr) return add(widget->layout());
    // Blocks of a line, parts of a control: as they are.
    for (QWidget* next = widget->nextInFocusChain(); next != widget; next = next->nextInFocusChain()) {
      if (widget->isAncestorOf(next) && next->parentWidget() == widget) add(next);
    }
  }
  [[nodiscard]] const QList<QWidget*>& found() const { return m_found; }

 private:
  void add(QLayout* layout) {
    QList<int> order;
    for (int i = 0; i < layout->count(); ++i) order.append(i);
    if (const auto* grid = qobject_cast<const QGridLayout*>(layout)) {
      const auto cell = [grid](int item) {
        int row = 0, column = 0, rows = 0, columns = 0;
        grid->getItemPosition(item, &row, &column, &rows, &columns);
        // A field over two rows has its name in the first and stands beside those of the second.
        return std::pair(row + std::min(rows, 2) - 1, column);
      };
      std::stable_sort(order.begin(), order.end(), [&](int a, int b) { return cell(a) < cell(b); });
    }
    for (const int i : std::as_const(order)) {
      QLayoutItem* item = layout->itemAt(i);
      item->layout() != nullptr ? add(item->layout()) : add(item->widget());
    }
  }

  QList<QWidget*> m_found;
};

}  // namespace

void tabAsLaidOut(QWidget* page) {
  Stops stops;
  stops.add(page);
  const QList<QWidget*>& found = stops.found();
  for (qsizetype i = 1; i < found.size(); ++i) {
    QWidget::setTabOrder(found[i - 1], found[i]);
    // A list's inner part goes with it: Qt puts what comes next behind that.
    for (QWidget* inner : found[i]->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
      if (inner->focusProxy() == found[i]) QWidget::setTabOrder(found[i], inner);
    }
  }
}

}  // namespace grainwise::ui
