// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QString>

namespace grainwise::ui {

/// What QFontMetricsF::horizontalAdvance() says, in px. Laying out asks for the same few words over and
/// over, and shaping them is slow: what was measured is kept. From the window's thread only.
double textWidth(const QString& words, const QFont& font);

}  // namespace grainwise::ui
