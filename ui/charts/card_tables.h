// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <vector>

#include "core/analysis/depth_table.h"
#include "core/choose/wallet.h"
#include "ui/charts/picture.h"

/// Pictures of several things side by side: flies, pools, tips. What they ask for - masses, depths,
/// verdicts - stands in them once the card is answered.
namespace grainwise::ui {

/// Tips on one rig in some pools, as the wallet judges them.
struct TipTable {
  std::vector<Part> tips;
  std::vector<Pool> pools;
  std::vector<WalletCell> cells;  ///< tip by tip, pool by pool
  [[nodiscard]] const WalletCell& at(std::size_t tip, std::size_t pool) const {
    return cells[tip * pools.size() + pool];
  }
};
/// Each tip of `tips` between the rig's head and leader, in each pool. Cost: walletGrid's.
TipTable tipTable(const Rig& rig, const std::vector<Part>& tips, const std::vector<Pool>& pools,
                  const Conditions& conditions = {});

/// Flies side by side, to one scale, by name; with the answer what each weighs wet.
void paintFlies(QPainter& p, const QRectF& box, const std::vector<Part>& flies, const PictureStyle& style);
/// The water of each pool to one scale, with its speed on top; with the answer how deep the fly is.
void paintPools(QPainter& p, const QRectF& box, const std::vector<DepthRow>& pools, const PictureStyle& style);
/// A tip a row, to one scale, with its name, a pool a column with where the fly is wanted; with the answer
/// depth and verdict in each cell.
void paintTips(QPainter& p, const QRectF& box, const TipTable& table, const PictureStyle& style);

/// How deep the fly is in a cell of these pictures: "1.2", "bottom", "on top".
QString depthIn(const DepthRow& row, DisplayUnits units);
QString depthIn(const WalletCell& cell, DisplayUnits units);

}  // namespace grainwise::ui
