// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <filesystem>

#include "core/analysis/depth_table.h"
#include "core/analysis/readings.h"
#include "core/choose/wallet.h"
#include "core/io/deck_file.h"
#include "core/water/band.h"
#include "core/water/hang.h"
#include "core/water/swing.h"
#include "tests/support/shipped_files.h"

using namespace grainwise;
namespace fs = std::filesystem;

namespace {

const fs::path kFolder = fs::path(GRAINWISE_SOURCE_DIR) / "sample-rigs";
constexpr double kSwingFactor = 1.12;  // swing depth over hang-down, the live estimate
constexpr double kSpoken_ft = 0.1;     // depths are spoken to a tenth of a foot, and "about"

Deck deck(const char* name) {
  const auto read = loadDeck(kFolder / (std::string(name) + ".deck.json"));
  if (!read) FAIL(describe(read.error().front()));
  return *read;
}

const Card& card(const Deck& deck, const std::string& title) {
  for (const Card& c : deck.cards) {
    if (c.title == title) return c;
  }
  FAIL("no card " << title);
  return deck.cards.front();
}

Rig rigOf(const Card& c) { return rigOfCard(c.rig.value(), kFolder).value(); }
Rig rigBOf(const Card& c) { return rigOfCard(c.rigB.value(), kFolder).value(); }

/// Every number in a text, in order; "45 grain fly: 2.4" gives 45 and 2.4.
std::vector<double> numbersIn(const std::string& text) {
  std::vector<double> numbers;
  for (std::size_t i = 0; i < text.size();) {
    if (text[i] < '0' || text[i] > '9') {
      ++i;
      continue;
    }
    double value = 0, place = 1;
    for (; i < text.size() && text[i] >= '0' && text[i] <= '9'; ++i) {
      value = 10 * value + (text[i] - '0');
    }
    if (i + 1 < text.size() && text[i] == '.' && text[i + 1] >= '0' && text[i + 1] <= '9') {
      for (++i; i < text.size() && text[i] >= '0' && text[i] <= '9'; ++i) {
        value += (text[i] - '0') * (place /= 10);
      }
    }
    numbers.push_back(value);
  }
  return numbers;
}

/// The reveal speaks of `value`, within `margin`.
void reveals(const Card& c, double value, double margin) {
  INFO(c.title << ": " << c.reveal.value() << " should hold " << value);
  const auto numbers = numbersIn(c.reveal.value());
  CHECK(std::any_of(numbers.begin(), numbers.end(),
                    [&](double n) { return std::abs(n - value) <= margin; }));
}

const Pool& poolNamed(const std::string& name) {
  const std::vector<Pool>& pools = test::corrow().pools;
  const auto found = std::find_if(pools.begin(), pools.end(),
                                  [&](const Pool& pool) { return pool.name == name; });
  REQUIRE(found != pools.end());
  return *found;
}

/// The tips of a card on its rig in its pools; the first row is no tip.
WalletGrid gridOf(const Card& c) {
  WalletQuestion question;
  question.rigs = {rigOf(c)};
  question.pools.pools = c.pools;
  question.shelf.parts = c.parts;
  return walletGrid(question);
}

double estimate_ft(const Rig& rig) {
  const auto inWater = rigInWater(rig, massProfile(rig)).value();
  return kSwingFactor * hangDown(inWater.line, inWater.river).fly.value();
}

SwingResult swingOf(const Rig& rig) {
  const auto inWater = rigInWater(rig, massProfile(rig)).value();
  return swing(inWater.line, inWater.river, inWater.setup);
}

double acrossThePool_ft(const SwingResult& run) { return run.swing.value().value(); }
double acrossThePool_ft(const Rig& rig) { return acrossThePool_ft(swingOf(rig)); }

}  // namespace

TEST_CASE("Each deck opens on a safety card and asks and answers on every other") {
  const std::pair<const char*, std::size_t> decks[] = {{"why-that-tip", 12},
                                                       {"how-deep-was-i", 10}};
  for (const auto& [name, counted] : decks) {
    const Deck d = deck(name);
    INFO(name);
    REQUIRE(d.cards.size() == counted + 1);
    CHECK(d.cards.front().show == CardShow::text);
    CHECK_FALSE(d.cards.front().ask);
    CHECK_FALSE(d.cards.front().reveal);
    // Rods conduct: said on the first card of any deck, and on printed sheets.
    for (const char* danger : {"power lines", "thunderstorm"}) {
      CHECK(d.cards.front().say->find(danger) != std::string::npos);
    }
    for (const Card& c : d.cards) {
      INFO(c.title);
      CHECK(c.say);
      CHECK(c.notes);
      if (&c == &d.cards.front()) continue;
      CHECK(c.ask);
      CHECK(c.reveal);
      CHECK((c.show == CardShow::text || c.show == CardShow::flies) == !c.rig);
      if (c.show == CardShow::flies) CHECK(c.parts.size() == 4);
      if (c.show == CardShow::tips) CHECK(c.parts.size() == 5);
      if (c.show == CardShow::pools || c.show == CardShow::tips) CHECK_FALSE(c.pools.empty());
      if (c.show == CardShow::compare) CHECK(c.rigB);
      if (c.rig) CHECK(rigOfCard(*c.rig, kFolder));
      if (c.rigB) CHECK(rigOfCard(*c.rigB, kFolder));
      CHECK(c.say->size() <= 90);  // one or two lines on a projector
      CHECK(c.reveal->size() <= 180);
    }
  }
}

TEST_CASE("What the first deck reveals of masses is what its rigs say") {
  const Deck d = deck("why-that-tip");
  const Card& first = card(d, "Fly first");
  for (const std::size_t asked : {1U, 2U}) {
    reveals(first, first.parts.at(asked).fly->wetMass().value(), 0);
  }
  // The same flies as on the sample rigs.
  CHECK(first.parts.at(2).fly == rigOf(card(d, "What a foot weighs")).parts.back().fly);

  const Card& foot = card(d, "What a foot weighs");
  double heaviest = 0;
  for (const ProfileRow& row : analyse(rigOf(foot)).rows) {
    heaviest = std::max(heaviest, row.mass.value());
  }
  reveals(foot, heaviest, 1e-9);

  const Card& hinge = card(d, "Downhill or hinge");
  const Junction joint = analyse(rigBOf(hinge)).junctions.at(0);
  reveals(hinge, joint.rodSideMean.value(), 0.5);
  reveals(hinge, joint.flySideMean.value(), 0.5);

  const Card& fifth = card(d, "A fifth of the head");
  reveals(fifth, 100 * analyse(rigBOf(fifth)).grip.tipShare.value(), 0.5);

  const Card& number = card(d, "The rod's number");
  const Analysis rod = analyse(rigOf(number));
  reveals(number, rod.totals.head.value(), 1e-9);
  CHECK(rod.totals.headAndTip == Grains(635));
  CHECK(rod.rod.headVerdict == HeadVerdict::fits);

  const Card& leads = card(d, "Who leads?");
  const Analysis heavy = analyse(rigBOf(leads));
  reveals(leads, analyse(rigOf(leads)).fly.tipToFly.value(), 0.05);
  reveals(leads, 110.0 / 45.0, 0.05);
  reveals(leads, heavy.fly.tipToFly.value(), 0.05);
  reveals(leads, 100 * heavy.grip.tipShare.value(), 0.5);

  const Card& grip = card(d, "Grip");
  reveals(grip, analyse(rigOf(grip)).rod.lengthRatio.value(), 0.005);
  reveals(grip, analyse(rigBOf(grip)).rod.lengthRatio.value(), 0.005);
}

TEST_CASE("What the first deck reveals of depths is what the water says") {
  const Deck d = deck("why-that-tip");
  const Card& rating = card(d, "A rating is not a depth");
  reveals(rating, estimate_ft(rigOf(rating)), kSpoken_ft);

  const Card& four = card(d, "One tip, four pools");
  std::vector<double> depths_ft;
  for (const Pool& pool : four.pools) {
    CHECK(four.ask->find(pool.name) != std::string::npos);
    const Pool& there = poolNamed(pool.name);
    CHECK(pool.surfaceSpeed == there.surfaceSpeed);
    CHECK(pool.depth == there.depth);
    CHECK(pool.temperature == there.temperature);
    depths_ft.push_back(estimate_ft(inPool(rigOf(four), pool)));
  }
  std::sort(depths_ft.begin(), depths_ft.end());
  const auto told = numbersIn(four.reveal.value());
  REQUIRE(depths_ft.size() == 4);
  REQUIRE(told.size() == 4);
  for (std::size_t i = 0; i < 4; ++i) {
    CHECK(told[i] == Approx(depths_ft[i]).epsilon(0).margin(kSpoken_ft));
  }

  const Card& less = card(d, "Same length, less sink");
  const WalletGrid family = gridOf(less);
  reveals(less, family.at(2, 0, 0).band.value().middle.value(), kSpoken_ft);
  CHECK(family.at(2, 0, 0).standing != Standing::rejected);
  CHECK(family.at(5, 0, 0).onBottom);  // all of it sinking: the Mill Run tip

  const Card& packed = card(d, "Pack four");
  const WalletGrid trip = gridOf(packed);
  REQUIRE(packed.pools.size() == 6);
  const auto serves = [&](std::size_t tip, std::size_t pool) {
    return trip.at(tip + 1, 0, pool).standing != Standing::rejected;
  };
  // Half and three quarters: each serves a pool that the other does, and none that needs it alone.
  const std::size_t chapel = 5;
  CHECK(packed.pools[chapel].name == "Chapel Hole");
  CHECK(serves(2, chapel));
  CHECK(serves(3, chapel));
  for (const std::size_t home : {2U, 3U}) {
    for (std::size_t pool = 0; pool < packed.pools.size(); ++pool) {
      bool any = false, others = false;
      for (std::size_t tip = 0; tip < 5; ++tip) {
        any = any || serves(tip, pool);
        others = others || (tip != home && serves(tip, pool));
      }
      INFO(packed.parts[home].name.value() << " at home, " << packed.pools[pool].name);
      CHECK(any == others);
    }
  }

  const Card& before = card(d, "Before you change tip");
  reveals(before, swingOf(rigOf(before)).afterMend.value(), kSpoken_ft);
  reveals(before, swingOf(rigBOf(before)).afterMend.value(), kSpoken_ft);
}

TEST_CASE("What the second deck reveals is what its swings do") {
  const Deck d = deck("how-deep-was-i");
  const Card& where = card(d, "Where on the swing?");
  const SwingResult base = swingOf(rigOf(where));
  reveals(where, base.deepest.value(), kSpoken_ft);
  reveals(where, acrossThePool_ft(base), kSpoken_ft);
  reveals(where, base.hangDown.value(), kSpoken_ft);

  const Card& angle = card(d, "Angle");
  reveals(angle, acrossThePool_ft(rigBOf(angle)), kSpoken_ft);
  CHECK(swingOf(rigBOf(angle)).hangDown.value() ==
        Approx(base.hangDown.value()).epsilon(0).margin(kSpoken_ft));

  const Card& slack = card(d, "Slack");
  const SwingResult none = swingOf(rigOf(slack)), six = swingOf(rigBOf(slack));
  CHECK(none.afterMend.value() == Approx(0).margin(kSpoken_ft));
  reveals(slack, base.afterMend.value(), kSpoken_ft);
  reveals(slack, six.afterMend.value(), kSpoken_ft);
  reveals(slack, acrossThePool_ft(none), kSpoken_ft);
  reveals(slack, acrossThePool_ft(six), kSpoken_ft);

  const Card& faster = card(d, "One foot a second");
  reveals(faster, acrossThePool_ft(rigBOf(faster)), kSpoken_ft);
  Rig slower = rigOf(faster);
  slower.water->surfaceSpeed = FeetPerSecond(2.5);
  reveals(faster, acrossThePool_ft(slower), kSpoken_ft);
  slower.water->surfaceSpeed = FeetPerSecond(2);
  CHECK(swingOf(slower).onBottom());

  const Card& under = card(d, "Who pulls the head under?");
  const auto inWater = rigInWater(rigOf(under), massProfile(rigOf(under))).value();
  const double wet_ft = hangDown(inWater.line, inWater.river).surfacesFromFly.value().value();
  reveals(under, wet_ft, 0.5);
  reveals(under, wet_ft - 14, 0.5);

  const Card& bulk = card(d, "Bulk");
  reveals(bulk, acrossThePool_ft(rigBOf(bulk)), kSpoken_ft);
  CHECK(rigBOf(bulk).parts.back().fly->wetMass() == rigOf(bulk).parts.back().fly->wetMass());

  const Card& bottom = card(d, "On the bottom");
  CHECK(swingOf(rigOf(bottom)).onBottom());
  CHECK_FALSE(swingOf(rigBOf(bottom)).onBottom());

  const Card& range = card(d, "A range, not a number");
  const auto there = rigInWater(rigOf(range), massProfile(rigOf(range))).value();
  const DepthBand band =
      liveBand(hangDown(there.line, there.river), rigOf(range).water->depth.value()).value();
  reveals(range, band.low.value(), kSpoken_ft);
  reveals(range, band.high.value(), kSpoken_ft);

  const Card& order = card(d, "What to try, in order");
  reveals(order, acrossThePool_ft(rigOf(order)), kSpoken_ft);
  reveals(order, acrossThePool_ft(rigBOf(order)), kSpoken_ft);
}

TEST_CASE("A coated leader hangs in a bow after the drift and is straight ten seconds on") {
  const Rig rig = rigOf(card(deck("how-deep-was-i"), "The leader's bow"));
  const SwingResult run = swingOf(rig);
  const auto depthsFromFly = [&](double time_s) {
    const auto frame = std::find_if(run.track.begin(), run.track.end(), [&](const SwingFrame& f) {
      return f.time.value() >= time_s;
    });
    REQUIRE(frame != run.track.end());
    std::vector<double> depths_ft;
    double along_ft = 0;
    for (std::size_t i = frame->line.size(); i-- > 0 && along_ft < 10.5;) {
      depths_ft.push_back(frame->line[i].depth.value());
      if (i == 0) break;
      const SwingPoint &a = frame->line[i], &b = frame->line[i - 1];
      along_ft += std::hypot((a.downstream - b.downstream).value(), (a.across - b.across).value(),
                             (a.depth - b.depth).value());
    }
    return depths_ft;
  };
  const auto drifting = depthsFromFly(2.9);
  const double highest = *std::min_element(drifting.begin(), drifting.end());
  CHECK(highest < 0.33);  // a hand's breadth
  CHECK(drifting.front() > 0.7);
  CHECK(drifting.back() > 0.7);
  const auto later = depthsFromFly(10);
  CHECK(std::is_sorted(later.rbegin(), later.rend()));  // ever deeper towards the fly
}
