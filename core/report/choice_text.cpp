// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/report/choice_text.h"

#include "core/report/choice_words.h"
#include "core/report/format.h"
#include "core/report/words.h"

namespace grainwise {
namespace {

using Rows = std::vector<std::vector<std::string>>;

std::string flyName(const Rig& rig) {
  const auto fly = rig.flyIndex();
  return fly ? onOneLine(words::nameOf(rig.parts[*fly])) : "no fly";
}

std::string poolLine(const PoolChoice& pool) {
  if (!pool.pool) return "No pool\n";
  const Pool& p = *pool.pool;
  std::string text = onOneLine(p.name) + ": " + fixedText(p.surfaceSpeed.value(), 1) +
                     " ft/s, " + feetText(p.depth.value()) + " ft deep";
  if (pool.choice.wanted) text += ", wanted " + words::wantedText(*pool.choice.wanted);
  return text + "\n";
}

std::string choiceTable(const Shelf& shelf, const Choice& choice, Standing standing) {
  Rows rows;
  for (const TipChoice& tip : choice.ranked) {
    if (tip.standing != standing) continue;
    rows.push_back({standing == Standing::rejected ? "" : fixedText(tip.score * 100.0, 0),
                    words::nameOf(shelf, tip.shelf) + (tip.asItStands ? " (fitted)" : ""),
                    words::choiceSentence(tip, choice.wanted)});
  }
  return rows.empty() ? "" : indented(alignedTable(rows, "rll"));
}

std::string onePool(const Shelf& shelf, const PoolChoice& pool) {
  const Choice& choice = pool.choice;
  std::string text = "\n" + poolLine(pool);
  if (choice.need != ChoiceNeed::none) text += "Next: " + words::needText(choice.need) + ".\n";
  if (choice.asItStands) {
    text += "As it stands: " + std::string(words::keyOf(choice.asItStands->standing)) + ": " +
            words::choiceSentence(*choice.asItStands, choice.wanted) + "\n";
  }
  if (!pool.advice.empty()) text += "Before another tip:\n";
  for (const WaterChange& change : pool.advice) text += "  " + words::adviceText(change) + "\n";
  const auto block = [&](const char* heading, Standing standing) {
    const std::string table = choiceTable(shelf, choice, standing);
    if (!table.empty()) text += std::string(heading) + "\n" + table;
  };
  block("Fits", Standing::fits);
  block("To be watched", Standing::watch);
  block("Refused", Standing::rejected);
  return text;
}

std::string listOf(const std::vector<Reading>& readings) {
  std::string text;
  for (const Reading r : readings) text += (text.empty() ? "" : ", ") + std::string(words::of(r));
  return text;
}

std::string fixList(const char* heading, const std::vector<Fix>& list) {
  std::string text = "\n" + std::string(heading) + "\n";
  if (list.empty()) return text + "  nothing repairs it with one change\n";
  for (const Fix& fix : list) {
    text += "  " + words::changeText(fix.change) + ": " + words::fixText(fix) + "\n";
  }
  return text;
}

std::string walletHeading(const Wallet& wallet) {
  if (wallet.tips.empty()) {
    return wallet.need == ChoiceNeed::none ? "Wallet: no tip is needed\n" : "Wallet: nothing packed\n";
  }
  std::string text = "Wallet: " + std::to_string(wallet.tips.size()) +
                     (wallet.tips.size() == 1 ? " tip" : " tips");
  if (wallet.length) text += " of " + feetText(wallet.length->value()) + " ft";
  return text + (wallet.proven ? "; fewer will not do\n" : "; not proven to be the least\n");
}

constexpr const char* kCaution =
    "\nDepths are estimates and no guide to wading. Local rules on weighted lines and flies, the rod\n"
    "maker's limits and a qualified instructor come before these figures.\n";

}  // namespace

std::string choiceText(const Rig& rig, const Shelf& shelf, const std::vector<PoolChoice>& pools) {
  std::string text = onOneLine(rig.name) + ": tips for " + flyName(rig) + "\n";
  for (const PoolChoice& pool : pools) text += onePool(shelf, pool);
  return text + kCaution;
}

std::string walletText(const WalletQuestion& question, const WalletGrid& grid,
                       const Wallet& wallet) {
  std::string text = walletHeading(wallet);
  if (wallet.need != ChoiceNeed::none) text += "Next: " + words::walletNeedText(wallet.need) + ".\n";
  for (std::size_t slot = 0; slot < wallet.tips.size(); ++slot) {
    text += "  " + std::to_string(slot + 1) + "  " + words::nameOf(question.shelf, wallet.tips[slot]) +
            "\n";
  }
  for (const std::size_t slot : wallet.spares) {
    text += "  spare of " + std::to_string(slot + 1) + "\n";
  }
  Rows rows;
  for (const WalletUse& use : wallet.uses) {
    if (!use.served) continue;
    const std::string depth = use.cell.onBottom ? "on the bottom"
                              : use.cell.band   ? roundFeetText(use.cell.band->low.value()) + "-" +
                                                    roundFeetText(use.cell.band->high.value()) +
                                                    " ft down"
                                                : "on top";
    rows.push_back({onOneLine(question.pools.pools[use.pool].name),
                    onOneLine(question.rigs[use.rig].name), flyName(question.rigs[use.rig]),
                    use.slot ? std::to_string(*use.slot + 1) : "no tip",
                    words::keyOf(use.cell.standing), depth});
  }
  if (!rows.empty()) text += "\nWhich for what\n" + indented(alignedTable(rows, "lllrll"));
  if (wallet.uncovered() > 0) text += "\nNothing serves\n";
  for (const WalletUse& use : wallet.uses) {
    if (use.served) continue;
    text += "  " + onOneLine(question.pools.pools[use.pool].name) + ", " +
            onOneLine(question.rigs[use.rig].name) + ", " + flyName(question.rigs[use.rig]) +
            ": " + words::uncoveredText(use, question.shelf, grid) + "\n";
  }
  for (std::size_t i = 0; i < question.rigs.size(); ++i) {
    if (grid.usable[i]) continue;
    text += "\nLeft out: " + onOneLine(question.rigs[i].name) +
            " has no head, no fly, or a fly of unknown mass; complete it first\n";
  }
  return text + kCaution;
}

std::string fixesText(const FixQuestion& question, const Fixes& fixes) {
  std::string text = onOneLine(question.rig.name) + ": ";
  const bool lacks = fixes.need != ChoiceNeed::none;
  if (lacks) text += words::needText(fixes.need) + "\n";
  if (fixes.nothingWrong && fixes.watches.empty()) {
    return lacks ? text : text + "nothing is wrong\n";
  }
  if (lacks) text += "With what is there: ";
  if (fixes.nothingWrong) {
    text += "nothing is wrong; to be watched: " + listOf(fixes.watches) + "\n";
  } else {
    text += "wrong: " + listOf(fixes.faults) + "\n";
  }
  text += fixList("From the wallet, now", fixes.now);
  text += fixList("At the bench, later", fixes.later);
  return text + kCaution;
}

}  // namespace grainwise
