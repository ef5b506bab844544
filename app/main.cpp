// SPDX-License-Identifier: GPL-3.0-or-later
#include <optional>
#include <string>
#include <vector>

#include "app/commands.h"
#include "ui/window/run_workbench.h"

/// Commands are answered before anything of the window is touched: they need no display.
int main(int argc, char** argv) {
  const std::vector<std::string> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
  if (const std::optional<int> code = grainwise::runCommand(arguments)) return *code;
  return grainwise::ui::runWorkbench(argc, argv);
}
