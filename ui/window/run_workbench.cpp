// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/window/run_workbench.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QIcon>
#include <QStandardPaths>
#include <QTimer>
#include <clocale>
#include <cstdio>
#include <future>
#include <memory>

#include "core/io/pools_file.h"
#include "core/io/rig_file.h"
#include "core/material/drag.h"
#include "ui/compare/compare_face.h"
#include "ui/document/carried_shelf.h"
#include "ui/document/pool_book.h"
#include "ui/panels/drawer.h"
#include "ui/strip/strip_view.h"
#include "ui/text/sample_words.h"
#include "ui/theme/house_style.h"
#include "ui/theme/language.h"
#include "ui/window/bench_face.h"
#include "ui/window/clinic_host.h"
#include "ui/window/compare_host.h"
#include "ui/window/main_window.h"
#include "ui/window/settings.h"
#include "ui/window/trace.h"

namespace grainwise::ui {
namespace {

constexpr int kIconAfter_ms = 200;

constexpr auto kNoDisplay =
    "grainwise: there is no display to open the workbench on; "
    "`grainwise report FILE` and `grainwise check FILE` work without one\n";

bool hasDisplay() {
  return !qEnvironmentVariableIsEmpty("DISPLAY") ||
         !qEnvironmentVariableIsEmpty("WAYLAND_DISPLAY") ||
         !qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM");
}

std::string resourceText(const char* name) {
  QFile file{QLatin1String(name)};
  return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

/// The user's own pools, or the sample river until there are any. A faulty own file is said on stderr
/// and not written over.
void loadPools(PoolBook& book) {
  const QString file = QStringLiteral("my-pools.pools.json");
  const QString own = QStandardPaths::locate(QStandardPaths::AppDataLocation, file);
  if (!own.isEmpty()) {
    const auto mine = ::grainwise::loadPools(own.toStdString());
    if (mine) {
      book.start(*mine);
      book.setStore(own);
      return;
    }
    for (const Problem& problem : mine.error()) {
      std::fprintf(stderr, "%s\n", describe(problem).c_str());
    }
  }
  if (const auto river = readPools(resourceText(":/sample-rigs/corrow.pools.json"))) {
    book.start(spokenSample(*river));
  }
  if (!own.isEmpty()) return;
  const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  if (!folder.isEmpty()) book.setStore(QDir(folder).filePath(file));
}

void openSample(MainWindow& window) {
  if (const auto sample = readRig(resourceText(":/sample-rigs/01-plain-winter.rig.json"))) {
    window.startFrom(spokenSample(*sample));
  }
}

/// What was named at the start: one rig on the bench, two beside each other, a deck in the Clinic before them;
/// shelves, pools and spools where such things are kept.
void openNamed(MainWindow& window, const QStringList& files) {
  QStringList rigs, decks, others;
  for (const QString& file : files) {
    const FileKind kind = kindOf(file);
    (kind == FileKind::rig ? rigs : kind == FileKind::deck ? decks : others).append(file);
  }
  if (rigs.isEmpty()) {
    openSample(window);
  } else {
    window.openFile(rigs.first());
  }
  if (rigs.size() > 1) window.openBeside(rigs[1]);
  if (!decks.isEmpty()) window.openFile(decks.first());
  for (const QString& file : std::as_const(others)) window.openFile(file);
  if (rigs.size() <= 2 && decks.size() <= 1) return;
  Drawer* drawer = window.compare()->shown() ? window.compare()->face()->drawer() : window.bench()->drawer();
  drawer->say(MainWindow::tr("Two rigs are compared at a time, one deck is shown: the other files were not opened."));
}

void openFirst(MainWindow& window, const QStringList& arguments) {
  if (arguments.size() > 1) return openNamed(window, arguments.mid(1));
  const QString last = Settings().lastFile();
  if (last.isEmpty() || !QFileInfo::exists(last) || !window.openFile(last)) openSample(window);
  window.openAsLeft();
}

}  // namespace

int runWorkbench(int argc, char** argv) {
  if (!hasDisplay()) {
    std::fputs(kNoDisplay, stderr);
    return 1;
  }
  QApplication::setOrganizationName(QStringLiteral("grainwise"));
  QApplication::setApplicationName(QStringLiteral("grainwise"));
  QApplication::setApplicationDisplayName(QStringLiteral("Grainwise"));
  QApplication::setApplicationVersion(QStringLiteral(GRAINWISE_VERSION));
  QApplication::setDesktopFileName(QStringLiteral("grainwise"));
  // Read while the display is being reached.
  const auto carried = std::async(std::launch::async, [] {
    (void)carriedShelf();
    (void)dragTable();
  });
  QApplication app(argc, argv);
  QApplication::setStyle(new HouseStyle);
  std::setlocale(LC_NUMERIC, "C");
  const Speaking speaking(Settings().language());
  MainWindow window;
  loadPools(*window.pools());
  openFirst(window, QApplication::arguments());
  window.offerRecovery();
  const auto trace = Trace::ifWanted(window);
  window.show();
  if (!window.compare()->shown() && !window.clinic()->shown()) window.bench()->strip()->setFocus();
  // Drawing the icon loads a plugin that the first picture does not need.
  QTimer::singleShot(kIconAfter_ms, &window, [&window] {
    window.setWindowIcon(QIcon(QStringLiteral(":/icons/grainwise.svg")));
  });
  return QApplication::exec();
}

}  // namespace grainwise::ui
