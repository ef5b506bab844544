// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <bit>
#include <catch2/catch.hpp>
#include <random>

#include "core/choose/cover.h"
#include "core/choose/wallet.h"
#include "core/report/choice_text.h"
#include "core/report/choice_words.h"
#include "tests/support/choice_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::choice;

namespace {

constexpr double kSameGrade = 1e-9;  // sums of the same numbers in another order

/// What a set of things is worth: demands served, things taken, sum of best grades.
struct Worth {
  std::size_t covered = 0, size = 0;
  double grade = 0.0;
  [[nodiscard]] bool betterThan(const Worth& other) const {
    if (covered != other.covered) return covered > other.covered;
    if (size != other.size) return size < other.size;
    return grade > other.grade + kSameGrade;
  }
};

Worth worthOf(const CoverProblem& problem, unsigned set) {
  Worth worth;
  worth.size = static_cast<std::size_t>(std::popcount(set));
  for (const auto& row : problem.grades) {
    double best = 0.0;
    for (std::size_t t = 0; t < row.size(); ++t) {
      if ((set >> t) & 1U) best = std::max(best, row[t]);
    }
    if (best > 0.0) ++worth.covered;
    worth.grade += best;
  }
  return worth;
}

/// Every set there is, tried.
Worth bruteForce(const CoverProblem& problem) {
  const std::size_t things = problem.grades.front().size();
  unsigned must = 0, mustNot = 0;
  for (const std::size_t t : problem.keep) must |= 1U << t;
  for (const std::size_t t : problem.leaveOut) mustNot |= 1U << t;
  mustNot &= ~must;
  std::optional<Worth> best;
  for (unsigned set = 0; set < (1U << things); ++set) {
    if ((set & must) != must || (set & mustNot) != 0) continue;
    const Worth worth = worthOf(problem, set);
    const std::size_t most = std::max(problem.most.value_or(things), problem.keep.size());
    if (worth.size > most) continue;
    if (!best || worth.betterThan(*best)) best = worth;
  }
  return *best;
}

CoverProblem randomProblem(std::mt19937& random) {
  const auto upTo = [&](std::size_t n) { return static_cast<std::size_t>(random() % (n + 1)); };
  CoverProblem problem;
  const std::size_t things = 1 + upTo(9), demands = 1 + upTo(13);
  const std::size_t density = 2 + upTo(5);
  for (std::size_t d = 0; d < demands; ++d) {
    std::vector<double> row;
    for (std::size_t t = 0; t < things; ++t) {
      const bool serves = upTo(density) == 0;
      row.push_back(serves ? static_cast<double>(1 + upTo(4)) / 5.0 : 0.0);
    }
    problem.grades.push_back(std::move(row));
  }
  if (upTo(2) == 0) problem.most = upTo(4);
  if (upTo(2) == 0) problem.keep = {upTo(things - 1)};
  if (upTo(2) == 0) problem.leaveOut = {upTo(things - 1)};
  return problem;
}

WalletQuestion trip() {
  WalletQuestion question;
  for (const char* name : {"01-plain-winter", "02-slot", "03-thin-tail", "04-small-river"}) {
    question.rigs.push_back(sampleRig(name));
  }
  question.pools = corrow();
  question.shelf = genericShelf();
  return question;
}

}  // namespace

TEST_CASE("random wallets are as small and as good as trying every one") {
  std::mt19937 random(20260403);
  for (int i = 0; i < 3000; ++i) {
    const CoverProblem problem = randomProblem(random);
    const Cover cover = leastCover(problem);
    const Worth best = bruteForce(problem);
    CAPTURE(i);
    REQUIRE(cover.proven);
    REQUIRE(cover.covered == best.covered);
    REQUIRE(cover.chosen.size() == best.size);
    REQUIRE(cover.grade == Approx(best.grade).margin(kSameGrade));
    unsigned set = 0;
    for (const std::size_t t : cover.chosen) set |= 1U << t;
    REQUIRE(worthOf(problem, set).covered == cover.covered);
  }
}

TEST_CASE("a cover of nothing takes nothing") {
  const Cover cover = leastCover({});
  REQUIRE(cover.proven);
  REQUIRE(cover.chosen.empty());
}

TEST_CASE("a search that is stopped does not claim a proof") {
  std::mt19937 random(7);
  CoverProblem problem;
  for (int d = 0; d < 60; ++d) {
    std::vector<double> row;
    for (int t = 0; t < 40; ++t) row.push_back(random() % 4 == 0 ? 0.5 : 0.0);
    problem.grades.push_back(std::move(row));
  }
  std::stop_source stop;
  stop.request_stop();
  REQUIRE_FALSE(leastCover(problem, stop.get_token()).proven);
}

TEST_CASE("a wallet serves every pool and fly that anything on the shelf serves") {
  const WalletQuestion question = trip();
  const WalletGrid grid = walletGrid(question);
  const Wallet wallet = pack(question, grid);
  REQUIRE(wallet.proven);
  REQUIRE(wallet.uses.size() == question.rigs.size() * question.pools.pools.size());
  for (const WalletUse& use : wallet.uses) {
    bool any = false;
    for (std::size_t t = 0; t < grid.tips.size(); ++t) {
      any = any || grid.at(t, use.rig, use.pool).standing != Standing::rejected;
    }
    CAPTURE(question.rigs[use.rig].name, question.pools.pools[use.pool].name);
    REQUIRE(use.served == any);
    if (!use.served) REQUIRE_FALSE(words::uncoveredText(use, question.shelf, grid).empty());
  }
  REQUIRE(wallet.spares.size() == std::min<std::size_t>(2, wallet.tips.size()));
}

TEST_CASE("a wallet judges every tip as the chooser does, the stroke among it") {
  const WalletQuestion question = trip();
  const WalletGrid grid = walletGrid(question);
  std::size_t forTheStroke = 0;
  for (std::size_t r = 0; r < question.rigs.size(); ++r) {
    for (std::size_t p = 0; p < question.pools.pools.size(); ++p) {
      const Choice choice =
          chooseTip({question.rigs[r], question.pools.pools[p], question.shelf, question.conditions});
      REQUIRE(choice.ranked.size() == grid.tips.size());
      for (std::size_t t = 0; t < grid.tips.size(); ++t) {
        const auto same = std::find_if(choice.ranked.begin(), choice.ranked.end(),
                                       [&](const TipChoice& tip) { return tip.shelf == grid.tips[t]; });
        const WalletCell& cell = grid.at(t, r, p);
        CAPTURE(question.rigs[r].name, question.pools.pools[p].name, words::nameOf(question.shelf, grid.tips[t]));
        REQUIRE(cell.standing == same->standing);
        REQUIRE(cell.score == Approx(same->score).margin(kSameGrade));
        if (cell.standing == Standing::watch && cell.reason == Criterion::stroke) ++forTheStroke;
      }
    }
  }
  REQUIRE(forTheStroke > 0);  // a stroke of its own is something to be watched here, too
}

TEST_CASE("a rig that comes with no tip has no stroke to keep") {
  WalletQuestion question = trip();
  for (Rig& rig : question.rigs) rig = withTip(rig, nullptr);
  question.rigs.resize(2);
  REQUIRE_FALSE(strokeAsItStands(question.rigs.front()));
  const WalletGrid grid = walletGrid(question);
  for (const WalletCell& cell : grid.cells) REQUIRE(cell.reason != Criterion::stroke);
}

TEST_CASE("what is kept comes along, what is left out stays, and no more than most") {
  WalletQuestion question = trip();
  const WalletGrid grid = walletGrid(question);
  const Wallet free = pack(question, grid);
  REQUIRE(free.tips.size() >= 2);

  const std::size_t odd = shelfIndex(question.shelf, "15 ft floating front, 12 to 5 gr/ft");
  question.keep = {odd};
  const Wallet kept = pack(question, grid);
  REQUIRE(std::count(kept.tips.begin(), kept.tips.end(), odd) == 1);

  question.keep.clear();
  question.leaveOut = {free.tips.front()};
  const Wallet without = pack(question, grid);
  REQUIRE(std::count(without.tips.begin(), without.tips.end(), free.tips.front()) == 0);

  question.leaveOut.clear();
  question.most = free.tips.size() - 1;
  const Wallet fewer = pack(question, grid);
  REQUIRE(fewer.tips.size() <= *question.most);
  REQUIRE(fewer.uncovered() > free.uncovered());
  const bool toldWhy = std::any_of(fewer.uses.begin(), fewer.uses.end(), [](const WalletUse& use) {
    return !use.served && use.beyondLimit;
  });
  REQUIRE(toldWhy);
}

TEST_CASE("with one length every tip has it") {
  WalletQuestion question = trip();
  question.oneLength = true;
  const Wallet wallet = pack(question, walletGrid(question));
  REQUIRE(wallet.length);
  REQUIRE_FALSE(wallet.tips.empty());
  for (const std::size_t tip : wallet.tips) {
    REQUIRE(question.shelf.parts[tip].length().value() == Approx(wallet.length->value()));
  }
}

TEST_CASE("a pair of pool and fly that only a marginal tip serves is told as one") {
  WalletQuestion question;
  question.rigs = {sampleRig("02-slot")};
  question.pools.pools = {pool("Kettle Slot")};
  question.shelf = genericShelf();
  const WalletGrid grid = walletGrid(question);
  const Wallet wallet = pack(question, grid);
  REQUIRE(wallet.uses.size() == 1);
  const WalletUse& use = wallet.uses.front();
  for (std::size_t t = 1; t < grid.tips.size(); ++t) {
    REQUIRE(grid.at(t, 0, 0).standing != Standing::fits);  // hard on purpose
  }
  REQUIRE(use.served);
  REQUIRE(use.cell.standing == Standing::watch);
  for (std::size_t t = 1; t < grid.tips.size(); ++t) {
    REQUIRE(grid.at(t, 0, 0).score <= use.cell.score + kSameGrade);  // the best of them
  }
}

TEST_CASE("an unusable rig takes no part in a wallet and is named") {
  WalletQuestion question = trip();
  question.rigs[1].parts.pop_back();
  const WalletGrid grid = walletGrid(question);
  const Wallet wallet = pack(question, grid);
  REQUIRE(wallet.uses.size() == 3 * question.pools.pools.size());
  REQUIRE(walletText(question, grid, wallet).find("Left out: " + question.rigs[1].name) !=
          std::string::npos);
}

TEST_CASE("a trip without pools, tips, flies or anything that fits says so and claims no proof") {
  const auto packed = [](const WalletQuestion& question) {
    const WalletGrid grid = walletGrid(question);
    const Wallet wallet = pack(question, grid);
    const std::string text = walletText(question, grid, wallet);
    CAPTURE(text);
    REQUIRE(text.find("fewer will not do") == std::string::npos);
    REQUIRE(text.find("Next: " + words::walletNeedText(wallet.need)) != std::string::npos);
    REQUIRE(wallet.tips.empty());
    return wallet;
  };
  WalletQuestion noPools = trip(), noTips = trip(), noFly = trip(), tooHeavy = trip();
  noPools.pools.pools.clear();
  noTips.shelf = {};
  for (Rig& rig : noFly.rigs) rig.parts.pop_back();
  for (Rig& rig : tooHeavy.rigs) rig.parts.back() = fly(400, 40);
  REQUIRE(packed(noPools).need == ChoiceNeed::pool);
  REQUIRE(packed(noTips).need == ChoiceNeed::shelf);
  REQUIRE(packed(noFly).need == ChoiceNeed::fly);
  REQUIRE(packed(tooHeavy).need == ChoiceNeed::nothingFits);
  REQUIRE_FALSE(packed(noPools).proven);
  const WalletQuestion whole = trip();
  REQUIRE(pack(whole, walletGrid(whole)).need == ChoiceNeed::none);
}
