// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>
#include <random>

#include "core/bench/leader.h"
#include "core/io/spools_file.h"
#include "core/model/check.h"
#include "core/model/edits.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx toRounding(double value) { return Approx(value).margin(1e-9); }

std::vector<LeaderStock> bench() {
  return leaderStock(
      *loadSpools(std::string(GRAINWISE_SOURCE_DIR) + "/sample-rigs/bench.spools.json"));
}
std::vector<LeaderStock> strands(std::initializer_list<double> diameters) {
  std::vector<LeaderStock> stock;
  for (const double d : diameters) {
    stock.push_back({"", Inches(d), Material::nylon, Feet(75), std::nullopt});
  }
  return stock;
}
std::vector<double> diameters(const Leader& leader) {
  std::vector<double> all;
  for (const LeaderPiece& piece : leader.pieces) all.push_back(piece.diameter.value());
  return all;
}

/// The fewest pieces over every chain of the stock that the rules allow, by plain search.
int fewestPieces(const std::vector<LeaderStock>& stock, const ButtRange& butt, double at, int knots) {
  int best = at >= butt.thin.value() - 1e-7 && at <= butt.thick.value() + 1e-7 ? 1 : 99;
  for (const LeaderStock& strand : stock) {
    const double next = strand.diameter.value();
    const double most = knots < 2 ? 0.002 : 0.004;
    if (next <= at + 1e-7 || next - at > most + 1e-7 || at < next * 2 / 3 - 1e-7) continue;
    best = std::min(best, 1 + fewestPieces(stock, butt, next, knots + 1));
  }
  return best;
}

}  // namespace

TEST_CASE("Leader: a two-hand leader of 9 ft from the bench's spools, by hand") {
  LeaderWish wish;
  wish.tippetMaterial = Material::nylon;
  const auto leader = buildLeader(wish, bench());
  REQUIRE(leader);
  // last two knots at most 0.002, the others 0.004: 0.013 0.015 0.017 0.020 0.024
  CHECK(diameters(*leader) == std::vector<double>{0.024, 0.020, 0.017, 0.015, 0.013});
  CHECK(leader->pieces[0].finished.value() == toRounding(9 * 0.36));
  CHECK(leader->pieces[1].finished.value() == toRounding(9 * 0.24));
  CHECK(leader->pieces[2].finished.value() == toRounding(0.9));
  CHECK(leader->pieces[4].finished.value() == toRounding(1.8));
  // a tied loop of 5 in and a knot of 3 in; 3 and 3; 3 and 4 at the fly
  CHECK(leader->pieces[0].cut.value() == toRounding(9 * 0.36 + 8.0 / 12));
  CHECK(leader->pieces[2].cut.value() == toRounding(0.9 + 6.0 / 12));
  CHECK(leader->pieces[4].cut.value() == toRounding(1.8 + 7.0 / 12));
}

TEST_CASE("Leader: three pieces are 60, 20 and 20 per cent, and make the length") {
  LeaderWish wish;
  wish.line = LeaderLine::singleHand;
  wish.lineTip = Inches(0.026);  // butt 0.0156 to 0.0195
  wish.tippet = Inches(0.013);
  wish.length = Feet(10);
  const auto leader = buildLeader(wish, strands({0.017, 0.015, 0.013}));
  REQUIRE(leader);
  REQUIRE(leader->pieces.size() == 3);
  CHECK(leader->pieces[0].finished.value() == toRounding(6));
  CHECK(leader->pieces[1].finished.value() == toRounding(2));
  CHECK(leader->pieces[2].finished.value() == toRounding(2));
}

TEST_CASE("Leader: a floating tip known by its mass gives the butt by its diameter") {
  LeaderWish wish;
  wish.line = LeaderLine::singleHand;
  wish.lineTipMass = GrainsPerFoot(1.5);
  const auto range = buttRange(wish);
  REQUIRE(range);
  // 2383.442 x 0.86 x d^2 = 1.5: d = 0.02705 in
  CHECK(floatingDiameter(GrainsPerFoot(1.5)).value() == Approx(0.02705).margin(1e-5));
  CHECK(range->thin.value() == Approx(0.6 * 0.02705).margin(1e-5));
  CHECK(range->thick.value() == Approx(0.75 * 0.02705).margin(1e-5));
}

TEST_CASE("Leader: no plan by plain search has fewer knots") {
  std::mt19937 random(4);
  std::uniform_int_distribution<int> thousandths(8, 27);
  int built = 0;
  for (int round = 0; round < 300; ++round) {
    std::vector<LeaderStock> stock;
    for (int i = 0; i < 12; ++i) {
      stock.push_back(strands({thousandths(random) / 1000.0}).front());
    }
    LeaderWish wish;
    wish.tippet = stock.front().diameter;
    const auto leader = buildLeader(wish, stock);
    const int fewest = fewestPieces(stock, *buttRange(wish), wish.tippet.value(), 0);
    CAPTURE(round, fewest);
    REQUIRE(leader.has_value() == (fewest < 99));
    if (!leader) continue;
    ++built;
    REQUIRE(static_cast<int>(leader->pieces.size()) == fewest);
  }
  CHECK(built > 50);
}

TEST_CASE("Leader: on a sink tip one piece or two, and a word when it is long") {
  LeaderWish wish;
  wish.line = LeaderLine::sinkTip;
  wish.length = Feet(4);
  wish.tippet = Inches(0.013);
  wish.tippetMaterial = Material::fluorocarbon;
  const auto two = buildLeader(wish, bench());
  REQUIRE(two);
  CHECK(diameters(*two) == std::vector<double>{0.017, 0.013});
  CHECK(two->pieces[0].finished == Feet(1.5));
  CHECK(two->pieces[1].finished == Feet(2.5));
  CHECK_FALSE(two->longForSinkTip);
  wish.pieces = 1;
  wish.length = Feet(6);
  const auto one = buildLeader(wish, bench());
  CHECK(one->pieces.size() == 1);
  CHECK(one->longForSinkTip);
}

TEST_CASE("Leader: the weakest link is the knot above the tippet, as a range") {
  LeaderWish wish;
  wish.tippetMaterial = Material::nylon;
  const auto leader = buildLeader(wish, bench());
  CHECK(leader->weakest.knot == Knot::joining);
  CHECK(leader->weakest.piece == leader->pieces.size() - 2);
  const PoundRange strand = strandStrength(Material::nylon, Inches(0.013));
  CHECK(leader->weakest.holds.low_lb == toRounding(0.55 * strand.low_lb));
  CHECK(leader->weakest.holds.high_lb == toRounding(0.85 * strand.high_lb));
}

TEST_CASE("Leader: the packet's own figure outranks the reckoned one") {
  auto stock = bench();
  for (LeaderStock& strand : stock) {
    if (strand.diameter == Inches(0.020)) strand.packetPounds = 6.0;
  }
  LeaderWish wish;
  wish.tippetMaterial = Material::nylon;
  const auto leader = buildLeader(wish, stock);
  CHECK(leader->pieces[1].byPacket);
  CHECK(leader->pieces[1].strength == PoundRange{6, 6, 6});
  CHECK(leader->weakest.holds.high_lb == toRounding(6 * 0.85));
}

TEST_CASE("Leader: a stock without fitting diameters is told what lacks") {
  LeaderWish wish;
  wish.tippet = Inches(0.008);
  CHECK(buildLeader(wish, strands({0.024, 0.013})).error().what.text().find("tippet of 0.008 in") !=
        std::string::npos);
  wish.tippet = Inches(0.013);
  const auto gap = buildLeader(wish, strands({0.024, 0.015, 0.013}));
  REQUIRE_FALSE(gap);
  CHECK(gap.error().what.text().find("no farther than 0.015 in") != std::string::npos);
  CHECK(gap.error().fix == "add a diameter over 0.015 in up to 0.017 in");
  const auto noButt = buildLeader(wish, strands({0.017, 0.015, 0.013}));
  CHECK(noButt.error().fix == "add one of 0.022 in to 0.026 in");
  CHECK(buildLeader(wish, {}).error().what.text().find("nothing") == std::string::npos);
  CHECK_FALSE(buildLeader(wish, {}));
  wish.line = LeaderLine::singleHand;
  CHECK(buildLeader(wish, bench()).error().fix.text().find("diameter") != std::string::npos);
  wish.length = Feet(-1);
  CHECK_FALSE(buildLeader(wish, bench()));
}

TEST_CASE("Leader: it drops into the rig in place of the one that is there") {
  LeaderWish wish;
  const auto leader = buildLeader(wish, bench());
  REQUIRE(leader);
  const Rig rig = withLeader(plainWinter(), *leader);
  CHECK(check(rig).empty());
  REQUIRE(rig.parts.size() == 6);
  CHECK(rig.parts[3].kind == PartKind::leader);
  CHECK(rig.parts[3].sections.size() == leader->pieces.size() - 1);
  CHECK(rig.parts[4].kind == PartKind::tippet);
  CHECK(withLeader(rig, *leader) == rig);
}

TEST_CASE("Leader: a coated leader stays where it is") {
  Rig rig = rigOf({short525(), leader({floating(9, 6, 2.5)}, Style::coated), fly(6)});
  const auto built = buildLeader({}, bench());
  CHECK(withLeader(rig, *built).parts.size() == 5);
  CHECK(withLeader(rig, *built).parts[1] == rig.parts[1]);
}

TEST_CASE("Leader: more than the spool holds is told") {
  auto stock = bench();
  for (LeaderStock& strand : stock) strand.left = Feet(1);
  CHECK(buildLeader({}, stock)->notEnoughLeft);
}

TEST_CASE("Tippet: by the hook, in X or in pounds") {
  const auto six = tippetFor("6");
  REQUIRE(six);
  CHECK(*six->lowX == toRounding(1.5));
  CHECK(*six->highX == toRounding(2));
  CHECK(six->thin.value() == toRounding(0.009));
  CHECK(*tippetFor("#2")->lowPounds == 10);
  CHECK(*tippetFor("2/0")->highPounds == 20);
  CHECK(*tippetFor("1/0")->lowPounds == 12);
  for (const char* hook : {"", "3/0", "0", "x", "29", "6a", "1/2", "-4", "28"}) {
    INFO(hook);
    CHECK_FALSE(tippetFor(hook).has_value());
  }
}

TEST_CASE("Leader: what it may weigh goes by the square of how true the strand is drawn, by hand") {
  LeaderWish wish;
  wish.line = LeaderLine::sinkTip;
  wish.length = Feet(4);
  wish.pieces = 1;
  wish.tippet = Inches(0.010);
  const auto leader = buildLeader(wish, strands({0.010}));
  REQUIRE(leader);
  const GrainsRange range = massRange(*leader);
  // 0.0005 of 0.010 in is 5 %: 0.95^2 and 1.05^2 of the mass
  CHECK(range.low / leader->mass == toRounding(0.9025));
  CHECK(range.high / leader->mass == toRounding(1.1025));
}
