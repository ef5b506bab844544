// SPDX-License-Identifier: GPL-3.0-or-later
// monkey GESTURES SEED SOURCE: plays with the window, in a home of its own; exits 1 at the first
// thing that is broken, with the gestures that led there. The same numbers play the same game.
#include <QApplication>
#include <QStandardPaths>
#include <clocale>
#include <cstdio>

#include "core/io/shelf_file.h"
#include "tests/robustness/monkey/monkey.h"
#include "tests/support/ui_support.h"

using namespace grainwise;

int main(int argc, char** argv) {
  if (argc != 4) return 2;
  const QTemporaryDir home;
  for (const char* place : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"}) {
    qputenv(place, home.path().toLocal8Bit());
  }
  qputenv("QT_QPA_PLATFORM", "minimal:enable_fonts");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle(QStringLiteral("Fusion"));
  QApplication::setOrganizationName(QStringLiteral("grainwise"));
  QApplication::setApplicationName(QStringLiteral("grainwise"));
  QApplication::setQuitOnLastWindowClosed(false);
  qInstallMessageHandler(test::collectQtMessage);
  const QString source = QString::fromLocal8Bit(argv[3]);
  const auto shelf =
      loadShelf((source + QStringLiteral("/resources/shelf/generic.shelf.json")).toStdString());
  if (!shelf) return 2;
  test::Monkey monkey(std::strtoull(argv[2], nullptr, 10), source + QStringLiteral("/sample-rigs"),
                      *shelf);
  const QString what = monkey.play(std::atoi(argv[1]));
  std::printf("%s", monkey.summary().toStdString().c_str());
  if (what.isEmpty()) return 0;
  std::printf("seed %s: %s\n", argv[2], what.toStdString().c_str());
  return 1;
}
