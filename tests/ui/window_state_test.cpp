// SPDX-License-Identifier: GPL-3.0-or-later
#include <QSettings>
#include <QTest>

#include "tests/support/strip_bench.h"
#include "ui/panels/drawer.h"
#include "ui/window/actions.h"
#include "ui/window/bench_face.h"
#include "ui/window/faces.h"
#include "ui/window/main_window.h"

namespace grainwise::ui {
namespace {

std::unique_ptr<MainWindow> opened() {
  auto window = std::make_unique<MainWindow>();
  window->askUnsaved = [] { return MainWindow::Unsaved::discard; };
  window->openAsLeft();
  window->show();
  REQUIRE(QTest::qWaitForWindowExposed(window.get()));
  return window;
}

}  // namespace

TEST_CASE_METHOD(test::UiFixture, "the workbench comes back as it was left: size, face and page of the drawer") {
  QSettings().clear();
  auto window = opened();
  CHECK(window->faces()->current() == QStringLiteral("bench"));
  const QSize size = window->size() - QSize(37, 23);
  window->resize(size);
  window->bench()->openRiver();
  window->faces()->open(QStringLiteral("clinic"));
  window->close();
  window = opened();
  CHECK(window->size() == size);
  CHECK(window->faces()->current() == QStringLiteral("clinic"));
  CHECK(window->bench()->drawer()->current() == QStringLiteral("river"));
  // A page that only passes does not stand there the next time.
  window->faces()->open(QStringLiteral("bench"));
  window->bench()->openWater();
  window->close();
  window = opened();
  CHECK(window->faces()->current() == QStringLiteral("bench"));
  CHECK(window->bench()->drawer()->stays(window->bench()->drawer()->current()));
}

TEST_CASE_METHOD(test::UiFixture, "help, settings and wallet open as large as they were left") {
  QSettings().clear();
  QMap<QString, QSize> left;
  for (const bool again : {false, true}) {
    const auto window = opened();
    const Actions& a = *window->actionSet();
    for (const auto& [name, action] : {std::pair{"help", a.help}, std::pair{"settings", a.settings},
                                       std::pair{"walletWindow", a.wallet}}) {
      action->trigger();
      auto* other = window->findChild<QWidget*>(QLatin1String(name));
      REQUIRE(other != nullptr);
      REQUIRE(QTest::qWaitForWindowExposed(other));
      INFO(name);
      if (again) {
        CHECK(other->size() == left[QLatin1String(name)]);
      } else {
        other->resize(other->size() + QSize(31, 17));
        left[QLatin1String(name)] = other->size();
      }
      other->close();
    }
  }
}

}  // namespace grainwise::ui
