// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "ui/panels/wallet_grid_model.h"

namespace grainwise::ui {

/// The card for the wallet, black on white: the slots with their tips, which of them for which pool and
/// fly, what has nothing, and the cautions. `inside` is in points (1/72 in); a card that is taller than
/// it goes on with smaller type down to 6 pt. Returns how high it is.
double paintWalletCard(QPainter& p, const QRectF& inside, const PackedWallet& packed,
                       DisplayUnits units);
/// The card on one A4 page. False, with why, when it could not be written.
bool writeWalletCard(const QString& path, const PackedWallet& packed, DisplayUnits units,
                     QString* why);

}  // namespace grainwise::ui
