// SPDX-License-Identifier: GPL-3.0-or-later
// monkey GESTURES SEED SOURCE [MINUTES]: plays with the window, in a home of its own; exits 1 at the
// first thing that is broken, with the gestures that led there. The same numbers play the same game.
// With MINUTES it plays in rounds of GESTURES until they are over, tells the memory held every five,
// and fails when that has grown since its windows were warm.
#include <execinfo.h>
#include <unistd.h>

#include <QApplication>
#include <QElapsedTimer>
#include <QStandardPaths>
#include <array>
#include <clocale>
#include <cstdio>
#include <fstream>

#include "core/io/shelf_file.h"
#include "tests/robustness/monkey/monkey.h"
#include "tests/support/ui_support.h"
#include "ui/theme/house_style.h"

using namespace grainwise;

namespace {

constexpr double kMinute_ms = 60e3;
constexpr int kTellEvery_min = 5;
/// Of the memory held once the windows are warm: glyphs and pictures are cached later, too.
constexpr double kMostGrowth = 1.25;

/// What the kernel says this program holds in memory.
double held_MB() {
  std::ifstream file("/proc/self/statm");
  double all = 0, held = 0;
  file >> all >> held;
  return held * double(sysconf(_SC_PAGESIZE)) / 1e6;
}

/// Where Qt found fault is known only while it says so: frames for addr2line.
void tellWhere(QtMsgType type, const QMessageLogContext& context, const QString& text) {
  const qsizetype before = test::qtMessages().size();
  test::collectQtMessage(type, context, text);
  if (test::qtMessages().size() == before) return;
  std::array<void*, 64> way{};
  backtrace_symbols_fd(way.data(), backtrace(way.data(), int(way.size())), STDOUT_FILENO);
}

QString playFor(test::Monkey& monkey, int round, int minutes) {
  QElapsedTimer since;
  since.start();
  double first_MB = 0;
  for (int told = 0; told < minutes;) {
    if (QString what = monkey.play(round); !what.isEmpty()) return what;
    if (double(since.elapsed()) < std::min(minutes, told + kTellEvery_min) * kMinute_ms) continue;
    told = std::min(minutes, told + kTellEvery_min);
    std::printf("minute %d: %.1f MB held, %d gestures\n", told, held_MB(), monkey.made());
    std::fflush(stdout);
    if (first_MB == 0 && monkey.isWarm()) first_MB = held_MB();
  }
  if (first_MB == 0) return QStringLiteral("%1 gestures are too few to tell whether memory grows").arg(monkey.made());
  if (held_MB() <= kMostGrowth * first_MB) return {};
  return QStringLiteral("memory has grown from %1 to %2 MB").arg(first_MB).arg(held_MB());
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 4 && argc != 5) return 2;
  const QTemporaryDir home;
  for (const char* place : {"HOME", "XDG_CONFIG_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME"}) {
    qputenv(place, home.path().toLocal8Bit());
  }
  qputenv("QT_QPA_PLATFORM", "minimal:enable_fonts");
  QApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QApplication::setStyle(new ui::HouseStyle);
  QApplication::setOrganizationName(QStringLiteral("grainwise"));
  QApplication::setApplicationName(QStringLiteral("grainwise"));
  QApplication::setQuitOnLastWindowClosed(false);
  qInstallMessageHandler(tellWhere);
  const QString source = QString::fromLocal8Bit(argv[3]);
  const auto shelf =
      loadShelf((source + QStringLiteral("/resources/shelf/generic.shelf.json")).toStdString());
  if (!shelf) return 2;
  test::Monkey monkey(std::strtoull(argv[2], nullptr, 10), source + QStringLiteral("/sample-rigs"),
                      *shelf);
  const int gestures = std::atoi(argv[1]);
  const QString what = argc == 5 ? playFor(monkey, gestures, std::atoi(argv[4])) : monkey.play(gestures);
  std::printf("%s", monkey.summary().toStdString().c_str());
  if (what.isEmpty()) return 0;
  std::printf("seed %s: %s\n", argv[2], what.toStdString().c_str());
  return 1;
}
