// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/print_command.h"

#include <QFile>
#include <algorithm>
#include <filesystem>

#include "core/io/deck_file.h"
#include "core/io/pools_file.h"
#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "ui/print/paper_run.h"

namespace grainwise {
namespace {

/// What a file has to print: a rig or a deck.
Result<ui::PaperRun> loadForPaper(const std::string& file) {
  ui::PaperRun run;
  auto deck = loadDeck(file);
  if (deck) {
    run.deck = *deck;
    run.folder = std::filesystem::path(file).parent_path().string();
    return run;
  }
  auto rig = loadRig(file);
  if (rig) {
    run.rig = *rig;
    return run;
  }
  const bool isDeck = std::none_of(deck.error().begin(), deck.error().end(),
                                   [](const Problem& p) { return p.pointer == "/format"; });
  return tl::unexpected(isDeck ? deck.error() : rig.error());
}

/// The shelf that the program carries; without it nothing is packed.
Shelf carriedShelf() {
  QFile carried(QStringLiteral(":/shelf/generic.shelf.json"));
  if (!carried.open(QIODevice::ReadOnly)) return {};
  return readShelf(carried.readAll().toStdString()).value_or(Shelf{});
}

}  // namespace

int printCommand(const Words& given) {
  Words words = given;
  const auto out = takeValue(words, "-o");
  const auto paper = takeValue(words, "--paper");
  const auto poolsFile = takeValue(words, "--pools");
  const auto line = parse(words, {"--four"});
  if (!line) return wrongUsage("print: " + line.error());
  if (line->files.size() != 1) {
    return wrongUsage(line->files.empty() ? "print: FILE is missing" : "print: one FILE at a time");
  }
  if (!out || out->empty()) return wrongUsage("print: -o OUT is missing");
  const std::string ending = std::filesystem::path(*out).extension().string();
  if (ending != ".pdf" && ending != ".png" && ending != ".svg") {
    return wrongUsage("print: OUT should end in .pdf, .png or .svg");
  }
  if (paper && *paper != "a4" && *paper != "letter") return wrongUsage("print: --paper a4 or letter");
  auto run = loadForPaper(line->files.front());
  if (!run) {
    printProblems(run.error());
    return kBadInput;
  }
  if (run->deck && poolsFile) return wrongUsage("print: --pools goes with a rig");
  if (run->rig && line->has("--four")) return wrongUsage("print: --four goes with a deck");
  if (poolsFile) {
    const auto pools = loadPools(*poolsFile);
    if (!pools) {
      printProblems(pools.error());
      return kBadInput;
    }
    run->pools = pools->pools;
  }
  if (run->rig) run->shelf = carriedShelf();
  run->out = *out;
  run->paper = paper == "letter" ? ui::Paper::letter : ui::Paper::a4;
  run->fourAPage = line->has("--four");
  const ui::PaperOutcome outcome = ui::runPaper(*run);
  for (const std::string& what : outcome.missing) complain(what);
  if (!outcome.problem.empty()) complain(outcome.problem);
  return outcome.problem.empty() && outcome.missing.empty() ? kGood : kBadInput;
}

}  // namespace grainwise
