// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands.h"

#include <algorithm>
#include <array>
#include <filesystem>

#include "app/choose_commands.h"
#include "app/command_line.h"
#include "app/print_command.h"
#include "core/analysis/analysis.h"
#include "core/analysis/heavy_runs.h"
#include "core/bench/typed.h"
#include "core/compare/compare.h"
#include "core/io/check_file.h"
#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "core/io/spools_file.h"
#include "core/report/compare.h"
#include "core/report/csv.h"
#include "core/report/cut_sheet.h"
#include "core/report/json.h"
#include "core/report/text.h"

namespace grainwise {
namespace {

constexpr const char* kHelp =
    R"(Usage: grainwise [FILE]
       grainwise A B
       grainwise report FILE [--json | --csv] [--cast] [--swing]
       grainwise compare A B [--json] [--swing]
       grainwise check FILE...
       grainwise choose FILE --pools FILE [--pool NAME] [--shelf FILE] [--json]
       grainwise wallet FILE... --pools FILE [--shelf FILE] [--most N]
                        [--one-length] [--json]
       grainwise fix FILE [--shelf FILE] [--wallet FILE] [--json]
       grainwise cut FILE... --spools FILE [--loop KIND] [--json]
       grainwise print FILE -o OUT [--paper a4|letter] [--pools FILE] [--four]
Build and balance fly rigs: head, tips, leader and fly, foot by foot.
Without a command the workbench opens, on FILE if one is given; two files open
side by side, to be compared.

Commands:
  report FILE    print the analysis of a rig
      --json     as JSON (format grainwise-report)
      --csv      totals and mass profile as comma separated values
      --cast     with the unrolling loop, link by link
      --swing    with the swing through the river, and the depth's range from
                 real swings
  compare A B    print in what two rigs differ and what each difference does,
                 what matters most first
      --json     as JSON (format grainwise-compare)
      --swing    depths and time from real swings through the river
  check FILE...  validate rigs, shelves, pools, spools and decks: an ok line
                 each, or each problem as file:line: pointer: what; fix
  choose FILE    which tip for the rig's fly, on its head, in a pool: every tip of
                 the shelf with its grade, and what refuses the others
      --pools FILE  the pools (needed)
      --pool NAME   this one only
      --shelf FILE  the tips to choose from; else those that the program carries
      --json     as JSON (format grainwise-choice)
  wallet FILE... the fewest tips that serve the rigs in all pools
      --pools FILE  the pools (needed)
      --shelf FILE  the tips to pack from
      --most N   tips at most
      --one-length  of one length only, so that the stroke stays
      --json     as JSON (format grainwise-wallet)
  fix FILE       the single changes that repair a rig, now and at the bench
      --shelf FILE  what the bench has
      --wallet FILE  what is along on the water (a shelf); else all of the shelf
      --json     as JSON (format grainwise-fixes)
  cut FILE...    where to cut the tips, leaders and tippets of rigs or shelves
      --spools FILE  from these spools (needed)
      --loop KIND  welded (as long as nothing is said), sleeved, tied or none
      --loop-in N, --splice-in N, --knot-in N, --fly-knot-in N
                 inches that each takes, where the bench differs from the usual
      --json     as JSON (format grainwise-cut-sheet)
  print FILE     a rig as a handout of two sides, or a deck a card a page
      -o OUT     into this file (needed): .pdf, .png or .svg; of the last two
                 a file a page, the second named OUT-2
      --paper    a4 (as long as nothing is said) or letter
      --pools FILE  depths in these pools, on a handout
      --four     four cards to a page, with lines for notes

Every command judges by the usual limits, whatever the window's settings say.

Options:
      --help     print this help and exit
      --version  print the version and exit
      --         what follows are files, whatever they are called

Exit status: 0 good, 1 the input is at fault, 2 wrong usage.
)";

constexpr const char* kVersion = "grainwise " GRAINWISE_VERSION
                                 "\n"
                                 "License GPL-3.0-or-later. There is no warranty, to the extent "
                                 "permitted by law.\n";

int report(const Words& words) {
  const auto line = parse(words, {"--json", "--csv", "--cast", "--swing"});
  if (!line) return wrongUsage("report: " + line.error());
  if (line->files.size() != 1) {
    return wrongUsage(line->files.empty() ? "report: FILE is missing" : "report: one FILE at a time");
  }
  if (line->has("--json") && line->has("--csv")) {
    return wrongUsage("report: --json or --csv, not both");
  }
  const auto rig = loadRig(line->files.front());
  if (!rig) {
    printProblems(rig.error());
    return kBadInput;
  }
  const Analysis analysis = analyse(*rig);
  HeavyRuns heavy;
  if (line->has("--swing")) heavy = swingRuns(*rig);
  if (line->has("--cast")) addCast(heavy, *rig);
  if (line->has("--json")) return print(reportJson(*rig, analysis, heavy));
  if (line->has("--csv")) return print(reportCsv(*rig, analysis));
  return print(reportText(*rig, analysis, heavy));
}

int compare(const Words& words) {
  const auto line = parse(words, {"--json", "--swing"});
  if (!line) return wrongUsage("compare: " + line.error());
  if (line->files.size() != 2) return wrongUsage("compare: two FILEs, A and B");
  const auto a = loadRig(line->files[0]);
  const auto b = loadRig(line->files[1]);
  if (!a) printProblems(a.error());
  if (!b) printProblems(b.error());
  if (!a || !b) return kBadInput;
  const Analysis analysisA = analyse(*a), analysisB = analyse(*b);
  HeavyRuns heavyA, heavyB;
  const bool swing = line->has("--swing");
  if (swing) {
    heavyA = swingRuns(*a);
    heavyB = swingRuns(*b);
  }
  const Comparison comparison = compareRigs({*a, analysisA, swing ? &heavyA : nullptr},
                                            {*b, analysisB, swing ? &heavyB : nullptr});
  return print(line->has("--json") ? compareJson(*a, *b, comparison)
                                   : compareText(*a, *b, comparison));
}

int check(const Words& words) {
  const auto line = parse(words, {});
  if (!line) return wrongUsage("check: " + line.error());
  if (line->files.empty()) return wrongUsage("check: FILE is missing");
  int code = kGood;
  for (const std::string& file : line->files) {
    const Problems problems = checkFile(file);
    printProblems(problems);
    if (!problems.empty()) {
      code = kBadInput;
    } else if (const int printed = print(file + ": ok\n"); printed != kGood) {
      return printed;
    }
  }
  return code;
}

/// What is to be made for a rig or a shelf of parts.
Result<std::vector<MadePart>> loadPartsToMake(const std::string& file) {
  auto shelf = loadShelf(file);
  if (!shelf) {
    const auto rig = loadRig(file);
    if (rig) return partsToMake(*rig);
    const bool isShelf = std::none_of(shelf.error().begin(), shelf.error().end(),
                                      [](const Problem& p) { return p.pointer == "/format"; });
    return tl::unexpected(isShelf ? shelf.error() : rig.error());
  }
  std::vector<MadePart> parts;
  for (const Part& part : shelf->parts) parts.push_back({part, file, std::nullopt});
  return parts;
}

/// How loops and knots are made, by the options that say so; or what is wrong with them.
tl::expected<BenchRules, std::string> takeBenchRules(Words& words) {
  BenchRules rules;
  if (const auto word = takeValue(words, "--loop")) {
    const auto kind = loopKindNamed(*word);
    if (!kind) return tl::unexpected(std::string("--loop wants welded, sleeved, tied or none"));
    rules.lineLoop = *kind;
  }
  const std::array<std::pair<const char*, Inches*>, 4> lengths{
      {{"--loop-in", lengthOf(rules.lineLoop, rules)},
       {"--splice-in", &rules.splice},
       {"--knot-in", &rules.joiningKnot},
       {"--fly-knot-in", &rules.flyKnot}}};
  for (const auto& [option, length] : lengths) {
    const auto word = takeValue(words, option);
    if (!word) continue;
    if (!length) return tl::unexpected(std::string(option) + " does not go with --loop none");
    const auto number = typedNumber(*word);
    if (!number || !kAllowance.holds(*number)) {
      return tl::unexpected(std::string(option) + " wants " + rangeText(kAllowance));
    }
    *length = Inches(*number);
  }
  return rules;
}

int cut(const Words& given) {
  Words words = given;
  const auto spoolsFile = takeValue(words, "--spools");
  const auto rules = takeBenchRules(words);
  if (!rules) return wrongUsage("cut: " + rules.error());
  const auto line = parse(words, {"--json"});
  if (!line) return wrongUsage("cut: " + line.error());
  if (line->files.empty()) return wrongUsage("cut: FILE is missing");
  if (!spoolsFile) return wrongUsage("cut: --spools FILE is missing");
  if (spoolsFile->empty()) return wrongUsage("cut: --spools wants a FILE");
  std::vector<MadePart> parts;
  bool good = true;
  for (const std::string& file : line->files) {
    const auto made = loadPartsToMake(file);
    if (!made) printProblems(made.error());
    good = good && made.has_value();
    if (made) parts.insert(parts.end(), made->begin(), made->end());
  }
  const auto spools = loadSpools(*spoolsFile);
  if (!spools) printProblems(spools.error());
  if (!good || !spools) return kBadInput;
  const CutSheet sheet = cutSheet(parts, *spools, *rules);
  return print(line->has("--json") ? cutSheetJson(sheet, *spools) : cutSheetText(sheet, *spools));
}

struct Command {
  const char* name;
  int (*run)(const Words&);
};
constexpr std::array<Command, 8> kCommands{{{"report", report},
                                            {"compare", compare},
                                            {"check", check},
                                            {"choose", chooseCommand},
                                            {"wallet", walletCommand},
                                            {"fix", fixCommand},
                                            {"cut", cut},
                                            {"print", printCommand}}};

/// Options of the window system that the toolkit reads for itself; with one dash or two.
bool isWindowOption(const std::string& word, bool& takesValue) {
  static const Words withValue{"platform",      "platformpluginpath", "platformtheme", "plugin",
                               "qwindowgeometry", "qwindowicon",      "qwindowtitle",  "session",
                               "display",       "geometry",           "style",         "stylesheet"};
  const std::string name = word.substr(std::min(word.find_first_not_of('-'), word.size()));
  takesValue = std::find(withValue.begin(), withValue.end(), name) != withValue.end();
  const bool carriesValue = std::any_of(withValue.begin(), withValue.end(), [&](const auto& known) {
    return name.rfind(known + "=", 0) == 0;
  });
  return takesValue || carriesValue || name == "reverse";
}

/// The line that opens the workbench: one file, two to compare, or several, of which the window says
/// what it opened.
std::optional<int> openWorkbench(const Words& words) {
  Words own;
  for (std::size_t i = 0; i < words.size(); ++i) {
    bool takesValue = false;
    if (words[i].size() > 1 && words[i].front() == '-' && isWindowOption(words[i], takesValue)) {
      if (takesValue) ++i;
    } else {
      own.push_back(words[i]);
    }
  }
  const auto line = parse(own, {});
  if (!line) return wrongUsage(line.error());
  const Words& files = line->files;
  if (files.size() > 1 && !std::filesystem::exists(files.front())) {
    return wrongUsage("'" + files.front() +
                      "' is no command, and the workbench opens one FILE, or two to compare");
  }
  return std::nullopt;
}

/// Whether an option stands before any "--".
bool asksFor(const Words& words, const char* option) {
  const auto end = std::find(words.begin(), words.end(), "--");
  return std::find(words.begin(), end, option) != end;
}

}  // namespace

std::optional<int> runCommand(const std::vector<std::string>& arguments) {
  if (asksFor(arguments, "--help")) return print(kHelp);
  if (asksFor(arguments, "--version")) return print(kVersion);
  for (const Command& command : kCommands) {
    if (!arguments.empty() && arguments.front() == command.name) {
      return command.run({arguments.begin() + 1, arguments.end()});
    }
  }
  return openWorkbench(arguments);
}

}  // namespace grainwise
