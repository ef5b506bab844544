// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace grainwise::ui {

/// Makes Tab go through a page as its layouts lay it out, row by row, whatever was made first. What has no
/// layout keeps the order among its children. To be called again when something has been added.
void tabAsLaidOut(QWidget* page);

}  // namespace grainwise::ui
