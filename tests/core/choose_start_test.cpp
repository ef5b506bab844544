// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "core/choose/start.h"
#include "core/mass/profile.h"
#include "core/mass/rod_fit.h"
#include "core/mass/standards.h"
#include "core/model/check.h"
#include "tests/support/choice_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::choice;

namespace {

Rod rodOf(double length_ft, std::optional<double> lineNumber, int hands = 2) {
  Rod rod;
  rod.length = Feet(length_ft);
  rod.lineNumber = lineNumber;
  rod.hands = hands;
  return rod;
}

double grains(const Part& part) { return massProfile(rigs::rigOf({part})).places.front().mass().value(); }

const Part* partOf(const Rig& rig, PartKind kind) {
  const auto at = std::find_if(rig.parts.begin(), rig.parts.end(), [&](const Part& p) { return p.kind == kind; });
  return at == rig.parts.end() ? nullptr : &*at;
}

/// How far the shelf's nearest head of a style lies from the middle of a window.
double leastDistance(Style style, const GrainWindow& window) {
  double least = 1e9;
  for (const Part& part : genericShelf().parts) {
    if (part.kind != PartKind::head || part.style != style) continue;
    least = std::min(least, std::abs(grains(part) - (window.low.value() + window.high.value()) / 2));
  }
  return least;
}

void checkHead(const Rig& rig, Style style, const GrainWindow& window) {
  const Part* head = partOf(rig, PartKind::head);
  REQUIRE(head != nullptr);
  CHECK(head->style == style);
  CHECK(std::abs(grains(*head) - (window.low.value() + window.high.value()) / 2) ==
        Approx(leastDistance(style, window)));
}

Rig started(const Rod& rod, Style style) {
  const Result<Rig> rig = startFromRod(rod, style, genericShelf());
  REQUIRE(rig);
  CHECK(check(*rig).empty());
  CHECK_FALSE(rig->flyIndex());  // it is chosen next
  CHECK(partOf(*rig, PartKind::runningLine) != nullptr);
  return *rig;
}

}  // namespace

TEST_CASE("a rig for a rod has the head that stands nearest the middle of its window, style by style") {
  const Rod rod = rodOf(13, 8);
  for (const Style style : {Style::shortHead, Style::fine, Style::longBelly}) {
    CAPTURE(fileName(style));
    checkHead(started(rod, style), style, *defaultWindow(style, 8));
  }
}

TEST_CASE("a window of the rod's own counts before the one of its line number, and that of the style before both") {
  Rod rod = rodOf(13, 8);
  rod.window = GrainWindow{Grains(390), Grains(410)};
  checkHead(started(rod, Style::shortHead), Style::shortHead, *rod.window);
  rod.windows = Rod::Windows{};
  rod.windows->shortHead = GrainWindow{Grains(640), Grains(660)};
  checkHead(started(rod, Style::shortHead), Style::shortHead, *rod.windows->shortHead);
  rod.windows->fine = GrainWindow{Grains(300), Grains(340)};
  checkHead(started(rod, Style::fine), Style::fine, *rod.windows->fine);
  rod.windows->longBelly = GrainWindow{Grains(700), Grains(760)};
  checkHead(started(rod, Style::longBelly), Style::longBelly, *rod.windows->longBelly);
}

TEST_CASE("behind a short head goes the ten-foot tip that the trade's table names for it") {
  for (const double middle_gr : {400.0, 525.0, 625.0, 700.0}) {
    Rod rod = rodOf(13, 8);
    rod.window = GrainWindow{Grains(middle_gr - 10), Grains(middle_gr + 10)};
    const Rig rig = started(rod, Style::shortHead);
    const Part* tip = partOf(rig, PartKind::tip);
    REQUIRE(tip != nullptr);
    CAPTURE(middle_gr);
    CHECK(tip->style == Style::level);
    CHECK(tip->length().value() == Approx(10));
    CHECK(grains(*tip) / 10 ==
          Approx(standards::tipForShortHead(Grains(grains(*partOf(rig, PartKind::head)))).value()));
  }
}

TEST_CASE("a long belly has a tapered tip of about a fifth of its grains, a fine head none") {
  const Rig belly = started(rodOf(15, 9), Style::longBelly);
  const Part* tip = partOf(belly, PartKind::tip);
  REQUIRE(tip != nullptr);
  CHECK(tip->style == Style::tapered);
  const double share = grains(*tip) / grains(*partOf(belly, PartKind::head));
  CHECK(share > 0.15);
  CHECK(share < 0.27);
  CHECK(partOf(started(rodOf(13, 8), Style::fine), PartKind::tip) == nullptr);
}

TEST_CASE("the leader is short behind a tip and about as long as the rod without one") {
  const auto leader_ft = [](const Rig& rig) { return partOf(rig, PartKind::leader)->length().value(); };
  const double behindTip = leader_ft(started(rodOf(13, 8), Style::shortHead));
  const double alone = leader_ft(started(rodOf(13, 8), Style::fine));
  for (const Part& part : genericShelf().parts) {
    if (part.kind != PartKind::leader || part.isCoatedLeader()) continue;
    CHECK(std::abs(behindTip - 4) <= std::abs(part.length().value() - 4));
    CHECK(std::abs(alone - 13) <= std::abs(part.length().value() - 13));
  }
  CHECK(behindTip < alone);
}

TEST_CASE("a single-hand rod takes the window of the published table for its number") {
  const auto& rows = standards::singleHand();
  const auto row = std::find_if(rows.begin(), rows.end(), [](const auto& r) { return r.lineNumber == 6; });
  REQUIRE(row != rows.end());
  checkHead(started(rodOf(9, 6, 1), Style::singleHand), Style::singleHand, GrainWindow{row->low, row->high});
}

TEST_CASE("without a window, or without such a head on the shelf, it is said what is missing") {
  const auto nothingKnown = startFromRod(rodOf(13, std::nullopt), Style::shortHead, genericShelf());
  REQUIRE_FALSE(nothingKnown);
  CHECK(describe(nothingKnown.error().front()).find("grains that this rod is made for") != std::string::npos);
  const auto noSuchNumber = startFromRod(rodOf(9, 40, 1), Style::singleHand, genericShelf());
  CHECK_FALSE(noSuchNumber);
  const auto noHead = startFromRod(rodOf(13, 8), Style::shortHead, Shelf{});
  REQUIRE_FALSE(noHead);
  CHECK(describe(noHead.error().front()).find("no head of this style") != std::string::npos);
}
