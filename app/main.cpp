// SPDX-License-Identifier: GPL-3.0-or-later
#include <optional>
#include <string>
#include <vector>

#include "app/commands.h"
#if __has_include("ui/window/run_workbench.h")
#include "ui/window/run_workbench.h"
#else
namespace grainwise::ui {
/// The window is not part of this build.
static int runWorkbench(int, char**) { return 1; }
}  // namespace grainwise::ui
#endif

/// Commands are answered before anything of the window is touched: they need no display.
int main(int argc, char** argv) {
  const std::vector<std::string> arguments(argv + (argc > 0 ? 1 : 0), argv + argc);
  if (const std::optional<int> code = grainwise::runCommand(arguments)) return *code;
  return grainwise::ui::runWorkbench(argc, argv);
}
