// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/panels/wallet_grid_model.h"

#include <QPainter>

#include "ui/text/choice_words.h"
#include "ui/text/words.h"

namespace grainwise::ui {
namespace {

QString flyOf(const Rig& rig, DisplayUnits units) {
  const auto fly = rig.flyIndex();
  return fly ? partCaption(rig.parts[*fly], units) : QString();
}

std::size_t gridIndex(const WalletGrid& grid, std::size_t shelf) {
  for (std::size_t t = 1; t < grid.tips.size(); ++t) {
    if (*grid.tips[t] == shelf) return t;
  }
  return 0;
}

}  // namespace

void WalletGridModel::setPacked(std::shared_ptr<const PackedWallet> packed) {
  beginResetModel();
  m_packed = std::move(packed);
  endResetModel();
}

const WalletCell& WalletGridModel::cell(int row, int column) const {
  const std::size_t tip = m_packed->wallet.tips[std::size_t(row)];
  return m_packed->grid->at(gridIndex(*m_packed->grid, tip), use(column).rig, use(column).pool);
}

bool WalletGridModel::taken(int row, int column) const {
  return use(column).served && use(column).slot == std::size_t(row);
}

QString WalletGridModel::words(int row, int column) const {
  const WalletCell& c = cell(row, column);
  const QString depth =
      c.band ? bandWords(*c.band, c.onBottom, m_look->units()) : tr("no depth computed");
  const QString verdict = gradeWord(gradeOf(c.standing));
  return tr("%1, %2: %3", "pool, fly: verdict and depth")
      .arg(headerData(column, Qt::Horizontal, Qt::ToolTipRole).toString(), verdict, depth);
}

int WalletGridModel::rowCount(const QModelIndex& parent) const {
  return parent.isValid() || !m_packed ? 0 : int(m_packed->wallet.tips.size());
}

int WalletGridModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() || !m_packed ? 0 : int(m_packed->wallet.uses.size());
}

QVariant WalletGridModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  if (role == Qt::ToolTipRole || role == Qt::AccessibleTextRole) {
    return words(index.row(), index.column());
  }
  return {};
}

QVariant WalletGridModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (!m_packed) return {};
  const DisplayUnits units = m_look->units();
  if (orientation == Qt::Vertical) {
    if (role != Qt::DisplayRole) return {};
    const std::size_t tip = m_packed->wallet.tips[std::size_t(section)];
    return tr("%1  %2", "slot and tip")
        .arg(section + 1)
        .arg(choiceName(m_packed->question.shelf, tip, units));
  }
  const WalletUse& u = use(section);
  const QString pool = QString::fromStdString(m_packed->question.pools.pools[u.pool].name);
  const QString fly = flyOf(m_packed->question.rigs[u.rig], units);
  if (role == Qt::DisplayRole) return tr("%1\n%2", "pool, fly").arg(pool, fly);
  if (role == Qt::ToolTipRole) return tr("%1, %2", "pool, fly").arg(pool, fly);
  return {};
}

void WalletCellPainter::paint(QPainter* p, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const {
  const Colours& c = m_look->colours();
  p->save();
  p->setRenderHint(QPainter::Antialiasing);
  const bool taken = m_model->taken(index.row(), index.column());
  if (taken) p->fillRect(option.rect, c.riverFill);
  if (option.state & QStyle::State_HasFocus) {
    p->setPen(QPen(c.river, 2));
    p->drawRect(QRectF(option.rect).adjusted(1, 1, -1, -1));
  }
  const double size = m_look->px(taken ? 14 : 10);
  const QPointF middle = QRectF(option.rect).center();
  const Standing standing = m_model->cell(index.row(), index.column()).standing;
  if (!taken) p->setOpacity(standing == Standing::rejected ? 0.3 : 0.6);
  paintGlyph(*p, QRectF(middle.x() - size / 2, middle.y() - size / 2, size, size),
             glyphOf(gradeOf(standing)), c);
  p->restore();
}

}  // namespace grainwise::ui
