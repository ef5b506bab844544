// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace grainwise::ui {

/// What is called so, or else what its file is called without its ending, or else `nameless`.
QString shownName(const std::string& name, const QString& path, const QString& nameless);

/// Where a save dialog begins: the file at `path`, or one that is called `name` with `ending` (".rig.json"),
/// beside the file `last` or in the person's documents. Signs that some disks refuse in a name become "-".
QString suggestedFile(const QString& path, const std::string& name, const QString& ending, const QString& last);

}  // namespace grainwise::ui
