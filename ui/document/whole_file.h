// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QByteArray>
#include <QString>

namespace grainwise::ui {

/// Puts `bytes` in the place of the file at `path`, whole or not at all; a link is written through. What
/// stopped it, in words; empty when it is done. Folders and devices are refused. The one place of the
/// window that writes a person's files.
QString writeWhole(const QString& path, const QByteArray& bytes);

}  // namespace grainwise::ui
