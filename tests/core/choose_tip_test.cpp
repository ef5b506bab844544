// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <catch2/catch.hpp>
#include <stop_token>

#include "core/choose/advice.h"
#include "core/choose/choose.h"
#include "core/report/choice_text.h"
#include "core/report/choice_words.h"
#include "tests/support/choice_cases.h"

using namespace grainwise;
using namespace grainwise::test;
using namespace grainwise::test::choice;

namespace {

Choice chosen(const Rig& rig, const std::optional<Pool>& pool, const Shelf& shelf = genericShelf()) {
  return chooseTip({rig, pool, shelf, {}});
}

double bestMean(const Choice& choice) { return choice.ranked.front().size.mean.value(); }

/// Level ten-foot tips of the trade's classes.
Shelf levelTips() {
  Shelf shelf;
  for (const char* name : {"10 ft, 5 gr/ft", "10 ft, 7 gr/ft", "10 ft, 8 gr/ft", "10 ft, 10 gr/ft",
                           "10 ft, 11 gr/ft", "10 ft, 14 gr/ft", "10 ft, 17 gr/ft",
                           "10 ft, 20 gr/ft"}) {
    shelf.parts.push_back(onShelf(name));
  }
  return shelf;
}

/// One family: ten feet of 11 gr/ft, none to all of it sinking.
Shelf familyOfEleven() {
  Shelf shelf;
  for (const char* name :
       {"10 ft, none sinking, 11 gr/ft", "10 ft, 1/4 sinking, 11 gr/ft",
        "10 ft, 1/2 sinking, 11 gr/ft", "10 ft, 3/4 sinking, 11 gr/ft",
        "10 ft, all sinking, 11 gr/ft"}) {
    shelf.parts.push_back(onShelf(name));
  }
  return shelf;
}

}  // namespace

TEST_CASE("the trade's balanced pair comes out on top for a fly of its class") {
  struct Pair {
    const char* head;
    double rod_ft, line, fly_gr, fly_cm2, tip;
  };
  // Common practice, no source: the heads with their ten-foot tips, and flies of their class.
  const auto pair = GENERATE(Pair{"short head 425", 12.5, 6, 14, 3.5, 8},
                             Pair{"short head 525", 13, 8, 33, 3.5, 11},
                             Pair{"short head 600", 13.5, 8, 45, 4, 14},
                             Pair{"short head 700", 14, 9, 60, 5, 17});
  CAPTURE(pair.head);
  const Rig rig = shortHeadRig(pair.head, pair.rod_ft, pair.line, fly(pair.fly_gr, pair.fly_cm2));
  const Choice choice = chosen(rig, neutralPool());
  REQUIRE_FALSE(choice.ranked.empty());
  const TipChoice& best = choice.ranked.front();
  CAPTURE(words::nameOf(genericShelf(), best.shelf));
  REQUIRE(best.standing == Standing::fits);
  REQUIRE(best.size.mean.value() == Approx(pair.tip));
  REQUIRE(best.size.length.value() == Approx(10));
}

TEST_CASE("a fine taper prefers tapered tips and coated leaders, forces 8 and refuses 14") {
  Rig rig = withTip(fineRig(fly(9, 0.8, 1.6)), nullptr);
  const Part coated = onShelf("coated leader 9 ft, heavy, 3.5 in/s");
  rig = withTip(rig, &coated);
  const Choice choice = chosen(rig, neutralPool());
  const Shelf& shelf = genericShelf();

  const TipChoice& best = choice.ranked.front();
  REQUIRE(best.shelf);
  const Part& top = shelf.parts[*best.shelf];
  REQUIRE((top.isCoatedLeader() || top.style == Style::tapered));

  const TipChoice& eight = choiceOf(choice, shelf, "10 ft, 8 gr/ft");
  REQUIRE(eight.standing == Standing::watch);
  REQUIRE(eight.figures.joint->verdict == JunctionVerdict::stepsUp);
  REQUIRE(words::choiceSentence(eight, choice.wanted).find("has to be forced") !=
          std::string::npos);

  const TipChoice& fourteen = choiceOf(choice, shelf, "10 ft, 14 gr/ft");
  REQUIRE(fourteen.standing == Standing::rejected);
  REQUIRE(hasZone(fourteen, Criterion::junction, Grade::wrong));

  const std::size_t tapered = rankOf(choice, shelf, "#5, 3 in/s");
  for (const char* level : {"10 ft, 8 gr/ft", "10 ft, 10 gr/ft", "10 ft, 11 gr/ft"}) {
    REQUIRE(tapered < rankOf(choice, shelf, level));
    REQUIRE(rankOf(choice, shelf, "coated leader 9 ft, heavy, 3.5 in/s") <
            rankOf(choice, shelf, level));
  }
}

TEST_CASE("a weighted fly refuses every coated leader, and says why") {
  const Choice choice = chosen(sampleRig("01-plain-winter"), pool("Mill Run"));
  std::size_t coated = 0;
  for (const TipChoice& tip : choice.ranked) {
    if (!tip.shelf || !genericShelf().parts[*tip.shelf].isCoatedLeader()) continue;
    ++coated;
    REQUIRE(tip.standing == Standing::rejected);
    REQUIRE_FALSE(words::choiceReasons(tip, choice.wanted).empty());
  }
  REQUIRE(coated > 0);
  const Choice fine = chosen(fineRig(fly(33, 3.5, 2.9)), neutralPool());
  const TipChoice& light = choiceOf(fine, genericShelf(), "coated leader 9 ft, light, 3.5 in/s");
  REQUIRE((hasZone(light, Criterion::drive, Grade::wrong) ||
           hasZone(light, Criterion::flyAgainstTip, Grade::wrong)));
}

TEST_CASE("a thin tail prefers a quarter of ten feet sinking to all of it") {
  const Shelf shelf = familyOfEleven();
  const Choice choice = chosen(sampleRig("03-thin-tail"), pool("Sheep Ford"), shelf);
  REQUIRE(rankOf(choice, shelf, "10 ft, 1/4 sinking, 11 gr/ft") == 0);
  REQUIRE(choice.ranked.front().standing == Standing::fits);
  const TipChoice& all = choiceOf(choice, shelf, "10 ft, all sinking, 11 gr/ft");
  REQUIRE(all.standing == Standing::rejected);
  REQUIRE(all.figures.depth->way == DepthWay::onBottom);
  REQUIRE(words::choiceReasons(all, choice.wanted).front().find("bottom") != std::string::npos);
}

TEST_CASE("a heavier fly never lowers the grains per foot of the best tip") {
  const Shelf shelf = levelTips();
  for (const char* head : {"short head 425", "short head 525", "short head 600", "short head 700"}) {
    double before = 0.0;
    for (double grains = 4; grains <= 72; grains += 2) {
      const Choice choice = chosen(shortHeadRig(head, 13.5, 8, fly(grains, 3)), neutralPool(), shelf);
      if (choice.need == ChoiceNeed::nothingFits) break;  // too heavy for every tip there is
      CAPTURE(head, grains);
      REQUIRE(bestMean(choice) >= before - 1e-9);
      before = bestMean(choice);
    }
    REQUIRE(before > 8.0);
  }
}

TEST_CASE("a deeper pool never shortens the sinking feet of the best tip") {
  const Shelf shelf = familyOfEleven();
  Pool deep = neutralPool();
  deep.clearance = FeetRange{Feet(0.75), Feet(1.75)};
  Feet before(0);
  for (double depth_ft = 2.0; depth_ft <= 7.0; depth_ft += 0.25) {
    deep.depth = Feet(depth_ft);
    const Choice choice = chosen(sampleRig("03-thin-tail"), deep, shelf);
    if (choice.need == ChoiceNeed::nothingFits) continue;
    CAPTURE(depth_ft);
    REQUIRE(choice.ranked.front().size.sinking.value() >= before.value() - 1e-9);
    before = choice.ranked.front().size.sinking;
  }
  REQUIRE(before.value() > 5.0);
}

TEST_CASE("every refused tip has a reason in words, and nothing else has") {
  for (const Pool& water : corrow().pools) {
    const Choice choice = chosen(sampleRig("02-slot"), water);
    Standing last = Standing::fits;
    for (const TipChoice& tip : choice.ranked) {
      REQUIRE(tip.standing >= last);
      last = tip.standing;
      const auto reasons = words::choiceReasons(tip, choice.wanted);
      REQUIRE(reasons.empty() == (tip.standing != Standing::rejected));
      for (const std::string& reason : reasons) REQUIRE_FALSE(reason.empty());
      REQUIRE_FALSE(words::choiceSentence(tip, choice.wanted).empty());
      for (const Judged& j : tip.judged) {
        REQUIRE(j.grade >= 0.0);
        REQUIRE(j.grade <= 1.0);
        if (j.zone == Grade::wrong) REQUIRE(j.grade == 0.0);
      }
    }
  }
}

TEST_CASE("a refused tip is one that the bench calls wrong, or that misses the wanted water") {
  const Rig rig = sampleRig("01-plain-winter");
  const Choice choice = chosen(rig, pool("Ash Ledge"));
  for (const TipChoice& tip : choice.ranked) {
    const Part* part = tip.shelf ? &genericShelf().parts[*tip.shelf] : nullptr;
    bool wrong = tip.figures.depth && *tip.figures.depth->share <= 0.0;
    for (const GradedReading& fault : faults(analyse(withTip(rig, part)))) {
      wrong = wrong || fault.reading != Reading::headOnRod;
    }
    REQUIRE(wrong == (tip.standing == Standing::rejected));
  }
}

TEST_CASE("a depth share is how much of the band lies in the wanted water") {
  DepthBand band;
  band.low = Feet(2);
  band.middle = Feet(2.5);
  band.high = Feet(4);
  REQUIRE(shareInside(band, {Feet(3), Feet(5)}) == Approx(0.5));
  REQUIRE(shareInside(band, {Feet(0), Feet(9)}) == Approx(1.0));
  REQUIRE(shareInside(band, {Feet(5), Feet(6)}) == 0.0);
}

TEST_CASE("water that is wanted off the bottom is told below the surface") {
  const auto wanted = wantedWater(pool("Mill Run"));
  REQUIRE(wanted->low.value() == Approx(3.0));
  REQUIRE(wanted->high.value() == Approx(4.5));
  REQUIRE_FALSE(wantedWater(neutralPool()));
}

TEST_CASE("what is lacking is said, with what to do next") {
  const Rig whole = sampleRig("01-plain-winter");
  Rig noHead = whole, noFly = whole, weightless = whole;
  std::erase_if(noHead.parts, [](const Part& p) { return p.kind == PartKind::head; });
  std::erase_if(noFly.parts, [](const Part& p) { return p.kind == PartKind::fly; });
  weightless.parts.back().fly = Fly{};
  REQUIRE(chosen(noHead, pool("Mill Run")).need == ChoiceNeed::head);
  REQUIRE(chosen(noFly, pool("Mill Run")).need == ChoiceNeed::fly);
  REQUIRE(chosen(weightless, pool("Mill Run")).need == ChoiceNeed::flyMass);
  REQUIRE(chosen(whole, pool("Mill Run"), Shelf{}).need == ChoiceNeed::shelf);
  REQUIRE(chosen(whole, std::nullopt).need == ChoiceNeed::pool);
  REQUIRE(chosen(whole, neutralPool()).need == ChoiceNeed::wantedWater);
  REQUIRE(chosen(whole, pool("Mill Run")).need == ChoiceNeed::none);

  Rig heavy = whole;
  heavy.parts.back() = fly(400, 40);
  const Choice none = chosen(heavy, pool("Mill Run"));
  REQUIRE(none.need == ChoiceNeed::nothingFits);
  REQUIRE_FALSE(none.ranked.empty());
  for (const ChoiceNeed need :
       {ChoiceNeed::head, ChoiceNeed::fly, ChoiceNeed::flyMass, ChoiceNeed::shelf, ChoiceNeed::pool,
        ChoiceNeed::wantedWater, ChoiceNeed::nothingFits}) {
    REQUIRE_FALSE(words::needText(need).empty());
  }
  REQUIRE(words::needText(ChoiceNeed::none).empty());
}

TEST_CASE("without a pool the list is there and depth is not judged") {
  const Choice choice = chosen(sampleRig("01-plain-winter"), std::nullopt);
  REQUIRE(choice.count(Standing::fits) > 0);
  for (const TipChoice& tip : choice.ranked) {
    for (const Judged& j : tip.judged) REQUIRE(j.criterion != Criterion::depth);
  }
}

TEST_CASE("before another tip for depth alone, angle, mend and line out are tried") {
  // Three quarters sinking in Mill Run: sound, but a little too shallow (about 2.5 ft of 3.0).
  const Part tip = onShelf("10 ft, 3/4 sinking, 11 gr/ft");
  const Rig rig = withTip(sampleRig("01-plain-winter"), &tip);
  TipQuestion question{rig, pool("Mill Run"), genericShelf(), {}};
  const Choice choice = chooseTip(question);
  const auto advice = adviceBeforeTip(question, choice);
  const double now = choice.asItStands->figures.depth->band->middle.value();
  REQUIRE(choice.asItStands->figures.depth->way == DepthWay::tooShallow);
  REQUIRE_FALSE(advice.empty());
  REQUIRE(std::any_of(advice.begin(), advice.end(), [](const auto& change) { return change.inside; }));
  for (const WaterChange& change : advice) {
    CAPTURE(words::adviceText(change));
    REQUIRE(change.from != change.to);
    REQUIRE(change.depth.value() > now);  // it wants to go deeper
  }
  SECTION("not where the rig is at fault besides") {
    question.rig.parts.back() = fly(90, 3, 4);
    REQUIRE(adviceBeforeTip(question, chooseTip(question)).empty());
  }
  SECTION("not where the depth is right") {
    question.rig = sampleRig("01-plain-winter");
    REQUIRE(adviceBeforeTip(question, chooseTip(question)).empty());
  }
}

TEST_CASE("a family keeps the length and changes what sinks") {
  const TipQuestion question{sampleRig("03-thin-tail"), pool("Mill Run"), genericShelf(), {}};
  const Choice choice = chooseTip(question);
  const auto family = familyOf(question, choice);
  REQUIRE(family.size() >= 5);
  Feet lastSinking(-1);
  double lastMean = 0, lastDepth = -1;
  for (const std::size_t i : family) {
    const TipChoice& member = choice.ranked[i];
    REQUIRE(member.size.length.value() == Approx(10));
    const Part& part = question.shelf.parts[*member.shelf];
    if (std::abs(member.size.mean.value() - 11) > 0.01 || part.style != Style::floatSink) continue;
    if (isOnBottom(member.figures.depth->state)) continue;
    REQUIRE(member.size.sinking > lastSinking);
    REQUIRE(member.figures.depth->band->middle.value() > lastDepth);
    REQUIRE(member.figures.stroke->verdict == StrokeVerdict::same);
    lastSinking = member.size.sinking;
    lastDepth = member.figures.depth->band->middle.value();
    lastMean = member.size.mean.value();
  }
  REQUIRE(lastMean == Approx(11));
}

TEST_CASE("the same question has the same answer, whichever thread takes a tip") {
  const Rig rig = sampleRig("02-slot");
  const Choice first = chosen(rig, pool("Ash Ledge"));
  for (int i = 0; i < 3; ++i) {
    const Choice again = chosen(rig, pool("Ash Ledge"));
    REQUIRE(again.ranked.size() == first.ranked.size());
    for (std::size_t k = 0; k < first.ranked.size(); ++k) {
      REQUIRE(again.ranked[k].shelf == first.ranked[k].shelf);
      REQUIRE(again.ranked[k].score == first.ranked[k].score);
    }
  }
}

TEST_CASE("choosing stops when asked, at once, and says so") {
  std::stop_source source;
  double asked = 0.0, last = 0.0;
  const TipQuestion question{sampleRig("01-plain-winter"), pool("Mill Run"), genericShelf(), {}};
  const Choice choice = chooseTip(question, source.get_token(), [&](double share) {
    last = share;
    if (source.stop_requested() || share <= 0.1) return;
    asked = share;
    source.request_stop();
  });
  REQUIRE(choice.stopped);
  REQUIRE(choice.ranked.empty());
  REQUIRE(asked > 0.0);
  // A tip that the other thread has in hand may still be told; the bench times the wait.
  REQUIRE(last <= asked + 2.0 / double(question.shelf.parts.size()) + 0.02);
}

TEST_CASE("the answer in JSON carries every tip with grades, and reads as JSON") {
  const Rig rig = sampleRig("01-plain-winter");
  PoolChoice answer;
  answer.pool = pool("Mill Run");
  answer.choice = chosen(rig, answer.pool);
  const std::string json = choiceJson(rig, genericShelf(), {answer}, {});
  const std::string text = choiceText(rig, genericShelf(), {answer});
  REQUIRE(json.back() == '\n');
  REQUIRE(json.find("\"grainwise-choice\"") != std::string::npos);
  REQUIRE(json.find("NaN") == std::string::npos);
  REQUIRE(text.find("Refused") != std::string::npos);
  REQUIRE(text.find("estimate") != std::string::npos);
}
