// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace grainwise::ui {

/// The kinds of files that the window opens.
enum class FileKind { rig, deck, shelf, pools, spools };

/// By the ending of its name, else by the format that it names itself; a rig where neither says more, whose reader
/// then tells what is wrong.
FileKind kindOf(const QString& path);

}  // namespace grainwise::ui
