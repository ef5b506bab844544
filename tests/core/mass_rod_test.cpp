// SPDX-License-Identifier: GPL-3.0-or-later
#include <catch2/catch.hpp>

#include "core/mass/rod_fit.h"
#include "tests/support/rig_parts.h"

using namespace grainwise;
using namespace grainwise::test::rigs;

namespace {

Approx exactly(double value) { return Approx(value).margin(1e-9).epsilon(1e-12); }

RodFit fitOf(const Rig& rig) { return rodFit(rig, massProfile(rig)); }

Rig headOnWindow(double head_gr, double low, double high) {
  Rig rig = onRod(rigOf({head({floating(25, head_gr / 25)})}), 13, 8);
  rig.rod->window = GrainWindow{Grains(low), Grains(high)};
  return rig;
}

HeadVerdict headVerdict(double head_gr) {
  return *fitOf(headOnWindow(head_gr, 500, 600)).headVerdict;
}

std::optional<LengthVerdict> lengthVerdict(Style style, double head_ft, double tip_ft,
                                           int hands = 2) {
  std::vector<Part> parts{head({floating(head_ft, 15)}, style)};
  if (tip_ft > 0) parts.push_back(tip({sinking(tip_ft, 8, 6)}));
  return fitOf(onRod(rigOf(parts), 10, 8, hands)).lengthVerdict;
}

}  // namespace

TEST_CASE("A head within 15 gr of the window fits, within 40 is a touch off, beyond is wrong") {
  CHECK(headVerdict(550) == HeadVerdict::fits);
  CHECK(headVerdict(485) == HeadVerdict::fits);
  CHECK(headVerdict(615) == HeadVerdict::fits);
  CHECK(headVerdict(484) == HeadVerdict::touchLight);
  CHECK(headVerdict(616) == HeadVerdict::touchHeavy);
  CHECK(headVerdict(460) == HeadVerdict::touchLight);
  CHECK(headVerdict(640) == HeadVerdict::touchHeavy);
  CHECK(headVerdict(459) == HeadVerdict::wrongLight);
  CHECK(headVerdict(641) == HeadVerdict::wrongHeavy);
}

TEST_CASE("The grains on a rod are for the head alone, extension and loops included") {
  Rig rig = onRod(rigOf({runningLine(90), head({floating(5, 20)}, Style::extension),
                         withLoops(short525(), 2, 3), tip({sinking(10, 11, 7.5)}), fly(20)}),
                  13, 8);
  CHECK(fitOf(rig).head->value() == exactly(630));
}

TEST_CASE("A style's own window outranks the single window, which outranks the line number") {
  Rig rig = plainWinter();
  CHECK(*fitOf(rig).window == GrainWindow{Grains(525), Grains(600)});
  CHECK(fitOf(rig).windowFromLineNumber);
  rig.rod->window = GrainWindow{Grains(500), Grains(560)};
  CHECK(*fitOf(rig).window == GrainWindow{Grains(500), Grains(560)});
  CHECK_FALSE(fitOf(rig).windowFromLineNumber);
  rig.rod->windows.emplace();
  rig.rod->windows->fine = GrainWindow{Grains(1), Grains(2)};
  CHECK(*fitOf(rig).window == GrainWindow{Grains(500), Grains(560)});
  rig.rod->windows->shortHead = GrainWindow{Grains(510), Grains(570)};
  CHECK(*fitOf(rig).window == GrainWindow{Grains(510), Grains(570)});
}

TEST_CASE("Our windows by line number hold for two hands and whole numbers only") {
  CHECK(*defaultWindow(Style::shortHead, 3) == GrainWindow{Grains(225), Grains(275)});
  CHECK(*defaultWindow(Style::shortHead, 10) == GrainWindow{Grains(690), Grains(780)});
  CHECK(*defaultWindow(Style::fine, 3) == GrainWindow{Grains(200), Grains(240)});
  CHECK(*defaultWindow(Style::fine, 10) == GrainWindow{Grains(620), Grains(700)});
  CHECK(*defaultWindow(Style::longBelly, 6) == GrainWindow{Grains(430), Grains(520)});
  CHECK(*defaultWindow(Style::longBelly, 10) == GrainWindow{Grains(800), Grains(900)});
  CHECK_FALSE(defaultWindow(Style::shortHead, 2));
  CHECK_FALSE(defaultWindow(Style::shortHead, 11));
  CHECK_FALSE(defaultWindow(Style::shortHead, 7.5));
  CHECK_FALSE(defaultWindow(Style::longBelly, 5));
  CHECK_FALSE(defaultWindow(Style::singleHand, 8));
  Rig rig = plainWinter();
  rig.rod->hands = 1;
  CHECK_FALSE(fitOf(rig).window);
}

TEST_CASE("The style of a head is that of its first piece that is no extension") {
  CHECK(headStyle(rigOf({head({floating(5, 20)}, Style::extension), short525()})) ==
        Style::shortHead);
  CHECK_FALSE(headStyle(rigOf({head({floating(5, 20)}, std::nullopt), short525()})));
  CHECK_FALSE(headStyle(rigOf({tip({sinking(10, 11, 7)})})));
}

TEST_CASE("Working length is head and tips, for a fine taper the head alone") {
  CHECK(fitOf(plainWinter()).workingLength->value() == exactly(33));
  CHECK(*fitOf(plainWinter()).lengthRatio == exactly(33.0 / 13.0));
  const Rig fine = onRod(rigOf({fine480(), tip({sinking(10, 8, 6)})}), 13, 8);
  CHECK(fitOf(fine).workingLength->value() == exactly(36));
}

TEST_CASE("Working length on the rod is judged by the band of the head's style") {
  using V = LengthVerdict;
  CHECK(lengthVerdict(Style::shortHead, 19, 0.9) == V::tooShort);
  CHECK(lengthVerdict(Style::shortHead, 15, 5) == V::shortish);
  CHECK(lengthVerdict(Style::shortHead, 18, 5) == V::usual);
  CHECK(lengthVerdict(Style::shortHead, 19, 10) == V::usual);
  CHECK(lengthVerdict(Style::shortHead, 22, 10) == V::longish);
  CHECK(lengthVerdict(Style::shortHead, 22.1, 10) == V::tooLong);
  CHECK(lengthVerdict(Style::fine, 30, 12) == V::usual);
  CHECK(lengthVerdict(Style::fine, 33.1, 0) == V::tooLong);
  CHECK(lengthVerdict(Style::longBelly, 38, 12) == V::usual);
  CHECK(lengthVerdict(Style::longBelly, 32, 0.9) == V::tooShort);
}

TEST_CASE("A head whose rule is of head and tip together is not judged without a tip") {
  CHECK_FALSE(lengthVerdict(Style::shortHead, 23, 0));
  CHECK_FALSE(lengthVerdict(Style::longBelly, 50, 0));
  CHECK_FALSE(lengthVerdict(Style::singleHand, 30, 10));
  CHECK(lengthVerdict(Style::shortHead, 25, 0, 1) == LengthVerdict::usual);
}

TEST_CASE("A head or a length beyond its limits is wrong, off the usual it is watched") {
  CHECK(grade(HeadVerdict::fits) == Grade::fits);
  CHECK(grade(HeadVerdict::touchLight) == Grade::watch);
  CHECK(grade(HeadVerdict::touchHeavy) == Grade::watch);
  CHECK(grade(HeadVerdict::wrongLight) == Grade::wrong);
  CHECK(grade(HeadVerdict::wrongHeavy) == Grade::wrong);
  CHECK(grade(LengthVerdict::usual) == Grade::fits);
  CHECK(grade(LengthVerdict::shortish) == Grade::watch);
  CHECK(grade(LengthVerdict::longish) == Grade::watch);
  CHECK(grade(LengthVerdict::tooShort) == Grade::wrong);
  CHECK(grade(LengthVerdict::tooLong) == Grade::wrong);
}

TEST_CASE("Without a rod or a head nothing of the fit is judged") {
  const RodFit noRod = fitOf(rigOf({short525()}));
  CHECK(noRod.workingLength.has_value());
  CHECK_FALSE(noRod.headVerdict);
  CHECK_FALSE(noRod.lengthRatio);
  const RodFit noHead = fitOf(onRod(rigOf({tip({sinking(10, 11, 7)})}), 13, 8));
  CHECK_FALSE(noHead.head);
  CHECK_FALSE(noHead.workingLength);
  CHECK_FALSE(noHead.headVerdict);
}
