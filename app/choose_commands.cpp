// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/choose_commands.h"

#include <QFile>
#include <charconv>

#include "core/io/pools_file.h"
#include "core/io/rig_file.h"
#include "core/io/shelf_file.h"
#include "core/report/choice_text.h"
#include "core/report/choice_words.h"

namespace grainwise {
namespace {

/// A file's content, or nothing after its problems were printed.
template <class T, class Load>
std::optional<T> loaded(const std::string& file, Load&& load) {
  auto value = load(file);
  if (value) return std::move(*value);
  printProblems(value.error());
  return std::nullopt;
}

/// The shelf of that file, or the one that the program carries.
std::optional<Shelf> shelfOf(const std::optional<std::string>& file) {
  if (file) return loaded<Shelf>(*file, loadShelf);
  QFile carried(QStringLiteral(":/shelf/generic.shelf.json"));
  if (!carried.open(QIODevice::ReadOnly)) return Shelf{};
  auto shelf = readShelf(carried.readAll().toStdString(), "the shelf that the program carries");
  if (shelf) return std::move(*shelf);
  printProblems(shelf.error());
  return std::nullopt;
}

/// Options with a value: what is wrong with one that stands without.
std::optional<int> withoutValue(const char* command, const char* option,
                                const std::optional<std::string>& value, const char* wants) {
  if (!value || !value->empty()) return std::nullopt;
  return wrongUsage(std::string(command) + ": " + option + " wants a " + wants);
}

PoolChoice answerFor(const Rig& rig, const Shelf& shelf, const Pool& pool,
                     const Conditions& conditions) {
  PoolChoice answer;
  answer.pool = pool;
  TipQuestion question{rig, pool, shelf, conditions};
  answer.choice = chooseTip(question);
  answer.advice = adviceBeforeTip(question, answer.choice);
  return answer;
}

/// The exit code of an answer, with a word to stderr where the input lacks what every answer needs. That
/// nothing on the shelf fits, or that no depth could be judged, is an answer.
int codeFor(ChoiceNeed need, const std::string& file, const std::string& next) {
  if (need == ChoiceNeed::none || need == ChoiceNeed::nothingFits ||
      need == ChoiceNeed::wantedWater) {
    return kGood;
  }
  complain(file + ": " + next);
  return kBadInput;
}

std::optional<std::size_t> wholeNumber(const std::string& text) {
  std::size_t value = 0;
  const auto end = text.data() + text.size();
  const auto read = std::from_chars(text.data(), end, value);
  return read.ec == std::errc() && read.ptr == end ? std::optional(value) : std::nullopt;
}

}  // namespace

int chooseCommand(const Words& given) {
  Words words = given;
  const auto poolsFile = takeValue(words, "--pools");
  const auto poolName = takeValue(words, "--pool");
  const auto shelfFile = takeValue(words, "--shelf");
  const auto line = parse(words, {"--json"});
  if (!line) return wrongUsage("choose: " + line.error());
  if (line->files.size() != 1) {
    return wrongUsage(line->files.empty() ? "choose: FILE is missing" : "choose: one FILE at a time");
  }
  if (!poolsFile) return wrongUsage("choose: --pools FILE is missing");
  if (const auto code = withoutValue("choose", "--pools", poolsFile, "FILE")) return *code;
  if (const auto code = withoutValue("choose", "--pool", poolName, "NAME")) return *code;
  if (const auto code = withoutValue("choose", "--shelf", shelfFile, "FILE")) return *code;
  const auto rig = loaded<Rig>(line->files.front(), loadRig);
  const auto pools = loaded<Pools>(*poolsFile, loadPools);
  const auto shelf = shelfOf(shelfFile);
  if (!rig || !pools || !shelf) return kBadInput;
  const Conditions conditions;
  std::vector<PoolChoice> answers;
  std::string names;
  for (const Pool& pool : pools->pools) {
    names += (names.empty() ? "" : ", ") + pool.name;
    if (!poolName || pool.name == *poolName) answers.push_back(answerFor(*rig, *shelf, pool, conditions));
  }
  if (answers.empty()) {
    complain(*poolsFile + (poolName ? ": no pool '" + *poolName + "'" : ": no pools") +
             (names.empty() ? "; add a pool to it" : "; there are " + names));
    return kBadInput;
  }
  const ChoiceNeed need = answers.front().choice.need;
  const std::string faulty =
      need == ChoiceNeed::shelf ? shelfFile.value_or("the shelf") : line->files.front();
  return print(line->has("--json") ? choiceJson(*rig, *shelf, answers, conditions.rules)
                                   : choiceText(*rig, *shelf, answers),
               codeFor(need, faulty, words::needText(need)));
}

int walletCommand(const Words& given) {
  Words words = given;
  const auto poolsFile = takeValue(words, "--pools");
  const auto shelfFile = takeValue(words, "--shelf");
  const auto mostText = takeValue(words, "--most");
  const auto line = parse(words, {"--json", "--one-length"});
  if (!line) return wrongUsage("wallet: " + line.error());
  if (line->files.empty()) return wrongUsage("wallet: FILE is missing");
  if (!poolsFile) return wrongUsage("wallet: --pools FILE is missing");
  if (const auto code = withoutValue("wallet", "--pools", poolsFile, "FILE")) return *code;
  if (const auto code = withoutValue("wallet", "--shelf", shelfFile, "FILE")) return *code;
  WalletQuestion question;
  if (mostText) {
    question.most = wholeNumber(*mostText);
    if (!question.most) return wrongUsage("wallet: --most wants a whole number of tips");
  }
  question.oneLength = line->has("--one-length");
  bool good = true;
  for (const std::string& file : line->files) {
    auto rig = loaded<Rig>(file, loadRig);
    good = good && rig.has_value();
    if (rig) question.rigs.push_back(std::move(*rig));
  }
  auto pools = loaded<Pools>(*poolsFile, loadPools);
  auto shelf = shelfOf(shelfFile);
  if (!good || !pools || !shelf) return kBadInput;
  question.pools = std::move(*pools);
  question.shelf = std::move(*shelf);
  const WalletGrid grid = walletGrid(question);
  const Wallet wallet = pack(question, grid);
  const std::string faulty = wallet.need == ChoiceNeed::pool    ? *poolsFile
                             : wallet.need == ChoiceNeed::shelf ? shelfFile.value_or("the shelf")
                                                                : line->files.front();
  return print(line->has("--json") ? walletJson(question, grid, wallet)
                                   : walletText(question, grid, wallet),
               codeFor(wallet.need, faulty, words::walletNeedText(wallet.need)));
}

int fixCommand(const Words& given) {
  Words words = given;
  const auto shelfFile = takeValue(words, "--shelf");
  const auto walletFile = takeValue(words, "--wallet");
  const auto line = parse(words, {"--json"});
  if (!line) return wrongUsage("fix: " + line.error());
  if (line->files.size() != 1) {
    return wrongUsage(line->files.empty() ? "fix: FILE is missing" : "fix: one FILE at a time");
  }
  if (const auto code = withoutValue("fix", "--shelf", shelfFile, "FILE")) return *code;
  if (const auto code = withoutValue("fix", "--wallet", walletFile, "FILE")) return *code;
  auto rig = loaded<Rig>(line->files.front(), loadRig);
  auto shelf = shelfOf(shelfFile);
  std::optional<Shelf> wallet;
  if (walletFile) wallet = shelfOf(walletFile);
  if (!rig || !shelf || (walletFile && !wallet)) return kBadInput;
  const FixQuestion question{std::move(*rig), std::move(*shelf), std::move(wallet), std::nullopt, {}};
  const Fixes fixes = fixesFor(question);
  return print(line->has("--json") ? fixesJson(question, fixes) : fixesText(question, fixes),
               codeFor(fixes.need, line->files.front(), words::needText(fixes.need)));
}

}  // namespace grainwise
