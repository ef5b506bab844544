// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

namespace grainwise {

/// Runs what the command line asks for when it needs no window: a command, --help, --version, or a
/// wrong line. `arguments` are those behind the program's name. Results go to stdout, messages to
/// stderr.
/// Returns the exit code (0 good, 1 the input is at fault, 2 wrong usage), or nothing when the
/// workbench is to open. Needs no display; only `print` needs the toolkit, for its fonts.
std::optional<int> runCommand(const std::vector<std::string>& arguments);

}  // namespace grainwise
