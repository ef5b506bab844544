// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSettings>
#include <memory>

#include "tests/support/strip_bench.h"
#include "ui/window/main_window.h"

namespace grainwise::test {

/// A window on the first sample as after a first start, of 1366x768, without motion and without a question about
/// unsaved work; not shown yet.
inline std::unique_ptr<ui::MainWindow> sampleWindow() {
  QSettings().clear();
  auto window = std::make_unique<ui::MainWindow>();
  window->look()->setReduceMotion(true);
  window->askUnsaved = [] { return ui::MainWindow::Unsaved::discard; };
  window->startFrom(sampleRig("01-plain-winter"));
  window->resize(1366, 768);
  return window;
}

}  // namespace grainwise::test
