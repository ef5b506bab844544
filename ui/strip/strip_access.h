// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace grainwise::ui {

/// Tells screen readers what the strip is made of: a list whose items can be opened and moved, and tags
/// that can be pressed. Called by every strip; does its work once.
void installStripAccess();

}  // namespace grainwise::ui
