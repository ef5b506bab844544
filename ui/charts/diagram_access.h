// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace grainwise::ui {

class Look;

/// Set on a widget while it is painted into a picture that leaves the window.
inline constexpr auto kLeaving = "grainwiseLeaving";

/// A painted widget as one thing for the keyboard and for the ear: it takes the focus and shows that by a frame,
/// and a screen reader is told that it is a chart, with the widget's accessible name and description.
void makeDiagram(Look* look, QWidget* widget);

}  // namespace grainwise::ui
