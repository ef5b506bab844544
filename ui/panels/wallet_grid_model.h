// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractTableModel>
#include <QStyledItemDelegate>
#include <memory>

#include "core/choose/wallet.h"
#include "ui/theme/look.h"

namespace grainwise::ui {

/// A packed wallet with all that it was packed from.
struct PackedWallet {
  WalletQuestion question;
  std::shared_ptr<const WalletGrid> grid;
  Wallet wallet;
};

/// The wallet's tips against every pool and fly: what each does there, and what is taken for it. The
/// last row says what has nothing.
class WalletGridModel : public QAbstractTableModel {
  Q_OBJECT
 public:
  WalletGridModel(Look* look, QObject* parent) : QAbstractTableModel(parent), m_look(look) {}

  void setPacked(std::shared_ptr<const PackedWallet> packed);
  [[nodiscard]] const PackedWallet* packed() const { return m_packed.get(); }
  [[nodiscard]] const WalletUse& use(int column) const {
    return m_packed->wallet.uses[std::size_t(column)];
  }
  /// What the tip of a row does for a column.
  [[nodiscard]] const WalletCell& cell(int row, int column) const;
  [[nodiscard]] bool taken(int row, int column) const;
  [[nodiscard]] QString words(int row, int column) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  Look* m_look;
  std::shared_ptr<const PackedWallet> m_packed;
};

/// A cell: the glyph of what the tip does there, ringed where it is the one taken.
class WalletCellPainter : public QStyledItemDelegate {
  Q_OBJECT
 public:
  WalletCellPainter(Look* look, const WalletGridModel* model, QObject* parent)
      : QStyledItemDelegate(parent), m_look(look), m_model(model) {}
  void paint(QPainter* p, const QStyleOptionViewItem& option, const QModelIndex& index) const override;

 private:
  Look* m_look;
  const WalletGridModel* m_model;
};

}  // namespace grainwise::ui
