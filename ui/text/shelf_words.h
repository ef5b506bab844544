// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace grainwise::ui {

/// Whether a part or group of the carried Shelf is called so: "short head 525", "Level tips".
bool isShelfName(const QString& name);

/// Such a name in the person's language, with its numbers by the locale; any other name, which is the
/// person's own, as it stands. Only shown: files keep the name that they hold.
QString shelfName(const QString& name);

}  // namespace grainwise::ui
