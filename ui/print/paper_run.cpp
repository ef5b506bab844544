// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/print/paper_run.h"

#include <QGuiApplication>
#include <QLocale>
#include <clocale>
#include <cstdio>
#include <memory>

#include "ui/print/deck_pages.h"
#include "ui/print/handout.h"
#include "ui/print/paper_files.h"

namespace grainwise::ui {

namespace {

/// What the toolkit says of a machine without a desktop is of no use to who asked for paper.
void keepQuiet(QtMsgType type, const QMessageLogContext&, const QString& text) {
  if (type == QtFatalMsg || type == QtCriticalMsg) std::fprintf(stderr, "%s\n", qPrintable(text));
}

}  // namespace

PaperOutcome runPaper(const PaperRun& run) {
  PaperOutcome outcome;
  qInstallMessageHandler(keepQuiet);
  qputenv("QT_QPA_PLATFORM", "minimal:enable_fonts");
  int argc = 1;
  char name[] = "grainwise";
  char* argv[] = {name, nullptr};
  QGuiApplication app(argc, argv);
  std::setlocale(LC_NUMERIC, "C");
  QLocale::setDefault(QLocale::c());
  std::unique_ptr<Pages> pages;
  if (run.deck) {
    const auto form = run.fourAPage ? DeckPages::Form::fourAPage : DeckPages::Form::cardAPage;
    auto deck = std::make_unique<DeckPages>(*run.deck, run.folder, form, DisplayUnits{});
    for (const QString& line : deck->missing()) outcome.missing.push_back(line.toStdString());
    pages = std::move(deck);
  } else {
    pages = std::make_unique<Handout>(run.rig.value_or(Rig{}), run.pools, DisplayUnits{}, Conditions{}, run.shelf);
  }
  outcome.problem = writePages(*pages, QString::fromStdString(run.out), run.paper).problem.toStdString();
  return outcome;
}

}  // namespace grainwise::ui
