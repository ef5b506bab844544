// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/theme/pill_list.h"

#include <QListWidget>
#include <QPainter>
#include <QWidget>
#include <algorithm>

namespace grainwise::ui {
namespace {
constexpr int kType = 16;
constexpr int kAside = 2;
constexpr int kBefore = 14;
constexpr int kBehind = 10;
constexpr double kInset = 2.5;
constexpr double kRing = 1.5;  ///< of the keyboard: it stays within its row
constexpr int kLeastAir = 4;  ///< between the words and the pill's upper and lower edge
}  // namespace

void keepChosen(QListWidget* list) {
  QObject::connect(list, &QListWidget::itemSelectionChanged, list, [list] {
    QListWidgetItem* current = list->currentItem();
    if (current != nullptr && list->selectedItems().isEmpty()) current->setSelected(true);
  });
}

PillList::PillList(Look* look, int height, int least, QListWidget* list)
    : QStyledItemDelegate(list), m_look(look), m_height(height), m_least(least) {
  keepChosen(list);
}

int PillList::beside() { return 2 * kAside + kBefore + kBehind; }

QSize PillList::sizeHint(const QStyleOptionViewItem&, const QModelIndex&) const {
  return {m_look->px(100), std::max(m_least, m_look->px(m_height))};
}

void PillList::paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const {
  p->save();
  p->setRenderHint(QPainter::Antialiasing);
  const Colours& c = m_look->colours();
  const bool chosen = option.state & QStyle::State_Selected;
  const bool focused = option.widget != nullptr && option.widget->hasFocus();
  p->setFont(m_look->font(kType));
  const double air = std::clamp((option.rect.height() - p->fontMetrics().height()) / 2.0 - kLeastAir, kRing, 4.0);
  const QRectF pill = QRectF(option.rect).adjusted(kAside, air, -kAside, -air);
  const bool onlyWaits = chosen && waits && waits();
  if (chosen) {
    p->setBrush(onlyWaits ? QBrush(Qt::NoBrush) : QBrush(c.pill));
    p->setPen(onlyWaits ? QPen(focused ? c.river : c.slate, focused ? 2.5 : 1) : QPen(Qt::NoPen));
    p->drawRoundedRect(pill, pill.height() / 2, pill.height() / 2);
    if (focused && !onlyWaits) {  // as on a chosen tab: in the colour of its words, a little inside
      const QRectF ring = pill.adjusted(kInset, kInset, -kInset, -kInset);
      p->setBrush(Qt::NoBrush);
      p->setPen(QPen(c.onPill, 2));
      p->drawRoundedRect(ring, ring.height() / 2, ring.height() / 2);
    }
  }
  p->setPen(chosen && !onlyWaits ? c.onPill : c.ink);
  const QRectF words = pill.adjusted(kBefore, 0, -kBehind, 0);
  const QString text = index.data(Qt::DisplayRole).toString();
  p->drawText(words, Qt::AlignLeft | Qt::AlignVCenter,
              p->fontMetrics().elidedText(text, Qt::ElideRight, int(words.width())));
  p->restore();
}

}  // namespace grainwise::ui
