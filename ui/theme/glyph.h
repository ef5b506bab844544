// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>

#include "ui/theme/look.h"

namespace grainwise::ui {

/// The shapes that second a verdict's words: filled circle fits, triangle watch, square wrong.
enum class Glyph { circle, triangle, square };
void paintGlyph(QPainter& p, const QRectF& box, Glyph glyph, const Colours& colours);

}  // namespace grainwise::ui
