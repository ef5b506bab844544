// SPDX-License-Identifier: GPL-3.0-or-later
#define CATCH_CONFIG_RUNNER
#include <QApplication>
#include <QFont>
#include <QTemporaryDir>
#include <catch2/catch.hpp>
#include <clocale>

#include "tests/support/ui_support.h"
#include "ui/theme/house_style.h"

/// Everything that decides pixels or paths is fixed here. The platform is ours to choose, never the
/// caller's QT_QPA_PLATFORM: test discovery runs this program while building, without a display.
int main(int argc, char** argv) {
  // Settings and copies of work in a folder of this run's own: tests run side by side, and a
  // contributor's own settings are not for them to clear.
  const QTemporaryDir home;
  if (!home.isValid()) return 1;
  for (const char* kind : {"XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_STATE_HOME"}) {
    qputenv(kind, home.path().toLocal8Bit());
  }
  const QByteArray platform = qgetenv("UI_TEST_PLATFORM");
  qputenv("QT_QPA_PLATFORM", platform.isEmpty() ? QByteArray("minimal:enable_fonts") : platform);
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle(new grainwise::ui::HouseStyle);
  QApplication::setOrganizationName(QStringLiteral("grainwise"));
  QApplication::setApplicationName(QStringLiteral("grainwise"));
  QApplication::setQuitOnLastWindowClosed(false);
  qInstallMessageHandler(grainwise::test::collectQtMessage);
  return Catch::Session().run(argc, argv);
}
