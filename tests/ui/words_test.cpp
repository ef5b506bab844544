// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/words.h"

#include <QSet>
#include <vector>

#include "tests/support/rig_parts.h"
#include "tests/support/ui_bench.h"
#include "ui/text/why_words.h"

#include <QRegularExpression>

namespace grainwise::ui {
namespace {

using test::kMetric;
using test::kTrade;
using test::sampleRig;

/// The words that look.md keeps off the screen, and words that no person says.
const char* const kNever[] = {"reserve", "drive", "pace", "keep", "echo", "percentile", "cm2",
                              "g/cm3", "m/s", "marginal", "nan", "inf", "%1", "%2", "%3"};

void checkTone(const QString& words) {
  INFO(words.toStdString());
  CHECK_FALSE(words.trimmed().isEmpty());
  for (const char* never : kNever) {
    const QString word = QLatin1Char(' ') + words.toLower() + QLatin1Char(' ');
    CHECK_FALSE(word.contains(QLatin1Char(' ') + QLatin1String(never) + QLatin1Char(' ')));
  }
}

TileWords tile(const Rig& rig, Reading reading, DisplayUnits units = {}) {
  return tileWords(reading, rig, analyse(rig), units);
}

void checkTile(const Rig& rig, Reading reading, const char* number, const char* from,
               const char* verdict, std::optional<Grade> grade) {
  const TileWords words = tile(rig, reading);
  CHECK(words.number == QString::fromUtf8(number));
  CHECK(words.from == QString::fromUtf8(from));
  CHECK(words.verdict == QString::fromUtf8(verdict));
  CHECK(words.grade == grade);
}

template <class Verdict>
void checkEach(std::initializer_list<Verdict> verdicts, QString (*words)(Verdict)) {
  QSet<QString> seen;
  for (const Verdict verdict : verdicts) {
    checkTone(words(verdict));
    seen.insert(words(verdict));
  }
  CHECK(seen.size() == static_cast<qsizetype>(verdicts.size()));
}

Rig without(Rig rig, PartKind kind) {
  std::erase_if(rig.parts, [&](const Part& part) { return part.kind == kind; });
  return rig;
}

}  // namespace

TEST_CASE("the tiles of the plain winter rig say what the picture of the bench says") {
  const Rig rig = sampleRig("01-plain-winter");
  checkTile(rig, Reading::junction, "17.8 to 11", "gr/ft", "smooth drop", Grade::fits);
  checkTile(rig, Reading::tipShare, "21 %", "110 of 525 gr", "right for this head", Grade::fits);
  checkTile(rig, Reading::flyAgainstTip, "3.3 \u00d7", "110 on 33 gr", "the tip carries it",
            Grade::fits);
  checkTile(rig, Reading::headOnRod, "525", "in 525\u2013600", "fits, at the light end",
            Grade::fits);
}

TEST_CASE("words: where there is no tip, it is the line that carries the fly") {
  Rig rig = sampleRig("05-dry-line");
  REQUIRE(std::none_of(rig.parts.begin(), rig.parts.end(), [](const Part& p) { return p.kind == PartKind::tip; }));
  CHECK(tileWords(Reading::flyAgainstTip, rig, analyse(rig), kTrade).verdict == QLatin1String("the line carries it"));
  rig.parts.back().fly->dry = Grains(200);
  rig.parts.back().fly->wet.reset();
  CHECK(tileWords(Reading::flyAgainstTip, rig, analyse(rig), kTrade).verdict == QLatin1String("too heavy for this line"));
}

TEST_CASE("each rig that is wrong on purpose shows its fault on its tile and no other") {
  struct Row {
    const char* rig;
    Reading reading;
    const char* title;
    const char* number;
    const char* verdict;
  };
  const std::vector<Row> rows{
      {"wrong-hinge", Reading::junction, "Hinge", "6.9 to 14", "hinges here"},
      {"wrong-anvil", Reading::tipShare, "Tip share", "47 %", "too much tip for this head"},
      {"wrong-fat-fly", Reading::flyAgainstTip, "Fly", "1.8 \u00d7", "too heavy for this tip"},
      {"wrong-no-grip", Reading::tipShare, "Anchor", "0.46 \u00d7", "too little in the water"},
  };
  for (const Row& row : rows) {
    INFO(row.rig);
    const Rig rig = sampleRig(row.rig);
    for (const auto reading : {Reading::junction, Reading::tipShare, Reading::flyAgainstTip,
                               Reading::headOnRod}) {
      const TileWords words = tile(rig, reading);
      CHECK((words.grade == Grade::wrong) == (reading == row.reading));
      if (reading != row.reading) continue;
      CHECK(words.title == QString::fromUtf8(row.title));
      CHECK(words.number == QString::fromUtf8(row.number));
      CHECK(words.verdict == QString::fromUtf8(row.verdict));
    }
  }
}

TEST_CASE("a fault of any reading stands on one of the tiles") {
  std::vector<Rig> rigs;
  for (const char* name : test::kSound) rigs.push_back(sampleRig(name));
  for (const char* name : test::kWrong) rigs.push_back(sampleRig(name));
  Rig longLine = sampleRig("01-plain-winter");  // 44 ft of head and tip on a rod of 9 ft: 4.8 rods
  longLine.rod->length = Feet(7);
  rigs.push_back(longLine);
  for (const Rig& rig : rigs) {
    INFO(rig.name);
    const Analysis analysis = analyse(rig);
    Grade worst = Grade::fits;
    for (const auto& graded : gradedReadings(analysis)) worst = std::max(worst, graded.grade);
    Grade shown = Grade::fits;
    for (const auto reading : {Reading::junction, Reading::tipShare, Reading::flyAgainstTip,
                               Reading::headOnRod}) {
      shown = std::max(shown, tile(rig, reading).grade.value_or(Grade::fits));
    }
    CHECK(shown == worst);
  }
  const TileWords words = tile(longLine, Reading::headOnRod);
  CHECK(words.title == QStringLiteral("Length on rod"));
  CHECK(words.number == QStringLiteral("4.71 \u00d7"));
  CHECK(words.from == QStringLiteral("33 on 7 ft"));
  CHECK(words.verdict == QStringLiteral("too long for this rod"));
}

TEST_CASE("what is missing says what to do next") {
  const Rig full = sampleRig("01-plain-winter");
  const Rig empty;
  for (const auto reading : {Reading::junction, Reading::tipShare, Reading::headOnRod}) {
    checkTile(empty, reading, "", "", "drop a head on the line", std::nullopt);
  }
  checkTile(without(full, PartKind::fly), Reading::flyAgainstTip, "", "",
            "drop a fly on the line", std::nullopt);
  Rig headOnly;
  headOnly.parts = {test::rigs::head({test::rigs::floating(20, 20)})};
  checkTile(headOnly, Reading::junction, "", "", "no joint yet: add a tip or leader", std::nullopt);
  checkTile(headOnly, Reading::tipShare, "", "", "drop a tip on the line", std::nullopt);
  checkTile(headOnly, Reading::headOnRod, "400", "gr", "no rod yet: choose one", std::nullopt);
  Rig unweighed = full;
  unweighed.parts.back().fly->dry = Grains(0);
  unweighed.parts.back().fly->wet.reset();
  checkTile(unweighed, Reading::flyAgainstTip, "", "", "weigh the fly and type it", std::nullopt);
  Rig noWindow = full;
  noWindow.rod = Rod{};
  noWindow.rod->length = Feet(13);
  checkTile(noWindow, Reading::headOnRod, "525", "gr", "give the rod a grain window", std::nullopt);
  Rig noStyle = full;
  noStyle.parts[1].style.reset();
  noStyle.rod->window.reset();
  CHECK(tile(noStyle, Reading::headOnRod).verdict ==
        QStringLiteral("say what style of head it is"));
}

TEST_CASE("a head outside the window never claims to be in it") {
  Rig rig = sampleRig("01-plain-winter");
  struct Row {
    double label_gr;
    const char* from;
    const char* verdict;
    Grade grade;
  };
  const std::vector<Row> rows{
      {520, "for 525\u2013600", "fits, just under the window", Grade::fits},
      {562, "in 525\u2013600", "fits this rod", Grade::fits},
      {598, "in 525\u2013600", "fits, at the heavy end", Grade::fits},
      {610, "for 525\u2013600", "fits, just over the window", Grade::fits},
      {500, "for 525\u2013600", "a touch light for this rod", Grade::watch},
      {630, "for 525\u2013600", "a touch heavy for this rod", Grade::watch},
      {470, "for 525\u2013600", "too light a head for this rod", Grade::wrong},
      {660, "for 525\u2013600", "too heavy a head for this rod", Grade::wrong},
  };
  for (const Row& row : rows) {
    rig.parts[1].label = Grains(row.label_gr);
    const TileWords words = tile(rig, Reading::headOnRod);
    CHECK(words.from == QString::fromUtf8(row.from));
    CHECK(words.verdict == QString::fromUtf8(row.verdict));
    CHECK(words.grade == row.grade);
  }
}

TEST_CASE("every verdict has words of its own, in the tone of the trade") {
  checkEach({JunctionVerdict::hinges, JunctionVerdict::hingesUnlessSlow, JunctionVerdict::stepsUp,
             JunctionVerdict::level, JunctionVerdict::smoothDrop, JunctionVerdict::collapses,
             JunctionVerdict::nylonNoRule, JunctionVerdict::nylonFine, JunctionVerdict::nylonThin,
             JunctionVerdict::nylonPiles},
            &junctionWords);
  checkEach({TipShareVerdict::noGrip, TipShareVerdict::light, TipShareVerdict::right,
             TipShareVerdict::heavy, TipShareVerdict::tooMuch},
            &tipShareWords);
  checkEach({AnchorVerdict::tooLittle, AnchorVerdict::shortish, AnchorVerdict::good,
             AnchorVerdict::longish},
            &anchorWords);
  checkEach({FlyVerdict::carries, FlyVerdict::heavySlow, FlyVerdict::tooHeavy}, &flyWords);
  checkEach({LeaderVerdict::fine, LeaderVerdict::watch, LeaderVerdict::tooHeavy}, &leaderWords);
  checkEach({LengthVerdict::usual, LengthVerdict::shortish, LengthVerdict::longish,
             LengthVerdict::tooShort, LengthVerdict::tooLong},
            &lengthWords);
  checkEach({Missing::head, Missing::fly, Missing::rod, Missing::rodLength, Missing::headStyle,
             Missing::water, Missing::window, Missing::flyMass, Missing::tip},
            &missingWords);
  checkEach({PartKind::runningLine, PartKind::head, PartKind::tip, PartKind::leader,
             PartKind::tippet, PartKind::fly},
            &kindWords);
  checkEach({Grade::fits, Grade::watch, Grade::wrong}, &gradeWord);
  checkEach({Reading::junction, Reading::headOnRod, Reading::workingLength, Reading::tipShare,
             Reading::anchor, Reading::flyAgainstTip, Reading::flyAgainstLeader},
            &readingTitle);
}

TEST_CASE("a joint is said shortly on its tag and wholly in its sentence") {
  const Rig winter = sampleRig("01-plain-winter");
  const Junction drop = analyse(winter).junctions.front();
  CHECK(junctionTag(drop, kTrade) == QStringLiteral("17.8 to 11: smooth drop"));
  CHECK(junctionSentence(drop, winter, kTrade) == QStringLiteral("17.8 to 11 gr/ft: smooth drop"));
  CHECK(junctionSentence(drop, winter, kMetric) == QStringLiteral("3.79 to 2.34 g/m: smooth drop"));
  CHECK(junctionSpoken(drop, winter) ==
        QStringLiteral("steps down from the head by 0.62: smooth drop"));
  const Rig hinge = sampleRig("wrong-hinge");
  const Analysis analysis = analyse(hinge);
  CHECK(junctionSentence(analysis.junctions[*analysis.worstJunction], hinge, kTrade) ==
        QStringLiteral("6.9 to 14 gr/ft: hinges here: the tip is heavier than the line behind it"));
}

TEST_CASE("captions are two or three words that say what a part is") {
  const Rig rig = sampleRig("01-plain-winter");
  const std::vector<const char*> wanted{"mono 0.024",    "short head 525", "10 ft, 11 gr/ft",
                                        "leader 1.5 ft", "tippet 2.5 ft",  "Leech 33"};
  REQUIRE(rig.parts.size() == wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) {
    CHECK(partCaption(rig.parts[i], kTrade) == QString::fromUtf8(wanted[i]));
  }
  Part part = sampleRig("03-thin-tail").parts[2];
  part.name.reset();
  CHECK(partCaption(part, kTrade) == QStringLiteral("10 ft, 1/4 sinking, 11 gr/ft"));
  part = sampleRig("07-old-winter").parts[2];
  part.name.reset();
  CHECK(partCaption(part, kTrade) == QStringLiteral("15 ft, 10 to 8 gr/ft"));
  part.name = "Dusk";
  CHECK(partCaption(part, kTrade) == QStringLiteral("Dusk"));
  part = sampleRig("06-under-the-film").parts[2];
  part.name.reset();
  CHECK(partCaption(part, kTrade) == QStringLiteral("coated leader 10 ft"));
  part = rig.parts.back();
  part.name = "Low hairwing #6";
  CHECK(partCaption(part, kTrade) == QStringLiteral("Low hairwing #6, 33 gr"));
  part.name.reset();
  CHECK(partCaption(part, kMetric) == QStringLiteral("fly 2.14"));
}

TEST_CASE("a caption tells what a part weighs, label and scale applied") {
  Part head = sampleRig("01-plain-winter").parts[1];
  head.name.reset();
  CHECK(partCaption(head, kTrade) == QStringLiteral("short head 525"));
  head.label.reset();
  head.weighed = Weighed{Grains(540), std::nullopt, {}};
  CHECK(partCaption(head, kTrade) == QStringLiteral("short head 540"));
  CHECK(partCaption(head, kMetric) == QStringLiteral("short head 35.0"));
}

TEST_CASE("parts are spoken with their units spelled out, in the units that are shown") {
  const Rig rig = sampleRig("01-plain-winter");
  CHECK(partSpoken(rig.parts[2]) == QStringLiteral("tip, 10 feet, 11 grains a foot"));
  CHECK(partSpoken(rig.parts[2], kMetric) == QStringLiteral("tip, 3.05 metres, 2.34 grams a metre"));
  CHECK(partSpoken(rig.parts[5]) == QStringLiteral("fly, 33 grains"));
  // Mass per foot of a nylon taper runs as the square of the diameter, not as the mean of its ends.
  const Part taper = test::rigs::leader({test::rigs::nylon(6, 0.024, 0.012)});
  CHECK(partSpoken(taper) == QStringLiteral("leader, 6 feet, 0.91 grains a foot"));
}

TEST_CASE("the rod and the water are one sentence each") {
  const Rig rig = sampleRig("01-plain-winter");
  CHECK(rodSentence(rig, kTrade) == QStringLiteral("13 ft #8, short heads 525\u2013600"));
  CHECK(waterSentence(rig, kTrade) == QStringLiteral("Mill Run: 5 ft deep, 3 ft/s, 45 \u00b0F"));
  CHECK(rodSentence(rig, kMetric) == QStringLiteral("3.96 m #8, short heads 34.0\u201338.9"));
  CHECK(waterSentence(rig, kMetric) ==
        QStringLiteral("Mill Run: 1.52 m deep, 0.9 m/s, 7 \u00b0C"));
  CHECK(rodSentence(sampleRig("05-dry-line"), kTrade).contains(QStringLiteral("fine tapers")));
  CHECK(rodSentence(sampleRig("10-single-five"), kTrade).contains(QStringLiteral("one hand")));
  CHECK(rodSentence(Rig{}, kTrade) == QStringLiteral("no rod yet: choose one"));
  CHECK(waterSentence(Rig{}, kTrade) == QStringLiteral("no water yet: choose a pool"));
  Rig odd;
  odd.water = Water{};
  odd.water->name = "100 %1 Pool";
  odd.water->depth = Feet(5);
  CHECK(waterSentence(odd, kTrade) == QStringLiteral("100 %1 Pool: 5 ft deep"));
}

TEST_CASE("the stroke is one whole sentence for each way to cast and to lift") {
  QSet<QString> seen;
  for (const auto verdict : {StrokeVerdict::same, StrokeVerdict::adjustLonger,
                             StrokeVerdict::adjustShorter, StrokeVerdict::different}) {
    for (const int lift : {0, 1, 2}) {
      Stroke stroke;
      stroke.verdict = verdict;
      stroke.slowerLift = lift == 1;
      stroke.quickerLift = lift == 2;
      checkTone(strokeSentence(stroke));
      seen.insert(strokeSentence(stroke));
    }
  }
  CHECK(seen.size() == 12);
  Stroke slower;
  slower.slowerLift = true;
  CHECK(strokeSentence(slower) ==
        QStringLiteral("Same timing as the rig you opened, slower lift"));
}

TEST_CASE("switching units changes every figure of the tiles and of why") {
  Rig rig = sampleRig("01-plain-winter");
  for (Part& part : rig.parts) part.name.reset();  // names stay as typed
  const Analysis analysis = analyse(rig);
  for (const auto reading : {Reading::junction, Reading::tipShare, Reading::flyAgainstTip,
                             Reading::headOnRod, Reading::depth}) {
    const TileWords trade = tileWords(reading, rig, analysis, kTrade);
    const TileWords metric = tileWords(reading, rig, analysis, kMetric);
    CHECK(trade.from != metric.from);
    const QString why = whyWords(reading, rig, analysis, {}, kMetric).figures.join(QLatin1Char(' '));
    INFO(why.toStdString());
    static const QRegularExpression kTradeFigure(QStringLiteral("\\d (gr|gr/ft|ft|in|ft/s|in/s)\\b"));
    CHECK_FALSE(kTradeFigure.match(why).hasMatch());
  }
}

TEST_CASE("why gives figures, formula, limits and whose they are, for every reading of every rig") {
  std::vector<Rig> rigs{Rig{}};
  for (const char* name : test::kSound) rigs.push_back(sampleRig(name));
  for (const char* name : test::kWrong) rigs.push_back(sampleRig(name));
  for (const Rig& rig : rigs) {
    const Analysis analysis = analyse(rig);
    for (const auto reading : {Reading::junction, Reading::tipShare, Reading::flyAgainstTip,
                               Reading::headOnRod}) {
      INFO(rig.name << " " << readingTitle(reading).toStdString());
      const WhyWords why = whyWords(reading, rig, analysis, {}, kTrade);
      CHECK_FALSE(why.figures.isEmpty());
      CHECK_FALSE(why.formula.isEmpty());
      CHECK(why.limits.join(QLatin1Char(' ')).contains(QStringLiteral("common practice, no source")));
      for (const QStringList& list : {why.figures, why.formula, why.limits}) {
        for (const QString& line : list) {
          INFO(line.toStdString());
          CHECK_FALSE(line.trimmed().isEmpty());
          CHECK_FALSE(line.contains(QStringLiteral("nan")));
          CHECK_FALSE(line.contains(QLatin1Char('%') + QString::number(1)));
        }
      }
    }
  }
}

TEST_CASE("why of the depth names the head's density and how the current slackens, stated or not") {
  Rig rig = sampleRig("01-plain-winter");
  const auto why = [&] { return whyWords(Reading::depth, rig, analyse(rig), {}, kTrade); };
  const auto says = [](const QStringList& lines, const char* words) {
    return lines.join(QLatin1Char('\n')).contains(QString::fromUtf8(words));
  };
  REQUIRE(rig.parts[1].kind == PartKind::head);
  REQUIRE_FALSE(rig.water->bed.has_value());
  CHECK(says(why().figures, "Density of the head: 0.86 g/cm\u00b3, our usual figure where none is stated."));
  CHECK(says(why().figures, "runs at 89 % of its speed at the surface, as over a usual bed: none is stated."));
  CHECK(says(why().limits, "a head of 0.82 g/cm\u00b3 to 0.9 g/cm\u00b3"));
  CHECK(says(why().limits, "half way down of 87 % to 92 % of the surface's"));
  rig.water->bed = Bed::boulders;
  for (Section& section : rig.parts[1].sections) {
    section.floats.reset();
    section.density = GramsPerCubicCentimetre(0.8);
  }
  CHECK(says(why().figures, "Density of the head: 0.8 g/cm\u00b3."));
  CHECK(says(why().figures, "runs at 84 % of its speed at the surface, as over such a bed."));
  CHECK_FALSE(says(why().limits, "a head of"));
  CHECK(says(why().limits, "half way down of 79 % to 89 % of the surface's"));
}

TEST_CASE("why follows the limits that are set, not the ones that are usual") {
  const Rig rig = sampleRig("01-plain-winter");
  Conditions conditions;
  conditions.rules.junctions.hinge = 2.5;
  const WhyWords why = whyWords(Reading::junction, rig, analyse(rig, conditions), conditions, kTrade);
  CHECK(why.limits.front().startsWith(QStringLiteral("Over 2.5 it hinges")));
}

TEST_CASE("why shows the line-number tables as a reference, with their name") {
  const auto figures = [](const char* name) {
    const Rig rig = sampleRig(name);
    return whyWords(Reading::headOnRod, rig, analyse(rig), {}, kTrade)
        .figures.join(QLatin1Char('\n'));
  };
  const QString two = figures("01-plain-winter");
  CHECK(two.contains(QStringLiteral("AFFTA")));
  CHECK(two.contains(QStringLiteral("360 gr at 40 ft")));
  CHECK(two.contains(QStringLiteral("no verdict follows")));
  const QString one = figures("10-single-five");
  CHECK(one.contains(QStringLiteral("134\u2013146 gr over the first 30 ft, aim 140 gr")));
}

}  // namespace grainwise::ui
