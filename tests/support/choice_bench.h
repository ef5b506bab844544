// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QSettings>
#include <QTest>
#include <QUndoStack>

#include "tests/support/sample_rig.h"
#include "tests/support/shipped_files.h"
#include "tests/support/ui_support.h"
#include "ui/document/pool_book.h"
#include "ui/document/rig_document.h"
#include "ui/panels/chooser_panel.h"
#include "ui/panels/depth_map.h"
#include "ui/panels/drawer.h"
#include "ui/panels/fixes_panel.h"
#include "ui/panels/wallet_window.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/main_window.h"
#include "ui/work/analysis_feed.h"

namespace grainwise::test {

/// Long enough for a machine that has a lot else to do; what never comes still fails.
constexpr int kPatience_ms = 30000;
template <class Condition>
bool until(Condition condition) {
  return QTest::qWaitFor(condition, kPatience_ms);
}

/// The whole window with the sample river, on a sample rig.
struct ChoiceFixture : UiFixture {
  ChoiceFixture() {
    QSettings().clear();
    window = std::make_unique<ui::MainWindow>();
    window->askUnsaved = [] { return ui::MainWindow::Unsaved::discard; };
    window->pools()->start(corrow());
    open("01-plain-winter");
    window->show();
    REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  }
  void open(const char* name) {
    REQUIRE(window->openFile(QString::fromStdString(samplePath(name))));
  }
  ui::RigDocument& document() { return *window->document(); }
  ui::ChooserPanel& chooser() { return *window->bench()->chooser(); }
  ui::FixesPanel& fixes() { return *window->bench()->fixes(); }
  void openTips() {
    window->actionSet()->tips->trigger();
    REQUIRE(until([&] { return chooser().list()->rowCount() > 0 && !chooser().busy(); }));
  }
  /// Until the page has answered for the rig as it now stands.
  void settle() {
    QCoreApplication::processEvents();
    REQUIRE(until([&] { return !chooser().busy() && !fixes().busy(); }));
    QCoreApplication::processEvents();
  }
  /// A row of the Tips page by the name that it shows.
  int rowNamed(const QString& name) {
    for (int row = 0; row < chooser().list()->rowCount(); ++row) {
      if (chooser().list()->name(row) == name) return row;
    }
    FAIL("no row " << name.toStdString());
    return -1;
  }
  template <class Widget>
  Widget* on(QWidget& page, const char* name) {
    auto* widget = page.findChild<Widget*>(QLatin1String(name));
    REQUIRE(widget != nullptr);
    return widget;
  }
  const Part* tip() { return tipOf(document().rig()); }

  std::unique_ptr<ui::MainWindow> window;
};

}  // namespace grainwise::test
