// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace grainwise::ui {

/// Opens the workbench: on the file named in the arguments, else on the one that was open last, else
/// on a sample rig as an unsaved copy. Returns the exit code: 1 with a plain line on stderr when there
/// is no display.
int runWorkbench(int argc, char** argv);

}  // namespace grainwise::ui
